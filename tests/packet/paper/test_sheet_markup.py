"""The sheet markup is strict: what is outside of it is an error, never a surprise on paper."""

import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.packet.paper import SheetSource, draw, markup_errors
from firstpaper.packet.paper.markup import GRAMMAR, ROOT
from tests.packet.paper.kitchen_sink import SHEET
from tests.packet.paper.pages_read_back import ON


def test_everything_in_the_markup_is_accepted():
    assert markup_errors(SHEET) == []


@pytest.mark.parametrize(
    ("html", "words"),
    [
        ("<script>alert(1)</script>", "<script> is not part of the sheet markup"),
        ("<P>one</P>", "a < that starts no tag"),
        ("<p>one", "<p> is never closed"),
        ("<p>one</strong></p>", "</strong> closes nothing"),
        ("<p><strong>one</p></strong>", "</p> comes before <strong> is closed"),
        ("<p>1 < 2</p>", "a < that starts no tag"),
        ("<ul><li><p>one</li></p></li></ul>", "</li> comes before <p> is closed"),
        ("<p>one</p> <p>two</li></p>", "</li> closes nothing"),
        ("loose", "text outside of a paragraph"),
        ("<ul>loose</ul>", "text directly inside <ul>"),
        ("<ul></ul>", "<ul> is empty"),
        ("<p><p>one</p></p>", "<p> may not stand inside <p>"),
        ("<li>one</li>", "<li> may not stand here"),
        ("<td>one</td>", "<td> may not stand here"),
        ("<h1>one <tick/></h1>", "<tick> may not stand inside <h1>"),
        ('<p onclick="x">one</p>', "<p> takes no attribute onclick"),
        ('<p class="x">one</p>', "<p> has a value of class that it does not know"),
        ('<div class="danger">one</div>', "<div> has a value of class"),
        ("<div>one</div>", '<div> needs class="note|warning"'),
        ("<section><p>one</p></section>", '<section> needs class="keep|columns"'),
        ('<line width="0"/>', "<line> has a value of width"),
        ('<line width="20" width="30"/>', "<line> has width twice"),
        ("<p/>", "<p/> may not be empty"),
        ("<p>one</p x>", "</p> takes nothing else"),
        ("<tick>text</tick>", "<tick> may not stand here"),
        ("<p><tick>text</tick></p>", "</tick> closes nothing"),
        ("<?xml version='1.0'?>", "a < that starts no tag"),
        ("<!DOCTYPE html>", "a < that starts no tag"),
        ("<h2>First</h2>", "<h2> needs an <h1> before it"),
        ("<h1>One</h1><h3>Three</h3>", "<h3> needs an <h2> before it"),
        ("<h1> </h1>", "<h1> is empty"),
        ("<figure/>", "<figure> needs name="),
        ('<figure name="The Times"/>', "<figure> has a value of name"),
        ('<figure name="one" alt="two"/>', "<figure> takes no attribute alt"),
        ('<figure name="one">words</figure>', "text outside of a paragraph"),
        ('<p><figure name="one"/></p>', "<figure> may not stand inside <p>"),
        ('<table><tr><th><figure name="one"/></th></tr></table>', "<figure> may not stand inside <th>"),
        ("<table></table>", "has an empty row or none"),
        ("<table><tr><th>a</th></tr><tr><td>b</td><td>c</td></tr></table>", "has rows of different widths"),
        ('<table widths="50 50"><tr><th>a</th></tr></table>', "has 1 columns but 2 widths"),
        ('<table widths="50 20"><tr><th>a</th><td>b</td></tr></table>', "add up to 100"),
        ("<table><tr><td>a</td></tr></table>", "has no <th>"),
        ("<table><tr>" + "<th>a</th>" * 9 + "</tr></table>", "has more than 8 columns"),
        ("<table><tr><th>a</th></tr><thead><tr><th>b</th></tr></thead></table>", "may have one <thead>"),
        ("<ul><li>" * 4 + "x" + "</li></ul>" * 4, "lists may stand 3 deep"),
        ("<p>" + "<strong>" * 40 + "x" + "</strong>" * 40 + "</p>", "too deep"),
    ],
)
def test_what_is_outside_the_markup_is_named_and_not_drawn(html, words):
    faults = markup_errors(html)
    assert any(words in fault for fault in faults), faults
    with pytest.raises(ValueError, match="cannot be drawn"):
        draw([SheetSource("Sheet", html)], title="Packet", on=ON)


def test_a_picture_that_the_sheet_does_not_bring_is_named_and_not_drawn():
    html = '<h1>One</h1>\n<figure name="two"/>'
    assert markup_errors(html) == []
    with pytest.raises(ValueError, match="Line 2: the sheet brings no picture 'two'"):
        draw([SheetSource("Sheet", html)], title="Packet", on=ON)


def test_a_fault_names_its_line():
    assert markup_errors("<h1>One</h1>\n\n<p>two\nthree</p>\n<blink>\n")[0].startswith("Line 5: <blink>")


def test_a_fault_never_repeats_what_a_person_wrote():
    faults = markup_errors(
        'Maria Example<ul>Maria<p title="Maria">Maria < Example</p><li class="Maria"></ul>'
    )
    assert len(faults) >= 5
    assert "Maria" not in " ".join(faults)


_TAGS = ("p", "ul", "ol", "li", "h1", "h2", "strong", "em", "table", "tr", "td", "th")
_PIECES = st.sampled_from(
    [f"<{tag}>" for tag in _TAGS]
    + [f"</{tag}>" for tag in _TAGS]
    + [
        '<div class="note">',
        "</div>",
        '<section class="keep">',
        "</section>",
        "<br/>",
        "<hr/>",
        "<pagebreak/>",
    ]
    + ["<tick/>", "<tick></tick>", "<tick>", "<line/>", "words", "&lt;", "&amp;", "<", ">", "&"]
)


@given(st.lists(_PIECES, max_size=24))
def test_markup_put_together_at_random_is_either_refused_or_drawn(pieces):
    html = "".join(pieces)
    sheet = SheetSource("Sheet", html)
    if markup_errors(html):
        with pytest.raises(ValueError, match="cannot be drawn"):
            draw([sheet], title="Packet", on=ON)
    else:
        assert draw([sheet], title="Packet", on=ON).startswith(b"%PDF-1.7")


@given(st.text())
def test_no_text_breaks_the_reader(html):
    assert isinstance(markup_errors(html), list)


REFERENCE = Path(__file__).parents[3] / "docs" / "reference" / "sheet-markup.md"


def test_the_reference_page_shows_correct_markup():
    examples = re.findall(r"```html\n(.*?)```", REFERENCE.read_text(encoding="utf-8"), re.DOTALL)
    whole = [example for example in examples if "{{" not in example]
    assert len(whole) == 2
    assert [markup_errors(example) for example in whole] == [[], []]


@pytest.mark.parametrize("tag", sorted(set(GRAMMAR) - {ROOT}))
def test_the_reference_page_names_every_tag_and_attribute(tag):
    page = REFERENCE.read_text(encoding="utf-8")
    assert re.search(rf"`{tag}[ `]", page)
    assert all(re.search(rf"\b{attribute}\b", page) for attribute in GRAMMAR[tag].attributes)
