"""`firstpaper packet`: the sheets, as a PDF and for the screen."""

from dataclasses import replace
from datetime import date
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.drafting import Files, HtmlOption, SealPdfOption, files_for, refuse_locked_screen
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.opening import case_at
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from firstpaper.cli.blank_files import FilledFile
    from firstpaper.facts import Case
    from firstpaper.packet import Packet, Pile

PdfOption = Annotated[
    Path | None,
    typer.Option(
        "--output",
        "-o",
        metavar="FILE.pdf",
        help=_("Where to put the PDF. Without it: beside the case file, under the same name."),
    ),
]


class Wanted(StrEnum):
    """Which part of the packet to draft."""

    FIRST = "first"
    LATER = "later"
    ALL = "all"


PartOption = Annotated[
    Wanted | None,
    typer.Option(
        "--part",
        help=_(
            "first: all that you need to file. later: what comes after it. Without it: first, and later once "
            "the filing is recorded."
        ),
        show_choices=True,
    ),
]
AmendsOption = Annotated[
    Path | None,
    typer.Option(
        "--amends",
        metavar="EARLIER.case",
        help=_("The case file of the earlier petition. A sheet then shows what changes."),
    ),
]


class Only(StrEnum):
    """Which sheets to draft alone, by what they are for."""

    READ = "read"
    COPY = "copy"
    FILE = "file"
    PRIVATE = "private"
    HAND_OFF = "hand-off"


OnlyOption = Annotated[
    Only | None,
    typer.Option(
        "--only",
        help=_(
            "Draft one kind of sheet alone: read, copy (the worksheets), file (what goes to the court), "
            "private, or hand-off (for the lawyer)."
        ),
        show_choices=True,
    ),
]
SplitOption = Annotated[
    Path | None,
    typer.Option(
        "--split",
        metavar="FOLDER",
        help=_("Also put each kind of sheet into a PDF of its own in this folder, to print them apart."),
    ),
]
OwnSheetOption = Annotated[
    list[Path] | None,
    typer.Option(
        "--sheet",
        metavar="FILE.html",
        help=_("Add a sheet of your own, such as a letter of your clinic. May be given again."),
    ),
]


BlanksOption = Annotated[
    Path | None,
    typer.Option(
        "--blanks", metavar="FOLDER", help=_("Fill in the court's own forms whose proof was confirmed there.")
    ),
]
FlatOption = Annotated[
    bool, typer.Option("--flat", help=_("Fill them in so that nobody can change the fields any more."))
]


class OwnSheetUnreadable(UserError):
    """The sheet {path} could not be opened: {reason}.

    Nothing was drafted. Check the name and the folder, and try again.
    """

    code = "own_sheet_unreadable"


class AmendsNothing(UserError):
    """This case is not marked as an amended petition, so nothing was drafted.

    Only an amended petition has an earlier one to be held against. To begin one, use the command amend. Or
    leave out --amends.
    """

    code = "amends_nothing"


class NoSuchSheets(UserError):
    """This packet has no sheets of the kind "{only}", so nothing was drafted.

    Leave out --only to get the whole packet. Attachments to file are there only where a form goes on in one.
    """

    code = "no_such_sheets"


def packet(
    case: HomeArgument = HOME,
    output: PdfOption = None,
    html: HtmlOption = None,
    part: PartOption = None,
    seal: SealPdfOption = False,
    amends: AmendsOption = None,
    sheet: OwnSheetOption = None,
    blanks: BlanksOption = None,
    flat: FlatOption = False,
    only: OnlyOption = None,
    split: SplitOption = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft the packet: what to mark and write on each form, and what to do next."""

    def work(terminal: Terminal) -> Result:
        from firstpaper.cli.offering import after_printing, offer_to_lock_draft

        refuse_locked_screen(seal, html)
        passphrases = Passphrases(terminal, passphrase_from)
        facts = case_at(case, passphrases)
        earlier = _earlier(amends, facts, passphrases) if amends else None
        wanted = part or wanted_now(facts)
        locked = seal or (html is None and offer_to_lock_draft(terminal, facts))
        files = files_for(output or _beside(case, wanted), html, locked, passphrases, facts)
        day = filing_day(on)
        done = fill_in(facts, day, wanted, blanks, case, flat=flat) if blanks else ()
        result = draft(facts, day, files, wanted, earlier, _own_sheets(sheet or []), done, only, split)
        after = [*after_printing(facts, case, files.pdf), *_rest(facts, case, wanted, day)]
        return replace(result, text="\n\n".join([result.text, *after]))

    deliver("packet", as_json, work)


def _own_sheets(paths: "Sequence[Path]") -> dict[str, str]:
    """The text of the sheets that somebody brings, by name."""
    from firstpaper.cli.plain_text import plain_text
    from firstpaper.packet.own_sheets import LONGEST

    return {str(path): plain_text(path, LONGEST + 1, OwnSheetUnreadable) for path in paths}


def wanted_now(case: "Case") -> Wanted:
    """The part that a person needs now: up to the filing, and once that is recorded what follows it."""
    from firstpaper.packet.contents import stage_of

    return Wanted(stage_of(case))


def _beside(case: Path, wanted: Wanted) -> Path:
    from firstpaper.cli.output import LATER, beside

    return beside(case, f"{LATER}.pdf" if wanted is Wanted.LATER else ".pdf")


def _rest(case: "Case", path: Path, wanted: Wanted, day: date) -> list[str]:
    """How to go on from a packet that ends with the filing."""
    if wanted is not Wanted.FIRST or wanted_now(case) is not Wanted.FIRST:
        return [next_line(case, path, day)]
    words = _(
        "It gets you to the filing. When the court has your papers, record that, and make the packet again. "
        "It then says what comes next:"
    )
    return [to_type(words, "record", path, _filing(case))]


def _filing(case: "Case") -> str:
    """What `record` calls the filing of this petition."""
    from firstpaper.facts import known

    return "amended" if known(case.matter.amended) else "filed"


def _earlier(path: Path, case: "Case", passphrases: Passphrases) -> "Case":
    """The case of the petition that this one replaces."""
    from firstpaper.facts import known

    if known(case.matter.amended) is not True:
        raise AmendsNothing
    return case_at(path, passphrases)


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
) -> Result:
    """Draft the packet of a case, or a part of it, into files.

    Findings that stop a filing do not stop the drafting, and no longer matter to what comes after it.
    """
    from firstpaper.cli.blank_files import write_filled
    from firstpaper.cli.findings import stops
    from firstpaper.intake import standing
    from firstpaper.law.register import findings
    from firstpaper.packet import Pile, Stage, build

    stages = tuple(Stage) if wanted is Wanted.ALL else (Stage(wanted),)
    filled = {(one.form, one.use): one.what for one in done}
    drafted = build(case, day, amends, stages=stages, own=own, filled=filled)
    if only:
        drafted = drafted.only(Pile(only))
        if not drafted.sheets:
            raise NoSuchSheets(only=only)
    files.write(drafted.pdf(), drafted.html)
    for one in done:
        write_filled(one, files.lock)
    apart = _write_apart(drafted, split, files) if split else {}
    stopping = [] if wanted is Wanted.LATER else stops(findings(standing(case), day))
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
        exit=Exit.STOPS if stopping else Exit.FINE,
    )


def fill_in(
    case: "Case", day: date, wanted: Wanted, folder: Path, path: Path, *, flat: bool
) -> tuple["FilledFile", ...]:
    """A filled copy of each form of that part whose blank was confirmed here; nothing is written yet."""
    from firstpaper.cli.blank_files import all_learned, filled_files
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.forms.filing import Filing, filled_forms, plan
    from firstpaper.intake import standing

    facts = standing(case)
    with law_as_of(day):
        forms = tuple(
            form
            for filing in (Filing.PETITION, Filing.SERVICE)
            if wanted in (Wanted.ALL, plan(filing).stage)
            for form in filled_forms(facts, day, filing)
        )
    return tuple(filled_files(forms, all_learned(folder), path, flat=flat))


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
