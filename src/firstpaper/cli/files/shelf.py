"""How each case file of a folder stands, worked out without writing anything anywhere."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum
from functools import partial
from hashlib import sha256
from pathlib import Path
from typing import NamedTuple

from firstpaper.casefile import load
from firstpaper.casefile.errors import (
    CaseFileMissing,
    CaseFileSealed,
    CaseFileUnreadable,
    NotACaseFile,
    WrongPassphrase,
)
from firstpaper.cli.files.output import beside, is_pdf
from firstpaper.cli.processes import over_all
from firstpaper.cli.talk.lock_offer import risky
from firstpaper.errors import ProgramFault, UserError
from firstpaper.facts import Case, known
from firstpaper.intake.engine import standing_and_open
from firstpaper.law.agenda import agenda
from firstpaper.law.deadline import Actor, Meaning
from firstpaper.law.deadline_register import deadlines
from firstpaper.law.measures.ending import Ended, ended
from firstpaper.law.measures.record import case_number, happened, is_filed, took_part
from firstpaper.law.measures.service import service_complete
from firstpaper.law.register import stops

ENDING = ".case"
SET_ASIDE = ".damaged"
FOLDERS_OF_OURS = ".copies"


class Stage(StrEnum):
    """How far a case has come, the furthest last."""

    QUESTIONS_OPEN = "questions_open"
    STOPPED = "stopped"
    READY_TO_DRAFT = "ready_to_draft"
    READY_TO_FILE = "ready_to_file"
    FILED = "filed"
    SERVED = "served"
    ANSWERED = "answered"
    DEFAULT_ASKED = "default_asked"
    ENDED = "ended"
    REPLACED = "replaced"
    """Its petition is amended in another case file of the same folder."""


_OVER = (Stage.ENDED, Stage.REPLACED)


class Date(NamedTuple):
    """One day that matters in a case, with the `key` of its kind."""

    day: date
    key: str
    title: str
    who: Actor
    meaning: Meaning
    missed: bool = False

    @property
    def ours(self) -> bool:
        """Whether the filer has to act, or may."""
        return self.who in (Actor.PETITIONER, Actor.EITHER, Actor.BOTH)


class Person(NamedTuple):
    """Somebody whose name stands in a case, and what they are in it."""

    name: str
    role: str


@dataclass(frozen=True, slots=True)
class Shelved:
    """One case on the shelf. `stops` is None once the case is filed: nothing can stop that any more.

    `missed` are last days of the filer that have passed; `possible` is what the filer may do since a day that
    has come; `dates` are all days that have not been done, in their order. `ended` is set where the case file
    is done with, `replaced_by` where its petition is amended in another file. `events` are the lines of a
    calendar, where one is wanted.
    """

    file: str
    stage: Stage
    open_questions: int
    stops: int | None
    dates: tuple[Date, ...]
    on: date
    case_number: str | None
    county: str | None
    people: tuple[Person, ...]
    ended: Ended | None = None
    replaced_by: str | None = None
    amends: str | None = None
    events: tuple[str, ...] = ()

    @property
    def over(self) -> bool:
        """Whether nothing more is to be done in this case file."""
        return self.stage in _OVER

    @property
    def missed(self) -> tuple[Date, ...]:
        """Last days of the filer that have passed."""
        return tuple(one for one in self.dates if one.missed and one.ours)

    @property
    def possible(self) -> tuple[Date, ...]:
        """First days of the filer that have come."""
        return tuple(
            one for one in self.dates if one.day < self.on and one.ours and one.meaning is Meaning.FIRST_DAY
        )

    @property
    def next(self) -> Date | None:
        """The first day still ahead."""
        return next((one for one in self.dates if one.day >= self.on), None)

    @property
    def urgency(self) -> tuple[bool, date, int, int, str]:
        """The first day that presses comes first; without one, the case that has come furthest."""
        pressing = [one.day for one in (*self.missed, self.next) if one]
        return (
            self.over,
            min(pressing, default=date.max),
            -list(Stage).index(self.stage),
            self.open_questions,
            self.file.casefold(),
        )

    def named(self, role: str) -> str | None:
        """The name of the petitioner or the respondent."""
        return next((one.name for one in self.people if one.role == role), None)


class Unread(NamedTuple):
    """A case file that could not be looked into, and why."""

    file: str
    error: UserError

    @property
    def locked(self) -> bool:
        """Whether only a passphrase is missing."""
        return isinstance(self.error, CaseFileSealed | WrongPassphrase)


class Calendar(NamedTuple):
    """What a calendar of the folder holds. Titles are plain where danger was told, unless said otherwise."""

    label: str
    plain_titles: bool | None


def shelf(
    folder: Path,
    on: date,
    passphrases: Sequence[str] = (),
    *,
    deep: bool = False,
    calendar: Calendar | None = None,
    told: Callable[[int, int], None] | None = None,
) -> tuple[list[Shelved], list[Unread]]:
    """The case files of a folder as they stand on the day `on`, most urgent first, and those not readable.

    `passphrases` are tried on every locked one. `deep` looks into the folders below too. `told` hears how
    many of how many files are done. Raises OSError where the folder cannot be read.
    """
    return looked_into(folder, files_in(folder, deep=deep), on, passphrases, calendar=calendar, told=told)


def looked_into(
    folder: Path,
    files: Sequence[Path],
    on: date,
    passphrases: Sequence[str] = (),
    *,
    calendar: Calendar | None = None,
    told: Callable[[int, int], None] | None = None,
) -> tuple[list[Shelved], list[Unread]]:
    """The same for some files of a folder."""
    look = partial(_on_shelf, folder=folder, on=on, passphrases=tuple(passphrases), calendar=calendar)
    found = list(over_all(look, files, told))
    cases = _with_replaced([one for one in found if isinstance(one, Shelved)])
    return sorted(cases, key=lambda one: one.urgency), [one for one in found if isinstance(one, Unread)]


def files_in(folder: Path, *, deep: bool = False) -> list[Path]:
    """The files of a folder that may be case files, in the order of their names."""
    found = [path for path in sorted(folder.iterdir()) if not path.name.startswith(".")]
    files = [path for path in found if path.is_file() and not _is_set_aside(path)]
    if deep:
        below = [path for path in found if path.is_dir() and not path.is_symlink() and _is_looked_into(path)]
        files += [path for inner in below for path in files_in(inner, deep=True)]
    return files


def _is_looked_into(path: Path) -> bool:
    return path.suffix != FOLDERS_OF_OURS


def _on_shelf(
    path: Path, *, folder: Path, on: date, passphrases: tuple[str, ...], calendar: Calendar | None
) -> Shelved | Unread | None:
    """One file; None where it is no case file. No file, whatever is in it, keeps the others from the list."""
    name = path.relative_to(folder).as_posix() if path.is_relative_to(folder) else str(path)
    try:
        case = load(path, passphrases).case
    except (NotACaseFile, CaseFileUnreadable, CaseFileMissing) as error:
        return Unread(name, error) if path.suffix == ENDING else None
    except UserError as error:
        return Unread(name, error)
    try:
        return _shelved(path, name, case, on, calendar)
    except UserError:
        raise
    except Exception as error:  # a fault of ours in one case must not hide the others
        return Unread(name, ProgramFault(fault=type(error).__name__))


def _is_set_aside(path: Path) -> bool:
    """Whether a whole copy took the place of this damaged file."""
    return path.suffix == SET_ASIDE and path.with_suffix("").exists()


def _with_replaced(cases: Sequence[Shelved]) -> list[Shelved]:
    """The cases, those whose petition is amended in another one of the same folder marked as replaced."""
    newer = {str(Path(one.file).with_name(one.amends)): one.file for one in cases if one.amends}
    return [
        replace(one, stage=Stage.REPLACED, replaced_by=newer[one.file]) if one.file in newer else one
        for one in cases
    ]


def _shelved(path: Path, name: str, told: Case, on: date, calendar: Calendar | None) -> Shelved:
    case, still_open = standing_and_open(told)
    filed, over = is_filed(case, on), ended(case, on)
    count = None if filed or over else sum(1 for _stop in stops(case, on))
    left = len(still_open)
    stage = _later_stage(case, on) if filed else _early_stage(path, left, count or 0)
    return Shelved(
        file=name,
        stage=Stage.ENDED if over else stage,
        open_questions=left,
        stops=count,
        dates=() if over else tuple(sorted(_dates(case, on), key=lambda one: (one.day, one.key))),
        on=on,
        case_number=case_number(case),
        county=known(case.court.county),
        people=tuple(people_in(case)),
        ended=over,
        amends=known(case.record.amends),
        events=tuple(_events(name, case, on, calendar)) if calendar and not over else (),
    )


def people_in(case: Case) -> Iterator[Person]:
    """Everybody whose name stands in the case, with what they are in it."""
    for who in ("petitioner", "respondent"):
        person = getattr(case, who)
        yield from _persons(who, [known(person.name)])
        yield from _persons(who, known(person.other_names) or ())
    yield from _persons("child", [known(one.name) for one in case.child])
    yield from _persons("other", [one.name for one in known(case.uccjea.people) or ()])


def _persons(role: str, names: Iterable[str | None]) -> Iterator[Person]:
    yield from (Person(name, role) for name in names if name)


def _early_stage(path: Path, left: int, count: int) -> Stage:
    if left:
        return Stage.QUESTIONS_OPEN
    if count:
        return Stage.STOPPED
    return Stage.READY_TO_FILE if _is_drafted(path) else Stage.READY_TO_DRAFT


def _later_stage(case: Case, on: date) -> Stage:
    if known(happened(case, on).default_asked_on) is not None:
        return Stage.DEFAULT_ASKED
    if took_part(case, on):
        return Stage.ANSWERED
    complete = service_complete(case, on)
    return Stage.SERVED if complete and complete.day <= on else Stage.FILED


def _is_drafted(path: Path) -> bool:
    """Whether a packet lies beside the case file, drafted after the last answer was saved."""
    draft = beside(path, ".pdf")
    return is_pdf(draft) and draft.stat().st_mtime >= path.stat().st_mtime


def _dates(case: Case, on: date) -> Iterator[Date]:
    """The open dates of the case; days that hang on a filing only planned are left out."""
    for one in deadlines(case, on):
        if not one.planned:
            yield Date(one.day_ahead(on), one.key, one.title, one.who, one.meaning, one.missed(on))


def _events(name: str, case: Case, on: date, wanted: Calendar) -> list[str]:
    """The open dates as the lines of a calendar that many cases share."""
    from firstpaper.packet.calendar import event_lines

    entries = [one for one in agenda(case, on).entries if one.open and not one.deadline.planned]
    plain = risky(case) if wanted.plain_titles is None else wanted.plain_titles
    tied_to = known(case.record.calendar_id) or sha256(name.encode()).hexdigest()
    label = wanted.label.format(
        file=Path(name).stem, number=case_number(case) or "", county=known(case.court.county) or ""
    )
    return event_lines(entries, on, tied_to, plain_titles=plain, label=label.strip())
