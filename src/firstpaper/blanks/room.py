"""How much fits on a sheet that somebody brought, by the size of its own fields."""

from collections.abc import Iterator
from dataclasses import replace

from firstpaper.blanks.blank import Blank, FieldKind, Spot
from firstpaper.blanks.lettering import LEADING, MARGIN, SMALLEST
from firstpaper.blanks.mapping import Map, edition_of
from firstpaper.forms.edition import Edition, Item

LETTER = 0.55
"""How wide a letter of a plain font is on average, as a share of its size; on the large side."""


def measured_edition(one: Map, blank: Blank) -> Edition | None:
    """Our edition with the room that the fields of this blank have; None where we do not know the edition.

    An answer that goes into several fields keeps our estimate.
    """
    edition, known = edition_of(one.form, one.edition)
    if edition is None or not known:
        return None
    return replace(edition, items=tuple(_measured(item, one, blank) for item in edition.items))


def _measured(item: Item, one: Map, blank: Blank) -> Item:
    spots = list(_text_fields(item, one, blank))
    if len(spots) != 1:
        return item
    fits, lines = _room(spots[0])
    return replace(item, fits=fits, lines=lines)


def _text_fields(item: Item, one: Map, blank: Blank) -> Iterator[Spot]:
    spots = (blank.by_key.get(line.key) for line in one.taking(item.concept))
    return (spot for spot in spots if spot and spot.kind is FieldKind.TEXT)


def _room(spot: Spot) -> tuple[int, int]:
    """Letters on a line, and lines."""
    size = spot.size or SMALLEST + 1
    fits = max(1, int((spot.place.width - 2 * MARGIN) / (LETTER * size)))
    lines = max(1, int((spot.place.height - MARGIN) / (LEADING * size))) if spot.lines else 1
    return (min(fits, spot.longest) if spot.longest and lines == 1 else fits), lines
