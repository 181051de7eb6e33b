"""The children, and what the filer asks the court to order for them."""

from collections.abc import Iterable

from firstpaper.facts.choices import (
    CustodySheet,
    CustodyTo,
    Declaration,
    Family,
    FoundViolent,
    Parentage,
    VisitsTo,
)
from firstpaper.facts.count import MOST_COUNTED, Count
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.people import Address
from firstpaper.facts.text import Line, Name, Paragraph
from firstpaper.facts.told import Told, ToldInWords, known

MOST_CHILDREN = MOST_COUNTED


class Home(Facts):
    """One place where a child lived, from when to when. `end` is absent while the child lives there.

    `state` is a code of two letters, or the name of a country. No street: the other side may read it.
    """

    start: Day
    end: Day | None = None
    place: Name
    state: Name
    with_whom: Line = ""


class Child(Facts):
    """One child under 18. Custody here is used only where the children are not treated alike.

    `born_to_one_of_you` is told of a child said to be of one alone. `declared_on` is the later of the two
    signatures under a declaration of parentage. `same_homes` says that the child has lived, since birth, just
    where the first child of both did; then `homes` and `address` are that child's.
    """

    name: ToldInWords[Name] = None
    born_on: Told[Day] = None
    birthplace: ToldInWords[Line] = None
    parentage: Told[Parentage] = None
    born_to_one_of_you: Told[bool] = None
    declaration: Told[Declaration] = None
    declared_on: Told[Day] = None
    declared_under_age: Told[bool] = None
    same_homes: Told[bool] = None
    homes: Told[tuple[Home, ...]] = None
    address: Told[Address] = None
    legal: Told[CustodyTo] = None
    physical: Told[CustodyTo] = None
    visits: Told[VisitsTo] = None


def is_of_both(child: Child) -> bool:
    """Whether nothing was told that makes this the child of one of the two alone."""
    return known(child.parentage) is not Parentage.ONE_PARENT_ONLY


def first_of_both(children: Iterable[Child]) -> Child | None:
    """The child whose homes the others may share: the first one told of who is a child of both."""
    return next((child for child in children if is_of_both(child)), None)


class Children(Facts):
    """Which children there are, and how many are to be listed.

    `others_in_union` says that one of the two gave birth to a child of one alone after the union began;
    `others_born_on` is the birth of the youngest of those.
    """

    family: Told[tuple[Family, ...]] = None
    how_many: Told[Count] = None
    others_in_union: Told[bool] = None
    others_born_on: Told[Day] = None


class Custody(Facts):
    """Custody and visitation asked for, and how much detail to file now."""

    alike: Told[bool] = None
    legal: Told[CustodyTo] = None
    physical: Told[CustodyTo] = None
    visits: Told[VisitsTo] = None
    other_words: ToldInWords[Line] = None
    violence_found: Told[FoundViolent] = None
    supervised: Told[bool] = None
    sheets: Told[tuple[CustodySheet, ...]] = None
    plan: ToldInWords[Paragraph] = None
