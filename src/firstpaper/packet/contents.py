"""Which sheets a packet holds, and in what order."""

from collections.abc import Callable, Iterable, Iterator

from firstpaper.packet.brief import Brief
from firstpaper.packet.views import (
    amended,
    attachment,
    before,
    child_homes,
    cover,
    dates_ahead,
    dates_at_a_glance,
    disclosure,
    hand_over,
    handoff,
    joint,
    open_questions,
    pointers,
    service,
    worksheet,
)
from firstpaper.packet.views.sheet import Sheet

PARTS: tuple[Callable[[Brief], Iterable[Sheet]], ...] = (
    before.sheets,
    amended.sheets,
    dates_at_a_glance.sheets,
    child_homes.sheets,
    worksheet.sheets,
    attachment.sheets,
    pointers.sheets,
    open_questions.sheets,
    dates_ahead.sheets,
    handoff.sheets,
    service.sheets,
    disclosure.sheets,
    joint.sheets,
    hand_over.sheets,
    worksheet.private_sheets,
)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The sheets of the packet in order. The cover checklist comes first and names the others."""
    others = [sheet for part in PARTS for sheet in part(brief)]
    yield cover.sheet(brief, others)
    yield from others
