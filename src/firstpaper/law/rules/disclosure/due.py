"""When the declarations of disclosure are due."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.disclosure import (
    DisclosureDue,
    answered_on_no_known_day,
    if_found,
    petitioner_disclosure,
    respondent_disclosure,
    waits_for_a_response,
)
from firstpaper.law.measures.record import filed_on, happened
from firstpaper.law.register import rule
from firstpaper.law.words import spaced, target_day
from firstpaper.locale import _

SOON_DAYS = 14
"""How long before the day we call it soon. Ours, not the law's."""

MINE, THEIRS = "record.disclosure_served_on", "record.other_disclosure_served_on"
FACTS = (
    "matter.kind",
    "record.filed_on",
    "record.response_filed_on",
    "matter.other_side_answered",
    "record.service.method",
)


@rule(
    "When the declarations of disclosure are due",
    cite=("Fam. Code 2103", "Fam. Code 2104(f)", "Fam. Code 2107(d)", "Fam. Code 2110"),
    since=date(2020, 1, 1),
    not_modelled="Time given by written agreement or by a judge. See disclosure.final for the second round.",
)
def due(case: Case, on: date) -> list[Found]:
    """In a divorce or legal separation each of you must show the other what you own, owe, earn and spend.

    What it is. The preliminary declaration of disclosure: form FL-140, a list of all property and debts
    (FL-142), income and expenses (FL-150), and tax returns. It is signed under penalty of perjury. It goes
    to the other side and is not filed. Only the proof that you served it is filed: form FL-141.

    When. The one who filed serves it with the petition, or within 60 days after filing. The other side
    serves theirs with the response, or within 60 days after filing it. You can give each other more time
    in writing. A judge can give it too.

    How we count. The day of filing is not counted. If the court is closed on the last day, the law moves
    it to the next day the court is open.

    An example. You file on November 25, 2026. Sixty days later is Sunday, January 24, 2027. The last day
    is Monday, January 25.

    If the summons was published or posted, nothing is owed while the other side stays silent. If a
    response comes before a default judgment, you have 30 days from it.

    Where nobody can find the other side, that is the way it may go, so we count no day yet. If they are found
    and served in another way, the 60 days from the filing hold.

    If the petition is amended, the section does not say which petition it means. We count from the first, and
    show the day by the other reading too.

    In a joint petition we count 60 days from the filing for both of you. The section does not say so for
    petitioner 2; that is our reading.

    In a nullity the section does not name you. Other sections speak of dividing property in a nullity, so
    do not take it that none is owed. Ask the court.

    Why it matters. A judgment made without it can be set aside.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    filed = filed_on(case, on)
    if is_nullity(case):
        if filed:
            yield _nullity()
        return
    mine, theirs = petitioner_disclosure(case, on), respondent_disclosure(case, on)
    if mine:
        yield _mine(mine, on) if filed else _planned(mine)
    elif filed and known(happened(case, on).disclosure_served_on) is None:
        if waits_for_a_response(case, on):
            yield _not_owed_yet(if_found(case, on))
        elif answered_on_no_known_day(case, on):
            yield _day_missing(on)
    if theirs:
        yield _theirs(theirs, on)


def _planned(mine: DisclosureDue) -> Found:
    says = _(
        "Suppose you file on {on}. Then the other side must get your list of property, debts and income by "
        "{day}."
    )
    return _found(
        mine,
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says.format(on=spell_date(mine.since), day=target_day(mine.due)),
        _("Start to gather your papers now. The list is form FL-140, with FL-142 and FL-150."),
    )


def _mine(mine: DisclosureDue, on: date) -> Found:
    day = target_day(mine.due)
    if mine.due.missed(on):
        late = _("Your declaration of disclosure was due by {day}. It is still owed.").format(day=day)
        return _found(
            mine,
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            spaced((late, _other_reading(mine))),
            _("Serve it now, or agree in writing on more time. A judgment without it can be set aside."),
        )
    soon = mine.due.target <= day_after(on, SOON_DAYS)
    says = (
        _("A response came after the summons was published or posted. Now your declaration is due by {day}.")
        if mine.after_publication
        else _("Your declaration of disclosure is due to the other side by {day}.")
    )
    return _found(
        mine,
        Outcome.CLOSE if soon else Outcome.MET,
        Weight.LOOK_AGAIN if soon else Weight.GOOD_TO_KNOW,
        spaced((says.format(day=day), _other_reading(mine))),
        _("Serve it, do not file it. File only form FL-141, which says that you did."),
    )


def _other_reading(mine: DisclosureDue) -> str:
    if mine.by_the_amended is None:
        return ""
    return _("Counted from the amended petition, it would be {day}. Go by the first day.").format(
        day=target_day(mine.by_the_amended)
    )


def _theirs(theirs: DisclosureDue, on: date) -> Found:
    over = theirs.due.missed(on)
    says = (
        _("The other side's declaration of disclosure was due by {day}. We know of none.")
        if over
        else _("The other side's declaration of disclosure is due by {day}.")
    )
    ours = _("The law names no day for petitioner 2; this is our reading.")
    words = says.format(day=target_day(theirs.due))
    return _found(
        theirs,
        Outcome.NOT_MET if over else Outcome.MET,
        Weight.LOOK_AGAIN if over else Weight.GOOD_TO_KNOW,
        words if theirs.certainty is Certainty.STATUTE else f"{words} {ours}",
        _("Ask for it in writing. If it does not come, ask the self-help center what the court can do.")
        if over
        else "",
    )


def _not_owed_yet(found: DisclosureDue | None) -> Found:
    says = (
        _(
            "The summons was published or posted. Your declaration of disclosure is not owed while the "
            "other side stays silent."
        )
        if found is None
        else _(
            "Nobody can find the other side. If a judge lets you publish or post the summons, your "
            "declaration of disclosure is not owed while they stay silent. If they are found and served in "
            "another way, it is due by {day}."
        ).format(day=target_day(found.due))
    )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says,
        _("If a response comes, you have 30 days. Record its day.") if found is None else "",
        facts=(*FACTS, MINE),
    )


def _day_missing(on: date) -> Found:
    says = _(
        "The summons was published or posted, and a response came. Your declaration of disclosure is due "
        "{days} days after it was filed. We do not know that day."
    )
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        says.format(days=figure("disclosure.after_publication_days", on).value),
        _("Look for the court's stamp on the response, and record that day. Serve the declaration soon."),
        facts=(*FACTS, MINE),
    )


def _nullity() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GOOD_TO_KNOW,
        _("The law on disclosure does not name a nullity. That does not mean that nothing is owed."),
        _("Ask the self-help center if your court wants a declaration of disclosure."),
        facts=("matter.kind",),
    )


def _found(owed: DisclosureDue, outcome: Outcome, weight: Weight, says: str, do: str) -> Found:
    return Found(
        outcome,
        weight,
        says,
        do,
        facts=(*FACTS, MINE if owed.who is Who.PETITIONER else THEIRS),
        dates={"disclosure_due": owed.due.target, "disclosure_due_moved_to": owed.due.rolled},
        steps=owed.due.steps,
        certainty=owed.certainty,
    )
