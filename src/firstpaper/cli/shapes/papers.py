"""The JSON of the commands that make papers: packet, blank, compare, money, paper, guide."""

from typing import Any, Literal

from pydantic import Field, RootModel

from firstpaper.cli.shapes.common import Day, MaybePath, Number, Shape


class Packet(Shape):
    """A packet that was drafted."""

    on: Day
    state: str
    part: str
    sheets: list[str]
    pdf: str
    html: MaybePath
    filled: list[str]
    split: dict[str, str]
    warnings: list[str]
    stops: list[str]
    kept: bool | None = Field(default=None, description="Only for one of many: false, for it is new.")


class PacketKept(Shape):
    """One of many that needed no drafting: nothing has changed since."""

    pdf: str
    kept: Literal[True]


class PacketEnded(Shape):
    """One of many that was left out, because the case has ended."""

    kept: Literal[False]
    ended: Literal[True]


class PacketDone(RootModel[Packet | PacketKept | PacketEnded]):
    """A packet that was drafted. For one of many also why there was nothing to draft."""


class BlankLearned(Shape):
    """What was learned of a court's blank form."""

    form: str
    edition: str
    edition_known: bool
    map: str
    proof: str
    sure: list[str] = Field(description="The concepts that have a field for sure, as in `items`.")
    doubtful: list[str]
    without_field: list[str]
    fields_without_use: list[str] = Field(description="Fields by their own names.")
    oddities: list[str]


class BlankConfirmed(Shape):
    """A proof that somebody looked at, and the fields that take nothing from then on."""

    form: str
    confirmed: Literal[True]
    refused: list[tuple[str, str]] = Field(description="The name of each field, and its state.")


class Blank(RootModel[BlankLearned | BlankConfirmed]):
    """A form that was learned; with --confirm, one that was confirmed."""


class Difference(Shape):
    """A field that is not as the case has it."""

    how: Literal["different", "missing", "extra"]
    item: str
    takes: str = Field(description="The concept that the field takes, as in `items`.")
    label: str
    on_paper: str
    should_be: str


class Compare(Shape):
    """Where a filled form and a case differ."""

    form: str
    on: Day
    differences: list[Difference]


class Money(Shape):
    """The private pages on money; their figures carry their own names."""

    on: Day
    pdf: str
    html: MaybePath
    warnings: list[str]
    things: list[dict[str, Any]]
    sums: dict[str, Any]
    proposal: dict[str, Any] | None
    estimates: dict[str, Any]
    support: dict[str, Any]


class Paper(Shape):
    """The question sheets or the file of facts that was made."""

    pdf: MaybePath
    facts: MaybePath
    topics: list[str]
    children: Number
    things: Number
    debts: Number


class Guide(Shape):
    """A form explained line by line, or the road after the filing ("after")."""

    on: Day
    form: str
    pdf: str
    html: MaybePath
