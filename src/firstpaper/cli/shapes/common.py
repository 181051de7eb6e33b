"""What several shapes have in common: the envelope, a finding, an item, an answer that changed."""

from datetime import date
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field

Keys = Annotated[list[str], Field(description="Keys of answers, such as petitioner.name.")]
Formerly = Annotated[list[str], Field(description="Names that it had before; they stay good.")]
Day = Annotated[date, Field(description="The day that was worked for: the one after --on, or today.")]
MaybePath = Annotated[str | None, Field(description="The file that was written; null where none was.")]
Number = Annotated[int, Field(ge=0)]


class Shape(BaseModel):
    """An object whose fields are all named, and all there."""

    model_config = ConfigDict(extra="forbid")


class Error(Shape):
    """What went wrong. `code` never changes; `message` is for people."""

    code: str
    message: str


class Envelope(Shape):
    """What every command prints with --json, also one that failed or was not understood."""

    firstpaper: int = Field(description="The version of this envelope.")
    command: str
    exit: int = Field(description="The exit status; see the commands.")
    data: dict[str, Any] = Field(description="The result; empty where the command failed.")
    errors: list[Error]


class Change(Shape):
    """An answer that changed, in words; null stands for not told."""

    key: str
    before: str | None
    after: str | None


class Finding(Shape):
    """What one rule found."""

    id: str = Field(description="The rule.")
    formerly: Formerly
    title: str
    outcome: str
    weight: str
    says: str
    do: str = Field(description="What to do; may be empty.")
    dates: dict[str, date]
    steps: list[str] = Field(description="How it was counted.")
    facts: Keys
    authority: list[str]
    certainty: str


class Item(Shape):
    """What goes into one item of a form."""

    form: str
    use: str
    private: bool
    edition: str
    page: int
    part: str
    item: str
    concept: str
    label: str
    action: str
    value: str
    because: str
    authority: str
    continues: str | None
    cells: list[dict[str, str]]


class OneOfMany(Shape):
    """One of many case files: its own result, with the data that the command gives for one."""

    file: str
    exit: int
    data: dict[str, Any]
    errors: list[Error]


class Many(Shape):
    """`change`, `enter`, `check` and `packet` on many case files. `packet` counts them too."""

    cases: list[OneOfMany]
    drafted: Number | None = None
    kept: Number | None = None
    ended: Number | None = None
    failed: Number | None = None
    stopped: Number | None = None


class Cited(Shape):
    """A source that was cited, with the words of the law."""

    cite: str
    about: str
    certainty: str
    checked_on: date
    since: date | None
    until: date | None
    address: str | None
    words: dict[str, str] = Field(description="The law's own words, by paragraph.")
