"""A filing day for which the law or the forms here have nothing, said to a person."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.errors import UserError
from firstpaper.forms.edition import NoEditionError
from firstpaper.law.figure_file import FigureNotInForce
from firstpaper.locale import _


class NoLawForDay(UserError):
    """Firstpaper cannot work out papers for {day}. {reason}

    Using the law of another day could give you wrong papers, so it stops. Choose another day with --on,
    or ask the court's self-help center.
    """

    code = "no_law_for_day"


def no_law_for(missing: LookupError) -> NoLawForDay | None:
    """What to say to a person of a figure or an edition that is missing; None for any other fault."""
    if not isinstance(missing, FigureNotInForce | NoEditionError):
        return None
    return NoLawForDay(day=_("that day"), reason=missing)


@contextmanager
def law_as_of(day: date) -> Iterator[None]:
    """Turn "no such figure" and "no such edition" for `day` into a message for a person."""
    try:
        yield
    except (FigureNotInForce, NoEditionError) as missing:
        raise NoLawForDay(day=spell_date(day), reason=missing) from missing
