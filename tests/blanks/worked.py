"""A blank that a person has learned and confirmed, and a household whose answers go onto it."""

from dataclasses import dataclass, replace
from datetime import date
from functools import cache

from firstpaper.blanks.blank import Blank
from firstpaper.blanks.filling import Filling, filled_copy, filling
from firstpaper.blanks.mapping import Map, confirmed, map_of, recognised
from firstpaper.blanks.reading import read_blank
from firstpaper.forms.filled import FilledForm
from tests.blanks.drawn_blanks import Drawn, Family, drawn

ON = date(2026, 12, 1)


@dataclass(frozen=True)
class Worked:
    """Everything about one filled copy."""

    drawn: Drawn
    blank: Blank
    map: Map
    what: Filling
    pdf: bytes


def corrected(one: Map, truth: Drawn) -> Map:
    """The map as a careful person leaves it: every field takes what it really is for."""
    lines = (replace(line, takes=truth.truth[line.key] or "") for line in one.lines)
    return confirmed(replace(one, lines=tuple(lines)), [], "A. Helper", ON)


def worked(form: FilledForm, family: Family = Family.FULL, seed: int = 1, *, flat: bool = False) -> Worked:
    """The form filled in on a drawn blank."""
    return filled_on(drawn(form.edition, family, seed), form, flat=flat)


@cache
def _learned(pdf: bytes) -> tuple[Blank, Map]:
    """The blank as it is read, and its map before a person looks at it."""
    blank = read_blank(pdf, "blank")
    return blank, map_of(blank, *recognised(blank))


def filled_on(paper: Drawn, form: FilledForm, *, flat: bool = False) -> Worked:
    """The form filled in on that paper."""
    blank, as_recognised = _learned(paper.pdf)
    one = corrected(as_recognised, paper)
    pdf, what = filled_copy(paper.pdf, "blank", filling(form, one, blank), flat=flat)
    return Worked(paper, blank, one, what, pdf)
