"""Charts of shares: whole and to scale, inside their frame, told apart without a shade, said in words."""

from decimal import Decimal
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.law.measures.character import Code
from firstpaper.law.measures.estimates.house import Payments, house_share
from firstpaper.law.measures.sums import Total, Totals
from firstpaper.packet.paper import text_column
from firstpaper.packet.pictures.estate import LOOKS, estate
from firstpaper.packet.pictures.house import house_over_time
from firstpaper.packet.pictures.patterns import Pattern, box
from firstpaper.packet.pictures.shapes import Area, Drawing, Label, Stroke
from firstpaper.packet.pictures.share_bars import BAR, drawn_shares
from firstpaper.packet.pictures.shares import Bar, Key, Part, Shares
from firstpaper.packet.pictures.svg import svg
from firstpaper.packet.pictures.words import text_of
from tests.packet.pictures.any_chart import WORDS
from tests.packet.pictures.test_laid_out import ASCENT, DESCENT, NEARLY, areas, labels, measure, meet

WIDTH = text_column("worksheet")
AMOUNTS = st.decimals("0.01", 9_000_000, places=2)
PARTS = st.lists(st.builds(Part, st.sampled_from(Pattern), AMOUNTS), min_size=1, max_size=6).map(tuple)
BARS = st.lists(st.builds(Bar, WORDS, PARTS, WORDS), max_size=4).map(tuple)
KEYS = st.lists(st.builds(Key, st.sampled_from(Pattern), WORDS), max_size=6).map(tuple)


def bars_of(drawing: Drawing) -> list[Area]:
    """The parts of the bars, not the boxes of the key."""
    return [one for one in areas(drawing) if _height(one) == BAR]


def _height(area: Area) -> float:
    return round(max(y for _x, y in area.corners) - min(y for _x, y in area.corners), 3)


def _width(area: Area) -> float:
    return max(x for x, _y in area.corners) - min(x for x, _y in area.corners)


@settings(deadline=None)
@given(st.builds(Shares, WORDS, BARS, KEYS))
def test_whatever_it_shows_it_stays_in_its_frame_and_its_words_apart(chart: Shares) -> None:
    drawing = drawn_shares(chart, WIDTH, measure)
    for one, other in combinations(labels(drawing), 2):
        assert not meet(one, other)
    for label in labels(drawing):
        assert 0 <= label.x <= label.x + label.width <= WIDTH + NEARLY
        assert label.y - ASCENT >= -NEARLY
        assert label.y + DESCENT <= drawing.height + NEARLY
    for shape in drawing.shapes:
        if isinstance(shape, Area):
            assert all(-NEARLY <= x <= WIDTH + NEARLY and 0 <= y <= drawing.height for x, y in shape.corners)
        if isinstance(shape, Stroke):
            assert -NEARLY <= min(shape.x1, shape.x2) <= max(shape.x1, shape.x2) <= WIDTH + NEARLY
    assert len(bars_of(drawing)) == sum(len(bar.parts) for bar in chart.bars)
    assert svg(drawing).startswith("<svg")


def test_bars_are_to_one_scale() -> None:
    half, whole = (Bar(str(n), (Part(Pattern.BLACK, Decimal(n)),), "") for n in (50, 100))
    first, second = bars_of(drawn_shares(Shares("", (half, whole), ()), WIDTH, measure))
    assert (round(_width(first), 3), round(_width(second), 3)) == (round(WIDTH / 2, 3), round(WIDTH, 3))


def test_parts_are_as_long_as_their_amounts_and_the_smallest_can_still_be_seen() -> None:
    parts = tuple(Part(Pattern.WHITE, Decimal(one)) for one in ("75", "25"))
    long, short = bars_of(drawn_shares(Shares("", (Bar("", parts, ""),), ()), WIDTH, measure))
    assert round(_width(long) / _width(short), 3) == 3
    tiny = (Part(Pattern.WHITE, Decimal(1_000_000)), Part(Pattern.BLACK, Decimal("0.01")))
    _long, seen = bars_of(drawn_shares(Shares("", (Bar("", tiny, ""),), ()), WIDTH, measure))
    assert _width(seen) > 1.9


def test_every_pattern_differs_without_any_shade() -> None:
    looks = {}
    for pattern in Pattern:
        area, *strokes = box(0, 40, 0, 20, pattern)
        assert isinstance(area, Area)
        slants = frozenset(_slant(one) for one in strokes)
        looks[pattern] = (area.black, slants)
        assert all(isinstance(one, Stroke) and one.grey == 0 for one in strokes)
    assert len(set(looks.values())) == len(Pattern)


def _slant(one: object) -> str:
    assert isinstance(one, Stroke)
    rise = (one.y2 - one.y1) * (one.x2 - one.x1)
    return "upright" if one.x1 == one.x2 else "falls" if rise > 0 else "rises"


def totals(**nets: int) -> Totals:
    return Totals({Code(code): Total(Decimal(net), Decimal(0)) for code, net in nets.items()}, ())


def test_the_estate_names_every_part_with_its_amount_and_percent() -> None:
    chart = estate(totals(community=75_000, petitioner_separate=25_000, not_divided=9))
    assert chart is not None
    assert [key.words for key in chart.keys] == ["Community: $75,000, 75%", "Yours alone: $25,000, 25%"]
    assert "After debts: $100,000. Community: $75,000, 75%." in text_of(chart)
    (alt,) = {drawn_shares(chart, WIDTH, measure).alt}
    assert "Yours alone: $25,000, 25%." in alt


def test_what_is_below_zero_is_said_and_not_drawn() -> None:
    chart = estate(totals(community=-500, mixed=10, unknown=10))
    assert chart is not None
    assert len(bars_of(drawn_shares(chart, WIDTH, measure))) == 2
    assert "Not drawn, because more is owed than it is worth: Community: -$500." in chart.bars[0].says


@pytest.mark.parametrize("nets", [{}, {"community": 5}, {"community": 5, "mixed": -5}, {"community": 0}])
def test_one_part_alone_needs_no_picture(nets: dict[str, int]) -> None:
    assert estate(totals(**nets)) is None


def test_every_kind_of_property_has_a_look_of_its_own() -> None:
    assert len(set(LOOKS.values())) == len(LOOKS) == len(Code) - 1


def test_the_house_grows_from_stage_to_stage() -> None:
    """The facts of In re Marriage of Marsden (1982) 130 Cal.App.3d 426."""
    told = Payments(*map(Decimal, ("38300", "8300", "7000", "9200", "655", "65000", "182500")))
    chart = house_over_time(house_share(told))
    assert [bar.title for bar in chart.bars] == [
        "When it was bought: $8,300",
        "At the wedding: $42,000",
        "Now: $169,355",
    ]
    assert [bar.whole for bar in chart.bars] == [8_300, 42_000, 169_355]
    assert [len(bar.parts) for bar in chart.bars] == [1, 1, 2]
    assert [shape.text for shape in drawn_shares(chart, WIDTH, measure).shapes if isinstance(shape, Label)][
        -2:
    ] == [
        "Separate: the owner's alone",
        "Community: of you both",
    ]
