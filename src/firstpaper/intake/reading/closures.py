"""Days on which the court was closed, one closure a line: ``1/8/2027, power cut``."""

from datetime import date

from pydantic import ValidationError

from firstpaper.facts import Day
from firstpaper.facts.record import Closure
from firstpaper.intake.reading.dates import spell
from firstpaper.intake.reading.periods import each_line, is_period, leading_day, read_period
from firstpaper.intake.refusals import AnswerRefused, refusal
from firstpaper.locale import _


def read_closures(text: str, today: date) -> tuple[Closure, ...]:
    """The closures, in the order typed. Raises AnswerRefused naming the line that is not clear."""
    return each_line(text, lambda line: _closure(line, today))


def _closure(line: str, today: date) -> Closure:
    if not is_period(line):
        first, why = leading_day(line, today)
        return _told(first, None, why)
    period = read_period(line, today)
    if period.end is None:
        raise AnswerRefused(
            _("Please give the last day too, like: 1/8/2027 to 1/12/2027, flood. You can add days later.")
        )
    return _told(period.start, period.end, period.why)


def _told(first: Day, last: Day | None, why: str) -> Closure:
    for day in filter(None, (first, last)):
        if day.whole is None:
            raise AnswerRefused(
                _("{day} is not a whole day. A court closure needs the month, the day and the year.").format(
                    day=spell(day)
                )
            )
    try:
        return Closure(first=first, last=last, why=why.strip(" ,:;.-\u2013\u2014"))
    except ValidationError as error:
        raise refusal(error) from None
