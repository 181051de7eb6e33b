"""`firstpaper schedule`: what the two of you own and owe, thing by thing."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.hints import to_type
from firstpaper.cli.options import CaseArgument, JsonOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
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

ActionArgument = Annotated[
    str | None,
    typer.Argument(
        metavar="add|change|remove|set",
        help=_("What to do with the list. Without it you are asked."),
        show_default=False,
    ),
]
WordsArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="WHICH NAME=VALUE",
        help=_(
            'What is meant and what you know about it, such as: asset 2 value=1200. After "set": agreement=no'
        ),
        show_default=False,
    ),
]
ListOption = Annotated[bool, typer.Option("--list", help=_("Show what is listed, and change nothing."))]
ThingsOption = Annotated[
    Path | None,
    typer.Option(
        "--csv-things", metavar="FILE.csv", help=_("Write what you own as a table for a spreadsheet.")
    ),
]
DebtsOption = Annotated[
    Path | None,
    typer.Option(
        "--csv-debts", metavar="FILE.csv", help=_("Write what you owe as a table for a spreadsheet.")
    ),
]
TodayOption = Annotated[
    str | None,
    typer.Option("--on", metavar="DATE", help=_("Take this day for today, as 2026-11-30.")),
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
    case: CaseArgument,
    action: ActionArgument = None,
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
        if show or csv_things or csv_debts:
            tables = {"asset": csv_things, "debt": csv_debts}
            return _show(case, {group: path for group, path in tables.items() if path}, passphrases)
        if action is None and not terminal.interactive:
            raise ActionNeeded(close=EXAMPLE)
        if action is not None and action.lower() not in ACTIONS:
            raise NoSuchAction(what=action, close=EXAMPLE)
        return _work(terminal, case, (action or "").lower(), words or [], day, passphrases)

    deliver("schedule", as_json, work)


def _show(path: Path, tables: dict[str, Path], passphrases: Passphrases) -> Result:
    from firstpaper.cli.listed_words import list_data, list_text
    from firstpaper.cli.opening import case_at
    from firstpaper.cli.output import write_output
    from firstpaper.intake.tables import BEGINS, table_of

    case = case_at(path, passphrases)
    for group, table in tables.items():
        write_output(table, table_of(case, group).encode(), f"{BEGINS}{group},".encode())
    written = [_("The table is in {path}.").format(path=table) for table in tables.values()]
    if written:
        written.append(_("It holds what you told us. Keep it safe, and remove it when you are done."))
    return Result(
        data={**list_data(case), "tables": {group: str(table) for group, table in tables.items()}},
        text=" ".join(written) or list_text(case),
    )


def _work(
    terminal: Terminal, path: Path, action: str, words: list[str], on: date, passphrases: Passphrases
) -> Result:
    from firstpaper.casefile import OpenCase
    from firstpaper.cli import listed_words
    from firstpaper.cli.terminal import Left

    taken_out = ""
    with OpenCase(path, passphrases=passphrases.tries(path)) as opened:
        before, row, given = opened.case, None, [word for word in words if "=" in word]
        try:
            row = _row(opened.case, action, [word for word in words if "=" not in word])
            if action == "remove" and row:
                taken_out = listed_words.taken_out(before, row)
            _do(terminal, opened, action, row, given, on)
        except (Left, InputEnded):
            terminal.clear()
        after = opened.case
    row = None if taken_out else row
    return _result(path, before, after, row, given, taken_out)


def _row(case: "Case", action: str, words: list[str]) -> "Row | None":
    """The row that the command is about; None where it is about what is told once. Raises a UserError."""
    from firstpaper.cli import listed_details

    if action in ("", "set"):
        if words:
            raise listed_details.NoSuchFact(what=words[0], close="agreement, in_california, petitioner_net")
        return None
    if action != "add":
        return listed_details.row_named(case, words)
    group = listed_details.group_named(words[0]) if len(words) == 1 else ""
    if not group:
        raise listed_details.NothingToList(close=EXAMPLE)
    return listed_details.row_to_add(case, group)


def _do(
    terminal: Terminal, opened: "OpenCase", action: str, row: "Row | None", given: list[str], on: date
) -> None:
    """Do what the command says, or what the person picks. Raises Left and UserErrors."""
    from firstpaper.cli import listed_details, scheduling
    from firstpaper.intake.listing import without_row

    sitting = scheduling.Sitting(terminal, opened, on)
    if not action:
        sitting.run()
    elif action == "remove" and row:
        opened.keep(opened.file.with_case(without_row(opened.case, row)))
    elif row and not given and terminal.interactive:
        sitting.tell(row, again=action == "change")
    elif not given:
        raise listed_details.NothingToList(close=EXAMPLE)
    else:
        case = listed_details.with_details(opened.case, listed_details.all_parts(row), given, on)
        opened.keep(opened.file.with_case(case))


def _result(
    path: Path, before: "Case", after: "Case", row: "Row | None", given: list[str], head: str
) -> Result:
    from firstpaper.cli import listed_details, listed_words
    from firstpaper.intake.listing import about, is_empty

    row = row if row and not is_empty(after, row) else None
    gone = listed_words.left_out(before, after, listed_details.taken_back(row, given)) if row else []
    changed = listed_words.changed(before, after)
    parts = [
        head,
        listed_words.name_of(after, row) if row else "",
        listed_words.still_open(after, about(row)) if row else "",
        listed_words.left_out_text(gone, before),
        _tail(path) if changed else _("Nothing was changed."),
    ]
    return Result(
        data={**listed_words.list_data(after), "changed": changed, "left_out": [one.key for one in gone]},
        text="\n\n".join(part for part in parts if part),
    )


def _tail(path: Path) -> str:
    return to_type(_("It is saved. To see the list, type:"), "schedule", path, "--list")
