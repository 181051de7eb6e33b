"""Whom the law takes for a child of both, and until when that, or a declaration of it, can be fought."""

from datetime import date
from typing import NamedTuple

from firstpaper.counting import days_after
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Declaration
from firstpaper.law.figure import figure
from firstpaper.law.measures.children import ListedChild
from firstpaper.law.measures.due import Due, due_at_the_clerk, due_elsewhere, months_after

SIGNED = frozenset({Declaration.SIGNED_WITH_COPY, Declaration.SIGNED_NO_COPY})


class DeclarationWindows(NamedTuple):
    """The two last days, counted from the first day that the later signature can be.

    The time to fight it runs from the day the state has it on file, which is never before the signature;
    so `challenge_by` is the earliest that this day can be.
    """

    rescind_by: Due
    challenge_by: Due


def windows_of(case: Case, child: ListedChild, on: date) -> DeclarationWindows | None:
    """The windows of a child's declaration, by the law of the day `on`.

    None where none was signed, where its day was not told, and where a parent was under 18 at the signing:
    then other days hold.
    """
    signed = known(case.fact(f"{child.key}.declared_on"))
    under_age = known(case.fact(f"{child.key}.declared_under_age"))
    if child.declaration not in SIGNED or under_age or signed is None:
        return None
    return declaration_windows(case, signed, on)


def declaration_windows(case: Case, signed: Day, on: date) -> DeclarationWindows:
    """The windows of a declaration whose later signature is of `signed`, by the law of the day `on`."""
    first = signed.earliest
    months = 12 * figure("children.parentage_challenge_years", on).value
    return DeclarationWindows(
        rescind_by=due_elsewhere(days_after(first, figure("children.parentage_rescind_days", on).value)),
        challenge_by=due_at_the_clerk(case, months_after(first, months)),
    )


def challenge_by(case: Case, born: Day, on: date) -> Due:
    """The last day on which a challenge of a spouse's parentage may be filed and served."""
    months = 12 * figure("children.presumption_challenge_years", on).value
    return due_at_the_clerk(case, months_after(born.earliest, months))
