"""One date of a case: who acts, by which rule, what ends it, and the words for it.

What is the same in every case is a `DeadlineKind`, declared in its own file below `law/deadlines/`. What a
kind comes to in one case on one day is a `Deadline`.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.former_names import Named, formerly
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureNotInForce
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import Rule, rule_called
from firstpaper.law.words import spaced, target_day
from firstpaper.locale import _


class Meaning(StrEnum):
    """What a date is: a last day to act, a first day on which something can be, or a day of the court."""

    LAST_DAY = "last_day"
    FIRST_DAY = "first_day"
    COURT_DAY = "court_day"


class Actor(StrEnum):
    """Who has to act, or may."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    EITHER = "either"
    BOTH = "both"
    COURT = "court"


class Event(StrEnum):
    """What a date can wait for, before it runs."""

    WAIVER_ASKED = "waiver_asked"
    WAIVER_DENIED = "waiver_denied"
    MAILED_WITH_FORM = "mailed_with_form"
    SERVED = "served"
    AMENDED_SERVED = "amended_served"
    RESPONSE = "response"


class Chart(NamedTuple):
    """A date on the picture of the case: its label, and a sentence with `{day}`, and perhaps `{about}`."""

    title: str
    says: str


@dataclass(frozen=True, slots=True)
class Dated:
    """A date counted in one case, with what differs from case to case.

    `who`, `certainty`, `title` and `says` (the sentence of the picture) are set where they are other than
    the kind says. `since` is the day from which the time runs, for the picture. `also` is a sentence behind
    what follows from doing nothing, and `if_missed` takes its place. Where a case can have several dates of
    one kind, `part` tells them apart for programs and `about` for people.
    """

    due: Due
    who: Actor | None = None
    certainty: Certainty | None = None
    since: date | None = None
    title: str = ""
    says: str = ""
    if_missed: str = ""
    also: str = ""
    part: str = ""
    about: str = ""


Count = Callable[[Case, date], Dated | Sequence[Dated] | None]


@dataclass(frozen=True, slots=True)
class DeadlineKind:
    """A date that cases have: what is the same in each of them.

    `rule` is the id of the rule that explains the day; its authority and certainty are the date's own,
    unless `cite` names only some of it and `certainty` lowers it. `neutral` is its name in a calendar that
    others may see: no person, no kind of case. `chart` is None where it is not on the picture. `done_by` is
    the fact that says it was done, `needless_by` those that make it needless, `waits_for` what starts it.
    `hangs_on_filing` tells that it is counted from the filing, and only planned while that is.
    """

    key: str
    count: Count
    rule: str
    title: str
    if_missed: str
    neutral: str
    who: Actor
    meaning: Meaning
    chart: Chart | None
    done_by: str
    needless_by: tuple[str, ...]
    waits_for: Event | None
    hangs_on_filing: bool
    cite: tuple[str, ...]
    certainty: Certainty | None

    @property
    def explained(self) -> Rule:
        """The rule that explains the day."""
        return rule_called(self.rule)

    @property
    def words(self) -> tuple[str, ...]:
        """Every word of it that a person can see."""
        on_the_picture = (self.chart.title, self.chart.says) if self.chart else ()
        return (self.title, self.if_missed, self.neutral, *on_the_picture)

    def counted(self, case: Case, on: date) -> Iterator["Deadline"]:
        """Its dates in a case that are open on the day `on`.

        None where a number is needed that no law known to us sets on its day: the rule about it says that it
        could not be checked.
        """
        try:
            found = self.count(case, on)
        except FigureNotInForce:
            return
        planned = self.hangs_on_filing and filed_on(case, on) is None
        for one in () if found is None else (found,) if isinstance(found, Dated) else found:
            yield Deadline(self, one, planned)


@dataclass(frozen=True, slots=True)
class Deadline:
    """One date of one case.

    `target` is the day to aim for; `rolled` the court day that the law moves it to where the court is
    closed. `if_missed` says what follows from doing nothing. `planned` is true while the day hangs on a
    filing that is only planned.
    """

    kind: DeadlineKind
    dated: Dated
    planned: bool

    @property
    def key(self) -> str:
        """The name of its kind."""
        return self.kind.key

    @property
    def id(self) -> str:
        """Its name within the case, also where there are several of a kind."""
        return self._id(self.key)

    @property
    def first_id(self) -> str:
        """The name within the case that it began with, by which a calendar knows it."""
        return self._id((*self.formerly, self.key)[0])

    @property
    def formerly(self) -> tuple[str, ...]:
        """What its kind was called before."""
        return formerly(Named.DATE, self.key)

    @property
    def rule(self) -> str:
        """The id of the rule that explains it."""
        return self.kind.rule

    @property
    def title(self) -> str:
        """What it is, in a few words."""
        return self._of(self.dated.title or _(self.kind.title))

    @property
    def neutral(self) -> str:
        """What it is called where others may see it."""
        return _(self.kind.neutral)

    @property
    def chart(self) -> Chart | None:
        """Its words on the picture of the case; None where it is not on it."""
        chart = self.kind.chart
        if chart is None:
            return None
        says = (self.dated.says or _(chart.says)).replace("{about}", self.dated.about)
        return Chart(self._of(_(chart.title)), says)

    @property
    def meaning(self) -> Meaning:
        """A last day, a first day or a day of the court."""
        return self.kind.meaning

    @property
    def target(self) -> date:
        """The day to aim for."""
        return self.dated.due.target

    @property
    def rolled(self) -> date:
        """The court day that the law moves it to."""
        return self.dated.due.rolled

    def days(self, spell: Callable[[date], str]) -> str:
        """The day to aim for in words, with the court day it moves to."""
        return target_day(self.dated.due, spell)

    @property
    def steps(self) -> tuple[str, ...]:
        """How it is counted."""
        return self.dated.due.steps

    @property
    def who(self) -> Actor:
        """Who has to act."""
        return self.dated.who or self.kind.who

    @property
    def if_missed(self) -> str:
        """What follows from doing nothing."""
        return spaced((self.dated.if_missed or _(self.kind.if_missed), self.dated.also))

    @property
    def authority(self) -> tuple[str, ...]:
        """Where the law is found: what its rule cites, or the part of it that sets the day."""
        return self.kind.cite or self.kind.explained.authority

    @property
    def certainty(self) -> Certainty:
        """How sure the day is: as sure as its rule, unless this case or this date is less so."""
        return self.dated.certainty or self.kind.certainty or self.kind.explained.certainty

    def _id(self, key: str) -> str:
        return f"{key} {self.dated.part}".strip()

    def _of(self, title: str) -> str:
        """The title, with what it is about where a case can have several of its kind."""
        about = self.dated.about
        return _("{title}: {about}").format(title=title, about=about) if about else title

    def day_ahead(self, on: date) -> date:
        """The day to aim for; once it has passed, the court day that keeps the time open."""
        return self.rolled if self.target < on <= self.rolled else self.target

    def ahead(self, on: date) -> bool:
        """Whether one can still act on the day `on`, or the day is still to come."""
        return on <= self.rolled if self.meaning is Meaning.LAST_DAY else on < self.target

    def missed(self, on: date) -> bool:
        """Whether a last day to act has passed on the day `on`, however it is counted."""
        return self.meaning is Meaning.LAST_DAY and on > self.rolled
