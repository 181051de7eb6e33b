"""The JSON of the commands about what comes after the filing: record, dates, shelf."""

from datetime import date
from typing import Any

from pydantic import Field

from firstpaper.cli.shapes.common import Day, Finding, Formerly, Keys, MaybePath, Number, Shape


class Deadline(Shape):
    """One date of a case: `target` to aim for, `rolled` where a closed court moves it."""

    key: str
    formerly: Formerly
    part: str | None
    title: str
    meaning: str
    target: date
    rolled: date
    who: str
    if_missed: str
    steps: list[str]
    rule: str
    authority: list[str]
    certainty: str
    planned: bool = Field(description="Whether it hangs on a filing that has not happened.")


class Entry(Deadline):
    """One date with how it stands."""

    state: str
    done_on: date | None


class Later(Deadline):
    """A date that does not run yet; its days are those of an example."""

    starts: str


class Event(Shape):
    """One event that was recorded."""

    event: str
    formerly: Formerly
    title: str
    facts: dict[str, Any]


class ShelfDate(Shape):
    """One day that matters in a case."""

    day: date
    key: str
    title: str
    who: str
    meaning: str


class Ended(Shape):
    """How a case ended."""

    how: str
    day: date | None


class Named(Shape):
    """Somebody whose name was searched for, and what they are in the case."""

    role: str
    name: str


class ShelfCase(Shape):
    """One case on the shelf."""

    file: str
    case_number: str | None
    county: str | None
    stage: str
    ended: Ended | None
    replaced_by: str | None
    open_questions: Number
    stops: int | None = Field(description="How many findings stop a filing; null once it is filed.")
    missed: list[ShelfDate]
    possible: list[ShelfDate]
    next: ShelfDate | None
    dates: list[ShelfDate]
    petitioner: str | None = Field(default=None, description="Only with --names.")
    respondent: str | None = Field(default=None, description="Only with --names.")
    found: list[Named] | None = Field(default=None, description="Only with --find.")


class Unread(Shape):
    """A file that could not be looked into."""

    file: str
    code: str
    message: str


class Record(Shape):
    """What was recorded, and the dates that are new or have moved."""

    on: Day
    event: str | None
    changed: Keys
    recorded: list[Event]
    not_told: Keys
    notes: list[Finding]
    new_dates: list[Entry]


class Dates(Shape):
    """Every date of a case."""

    on: Day
    filed_on: date | None
    planned: bool
    case_number: str | None
    recorded: list[Event]
    dates: list[Entry]
    not_running_yet: list[Later]
    notes: list[Finding]
    pictures: list[str]
    ics: MaybePath


class Shelf(Shape):
    """The case files of folders, most urgent first."""

    on: Day
    folders: list[str]
    cases: list[ShelfCase]
    unread: list[Unread]
    csv: MaybePath
    ics: MaybePath
