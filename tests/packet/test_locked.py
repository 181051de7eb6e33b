"""A locked packet: shut to everybody else, and as good for a screen reader as the open one."""

from datetime import date
from io import BytesIO

import page as page_validation
import pypdfium2
import pytest
from pypdf import PdfReader, PdfWriter

from firstpaper.packet import build
from firstpaper.packet.locked import locked
from tests.cli.person import facts_of

PASSPHRASE = "copper ladder moss evening"
ON = date(2026, 11, 30)
READ_ALOUD = 1 << 9
"""Bit 10 of the permissions: text may be taken out for accessibility (ISO 14289-1, 7.16)."""


@pytest.fixture(scope="module")
def opened() -> bytes:
    return build(facts_of("plain-childless-divorce"), ON).pdf()


@pytest.fixture(scope="module")
def shut(opened: bytes) -> bytes:
    return locked(opened, PASSPHRASE)


def test_another_library_opens_it_with_the_passphrase_alone(opened: bytes, shut: bytes) -> None:
    assert len(pypdfium2.PdfDocument(shut, password=PASSPHRASE)) == len(pypdfium2.PdfDocument(opened))
    for wrong in (None, "", "Copper ladder moss evening"):
        with pytest.raises(pypdfium2.PdfiumError):
            pypdfium2.PdfDocument(shut, password=wrong)


def test_nothing_of_it_can_be_read_without(shut: bytes) -> None:
    assert b"Okafor" not in shut
    assert b"Petition packet" not in shut
    reader = PdfReader(BytesIO(shut))
    assert reader.is_encrypted
    assert reader.trailer["/Encrypt"]["/V"] == 5
    assert reader.trailer["/Encrypt"]["/R"] == 6


def test_a_screen_reader_may_read_it_aloud(shut: bytes) -> None:
    assert PdfReader(BytesIO(shut)).trailer["/Encrypt"]["/P"] & READ_ALOUD


def test_the_tags_the_language_and_the_outline_stay(opened: bytes, shut: bytes) -> None:
    before, after = PdfReader(BytesIO(opened)), PdfReader(BytesIO(shut), password=PASSPHRASE)
    for name in ("/Lang", "/MarkInfo", "/StructTreeRoot", "/ViewerPreferences", "/Metadata"):
        assert name in after.trailer["/Root"]
    assert after.trailer["/Root"]["/Lang"] == before.trailer["/Root"]["/Lang"]
    assert len(after.outline) == len(before.outline)
    assert [page.extract_text() for page in after.pages] == [page.extract_text() for page in before.pages]


def test_once_opened_it_passes_the_same_validator(shut: bytes) -> None:
    unlocked = BytesIO()
    PdfWriter(clone_from=PdfReader(BytesIO(shut), password=PASSPHRASE)).write(unlocked)
    report = page_validation.validate_pdf_bytes(unlocked.getvalue(), profile="ua1")
    assert report.is_compliant


def test_letters_of_any_alphabet_open_it(opened: bytes) -> None:
    shut = locked(opened, "cafe\u0301 ﬁn 日本")
    assert PdfReader(BytesIO(shut), password="café fin 日本").pages
