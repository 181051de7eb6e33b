"""What is made ready of the words of a page: text operators (ISO 32000-1, 9.4) that need no document."""

import re

from firstpaper.packet.paper.fonts import face
from firstpaper.packet.paper.passage import PageOf, Passage, SetIn, Words

PLAIN, BOLD = face("worksheet"), face("worksheet", bold=True)


def test_pieces_are_placed_each_from_the_one_before_and_change_the_typeface_only_where_it_changes() -> None:
    words = [
        Words(0, -12, "Ana", BOLD, 12),
        Words(30, -12, "files", PLAIN, 12),
        Words(0, -28, "now", PLAIN, 12),
    ]
    assert Passage(words).parts == (
        "0.00 -12.00 Td",
        SetIn(BOLD, 12),
        "(Ana) Tj 30.00 0.00 Td",
        SetIn(PLAIN, 12),
        "(files) Tj -30.00 -16.00 Td (now) Tj",
    )


def test_places_are_rounded_from_the_corner_so_that_no_error_adds_up() -> None:
    lines = [Words(0, -15.004 * count, "word", PLAIN, 12) for count in range(100)]
    operators = " ".join(part for part in Passage(lines).parts if isinstance(part, str))
    steps = [float(step) for step in re.findall(r"(\S+) Td", operators)]
    assert round(sum(steps), 2) == round(-15.004 * 99, 2)


def test_what_stands_behind_a_page_number_moves_up_to_it() -> None:
    number = Words(40, -12, PageOf("The last check", 15), PLAIN, 12)
    words = [
        Words(0, -12, "page", PLAIN, 12),
        number,
        Words(58, -12, "and", PLAIN, 12),
    ]
    behind = Words(58 + PLAIN.width("and") * 12 + 3, -12, "more", PLAIN, 12)
    assert Passage([*words, behind, Words(0, -28, "next", PLAIN, 12)]).parts == (
        "0.00 -12.00 Td",
        SetIn(PLAIN, 12),
        "(page) Tj 40.00 0.00 Td",
        number,
        "[-250] TJ",
        SetIn(PLAIN, 12),
        "(and) Tj [-250] TJ (more) Tj -40.00 -16.00 Td (next) Tj",
    )


def test_a_letter_beyond_ascii_waits_for_its_document() -> None:
    typed = Words(0, 0, "José", PLAIN, 12)
    assert Passage([typed, Words(0, -16, "files", PLAIN, 12)]).parts == (
        "0.00 0.00 Td",
        typed,
        "0.00 -16.00 Td",
        SetIn(PLAIN, 12),
        "(files) Tj",
    )


def test_grey_ends_and_another_language_is_a_span() -> None:
    small = Words(0, 0, "(a) \\", PLAIN, 9, grey=0.35)
    spoken = Words(0, -16, "file", PLAIN, 12, grey=0.35, lang="en-US")
    assert Passage([small, spoken]).parts == (
        "0.00 0.00 Td 0.35 g",
        SetIn(PLAIN, 9),
        "(\\(a\\) \\\\) Tj 0.00 -16.00 Td /Span <</Lang (en-US)>> BDC",
        SetIn(PLAIN, 12),
        "(file) Tj EMC 0 g",
    )


def test_nothing_is_nothing() -> None:
    assert Passage([]).parts == ()
