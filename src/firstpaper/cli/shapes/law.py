"""The JSON of the commands about the law: law and why."""

from datetime import date
from typing import Annotated, Literal

from pydantic import Field, RootModel

from firstpaper.cli.shapes.common import Cited, Day, Finding, Formerly, Item, Keys, Shape


class Law(Shape):
    """One number or rule of law."""

    kind: str
    name: str
    what: str
    value: str
    authority: list[str]
    certainty: str
    since: date | None
    until: date | None
    checked_on: date
    age_days: int
    used_by: list[str]


class LawList(Shape):
    """Every number and rule of law, the oldest check first."""

    on: Day
    oldest_check: date
    law: list[Law]


class RulePage(Shape):
    """What a rule says. `on` and `findings` are there only with a case file."""

    kind: Literal["rule"]
    id: str
    formerly: Formerly
    title: str
    statement: str
    page: str
    authority: list[str]
    sources: list[Cited]
    certainty: str
    checked_on: date
    since: date
    until: date | None
    not_modelled: str
    on: Day | None = None
    findings: list[Finding] | None = None


class NamedRule(Shape):
    """A rule by its title."""

    id: str
    title: str


class NamedItem(Shape):
    """An item of the petition in words."""

    concept: str
    words: str


class QuestionPage(Shape):
    """Why a question is asked, and what its answer feeds."""

    kind: Literal["question"]
    key: str
    formerly: Formerly
    ask: str
    why: str
    rules: list[NamedRule]
    items: list[NamedItem]
    sheets: list[str]
    measures: list[str]


class Choice(Shape):
    """One side of a choice that is the filer's."""

    choice: str
    speaks_for: str = Field(alias="for")
    speaks_against: str = Field(alias="against")


class Caution(Shape):
    """A trap, and where it is known from."""

    says: str
    common_practice: bool = Field(description="Whether no published source says it.")
    cite: str
    but: str = Field(description="The other side of it; may be empty.")


class ItemChange(Shape):
    """What is new about an item from a day on."""

    since: date = Field(alias="from")
    says: str
    cite: str


class Told(Shape):
    """An answer that the item rests on."""

    key: str
    ask: str
    answer: str


class ItemsLater(Shape):
    """What goes into the item if the filing is that day or later: concept, action, value of each place."""

    on: date
    items: list[tuple[str, str, str]]


class ItemPage(Shape):
    """An item of a form explained. From `on` down it is how a case stands, only with a case file."""

    kind: Literal["item"]
    form: str
    item: str
    title: str
    topic: str
    asks: str
    means: str
    marked: str
    left: str
    sides: list[Choice]
    traps: list[Caution]
    help: str
    not_confirmed: list[str]
    changes: list[ItemChange]
    sources: list[Cited]
    rules: list[str]
    questions: Keys
    parts: list[str]
    on: Day | None = None
    told: list[Told] | None = None
    unanswered: Keys | None = None
    answers: list[Item] | None = None
    findings: list[Finding] | None = None
    later: list[ItemsLater] | None = None


class ItemName(Shape):
    """An item that has a page."""

    form: str
    item: str
    title: str
    topic: str


class ItemPages(Shape):
    """The items that go by the name, where there are several."""

    kind: Literal["items"]
    items: list[ItemName]


class Why(RootModel[Annotated[RulePage | QuestionPage | ItemPage | ItemPages, Field(discriminator="kind")]]):
    """The page that was asked for. `kind` says which it is."""
