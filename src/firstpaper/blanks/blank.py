"""A blank form as it was read: its fields, where each stands, and the words printed around it."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cached_property
from typing import NamedTuple


class FieldKind(StrEnum):
    """What a field takes."""

    TEXT = "text"
    BOX = "box"
    CHOICE = "choice"
    SIGNATURE = "signature"
    BUTTON = "button"


class Side(StrEnum):
    """Where the words of a field can stand; the title is over the head of its column."""

    LEFT = "left"
    RIGHT = "right"
    ABOVE = "above"
    COLUMN = "column"
    TITLE = "title"


@dataclass(frozen=True, slots=True)
class Box:
    """A place on a page as it is seen, in points from its lower left corner; pages count from 1."""

    page: int
    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """How wide it is."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """How high it is."""
        return self.top - self.bottom

    @property
    def middle(self) -> float:
        """Its middle height."""
        return (self.top + self.bottom) / 2


class Phrase(NamedTuple):
    """Words printed in one run."""

    text: str
    box: Box


class Label(NamedTuple):
    """Words printed beside a field, and how far from it they begin or end, in points."""

    text: str
    gap: float


@dataclass(frozen=True, slots=True)
class Spot:
    """One place to fill in: a text field, or one state of a box.

    `name` is the full name of the field, `state` what a box is called when it is marked, empty for text.
    `boxes` are all places that show it: a field can stand on several pages. `longest` is how many characters
    it takes, None for no limit; `comb` says that each has a cell of its own. `why_not` says why it cannot be
    filled, empty where it can. `near` holds the printed words by the side they stand on, `heading` those of
    its section. `size` is that of its letters in points, 0 where the file leaves it open.
    """

    name: str
    kind: FieldKind
    boxes: tuple[Box, ...]
    state: str = ""
    tooltip: str = ""
    longest: int | None = None
    comb: bool = False
    lines: bool = False
    rich: bool = False
    computed: bool = False
    locked: bool = False
    near: Mapping[Side, Label] = field(default_factory=dict)
    heading: str = ""
    size: float = 0.0

    @property
    def is_box(self) -> bool:
        """Whether it is marked and not written."""
        return self.kind is FieldKind.BOX

    @property
    def place(self) -> Box:
        """Where it stands first."""
        return self.boxes[0]

    @property
    def key(self) -> tuple[str, str]:
        """What tells it from every other spot of the file."""
        return self.name, self.state


@dataclass(frozen=True)
class Blank:
    """One file that somebody brought.

    `digest` is the SHA-256 of its bytes. `oddities` are the things in it that the copy we fill leaves out, in
    the reader's words.
    """

    digest: str
    pages: int
    spots: tuple[Spot, ...]
    phrases: tuple[Phrase, ...]
    oddities: tuple[str, ...] = ()

    @cached_property
    def by_key(self) -> Mapping[tuple[str, str], Spot]:
        """The spots by name and state."""
        return {spot.key: spot for spot in self.spots}

    def words(self, page: int) -> str:
        """The printed words of one page, in the order in which they stand."""
        return " ".join(phrase.text for phrase in self.phrases if phrase.box.page == page)
