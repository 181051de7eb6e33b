"""A sheet in another language takes more words: the same letters, and more of them on a page."""

from firstpaper.packet.paper import SheetSource
from firstpaper.packet.paper.looks import TRANSLATED, WORKSHEET
from tests.packet.paper.pages_read_back import Drawn

LONG = "<h1>T</h1>" + "".join(f"<p>word {number}</p>" for number in range(70))


def _pages(style: str, language: str) -> int:
    return len(Drawn(SheetSource("T", LONG, style, language=language)).pages)


def test_its_letters_and_the_lines_to_write_on_are_as_in_english() -> None:
    for name, text in TRANSLATED.texts.items():
        assert text.size == WORKSHEET.texts[name].size >= 12
        assert text.written == WORKSHEET.texts[name].written
        assert text.leading >= 1.18 * text.size


def test_more_stands_on_a_page_of_ours() -> None:
    assert _pages("worksheet", "es") < _pages("worksheet", "en")


def test_what_is_filed_stays_as_the_court_asks() -> None:
    # Cal. Rules of Court, rules 2.107 and 2.108
    assert _pages("attachment", "es") == _pages("attachment", "en")


def test_a_box_is_named_in_the_language_of_its_sheet_also_where_its_words_were_drawn_before() -> None:
    drawn = Drawn(*(SheetSource("T", "<p><tick/> 3a</p>", language=name) for name in ("en", "es", "en")))
    assert drawn.spoken == "[empty box to mark]3a [casilla vacía para marcar]3a [empty box to mark]3a"
