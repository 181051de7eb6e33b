"""The private money pages of one household, beside the packet and never in it.

pages = money_pages(case, on)
pages.pdf()       one tagged PDF/UA-1 file
pages.html()      the same pages for a screen
pages.reckoning   the figures behind them
"""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.locale import _
from firstpaper.packet import unprintable
from firstpaper.packet.drawing import drawn
from firstpaper.packet.reckoning import Reckoning, reckon
from firstpaper.packet.views.money import estimates, left_out, owned, spousal, start, sums, support
from firstpaper.packet.views.sheet import Sheet

SAID = (owned.sheets, sums.sheets, spousal.sheets)
ESTIMATED = (estimates.sheets, support.sheets)
LEFT_OUT = (left_out.sheets,)


class MoneyPages(NamedTuple):
    """The money pages worked out for one day, not drawn yet."""

    reckoning: Reckoning
    sheets: tuple[Sheet, ...]

    @property
    def title(self) -> str:
        """The title of the document. It names nobody: file lists and tabs show it."""
        return _("Private pages")

    @property
    def warnings(self) -> tuple[str, ...]:
        """What somebody typed that no font can print."""
        return unprintable(self.reckoning.case)

    def pdf(self) -> bytes:
        """The pages as one PDF. The same case and day give the same bytes."""
        return drawn(self.sheets, self.title, self.reckoning.on)

    def html(self) -> str:
        """The pages as one page for a screen, with nothing to fetch."""
        from firstpaper.packet.screen import screen  # noqa: PLC0415

        return screen(self.title, self.sheets)


def money_pages(case: Case, on: date) -> MoneyPages:
    """Work out the private money pages of a case for the day `on`."""
    found = reckon(case, on)
    return MoneyPages(found, tuple(_sheets(found)))


def _sheets(found: Reckoning) -> Iterator[Sheet]:
    """What can be said, then what is estimated, then what is left out; first the page that names them."""
    said, estimated, out = (
        tuple(sheet for part in parts for sheet in part(found)) for parts in (SAID, ESTIMATED, LEFT_OUT)
    )
    yield start.sheet(found, said, estimated, out)
    yield from (*said, *estimated, *out)
