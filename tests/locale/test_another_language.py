"""Any other language is a catalog: a language that nobody speaks shows that every sheet goes through one."""

import re
from collections.abc import Iterator
from html import unescape
from io import BytesIO

import pytest
from pypdf import PdfReader

from firstpaper.locale import language, speaking
from firstpaper.packet import Packet, Stage, build
from firstpaper.packet.views.sheet import Sheet
from tests.households.golden import HOUSEHOLDS, Household, followed, households
from tests.locale.pseudo import TONGUE, speaking_pseudo

ALL = {each.name: each for each in (*followed(), *households())}
"""Each household once, before its filing."""
LATER = {each.name: each for each in followed()}

SPAN = re.compile(r'<span lang="en-US">(.*?)</span>', re.DOTALL)
WORD = re.compile(r"[A-Za-z']+")
MARKS_OF_ITEMS = re.compile(r"\b\d{1,2}[a-z]?(?:\(\w\))*|\([a-z]\)")
"""Numbers of items are the same in every language."""


@pytest.fixture(scope="module", autouse=True)
def pseudo() -> Iterator[None]:
    with speaking_pseudo():
        yield


def _packet(household: Household) -> Packet:
    with speaking(TONGUE):
        stages = [Stage.LATER] if household.recorded else tuple(Stage)
        return build(household.case, household.on, stages=stages, hand_off_language="en")


def _english_left(sheet: Sheet, told: set[str]) -> list[str]:
    """Words with plain vowels that no span tells to be English and that no fact holds."""
    words = unescape(re.sub(r"<[^<>]*>", " ", SPAN.sub(" ", sheet.markup)))
    found = WORD.findall(MARKS_OF_ITEMS.sub(" ", words))
    return [word for word in found if re.search("[aeiou]", word) and word not in told]


@pytest.mark.parametrize("household", [*ALL.values(), *LATER.values()], ids=str)
def test_every_sheet_is_said_in_the_language_and_its_english_is_told(household: Household) -> None:
    told = set(WORD.findall((HOUSEHOLDS / f"{household.name}.yaml").read_text("utf-8")))
    told |= {word for typed in household.recorded for word in WORD.findall(typed)}
    for sheet in _packet(household).sheets:
        if sheet.language == TONGUE:
            assert _english_left(sheet, told) == [], sheet.title


def test_what_is_filed_and_what_a_helper_reads_is_english() -> None:
    packet = _packet(ALL["six-children-and-one-unborn"])
    others = {sheet.style: sheet for sheet in packet.sheets if sheet.language == "en"}
    assert set(others) == {"attachment", "reading"}
    helper = unescape(re.sub(r"<[^<>]*>", " ", others["reading"].markup))
    assert "For the lawyer or volunteer" in helper
    assert not re.search("[áéíóú]", helper)


def test_the_same_words_are_copied_onto_the_form_in_every_language() -> None:
    household = ALL["two-children-moved-county"]
    with speaking("en"):
        ours = build(household.case, household.on)
    theirs = _packet(household)
    copied = [{one.concept: (one.action, one.value) for one in each.brief.items} for each in (ours, theirs)]
    assert copied[0] == copied[1]


def test_a_label_stands_in_english_with_its_meaning_beside() -> None:
    sheets = _packet(ALL["plain-childless-divorce"]).sheets
    worksheet = next(sheet.markup for sheet in sheets if sheet.template == "worksheet.html")
    assert '<span lang="en-US">We are married</span> (Wé áré márríéd)' in worksheet


def test_paper_and_screen_name_their_languages() -> None:
    packet = _packet(ALL["plain-childless-divorce"])
    with speaking(TONGUE):
        pdf, html = packet.pdf(), packet.html()
        assert language() == TONGUE
    reader = PdfReader(BytesIO(pdf))
    catalog = reader.trailer["/Root"]
    assert catalog["/Lang"] == "qq"
    sections = catalog["/StructTreeRoot"]["/K"].get_object()["/K"]
    assert [one.get_object().get("/Lang") for one in sections].count("en-US") == 1
    contents = [page.get_contents().get_data() for page in reader.pages]
    assert any(b"/Span <</Lang (en-US)>> BDC" in content for content in contents)
    assert all(content.count(b"BDC") == content.count(b"EMC") for content in contents)
    assert '<html lang="qq">' in html
    assert len(re.findall(r'<article id="sheet-\d+" lang="en-US">', html)) == 1
    assert "\u2068" not in html


def test_every_translated_sheet_says_what_it_is_worth() -> None:
    for sheet in _packet(ALL["six-children-and-one-unborn"]).sheets:
        assert ("Tránslátéd by thís prójéct" in sheet.foot) == (sheet.language == TONGUE)
