"""How the law is cited, and how a citation is taken apart.

A citation is text that a lawyer reads as it stands: "Fam. Code 2211(a)(1), (d)", "Code Civ. Proc. 12, 12a",
"Fam. Code 2580-2581", "Fam. Code 2211(g) (Stats. 2025, ch. 633)". A semicolon stands between two codes.
The bracket at the end names the act whose text is meant, where a section has more than one.
"""

import re
from collections.abc import Iterable, Iterator
from typing import NamedTuple

_LABELS = r"(?:\([0-9A-Za-z]{1,4}\))*"
_SECTION = r"[0-9]+(?:\.[0-9]+)?[a-z]?"
_PIECE = re.compile(rf"({_SECTION})?({_LABELS})(?:-({_SECTION})?({_LABELS}))?")
_ACT = re.compile(r" \(((?:before )?Stats\. [^()]+)\)$")


class CitationError(ValueError):
    """A citation is not written as citations are, or names what our authorities do not have."""


class Reference(NamedTuple):
    """One place in the law: a section, or a run of sections, and of one section the paragraph or a run.

    `section` and `last_section` are None for what has no sections (an opinion, a page), named whole
    by `code`. `act` is the act whose text is meant, or empty for the text that stands.
    """

    code: str
    section: str | None = None
    last_section: str | None = None
    paragraph: str = ""
    last_paragraph: str = ""
    act: str = ""


def references(citation: str, codes: Iterable[str]) -> tuple[Reference, ...]:
    """The places a citation names; `codes` are the names of codes that have sections.

    Raises CitationError where a citation of a code cannot be read.
    """
    known = sorted(codes, key=len, reverse=True)
    return tuple(each for part in citation.split("; ") for each in _part(part, known))


def _part(part: str, codes: Iterable[str]) -> Iterator[Reference]:
    code = next((code for code in codes if part.startswith(f"{code} ")), None)
    if code is None:
        yield Reference(part)
        return
    named = part.removeprefix(f"{code} ")
    act = _ACT.search(named)
    section = None
    for piece in _ACT.sub("", named).split(", "):
        found = _PIECE.fullmatch(piece)
        section = (found and found[1]) or section
        if found is None or section is None:
            raise CitationError(f"{part!r}: {piece!r} is no section and no paragraph")
        yield Reference(code, section, found[3], found[2], found[4] or "", act[1] if act else "")
