"""`firstpaper enter`: take a file of facts into a case file, all of it or nothing."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.hints import command, next_line
from firstpaper.cli.left_open import not_locked, offer_to_erase
from firstpaper.cli.options import CaseArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases, SealOption, lock_if_wanted
from firstpaper.cli.plain_text import plain_text
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.intake import Problem

MOST_TEXT = 2_000_000
"""Characters read of a file: more than any file of facts may have, so that a larger one is refused."""

FactsArgument = Annotated[
    Path,
    typer.Argument(
        metavar="FACTS.yaml",
        help=_("The file of facts to take in, or a table of things or debts: things.csv."),
        show_default=False,
    ),
]


class FactsUnreadable(UserError):
    """The file of facts {path} could not be opened: {reason}.

    Nothing was changed. Check the name and the folder, and try again.
    """

    code = "facts_unreadable"


class FactsRefused(UserError):
    """{count} in {path} cannot be used, so nothing from it was taken and nothing was saved.

    Please correct each line named here, and try again:
    """

    code = "facts_refused"

    def __init__(self, path: Path, problems: "Sequence[Problem]") -> None:
        count = _n("{count} line", "{count} lines", len(problems)).format(count=len(problems))
        super().__init__(path=path, count=count)
        self.path = path
        self.problems = problems

    @property
    def message(self) -> str:
        """The message, and every problem with its line and the key of the fact."""
        say = _problem_in_table if is_table(self.path) else _problem
        return "\n".join([super().message, *(f"  - {say(one)}" for one in self.problems)])


def enter(
    case: CaseArgument,
    facts: FactsArgument,
    seal: SealOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Take in answers from a YAML file of facts, or from a table (CSV) of things or debts."""

    def work(terminal: Terminal) -> Result:
        return _enter(terminal, case, facts, filing_day(on), seal, Passphrases(terminal, passphrase_from))

    deliver("enter", as_json, work)


def _enter(
    terminal: Terminal, path: Path, facts: Path, day: date, seal: bool, passphrases: Passphrases
) -> Result:
    from firstpaper.casefile import OpenCase
    from firstpaper.cli.listed_words import left_out, left_out_text
    from firstpaper.cli.offering import risky
    from firstpaper.cli.reviewing import answered, still_open
    from firstpaper.intake import set_aside
    from firstpaper.intake.listing import listed, settled

    with OpenCase(path, begin=True, passphrases=passphrases.tries(path)) as opened:
        read = read_facts(facts, day, opened.case)
        case = settled(read)
        lock_if_wanted(opened, passphrases, seal)
        opened.keep(opened.file.with_case(case))
    taken, left, aside = answered(case), still_open(case), set_aside(case)
    lines = [
        _("The facts are saved in {path}.").format(path=path),
        _n("{count} question is answered.", "{count} questions are answered.", len(taken)).format(
            count=len(taken)
        ),
        _n("{count} is still open.", "{count} are still open.", len(left)).format(count=len(left)),
    ]
    if risky(case) and not opened.sealed:
        words = _("Somebody else may find this file. To lock it with a passphrase, type: {command}")
        lines.append(words.format(command=command("seal", path)))
    if opened.sealed and (stays := offer_to_erase(terminal, [facts])):
        lines.append(not_locked(stays))
    if aside:
        lines.append(
            _("These answers do not fit this kind of case and are set aside: {keys}").format(
                keys=", ".join(aside)
            )
        )
    if things := len(listed(case)):
        lines.append(
            _n(
                "{count} fact is listed about what you own, owe and earn.",
                "{count} facts are listed about what you own, owe and earn.",
                things,
            ).format(count=things)
        )
    gone = left_out(read, case)
    parts = (" ".join(lines), left_out_text(gone, read), next_line(case, path, day))
    return Result(
        data={
            "answered": len(taken),
            "listed": things,
            "left_out": [one.key for one in gone],
            "open_questions": [one.key for one in left],
            "set_aside": list(aside),
        },
        text="\n\n".join(part for part in parts if part),
    )


def is_table(path: Path) -> bool:
    """Whether the file is named as a table."""
    return path.suffix.lower() == ".csv"


def read_facts(path: Path, day: date, onto: "Case | None" = None) -> "Case":
    """The facts in a file, put onto a case. Raises FactsRefused with everything in it that is wrong."""
    from firstpaper.intake import facts_from
    from firstpaper.intake.tables import facts_from_table

    read = facts_from_table if is_table(path) else facts_from
    case, problems = read(plain_text(path, MOST_TEXT, FactsUnreadable), day, onto)
    if problems:
        raise FactsRefused(path, problems)
    return case


def _problem_in_table(one: "Problem") -> str:
    if one.line and one.key:
        return _("Row {row}, column {column}: {message}").format(
            row=one.line, column=one.key, message=one.message
        )
    place = _("Row {row}").format(row=one.line) if one.line else _("The table")
    return f"{place}: {one.message}"


def _problem(one: "Problem") -> str:
    place = _("Line {line}").format(line=one.line) if one.line else _("The file")
    return f"{place}, {one.key}: {one.message}" if one.key else f"{place}: {one.message}"
