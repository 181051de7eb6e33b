"""The read-along of a form, and the road from the filing to the judgment: sheets to read.

guide = read_along("FL-100", on)
guide.pdf()       one tagged PDF/UA-1 file
guide.html()      the same for a screen
"""

from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.forms.filing import maker
from firstpaper.packet.drawing import drawn
from firstpaper.packet.views import guide
from firstpaper.packet.views.sheet import Sheet

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.forms.filled import FilledForm


class Guide(NamedTuple):
    """Sheets to read, not drawn yet."""

    sheets: tuple[Sheet, ...]
    on: date

    @property
    def title(self) -> str:
        """The title of the document. It names nobody."""
        return self.sheets[0].title

    def pdf(self) -> bytes:
        """The sheets as one PDF. The same day and case give the same bytes."""
        return drawn(self.sheets, self.title, self.on)

    def html(self) -> str:
        """The sheets as one page for a screen, with nothing to fetch."""
        from firstpaper.packet.screen import screen  # noqa: PLC0415

        return screen(self.title, self.sheets)


def read_along(form: str, on: date, case: "Case | None" = None) -> Guide:
    """Every item of a form explained, for a filing on the day `on`; with a case also what it does there.

    Without a case nothing is loaded that works on one.
    """
    filled = None if case is None else _filled(form, on, case)
    return Guide(tuple(guide.sheets(form, on, filled)), on)


def _filled(form: str, on: date, case: "Case") -> "Sequence[FilledForm]":
    from firstpaper.intake import standing  # noqa: PLC0415

    return maker(form.partition("(")[0])(standing(case), on)


def road(on: date, case: "Case | None" = None) -> Guide:
    """The road from the filing to the judgment, with the days of a case where one is given."""
    from firstpaper.intake import standing  # noqa: PLC0415
    from firstpaper.packet.views import road as road_view  # noqa: PLC0415

    return Guide((road_view.sheet(on, case and standing(case)),), on)
