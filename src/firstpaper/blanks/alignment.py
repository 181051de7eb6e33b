"""Two rows of things laid side by side: the best pairs that keep the order of both."""

from collections.abc import Iterator, Mapping, Sequence
from operator import add

Table = list[list[float]]
Place = tuple[int, int]
CROSSING = 0.05
"""What it costs two neighbours to change places."""


class Alignment:
    """The pairs with the highest sum that keep the order of both sides, but that two neighbours may
    change places.

    `loose` says of each of ours whether it may change places with the next: two lines of a form may, two
    cells of a table may not.
    """

    def __init__(self, score: Table, loose: Sequence[bool]) -> None:
        self.score, self.loose = score, loose
        self.rows, self.columns = len(score), len(score[0])
        turned = [line[::-1] for line in score[::-1]]
        self.before = _sums(score, [False, *loose[:-1]])
        after = _sums(turned, [False, *loose[-2::-1]])
        self.after = [line[::-1] for line in after[::-1]]

    @property
    def best(self) -> float:
        """The highest sum."""
        return self.before[-1][-1]

    def pairs(self) -> Iterator[Place]:
        """The chosen pairs, from the last to the first."""
        i, j = self.rows, self.columns
        best = self.before
        while i and j:
            if best[i][j] == best[i - 1][j]:
                i -= 1
            elif best[i][j] == best[i][j - 1]:
                j -= 1
            elif best[i][j] == best[i - 1][j - 1] + self.score[i - 1][j - 1]:
                i, j = i - 1, j - 1
                yield i, j
            else:
                i, j = i - 2, j - 2
                yield from ((i + 1, j), (i, j + 1))

    def leads(self) -> Mapping[Place, float]:
        """The chosen pairs, each with how much lower the sum is without it."""
        sums = [[self._with(row, column) for column in range(self.columns)] for row in range(self.rows)]
        columns = list(zip(*sums, strict=True))
        lone_row = [max(map(add, self.before[row], self.after[row + 1])) for row in range(self.rows)]
        over, under = list(zip(*self.before, strict=True)), list(zip(*self.after, strict=True))
        lone_column = [max(map(add, over[at], under[at + 1])) for at in range(self.columns)]
        return {
            (row, column): self.best
            - max(
                _highest(sums[row], but=column),
                _highest(columns[column], but=row),
                lone_row[row],
                lone_column[column],
            )
            for row, column in self.pairs()
        }

    def _with(self, row: int, column: int) -> float:
        """The best sum in which this row has this column."""
        value = self.score[row][column]
        if not value:
            return 0.0
        straight = self.before[row][column] + value + self.after[row + 1][column + 1]
        return max(straight, self._crossed(row, column - 1), self._crossed(row - 1, column))

    def _crossed(self, row: int, column: int) -> float:
        """The best sum in which this row and the next change places over this column and the next."""
        if not (0 <= row < self.rows - 1 and 0 <= column < self.columns - 1 and self.loose[row]):
            return 0.0
        one, other = self.score[row][column + 1], self.score[row + 1][column]
        if not (one and other):
            return 0.0
        return self.before[row][column] + one + other - CROSSING + self.after[row + 2][column + 2]


def _highest(values: Sequence[float], *, but: int) -> float:
    return max((*values[:but], *values[but + 1 :]), default=0.0)


def _sums(score: Table, loose: Sequence[bool]) -> Table:
    """The best sum of the pairs among the first rows and columns, for each number of them.

    `loose` says of each row whether it may change places with the one before.
    """
    width = len(score[0]) + 1
    best = [[0.0] * width]
    for row, scores in enumerate(score):
        above, line = best[-1], [0.0] * width
        earlier = score[row - 1] if loose[row] else None
        for at, value in enumerate(scores, 1):
            taken = above[at - 1] + value if value else 0.0
            if earlier and at > 1 and scores[at - 2] and earlier[at - 1]:
                taken = max(taken, best[-2][at - 2] + scores[at - 2] + earlier[at - 1] - CROSSING)
            line[at] = max(taken, above[at], line[at - 1])
        best.append(line)
    return best
