"""The sheets of every household are easy to read: grade 8 at most each and each sentence, 7 on average.

Names, addresses and what the form itself is called are not our words: they are left out, as are the
attachments, which speak to the court.
"""

import re
from collections.abc import Iterator
from functools import cache
from statistics import fmean

from firstpaper.packet.views.sheet import Sheet
from tests.each import one_by_one
from tests.households.golden import Household, blocks
from tests.packet.drawn import ALL, packet
from tests.words.reading import barred_words, grade, longest_sentence, sentences, words

AUTHORITY = re.compile(r"<small>.*?</small>", re.DOTALL)
WRITTEN = re.compile(r"<strong>Write:.*?</strong>", re.DOTALL)
LONGEST = 34  # an order of the court named in one breath, with its exceptions
MEASURABLE = 6  # words; fewer say too little to be measured
TABLE = re.compile(r"<table.*?</table>", re.DOTALL)
ASIDE = re.compile(r"\(([^()]*)\)")

OF_THE_COURT = re.compile(
    r"legal information, not legal advice"  # the caution that every court's own pages carry
    r"|under penalty of perjury"
    r"|^Petition for "
    r"|^FL-100 , FL-110"
    r"|putative spouse|amend this petition|further relief"  # words for the judge, on the worksheets
    r"|declarations? of disclosure"
    r"|presumed (?:community|separate)"
    r"|Judicial Council|declaration of parentage|a divorce and a legal separation"
)
"""Set phrases, and what is said in the words of the court or of a form."""


def sentences_of(sheet: Sheet) -> list[str]:
    """The blocks of words of a sheet that are its own."""
    own = WRITTEN.sub("", AUTHORITY.sub("", sheet.markup))
    return [block for block in blocks(own) if len(words(block)) > 3]


@cache
def our_sheets(one: Household) -> tuple[tuple[Sheet, list[str]], ...]:
    """The sheets that are ours, each with its blocks of words."""
    ours = (sheet for sheet in packet(one).sheets if sheet.style != "attachment")
    return tuple((sheet, sentences_of(sheet)) for sheet in ours)


@one_by_one(ALL)
def test_every_sheet_is_at_grade_eight_or_lower(one: Household) -> None:
    grades = {sheet.title: grade(told) for sheet, told in our_sheets(one)}
    assert {title: found for title, found in grades.items() if found > 8} == {}
    assert fmean(grades.values()) <= 7


def told_of(one: Household) -> Iterator[tuple[str, str]]:
    """Each sentence of ours that can be measured, with its sheet.

    On worksheets and in tables the words are mostly those of the form, so only their paragraphs are read.
    """
    for sheet, _told in our_sheets(one):
        own = WRITTEN.sub("", AUTHORITY.sub("", TABLE.sub("", sheet.markup)))
        for block in blocks(own):
            for sentence in sentences(ASIDE.sub(r". \1. ", block)):
                if len(words(sentence)) >= MEASURABLE and not OF_THE_COURT.search(sentence):
                    yield sheet.title, sentence.strip()


def named_apart(sentence: str) -> str:
    """The sentence with a short word for each name and number, which are nobody's style."""
    first, *rest = words(sentence)
    return " ".join([first, *("it" if re.search(r"[A-Z0-9]", word) else word for word in rest)])


@one_by_one(ALL)
def test_every_sentence_is_at_grade_eight_or_lower(one: Household) -> None:
    hard = {told for told in told_of(one) if grade([named_apart(told[1])]) > 8.05}
    assert hard == set()


@one_by_one(ALL)
def test_no_sentence_runs_on(one: Household) -> None:
    for _sheet, told in our_sheets(one):
        for block in told:
            assert len(words(longest_sentence(block.replace(";", ".")))) <= LONGEST, block


@one_by_one(ALL)
def test_no_sheet_talks_like_a_statute(one: Household) -> None:
    for sheet, told in our_sheets(one):
        if sheet.template != "worksheet.html":  # there we must name what stands on the form
            assert barred_words(" ".join(told)) == [], sheet.title
