"""The JSON of the commands about answers and case files: ask, change, enter, show, schedule, seal."""

from typing import Any

from pydantic import Field, RootModel

from firstpaper.cli.shapes.common import Change, Keys, MaybePath, Number, Shape


class Answer(Shape):
    """One answer in words."""

    key: str
    topic: str
    short: str
    answer: str


class Row(Shape):
    """One thing or debt: what was told, and what is open."""

    number: int
    facts: dict[str, Any]
    open: Keys


class Ask(Shape):
    """How far the interview has come."""

    answered: Number
    applicable: Number
    open_questions: Keys
    passed: Keys


class ChangeGiven(Shape):
    """Answers given as NAME=VALUE."""

    changed: list[Change]


class ChangeDone(RootModel[ChangeGiven | Ask]):
    """What was given on the line; in a conversation, what `ask` gives."""


class Enter(Shape):
    """What a file of facts changed."""

    changed: list[Change]
    answered: Number
    listed: Number
    left_out: Keys
    open_questions: Keys
    set_aside: Keys


class Show(Shape):
    """The answers of a case."""

    answers: list[Answer]
    open_questions: Keys
    yaml: MaybePath
    pdf: MaybePath


class Schedule(Shape):
    """What is listed, and what changed in it. With --list there are `tables`, and nothing changed."""

    asset: list[Row]
    debt: list[Row]
    schedule: dict[str, Any]
    income: dict[str, Any]
    open: Keys
    changed: Keys | None = None
    left_out: Keys | None = None
    tables: dict[str, str] | None = None


class Amend(Shape):
    """An amended petition that was begun."""

    open_questions: Keys


class Undo(Shape):
    """What was taken back, or whether a damaged file was mended."""

    changed: Keys
    mended: bool


class Seal(Shape):
    """A case file that was locked, and what lies open beside it."""

    sealed: bool
    open: list[str]


class Unseal(Shape):
    """A case file whose lock was taken off."""

    sealed: bool


class Erase(Shape):
    """What was removed, and what is left."""

    removed: list[str]
    left: list[str]


class Uninstall(Shape):
    """How to remove the program, and which case files stay. `how` is folder, pipx, uv or pip."""

    how: str
    place: str
    command: list[str] = Field(description="What removes it; empty where a folder is removed by hand.")
    tab_key_files: list[str]
    cases: list[str]
