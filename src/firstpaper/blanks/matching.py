"""Which field takes which answer: one alignment of the whole form, and how sure it is of each pair.

Three witnesses speak for a pair: the tooltip of the field, its name, and the words printed beside it. The
best sum over all pairs that keeps both sides in their order down the pages is taken; two neighbours may have
changed places. A pair is sure only where the whole would be clearly worse without it, and where neither
side would rather go with another that would rather have it, too. Where a witness with much to say would
choose other pairs, nothing on the form is sure. The same file gives the same pairs every time.
"""

from collections.abc import Iterable, Sequence
from enum import StrEnum
from itertools import pairwise
from statistics import median
from typing import NamedTuple

from firstpaper.blanks.alignment import Alignment, Place, Table
from firstpaper.blanks.blank import Blank, FieldKind, Side, Spot
from firstpaper.blanks.likeness import Texts, item_number, likeness, numbers, pieces
from firstpaper.blanks.wanted import Wanted
from firstpaper.forms.edition import ItemKind

RATHER = 0.15
"""By how much a pair must be better to upset others."""
SPEAKS = 0.1
"""From which likeness a witness speaks for a pair."""
AGREES, LOUD = 0.85, 0.15
"""Which share of the best it could say a witness must say for the chosen pairs; whom that is asked of, as a
share of what the loudest says."""
LEAD = 0.25
"""By how much the whole must be better with a pair than without it."""
KIND = 0.02
CLOSE = 24.0
"""How far from a field its words can be at most, in points. A third of an inch."""
WEIGHT = {"tooltip": 1.0, "name": 0.9, "printed": 0.9}


class Sure(StrEnum):
    """How sure a pair is. Only a person makes it `CONFIRMED`."""

    SURE = "sure"
    DOUBTFUL = "doubtful"
    CONFIRMED = "confirmed"


class Pair(NamedTuple):
    """One field and what it would take; `why` names what speaks for it."""

    spot: Spot
    wanted: Wanted
    sure: Sure
    why: tuple[str, ...]


class Witness(NamedTuple):
    """What one source says of each of ours (rows) and each field (columns), from 0 to 1."""

    name: str
    table: Table

    def speaks(self, one: int, spot: int) -> bool:
        """Whether it speaks for the pair."""
        return self.table[one][spot] >= SPEAKS

    def says(self, chosen: Iterable[Place]) -> float:
        """All that it says for these pairs."""
        return sum(self.table[one][spot] for one, spot in chosen)


def matched(blank: Blank, wanted: Sequence[Wanted]) -> tuple[Pair, ...]:
    """The pairs, down the pages; each field and each of ours stands in one at most."""
    spots = [spot for spot in blank.spots if spot.kind is not FieldKind.BUTTON]
    if not spots or not wanted:
        return ()
    fits = [[_fits(one, spot) for spot in spots] for one in wanted]
    witnesses = _witnesses(wanted, spots, fits)
    score = _scores(witnesses, fits)
    loose = [not (one.cell and next_one.cell) for one, next_one in pairwise([*wanted, wanted[-1]])]
    alignment = Alignment(score, loose)
    leads = alignment.leads()
    believed = _believed(witnesses, loose, list(leads))
    upset = _upset(score, list(leads))
    return tuple(
        Pair(
            spots[pair[1]],
            wanted[pair[0]],
            Sure.SURE if believed and lead >= LEAD and pair not in upset else Sure.DOUBTFUL,
            tuple(witness.name for witness in witnesses if witness.speaks(*pair)),
        )
        for pair, lead in sorted(leads.items(), key=lambda found: found[0][1])
    )


def _fits(one: Wanted, spot: Spot) -> bool:
    if one.is_box:
        return spot.kind is FieldKind.BOX
    if one.kind is ItemKind.SIGNATURE:
        return spot.kind in (FieldKind.SIGNATURE, FieldKind.TEXT)
    return spot.kind in (FieldKind.TEXT, FieldKind.CHOICE)


# --- the witnesses ------------------------------------------------------------------------------


def _witnesses(
    wanted: Sequence[Wanted], spots: Sequence[Spot], fits: Sequence[Sequence[bool]]
) -> list[Witness]:
    spoken = Texts.of(_own(one) for one in wanted)
    named = Texts.of((*_own(one), (pieces(one.key), 0.7)) for one in wanted)
    tooltips = Texts.of(
        ((pieces(spot.tooltip), 1.0), (item_number(spot.tooltip), 1.0), (numbers(spot.tooltip), 0.5))
        for spot in spots
    )
    names = Texts.of(
        ((pieces(spot.name), 1.0), (numbers(spot.name.replace("_", " ")), 0.3)) for spot in spots
    )
    return [
        Witness("tooltip", _masked(likeness(spoken, tooltips), fits)),
        Witness("name", _masked(likeness(named, names), fits)),
        Witness("printed", _printed(spoken, spots, fits)),
    ]


def _own(one: Wanted) -> tuple[tuple[list[str], float], ...]:
    """The words of one of ours, and how much each group of them counts."""
    return (
        (pieces(one.words), 1.0),
        (numbers(one.words), 0.5),
        (pieces(one.whole), 0.7),
        (pieces(one.part), 0.3),
        (numbers(one.item)[-1:], 1.0),
        (numbers(one.item)[:-1], 0.2),
    )


def _masked(table: Table, fits: Sequence[Sequence[bool]]) -> Table:
    return [
        [value if fit else 0.0 for value, fit in zip(*rows, strict=True)]
        for rows in zip(table, fits, strict=True)
    ]


def _printed(ours: Texts, spots: Sequence[Spot], fits: Sequence[Sequence[bool]]) -> Table:
    """The words beside the fields, on the side where the form as a whole puts them."""
    sides = {boxes: _sides([spot for spot in spots if spot.is_box == boxes]) for boxes in (True, False)}
    labels = [_label(spot, sides[spot.is_box]) for spot in spots]
    told = (
        (
            (pieces(label), 1.0),
            (item_number(label), 0.5),
            (numbers(label), 0.5),
            (pieces(_title(spot)), 0.7),
            (pieces(spot.heading), 0.3),
            (numbers(spot.heading)[:1], 0.2),
        )
        for label, spot in zip(labels, spots, strict=True)
    )
    return _masked(likeness(ours, Texts.of(told)), fits)


def _label(spot: Spot, sides: Sequence[Side]) -> str:
    close = (
        side for side in sides if side in spot.near and (spot.near[side].gap <= CLOSE or side is Side.COLUMN)
    )
    return next((spot.near[side].text for side in close), "")


def _title(spot: Spot) -> str:
    """The title of the table in which a text field stands, if it stands in one."""
    inside = not spot.is_box and Side.LEFT not in spot.near and Side.TITLE in spot.near
    return spot.near[Side.TITLE].text if inside else ""


def _sides(spots: Sequence[Spot]) -> tuple[Side, ...]:
    """Where the words are: of a text field before it, then above; of a box on the nearer side."""
    if spots and not spots[0].is_box:
        return (Side.LEFT, Side.ABOVE, Side.COLUMN)
    found = {
        side: [spot.near[side].gap for spot in spots if side in spot.near] for side in (Side.RIGHT, Side.LEFT)
    }
    many = [side for side, gaps in found.items() if 2 * len(gaps) > len(spots)]
    return (min(many, key=lambda side: median(found[side]), default=Side.RIGHT),)


def _scores(witnesses: Sequence[Witness], fits: Sequence[Sequence[bool]]) -> Table:
    tables = [(WEIGHT[one.name], one.table) for one in witnesses]
    return [
        [
            KIND + sum(weight * table[row][at] for weight, table in tables) if fit else 0.0
            for at, fit in enumerate(line)
        ]
        for row, line in enumerate(fits)
    ]


# --- how sure -----------------------------------------------------------------------------------


def _believed(witnesses: Sequence[Witness], loose: Sequence[bool], chosen: Sequence[Place]) -> bool:
    """Whether every witness with much to say would choose nearly the same pairs if it were heard alone."""
    alone = [(witness, Alignment(witness.table, loose).best) for witness in witnesses]
    loudest = max(best for _, best in alone)
    return all(witness.says(chosen) >= AGREES * best for witness, best in alone if best >= LOUD * loudest)


def _upset(score: Table, chosen: Sequence[Place]) -> frozenset[Place]:
    """The pairs out of which one side would rather go with another that would rather have it, too.

    So it is with a line that the form has put further off than to its neighbour's place.
    """
    of_row, of_column = dict(chosen), {column: row for row, column in chosen}
    found = set()
    for row, line in enumerate(score):
        for column, value in enumerate(line):
            held = [(row, of_row[row])] if row in of_row else []
            held += [(of_column[column], column)] if column in of_column else []
            if value > RATHER and all(value > score[one][other] + RATHER for one, other in held):
                found.update(held)
    return frozenset(found)
