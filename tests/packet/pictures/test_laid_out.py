"""Layout as properties: whatever the days and words are, nothing leaves its frame and no words meet."""

from datetime import date
from functools import cache
from itertools import combinations

from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.packet.paper import text_column, text_width
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span
from firstpaper.packet.pictures.drawing import COLUMN_GAP, HIGHEST, WORDS_SHARE, drawings_of
from firstpaper.packet.pictures.shapes import FONT_SIZE, Area, Drawing, Label, Stroke
from tests.any_case import any_case, filing_days
from tests.packet.pictures.any_chart import charts, charts_of

WIDTH = text_column("worksheet")
AXIS = WIDTH * WORDS_SHARE + COLUMN_GAP
ASCENT, DESCENT = 0.74 * FONT_SIZE, 0.265 * FONT_SIZE  # of the taller typeface, on the large side
NEARLY = 0.01


@cache
def measure(text: str, bold: bool) -> float:
    return text_width(text, "worksheet", bold=bold) * FONT_SIZE


def laid_out(chart: Chart) -> tuple[Drawing, ...]:
    return drawings_of(chart, WIDTH, measure)


def labels(drawing: Drawing) -> list[Label]:
    return [shape for shape in drawing.shapes if isinstance(shape, Label)]


def areas(drawing: Drawing) -> list[Area]:
    return [shape for shape in drawing.shapes if isinstance(shape, Area)]


def meet(one: Label, other: Label) -> bool:
    """Whether the boxes of two labels share more than an edge."""
    apart = (
        one.x + one.width <= other.x + NEARLY
        or other.x + other.width <= one.x + NEARLY
        or one.y + DESCENT <= other.y - ASCENT + NEARLY
        or other.y + DESCENT <= one.y - ASCENT + NEARLY
    )
    return not apart


def hold_together(drawing: Drawing) -> None:
    """What must be true of every drawing."""
    for one, other in combinations(labels(drawing), 2):
        assert not meet(one, other), (one, other)
    for label in labels(drawing):
        assert label.x >= 0
        assert label.x + label.width <= drawing.width + NEARLY
        assert label.y - ASCENT >= 0
        assert label.y + DESCENT <= drawing.height + NEARLY
    for area in areas(drawing):
        assert all(AXIS - NEARLY <= x <= drawing.width + NEARLY for x, _y in area.corners)
        assert all(0 <= y <= drawing.height for _x, y in area.corners)
    for shape in drawing.shapes:
        if isinstance(shape, Stroke):
            assert 0 <= min(shape.x1, shape.x2) <= max(shape.x1, shape.x2) <= drawing.width + NEARLY
            assert 0 <= min(shape.y1, shape.y2) <= max(shape.y1, shape.y2) <= drawing.height + NEARLY


@settings(deadline=None)
@given(charts())
def test_any_chart_stays_in_its_frame_and_its_words_apart(chart: Chart) -> None:
    for drawing in laid_out(chart):
        assert drawing.height <= HIGHEST + 120  # the head, the foot, and a row that is higher by itself
        hold_together(drawing)


@settings(max_examples=60, deadline=None)
@given(any_case(), filing_days())
def test_the_pictures_of_any_case_stay_in_their_frames(case: Case, on: date) -> None:
    for chart in charts_of(case, on):
        for drawing in laid_out(chart):
            hold_together(drawing)


@settings(deadline=None)
@given(charts(), st.floats(3, 9))
def test_words_of_any_width_stay_apart(chart: Chart, ems: float) -> None:
    for drawing in drawings_of(chart, WIDTH, lambda text, _bold: ems * len(text)):
        hold_together(drawing)


@settings(deadline=None)
@given(charts())
def test_every_row_is_drawn_once_and_said_once(chart: Chart) -> None:
    drawings = laid_out(chart)
    said = " ".join(drawing.alt.removeprefix(chart.says).strip() for drawing in drawings)
    assert said.split() == " ".join(row.says for row in chart.rows).split()


def chart_of(*rows: Row, first: date = date(2026, 1, 1), last: date = date(2026, 12, 31)) -> Chart:
    return Chart("It shows days.", first, last, rows, Line(date(2026, 7, 2), "Filing"))


def test_a_bar_is_as_long_as_its_days() -> None:
    row = Row("Half", (), "Half.", (Span(date(2026, 1, 1), date(2026, 7, 2)),))
    (drawing,) = laid_out(chart_of(row))
    (bar,) = areas(drawing)
    edges = [x for x, _y in bar.corners]
    assert min(edges) == AXIS
    assert max(edges) - min(edges) == (WIDTH - AXIS) * 183 / 365  # January 1 to July 2, both counted
    assert bar.black


def test_the_line_stands_in_the_middle_of_its_day() -> None:
    (drawing,) = laid_out(chart_of(Row("One", (), "One.")))
    heavy = [shape for shape in drawing.shapes if isinstance(shape, Stroke) and shape.weight > 1]
    assert [round(shape.x1, 3) for shape in heavy] == [round(AXIS + (WIDTH - AXIS) * 182.5 / 365, 3)]


def test_what_lies_outside_is_an_arrow_at_the_edge() -> None:
    row = Row("Long ago", (), "Long ago.", (), (Mark(date(1990, 1, 1)), Mark(date(2090, 1, 1), Fill.WHITE)))
    (drawing,) = laid_out(chart_of(row))
    left, right = areas(drawing)
    assert (min(x for x, _y in left.corners), len(left.corners), left.black) == (AXIS, 3, True)
    assert (max(x for x, _y in right.corners), len(right.corners), right.black) == (WIDTH, 3, False)


def test_the_three_looks_differ_without_any_shade() -> None:
    day = (date(2026, 3, 1), date(2026, 9, 1))
    looks = {}
    for fill in Fill:
        (drawing,) = laid_out(chart_of(Row("One", (), "One.", (Span(*day, fill),))))
        slanted = [s for s in drawing.shapes if isinstance(s, Stroke) and s.x1 != s.x2 and s.y1 != s.y2]
        looks[fill] = (areas(drawing)[0].black, bool(slanted))
    assert looks == {Fill.BLACK: (True, False), Fill.WHITE: (False, False), Fill.STRIPED: (False, True)}


def test_a_picture_too_high_for_a_page_comes_in_parts() -> None:
    rows = [Row(f"Home {number}", ("from", "to"), f"Home {number}.") for number in range(30)]
    parts = laid_out(chart_of(*rows))
    assert len(parts) == 4
    titles = [label.text for part in parts for label in labels(part) if label.text.startswith("Home")]
    assert titles == [row.title for row in rows]


def test_the_months_are_named_where_there_is_room() -> None:
    (year,) = laid_out(chart_of(Row("One", (), "One.")))
    named = [label.text for label in labels(year) if label.text.endswith("2026")]
    assert named == ["Jan 2026", "Apr 2026", "Jul 2026", "Oct 2026"]
    long = chart_of(Row("One", (), "One."), first=date(2021, 11, 25), last=date(2026, 11, 25))
    (five_years,) = laid_out(long)
    years = [label.text for label in labels(five_years) if label.text.isdecimal()]
    assert years == ["2022", "2023", "2024", "2025", "2026"]


def test_a_black_mark_on_a_black_bar_has_a_white_rim_around_it() -> None:
    first, middle, last = date(2026, 6, 1), date(2026, 9, 3), date(2026, 12, 1)
    row = Row("You", ("Since June",), "You came in June.", (Span(first, last),), (Mark(middle),))
    (drawing,) = laid_out(Chart("How long.", first, last, (row,), None))
    shapes = list(drawing.shapes)
    bar, diamond = areas(drawing)
    between = shapes[shapes.index(bar) : shapes.index(diamond)]
    rim = {(one.x1, one.y1) for one in between if isinstance(one, Stroke) and one.grey == 1}
    assert rim == set(diamond.corners)
