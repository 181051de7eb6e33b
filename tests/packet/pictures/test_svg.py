"""Pictures on a screen: well-formed, read out as their words, nothing to run or to fetch."""

from datetime import date
from xml.etree import ElementTree

from hypothesis import given, settings

from firstpaper.packet.pictures.chart import Chart, Row, Span
from firstpaper.packet.pictures.drawing import drawings_of
from firstpaper.packet.pictures.svg import svg
from tests.packet.pictures.any_chart import charts

HOSTILE = '"><script>x</script> & <b>'


def shown(chart: Chart) -> ElementTree.Element:
    (drawing,) = drawings_of(chart, 475, lambda text, _bold: 6.5 * len(text))
    return ElementTree.fromstring(svg(drawing))


def test_it_is_one_image_with_its_words() -> None:
    row = Row(HOSTILE, (HOSTILE,), HOSTILE, (Span(date(2026, 2, 1), date(2026, 3, 1)),))
    root = shown(Chart("It shows days.", date(2026, 1, 1), date(2026, 12, 31), (row,)))
    assert root.get("role") == "img"
    assert root.get("aria-label") == f"It shows days. {HOSTILE}"
    assert {each.tag for each in root} == {"path", "text"}


def test_words_are_set_to_their_measured_width() -> None:
    root = shown(Chart("It shows.", date(2026, 1, 1), date(2026, 12, 31), (Row("Wedding", (), "."),)))
    title = next(each for each in root if each.text == "Wedding")
    assert (title.get("textLength"), title.get("font-weight")) == ("45.5", "600")


@settings(deadline=None, max_examples=50)
@given(charts())
def test_any_chart_is_well_formed(chart: Chart) -> None:
    for drawing in drawings_of(chart, 475, lambda text, _bold: 6.5 * len(text)):
        shown = svg(drawing)
        assert not any(each in shown for each in ("href", "<script", "url(", "<line"))
