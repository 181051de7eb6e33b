"""Attachments keep to the California Rules of Court on papers, measured on the drawn page.

The figures are those of rules 2.103 to 2.110 as published by the Judicial Council (courts.ca.gov).
"""

from itertools import pairwise

import pytest

from firstpaper.packet.paper import SheetSource
from tests.packet.paper.kitchen_sink import LONG_WORD
from tests.packet.paper.pages_read_back import Drawn, attachment, worksheet

INCH = 72.0

HTML = (
    '<table class="plain" widths="60 40"><tr><td>MARRIAGE OF A and B</td><td>Case number: <line></line></td>'
    "</tr></table><h1>ATTACHMENT 9B</h1><h2>Community property</h2><h3>Real property</h3>"
    f"<p>{'Some words that fill a line or more. ' * 20}<em>Slanted</em> <strong>bold</strong>"
    " <small>small</small></p>"
    f"<ol><li>{'A house. ' * 30}</li><li>A boat.</li></ol>"
    "<table><thead><tr><th>No.</th><th>Property</th></tr></thead>"
    + "".join(f"<tr><td>{n}</td><td>{'A thing. ' * 8}</td></tr>" for n in range(40))
    + f"</table><p>{LONG_WORD}</p>"
)


@pytest.fixture(scope="module")
def drawn() -> Drawn:
    drawn = attachment(HTML)
    assert len(drawn.pages) > 1
    return drawn


def body(page):
    """The characters above the foot of the page."""
    number = next(line for line in page.extract_text_lines() if line["text"].startswith("Page "))
    return [char for char in page.chars if char["bottom"] < number["top"] and not in_margin(char)]


def in_margin(char):
    """Whether a character is a part of a line's number."""
    return char["x1"] < INCH


def test_paper_is_letter_size(drawn):
    """Rule 2.103: 8 1/2 by 11 inches."""
    assert all((page.width, page.height) == (8.5 * INCH, 11 * INCH) for page in drawn.pages)


def test_every_line_stands_beside_its_number(drawn):
    """Rule 2.108(4): the numbers are evenly spaced, or each is beside a line of type; here both."""
    for page in drawn.pages:
        numbers = [char for char in page.chars if in_margin(char)]
        offsets = {
            round((char["bottom"] - numbers[0]["bottom"]) % 18, 1)
            for char in body(page)
            if char["text"].isalpha() and char["size"] == 12
        }
        (offset,) = offsets
        assert min(offset, 18 - offset) < 2


def test_type_is_no_smaller_than_12_points(drawn):
    """Rule 2.104: not smaller than 12 points."""
    assert min(round(char["size"], 2) for page in drawn.pages for char in body(page)) >= 12


def test_typeface_has_the_widths_of_arial(drawn):
    """Rule 2.105: essentially equivalent to Courier, Times New Roman or Arial.

    The widths, in thousandths of the size, are those of Arial's own metrics, the same as Helvetica's
    (Adobe core 14 font metrics).
    """
    assert {char["fontname"].split("+")[1] for page in drawn.pages for char in page.chars} == {
        "Arimo-Regular",
        "Arimo-Italic",
    }
    sample = attachment("<p>Wi m0.</p>").pages[0].chars
    widths = {char["text"]: round(char["width"] / char["size"] * 1000) for char in sample}
    assert {letter: widths[letter] for letter in "Wim0."} == {
        "W": 944,
        "i": 222,
        "m": 833,
        "0": 556,
        ".": 278,
    }


def test_all_letters_are_black(drawn):
    """Rule 2.106: black or blue-black."""
    colours = {char["non_stroking_color"] for page in drawn.pages for char in page.chars}
    assert colours <= {None, (0,), (0, 0, 0), (0.0,)}


def test_margins_are_an_inch_left_and_half_an_inch_right(drawn):
    """Rule 2.107: left at least 1 inch, right at least 1/2 inch."""
    for page in drawn.pages:
        assert min(char["x0"] for char in page.chars if not in_margin(char)) >= INCH - 0.01
        assert max(char["x1"] for char in page.chars) <= 8.5 * INCH - 0.5 * INCH


def test_lines_are_numbered_a_fifth_of_an_inch_left_of_the_text(drawn):
    """Rule 2.108(4): numbered consecutively, evenly spaced, at least 1/5 inch from the text."""
    for page in drawn.pages:
        numbers = [char for char in page.chars if in_margin(char)]
        rows = sorted({round(char["top"], 2) for char in numbers})
        assert [
            int("".join(char["text"] for char in numbers if round(char["top"], 2) == row)) for row in rows
        ] == list(range(1, len(rows) + 1))
        assert {round(after - before, 1) for before, after in pairwise(rows)} == {18.0}
        assert max(char["x1"] for char in numbers) <= INCH - INCH / 5 + 0.01


def test_lines_are_one_and_one_half_spaced(drawn):
    """Rule 2.108(1): one and one-half spaced or double-spaced; 1.5 times 12 points is 18."""
    page = attachment(f"<p>{'Some words that fill a line or more. ' * 40}</p>").pages[0]
    tops = sorted({round(char["top"], 2) for char in body(page)})
    assert len(tops) > 10
    assert {round(after - before, 1) for before, after in pairwise(tops)} == {18.0}


def test_page_number_then_line_then_title_stand_at_the_foot(drawn):
    """Rule 2.110: a footer below the page number, divided by a printed line, in 10 points or more."""
    for count, page in enumerate(drawn.pages, start=1):
        *_, number, title = page.extract_text_lines()
        assert number["text"] == f"Page {count} of {len(drawn.pages)}"
        assert title["text"] == "Attachment 9b"
        assert min(round(char["size"], 2) for char in title["chars"]) >= 10
        rules = [edge for edge in page.edges if number["bottom"] < edge["top"] < title["top"]]
        assert rules
        assert max(rule["x1"] - rule["x0"] for rule in rules) > 6 * INCH


def test_a_long_footer_title_is_cut_with_an_ellipsis_and_stays_on_the_paper():
    drawn = attachment("<p>x</p>")
    long = Drawn(
        SheetSource("A", "<p>x</p>", style="attachment", running="Attachment for " + "Somebody " * 90)
    )
    *_, last = long.pages[0].extract_text_lines()
    assert last["text"].endswith("…")
    assert last["bottom"] < 11 * INCH - 0.25 * INCH
    assert len(long.pages) == len(drawn.pages) == 1


def test_an_attachment_shows_its_own_pages_and_nothing_of_the_packet():
    long = "<p>" + "words " * 900 + "</p>"
    drawn = Drawn(
        SheetSource("Worksheet", long, running="Worksheet for FL-100"),
        SheetSource("Attachment 9b", long, style="attachment"),
        SheetSource("Attachment 11", "<p>one</p>", style="attachment", running="Attachment 11 to FL-100"),
        SheetSource("What is next", "<p>two</p>", running="Next"),
        title="Packet of Somebody",
    )
    feet = [[line["text"] for line in page.extract_text_lines()][-2:] for page in drawn.pages]
    assert [foot[-1] for foot in feet[:2]] == [
        "Worksheet for FL-100 Page 1 of 6",
        "Worksheet for FL-100 Page 2 of 6",
    ]
    assert feet[2:5] == [
        ["Page 1 of 2", "Attachment 9b"],
        ["Page 2 of 2", "Attachment 9b"],
        ["Page 1 of 1", "Attachment 11 to FL-100"],
    ]
    assert feet[5][-1] == "Next Page 6 of 6"
    assert not any("Packet" in drawn.text(number) or "of 6" in drawn.text(number) for number in (2, 3, 4))


def test_worksheets_have_generous_margins_and_large_type():
    drawn = worksheet(HTML)
    for page in drawn.pages:
        *rows, foot = page.extract_text_lines()
        assert min(round(char["size"], 2) for row in rows for char in row["chars"]) >= 12
        assert min(round(char["size"], 2) for char in foot["chars"]) >= 10
        assert min(char["x0"] for char in page.chars if not in_margin(char)) >= INCH - 0.01
        assert max(char["x1"] for char in page.chars) <= 8.5 * INCH - 0.75 * INCH
        assert (page.width, page.height) == (8.5 * INCH, 11 * INCH)


def test_the_palest_letters_of_a_worksheet_have_enough_contrast():
    """WCAG 2.2, success criterion 1.4.6: contrast of at least 7 to 1."""
    shades = {char["non_stroking_color"] for char in worksheet("<p>a <small>b</small></p>").pages[0].chars}
    palest = max(shade[0] for shade in shades if shade)
    assert palest > 0
    linear = ((palest + 0.055) / 1.055) ** 2.4
    assert (1 + 0.05) / (linear + 0.05) >= 7
