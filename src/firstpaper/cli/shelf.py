"""How each case file of a folder stands, worked out without writing anything anywhere."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from pathlib import Path

from firstpaper.casefile import load
from firstpaper.casefile.errors import CaseFileMissing, CaseFileUnreadable, NotACaseFile
from firstpaper.cli.findings import stops
from firstpaper.cli.output import drafts_beside
from firstpaper.errors import ProgramFault, UserError
from firstpaper.facts import Case, known
from firstpaper.intake import asked, standing
from firstpaper.law.deadline import Actor, Meaning
from firstpaper.law.deadline_register import deadlines
from firstpaper.law.measures.record import happened, took_part
from firstpaper.law.measures.service import service_complete
from firstpaper.law.register import findings

ENDING = ".case"
SET_ASIDE = ".damaged"


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


@dataclass(frozen=True, slots=True)
class Date:
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


@dataclass(frozen=True, slots=True)
class Shelved:
    """One case on the shelf. `stops` is None once the case is filed: nothing can stop that any more.

    `missed` are last days of the filer that have passed; `possible` is what the filer may do since a day
    that has come; `next` is the first day still ahead.
    """

    file: str
    stage: Stage
    open_questions: int
    stops: int | None
    missed: tuple[Date, ...]
    possible: tuple[Date, ...]
    next: Date | None
    petitioner: str | None
    respondent: str | None

    @property
    def urgency(self) -> tuple[date, int, int, str]:
        """The first day that presses comes first; without one, the case that has come furthest."""
        pressing = [one.day for one in (*self.missed, self.next) if one]
        return (
            min(pressing, default=date.max),
            -list(Stage).index(self.stage),
            self.open_questions,
            self.file.casefold(),
        )


@dataclass(frozen=True, slots=True)
class Unread:
    """A case file that could not be looked into, and why."""

    file: str
    error: UserError


def shelf(folder: Path, on: date, passphrases: Sequence[str] = ()) -> tuple[list[Shelved], list[Unread]]:
    """The case files of a folder as they stand on the day `on`, most urgent first, and those not readable.

    `passphrases` are tried on every locked one. Raises OSError where the folder cannot be read.
    """
    found = [one for path in sorted(folder.iterdir()) if (one := _on_shelf(path, on, passphrases))]
    cases = sorted((one for one in found if isinstance(one, Shelved)), key=lambda one: one.urgency)
    return cases, [one for one in found if isinstance(one, Unread)]


def _on_shelf(path: Path, on: date, passphrases: Sequence[str]) -> Shelved | Unread | None:
    """One file; None where it is no case file. No file, whatever is in it, keeps the others from the list."""
    if path.name.startswith(".") or not path.is_file() or _is_set_aside(path):
        return None
    try:
        case = load(path, passphrases).case
    except (NotACaseFile, CaseFileUnreadable, CaseFileMissing) as error:
        return Unread(path.name, error) if path.suffix == ENDING else None
    except UserError as error:
        return Unread(path.name, error)
    try:
        return _shelved(path, standing(case), on)
    except UserError:
        raise
    except Exception as error:  # a fault of ours in one case must not hide the others
        return Unread(path.name, ProgramFault(fault=type(error).__name__))


def _is_set_aside(path: Path) -> bool:
    """Whether a whole copy took the place of this damaged file."""
    return path.suffix == SET_ASIDE and path.with_suffix("").exists()


def _shelved(path: Path, case: Case, on: date) -> Shelved:
    filed = _is_filed(case, on)
    found = () if filed else findings(case, on)
    count = None if filed else len(stops(found))
    left = sum(case.fact(one.key) is None for one in asked(case))
    dates = sorted(_dates(case, on), key=lambda one: (one.day, one.key))
    ahead = [one for one in dates if one.day >= on]
    return Shelved(
        file=path.name,
        stage=_later_stage(case, on) if filed else _early_stage(path, left, count or 0),
        open_questions=left,
        stops=count,
        missed=tuple(one for one in dates if one.missed and one.ours),
        possible=tuple(
            one for one in dates if one.day < on and one.ours and one.meaning is Meaning.FIRST_DAY
        ),
        next=ahead[0] if ahead else None,
        petitioner=known(case.petitioner.name),
        respondent=known(case.respondent.name),
    )


def _is_filed(case: Case, on: date) -> bool:
    """Whether the petition that the case file drafts is filed: the amended one, where it amends another."""
    record = happened(case, on)
    return known(record.amended_on if known(case.matter.amended) else record.filed_on) is not None


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
    saved = path.stat().st_mtime
    drafts = [draft for draft in drafts_beside(path) if draft.suffix == ".pdf"]
    return any(draft.stat().st_mtime >= saved for draft in drafts)


def _dates(case: Case, on: date) -> Iterator[Date]:
    """The open dates of the case; days that hang on a filing only planned are left out."""
    for one in deadlines(case, on):
        if not one.planned:
            yield Date(one.day_ahead(on), one.key, one.title, one.who, one.meaning, one.missed(on))
