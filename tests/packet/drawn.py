"""A household's packet, drawn and read back."""

from functools import cache
from io import BytesIO
from typing import Any

import pdfplumber
from pypdf import PdfReader

from firstpaper.packet import Packet, build
from tests.households.golden import Household, households

ALL = households()


def household(name: str) -> Household:
    """The household of that name on its first filing day."""
    return next(one for one in ALL if one.name == name)


@cache
def packet(one: Household) -> Packet:
    """Its packet."""
    return build(one.case, one.on)


@cache
def pdf(one: Household) -> bytes:
    """Its packet as PDF."""
    return packet(one).pdf()


@cache
def pages(one: Household) -> tuple[str, ...]:
    """The words of each page, with single spaces."""
    return tuple(" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(pdf(one))).pages)


def footed(one: Household, foot: str) -> tuple[str, ...]:
    """The pages whose footer holds these words."""
    return tuple(words for words in pages(one) if foot in words[-len(foot) - 40 :])


@cache
def measured(one: Household) -> tuple[Any, ...]:
    """The pages as pdfplumber measures them."""
    with pdfplumber.open(BytesIO(pdf(one))) as opened:
        found = tuple(opened.pages)
        for page in found:
            page.chars  # noqa: B018  (read while the file is open)
        return found
