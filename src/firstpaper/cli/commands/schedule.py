"""`firstpaper schedule`: what the two of you own and owe, thing by thing."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import JsonOption, TodayOption, case_first, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import InputEnded, Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.facts import Case
    from firstpaper.intake.kinds import Row

ACTIONS = ("add", "change", "remove", "set")
EXAMPLE = 'add asset kind=checking words="Credit union" value=1200'

WordsArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="[CASE] [add|change|remove|set] [WHICH] [NAME=VALUE]...",
        autocompletion=tab_key.listing,
        help=_(
            "The case file, then what to do, and with what. Such as: change asset 2 4 value=1200. Or: set "
            "agreement=no. Without what to do you are asked. Without a case file: home.case in this folder."
        ),
        show_default=False,
    ),
]
ListOption = Annotated[bool, typer.Option("--list", help=_("Show what is listed, and change nothing."))]
ThingsOption = Annotated[
    Path | None,
    typer.Option(
        "--csv-things", metavar="FILE", help=_("Write what you own as a table: things.csv or things.xlsx.")
    ),
]
DebtsOption = Annotated[
    Path | None,
    typer.Option(
        "--csv-debts", metavar="FILE", help=_("Write what you owe as a table: debts.csv or debts.xlsx.")
    ),
]


class NoSuchAction(UserError):
    """The word {what} is not known here, so nothing was changed.

    After the case file comes one of these words: add, change, remove, set. For example: {close}
    """

    code = "no_such_action"


class ActionNeeded(UserError):
    """Nothing was changed, because the command does not say what to do, and there is nobody to ask.

    For example: {close} To only read the list, add --list.
    """

    code = "action_needed"


def schedule(
    words: WordsArgument = None,
    show: ListOption = False,
    csv_things: ThingsOption = None,
    csv_debts: DebtsOption = None,
    on: TodayOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """List what you own and owe, one thing at a time. The interview does not ask for it."""

    def work(terminal: Terminal) -> Result:
        day, passphrases = filing_day(on), Passphrases(terminal, passphrase_from)
        case, more = case_first(words or [], lambda word: word.lower() in ACTIONS)
        action = more[0].lower() if more else ""
        if show or csv_things or csv_debts:
            tables = {"asset": csv_things, "debt": csv_debts}
            return _show(case, {group: path for group, path in tables.items() if path}, passphrases)
        if not action and not terminal.interactive:
            raise ActionNeeded(close=EXAMPLE)
        if action and action not in ACTIONS:
            raise NoSuchAction(what=action, close=EXAMPLE)
        return _work(terminal, case, action, more[1:], day, passphrases)

    deliver("schedule", as_json, work)


def _show(path: Path, tables: dict[str, Path], passphrases: Passphrases) -> Result:
    from firstpaper.cli.files.case import case_at
    from firstpaper.cli.files.output import one_pipe
    from firstpaper.cli.words.listed import list_data, list_text

    one_pipe(*tables.values())
    case = case_at(path, passphrases)
    for group, table in tables.items():
        _put_table(case, group, table)
    written = [_("The table is in {path}.").format(path=table) for table in tables.values()]
    if written:
        written.append(_("It holds what you told us. Keep it safe, and remove it when you are done."))
    return Result(
        data={**list_data(case), "tables": {group: str(table) for group, table in tables.items()}},
        text=" ".join(written) or list_text(case),
    )


def _put_table(case: "Case", group: str, path: Path) -> None:
    """Write the things or the debts as a table, or as a workbook where the name says so."""
    from firstpaper.cli.files.output import write_output
    from firstpaper.cli.files.workbook import WORKBOOK, is_workbook, refuse_other_workbooks, workbook
    from firstpaper.intake.tables import BEGINS, amounts, rows_of, table_of

    if is_workbook(path):
        refuse_other_workbooks(path, group)
        write_output(path, workbook(rows_of(case, group), amounts(group), path), WORKBOOK)
    else:
        write_output(path, table_of(case, group).encode(), f"{BEGINS}{group},".encode())


def _work(
    terminal: Terminal, path: Path, action: str, words: list[str], on: date, passphrases: Passphrases
) -> Result:
    from firstpaper.cli.terminal import Left
    from firstpaper.cli.words import listed as listed_words

    taken_out: list[str] = []
    with passphrases.opening(path) as opened:
        rows: Sequence[Row] = ()
        before, given = opened.case, [word for word in words if "=" in word]
        try:
            rows = _rows(opened.case, action, [word for word in words if "=" not in word])
            if action == "remove":
                taken_out = [listed_words.taken_out(before, row) for row in rows]
            _do(terminal, opened, action, rows, given, on)
        except (Left, InputEnded):
            terminal.clear()
        after = opened.case
    following = next_line(after, path, on)
    return _result(path, before, after, () if taken_out else rows, given, taken_out, following)


def _rows(case: "Case", action: str, words: list[str]) -> "tuple[Row, ...]":
    """The rows that the command is about; none where it is about what is told once. Raises a UserError."""
    from firstpaper.cli.given import things as listed_details

    if action in ("", "set"):
        if words:
            raise listed_details.NoSuchFact(what=words[0], close="agreement, in_california, petitioner_net")
        return ()
    if action != "add":
        return listed_details.rows_named(case, words)
    group = listed_details.group_named(words[0]) if len(words) == 1 else ""
    if not group:
        raise listed_details.NothingToList(close=EXAMPLE)
    return (listed_details.row_to_add(case, group),)


def _do(
    terminal: Terminal, opened: "OpenCase", action: str, rows: "Sequence[Row]", given: list[str], on: date
) -> None:
    """Do what the command says, or what the person picks. Raises Left and UserErrors."""
    from firstpaper.cli.given import things as listed_details
    from firstpaper.cli.talk import listing as scheduling
    from firstpaper.intake.listing import without_row

    sitting = scheduling.Sitting(terminal, opened, on)
    if not action:
        sitting.run()
        return
    case = opened.case
    if action == "remove":
        for row in sorted(rows, key=lambda one: -one.number):  # those after one that goes move up
            case = without_row(case, row)
    elif not given and terminal.interactive:
        for row in rows:
            sitting.tell(row, again=action == "change")
        return
    elif not given:
        raise listed_details.NothingToList(close=EXAMPLE)
    else:
        for each in rows or (None,):
            case = listed_details.with_details(case, listed_details.all_parts(each), given, on)
        _look_for_nothing(case, action, rows)
    opened.keep(opened.file.with_case(case))


def _look_for_nothing(case: "Case", action: str, rows: "Sequence[Row]") -> None:
    """Refuse to keep a row about which nothing is told."""
    from firstpaper.cli.given import things as listed_details
    from firstpaper.intake.listing import is_empty

    for row in rows:
        if is_empty(case, row):
            if action == "add":
                raise listed_details.NothingToList(close=EXAMPLE)
            which = f"{row.group} {row.number}"
            raise listed_details.NothingLeft(what=which, close=f"remove {which}")


def _result(
    path: Path,
    before: "Case",
    after: "Case",
    told: "Sequence[Row]",
    given: list[str],
    head: list[str],
    following: str,
) -> Result:
    from firstpaper.cli.given import things as listed_details
    from firstpaper.cli.words import listed as listed_words
    from firstpaper.intake.listing import about, is_empty

    rows = [row for row in told if not is_empty(after, row)]
    back = [key for row in rows for key in listed_details.taken_back(row, given)]
    gone = listed_words.left_out(before, after, back) if rows else []
    changed = listed_words.changed(before, after)
    parts = [
        *head,
        *(words for row in rows for words in (_name(after, row), listed_words.still_open(after, about(row)))),
        listed_words.left_out_text(gone, before),
        _tail(path) if changed else _("Nothing was changed."),
        following,
    ]
    return Result(
        data={**listed_words.list_data(after), "changed": changed, "left_out": [one.key for one in gone]},
        text="\n\n".join(part for part in parts if part),
    )


def _name(case: "Case", row: "Row") -> str:
    from firstpaper.cli.words.listed import name_of

    return name_of(case, row)


def _tail(path: Path) -> str:
    return to_type(_("It is saved. To see the list, type:"), "schedule", path, "--list")
