"""Pictures on paper: one tagged figure each, with its words and its place, in black and white, whole."""

from datetime import date
from io import BytesIO

import pdfplumber
import pytest

from firstpaper.packet.paper import SheetSource, text_column, text_width
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span
from firstpaper.packet.pictures.drawing import drawings_of
from firstpaper.packet.pictures.shapes import FONT_SIZE, Drawing
from tests.packet.paper.pages_read_back import Drawn

DAY = date(2026, 7, 2)
HOSTILE = "<b>A</b> & %s (]>> \\n 😀 王 עברית \u202egnp \x00\x1b[31m e\u0301 Nguyễn " + "W" * 200


def chart(*titles: str) -> Chart:
    rows = tuple(
        Row(
            title,
            ("from here to there", "and more"),
            f"{title} is said.",
            (
                Span(date(2026, 1, 5), date(2026, 3, 1), Fill.STRIPED),
                Span(date(2026, 3, 2), DAY),
                Span(DAY, date(2030, 1, 1), Fill.WHITE),
            ),
            (Mark(date(2026, 11, 3), Fill.WHITE), Mark(date(1990, 1, 1))),
        )
        for title in titles
    )
    return Chart("It shows days.", date(2026, 1, 1), date(2026, 12, 31), rows, Line(DAY, "Filing"))


def laid_out(one: Chart, style: str) -> tuple[Drawing, ...]:
    def measure(text: str, bold: bool) -> float:
        return text_width(text, style, bold=bold) * FONT_SIZE

    return drawings_of(one, text_column(style), measure)


def drawn(one: Chart, html: str = '<h1>One</h1><figure name="days"/>', style: str = "worksheet") -> Drawn:
    figures = {"days": laid_out(one, style)}
    return Drawn(SheetSource("A sheet", html, style=style, running="Foot", figures=figures))


@pytest.mark.parametrize("style", ["worksheet", "attachment"])
@pytest.mark.parametrize("titles", [(), ("Wedding",), (HOSTILE, "x"), tuple("abcdefghijklmnopqrstuvwxyz")])
def test_conforms_to_pdf_ua_1(titles: tuple[str, ...], style: str) -> None:
    report = drawn(chart(*titles), style=style).report
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    assert report.is_compliant


def test_a_screen_reader_hears_the_sentences_and_no_loose_words() -> None:
    one = drawn(chart("Wedding", "Service"), '<h1>One</h1><p>Before.</p><figure name="days"/><p>After.</p>')
    assert one.spoken == ("One Before. [It shows days. Wedding is said. Service is said.] After.")


def test_an_end_tag_is_as_good() -> None:
    html = '<h1>One</h1><section class="keep"><h2>Two</h2><figure name="days"></figure></section>'
    assert drawn(chart("Wedding"), html).spoken.endswith("[It shows days. Wedding is said.]")


def test_the_box_of_the_figure_holds_all_that_is_drawn() -> None:
    one = drawn(chart("Wedding", "Service"))
    (figure,) = one.heard.all("Figure")
    left, foot, right, top = (float(side) for side in figure.attributes["/BBox"])
    with pdfplumber.open(BytesIO(one.data)) as opened:
        (page,) = opened.pages
        words = [char for char in page.chars if char["mcid"] is not None and char["size"] == FONT_SIZE]
        assert words
        for shape in (*words, *page.lines, *page.curves):
            if shape["tag"] == "Figure":
                assert left - 1 <= shape["x0"] <= shape["x1"] <= right + 1
                assert foot - 1 <= shape["y0"] <= shape["y1"] <= top + 1
    assert (left, right) == (72.0, 72.0 + text_column("worksheet"))


def test_a_picture_goes_to_the_next_page_whole() -> None:
    rows = tuple("abcdefgh")
    one = drawn(chart(*rows), f'<h1>One</h1>{"<p>word</p>" * 12}<figure name="days"/>')
    assert len(one.pages) == 2
    assert "from here to there" not in one.text(0)
    assert one.text(1).count("from here to there") == len(rows)


def test_a_long_picture_goes_over_pages_and_says_each_row_once() -> None:
    titles = [f"Home {number}" for number in range(30)]
    one = drawn(chart(*titles))
    assert len(one.pages) > 2
    figures = one.heard.all("Figure")
    assert len(figures) > 2
    assert " ".join(figure.alt for figure in figures).count("is said.") == len(titles)
    assert [one.whole_text.count(f"{title} from here") for title in titles] == [1] * len(titles)


def test_only_black_white_and_grey_are_used() -> None:
    with pdfplumber.open(BytesIO(drawn(chart("Wedding")).data)) as opened:
        (page,) = opened.pages
        colors = {
            color
            for shape in (*page.chars, *page.lines, *page.curves, *page.rects)
            for color in (shape["stroking_color"], shape["non_stroking_color"])
            if color is not None
        }
        assert all(isinstance(color, int | float) or len(color) == 1 for color in colors)
        fills = {curve["non_stroking_color"] for curve in page.curves if curve["fill"]}
        assert {float(fill[0] if isinstance(fill, tuple) else fill) for fill in fills} == {0.0, 1.0}


def test_all_words_have_twelve_points() -> None:
    sizes = {round(char["size"], 2) for char in drawn(chart("Wedding")).pages[0].chars}
    assert sizes == {10.0, 12.0, 22.0}  # the foot, the picture, the heading


def test_letters_of_another_typeface_and_none_are_printed_in_a_label() -> None:
    text = drawn(chart("Ελένη 王")).whole_text
    assert "Ελένη" in text
    assert "\ufffd" in text
