"""What changes on January 1, 2027."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import NullityGround
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import grounds
from firstpaper.law.measures.record import filed_on
from firstpaper.law.measures.service import goes_as_a_later_paper
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

NEAR_DAYS = 60
"""How long before a change we speak of it. Ours, not the law's."""

EDITIONS = ("FL-110", "FL-115")


@rule(
    "What changes on January 1, 2027",
    cite=(
        "Fam. Code 2040(a)(3) (Stats. 2025, ch. 48)",
        "Code Civ. Proc. 415.20, 417.10 (Stats. 2025, ch. 563)",
        "Fam. Code 2211(g) (Stats. 2025, ch. 633)",
        "Fam. Code 4(c)-(h)",
    ),
    since=date(2026, 1, 1),
    not_modelled="When a judge takes the other text (Fam. Code 4(h)); forms not yet published.",
)
def changes_2027(case: Case, on: date) -> list[Found]:
    """Several rules change on January 1, 2027, so a filing near that day must look at both texts.

    The orders in the summons. From that day they also forbid you to let insurance lapse because a bill
    was not paid, and to fail to renew it. What counts is the day the clerk issues the summons. One
    issued before carries the old words.

    Service. What counts is the day of service, or of each try. From that day, before papers may be left
    with somebody else, there must be at least three tries, on three days and at three different times.
    The proof of service must carry a photograph of the place for each try, stamped with date, time
    and place. The law speaks of the "process server". Whether that means a friend who serves too is not
    said, so plan for it.

    A nullity for force. From that day a court may let a petition go on that was filed too late, for a
    good reason.

    Forms. New editions of the summons and of the proof of service are sure to come, because their words
    change. Whether the petition changes is not known. None of them was published when this was written.

    A case on both sides of the day. Where the Family Code changes, what was filed before the day stays as the
    old law asked for it: nothing has to be filed again. An order made before the day stays good, so a summons
    issued in 2026 keeps its words. What is done about those papers later goes by the new law. A judge can
    choose the other text where the change would do harm. Service is in another code, which has no such
    section: there the day of the service, or of the try, counts.

    An example. You file on December 29, 2026 and the papers are handed over on January 5, 2027. The
    summons carries the old orders. The proof of service needs the photographs.

    What to do. If you can, file and serve on one side of the day. If you cannot, get fresh forms from the
    court's own site on the day you use them.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    orders = figure("restraining_orders.text", on)
    if begins := _speak_of(orders, on):
        yield _found(
            begins,
            _(
                "A summons issued from {day} on carries more words about insurance: do not let it lapse, "
                "and do not fail to renew it. One issued before that day carries the old words."
            ),
            _("Read the orders on the summons you were given, and keep your insurance paid."),
        )
    yield from _straddles(case, on, orders)
    attempts = figure("service.attempts_before_substituted", on)
    if not goes_as_a_later_paper(case, on) and (begins := _speak_of(attempts, on)):
        yield _found(
            begins,
            _(
                "For papers served from {day} on, the proof of service needs a photograph of the place for "
                "each try, and {count} tries come before papers may be left with somebody else."
            ),
            _(
                "Tell whoever serves the papers before they start. Mailing with a signed acknowledgment "
                "needs no photograph."
            ),
            count=figure(attempts.name, begins).value,
        )
    if NullityGround.FORCE in grounds(case) and (
        begins := _speak_of(figure("nullity.force_late_permission", on), on)
    ):
        yield _found(
            begins,
            _(
                "From {day} on, a court may let a nullity for force go on that was filed too late, for a "
                "good reason."
            ),
            _("See what we say about the last day to file."),
        )
    yield from _editions(on)


def _straddles(case: Case, on: date, orders: FigureValue) -> Iterator[Found]:
    """A case that was filed before the day and goes on after it (Fam. Code 4(c)-(h))."""
    filed = filed_on(case, on)
    begins = day_after(orders.until) if orders.until else orders.since
    if filed and filed < begins and _speak_of(orders, on):
        yield _found(
            begins,
            _(
                "Your petition was filed before {day}, so it need not be filed again, and the orders in your "
                "summons stay as they are printed. What is done in the case from that day on goes by the new "
                "law. A judge can decide otherwise."
            ),
            _("Use fresh blank forms for each new paper."),
        )


def _editions(on: date) -> Iterator[Found]:
    changing = {form: _speak_of(figure(f"form_edition.{form}", on), on) for form in EDITIONS}
    for begins in sorted({begins for begins in changing.values() if begins}):
        yield _found(
            begins,
            _(
                "From {day} on new editions of these forms are likely, because their words must change: "
                "{forms}."
            ),
            _("Get fresh blank forms from the court's site on the day you use them."),
            weight=Weight.LOOK_AGAIN,
            certainty=Certainty.UNCONFIRMED,
            forms=in_a_row([form for form, day in changing.items() if day == begins]),
        )


def _speak_of(value: FigureValue, on: date) -> date | None:
    """The day on which the figure changes, if it is near, or changed, if it has; else None."""
    begins = day_after(value.until) if value.until else value.since
    return begins if begins <= day_after(on, NEAR_DAYS) else None


def _found(
    begins: date,
    says: str,
    do: str,
    *,
    weight: Weight = Weight.GOOD_TO_KNOW,
    certainty: Certainty | None = None,
    **words: object,
) -> Found:
    return Found(
        Outcome.MET,
        weight,
        says.format(day=spell_date(begins), **words),
        do,
        dates={"changes_on": begins},
        certainty=certainty,
    )
