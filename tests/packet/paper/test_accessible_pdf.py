"""What a screen reader finds: PDF/UA-1 by an outside validator, and the tree read back."""

from xml.etree import ElementTree

import pytest

from firstpaper.packet.paper import SheetSource
from tests.packet.paper.kitchen_sink import LONG_WORD, NAMES, SHEET
from tests.packet.paper.pages_read_back import Drawn, worksheet

HOSTILE = (
    "&lt;script&gt;alert(1)&lt;/script&gt; &lt;/p&gt; &amp;amp;"
    " {{ name }} %s \\n (]&gt;&gt; 👩‍👩‍👧 中文 עברית العربية"
    " \u202egnp.exe\u202c \x00\x07\x1b[31m e\u0301 \ud800 \U0010ffff \u200b\ufeff " + "W" * 300
)

SHEETS = {
    "one paragraph": "<h1>One</h1><p>two</p>",
    "nothing at all": "",
    "no words": "<p></p><p> </p><ul><li></li></ul><line/>",
    "everything": SHEET,
    "hostile text": f"<h1>{HOSTILE}</h1><p>{HOSTILE}</p><ul><li>{HOSTILE}</li></ul>"
    f"<table><thead><tr><th>{HOSTILE}</th></tr></thead><tr><td>{HOSTILE}</td></tr></table>",
    "boxes in a repeated header": "<table><thead>"
    "<tr><th><tick/> Yes <line/></th><th><tick marked/> No</th></tr></thead>"
    + "<tr><th>a</th><td>b</td></tr>" * 60
    + "</table>",
    "a row longer than a page": "<table><thead><tr><th>a</th><th>b</th></tr></thead>"
    f"<tr><td>{'long ' * 1500}</td><td><p>short</p><ul><li>x</li></ul></td></tr></table>",
    "a header longer than a page": f"<table><thead><tr><th>{'long ' * 1500}</th></tr></thead>"
    "<tr><td>b</td></tr></table>",
    "a remark longer than a page": f'<div class="warning">{"<p>word word</p>" * 80}</div>',
    "a kept section longer than a page": f'<section class="keep">{"<p>word word</p>" * 80}</section>',
}


@pytest.mark.parametrize("style", ["worksheet", "attachment"])
@pytest.mark.parametrize("html", SHEETS.values(), ids=SHEETS.keys())
def test_every_kind_of_content_conforms_to_pdf_ua_1(html, style):
    report = Drawn(SheetSource("A sheet", html, style=style, running="Foot")).report
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    assert report.is_compliant
    assert report.rules.total > 100


def test_the_validator_does_find_faults():
    broken = worksheet(SHEET)
    broken.data = broken.data.replace(b"/Alt", b"/Xlt")
    assert not broken.report.is_compliant


def test_document_names_its_language_and_shows_its_title():
    drawn = worksheet("<h1>Uno</h1>", title="Petición de Ñandú", lang="es-US", subject="Papers")
    root = drawn.reader.root_object
    assert root["/Lang"] == "es-US"
    assert root["/MarkInfo"]["/Marked"] is True or root["/MarkInfo"]["/Marked"].value is True
    assert str(root["/ViewerPreferences"]["/DisplayDocTitle"]) in {"true", "True"}
    assert drawn.reader.metadata.title == "Petición de Ñandú"
    assert drawn.reader.metadata.subject == "Papers"


def test_nothing_in_the_file_names_the_program():
    drawn = worksheet("<h1>One</h1>", title="Papers")
    assert b"irstpaper" not in drawn.data
    assert "irstpaper" not in str(drawn.reader.metadata)


def test_metadata_carries_title_standard_and_the_given_day():
    drawn = worksheet("<h1>One</h1>", title="Smith & <Jones>")
    packet = root = ElementTree.fromstring(drawn.reader.root_object["/Metadata"].get_data())
    names = {
        "dc": "http://purl.org/dc/elements/1.1/",
        "rdf": "http://www.w3.org/1999/02/22-rdf-syntax-ns#",
        "ua": "http://www.aiim.org/pdfua/ns/id/",
        "xmp": "http://ns.adobe.com/xap/1.0/",
    }
    assert packet.findtext(".//dc:title/rdf:Alt/rdf:li", namespaces=names) == "Smith & <Jones>"
    assert root.findtext(".//ua:part", namespaces=names) == "1"
    assert root.findtext(".//xmp:CreateDate", namespaces=names) == "2026-01-05T00:00:00+00:00"
    assert drawn.reader.metadata.creation_date.date().isoformat() == "2026-01-05"
    assert drawn.reader.metadata.author in {"", None}


def test_pages_are_read_in_tree_order():
    drawn = worksheet(SHEET)
    assert len(drawn.reader.pages) > 3
    for number, page in enumerate(drawn.reader.pages):
        assert page["/Tabs"] == "/S"
        assert page["/StructParents"] == number


def test_headings_lists_and_paragraphs_have_their_roles():
    heard = worksheet(
        "<h1>One</h1><h2>Two</h2><h3>Three</h3><p>Four <strong>five</strong></p>"
        "<ol><li>six<ul><li>seven</li></ul></li></ol>"
    ).heard
    assert heard.role == "Document"
    assert [(each.role, each.text) for each in heard.walk() if each.role in {"H1", "H2", "H3", "P"}] == [
        ("H1", "One"),
        ("H2", "Two"),
        ("H3", "Three"),
        ("P", "Four five"),
        ("P", "six"),
    ]
    outer, inner = heard.all("L")
    assert outer.attributes["/ListNumbering"] == "/Decimal"
    assert inner.attributes["/ListNumbering"] == "/Disc"
    assert [kid.role for kid in outer.kids[0].kids] == ["Lbl", "LBody"]
    assert [label.text for label in heard.all("Lbl")] == ["1.", "•"]
    assert [[kid.role for kid in body.kids] for body in heard.all("LBody")] == [["P", "L"], []]
    assert heard.all("LBody")[1].text == "seven"


def test_the_one_paragraph_of_a_cell_is_heard_as_the_cell():
    heard = worksheet(
        "<h1>One</h1><table><tr><th>Two</th><td>three <em>four</em></td></tr>"
        "<tr><th>Five</th><td><p>six</p><p>seven</p></td></tr></table>"
    ).heard
    alone, several = heard.all("TD")
    assert (alone.text, alone.kids) == ("three four", ())
    assert [(kid.role, kid.text) for kid in several.kids] == [("P", "six"), ("P", "seven")]


def test_boxes_and_lines_are_read_out_where_they_stand():
    drawn = worksheet(
        "<p>Mark <tick/> yes or <tick marked/> no.</p><p>Name: <line width='30'/> and date</p>".replace(
            "'", '"'
        )
        + "<ul><li><tick></tick> We are married</li></ul><line/>"
    )
    assert drawn.spoken == (
        "Mark [empty box to mark]yes or [marked box]no. Name: [blank line to write on]and date"
        " [empty box to mark] We are married [blank line to write on]"
    )


def test_table_cells_name_what_heads_them():
    heard = worksheet(
        '<table><thead><tr><th>Item</th><th class="number">Amount</th></tr></thead>'
        '<tr><th>House</th><td>1</td></tr><tr><td colspan="2">nothing else</td></tr></table>'
    ).heard
    (table,) = heard.all("Table")
    assert [[cell.role for cell in row.kids] for row in table.kids] == [["TH", "TH"], ["TH", "TD"], ["TD"]]
    assert [cell.attributes.get("/Scope") for cell in heard.all("TH")] == ["/Column", "/Column", "/Row"]
    assert heard.all("TD")[1].attributes["/ColSpan"] == 2


def test_a_header_of_one_column_heads_it():
    heard = worksheet("<table><thead><tr><th>Item</th></tr></thead><tr><td>House</td></tr></table>").heard
    assert [cell.attributes["/Scope"] for cell in heard.all("TH")] == ["/Column"]


def test_words_on_two_lines_are_read_out_as_two_words():
    assert worksheet("<p>one<br/>two <strong>three</strong><br/>four</p>").spoken == "one two three four"


def test_a_layout_table_is_read_as_plain_paragraphs():
    heard = worksheet('<table class="plain"><tr><td>left</td><td>right</td></tr></table>').heard
    assert not heard.all("Table")
    assert [each.text for each in heard.all("P")] == ["left", "right"]


def test_a_repeated_header_is_read_out_once():
    rows = "".join(f"<tr><th>{n}</th><td>why</td></tr>" for n in range(60))
    drawn = worksheet(f"<table><thead><tr><th>Item</th><th>Reason</th></tr></thead>{rows}</table>")
    assert len(drawn.pages) == 3
    assert [drawn.text(number).count("Reason") for number in range(3)] == [1, 1, 1]
    assert drawn.spoken.count("Reason") == 1


def test_a_paragraph_on_two_pages_stays_one_paragraph():
    words = " ".join(f"word{n}" for n in range(600))
    drawn = worksheet(f"<p>{words}</p>")
    assert len(drawn.pages) == 2
    assert [" ".join(each.text.split()) for each in drawn.heard.all("P")] == [words]


def test_the_foot_of_the_page_is_not_read_out():
    drawn = worksheet("<p>words</p>")
    assert "Page 1 of 1" in drawn.text()
    assert drawn.spoken == "words"


def test_everything_is_read_out_in_the_order_it_was_written():
    drawn = worksheet(f"<h1>One</h1><p>{NAMES}</p><ol><li>two</li></ol><p>{LONG_WORD}</p>")
    assert drawn.spoken == f"One {NAMES} 1. two {LONG_WORD}"
