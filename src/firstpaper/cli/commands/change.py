"""`firstpaper change`: give an answer again: picked from a list, by name, or as NAME=VALUE."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.commands.ask import sit
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.facts import Case

WhatArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="ANSWER",
        help=_(
            "The name of an answer, such as petitioner.phone, or of a topic, such as court. Or an answer and "
            "its new value: petitioner.phone=559-555-0142. Without it you pick from a list."
        ),
        show_default=False,
    ),
]


class NothingToChange(UserError):
    """There is no question or topic called {what} in this case.

    Close to it: {close}. To pick from a list of your answers, type:

    firstpaper change {path}
    """

    code = "nothing_to_change"


class AnswerNeeded(UserError):
    """Nothing was changed, because the command does not say which answer, and there is nobody to ask.

    Name an answer and its new value after the case file, such as: petitioner.phone=559-555-0142
    """

    code = "answer_needed"


def change(
    case: HomeArgument = HOME,
    what: WhatArgument = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Change an answer: pick it from a list, name it, or give the new one at once."""

    def work(terminal: Terminal) -> Result:
        return _change(terminal, case, what or [], filing_day(on), Passphrases(terminal, passphrase_from))

    deliver("change", as_json, work)


def _change(
    terminal: Terminal, path: Path, what: Sequence[str], day: date, passphrases: Passphrases
) -> Result:
    from firstpaper.casefile import OpenCase
    from firstpaper.cli.interview import Interview

    given = [word for word in what if "=" in word]
    if not what and not terminal.interactive:
        raise AnswerNeeded
    with OpenCase(path, passphrases=passphrases.tries(path)) as opened:
        if given:
            return _changed(opened, what, day)
        interview = Interview(terminal, opened, day)
        if not what:
            return sit(terminal, opened, interview.run_picked, day)
        keys = [key for word in what for key in _keys(opened, word)]
        return sit(terminal, opened, lambda: interview.run_through(keys), day)


def _keys(opened: "OpenCase", word: str) -> list[str]:
    """The questions meant by a key or by the name of a topic, as far as they apply now."""
    from firstpaper.intake import asked

    name = word.strip().lower()
    keys = [one.key for one in asked(opened.case) if name in (one.key, one.topic.name)]
    if not keys:
        raise NothingToChange(what=name, close=_close(opened.case, name), path=opened.path)
    return keys


def _changed(opened: "OpenCase", given: Sequence[str], day: date) -> Result:
    """Take answers given as NAME=VALUE, all or none."""
    from firstpaper.cli.giving import with_answers
    from firstpaper.cli.reviewing import lines_about

    after = with_answers(opened.case, given, day)
    keys = [word.partition("=")[0].strip().lower() for word in given]
    opened.keep(opened.file.with_case(after))
    return Result(
        data={"changed": keys},
        text="\n".join([_("Changed:"), *lines_about(after, keys), "", next_line(after, opened.path, day)]),
    )


def _close(case: "Case", what: str) -> str:
    from firstpaper.cli.suggesting import closest
    from firstpaper.intake import asked

    names = [name for one in asked(case) for name in (one.key, one.topic.name)]
    return closest(what, names)
