"""`firstpaper shelf`: the case files of a folder at a glance, most urgent first."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any

import typer

from firstpaper.cli.hints import to_type
from firstpaper.cli.options import JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.cli.shelf import Date, Shelved, Unread

FolderArgument = Annotated[
    Path, typer.Argument(metavar="FOLDER", help=_("The folder of case files. Without it: this folder."))
]
NamesOption = Annotated[
    bool,
    typer.Option("--names", help=_("Show the names of the people too. Think of who can see the screen.")),
]


class NoSuchFolder(UserError):
    """The folder {folder} cannot be looked into: {reason}.

    Check the name. If it is on a stick or a shared drive, connect it again.
    """

    code = "no_such_folder"


def shelf(
    folder: FolderArgument = Path(),
    names: NamesOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """See how every case file in a folder stands, most urgent first.

    A passphrase given by a file or pipe is tried on every locked one; nobody is asked for one.
    """

    def work(terminal: Terminal) -> Result:
        return _shelf(folder, names, filing_day(on), Passphrases(terminal, passphrase_from).given())

    deliver("shelf", as_json, work)


def _shelf(folder: Path, names: bool, day: date, passphrases: tuple[str, ...]) -> Result:
    from firstpaper.cli import shelf as shelves

    try:
        cases, unread = shelves.shelf(folder, day, passphrases)
    except OSError as error:
        raise NoSuchFolder(folder=folder, reason=error.strerror or type(error).__name__) from error
    return Result(
        data={
            "on": day,
            "folder": str(folder),
            "cases": [_data(one, names) for one in cases],
            "unread": [
                {"file": one.file, "code": one.error.code, "message": one.error.message} for one in unread
            ],
        },
        text="\n\n".join(
            [_head(len(cases), len(unread), day), *_listed(cases, names, day), *_unread(unread)]
        ),
    )


# --- for programs -------------------------------------------------------------------------------------


def _data(one: "Shelved", names: bool) -> dict[str, object]:
    who = {"petitioner": one.petitioner, "respondent": one.respondent} if names else {}
    return {
        "file": one.file,
        "stage": one.stage,
        "open_questions": one.open_questions,
        "stops": one.stops,
        "missed": [_date_data(each) for each in one.missed],
        "possible": [_date_data(each) for each in one.possible],
        "next": _date_data(one.next) if one.next else None,
        **who,
    }


def _date_data(one: "Date") -> dict[str, Any]:
    return {"day": one.day, "key": one.key, "title": one.title, "who": one.who, "meaning": one.meaning}


# --- for people ---------------------------------------------------------------------------------------


def _head(cases: int, unread: int, day: date) -> str:
    from firstpaper.counting import spell_date

    count = _n(
        "{count} case file on {day}.", "{count} case files on {day}. What is due first is at the top.", cases
    )
    lines = [
        count.format(count=cases, day=spell_date(day)) if cases else _("There is no case file here to show.")
    ]
    if unread:
        more = _n(
            "{count} file could not be looked into: see the end.",
            "{count} files could not be looked into: see the end.",
            unread,
        )
        lines.append(more.format(count=unread))
    return " ".join(lines)


def _listed(cases: "list[Shelved]", names: bool, day: date) -> Iterator[str]:
    for number, one in enumerate(cases, 1):
        yield "\n".join([f"{number}. {one.file}", *(f"   {line}" for line in _lines(one, names, day))])


def _lines(one: "Shelved", names: bool, day: date) -> Iterator[str]:
    if names:
        yield _("{petitioner} and {respondent}").format(
            petitioner=one.petitioner or _("no name yet"), respondent=one.respondent or _("no name yet")
        )
    yield _stage(one)
    for each in one.missed:
        yield _("Overdue since {day}: {title}").format(day=_short(each.day), title=each.title)
    if one.next:
        yield f"{_short(one.next.day)} ({_away(one.next.day, day)}): {_title(one.next)}"
    for each in one.possible:
        yield _("Possible since {day}: {title}").format(day=_short(each.day), title=each.title)


def _stage(one: "Shelved") -> str:
    from firstpaper.cli.shelf import Stage

    words = {
        Stage.QUESTIONS_OPEN: "",
        Stage.STOPPED: "",
        Stage.READY_TO_DRAFT: _("All is answered. Ready to draft."),
        Stage.READY_TO_FILE: _("The packet is drafted. Ready to file."),
        Stage.FILED: _("Filed. The papers are still to be served."),
        Stage.SERVED: _("Served. No response is recorded."),
        Stage.ANSWERED: _("The other side takes part."),
        Stage.DEFAULT_ASKED: _("A default was asked for."),
    }[one.stage]
    return " ".join(part for part in (words, *_counts(one)) if part)


def _counts(one: "Shelved") -> Iterator[str]:
    if one.open_questions:
        yield _n("{count} question is open.", "{count} questions are open.", one.open_questions).format(
            count=one.open_questions
        )
    if one.stops:
        yield _n(
            "Stopped: {count} thing stops a filing.", "Stopped: {count} things stop a filing.", one.stops
        ).format(count=one.stops)


def _title(one: "Date") -> str:
    from firstpaper.law.deadline import Actor

    return _("{title} (the other side)").format(title=one.title) if one.who is Actor.RESPONDENT else one.title


def _short(day: date) -> str:
    from firstpaper.counting import short_date

    return short_date(day)


def _away(day: date, today: date) -> str:
    days = (day - today).days
    if days == 0:
        return _("today")
    return _n("in {count} day", "in {count} days", days).format(count=days)


def _unread(unread: "list[Unread]") -> Iterator[str]:
    if unread:
        yield _("These files could not be looked into:")
    for one in unread:
        yield f"- {one.file}\n" + "\n".join(f"  {line}" for line in _what_to_do(one).split("\n\n"))


def _what_to_do(one: "Unread") -> str:
    from firstpaper.casefile.errors import CaseFileSealed, NotACaseFile, WrongPassphrase

    if isinstance(one.error, CaseFileSealed | WrongPassphrase):
        locked = (
            _("It is locked with a passphrase. To see how it stands, type:")
            if isinstance(one.error, CaseFileSealed)
            else _("It is locked with another passphrase. To see how it stands, type:")
        )
        return to_type(locked, "check", one.error.details["path"])
    if isinstance(one.error, NotACaseFile):
        return _("This is no case file, although its name says so. It was left alone.")
    return one.error.message
