"""The sheets of every household are easy to read: grade 8 at most each, 7 on average.

Names, addresses and what the form itself is called are not our words: they are left out, as are the
attachments, which speak to the court.
"""

import re
from statistics import fmean

import pytest

from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet
from tests.households.golden import Household, blocks
from tests.packet.drawn import ALL, packet
from tests.words.reading import barred_words, grade, longest_sentence, words

AUTHORITY = re.compile(r"<small>.*?</small>", re.DOTALL)
WRITTEN = re.compile(r"<strong>Write:.*?</strong>", re.DOTALL)
LONGEST = 34  # an order of the court named in one breath, with its exceptions


def sentences_of(sheet: Sheet) -> list[str]:
    """The blocks of words of a sheet that are its own."""
    own = WRITTEN.sub("", AUTHORITY.sub("", render(sheet.template, sheet.values)))
    return [block for block in blocks(own) if len(words(block)) > 3]


def our_sheets(one: Household) -> list[Sheet]:
    return [sheet for sheet in packet(one).sheets if sheet.style != "attachment"]


@pytest.mark.parametrize("one", ALL, ids=str)
def test_every_sheet_is_at_grade_eight_or_lower(one: Household) -> None:
    grades = {sheet.title: grade(sentences_of(sheet)) for sheet in our_sheets(one)}
    assert {title: found for title, found in grades.items() if found > 8} == {}
    assert fmean(grades.values()) <= 7


@pytest.mark.parametrize("one", ALL, ids=str)
def test_no_sentence_runs_on(one: Household) -> None:
    for sheet in our_sheets(one):
        for block in sentences_of(sheet):
            assert len(words(longest_sentence(block.replace(";", ".")))) <= LONGEST, block


@pytest.mark.parametrize("one", ALL, ids=str)
def test_no_sheet_talks_like_a_statute(one: Household) -> None:
    for sheet in our_sheets(one):
        if sheet.template != "worksheet.html":  # there we must name what stands on the form
            assert barred_words(" ".join(sentences_of(sheet))) == [], sheet.title
