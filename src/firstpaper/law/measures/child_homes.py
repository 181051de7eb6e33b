"""Where a child has lived: the stretch that a custody paper must cover, and the home state.

A child's home state is a matter of where the child *was*, not of where anybody meant to stay
(Ocegueda v. Perreira (2015) 232 Cal.App.4th 1079), so it is counted apart from a spouse's residence.
Days told in part leave no gap where the told parts can meet.
"""

from collections.abc import Iterator, Sequence
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import MissingDay, add_months, day_after, short_date
from firstpaper.counting.days import ONE_DAY
from firstpaper.facts import Case, Day, known
from firstpaper.facts.children import Child, Home, first_of_both
from firstpaper.facts.choices import IN_CALIFORNIA
from firstpaper.law.figure import figure
from firstpaper.law.measures.children import ListedChild
from firstpaper.law.words import spell_day
from firstpaper.locale import _

CALIFORNIA = "CA"


class Stretch(NamedTuple):
    """A stretch of days, both ends included."""

    first: date
    last: date


class History(NamedTuple):
    """The homes of one child against the years that form FL-105 covers.

    `since` is the first day to cover: so many years before the filing, or the birth. `gaps` are days with
    no home told. `overlaps` are days with two homes, which is right for a child who lives in both.
    """

    since: date
    until: date
    gaps: tuple[Stretch, ...]
    overlaps: tuple[Stretch, ...]

    @property
    def complete(self) -> bool:
        """Whether every day is covered."""
        return not self.gaps


def homes(case: Case, child: ListedChild) -> tuple[Home, ...]:
    """The homes of one child, oldest first: told for itself, or those of the first child of both."""
    told = case.child[child.number - 1]
    if known(told.homes) is None and known(told.same_homes) is True:
        return since_birth(_lived(first_of_both(case.child) or told), child.born)
    return _lived(told)


def _lived(child: Child) -> tuple[Home, ...]:
    return tuple(sorted(known(child.homes) or (), key=lambda home: home.start.earliest))


def since_birth(lived: tuple[Home, ...], born: Day | None) -> tuple[Home, ...]:
    """The homes as a younger child had them: from the birth on."""
    if born is None:
        return lived
    kept = (home for home in lived if home.end is None or home.end.latest >= born.earliest)
    return tuple(
        home.model_copy(update={"start": born}) if home.start.latest < born.earliest else home
        for home in kept
    )


def history_since(born: Day | None, on: date) -> date:
    """The first day that the custody declaration covers, for a filing on the day `on` (Fam. Code 3429(a)).

    So many years back, or the birth. A birth date told in part is taken at its last possible day.
    """
    years: int = figure("children.address_history_years", on).value
    since = add_months(on, -12 * years, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    return max(since, min(born.latest, on)) if born else since


def history(lived: Sequence[Home], born: Day | None, on: date) -> History:
    """The homes, oldest first, against the days to cover."""
    since = history_since(born, on)
    return History(since, on, tuple(_gaps(lived, since, on)), tuple(_overlaps(lived, since, on)))


def _gaps(lived: Sequence[Home], since: date, on: date) -> Iterator[Stretch]:
    covered = since - ONE_DAY
    for home in lived:
        if home.start.earliest > covered + ONE_DAY:
            yield Stretch(covered + ONE_DAY, min(home.start.earliest - ONE_DAY, on))
        covered = max(covered, home.end.latest if home.end else on)
        if covered >= on:
            return
    yield Stretch(covered + ONE_DAY, on)


def _overlaps(lived: Sequence[Home], since: date, on: date) -> Iterator[Stretch]:
    """Days surely in two homes. The day of a move may belong to both."""
    covered: date | None = None
    for home in lived:
        end = home.end.earliest if home.end else on
        if covered and max(home.start.latest, since) < min(covered, end):
            yield Stretch(max(home.start.latest, since), min(covered, end))
        covered = max(covered, end) if covered else end


class Basis(StrEnum):
    """How a child stands to California as the home state (Fam. Code 3402(g), 3421(a)(1))."""

    HERE = "here"
    SINCE_BIRTH = "since_birth"
    LEFT_LATELY = "left_lately"
    NOT_YET = "not_yet"
    ELSEWHERE = "elsewhere"
    UNCLEAR = "unclear"


class HomeState(NamedTuple):
    """Whether California is the home state of one child on one filing day.

    `line` is the day on which the time is full (`HERE`, `NOT_YET`), or the last day on which a child who
    left still counts (`LEFT_LATELY`, `ELSEWHERE`). On the line itself a person should look.
    """

    basis: Basis
    line: date | None = None
    on_the_line: bool = False
    steps: tuple[str, ...] = ()


def home_state(lived: Sequence[Home], born: Day | None, on: date, *, parent_here: bool | None) -> HomeState:
    """The home state by the homes told, oldest first. `parent_here`: a parent lives in California."""
    stay = _last_stay_here(lived)
    if not lived or _two_states_at_once(lived, on):
        return HomeState(Basis.UNCLEAR)
    if stay is None:
        return HomeState(Basis.ELSEWHERE)
    start, end = stay
    if end is None or end.latest >= on:
        return _lives_here(start, born, on)
    return _has_left(start, end, born, on, parent_here)


def parent_lives_here(case: Case) -> bool | None:
    """Whether one of the two lives in California; None where that is not told of both."""
    lives = (known(case.residence.petitioner.lives), known(case.residence.respondent.lives))
    if any(each in IN_CALIFORNIA for each in lives):
        return True
    return None if None in lives else False


def _last_stay_here(lived: Sequence[Home]) -> tuple[Day, Day | None] | None:
    """The last stay in California. Homes there that follow on each other are one stay."""
    stay: tuple[Day, Day | None] | None = None
    for home in (home for home in lived if home.state == CALIFORNIA):
        if stay and _follows_on(home, stay[1]):
            stay = stay[0], _later(stay[1], home.end)
        else:
            stay = home.start, home.end
    return stay


def _follows_on(home: Home, end: Day | None) -> bool:
    """Whether a home may have begun by the day after the end of the one before; that may still last."""
    return end is None or home.start.earliest <= day_after(end.latest)


def _later(one: Day | None, other: Day | None) -> Day | None:
    return max(one, other, key=lambda day: day.latest) if one and other else None


def _two_states_at_once(lived: Sequence[Home], on: date) -> bool:
    """Whether the child surely lived here and elsewhere at once within the months that count."""
    since = add_months(on, -_months(on), missing_day=MissingDay.LAST_DAY_OF_MONTH)
    here = [home for home in lived if home.state == CALIFORNIA]
    away = [home for home in lived if home.state != CALIFORNIA]
    return any(_together(one, other, since, on) for one in here for other in away)


def _together(one: Home, other: Home, since: date, on: date) -> bool:
    """Whether the two homes surely overlap after `since`, by more than the day of a move."""
    begins = max(one.start.latest, other.start.latest, since)
    ends = min(home.end.earliest if home.end else on for home in (one, other))
    return begins < ends


def _lives_here(start: Day, born: Day | None, on: date) -> HomeState:
    line = _full(start.latest, on)
    steps = (
        _first_day_here(start),
        _("{date}: {months} months later").format(date=short_date(line), months=_months(on)),
    )
    if line <= on:
        return HomeState(Basis.HERE, line, line == on, steps)
    if _since_birth(start, born) and born and on < _full(born.latest, on):
        return HomeState(Basis.SINCE_BIRTH)
    unclear = _full(start.earliest, on) <= on
    return HomeState(Basis.UNCLEAR if unclear else Basis.NOT_YET, line, steps=steps)


def _first_day_here(start: Day) -> str:
    """The day from which the stay is counted; one told in part is counted from its last day."""
    if start.whole:
        return _("{date}: the first day told in California").format(date=short_date(start.whole))
    told = _("{date}: the last day of {told}, the first time told in California")
    return told.format(date=short_date(start.latest), told=spell_day(start))


def _has_left(start: Day, end: Day, born: Day | None, on: date, parent_here: bool | None) -> HomeState:
    was_home = _full(start.latest, on) <= end.earliest or _since_birth(start, born)
    until = _full(end.earliest, on)
    steps = (
        _("{date}: the child left California").format(date=short_date(end.earliest)),
        _("{date}: {months} months later").format(date=short_date(until), months=_months(on)),
    )
    if not was_home or parent_here is False or _full(end.latest, on) < on:
        return HomeState(Basis.ELSEWHERE, until, steps=steps)
    if parent_here is None or until < on:
        return HomeState(Basis.UNCLEAR, until, steps=steps)
    return HomeState(Basis.LEFT_LATELY, until, until == on, steps)


def _since_birth(start: Day, born: Day | None) -> bool:
    """Whether the stay began with the birth, as far as the told parts go."""
    return born is not None and start.earliest <= born.latest


def _full(day: date, on: date) -> date:
    return add_months(day, _months(on), missing_day=MissingDay.LAST_DAY_OF_MONTH)


def _months(on: date) -> int:
    months: int = figure("children.home_state_months", on).value
    return months
