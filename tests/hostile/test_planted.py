"""A word planted in every fact, and looked for in every form, sheet and file that is drafted.

What must not be seen is decided in `firstpaper.facts.addresses` and by the pages that are private.
"""

from collections.abc import Iterator
from dataclasses import asdict
from datetime import date
from io import BytesIO
from typing import Any

import pypdfium2
import pytest

from firstpaper.facts import Case
from firstpaper.facts.addresses import is_post_box, keeps_addresses_off
from firstpaper.forms.attachments import attachments
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.intake import standing
from firstpaper.packet import build
from firstpaper.packet.money import money_pages
from tests.cli.person import facts_of
from tests.hostile.planted import PLACES, Place, keys, planted, secret, texts

DAYS = (date(2026, 11, 25), date(2027, 1, 4))
TOP = ("cap.", "caption.", "filer")
FLED: dict[str, Any] = {
    "child.1.homes": [
        {
            "start": "2020-01-15",
            "end": "2026-05-31",
            "place": "Visalia",
            "state": "CA",
            "with_whom": "both of us",
        },
        {"start": "2026-06-01", "place": "Redding", "state": "CA", "with_whom": "me and my sister"},
    ],
    "child.1.address": {"street": "12 Larkspur Lane", "city": "Redding", "state": "CA", "zip": "96001"},
    "uccjea.people": [{"name": "Ruth Doe", "relation": "aunt", "address": "9 Hill Road, Redding, CA 96001"}],
    "asset.1.kind": "vehicle",
    "debt.1.kind": "credit_card",
}
HIDING: tuple[dict[str, Any], ...] = (
    {"safety.dangers": ["violence", "hide_address"], "uccjea.kept_private": True},
    {"safety.dangers": ["violence"], "uccjea.kept_private": "don't know"},
    {"safety.dangers": "don't know", "uccjea.kept_private": None},
    {"safety.dangers": ["hide_address"], "uccjea.kept_private": False},
)


def fled(facts: dict[str, Any]) -> Case:
    """The household that must stay hidden, with a word of its own in every fact."""
    case = facts_of("address-must-stay-hidden")
    for key, value in (FLED | facts).items():
        case = case.with_fact(key, value)
    return planted(case, PLACES)


def test_every_fact_that_is_typed_has_its_place() -> None:
    assert sorted(texts()) == sorted(PLACES)
    assert len({secret(key) for key in PLACES}) == len(PLACES)


@pytest.mark.parametrize("facts", HIDING, ids=str)
@pytest.mark.parametrize("on", DAYS, ids=str)
def test_no_address_kept_off_is_on_any_form_or_sheet(facts: dict[str, Any], on: date) -> None:
    case = fled(facts)
    assert keeps_addresses_off(case)
    seen = drafted(case, on)
    assert secret("petitioner.phone") in seen, "so that a scan that finds nothing means something"
    assert [key for key in keys(Place.NOWHERE, Place.PRIVATE_PAGES) if secret(key) in seen] == []
    assert [key for key in keys(Place.NOWHERE) if secret(key) in private(case, on)] == []


@pytest.mark.parametrize("facts", HIDING, ids=str)
def test_the_address_for_mail_stands_at_the_top_of_the_forms_alone(facts: dict[str, Any]) -> None:
    case, mail = fled(facts), [secret(key) for key in keys(Place.TOP_OF_THE_FORMS)]
    for concept, words in written(case, DAYS[0]):
        if not concept.startswith(TOP):
            assert [one for one in mail if one in words] == [], concept
    assert any(mail[0] in words for _concept, words in written(case, DAYS[0]))


def test_private_notes_are_on_the_private_pages_alone() -> None:
    case = fled({"safety.dangers": []})
    notes = [secret(key) for key in keys(Place.PRIVATE_PAGES)]
    assert [note for note in notes if note in drafted(case, DAYS[0])] == []
    assert [note for note in notes if note not in private(case, DAYS[0])] == []


@pytest.mark.parametrize(
    ("line", "box"),
    [
        ("PO Box 118", True),
        ("P.O. Box 118", True),
        ("p o box 7", True),
        ("Post Office Box 1846", True),
        ("Box 12", True),
        ("12 Oak Street, PMB 4", True),
        ("Apartado 3", True),
        ("12 Boxwood Lane", False),
        ("4 Mailbox Peak Road", False),
        ("415 Third Street", False),
    ],
)
def test_nobody_swears_to_live_in_a_box_for_mail(line: str, box: bool) -> None:
    assert is_post_box(line) is box


def written(case: Case, on: date) -> Iterator[tuple[str, str]]:
    """Each item of each form, with all that is said of it; then the pages behind them."""
    facts = standing(case)
    forms = (*filled_forms(facts, on), *filled_forms(facts, on, Filing.JOINT))
    yield from ((item.concept, str(asdict(item))) for form in forms for item in form.items)
    yield from (("page", str(asdict(page))) for page in attachments(facts, on))


def drafted(case: Case, on: date) -> str:
    """All that may be filed, served or given to somebody."""
    packet = build(case, on)
    items = "".join(words for _concept, words in written(case, on))
    return packet.html() + _read(packet.pdf()) + items


def private(case: Case, on: date) -> str:
    """The pages that are for the filer alone."""
    pages = money_pages(case, on)
    return pages.html() + _read(pages.pdf())


def _read(pdf: bytes) -> str:
    with pypdfium2.PdfDocument(BytesIO(pdf)) as document:
        return "".join(page.get_textpage().get_text_range() for page in document)
