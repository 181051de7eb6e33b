"""The time to answer an amended petition, or the paper that revoked a joint one."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import happened, joint
from firstpaper.law.measures.response import Paper, ResponseDue, answered, response_due
from firstpaper.law.measures.service import goes_as_a_later_paper, server_age
from firstpaper.law.register import rule
from firstpaper.law.words import as_a_later_paper, spaced, target_day
from firstpaper.locale import _

FACTS = (
    "record.joint",
    "record.revoked_on",
    "record.revoked_by",
    "record.amended_on",
    "record.amended_served_on",
    "record.amended_served_how",
    "record.mail_goes",
)


@rule(
    "The time to answer an amended paper",
    cite=(
        "Code Civ. Proc. 471.5(a)",
        "Fam. Code 2342.5(b)(2)(A)",
        "Code Civ. Proc. 472(a)",
        "Code Civ. Proc. 1013",
        "Cal. Rules of Court, rule 5.68(d)",
        "Cal. Rules of Court, rule 5.74(c)",
    ),
    since=date(2026, 1, 1),
    not_modelled="E-mail service of later papers, and leave of court to amend.",
)
def amended(case: Case, on: date) -> Found | None:
    """An amended petition, or a paper that revokes a joint petition, gives 30 days from its own service.

    An amended petition replaces the first one, so the first time to respond no longer counts. If the other
    side has not taken part, serve it with a summons, like the first papers. Then mailing adds no days.

    If the other side has taken part, it must still be served. Taking part is equal to being served with the
    summons, so we read the law to mean that it goes like any later paper: no summons, and mail is enough. No
    section that we read says so in these words. Somebody else mails it or hands it over, 18 or older. That
    person signs the proof: FL-335 for mail, FL-330 in person. The rules name these two for a response. The
    30 days run from the mailing, and the extra days for mail below may count. If a judge allowed the
    amendment, the order can set other days.

    A joint petition ends as a joint one when either of you files an amended paper of your own: FL-100 for
    petitioner 1, FL-120 for petitioner 2, with FL-720. The other must file and serve an amended paper too,
    within 30 days. The orders stay. The first filing day stays the filing day of the case.

    That paper is served like a motion, so it may be mailed. We read the court rule to mean that the law's
    extra days for mail then count. They are 5 in California, 10 for another state, 12 for a Safe at Home
    address and 20 for another country. Overnight delivery adds two court days. If you must answer, do not
    count on them. Answer within 30 days.

    An example. The amended petition is mailed within California on Wednesday, November 25, 2026. Thirty
    days end on Christmas Day, so the day is Monday, December 28. The outer limit is Wednesday,
    December 30.

    If both of you have filed papers in the case, there is no default on an amended one.
    """
    record = happened(case, on)
    newest = known(record.revoked_on) if joint(case) else known(record.amended_on)
    if newest is None:
        return None
    owed = response_due(case, on)
    if owed is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("The amended paper has to be served. Until then no time to answer it runs."),
            _how_to_serve(case, on),
            facts=FACTS,
        )
    return None if answered(case, owed, on) else _owed(owed, on)


def _how_to_serve(case: Case, on: date) -> str:
    record_it = _("Record the day it was served and how.")
    if not goes_as_a_later_paper(case, on):
        return spaced((record_it, _("Ask the self-help center in which way to serve it.")))
    return spaced((_("The other side has taken part."), as_a_later_paper(server_age(on)), record_it))


def _owed(owed: ResponseDue, on: date) -> Found:
    mine = owed.who is Who.PETITIONER
    over = owed.due.missed(on)
    outer = (
        {"outer_limit": owed.outer.target, "outer_limit_moved_to": owed.outer.rolled} if owed.outer else {}
    )
    says = _ended(owed) if over else _until(owed)
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN if mine or over else Weight.GOOD_TO_KNOW,
        says.format(day=target_day(owed.due)),
        _what_to_do(owed, over=over),
        facts=FACTS,
        dates={"response_due": owed.due.target, "response_due_moved_to": owed.due.rolled, **outer},
        steps=owed.due.steps,
        certainty=owed.certainty,
    )


def _until(owed: ResponseDue) -> str:
    if owed.paper is Paper.AMENDED_PETITION:
        return _("The other side can answer the amended petition until {day}.")
    if owed.who is Who.PETITIONER:
        return _("You must file and serve an amended paper of your own by {day}.")
    if owed.who is Who.RESPONDENT:
        return _("The other side must file and serve an amended paper by {day}.")
    return _("The one who was served must file and serve an amended paper by {day}.")


def _ended(owed: ResponseDue) -> str:
    if owed.paper is Paper.AMENDED_PETITION:
        return _("The time to answer the amended petition ended on {day}.")
    return _("The time to answer the paper that revoked the joint petition ended on {day}.")


def _what_to_do(owed: ResponseDue, *, over: bool) -> str:
    if over:
        return _("Ask the self-help center what follows, and whether mailing added days.")
    if owed.outer is None:
        return _("Put this day on your calendar.")
    later = _("Mailing may add days, up to {day}. If you are the one to answer, do not count on them.")
    return later.format(day=target_day(owed.outer))
