"""The JSON of check and items."""

from datetime import date
from typing import Any

from firstpaper.cli.shapes.common import Day, Finding, Item, Keys, Shape


class LawChange(Shape):
    """A rule that says something else from a day soon to come."""

    on: date
    rule: str
    title: str
    says: str
    heavier: bool
    lighter: bool
    before: list[str]
    after: list[str]


class Check(Shape):
    """How a case stands before its filing: complete, open or stop."""

    on: Day
    state: str
    findings: list[Finding]
    changes: list[LawChange]
    values: dict[str, Any]
    open_questions: Keys
    open_items: list[str]
    pictures: list[str]


class Items(Shape):
    """What goes into each item of the forms."""

    on: Day
    items: list[Item]
