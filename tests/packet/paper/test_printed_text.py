"""What is on the paper: all of what was written, in typefaces that are in the file."""

import os
import subprocess
import sys
import unicodedata
from datetime import date
from html import escape
from pathlib import Path

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from firstpaper.packet.paper import SheetSource, draw, missing_characters
from tests.packet.paper.kitchen_sink import LONG_WORD, NAMES, SHEET
from tests.packet.paper.pages_read_back import ON, Drawn, attachment, worksheet

# A sentence that uses the letters special to each language, from the alphabets that the Unicode CLDR
# lists as main exemplar characters (written from memory; the languages are those often spoken in California).
SENTENCES = {
    "Spanish": "El niño pidió ¿qué día es? ¡Ahí está el pingüino! ÁÉÍÓÚÑ",
    "Vietnamese": "Ăn quả nhớ kẻ trồng cây; đường xa mới biết ngựa hay, ở lâu mới rõ lòng người: ỹ ỵ ẵ ặ ổ ữ",
    "Tagalog": "Ang hindi marunong lumingon sa pinanggalingan ñ",
    "Polish": "Zażółć gęślą jaźń",
    "Russian": "Съешь же ещё этих мягких французских булок, да выпей чаю",
    "Ukrainian": "Ґава їсть ще євшан, і кіт",
    "Greek": "Ξεσκεπάζω την ψυχοφθόρα βδελυγμία ΐ ΰ",
    "French": "Là où Noël, garçon, œuf, ÿ",
    "Turkish": "Pijamalı hasta yağız şoföre çabucak güvendi İ",
    "Signs": "“quoted” ‘so’ – and — or… § 2320(a), ½, 98 °F, €5, ©",
}


@pytest.mark.parametrize("style", ["worksheet", "attachment"])
@pytest.mark.parametrize("language", SENTENCES)
def test_text_read_back_is_what_was_written(language, style):
    words = SENTENCES[language]
    drawn = Drawn(SheetSource("Sheet", f"<p>{escape(words)}</p>", style=style))
    assert missing_characters(words, style) == ""
    assert words in drawn.text()
    assert drawn.spoken == words


def test_decomposed_letters_are_put_together():
    drawn = worksheet(f"<p>{unicodedata.normalize('NFD', NAMES)}</p>")
    assert NAMES in drawn.text()


def test_markup_in_a_name_stays_text():
    words = "</p><script>alert('x')</script> & &amp; <b>Bob</b> {{ x }} <tick/>"
    drawn = worksheet(f"<p>{escape(words)}</p>")
    assert drawn.spoken == words


def test_a_character_without_picture_prints_as_a_placeholder_and_is_named():
    words = "Li 李 and 👩‍👩‍👧 and 李"
    assert missing_characters(words) == "李👩👧"
    assert worksheet(f"<p>{words}</p>").spoken == "Li \ufffd and \ufffd\ufffd\ufffd and \ufffd"


def test_scripts_that_run_from_right_to_left_are_named_since_they_would_come_out_reversed():
    assert missing_characters("שלום a") == "שלום"
    assert missing_characters("شكر") == "شكر"


def test_marks_that_hide_or_turn_text_are_taken_out():
    words = "Ann\u202egnp\u202c \u2066x\u2069\u200f\u200b\ufeff\x00\x1b[2J\u00adend"
    assert missing_characters(words) == ""
    assert worksheet(f"<p>{words}</p>").spoken == "Anngnp x[2Jend"


def test_odd_spaces_become_plain_ones_and_hyphens_become_printable():
    assert (
        worksheet("<p>a\u2003b\u2009c\td\n\n e non\u2011stop 5\u202fkm</p>").spoken
        == "a b c d e non-stop 5 km"
    )


def test_no_break_spaces_hold_words_together():
    drawn = worksheet("<p>" + "Section\u00a02320 " * 200 + "</p>")
    rows = [line["text"] for page in drawn.pages for line in page.extract_text_lines()]
    assert not any(row.endswith("Section") for row in rows)


@pytest.mark.parametrize("style", ["worksheet", "attachment"])
def test_all_typefaces_are_embedded_subsets_with_a_unicode_map(style):
    drawn = Drawn(SheetSource("Sheet", SHEET, style=style))
    fonts = [
        font.get_object() for page in drawn.reader.pages for font in page["/Resources"]["/Font"].values()
    ]
    assert fonts
    for font in fonts:
        assert font["/FontDescriptor"]["/FontFile2"].get_data()
        assert font["/BaseFont"][7] == "+"
        cmap = font["/ToUnicode"].get_data().decode()
        assert "<0000>" not in cmap
        assert font["/BaseFont"][1:] in cmap


def test_worksheets_have_regular_and_bold_letters():
    drawn = worksheet(
        "<h1>A</h1><p>B <strong>C</strong> <em>D <strong>E</strong></em></p><ul><li>F</li></ul>"
    )
    faces = {char["text"]: char["fontname"].split("+")[1] for char in drawn.pages[0].chars}
    assert {letter: faces[letter] for letter in "ABCDEF"} == {
        "A": "FiraSans-SemiBold",
        "B": "FiraSans-Regular",
        "C": "FiraSans-SemiBold",
        "D": "FiraSans-Italic",
        "E": "FiraSans-SemiBoldItalic",
        "F": "FiraSans-Regular",
    }


def test_only_typefaces_in_use_are_in_the_file():
    names = {char["fontname"] for char in worksheet("<p>one</p>").pages[0].chars}
    resources = worksheet("<p>one</p>").reader.pages[0]["/Resources"]["/Font"]
    assert len(resources) == len(names) == 1


def test_an_attachment_has_no_bold_letters():
    """Arimo has one upright instance that can be embedded, and a thickened letter smears in print."""
    drawn = attachment("<h1>A</h1><p>b <strong>C</strong> d</p>")
    assert {char["fontname"].split("+")[1] for char in drawn.pages[0].chars} == {"Arimo-Regular"}
    assert " Tr" not in drawn.reader.pages[0].get_contents().get_data().decode("latin-1")


def is_line_number(char, style):
    return style == "attachment" and char["x1"] < 72 and char["text"].isdigit()


@pytest.mark.parametrize("style", ["worksheet", "attachment"])
def test_nothing_runs_off_the_text_area(style):
    html = (
        f"<h1>{LONG_WORD}</h1><p>{LONG_WORD}</p><ul><li>{LONG_WORD}<ol><li>{LONG_WORD}</li></ol></li></ul>"
        f'<p><tick/> {LONG_WORD} <line width="100"/></p><p>{LONG_WORD[:70]}<strong>{LONG_WORD}</strong></p>'
        f'<div class="warning">{LONG_WORD}</div><table widths="10 90"><thead><tr><th>{LONG_WORD}</th>'
        f"<th>b</th></tr></thead><tr><td>{LONG_WORD}</td><td>{'many words ' * 40}</td></tr></table>"
    )
    drawn = Drawn(SheetSource(LONG_WORD, html, style=style, running=LONG_WORD))
    right = {"worksheet": 612 - 0.9 * 72, "attachment": 612 - 0.75 * 72}[style]
    for page in drawn.pages:
        for char in page.chars:
            assert char["x0"] >= 72 - 0.01 or is_line_number(char, style)
            assert char["x1"] <= right + 0.5, char["text"]
            assert char["top"] >= 36
            assert char["bottom"] <= 792 - 18
        for edge in page.edges:
            assert edge["x0"] >= 72 - 0.01
            assert edge["x1"] <= right + 0.5
    assert drawn.spoken.replace(" ", "").count(LONG_WORD) >= 8


@given(st.text(), st.sampled_from(["worksheet", "attachment"]))
@settings(max_examples=150, deadline=None)
def test_any_text_is_drawn(text, style):
    written = escape(text)
    html = f"<h1>x{written}</h1><p>{written}<tick/>{written}</p><ul><li>{written}</li></ul>"
    data = draw([SheetSource(f"x{text}", html, style=style, running=text)], title=f"x{text}", on=ON)
    assert data.startswith(b"%PDF")


@given(st.text(st.characters(codec="utf-8", categories=["L", "N", "P", "S"]), min_size=1, max_size=60))
@example("A-")
@settings(max_examples=60, deadline=None)
def test_every_printable_character_is_read_back(text):
    composed = unicodedata.normalize("NFC", text)
    missing = missing_characters(text)
    shown = "".join("\ufffd" if char in missing else char for char in composed).translate(
        {0x2010: "-", 0x2011: "-"}
    )
    assert worksheet(f"<p>{escape(text)}</p>").spoken == shown


_HASH_OF_SHEET = """
import hashlib, sys
from datetime import date
sys.path.insert(0, {folder!r})
if {slow!r}:
    sys.modules["_rl_accel"] = None  # the library's optional C helpers
from tests.packet.paper.kitchen_sink import SHEET
from firstpaper.packet.paper import SheetSource, draw
sheets = [SheetSource("One", SHEET), SheetSource("Two", SHEET, style="attachment", running="Foot")]
print(hashlib.sha256(draw(sheets, title="Packet", on=date(2026, 1, 5))).hexdigest())
"""


def test_same_input_gives_the_same_bytes_in_every_process_with_and_without_c_helpers():
    folder = str(Path(__file__).parent)
    found = set()
    for seed, zone, slow in (
        ("0", "UTC", False),
        ("1", "America/Los_Angeles", True),
        ("42", "Asia/Tokyo", False),
    ):
        run = subprocess.run(
            [sys.executable, "-c", _HASH_OF_SHEET.format(folder=folder, slow=slow)],
            env={
                **os.environ,
                "PYTHONHASHSEED": seed,
                "TZ": zone,
                "SOURCE_DATE_EPOCH": f"17000000{seed}",
            },
            capture_output=True,
            text=True,
            check=True,
        )
        found.add(run.stdout)
    assert len(found) == 1


def test_another_text_or_day_gives_another_file_identifier():
    one, two = worksheet("<p>one</p>"), worksheet("<p>two</p>")
    later = worksheet("<p>one</p>", on=date(2026, 1, 6))
    assert len({str(each.reader.trailer["/ID"]) for each in (one, two, later)}) == 3
