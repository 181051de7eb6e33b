"""The packet of every household: conforms, says what the items say, and keeps its promises."""

import re
import subprocess
import sys
from html import unescape
from html.parser import HTMLParser
from io import BytesIO

import page as page_validation
from pypdf import PdfReader

from firstpaper.facts import Case
from firstpaper.forms.answer import Action
from firstpaper.law.finding import Weight
from firstpaper.packet import Pile, build
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.templates import render
from tests.each import one_by_one
from tests.households.golden import Household
from tests.packet.drawn import ALL, footed, household, measured, packet, pages, pdf

each_household = one_by_one(ALL)

POINTS_PER_INCH = 72
HAND_OFF = "Private: for your lawyer only. Not to be filed."
"""The foot of the sheet for the lawyer or volunteer."""
HOSTILE = "<b>Ann</b> & {{ 7*7 }} %s </p><script>x</script>"


@each_household
def test_conforms_to_pdf_ua_1(one: Household) -> None:
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    report = page_validation.validate_pdf_bytes(pdf(one), profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    assert report.is_compliant


@each_household
def test_every_sheet_is_written_in_the_sheet_markup(one: Household) -> None:
    for sheet in packet(one).sheets:
        assert markup_errors(render(sheet.template, sheet.values)) == [], sheet.title


@each_household
def test_what_is_to_be_written_can_be_read_on_the_worksheets(one: Household) -> None:
    feet = "|".join(re.escape(sheet.running) for sheet in packet(one).sheets if sheet.running)
    furniture = re.compile(rf"^[^()]{{1,90}}\(continued\)|(?:{feet}) Page \d+ of \d+$")
    whole = "".join("".join(furniture.sub("", page) for page in pages(one)).split())
    for answer in packet(one).brief.items:
        if answer.action is Action.WRITE:
            assert "".join(answer.value.split()) in whole, answer.concept


@each_household
def test_paper_type_and_margins_follow_the_rules_of_court(one: Household) -> None:
    # Cal. Rules of Court: 2.103 letter paper, 2.104 12 points, 2.107 margins, 2.110 footer 10 points
    for page in measured(one):
        assert (page.width, page.height) == (8.5 * POINTS_PER_INCH, 11 * POINTS_PER_INCH)
        left = 0.7 if HAND_OFF in page.words else 1.0  # one that is never filed may be set closer
        assert (
            min(run.left for run in page.runs if not run.words.strip().isdigit())
            >= left * POINTS_PER_INCH - 0.5
        )
        assert max(run.right for run in page.runs) <= page.width - 0.5 * POINTS_PER_INCH
        assert all(run.size > 9.99 for run in page.runs)
        body = [run for run in page.runs if run.bottom > 90]  # above the footers
        assert body
        assert all(run.size > 11.99 for run in body if run.words.strip())


@each_household
def test_every_font_is_embedded(one: Household) -> None:
    fonts = {
        font.get_object()["/BaseFont"]: font.get_object()
        for page in PdfReader(BytesIO(pdf(one))).pages
        for font in page["/Resources"].get("/Font", {}).values()
    }
    assert fonts
    for name, font in fonts.items():
        descriptor = (
            font.get("/FontDescriptor") or font["/DescendantFonts"][0].get_object()["/FontDescriptor"]
        )
        assert "/FontFile2" in descriptor.get_object(), name


@each_household
def test_the_cover_takes_two_pages_or_three_where_there_is_much_to_say(one: Household) -> None:
    heavy = {"address-must-stay-hidden", "two-children-moved-county"}
    assert len(footed(one, "Cover checklist")) <= (3 if one.name in heavy else 2)


@each_household
def test_safety_stands_on_the_first_two_pages_where_danger_was_told(one: Household) -> None:
    first = " ".join(pages(one)[:2])
    rest = " ".join(words for words in pages(one)[2:] if HAND_OFF not in words)
    for finding in packet(one).brief.safety:
        assert finding.says in first
        assert finding.says not in rest


@each_household
def test_the_hand_off_sheet_takes_two_pages_at_most_and_says_on_each_that_it_is_private(
    one: Household,
) -> None:
    found = footed(one, HAND_OFF)
    assert 1 <= len(found) <= 2
    assert "Do not let the other side see it." in found[0]


@each_household
def test_the_hand_off_sheet_names_every_stop_as_one(one: Household) -> None:
    words = " ".join(footed(one, HAND_OFF))
    stops = packet(one).brief.of_weight(Weight.STOP)
    assert words.count("(STOP)") == len({stop.id for stop in stops})


@each_household
def test_the_contents_name_the_page_on_which_each_sheet_starts(one: Household) -> None:
    drawn = PdfReader(BytesIO(pdf(one)))
    starts = {
        entry.title: drawn.get_destination_page_number(entry) + 1
        for entry in drawn.outline
        if not isinstance(entry, list)
    }
    listed = [title for entry in packet(one).sheets[0].values["contents"] for _short, title in entry.sheets]
    contents = " ".join(pages(one)[:3]).partition("What is in this packet")[2]
    said = re.findall(r"page +(\d+)(?! ?of|\d)", contents)
    assert [int(number) for number in said[: len(listed)]] == [starts[title] for title in listed]


@each_household
def test_the_piles_hold_every_sheet_once(one: Household) -> None:
    parts = dict(packet(one).piles())
    assert sorted(sheet.title for part in parts.values() for sheet in part.sheets) == sorted(
        sheet.title for sheet in packet(one).sheets
    )
    assert (
        all(sheet.style == "attachment" for sheet in parts[Pile.FILE].sheets) if Pile.FILE in parts else True
    )


@each_household
def test_an_attachment_page_shows_nothing_of_the_packet(one: Household) -> None:
    for attachment in packet(one).brief.attachments:
        found = [words for words in pages(one) if f"{attachment.label} to {attachment.behind}" in words]
        assert found, attachment.label
        for number, words in enumerate(found, start=1):
            assert f"Page {number} of {len(found)}" in words
            assert f"of {len(pages(one))}" not in words or len(found) == len(pages(one))
            assert attachment.short_title in words
            assert "Firstpaper" not in words


@each_household
def test_the_outline_names_every_sheet_in_order(one: Household) -> None:
    outline = [entry.title for entry in PdfReader(BytesIO(pdf(one))).outline if not isinstance(entry, list)]
    assert outline == [sheet.title for sheet in packet(one).sheets]


@each_household
def test_the_cover_says_when_the_papers_must_not_be_filed_yet(one: Household) -> None:
    stops = packet(one).brief.of_weight(Weight.STOP)
    assert ("Stop. Do not file yet." in pages(one)[0]) == bool(stops)


@each_household
def test_the_cover_warns_shows_help_and_dates_the_law(one: Household) -> None:
    cover = " ".join(footed(one, "Cover checklist") or pages(one)[:4])
    assert "not legal advice" in cover
    assert "1-800-799-7233" in cover
    assert "last checked on" in cover
    assert "self-help center" in cover


@each_household
def test_the_worksheets_name_the_edition_and_where_to_check_it(one: Household) -> None:
    first = footed(one, "Worksheet for FL-100")[0]
    assert "lower left corner" in first
    assert "January 1, 2020" in first


class _WellFormed(HTMLParser):
    VOID = frozenset({"meta", "br", "input", "hr"})

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.fetched: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag not in self.VOID:
            self.open.append(tag)
        for name, value in attrs:
            if name == "id":
                self.ids.append(value or "")
            if name == "href":
                self.links.append(value or "")
            if name in ("src", "srcset", "action"):
                self.fetched.append(value or "")

    def handle_endtag(self, tag: str) -> None:
        if tag not in self.VOID:
            assert self.open.pop() == tag


@each_household
def test_the_screen_version_is_well_formed_and_fetches_nothing(one: Household) -> None:
    html = packet(one).html()
    reader = _WellFormed()
    reader.feed(html)
    assert reader.open == []
    assert reader.links == [f"#{name}" for name in reader.ids]
    assert reader.fetched == []
    assert not re.search(r"<(tick|line|pagebreak|script)\b", html)
    assert html.count("<h1>") == 1


@each_household
def test_the_screen_version_says_the_same(one: Household) -> None:
    words = unescape(re.sub(r"<[^>]*>", " ", packet(one).html()))
    shown = "".join(words.split())
    for answer in packet(one).brief.items:
        if answer.action is Action.WRITE:
            assert "".join(answer.value.split()) in shown, answer.concept


def test_the_same_facts_and_day_give_the_same_bytes_in_another_process() -> None:
    one = household("two-children-moved-county")
    program = (
        "import sys; from tests.packet.drawn import household, pdf;"
        f"sys.stdout.buffer.write(pdf(household({one.name!r})))"
    )
    again = subprocess.run([sys.executable, "-c", program], capture_output=True, check=True)
    assert again.stdout == pdf(one)


def test_what_a_person_typed_is_data() -> None:
    case = household("plain-childless-divorce").case.with_fact("petitioner.name", HOSTILE)
    one = build(case, ALL[0].on)
    assert HOSTILE in " ".join(
        "".join(page.extract_text().splitlines(True)) for page in _read(one.pdf())
    ).replace("\n", " ")
    assert "<script>x" not in one.html()
    assert HOSTILE in unescape(one.html())


def test_letters_of_many_scripts_are_printed() -> None:
    text = " ".join(pages(household("same-sex-exception")))
    assert "Nguyễn Thị Hạnh" in text
    assert "Ольга Петрова" in text
    assert packet(household("same-sex-exception")).warnings == ()


def test_letters_that_cannot_be_printed_are_named() -> None:
    case = household("plain-childless-divorce").case.with_fact("petitioner.name", "Ann 😀 王")
    (warning,) = build(case, ALL[0].on).warnings
    assert "😀 王" in warning
    assert "by hand" in warning


def test_a_name_of_three_hundred_letters_stays_on_the_page() -> None:
    case = household("plain-childless-divorce").case.with_fact("petitioner.name", "W" * 300)
    for page in _read(build(case, ALL[0].on).pdf()):
        right = page.mediabox.width - 0.5 * POINTS_PER_INCH
        spots: list[float] = []
        page.extract_text(visitor_text=lambda _t, _c, matrix, _f, _s, found=spots: found.append(matrix[4]))
        assert max(spots) < right


def test_an_empty_case_makes_a_packet_of_open_questions() -> None:
    one = build(Case(), ALL[0].on)
    words = " ".join(page.extract_text() for page in _read(one.pdf()))
    assert "Questions still open" in words
    assert not any(answer.action is Action.WRITE and not answer.value for answer in one.brief.items)


def test_the_address_that_must_stay_hidden_is_nowhere_but_the_mailing_address() -> None:
    one = household("address-must-stay-hidden")
    assert "PO Box 1846" in " ".join(pages(one))
    assert one.name not in " ".join(pages(one))
    metadata = PdfReader(BytesIO(pdf(one))).metadata
    assert "Markova" not in str(metadata)


def _read(data: bytes) -> list:
    return list(PdfReader(BytesIO(data)).pages)


@each_household
def test_on_a_screen_every_heading_of_a_table_has_its_scope_and_every_picture_can_be_reached(
    one: Household,
) -> None:
    shown = packet(one).html()
    assert not re.search(r"<th(?! scope)[ >]|<page|widths=", shown)
    assert shown.count("<figure") == shown.count('<figure tabindex="0" role="group"')
    assert "overflow-wrap: anywhere" not in shown
