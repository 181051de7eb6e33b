"""Court days: which days the court is closed, and counting around them."""

from collections.abc import Iterable, Mapping
from datetime import date
from types import MappingProxyType

from firstpaper.counting.dates import short_date, weekday_name
from firstpaper.counting.days import ONE_DAY, Counted, require_count
from firstpaper.counting.holidays import SATURDAY, HolidayRule, observed_on
from firstpaper.locale import _

NO_CLOSURES: Mapping[date, str] = MappingProxyType({})


class CourtCalendar:
    """Saturdays, Sundays, judicial holidays and one-off closures of the court.

    `closures` are days on which the clerk's office is shut for the whole day, with a word on why or none;
    they count as holidays (Code Civ. Proc. 12b). `checked_years` are the years whose holidays are known;
    for any other year the rules given are used as they stand and the steps say that they were not checked.
    """

    def __init__(
        self,
        rules: Iterable[HolidayRule],
        closures: Mapping[date, str] = NO_CLOSURES,
        *,
        checked_years: range | None = None,
    ) -> None:
        self._rules = tuple(rules)
        self._closures = dict(closures)
        self._checked_years = checked_years
        self._kept: dict[int, dict[date, tuple[HolidayRule, bool]]] = {}

    def closed_because(self, day: date) -> str | None:
        """Why the court is closed that day, as "Saturday" or "court closed: flood"; None if it is open."""
        if day.weekday() >= SATURDAY:
            return weekday_name(day)
        if kept := self._kept_in(day.year).get(day):
            return _holiday(*kept)
        return _closure(self._closures[day]) if day in self._closures else None

    def is_court_day(self, day: date) -> bool:
        """Whether the day counts as a court day (Code Civ. Proc. 12a, 135)."""
        return self.closed_because(day) is None

    def holidays(self, year: int) -> dict[date, str]:
        """The days in that year on which the court keeps a holiday, with the names, in order.

        December 31 can be among them, for the January 1 of the next year.
        """
        return {day: _holiday(rule, moved) for day, (rule, moved) in self._kept_in(year).items()}

    def covers(self, day: date) -> bool:
        """Whether the holidays of that year are known."""
        return self._checked_years is None or day.year in self._checked_years

    def roll_forward(self, day: date) -> Counted:
        """The day itself if the court is open, else the next court day (Code Civ. Proc. 12a)."""
        steps = []
        reached = day
        while reason := self.closed_because(reached):
            steps.append(_closed(reached, reason))
            reached += ONE_DAY
        steps.append(_("{date}: the court is open").format(date=short_date(reached)))
        return Counted(reached, (*steps, *self._cautions(day, reached)))

    def roll_back(self, day: date) -> Counted:
        """The day itself if the court is open, else the last court day before it: the day to aim for.

        No law moves a day back. It is for a last day that a closed court does not make later, and for whoever
        would rather not count on one that it does.
        """
        steps = []
        reached = day
        while reason := self.closed_because(reached):
            steps.append(_closed(reached, reason))
            reached -= ONE_DAY
        steps.append(_("{date}: the court is open").format(date=short_date(reached)))
        return Counted(reached, (*steps, *self._cautions(day, reached)))

    def next_court_day_on_or_after(self, day: date) -> Counted:
        """The first day a clerk can take a paper: the same day as `roll_forward`."""
        return self.roll_forward(day)

    def add_court_days(self, day: date, count: int) -> Counted:
        """The day `count` court days after `day`, which is itself left out.

        Raises ValueError for a negative count.
        """
        return self._step_court_days(day, count, forward=True)

    def count_back_court_days(self, day: date, count: int) -> Counted:
        """The day `count` court days before `day`, which is itself left out (Code Civ. Proc. 12c).

        Raises ValueError for a negative count.
        """
        return self._step_court_days(day, count, forward=False)

    def _step_court_days(self, day: date, count: int, *, forward: bool) -> Counted:
        require_count(count)
        step = ONE_DAY if forward else -ONE_DAY
        steps = [_("{date}: the starting day, not counted").format(date=short_date(day))]
        reached, counted = day, 0
        while counted < count:
            reached += step
            if reason := self.closed_because(reached):
                steps.append(_closed(reached, reason))
            else:
                counted += 1
                steps.append(_("{date}: court day {number}").format(date=short_date(reached), number=counted))
        return Counted(reached, (*steps, *self._cautions(day, reached)))

    def _kept_in(self, year: int) -> dict[date, tuple[HolidayRule, bool]]:
        """The rule behind each day kept in that year, and whether the weekend moved it."""
        if year not in self._kept:
            own_days = ((rule, rule.in_year(each)) for each in (year, year + 1) for rule in self._rules)
            kept = {observed_on(own): (rule, observed_on(own) != own) for rule, own in own_days if own}
            self._kept[year] = {day: kept[day] for day in sorted(kept) if day.year == year}
        return self._kept[year]

    def _cautions(self, *days: date) -> list[str]:
        unchecked = sorted({day.year for day in days if not self.covers(day)})
        return [
            _("We have not checked the court holidays of {year}. Ask the court about this date.").format(
                year=year
            )
            for year in unchecked
        ]


def _holiday(rule: HolidayRule, moved: bool) -> str:
    return _("{holiday} (observed)").format(holiday=_(rule.name)) if moved else _(rule.name)


def _closure(why: str) -> str:
    return _("court closed: {why}").format(why=why) if why else _("court closed")


def _closed(day: date, reason: str) -> str:
    if day.weekday() >= SATURDAY:  # its name stands in the date already
        return _("{date}: the court is closed").format(date=short_date(day))
    return _("{date}: {reason}").format(date=short_date(day), reason=reason)
