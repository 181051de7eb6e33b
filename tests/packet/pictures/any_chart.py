"""Charts drawn at random, and the pictures of a case, for properties."""

from datetime import date

from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.intake import standing
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span
from firstpaper.packet.pictures.homes import strips
from firstpaper.packet.pictures.residence import residence
from firstpaper.packet.pictures.timeline import timeline

WORDS = st.one_of(
    st.text(max_size=60),
    st.sampled_from(["Wedding", "x" * 300, "a long title " * 20, "Nguyễn Thị Hạnh", "السلام", "W W W W"]),
)
DAYS = st.dates(date(1, 1, 1), date(9999, 12, 31))
NEAR = st.dates(date(2024, 1, 1), date(2028, 12, 31))


def spans(days: st.SearchStrategy[date]) -> st.SearchStrategy[Span]:
    """Stretches of days, any way they can look."""
    return st.builds(
        lambda one, other, fill: Span(min(one, other), max(one, other), fill),
        days,
        days,
        st.sampled_from(Fill),
    )


def rows() -> st.SearchStrategy[Row]:
    """Rows with few or many words, and whatever may be drawn in them."""
    anywhere = st.one_of(NEAR, DAYS)
    return st.builds(
        Row,
        WORDS,
        st.lists(WORDS, max_size=3).map(tuple),
        WORDS,
        st.lists(spans(anywhere), max_size=3).map(tuple),
        st.lists(st.builds(Mark, anywhere, st.sampled_from(Fill)), max_size=3).map(tuple),
    )


def charts() -> st.SearchStrategy[Chart]:
    """Charts over a day, some months or thousands of years, with many rows or none."""
    edges = st.one_of(st.tuples(NEAR, NEAR), st.tuples(DAYS, DAYS)).map(sorted)
    lines = st.one_of(st.none(), st.builds(Line, st.one_of(NEAR, DAYS), WORDS))
    return st.builds(
        lambda says, days, found, line: Chart(says, *days, tuple(found), line),
        WORDS,
        edges,
        st.lists(rows(), max_size=25),
        lines,
    )


def charts_of(told: Case, on: date) -> list[Chart]:
    """Every picture of a case."""
    case = standing(told)
    homes = [chart for _name, chart in strips(case, on)]
    return [*filter(None, (residence(case, on), timeline(case, on))), *homes]
