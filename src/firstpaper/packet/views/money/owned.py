"""What is owned and owed: what each thing is presumed to be, how sure that is, why, and what is missing."""

from collections.abc import Iterator
from typing import NamedTuple

from firstpaper.facts import known
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.intake.fact_names import named
from firstpaper.law.measures.character import Character, Code, Reason
from firstpaper.law.property_words import code_words
from firstpaper.locale import _
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.money.words import codes_words, listed_name, short_sure, supposed, sure_words
from firstpaper.packet.views.sheet import Sheet

MOST_MISSING = 4
"""How many missing facts of a thing are named at once."""


class Said(NamedTuple):
    """A sentence or two, with the authority for it."""

    says: str
    cite: str = ""


class Row(NamedTuple):
    """One thing or debt, in words."""

    number: int
    name: str
    taken_as: str
    sure: str
    short_sure: str
    known: bool
    why: tuple[Said, ...]
    start: str
    also: tuple[Said, ...]
    missing: tuple[str, ...]
    could_be: tuple[Said, ...]
    court: str
    noted: tuple[str, ...]


def sheets(found: Reckoning) -> Iterator[Sheet]:
    """One sheet, where anything is listed."""
    if not found.characters:
        return
    rows = tuple(_row(found, number, one) for number, one in enumerate(found.characters, start=1))
    yield page(
        "owned",
        _("What you own and owe"),
        Trust.PRESUMED,
        _("What each thing and debt is taken to be, and why."),
        {"rows": rows, "open": any(row.missing for row in rows)},
    )


def _row(found: Reckoning, number: int, one: Character) -> Row:
    debt = one.key.startswith("debt")
    return Row(
        number,
        listed_name(found.case, one.key),
        code_words(one.code, debt=debt),
        sure_words(one.confidence),
        short_sure(one.confidence),
        one.code is not Code.UNKNOWN,
        tuple(_why(one)),
        _start(one),
        tuple(Said(flag.says, "; ".join(flag.cite)) for flag in one.flags),
        tuple(dict.fromkeys(named(key, found.case) for key in one.missing[:MOST_MISSING])),
        tuple(_could_be(one, debt=debt)),
        one.court,
        tuple(_noted(found.case.fact(one.key))),
    )


def _noted(thing: Asset | Debt) -> Iterator[str]:
    """The filer's own notes. They stand on the private pages alone."""
    if isinstance(thing, Asset) and (how := known(thing.value_how)):
        yield _("How you know the value: {words}").format(words=how)
    for paper in known(thing.documents) or ():
        yield _("A paper you have: {paper}").format(paper=paper)
    if note := known(thing.note):
        yield _("Your note: {note}").format(note=note)


def _why(one: Character) -> Iterator[Said]:
    """The reasons; where it is open only why, since the rest is what it could be."""
    reasons: tuple[Reason, ...] = one.reasons[:1] if one.alternatives else one.reasons
    for reason in reasons:
        yield Said(reason.says, "" if one.missing else "; ".join(reason.cite))


def _start(one: Character) -> str:
    """What the law presumes until somebody shows otherwise, where the code is not known."""
    if one.starts_as is Code.COMMUNITY:
        return _("Until somebody shows otherwise, the law takes it to be community.")
    return ""


def _could_be(one: Character, *, debt: bool) -> Iterator[Said]:
    """What it is by each answer to the first point that is open."""
    for other in one.alternatives:
        yield Said(
            _("If {value}: {codes}.").format(value=supposed(other), codes=codes_words(other.codes, debt=debt))
        )
