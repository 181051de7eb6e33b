"""An amended petition."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import answered_first, is_filed
from firstpaper.law.measures.service import goes_as_a_later_paper, notice_may_go_by_mail, server_age
from firstpaper.law.register import rule
from firstpaper.law.words import as_a_later_paper, help_first, help_now, spaced
from firstpaper.locale import _

AMENDED, NUMBER, ANSWERED = "matter.amended", "matter.case_number", "matter.other_side_answered"
SERVED, RESPONSE = "record.amended_served_on", "record.response_filed_on"
APPEARED = "record.appeared_on"
FIRST_KIND, INTENT = "matter.first_kind", "matter.first_stated_intent"


@rule(
    "An amended petition",
    cite=(
        "Cal. Rules of Court, rule 5.74(a)(2), (c)",
        "Code Civ. Proc. 472(a)",
        "Code Civ. Proc. 473(a)(1)",
        "Fam. Code 2321(b)",
    ),
    since=date(2021, 1, 1),
    not_modelled=(
        "Whether this is the first amendment, amended joint petitions, and what a court asks for leave."
    ),
)
def amended(case: Case, on: date) -> list[Found]:
    """An amended petition replaces the earlier one as a whole, carries its case number, and is served again.

    What the rules say. "Amended" is marked only if you filed a petition in this same case before. An
    amended petition "completely restates and supersedes" the old one. So say everything again, not only
    what changed. It carries the number that the court gave the case. On a first filing leave the number
    empty: the court gives it.

    Before the other side has filed a response you may amend once without asking anybody. After that you
    need the court's permission, or the other side's agreement.

    The new petition has to be served, and the time to respond runs anew from that day. If the other side
    has not taken part in the case, practice books say to serve it like the first papers, with a summons. If
    they have, we read the law to mean that it goes like any later paper: somebody else mails it or hands it
    over, and no summons goes with it.
    There is one easier way: a legal separation that becomes a divorce. If the first petition said that
    this was meant, and the other side has not taken part, notice may go by mail.

    An example. You filed in March and left out the house. No response has come. You file a whole new
    petition, marked "amended", with the house in it, and have it handed over with a summons.

    What to do. Ask the self-help center before you amend, above all if a response has been filed or a
    default was asked for.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    told, number = known(case.matter.amended), known(case.matter.case_number)
    if told is None:
        yield _not_told(case)
    elif not told:
        if number:
            yield Found(
                Outcome.NOT_MET,
                Weight.LOOK_AGAIN,
                _(
                    "You gave a case number, but this is a first filing. On a first filing the number stays "
                    "empty."
                ),
                _('The court gives the number. If you filed in this case before, mark "amended".'),
                facts=(AMENDED, NUMBER),
            )
    else:
        if not number:
            yield Found(
                Outcome.NEED_TO_KNOW,
                Weight.LOOK_AGAIN,
                _(
                    "An amended petition goes into the case you opened before, so it needs that case's "
                    "number."
                ),
                _("The number is on the papers the court stamped. The clerk can look it up by name."),
                facts=(AMENDED, NUMBER),
            )
        yield _restate()
        yield _serve(case, on)


def _not_told(case: Case) -> Found:
    unknown = case.matter.amended is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We need to know whether you filed a petition in this same case before."),
        _("The clerk can look it up by your names.") if unknown else _("Most people answer no."),
        facts=(AMENDED,),
    )


def _restate() -> Found:
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _(
            "The amended petition takes the place of the first one. What it leaves out is no longer asked "
            "for."
        ),
        _("Fill in every item again, with every attachment, and sign again."),
        facts=(AMENDED,),
    )


def _serve(case: Case, on: date) -> Found:
    answered = answered_first(case, on)
    if answered:
        return _after_a_response(case, on)
    if answered is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("Whether you may amend without asking depends on whether the other side has filed a response."),
            _("The clerk can tell you whether a response is on file."),
            facts=(AMENDED, ANSWERED),
        )
    if notice_may_go_by_mail(case, on):
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                "Your first petition said that a divorce was meant later, and no response came. If neither "
                "of you had lived here long enough then, notice of the change may go by mail."
            ),
            _("Ask the self-help center how to show the court that it was mailed."),
            facts=(AMENDED, ANSWERED, FIRST_KIND, INTENT),
        )
    if known(case.record.amended_served_on) is not None:
        return Found(
            Outcome.MET,
            Weight.LOOK_AGAIN,
            _("You have amended once without asking. To amend again you need an agreement or a judge."),
            _("Ask the self-help center before you change the petition again."),
            facts=(AMENDED, ANSWERED, SERVED),
        )
    if goes_as_a_later_paper(case, on):
        return Found(
            Outcome.MET,
            Weight.LOOK_AGAIN,
            _("No response has come, so you may amend once without asking. The other side has taken part."),
            _still_served(case, on),
            facts=(AMENDED, ANSWERED, APPEARED),
        )
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _(
            "No response has come, so you may amend once without asking. The new petition must be served "
            "again."
        ),
        _(
            "Plan to have it served like the first papers, with a summons. Ask the self-help center to "
            "confirm."
        ),
        facts=(AMENDED, ANSWERED),
    )


def _after_a_response(case: Case, on: date) -> Found:
    filed = is_filed(case, on)
    says = (
        _(
            "The other side had filed a response, so the amended petition needed the court's permission, or "
            "their agreement."
        )
        if filed
        else _(
            "The other side has filed a response. Now you need the court's permission, or their agreement."
        )
    )
    do = (
        _("Keep the paper that shows it. Without one: {help}").format(help=help_now())
        if filed
        else _("Ask how to get it. {help}").format(help=help_first())
    )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        says,
        spaced((do, _still_served(case, on))),
        facts=(AMENDED, ANSWERED, RESPONSE),
    )


def _still_served(case: Case, on: date) -> str:
    """How it reaches somebody who took part; nothing once that was recorded."""
    if known(case.record.amended_served_on) is not None:
        return ""
    return spaced((_("It must still be served."), as_a_later_paper(server_age(on))))
