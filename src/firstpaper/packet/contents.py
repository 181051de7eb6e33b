"""Which sheets a packet holds, in what order, and at which stage of the case each is wanted.

Nobody needs forty pages on the day they file. So each part knows its stage, and the stages can be drafted
one at a time. Within a stage the sheets stand in the order in which they are worth reading.
"""

from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass

from firstpaper.facts import Case
from firstpaper.forms.filing import Stage
from firstpaper.law.measures.record import is_filed
from firstpaper.packet.brief import Brief
from firstpaper.packet.views import (
    after,
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
    last_check,
    open_questions,
    pointers,
    road,
    service,
    worksheet,
)
from firstpaper.packet.views.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Part:
    """Sheets of one kind, and the stage at which they are wanted."""

    stage: Stage
    sheets: Callable[[Brief], Iterable[Sheet]]


PARTS = (
    Part(Stage.FIRST, before.sheets),
    Part(Stage.FIRST, pointers.sheets),
    Part(Stage.FIRST, open_questions.sheets),
    Part(Stage.FIRST, hand_over.sheets),
    Part(Stage.FIRST, joint.sheets),
    Part(Stage.FIRST, amended.sheets),
    Part(Stage.FIRST, dates_at_a_glance.before_the_filing),
    Part(Stage.FIRST, child_homes.sheets),
    Part(Stage.FIRST, worksheet.sheets),
    Part(Stage.FIRST, last_check.sheets),
    Part(Stage.FIRST, attachment.sheets),
    Part(Stage.FIRST, joint.worksheets),
    Part(Stage.FIRST, worksheet.private_sheets),
    Part(Stage.FIRST, handoff.before_the_filing),
    Part(Stage.LATER, dates_ahead.sheets),
    Part(Stage.LATER, dates_at_a_glance.since_the_filing),
    Part(Stage.LATER, service.sheets),
    Part(Stage.LATER, disclosure.sheets),
    Part(Stage.LATER, road.sheets),
    Part(Stage.LATER, handoff.since_the_filing),
)


def stage_of(case: Case) -> Stage:
    """The stage of a case by what was recorded."""
    return Stage.LATER if is_filed(case) else Stage.FIRST


def sheets(
    brief: Brief, stages: Collection[Stage] = tuple(Stage), own: Sequence[Sheet] = ()
) -> Iterator[Sheet]:
    """The sheets of these stages in order. A page to start from comes first in each, and names the others.

    `own` are sheets that a clinic brings; they come last in the first of the stages.
    """
    if Stage.FIRST in stages:
        others = (*_of(Stage.FIRST, brief), *own)
        yield cover.sheet(brief, others, with_later=Stage.LATER in stages)
        yield from others
    if Stage.LATER in stages:
        others = (*_of(Stage.LATER, brief), *(() if Stage.FIRST in stages else own))
        yield after.sheet(brief, others)
        yield from others


def _of(stage: Stage, brief: Brief) -> tuple[Sheet, ...]:
    return tuple(sheet for part in PARTS if part.stage is stage for sheet in part.sheets(brief))
