"""The Spanish words are those of the glossary: the same term everywhere."""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from firstpaper.locale.catalogs import catalog_parts
from firstpaper.locale.po import messages

GLOSSARY = Path(__file__).parents[2] / "docs/reference/glossary.es.md"
_ROW = re.compile(r"^\| (?P<english>.+?) \| (?P<spanish>.+?) \| .* \| .* \| (?P<held>.*?) ?\|$", re.MULTILINE)
_BRACKETS = re.compile(r"\([^)]*\)")


class Term(NamedTuple):
    """A term of the trade, and what of its Spanish must stand in a translation: one of these stems."""

    english: tuple[str, ...]
    stems: tuple[str, ...]

    def is_in(self, words: str) -> bool:
        """Whether an English message has the term."""
        lower = words.lower()
        return any(one in lower and re.search(rf"\b{re.escape(one)}s?\b", lower) for one in self.english)


def _terms() -> Iterator[Term]:
    for row in _ROW.finditer(GLOSSARY.read_text("utf-8")):
        english = re.split(r"[;,]", _BRACKETS.sub("", row["english"]))
        if stems := tuple(filter(None, row["held"].split(", "))):
            yield Term(
                tuple(one.strip().removeprefix("to ").lower() for one in english if one.strip()), stems
            )


def test_each_translation_has_the_terms_of_the_glossary() -> None:
    terms = [term for term in _terms() if term.english != ("english",)]
    assert len(terms) > 100
    other = [
        (term.english[0], words, said)
        for (_context, words), message in messages(catalog_parts("es")).items()
        for term in terms
        if term.is_in(words)
        for said in message.said
        if said != words and not any(stem in said.lower() for stem in term.stems)
    ]
    assert other == []


def test_each_term_stands_once() -> None:
    english = [
        row["english"]
        for row in _ROW.finditer(GLOSSARY.read_text("utf-8"))
        if row["english"] not in ("English", "---")
    ]
    assert sorted(one for one in set(english) if english.count(one) > 1) == []
    assert len(english) > 250
