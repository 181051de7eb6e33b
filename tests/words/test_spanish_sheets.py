"""The Spanish sheets of every household are fairly easy to read.

"Fairly easy" is 65 or more on the INFLESZ scale; see `reading_es`. What stands on a form, on an attachment or
the sheet for somebody who reads English is left out, and so is every run of English that is marked as such.
"""

import re
from functools import cache

from firstpaper.locale import speaking
from firstpaper.packet import Packet, build
from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet
from tests.each import one_by_one
from tests.households.golden import Household, blocks
from tests.packet.drawn import ALL
from tests.words.reading_es import FAIRLY_EASY, ease, words

ENGLISH = re.compile(r"<(?P<tag>\w+)[^<>]*\blang=\"en[^<>]*>.*?</(?P=tag)>", re.DOTALL)
AUTHORITY = re.compile(r"<small>.*?</small>", re.DOTALL)
TABLE = re.compile(r"<table.*?</table>", re.DOTALL)


@cache
def _spanish(one: Household) -> Packet:
    with speaking("es"):
        return build(one.case, one.on)


def _own(sheet: Sheet) -> list[str]:
    with speaking("es"):
        drawn = render(sheet.template, sheet.values)
    for left_out in (ENGLISH, AUTHORITY, TABLE):
        drawn = left_out.sub(" ", drawn)
    return [block for block in blocks(drawn) if len(words(block)) > 3]


@one_by_one(ALL)
def test_every_sheet_is_fairly_easy(one: Household) -> None:
    found = {sheet.title: ease(_own(sheet)) for sheet in _spanish(one).sheets if sheet.language == "es"}
    assert {title: round(easy) for title, easy in found.items() if easy < FAIRLY_EASY} == {}
    assert len(found) > 5
