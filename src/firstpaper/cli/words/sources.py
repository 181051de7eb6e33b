"""The words of the law beside ours: each source that a rule cites, quoted, with how sure we are of it."""

from collections.abc import Iterable, Iterator

from firstpaper.counting import short_date
from firstpaper.law.authority import Certainty
from firstpaper.law.source import Cited, cited
from firstpaper.locale import _

MOST_QUOTES = 3
"""Paragraphs of one source that are printed; the rest is at its address. Ours, not the law's."""


def law_words(citations: Iterable[str]) -> Iterator[str]:
    """A paragraph for each source: what it is about, its words, how sure we are and where the text is."""
    yield _("What it rests on:")
    for citation in citations:
        yield from ("\n".join(_lines(one)) for one in cited(citation))


def source_data(one: Cited) -> dict[str, object]:
    """One source for programs, with the paragraphs that were cited."""
    source = one.source
    return {
        "cite": one.cite,
        "about": _(source.about),
        "certainty": source.certainty,
        "checked_on": source.checked_on,
        "since": source.since,
        "until": source.until,
        "address": source.address,
        "words": dict(one.quotes),
    }


def certainty_words(certainty: Certainty) -> str:
    """How sure we are, in two or three words."""
    return {
        Certainty.STATUTE: _("read in the law"),
        Certainty.COURT: _("read in a court source"),
        Certainty.SECONDARY: _("read about"),
        Certainty.UNCONFIRMED: _("not confirmed"),
    }[certainty]


def _lines(one: Cited) -> Iterator[str]:
    source = one.source
    yield _("{cite}: {about}").format(cite=one.cite, about=_(source.about))
    for paragraph, words in one.quotes[:MOST_QUOTES]:
        yield "  " + " ".join(filter(None, (paragraph, f"\u201c{words}\u201d")))
    if not one.quotes:
        yield "  " + _("We quote no words here.")
    elif len(one.quotes) > MOST_QUOTES:
        yield "  " + _("There is more in the section than we print here.")
    yield "  " + _("{how_sure}, last checked on {day}").format(
        how_sure=certainty_words(source.certainty).capitalize(), day=short_date(source.checked_on)
    )
    if source.since:
        yield "  " + _("These words hold from {day} on.").format(day=short_date(source.since))
    if source.until:
        yield "  " + _("These words hold up to {day}.").format(day=short_date(source.until))
    if source.address:
        yield "  " + source.address
