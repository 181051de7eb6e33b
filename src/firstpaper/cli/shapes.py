"""The shape of every command's JSON, field by field: for the reference, and for the tests that hold us to it.

Nothing here runs when a command runs. A field that is not named here is a fault, and so is one that is
missing. Days are written as 2026-11-30.
"""

from datetime import date
from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, RootModel

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


class Deadline(Shape):
    """One date of a case: `target` as counted, `rolled` where a closed court moves it."""

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


# --- what each command gives ----------------------------------------------------------------------------


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


class Shelf(Shape):
    """The case files of folders, most urgent first."""

    on: Day
    folders: list[str]
    cases: list[ShelfCase]
    unread: list[Unread]
    csv: MaybePath
    ics: MaybePath


class Paper(Shape):
    """The question sheets or the file of facts that was made."""

    pdf: MaybePath
    facts: MaybePath
    topics: list[str]
    children: Number
    things: Number
    debts: Number


class LawList(Shape):
    """Every number and rule of law, the oldest check first."""

    on: Day
    oldest_check: date
    law: list[Law]


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


class Guide(Shape):
    """A form explained line by line, or the road after the filing ("after")."""

    on: Day
    form: str
    pdf: str
    html: MaybePath


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


SHAPES: dict[str, type[BaseModel]] = {
    "ask": Ask,
    "change": ChangeDone,
    "enter": Enter,
    "show": Show,
    "check": Check,
    "items": Items,
    "packet": PacketDone,
    "blank": Blank,
    "compare": Compare,
    "schedule": Schedule,
    "money": Money,
    "record": Record,
    "dates": Dates,
    "amend": Amend,
    "undo": Undo,
    "seal": Seal,
    "unseal": Unseal,
    "erase": Erase,
    "shelf": Shelf,
    "paper": Paper,
    "law": LawList,
    "demo": Packet,
    "guide": Guide,
    "why": Why,
}
"""The data of each command for one case."""
