"""`firstpaper shelf`: the case files of folders at a glance, most urgent first."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NamedTuple

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.options import JsonOption, OnOption, filing_day, titles_option
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.cli.files.shelf import Calendar, Person, Shelved, Unread

LABEL = "{file}"
TOLD_EVERY = 500
"""After how many files it is said how far the work has come."""
MOST_DAYS = 3660

FoldersArgument = Annotated[
    list[Path] | None,
    typer.Argument(
        metavar="[FOLDER]...",
        help=_("The folders of case files. Without one: this folder."),
        show_default=False,
    ),
]
NamesOption = Annotated[
    bool,
    typer.Option("--names", help=_("Show the names of the people too. Think of who can see the screen.")),
]
DeepOption = Annotated[bool, typer.Option("--deep", help=_("Look into the folders below too."))]
DueOption = Annotated[
    int | None,
    typer.Option(
        "--due",
        metavar="DAYS",
        min=0,
        max=MOST_DAYS,
        help=_("Only cases with a day missed or due within so many days, with each of those days."),
    ),
]
StopsOption = Annotated[
    bool, typer.Option("--stops", help=_("Only cases in which something stops a filing."))
]
StageOption = Annotated[
    list[str] | None,
    typer.Option(
        "--stage",
        metavar="STAGE",
        help=_("Only cases that have come so far, such as served."),
        autocompletion=tab_key.stages,
    ),
]
CountyOption = Annotated[
    str | None, typer.Option("--county", metavar="NAME", help=_("Only cases in that county."))
]
FindOption = Annotated[
    str | None,
    typer.Option(
        "--find",
        metavar="NAME",
        help=_("Only cases in which that name stands: filers, other sides, children, ended cases too."),
    ),
]
EndedOption = Annotated[
    bool,
    typer.Option("--ended", help=_("Show ended cases too, and those that an amended one took the place of.")),
]
LinesOption = Annotated[
    bool | None,
    typer.Option(
        "--lines/--paragraphs",
        help=_("A line a case, with tabs. Without either: lines where another program reads them."),
        show_default=False,
    ),
]
CsvOption = Annotated[
    Path | None, typer.Option("--csv", metavar="FILE.csv", help=_("Also write the list as a table."))
]
IcsOption = Annotated[
    Path | None,
    typer.Option("--ics", metavar="FILE.ics", help=_("Also make one calendar file for all these cases.")),
]
LabelOption = Annotated[
    str,
    typer.Option(
        "--label",
        metavar="TEXT",
        help=_("What stands before each title in the calendar, with {file}, {number} or {county} in it."),
    ),
]
PlainTitlesOption = Annotated[
    bool | None,
    titles_option(
        _(
            'In the calendar, call every date just "Reminder", or by its name. Without either: Reminder '
            "where danger was told."
        )
    ),
]


class NoSuchFolder(UserError):
    """The folder {folder} cannot be looked into: {reason}.

    Check the name. If it is on a stick or a shared drive, connect it again.
    """

    code = "no_such_folder"


class NoSuchStage(UserError):
    """There is no stage called {what}.

    These are the stages: {close}.
    """

    code = "no_such_stage"


class LabelRefused(UserError):
    """The label after --label cannot be used, so no calendar was made.

    It is plain text, in which these may stand: {{file}}, {{number}}, {{county}}. Braces have no other use
    there.
    """

    code = "label_refused"


class Wanted(NamedTuple):
    """Which cases are wanted."""

    due: int | None
    stops: bool
    stages: tuple[str, ...]
    county: str | None
    find: str | None
    ended: bool

    def takes(self, one: "Shelved") -> bool:
        """Whether a case is one of those."""
        if one.over and not (self.ended or self.find or one.stage in self.stages):
            return False
        if self.stops and not one.stops:
            return False
        if self.stages and one.stage not in self.stages:
            return False
        if self.county and (one.county or "").casefold() != self.county.strip().casefold():
            return False
        return self.due is None or bool(one.missed or _due(one, self.due))


def shelf(
    folders: FoldersArgument = None,
    deep: DeepOption = False,
    due: DueOption = None,
    stops: StopsOption = False,
    stage: StageOption = None,
    county: CountyOption = None,
    find: FindOption = None,
    ended: EndedOption = False,
    names: NamesOption = False,
    lines: LinesOption = None,
    csv: CsvOption = None,
    ics: IcsOption = None,
    label: LabelOption = LABEL,
    plain_titles: PlainTitlesOption = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """See how every case file in a folder stands, most urgent first.

    The exit status is 1 where a day was missed. Locked files open with the passphrases of a file or pipe,
    each line of which is tried; at a terminal you are asked once for all of them.
    """

    def work(terminal: Terminal) -> Result:
        from firstpaper.cli.files.output import one_pipe
        from firstpaper.cli.files.shelf import Calendar

        one_pipe(csv, ics)
        wanted = Wanted(due, stops, _stages(stage or []), county, find, ended)
        calendar = Calendar(_checked(label), plain_titles) if ics else None
        look = Look(terminal, filing_day(on), Passphrases(terminal, passphrase_from), deep, calendar)
        found = [look.into(folder) for folder in folders or [Path()]]
        cases = sorted((one for part, _u in found for one in part), key=lambda one: one.urgency)
        unread = [one for _c, part in found for one in part]
        shown = Shown(names, terminal.piped and not find if lines is None else lines, csv, ics)
        return _result(folders or [Path()], cases, unread, wanted, shown, look.day)

    deliver("shelf", as_json, work)


class Shown(NamedTuple):
    """How the cases are shown, and what is written beside."""

    names: bool
    lines: bool
    csv: Path | None
    ics: Path | None


@dataclass
class Look:
    """How a folder is looked into."""

    terminal: Terminal
    day: date
    passphrases: Passphrases
    deep: bool
    calendar: "Calendar | None"

    def __post_init__(self) -> None:
        self._known = list(self.passphrases.given())

    def into(self, folder: Path) -> "tuple[list[Shelved], list[Unread]]":
        """The cases of a folder, and those not readable. Asks for a passphrase where files are locked."""
        from firstpaper.cli.files import shelf as shelves

        try:
            files = shelves.files_in(folder, deep=self.deep)
        except OSError as error:
            raise NoSuchFolder(folder=folder, reason=error.strerror or type(error).__name__) from error
        cases, unread = self._looked(folder, files)
        while locked := [one for one in unread if one.locked]:
            typed = self.passphrases.ask_for_many(len(locked))
            if not typed:
                break
            self._known = [*typed, *self._known]
            more, still = self._looked(folder, [folder / one.file for one in locked])
            cases, unread = [*cases, *more], [*(one for one in unread if not one.locked), *still]
            if not more:
                self.terminal.say(_("That passphrase opens none of them."))
        return cases, unread

    def _looked(self, folder: Path, files: Sequence[Path]) -> "tuple[list[Shelved], list[Unread]]":
        from firstpaper.cli.files import shelf as shelves

        return shelves.looked_into(
            folder, files, self.day, self._known, calendar=self.calendar, told=self._told
        )

    def _told(self, done: int, count: int) -> None:
        if done % TOLD_EVERY == 0 and done < count:
            self.terminal.line(_("{done} of {count} files are done.").format(done=done, count=count))


def _stages(names: Sequence[str]) -> tuple[str, ...]:
    from firstpaper.cli.files.shelf import Stage

    wanted = tuple(name.strip().lower() for name in names)
    for name in wanted:
        if name not in list(Stage):
            raise NoSuchStage(what=name, close=", ".join(Stage))
    return wanted


def _checked(label: str) -> str:
    try:
        label.format(file="", number="", county="")
    except (ValueError, KeyError, IndexError, AttributeError) as error:
        raise LabelRefused from error
    return label


def _due(one: "Shelved", days: int) -> bool:
    until = one.on + timedelta(days=days)
    return any(one.on <= each.day <= until for each in one.dates)


def _result(
    folders: Sequence[Path],
    every: "Sequence[Shelved]",
    unread: "Sequence[Unread]",
    wanted: Wanted,
    shown: Shown,
    day: date,
) -> Result:
    from firstpaper.cli.words import shelf as words

    cases = [one for one in every if wanted.takes(one)]
    found = {one.file: _found(one, wanted.find) for one in cases} if wanted.find else {}
    if wanted.find:
        cases = [one for one in cases if found[one.file]]
    over = sum(one.over for one in every) if not (wanted.ended or wanted.find or wanted.stages) else 0
    written = _written(cases, unread, shown)
    if shown.lines:
        text = words.lines(cases, unread, shown.names).rstrip("\n")
    else:
        until = None if wanted.due is None else day + timedelta(days=wanted.due)
        listed = [
            words.head(len(cases), len(unread), day),
            *words.paragraphs(cases, shown.names, day, until),
            *([words.over_line(over)] if over else []),
        ]
        if wanted.find:
            listed = [_found_head(len(cases)), *words.found_lines([(one, found[one.file]) for one in cases])]
        text = "\n\n".join([*listed, *written, *words.unread_lines(unread)])
    return Result(
        data={
            "on": day,
            "folders": [str(folder) for folder in folders],
            "cases": [words.case_data(one, shown.names, found.get(one.file, ())) for one in cases],
            "unread": [words.unread_data(one) for one in unread],
            "csv": str(shown.csv) if shown.csv else None,
            "ics": str(shown.ics) if shown.ics else None,
        },
        text=text,
        exit=Exit.STOPS if any(one.missed for one in cases if not one.over) else Exit.FINE,
        as_it_is=shown.lines,
    )


def _found_head(count: int) -> str:
    if not count:
        return _("That name stands in none of the case files that could be read.")
    return _n(
        "That name stands in {count} case file:", "That name stands in {count} case files:", count
    ).format(count=count)


def _found(one: "Shelved", name: str | None) -> "list[Person]":
    """The people of a case in whose name each of these words stands."""
    from firstpaper.intake.typed import fold

    words = fold(name or "").split()
    return [each for each in one.people if words and all(word in fold(each.name) for word in words)]


def _written(cases: "Sequence[Shelved]", unread: "Sequence[Unread]", shown: Shown) -> list[str]:
    """Write the table and the calendar that are wanted; what to say of them."""
    from firstpaper.cli.files.output import CALENDAR, write_output
    from firstpaper.cli.words import shelf as words

    said = []
    if shown.csv:
        begins = f"\ufeff{','.join(words.COLUMNS)}".encode()
        write_output(shown.csv, words.table(cases, unread, shown.names), begins)
        said.append(_("The table is in {path}.").format(path=shown.csv))
    if shown.ics:
        from firstpaper.packet.calendar import whole

        write_output(shown.ics, whole(line for one in cases for line in one.events), CALENDAR)
        said.append(
            _(
                "The calendar file is {path}. Whoever sees the calendar you put it in sees these dates and "
                "labels."
            ).format(path=shown.ics)
        )
    return said
