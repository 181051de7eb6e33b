"""Asking, once a sitting, whether this person writes the month or the day first."""

from firstpaper.cli.terminal import Terminal
from firstpaper.counting import spell_date
from firstpaper.intake import Asked
from firstpaper.intake.habits import day_comes_first
from firstpaper.intake.reading.day_order import DATED, DayOrder, order_shown, two_readings, with_month_first
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.locale import _


class DayHabit:
    """What one sitting has shown of how dates are typed. Unknown at first; asked when it matters."""

    def __init__(self, terminal: Terminal) -> None:
        self._terminal = terminal
        self._order: DayOrder | None = None

    def in_order(self, asked: Asked, text: str) -> str:
        """The answer with its days in an order that cannot be mistaken.

        Raises AnswerRefused where neither reading is chosen.
        """
        if asked.kind not in DATED:
            return text
        self._learn(order_shown(text))
        if day_comes_first():
            return with_month_first(text, self._each_time(text))
        if two_readings(text) and self._order is None:
            self._order = self._ask(text)
        return with_month_first(text, self._order)

    def _each_time(self, text: str) -> DayOrder | None:
        """Where the day comes first, both orders are common in one family: each doubt is asked about."""
        return self._ask(text) if two_readings(text) else order_shown(text)

    def _learn(self, shown: DayOrder | None) -> None:
        """A day above 12 in the second place shows the habit; one in the first place puts it in doubt."""
        if shown is DayOrder.MONTH_FIRST and self._order is None:
            self._order = shown
        elif shown is DayOrder.DAY_FIRST and self._order is DayOrder.MONTH_FIRST:
            self._order = None

    def _ask(self, text: str) -> DayOrder:
        found = two_readings(text)
        assert found
        typed, month_first, day_first = found
        self._terminal.line(_("{typed} can be read two ways. Which day do you mean?").format(typed=typed))
        self._terminal.line(f"  1. {spell_date(month_first)}")
        self._terminal.line(f"  2. {spell_date(day_first)}")
        answer = self._terminal.read(_("Your answer: ")).strip().rstrip(".")
        self._terminal.line()
        if answer not in ("1", "2"):
            raise AnswerRefused(
                _("Then type the date once more, with the month as a word, like March 14 2026.")
            )
        return DayOrder.MONTH_FIRST if answer == "1" else DayOrder.DAY_FIRST
