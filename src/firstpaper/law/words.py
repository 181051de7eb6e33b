"""Words that several rules share, so that one thing has one name."""

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING

from firstpaper.counting import month_name, spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import NullityGround, Union
from firstpaper.law.authority import Certainty
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.law.measures.due import Due


def spaced(sentences: Sequence[str]) -> str:
    """The sentences that are there, one after the other."""
    return " ".join(sentence for sentence in sentences if sentence)


def spell_day(day: Day) -> str:
    """As much of the day as was told: "Sunday, March 1, 2026", "March 2026" or "2026"."""
    if whole := day.whole:
        return spell_date(whole)
    if day.month:
        return _("{month} {year}").format(month=month_name(day.earliest), year=day.year)
    return str(day.year)


def leap_birthday(*days: Day | date | None) -> str:
    """How a birthday on February 29 is counted, where one of the days is one; empty elsewhere."""
    if not any(day and (day.month, day.day) == (2, 29) for day in days):
        return ""
    return _(
        "Somebody born on February 29 has the birthday on February 28 in other years by our count; the law "
        "does not say."
    )


def of_union(case: Case, marriage: str, partnership: str, either_of_them: str) -> str:
    """The sentence that fits the union that was told: a marriage, a partnership, or both or none."""
    unions = known(case.matter.unions) or ()
    if not unions or (Union.MARRIAGE in unions and len(unions) > 1):
        return either_of_them
    return marriage if Union.MARRIAGE in unions else partnership


def help_first() -> str:
    """The usual advice where a mistake is costly."""
    return _("Talk to the court's self-help center or a lawyer before you file.")


def help_now() -> str:
    """The usual advice where a mistake is costly, once the case is running."""
    return _("Talk to the court's self-help center or a lawyer before you go on.")


def not_confirmed(certainty: Certainty) -> str:
    """What stands beside a day whose law we have not read; empty where we have."""
    return "" if certainty.confirmed else _("Not confirmed in the law: ask the self-help center.")


def as_a_later_paper(server_age: int) -> str:
    """How an amended petition reaches somebody who took part; our reading of the law."""
    return _(
        "By our reading no summons goes with it: somebody else, {age} or older, mails it or hands it over. "
        "Ask the self-help center to confirm."
    ).format(age=server_age)


def target_day(due: "Due", spell: Callable[[date], str] = spell_date) -> str:
    """The day to aim for, and in brackets the court day the law moves the last day to, if another."""
    moved = moved_to(due, spell)
    if not moved:
        return spell(due.target)
    return _("{target} ({moved})").format(target=spell(due.target), moved=moved)


def moved_to(due: "Due", spell: Callable[[date], str] = spell_date) -> str:
    """The court day that the law moves the last day to, and why; empty where it moves nothing."""
    if due.rolled == due.target:
        return ""
    if due.closed is None:
        return _("court closed, so {day}").format(day=spell(due.rolled))
    return _("court closed on {closed}, so {day}").format(closed=spell(due.closed), day=spell(due.rolled))


def ground_words(ground: NullityGround) -> str:
    """A ground of a nullity in plain words, to stand after "the ground"."""
    return {
        NullityGround.INCEST: _("close family (incest)"),
        NullityGround.BIGAMY: _("another marriage that had not ended (bigamy)"),
        NullityGround.UNDER_AGE: _("under age"),
        NullityGround.PRIOR_SPOUSE: _("an earlier spouse thought dead or long gone"),
        NullityGround.UNSOUND_MIND: _("unsound mind"),
        NullityGround.FRAUD: _("fraud"),
        NullityGround.FORCE: _("force"),
        NullityGround.PHYSICAL_INCAPACITY: _("physical incapacity"),
    }[ground]


def child_words(number: int, name: str | None) -> str:
    """A child by name, or by number where no name was told."""
    return name or _("child number {number}").format(number=number)
