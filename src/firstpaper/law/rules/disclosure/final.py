"""The final declarations of disclosure."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FinalDisclosure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.disclosure import FinalDue, disclosure_asked_for, final_by, served_unseen
from firstpaper.law.measures.record import filed_on, happened, took_part
from firstpaper.law.register import rule
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _

FINAL, TRIAL, DEFAULT = "record.final_disclosure", "record.trial_on", "record.default_asked_on"
FIRST_LISTS = ("record.disclosure_served_on", "record.other_disclosure_served_on")


@rule(
    "The final declarations of disclosure",
    cite=(
        "Fam. Code 2105(a)",
        "Fam. Code 2105(d)",
        "Fam. Code 2107",
        "Fam. Code 2110",
        "Code Civ. Proc. 12c(a)",
    ),
    since=date(2020, 1, 1),
    not_modelled=(
        "More time or less from a judge, days that mailing may add, and a trial that was moved. Whether an "
        "agreement on part of the case calls for it."
    ),
)
def final(case: Case, on: date) -> Found | None:
    """Before you settle property or support, or go to trial, each of you serves a final disclosure.

    What it is. The final declaration of disclosure is the second round. It has the same forms as the first
    (FL-140, with the lists) and a new form on income and expenses (FL-150). It is served, not filed. Form
    FL-141 tells the court that you did.

    When. Before you sign an agreement on property or support, or as you sign it. An agreement on support
    only for now is left out. If the case goes to trial, no later than 45 days before the first day that was
    set for it.

    How we count. Back from the day of the trial, which is not counted. If the court is closed on the day
    found, we do not move it forward: the safe way is to serve before.

    An example. The trial is set for Monday, March 15, 2027. Forty-five days before is Friday, January 29.

    How you can give it up. You can both waive it, under penalty of perjury, in open court or in writing
    (form FL-144). Both must have served the first lists, and both must have traded new forms on income and
    expenses. Both must have told everything, and sign freely, knowing what they give up.

    If the other side does not answer. In a default the petitioner may waive the final one, and does not have
    to serve it or get one. Your own first list is still needed, unless the summons was published or posted
    by order of the court.

    A judgment without what is owed can be set aside. A short divorce (summary dissolution) needs no final
    one. In a nullity, ask the court.
    """
    if filed_on(case, on) is None or not disclosure_asked_for(case):
        return None
    record = happened(case, on)
    match known(record.final_disclosure):
        case FinalDisclosure.BOTH_SERVED:
            return _done(_("You both served your final declarations of disclosure."))
        case FinalDisclosure.BOTH_WAIVED:
            return _waived(case, on)
    if before_trial := final_by(case, on):
        return _before_trial(case, before_trial, on)
    if not took_part(case, on):
        return _default(case) if known(record.default_asked_on) else None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("Before you sign an agreement on property or support, each of you serves a final disclosure."),
        _("You can both give it up with form FL-144. If a trial is set, record the day."),
        facts=(FINAL, TRIAL),
    )


def _done(says: str) -> Found:
    return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, facts=(FINAL,))


def _waived(case: Case, on: date) -> Found:
    record = happened(case, on)
    says = _("You both gave up the final declarations of disclosure.")
    if record.disclosure_served_on and record.other_disclosure_served_on:
        return _done(says)
    return Found(
        Outcome.CLOSE,
        Weight.LOOK_AGAIN,
        says,
        _("That is good only if both of you served the first lists. Record those days, or serve them now."),
        facts=(FINAL, *FIRST_LISTS),
    )


def _before_trial(case: Case, found: FinalDue, on: date) -> Found:
    last, over = found.due, found.due.missed(on)
    says = (
        _("The final declarations of disclosure were due by {day}. They are still owed.")
        if over
        else _("A trial is set. Each of you serves a final declaration of disclosure by {day}.")
    )
    return Found(
        Outcome.NOT_MET if over else Outcome.CLOSE,
        Weight.GET_ADVICE if over else Weight.LOOK_AGAIN,
        " ".join(filter(None, (says.format(day=target_day(last)), _who_is_left(case)))),
        help_now() if over else _("Serve it in good time: if you mail it, well before that day."),
        facts=(TRIAL, FINAL),
        dates={"final_disclosure_due": last.target},
        steps=last.steps,
        certainty=found.certainty,
    )


def _who_is_left(case: Case) -> str:
    return {
        FinalDisclosure.MINE_SERVED: _("You served yours. The other side has not."),
        FinalDisclosure.THEIRS_SERVED: _("The other side served theirs. You have not."),
    }.get(known(case.record.final_disclosure) or FinalDisclosure.BOTH_SERVED, "")


def _default(case: Case) -> Found:
    first = (
        _("The summons was published or posted, so your own first list is not needed either.")
        if served_unseen(case)
        else _("Your own first list is still needed.")
    )
    says = _("In a default you may give up the final declaration of disclosure, and need none from them.")
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        f"{says} {first}",
        _("Say so on the forms for the judgment. The clerk or the self-help center can show you where."),
        facts=(DEFAULT, "record.service.method"),
    )
