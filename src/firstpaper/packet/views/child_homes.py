"""Where the children have lived: a strip for each child, to find what is missing before FL-105 is copied."""

from collections.abc import Iterator

from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.pictures.homes import strips
from firstpaper.packet.views.sheet import Sheet


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One sheet with a picture for each child; none where no home was told."""
    found = strips(brief.case, brief.on)
    if not found:
        return
    named = {f"child-{number}": each for number, each in enumerate(found, start=1)}
    yield Sheet(
        template="child-homes.html",
        title=_("Where the children have lived"),
        running=_("Where the children have lived"),
        purpose=_("Look for days that are missing before you copy FL-105."),
        follows=True,
        values={
            "children": tuple((picture, name) for picture, (name, _chart) in named.items()),
            "years": figure("children.address_history_years", brief.on).value,
        },
        pictures={picture: chart for picture, (_name, chart) in named.items()},
    )
