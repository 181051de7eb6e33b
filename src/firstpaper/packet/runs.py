"""What is English on a sheet of another language, told by `<span lang>` so that it is read out rightly.

Words that the program marks as English (`locale.english`) become spans. Beside them stands what is English by
its form alone, wherever it is named: a citation, a page of the court file, a command.
"""

import re
from functools import cache
from html import escape

from firstpaper.law.source import all_codes
from firstpaper.locale import ENGLISH, RUN_ENDS, RUN_STARTS, language, tag, unmarked

_TAG = re.compile(r"(<[^<>]*>)")
_RUN = re.compile(rf"{RUN_STARTS}([^{RUN_STARTS}{RUN_ENDS}<]+){RUN_ENDS}")
_SECTION = r"\d[\d.]*[a-z]?(?:\([0-9A-Za-z]{1,4}\))*"
_PARAGRAPH = r"(?:\([0-9A-Za-z]{1,4}\))+"
_AN = rf"(?:{_SECTION}|{_PARAGRAPH})(?:-(?:{_SECTION}|{_PARAGRAPH}))?"


def with_runs(filled: str) -> str:
    """The sheet with its English told; as it is where English is spoken. In attributes no mark stays."""
    if language() == ENGLISH:
        return filled
    opening, closing = f'<span lang="{tag(ENGLISH)}">', "</span>"
    marked = _TAG.sub(lambda found: unmarked(found[0]), filled)
    pieces = _TAG.split(unmarked(_RUN.sub(rf"{opening}\1{closing}", marked)))
    inside = 0
    for place, piece in enumerate(pieces):
        if piece.startswith(("<span", closing)):
            inside += 1 if piece != closing else -1
        elif not inside and not piece.startswith("<"):
            pieces[place] = _by_its_form().sub(rf"{opening}\g<0>{closing}", piece)
    return "".join(pieces)


@cache
def _by_its_form() -> re.Pattern[str]:
    codes = "|".join(re.escape(escape(code.cite)) for code in all_codes() if code.cite)
    citation = rf"(?:{codes}) {_AN}(?:, {_AN})*(?: \((?:before )?Stats\. [^()]+\))?"
    opinion = r"In re [A-Z][\w ]+ \(\d{4}\)[^;<]*"
    page = rf"Attachment (?:{_SECTION}|\([a-z ]+\))"
    others = r"firstpaper [a-z]+|common practice"
    return re.compile(rf"\b(?:{citation}|{opinion}|{page}|{others})")
