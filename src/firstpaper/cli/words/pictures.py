"""What the pictures of the packet show, in sentences: for a terminal, a screen reader and a phone call."""

from collections.abc import Iterator
from datetime import date
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.packet.pictures.chart import Chart

PicturesOption = Annotated[
    bool, typer.Option("--pictures", help=_("Also say in sentences what the pictures of the packet show."))
]


def before_filing(case: "Case", on: date) -> list[str]:
    """How long each has lived here, where the children have lived, and the days of the case."""
    from firstpaper.packet.pictures.homes import strips
    from firstpaper.packet.pictures.residence import residence
    from firstpaper.packet.pictures.timeline import timeline

    bars = residence(case, on)
    homes = (chart for _child, chart in strips(case, on))
    return list(_said([*([bars] if bars else []), *homes, timeline(case, on)]))


def days_of_the_case(case: "Case", on: date) -> list[str]:
    """The days of the case, from the wedding to the earliest end."""
    from firstpaper.packet.pictures.timeline import timeline

    return list(_said([timeline(case, on)]))


def _said(charts: "list[Chart]") -> Iterator[str]:
    from firstpaper.packet.pictures.words import text_of

    yield _("WHAT THE PICTURES OF THE PACKET SHOW")
    yield from (text_of(chart) for chart in charts)
