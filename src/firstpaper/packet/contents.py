"""Which sheets a packet holds, in what order, and at which stage of the case each is wanted.

Nobody needs forty pages on the day they file. So each part knows its stage, and the stages can be drafted
one at a time. Within a stage the sheets stand in the order in which they are worth reading.
"""

from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from firstpaper.facts import Case
from firstpaper.forms.filing import Stage
from firstpaper.law.measures.record import is_filed
from firstpaper.locale import speaking
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


class Part(NamedTuple):
    """Sheets of one kind, the stage at which they are wanted, and whether a helper reads them."""

    stage: Stage
    sheets: Callable[[Brief], Iterable[Sheet]]
    helper: bool = False

    def made(self, brief: Brief, helped: "Helped | None") -> Iterator[Sheet]:
        """The sheets; those that a helper reads in the helper's language, under a title of the filer's."""
        if helped is None or not self.helper:
            yield from self.sheets(brief)
            return
        with speaking(helped.language):
            theirs = tuple(self.sheets(helped.brief))
        for ours, other in zip(self.sheets(brief), theirs, strict=True):
            yield replace(other, title=ours.title, purpose=ours.purpose, group=ours.group, short=ours.short)


class Helped(NamedTuple):
    """What a helper who reads another language is given: the brief, worked out in that language."""

    brief: Brief
    language: str


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
    Part(Stage.FIRST, handoff.before_the_filing, helper=True),
    Part(Stage.LATER, dates_ahead.sheets),
    Part(Stage.LATER, dates_at_a_glance.since_the_filing),
    Part(Stage.LATER, service.sheets),
    Part(Stage.LATER, disclosure.sheets),
    Part(Stage.LATER, road.sheets),
    Part(Stage.LATER, handoff.since_the_filing, helper=True),
)


def stage_of(case: Case) -> Stage:
    """The stage of a case by what was recorded."""
    return Stage.LATER if is_filed(case) else Stage.FIRST


def sheets(
    brief: Brief,
    stages: Collection[Stage] = tuple(Stage),
    own: Sequence[Sheet] = (),
    helped: Helped | None = None,
) -> Iterator[Sheet]:
    """The sheets of these stages in order. A page to start from comes first in each, and names the others.

    `own` are sheets that a clinic brings; they come last in the first of the stages. `helped` is there where
    the hand-off sheet is for somebody who reads another language.
    """
    if Stage.FIRST in stages:
        others = (*_of(Stage.FIRST, brief, helped), *own)
        yield cover.sheet(brief, others, with_later=Stage.LATER in stages)
        yield from others
    if Stage.LATER in stages:
        others = (*_of(Stage.LATER, brief, helped), *(() if Stage.FIRST in stages else own))
        yield after.sheet(brief, others)
        yield from others


def _of(stage: Stage, brief: Brief, helped: Helped | None) -> tuple[Sheet, ...]:
    return tuple(sheet for part in PARTS if part.stage is stage for sheet in part.made(brief, helped))
