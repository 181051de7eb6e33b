"""The alignment against every other one, on tables small enough to try them all."""

from collections.abc import Iterator
from itertools import combinations, permutations

from hypothesis import given
from hypothesis import strategies as st

from firstpaper.blanks.alignment import CROSSING, Alignment, Place, Table

Pairs = tuple[Place, ...]


@st.composite
def tables(draw: st.DrawFn) -> tuple[Table, list[bool]]:
    rows, columns = draw(st.integers(1, 4)), draw(st.integers(1, 4))
    value = st.sampled_from([0.0, 0.1, 0.3, 0.35, 0.7, 1.0])
    score = draw(st.lists(st.lists(value, min_size=columns, max_size=columns), min_size=rows, max_size=rows))
    return score, draw(st.lists(st.booleans(), min_size=rows, max_size=rows))


def every_alignment(score: Table, loose: list[bool]) -> Iterator[tuple[Pairs, float]]:
    """All ways to lay them side by side, with their sums; in each at most neighbours have changed places."""
    rows, columns = len(score), len(score[0])
    for many in range(min(rows, columns) + 1):
        for left in combinations(range(rows), many):
            for right in permutations(range(columns), many):
                pairs = tuple(zip(left, right, strict=True))
                crossed = list(_crossings(pairs))
                if all(score[row][at] for row, at in pairs) and all(
                    loose[row] and pair in (((row, at + 1), (row + 1, at)),) for row, at, pair in crossed
                ):
                    yield pairs, sum(score[row][at] for row, at in pairs) - CROSSING * len(crossed)


def _crossings(pairs: Pairs) -> Iterator[tuple[int, int, tuple[Place, Place]]]:
    for one, other in combinations(pairs, 2):
        if one[1] > other[1]:
            yield one[0], other[1], (one, other)


@given(tables())
def test_no_other_alignment_is_better(given_: tuple[Table, list[bool]]) -> None:
    score, loose = given_
    alignment = Alignment(score, loose)
    sums = dict(every_alignment(score, loose))
    assert abs(alignment.best - max(sums.values())) < 1e-9
    assert abs(sums[tuple(sorted(alignment.pairs()))] - alignment.best) < 1e-9


@given(tables())
def test_the_lead_of_a_pair_is_what_the_best_without_it_lacks(given_: tuple[Table, list[bool]]) -> None:
    score, loose = given_
    alignment = Alignment(score, loose)
    sums = dict(every_alignment(score, loose))
    for pair, lead in alignment.leads().items():
        without = max(value for pairs, value in sums.items() if pair not in pairs)
        assert abs(lead - (alignment.best - without)) < 1e-9
