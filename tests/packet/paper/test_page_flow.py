"""How sheets fill pages: what stays together, what splits, and where."""

import pytest

from firstpaper.packet.paper import SheetSource, draw
from tests.packet.paper.kitchen_sink import SHEET
from tests.packet.paper.pages_read_back import ON, Drawn, attachment, worksheet


def lines(drawn: Drawn, number: int) -> list[str]:
    """The lines of a page, without its foot."""
    return [line["text"] for line in drawn.pages[number].extract_text_lines()][:-1]


def filled(count: int) -> str:
    """Paragraphs that take `count` lines of a worksheet, each with the space after it."""
    return "".join(f"<p>filler {n}</p>" for n in range(count))


@pytest.mark.parametrize("count", range(20, 32))
def test_a_heading_is_never_left_alone_at_the_foot(count):
    drawn = worksheet(f"<h1>T</h1>{filled(count)}<h2>Section</h2><h3>Part</h3><p>First words.</p>")
    found = [lines(drawn, number) for number in range(len(drawn.pages))]
    page = next(rows for rows in found if "Section" in rows)
    assert page[page.index("Section") : page.index("Section") + 3] == ["Section", "Part", "First words."]


@pytest.mark.parametrize("count", range(18, 30))
@pytest.mark.parametrize(
    "block",
    [
        "<table><thead><tr><th>Head</th></tr></thead><tr><td>Row</td></tr></table>",
        "<ul><li>Row</li></ul>",
        '<div class="note">Row</div>',
        '<section class="keep"><p>Row</p></section>',
    ],
)
def test_a_heading_stays_with_whatever_follows(count, block):
    drawn = worksheet(f"<h1>T</h1>{filled(count)}<h2>Section</h2>{block}")
    for number in range(len(drawn.pages)):
        assert ("Section" in drawn.text(number)) == ("Row" in drawn.text(number))


@pytest.mark.parametrize("count", range(18, 30))
def test_a_lead_stays_with_whatever_follows(count):
    drawn = worksheet(f'<h1>T</h1>{filled(count)}<p class="lead">Lead</p>{"<ul><li>Row</li></ul>"}')
    for number in range(len(drawn.pages)):
        assert ("Lead" in drawn.text(number)) == ("Row" in drawn.text(number))


def test_a_page_that_begins_in_the_middle_names_its_heading_and_one_with_a_heading_of_its_own_does_not():
    kept = '<section class="keep"><h2>Own</h2><p>Row</p></section>'
    assert "First (continued)" in worksheet(f"<h1>T</h1><h2>First</h2>{filled(60)}").text(1)
    drawn = [worksheet(f"<h1>T</h1><h2>First</h2>{filled(count)}{kept}") for count in range(22, 29)]
    begun = [rows for each in drawn if len(each.pages) > 1 for rows in [lines(each, 1)] if "Own" in rows[:2]]
    assert begun
    assert all(rows[0] == "Own" for rows in begun)


def columns(count: int, each: int = 3) -> str:
    """Blocks that stay whole, in two columns."""
    blocks = "".join(
        f'<section class="keep">{"".join(f"<p>block {n} of it</p>" for _ in range(each))}</section>'
        for n in range(count)
    )
    return f'<section class="columns">{blocks}</section>'


def test_two_columns_are_about_as_high_and_read_down_the_left_one_first():
    drawn = worksheet(f"<h1>T</h1>{columns(6)}")
    words = [word for word in drawn.pages[0].extract_words() if word["text"].isdigit()][:-2]
    left = [word["text"] for word in words if word["x0"] < 200]
    right = [word["text"] for word in words if word["x0"] > 200]
    assert left == sorted("012" * 3)
    assert right == sorted("345" * 3)
    assert [word for word in drawn.spoken.split() if word.isdigit()][:18] == sorted("012345" * 3)


@pytest.mark.parametrize("count", [1, 2, 9, 40])
@pytest.mark.parametrize("before", [0, 14, 27])
def test_columns_lose_nothing_and_split_no_kept_block_whatever_the_page(count, before):
    drawn = worksheet(f"<h1>T</h1>{filled(before)}{columns(count)}")
    assert drawn.whole_text.count("of it") == 3 * count
    for number in range(len(drawn.pages)):
        text = drawn.text(number)
        assert all(text.count(f"block {n} of it") in (0, 3) for n in range(count))


def test_columns_longer_than_a_page_are_split_rather_than_lost():
    drawn = worksheet(f"<h1>T</h1>{columns(1, each=90)}")
    assert drawn.whole_text.count("of it") == 90
    assert drawn.report.is_compliant


@pytest.mark.parametrize("count", range(22, 32))
def test_no_single_line_of_a_paragraph_stands_alone(count):
    drawn = worksheet(f"<h1>T</h1>{filled(count)}<p>{'words of it ' * 36}</p>")
    parts = [sum("words of it" in row for row in lines(drawn, n)) for n in range(len(drawn.pages))]
    assert sum(parts) >= 5
    assert 1 not in parts


@pytest.mark.parametrize("count", range(20, 32))
def test_a_paragraph_of_a_few_lines_is_not_split(count):
    drawn = worksheet(f"<h1>T</h1>{filled(count)}<p>{'words of it ' * 24}</p>")
    parts = [sum("words of it" in row for row in lines(drawn, n)) for n in range(len(drawn.pages))]
    assert sorted(parts)[-1] == sum(parts) > 2


@pytest.mark.parametrize("count", range(14, 30))
def test_the_last_row_of_a_table_takes_another_along(count):
    rows = "".join(f"<tr><td>row {n} of it</td></tr>" for n in range(6))
    drawn = worksheet(f'<h1>T</h1>{filled(count)}<table class="plain">{rows}</table>')
    assert sum(drawn.text(n).count("of it") for n in range(len(drawn.pages))) == 6
    assert all(drawn.text(n).count("of it") != 1 for n in range(1, len(drawn.pages)))


@pytest.mark.parametrize("count", range(18, 32))
def test_the_last_item_of_a_list_takes_another_along(count):
    items = "".join(f"<li><tick/> item {n} of it</li>" for n in range(6))
    drawn = worksheet(f"<h1>T</h1>{filled(count)}<ul>{items}</ul>")
    assert sum(drawn.text(n).count("of it") for n in range(len(drawn.pages))) == 6
    assert all(drawn.text(n).count("of it") != 1 for n in range(1, len(drawn.pages)))


@pytest.mark.parametrize("count", range(1, 24))
def test_a_sheet_that_follows_begins_with_a_row_of_its_table(count):
    """Its title and a remark below it say nothing at the foot of a page."""
    table = f'<table class="plain">{"<tr><td>Row</td></tr>" * 30}</table>'
    sheet = f'<h1>Second</h1><div class="note">{"<p>Remark</p>" * 8}</div><h2>Part</h2>{table}'
    drawn = Drawn(
        SheetSource("One", f"<h1>First</h1>{filled(count)}"), SheetSource("Two", sheet, follows=True)
    )
    found = [lines(drawn, number) for number in range(len(drawn.pages))]
    page = next(rows for rows in found if "Second" in rows)
    assert page[page.index("Second") + 1 :][:10] == [*["Remark"] * 8, "Part", "Row"]


@pytest.mark.parametrize("count", range(20, 30))
def test_a_short_list_in_two_columns_is_not_split(count):
    items = "".join(f"<li>thing {n}</li>" for n in range(6))
    drawn = worksheet(f'<h1>T</h1>{filled(count)}<section class="columns"><ol>{items}</ol></section>')
    assert sorted(drawn.text(n).count("thing") for n in range(len(drawn.pages)))[-1] == 6


@pytest.mark.parametrize("count", range(22, 30))
def test_a_page_that_begins_with_what_leads_to_a_heading_goes_on_with_none(count):
    drawn = worksheet(f'<h1>T</h1><h2>First</h2>{filled(count)}<p class="lead">Turn</p><h2>Next</h2><p>a</p>')
    begun = [lines(drawn, number) for number in range(1, len(drawn.pages))]
    assert all(rows[0] in ("Turn", "First (continued)") for rows in begun)
    assert all(rows[1] != "Turn" for rows in begun)


@pytest.mark.parametrize("count", range(18, 30))
def test_a_kept_section_is_not_split(count):
    drawn = worksheet(f'<h1>T</h1>{filled(count)}<section class="keep">{"<p>kept</p>" * 6}</section>')
    assert [drawn.text(n).count("kept") for n in range(len(drawn.pages))] in ([6], [0, 6])


def test_a_kept_section_longer_than_a_page_is_split_rather_than_lost():
    drawn = worksheet(f'<section class="keep">{"<p>kept</p>" * 60}</section>')
    assert drawn.whole_text.count("kept") == 60


@pytest.mark.parametrize("count", [31, 32, 33, 60])
def test_a_heading_at_the_top_is_not_parted_from_a_kept_section_too_long_for_the_page(count):
    drawn = worksheet(f'<h1>Title</h1><section class="keep">{"<p>kept</p>" * count}</section>')
    assert len(drawn.pages) > 1
    assert drawn.text(0).count("kept") > 20
    assert drawn.whole_text.count("kept") == count


def test_an_empty_paragraph_takes_no_room():
    with_gaps, without = worksheet("<p>a</p><p> </p><p></p><p>b</p>"), worksheet("<p>a</p><p>b</p>")
    tops = [[char["top"] for char in drawn.pages[0].chars] for drawn in (with_gaps, without)]
    assert tops[0] == tops[1]


def test_a_short_row_is_not_split_and_a_long_one_is():
    row = "<tr><td>{n}</td><td>{words}</td></tr>"
    short = "".join(row.format(n=n, words="short words here " * 12) for n in range(30))
    drawn = worksheet(f'<table widths="20 80"><tr><th>No.</th><th>Words</th></tr>{short}</table>')
    per_page = [drawn.text(n).count("short words here") for n in range(len(drawn.pages))]
    assert len(per_page) > 2
    assert all(count % 12 == 0 for count in per_page)
    long = row.format(n=1, words="long words here " * 300)
    drawn = worksheet(f'{filled(15)}<table widths="20 80"><tr><th>No.</th><th>Words</th></tr>{long}</table>')
    assert len(drawn.pages) == 3
    assert drawn.text(0).count("long words here") > 20
    assert drawn.whole_text.count("long words here") == 300


def test_the_header_is_repeated_on_each_page():
    rows = "<tr><td>a</td><td>b</td></tr>" * 60
    drawn = worksheet(f"<table><thead><tr><th>Item</th><th>Reason</th></tr></thead>{rows}</table>")
    assert len(drawn.pages) == 3
    assert all(lines(drawn, n)[0] == "Item Reason" for n in range(3))
    assert sum(lines(drawn, n).count("a b") for n in range(3)) == 60


def test_columns_have_the_written_widths():
    drawn = worksheet('<table widths="25 75"><tr><th>A</th><td>B</td></tr></table>')
    places = {char["text"]: char["x0"] for char in drawn.pages[0].chars}
    assert places["B"] - places["A"] == pytest.approx((612 - 72 - 0.9 * 72 + 14) * 0.25, abs=1)


def test_amounts_stand_at_the_right():
    drawn = worksheet(
        '<table widths="60 40"><tr><th>What</th><th class="number">Amount</th></tr>'
        '<tr><td>House</td><td class="number">$450,000</td></tr>'
        '<tr><td>Car</td><td class="number">$5</td></tr></table>'
    )
    ends = [line["x1"] for line in drawn.pages[0].extract_text_lines()][1:3]
    assert ends == pytest.approx([612 - 0.9 * 72] * 2, abs=1)


def test_a_page_break_starts_a_page_and_none_is_left_empty():
    drawn = worksheet("<pagebreak/><p>one</p><pagebreak/><pagebreak/><p>two</p><pagebreak/>")
    assert [lines(drawn, n) for n in range(len(drawn.pages))] == [["one"], ["two"]]


def test_each_sheet_starts_a_page_and_pages_are_counted_through():
    drawn = Drawn(*(SheetSource(f"S{n}", f"<p>sheet {n}</p>", running="Foot") for n in range(1, 4)))
    assert [drawn.text(n) for n in range(3)] == [f"sheet {n} Foot Page {n} of 3" for n in range(1, 4)]


def test_text_after_a_box_hangs():
    drawn = worksheet(f"<p><tick/> {'hang ' * 60}</p><ul><li><tick/> {'item ' * 60}</li></ul>")
    for word in ("hang", "item"):
        starts = {row["x0"] for row in drawn.pages[0].extract_text_lines() if row["text"].startswith(word)}
        assert len({round(start, 1) for start in starts}) == 1
        assert min(starts) > 72 + 12


def test_a_box_stands_on_the_line_of_its_words():
    """Also where that line is taller, to be written on; a box alone takes up a line, too."""
    page = worksheet(
        "<ul><li><tick/> plain</li><li><tick/> written <line/></li><li><tick/></li><li><tick/> last</li></ul>"
    ).pages[0]
    boxes = [rect["bottom"] for rect in page.rects if rect["height"] < 15]
    plain, written, last = (row["bottom"] for row in page.extract_text_lines()[:3])
    offset = boxes[0] - plain
    assert boxes[1] - written == pytest.approx(offset, abs=0.1)
    assert boxes[3] - last == pytest.approx(offset, abs=0.1)
    assert boxes[3] - boxes[2] == pytest.approx(19, abs=0.1)


def test_a_line_to_write_on_has_room_above_it_and_the_written_width():
    drawn = worksheet('<p>Name: <line width="40"/> end</p><p>Signature: <line/></p>')
    rules = sorted((edge["top"], edge["x0"], edge["x1"]) for edge in drawn.pages[0].edges)[:2]
    column = 612 - 72 - 0.9 * 72
    assert rules[0][2] - rules[0][1] == pytest.approx(0.4 * column, abs=0.5)
    assert rules[1][2] == pytest.approx(72 + column, abs=0.5)
    assert rules[1][0] - rules[0][0] >= 28


def test_marked_and_empty_boxes_differ_without_colour():
    def strokes(html: str) -> int:
        page = worksheet(html).pages[0]
        return len(page.lines) + len(page.curves)

    assert strokes("<p><tick marked/> x</p>") - strokes("<p><tick/> x</p>") == 2


def test_remarks_and_warnings_differ_without_colour():
    frames = {}
    for kind in ("note", "warning"):
        page = worksheet(f'<div class="{kind}">words</div>').pages[0]
        frames[kind] = [(round(rect["width"]), rect["fill"]) for rect in page.rects]
    assert frames["note"] == [(3, True)]
    assert frames["warning"][0][0] > 400
    assert not frames["warning"][0][1]


def test_the_outline_has_an_entry_a_sheet_and_one_below_for_each_section():
    drawn = Drawn(
        SheetSource("Worksheet & more", SHEET),
        SheetSource("Attachment Ñ", "<h1>A</h1><h2>Real <em>property</em></h2>", style="attachment"),
    )
    outline = drawn.reader.outline
    assert [each.title for each in outline if not isinstance(each, list)] == [
        "Worksheet & more",
        "Attachment Ñ",
    ]
    assert [each.title for each in outline[1]] == ["Item 1: Your legal relationship", "Money"]
    assert [each.title for each in outline[3]] == ["Real property"]
    pages = [
        drawn.reader.get_destination_page_number(each) for each in (outline[0], outline[1][1], outline[3][0])
    ]
    assert pages == [0, len(drawn.pages) - 2, len(drawn.pages) - 1]


def test_what_was_drawn_before_changes_nothing():
    row = "<tr><th>1</th><td><tick/> words of <em>many</em> sheets</td></tr>"
    items = "<ul><li><tick/> an item</li><li>another</li></ul><p>a paragraph</p>"
    sheets = [
        SheetSource("Long", f"<h1>Long</h1><table>{row * 90}</table>{items * 20}", may_close=True),
        SheetSource("Short", f"<p>a paragraph</p><table>{row}</table>{items}", follows=True),
        SheetSource("Filed", f"<h1>Filed</h1>{items}", style="attachment"),
    ]
    alone = [draw([sheet], title="Packet", on=ON) for sheet in sheets]
    together = draw(sheets, title="Packet", on=ON)
    assert draw(sheets[::-1], title="Packet", on=ON) != together
    assert draw(sheets, title="Packet", on=ON) == together
    assert [draw([sheet], title="Packet", on=ON) for sheet in sheets] == alone


def test_the_outline_leads_to_the_top_of_a_sheet_whatever_it_begins_with():
    table = '<table class="plain"><tr><td>Caption</td><td>of the court</td></tr></table>'
    outline = Drawn(
        SheetSource("Words first", "<h1>One</h1><p>words</p>"),
        SheetSource("Table first", f"{table}<h1>Two</h1>"),
    ).reader.outline
    words, caption = (float(each.top) for each in outline)
    assert abs(words - caption) < 12


@pytest.mark.parametrize(
    ("sheets", "title"),
    [([], "Packet"), ([SheetSource("S", "")], " "), ([SheetSource("\x00", "")], "Packet")],
)
def test_a_document_without_title_or_sheet_is_refused(sheets, title):
    with pytest.raises(ValueError, match="needs a title and at least one sheet"):
        draw(sheets, title=title, on=ON)


def test_an_unknown_style_is_refused():
    with pytest.raises(ValueError, match="There is no style 'poster'"):
        draw([SheetSource("S", "", style="poster")], title="Packet", on=ON)
    assert attachment("<p>one</p>").pages


@pytest.mark.parametrize("count", range(20, 30))
def test_a_table_of_two_rows_goes_to_the_next_page_rather_than_leave_one_alone(count):
    rows = "<tr><td>row 1 of it</td></tr><tr><td>row 2 of it</td></tr>"
    drawn = worksheet(f'<h1>T</h1>{filled(count)}<h2>Part</h2><table class="plain">{rows}</table>')
    assert sorted(drawn.text(n).count("of it") for n in range(len(drawn.pages)))[-1] == 2
