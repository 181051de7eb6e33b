"""Which field takes which answer: one alignment of the whole form, and how sure it is of each pair.

Three witnesses speak for a pair: the tooltip of the field, its name, and the words printed beside it. The
best sum over all pairs that keeps both sides in their order down the pages is found first; what stands out of
order is matched in further rounds, and is then harder to be sure of. A pair is sure only where two witnesses
name it apart from every other, or one does and the order agrees, and where none speaks against it. Witnesses
that keep contradicting each other are not believed. The same file gives the same pairs every time.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property
from statistics import median

from firstpaper.blanks.blank import Blank, FieldKind, Side, Spot
from firstpaper.blanks.likeness import Texts, likeness, numbers, pieces
from firstpaper.blanks.wanted import Wanted
from firstpaper.forms.edition import ItemKind

Table = list[list[float]]
Place = tuple[int, int]
ROUNDS = 4
SPEAKS, NEAR_BEST, AGAINST = 0.30, 0.92, 0.97
"""From which likeness a witness speaks; how near its best a pair must be; below which share it is against."""
CONTRADICTS, FEW = 0.2, 2
"""A witness that speaks against a larger share of the pairs is not heard. Unless two others that have much to
say agree, all pairs are then doubtful."""
LEAD = 0.25
"""By how much the whole must be better with a pair than with any other, where one witness alone names it."""
KIND = 0.02
CLOSE = 24.0
"""How far from a field its words can be at most, in points. A third of an inch."""
WEIGHT = {"tooltip": 1.0, "name": 0.9, "printed": 0.9}


class Sure(StrEnum):
    """How sure a pair is. Only a person makes it `CONFIRMED`."""

    SURE = "sure"
    DOUBTFUL = "doubtful"
    CONFIRMED = "confirmed"


@dataclass(frozen=True, slots=True)
class Pair:
    """One field and what it would take; `why` names what speaks for it."""

    spot: Spot
    wanted: Wanted
    sure: Sure
    why: tuple[str, ...]


@dataclass(frozen=True)
class Witness:
    """What one source says of each of ours (rows) and each field (columns), from 0 to 1."""

    name: str
    table: Table

    @cached_property
    def for_spots(self) -> tuple[frozenset[int], ...]:
        """For each field the rows that are near its best; none where the witness says nothing of it."""
        return tuple(_near_best(column) for column in zip(*self.table, strict=True))

    @cached_property
    def for_ours(self) -> tuple[frozenset[int], ...]:
        """For each of ours the fields that are near its best."""
        return tuple(_near_best(row) for row in self.table)

    def names(self, one: int, spot: int) -> bool:
        """Whether it names this pair apart from every other."""
        return self.for_spots[spot] == {one} and self.for_ours[one] == {spot}

    def speaks(self, one: int, spot: int) -> bool:
        """Whether it speaks for the pair."""
        return self.table[one][spot] >= SPEAKS

    def against(self, one: int, spot: int, fields: Mapping[int, int]) -> bool:
        """Whether it speaks for another pair that is not better served. `fields`: the field of each."""
        mine = self.table[one][spot]
        return any(
            row[spot] >= SPEAKS and mine < AGAINST * row[spot] and not self._served(other, row[spot], fields)
            for other, row in enumerate(self.table)
        )

    def _served(self, one: int, likeness: float, fields: Mapping[int, int]) -> bool:
        return one in fields and self.table[one][fields[one]] >= 0.95 * likeness


def matched(blank: Blank, wanted: Sequence[Wanted]) -> tuple[Pair, ...]:
    """The pairs, down the pages; each field and each of ours stands in one at most."""
    spots = [spot for spot in blank.spots if spot.kind is not FieldKind.BUTTON]
    if not spots or not wanted:
        return ()
    fits = [[_fits(one, spot) for spot in spots] for one in wanted]
    witnesses = _witnesses(wanted, spots, fits)
    score = _scores(witnesses, fits)
    chosen = _chosen(score)
    cells = frozenset(at for at, one in enumerate(wanted) if one.cell)
    judge = _Judge(score, witnesses, chosen, cells)
    return tuple(
        Pair(spots[spot], wanted[one], *judge.verdict(one, spot))
        for one, spot in sorted(chosen, key=lambda pair: pair[1])
    )


def _near_best(values: Sequence[float]) -> frozenset[int]:
    best = max(values)
    if best < SPEAKS:
        return frozenset()
    return frozenset(at for at, value in enumerate(values) if value >= NEAR_BEST * best)


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
    spoken = Texts.of(
        (
            (pieces(one.words), 1.0),
            (pieces(one.part), 0.3),
            (numbers(one.item)[-1:], 1.0),
            (numbers(one.item)[:-1], 0.2),
        )
        for one in wanted
    )
    named = Texts.of(
        (
            (pieces(one.words), 1.0),
            (pieces(one.key), 0.7),
            (pieces(one.part), 0.3),
            (numbers(one.item)[-1:], 1.0),
        )
        for one in wanted
    )
    tooltips = Texts.of(((pieces(spot.tooltip), 1.0), (numbers(spot.tooltip)[-1:], 1.0)) for spot in spots)
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
    part = 0.3
    return (
        (pieces(one.words), 1.0),
        (pieces(one.whole), 0.4),
        (pieces(one.part), part),
        (numbers(one.item)[-1:], 0.3 if one.cell else 1.0),
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
            (numbers(label)[-1:], 0.5),
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


def _sides(spots: Sequence[Spot]) -> tuple[Side, ...]:
    """Where the words are: of a text field before it, then above; of a box on the nearer side."""
    if spots and not spots[0].is_box:
        return (Side.LEFT, Side.ABOVE, Side.COLUMN)
    found = {
        side: [spot.near[side].gap for spot in spots if side in spot.near] for side in (Side.RIGHT, Side.LEFT)
    }
    many = [side for side, gaps in found.items() if 2 * len(gaps) > len(spots)]
    return (min(many, key=lambda side: median(found[side]), default=Side.RIGHT),)


# --- the alignment ------------------------------------------------------------------------------


def _scores(witnesses: Sequence[Witness], fits: Sequence[Sequence[bool]]) -> Table:
    tables = [(WEIGHT[one.name], one.table) for one in witnesses]
    return [
        [
            KIND + sum(weight * table[row][at] for weight, table in tables) if fit else 0.0
            for at, fit in enumerate(line)
        ]
        for row, line in enumerate(fits)
    ]


def _chosen(score: Table) -> dict[tuple[int, int], int]:
    """The pairs, each with the round that found it: round 1 keeps the order of the whole form."""
    rows, columns = list(range(len(score))), list(range(len(score[0])))
    found: dict[tuple[int, int], int] = {}
    for turn in range(1, ROUNDS + 1):
        new = [pair for pair in _in_order(score, rows, columns) if turn == 1 or score[pair[0]][pair[1]] > 0.3]
        found.update(dict.fromkeys(new, turn))
        rows = [row for row in rows if row not in {pair[0] for pair in new}]
        columns = [column for column in columns if column not in {pair[1] for pair in new}]
        if not new or not rows or not columns:
            break
    return found


def _in_order(score: Table, rows: Sequence[int], columns: Sequence[int]) -> Iterator[tuple[int, int]]:
    """The pairs with the highest sum that keep the order of both sides."""
    best = _sums([[score[row][column] for column in columns] for row in rows])
    i, j = len(rows), len(columns)
    while i and j:
        if best[i][j] == best[i - 1][j]:
            i -= 1
        elif best[i][j] == best[i][j - 1]:
            j -= 1
        else:
            i, j = i - 1, j - 1
            yield rows[i], columns[j]


# --- how sure -----------------------------------------------------------------------------------


class _Judge:
    """Says how sure each chosen pair is."""

    def __init__(
        self,
        score: Table,
        witnesses: Sequence[Witness],
        chosen: Mapping[Place, int],
        cells: frozenset[int],
    ) -> None:
        self.fields, self.cells = dict(chosen.keys()), cells
        self.lead = _leads(score, [pair for pair, turn in chosen.items() if turn == 1])
        steady = tuple(witness for witness in witnesses if self._keeps_to(witness))
        talking = [witness for witness in steady if 2 * len(self._spoken(witness)) >= len(self.fields)]
        self.believed = len(steady) == len(witnesses) or len(talking) > 1
        self.witnesses = steady

    def _told_apart(self, one: int, spot: int) -> bool:
        """Whether some witness tells the pair from its neighbours, which may have changed places."""
        return any(
            witness.for_spots[spot] == {one} or witness.for_ours[one] == {spot} for witness in self.witnesses
        )

    def _keeps_to(self, witness: Witness) -> bool:
        """Whether a witness seldom contradicts the pairs of which it says something."""
        spoken = self._spoken(witness)
        against = sum(witness.against(*pair, self.fields) for pair in spoken)
        return against <= max(FEW, CONTRADICTS * len(spoken))

    def _spoken(self, witness: Witness) -> list[Place]:
        return [pair for pair in self.fields.items() if witness.for_spots[pair[1]]]

    def verdict(self, one: int, spot: int) -> tuple[Sure, tuple[str, ...]]:
        """How sure the pair is, and what speaks for it."""
        speaking = [witness.name for witness in self.witnesses if witness.speaks(one, spot)]
        alone = [witness.name for witness in self.witnesses if witness.names(one, spot)]
        lead = self.lead.get((one, spot), 0.0)
        why = (*speaking, *(("order",) if (one, spot) in self.lead else ()))
        against = any(witness.against(one, spot, self.fields) for witness in self.witnesses)
        named = len(alone) > 1 or (lead >= LEAD and (len(speaking) > 1 or bool(alone)))
        sure = named and not against and (one in self.cells or self._told_apart(one, spot))
        return (Sure.SURE if sure and self.believed else Sure.DOUBTFUL), why


def _leads(score: Table, chosen: Sequence[Place]) -> dict[Place, float]:
    """By how much the whole alignment is better with each pair than with any other for either side."""
    rows, columns = len(score), len(score[0])
    before, after = _sums(score), _sums([line[::-1] for line in score[::-1]])

    def through(row: int, column: int) -> float:
        return before[row][column] + score[row][column] + after[rows - row - 1][columns - column - 1]

    def without_row(row: int) -> float:
        return max(before[row][at] + after[rows - row - 1][columns - at] for at in range(columns + 1))

    def without_column(column: int) -> float:
        return max(before[at][column] + after[rows - at][columns - column - 1] for at in range(rows + 1))

    leads = {}
    for row, column in chosen:
        others = [through(row, at) for at in range(columns) if at != column and score[row][at]]
        others += [through(at, column) for at in range(rows) if at != row and score[at][column]]
        rivals = max((*others, without_row(row), without_column(column)))
        leads[row, column] = through(row, column) - rivals
    return leads


def _sums(score: Table) -> Table:
    """The best sum of the pairs in order among the first rows and columns, for each number of them."""
    width = len(score[0]) + 1
    best = [[0.0] * width]
    for scores in score:
        above, line = best[-1], [0.0] * width
        for at, value in enumerate(scores, 1):
            taken = above[at - 1] + value if value else 0.0
            line[at] = max(taken, above[at], line[at - 1])
        best.append(line)
    return best
