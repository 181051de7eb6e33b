"""The children, and what the filer asks the court to order for them."""

from firstpaper.facts.choices import CustodySheet, CustodyTo, Declaration, Family, Parentage, VisitsTo
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.text import Line, Name, Paragraph
from firstpaper.facts.told import Told

MOST_CHILDREN = 30


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

    `declared_on` is the later of the two signatures under a declaration of parentage.
    """

    name: Told[Name] = None
    born_on: Told[Day] = None
    birthplace: Told[Line] = None
    parentage: Told[Parentage] = None
    declaration: Told[Declaration] = None
    declared_on: Told[Day] = None
    declared_under_age: Told[bool] = None
    homes: Told[tuple[Home, ...]] = None
    legal: Told[CustodyTo] = None
    physical: Told[CustodyTo] = None
    visits: Told[VisitsTo] = None


class Children(Facts):
    """Which children there are, and how many are to be listed."""

    family: Told[tuple[Family, ...]] = None
    how_many: Told[int] = None


class Custody(Facts):
    """Custody and visitation asked for, and how much detail to file now."""

    alike: Told[bool] = None
    legal: Told[CustodyTo] = None
    physical: Told[CustodyTo] = None
    visits: Told[VisitsTo] = None
    other_words: Told[Line] = None
    sheets: Told[tuple[CustodySheet, ...]] = None
    plan: Told[Paragraph] = None
