"""The shelf in words: a paragraph a case for reading, a line a case for other tools, and as a table."""

import csv
from collections.abc import Iterator, Sequence
from datetime import date
from io import StringIO
from typing import Any

from firstpaper.casefile.errors import CaseFileSealed, NotACaseFile
from firstpaper.cli.files.shelf import Date, Person, Shelved, Stage, Unread
from firstpaper.cli.hints import to_type
from firstpaper.cli.terminal import plain
from firstpaper.counting import short_date, spell_date
from firstpaper.intake.cells import harmless
from firstpaper.intake.tables import BEGINS
from firstpaper.law.deadline import Actor
from firstpaper.law.measures.ending import Ending
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row

COLUMNS = (
    "file",
    "case_number",
    "county",
    "stage",
    "next_day",
    "next_date",
    "open_questions",
    "stops",
    "missed",
)
PEOPLE = ("petitioner", "respondent")
UNREAD = "unread"


# --- for programs -------------------------------------------------------------------------------------


def case_data(one: Shelved, names: bool, found: Sequence[Person] = ()) -> dict[str, object]:
    """One case for programs; its people only where they are asked for."""
    who = {role: one.named(role) for role in PEOPLE} if names else {}
    return {
        "file": one.file,
        "case_number": one.case_number,
        "county": one.county,
        "stage": one.stage,
        "ended": {"how": one.ended.how, "day": one.ended.day} if one.ended else None,
        "replaced_by": one.replaced_by,
        "open_questions": one.open_questions,
        "stops": one.stops,
        "missed": [_date_data(each) for each in one.missed],
        "possible": [_date_data(each) for each in one.possible],
        "next": _date_data(one.next) if one.next else None,
        "dates": [_date_data(each) for each in one.dates],
        **who,
        **({"found": [{"role": each.role, "name": each.name} for each in found]} if found else {}),
    }


def unread_data(one: Unread) -> dict[str, object]:
    """One file that could not be looked into, for programs."""
    return {"file": one.file, "code": one.error.code, "message": one.error.message}


def table(cases: Sequence[Shelved], unread: Sequence[Unread], names: bool) -> bytes:
    """The shelf as a table for a spreadsheet."""
    text = StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow([*COLUMNS, *(PEOPLE if names else ())])
    for cells in (*(_cells(one, names) for one in cases), *map(_unread_cells, unread)):
        writer.writerow(map(harmless, cells))
    return (BEGINS + text.getvalue()).encode()


def lines(cases: Sequence[Shelved], unread: Sequence[Unread], names: bool) -> str:
    """A line a case, its cells parted by tabs: for other tools, and to be read one after another."""
    rows = (*(_cells(one, names) for one in cases), *map(_unread_cells, unread))
    return "".join("\t".join(plain(cell).replace("\n", " ") for cell in cells) + "\n" for cells in rows)


def _cells(one: Shelved, names: bool) -> list[str]:
    following = one.next
    return [
        one.file,
        one.case_number or "",
        one.county or "",
        one.stage,
        following.day.isoformat() if following else "",
        _title(following) if following else "",
        str(one.open_questions),
        "" if one.stops is None else str(one.stops),
        "; ".join(f"{each.day.isoformat()} {each.title}" for each in one.missed),
        *([one.named(role) or "" for role in PEOPLE] if names else []),
    ]


def _unread_cells(one: Unread) -> list[str]:
    why = one.error.message.partition("\n")[0]
    return [one.file, "", "", UNREAD, "", why, "", "", ""]


def _date_data(one: Date) -> dict[str, Any]:
    return {"day": one.day, "key": one.key, "title": one.title, "who": one.who, "meaning": one.meaning}


# --- for people ---------------------------------------------------------------------------------------


def head(cases: int, unread: int, day: date) -> str:
    """How many case files there are."""
    count = _n(
        "{count} case file on {day}.", "{count} case files on {day}. What is due first is at the top.", cases
    )
    words = [
        count.format(count=cases, day=spell_date(day)) if cases else _("There is no case file here to show.")
    ]
    if unread:
        more = _n(
            "{count} file could not be looked into: see the end.",
            "{count} files could not be looked into: see the end.",
            unread,
        )
        words.append(more.format(count=unread))
    return " ".join(words)


def over_line(count: int) -> str:
    """How many case files are done with and not shown."""
    return _n(
        "{count} more is ended or replaced; --ended shows it.",
        "{count} more are ended or replaced; --ended shows them.",
        count,
    ).format(count=count)


def paragraphs(cases: Sequence[Shelved], names: bool, day: date, until: date | None) -> Iterator[str]:
    """A paragraph a case. Up to the day `until` every date is shown, without it the next one."""
    for number, one in enumerate(cases, 1):
        yield "\n".join([f"{number}. {one.file}", *(f"   {line}" for line in _lines(one, names, day, until))])


def found_lines(found: Sequence[tuple[Shelved, Sequence[Person]]]) -> Iterator[str]:
    """In which cases a name stands, and what that person is there."""
    for one, people in found:
        yield "\n".join([one.file, *(f"  {_role(each.role)}: {each.name}" for each in people)])


def unread_lines(unread: Sequence[Unread]) -> Iterator[str]:
    """The files that could not be looked into, and what to do."""
    if unread:
        yield _("These files could not be looked into:")
    for one in unread:
        yield f"- {one.file}\n" + "\n".join(f"  {line}" for line in _what_to_do(one).split("\n\n"))


def _lines(one: Shelved, names: bool, day: date, until: date | None) -> Iterator[str]:
    if names:
        nobody = _("no name yet")
        yield in_a_row([one.named("petitioner") or nobody, one.named("respondent") or nobody])
    if number := ", ".join(filter(None, (one.case_number, one.county))):
        yield number
    yield _stage(one)
    for each in one.missed:
        yield _("Overdue since {day}: {title}").format(day=short_date(each.day), title=each.title)
    for each in _ahead(one, until):
        yield f"{short_date(each.day)} ({_away(each.day, day)}): {_title(each)}"
    for each in one.possible:
        yield _("Possible since {day}: {title}").format(day=short_date(each.day), title=each.title)


def _ahead(one: Shelved, until: date | None) -> list[Date]:
    if until is None:
        return [one.next] if one.next else []
    return [each for each in one.dates if one.on <= each.day <= until]


def _stage(one: Shelved) -> str:
    words = {
        Stage.QUESTIONS_OPEN: "",
        Stage.STOPPED: "",
        Stage.READY_TO_DRAFT: _("All is answered. Ready to draft."),
        Stage.READY_TO_FILE: _("The packet is drafted. Ready to file."),
        Stage.FILED: _("Filed. The papers are still to be served."),
        Stage.SERVED: _("Served. No response is recorded."),
        Stage.ANSWERED: _("The other side takes part."),
        Stage.DEFAULT_ASKED: _("A default was asked for."),
        Stage.ENDED: _ended(one),
        Stage.REPLACED: _("The petition is amended in {file}.").format(file=one.replaced_by),
    }[one.stage]
    return " ".join(part for part in (words, *([] if one.over else _counts(one))) if part)


def _ended(one: Shelved) -> str:
    if one.ended is None:
        return ""
    words = {
        Ending.JUDGMENT: _("Ended by a judgment."),
        Ending.DISMISSAL: _("Ended by a dismissal."),
        Ending.WITHDRAWN: _("Given up by the filer."),
        Ending.REFERRED: _("Taken over by somebody else."),
        Ending.TRANSFERRED: _("Moved to another court."),
        Ending.RECONCILED: _("The two are together again."),
    }[one.ended.how]
    return f"{words} ({short_date(one.ended.day)})" if one.ended.day else words


def _counts(one: Shelved) -> Iterator[str]:
    if one.open_questions:
        yield _n("{count} question is open.", "{count} questions are open.", one.open_questions).format(
            count=one.open_questions
        )
    if one.stops:
        yield _n(
            "Stopped: {count} thing stops a filing.", "Stopped: {count} things stop a filing.", one.stops
        ).format(count=one.stops)


def _title(one: Date) -> str:
    return _("{title} (the other side)").format(title=one.title) if one.who is Actor.RESPONDENT else one.title


def _role(role: str) -> str:
    return {
        "petitioner": _("Petitioner"),
        "respondent": _("Respondent"),
        "child": _("Child"),
        "other": _("Somebody named in the custody declaration"),
    }[role]


def _away(day: date, today: date) -> str:
    days = (day - today).days
    if days == 0:
        return _("today")
    return _n("in {count} day", "in {count} days", days).format(count=days)


def _what_to_do(one: Unread) -> str:
    if one.locked:
        locked = (
            _("It is locked with a passphrase. To see how it stands, type:")
            if isinstance(one.error, CaseFileSealed)
            else _("It is locked with another passphrase. To see how it stands, type:")
        )
        return to_type(locked, "check", one.error.details["path"])
    if isinstance(one.error, NotACaseFile):
        return _("This is no case file, although its name says so. It was left alone.")
    return one.error.message
