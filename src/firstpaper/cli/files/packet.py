"""Drafting the packet of one case, or a part of it, into files, and what to say of it."""

from dataclasses import replace
from datetime import date
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.files.pdf import Files
from firstpaper.cli.result import Result, exit_for, state_of
from firstpaper.errors import UserError
from firstpaper.locale import ENGLISH, _, _n

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from firstpaper.cli.files.blanks import FilledFile, Learned
    from firstpaper.facts import Case
    from firstpaper.packet import Packet, Pile

LATER_ENDING = "-later.pdf"


class Wanted(StrEnum):
    """Which part of the packet to draft."""

    FIRST = "first"
    LATER = "later"
    ALL = "all"


class Only(StrEnum):
    """Which sheets to draft alone, by what they are for."""

    READ = "read"
    COPY = "copy"
    FILE = "file"
    PRIVATE = "private"
    HAND_OFF = "hand-off"


class NoSuchSheets(UserError):
    """This packet has no sheets of the kind "{only}", so nothing was drafted.

    Leave out --only to get the whole packet. Attachments to file are there only where a form goes on in one.
    """

    code = "no_such_sheets"


def wanted_now(case: "Case") -> Wanted:
    """The part that a person needs now: up to the filing, and once that is recorded what follows it."""
    from firstpaper.packet.contents import stage_of

    return Wanted(stage_of(case))


def draft(
    case: "Case",
    day: date,
    files: Files,
    wanted: Wanted = Wanted.ALL,
    amends: "Case | None" = None,
    own: "Mapping[str, str] | None" = None,
    done: "Sequence[FilledFile]" = (),
    only: Only | None = None,
    split: Path | None = None,
    hand_off_language: str = ENGLISH,
    *,
    require_complete: bool = False,
) -> Result:
    """Draft the packet of a case, or a part of it, into files.

    Findings that stop a filing do not stop the drafting, and no longer matter to what comes after it.
    """
    from firstpaper.cli.files.blanks import write_filled
    from firstpaper.cli.words.findings import stops
    from firstpaper.forms.open_points import open_points
    from firstpaper.packet import Pile, Stage, build

    stages = tuple(Stage) if wanted is Wanted.ALL else (Stage(wanted),)
    filled = {(one.form, one.use): one.what for one in done}
    drafted = build(
        case, day, amends, stages=stages, own=own, filled=filled, hand_off_language=hand_off_language
    )
    if only:
        drafted = drafted.only(Pile(only))
        if not drafted.sheets:
            raise NoSuchSheets(only=only)
    files.write(drafted.pdf(), drafted.html)
    for one in done:
        write_filled(one, files.lock)
    apart = _write_apart(drafted, split, files) if split else {}
    stopping = [] if wanted is Wanted.LATER else stops(drafted.brief.findings)
    left = open_points(drafted.brief.case, day, drafted.brief.items)
    state = state_of(bool(stopping), bool(left.questions or left.items))
    lines = [
        _where(files.lock is not None).format(path=files.pdf),
        *([_("The version for the screen is in {path}.").format(path=files.html)] if files.html else []),
        *_filled_lines(done),
        *_apart_lines(apart),
        *drafted.warnings,
        *_stop_lines([one.title for one in stopping]),
    ]
    return Result(
        data={
            "on": day,
            "state": state,
            "part": wanted,
            "sheets": [sheet.title for sheet in drafted.sheets],
            "pdf": str(files.pdf),
            "html": str(files.html) if files.html else None,
            "filled": [str(one.path) for one in done],
            "split": {pile: str(path) for pile, path in apart.items()},
            "warnings": list(drafted.warnings),
            "stops": [one.id for one in stopping],
        },
        text="\n\n".join(lines),
        exit=exit_for(state, require_complete),
        line=_line(files.pdf, [one.id for one in stopping], len(left.questions)),
    )


def _line(pdf: Path, stopping: list[str], left: int) -> str:
    """The packet in one line, where it is one of many."""
    parts = [
        str(pdf),
        *([_("stopped by {rules}").format(rules=", ".join(stopping))] if stopping else []),
        *([_n("{count} open question", "{count} open questions", left).format(count=left)] if left else []),
    ]
    return "; ".join(parts)


def fill_in(
    case: "Case", day: date, wanted: Wanted, blanks: "tuple[Learned, ...]", path: Path, *, flat: bool
) -> tuple["FilledFile", ...]:
    """A filled copy of each form of that part whose blank was confirmed here; nothing is written yet."""
    from firstpaper.cli.files.blanks import filled_files
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.forms.filing import plan
    from firstpaper.packet.brief import brief, forms_by_filing

    with law_as_of(day):
        forms = tuple(
            form
            for filing, filled in forms_by_filing(brief(case, day)).items()
            if wanted in (Wanted.ALL, plan(filing).stage)
            for form in filled
        )
    return tuple(filled_files(forms, blanks, path, flat=flat))


def _filled_lines(done: "Sequence[FilledFile]") -> list[str]:
    told = _("{form} is filled in: {path}. {left} things are left to do by hand; its check sheet names them.")
    lines = [told.format(form=one.form, path=one.path, left=len(one.what.left)) for one in done]
    return [*lines, *dict.fromkeys(words for one in done for words in one.oddities)]


def _write_apart(drafted: "Packet", folder: Path, files: Files) -> "dict[Pile, Path]":
    """Each kind of sheet in a file of its own. The names tell nothing to somebody who looks over a folder."""
    found = {}
    for number, (pile, part) in enumerate(drafted.piles(), start=1):
        path = folder / f"{number}.pdf"
        replace(files, pdf=path, html=None).write(part.pdf(), part.html)
        found[pile] = path
    return found


def _apart_lines(apart: "Mapping[Pile, Path]") -> list[str]:
    if not apart:
        return []
    from firstpaper.packet import Pile

    words = {
        Pile.READ: _("to read and keep"),
        Pile.COPY: _("to copy from"),
        Pile.FILE: _("to file with the court"),
        Pile.PRIVATE: _("private, only for the court"),
        Pile.HAND_OFF: _("for the lawyer"),
    }
    head = _("Apart, to print by purpose. “erase” does not know these files; remove them yourself:")
    return ["\n".join([head, *(f"  {path}: {words[pile]}" for pile, path in apart.items())])]


def _where(locked: bool) -> str:
    if locked:
        return _("The packet is in {path}, locked with its passphrase. Do not send the two together.")
    return _("The packet is in {path}. It is made for your account alone.")


def _stop_lines(titles: list[str]) -> list[str]:
    if not titles:
        return []
    head = _n(
        "Do not file it yet. {count} thing stops a filing, and the cover page says so too:",
        "Do not file it yet. {count} things stop a filing, and the cover page says so too:",
        len(titles),
    ).format(count=len(titles))
    return ["\n".join([head, *(f"  - {title}" for title in titles)])]
