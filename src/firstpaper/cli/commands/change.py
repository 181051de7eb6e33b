"""`firstpaper change`: give an answer again: picked from a list, by name, or as NAME=VALUE in many cases."""

from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NamedTuple

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.batch import for_each
from firstpaper.cli.commands.ask import sit
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import JsonOption, OnOption, cases_first, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.facts import Case

WordsArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="[CASE]... [ANSWER]...",
        autocompletion=tab_key.answers,
        help=_(
            "The case files, and then the name of an answer, such as petitioner.phone, or of a topic, such "
            "as court. Or an answer and its new value: petitioner.phone=559-555-0142. Without an answer you "
            "pick from a list. Without a case file: home.case in this folder."
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
    """Nothing was changed, because the command does not give the new answer, and there is nobody to ask.

    Name an answer and its new value after the case file, such as: petitioner.phone=559-555-0142
    """

    code = "answer_needed"


class OneCaseToTalk(UserError):
    """Nothing was changed. In many case files at once, an answer is changed only with its new value.

    Write it after the case files, such as: petitioner.phone=559-555-0142
    """

    code = "one_case_to_talk"


def change(
    words: WordsArgument = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Change an answer: pick it from a list, name it, or give the new one at once."""

    def work(terminal: Terminal) -> Result:
        cases, what = cases_first(words or [], _names_an_answer)
        passphrases = Passphrases(terminal, passphrase_from)
        if len(cases) > 1:
            passphrases.shared()
            if not what or not all("=" in word for word in what):
                raise OneCaseToTalk
        return for_each(cases, Changes(terminal, what, filing_day(on), passphrases).of)

    deliver("change", as_json, work)


class Changes(NamedTuple):
    """What is to be changed in each case."""

    terminal: Terminal
    what: Sequence[str]
    day: date
    passphrases: Passphrases

    def of(self, path: Path) -> Result:
        """Change the case at `path`."""
        from firstpaper.cli.talk.interview import Interview

        if not self.what and not self.terminal.interactive:
            raise AnswerNeeded
        with self.passphrases.opening(path) as opened:
            if any("=" in word for word in self.what):
                return _changed(opened, self.what, self.day)
            interview = Interview(self.terminal, opened, self.day)
            if not self.what:
                return sit(self.terminal, opened, interview.run_picked, self.day)
            keys = [key for word in self.what for key in _keys(opened, word)]
            return sit(
                self.terminal, opened, lambda: interview.run_through(keys), self.day, nobody=AnswerNeeded
            )


def _names_an_answer(word: str) -> bool:
    """Whether a word that stands first is an answer and not a case file."""
    from firstpaper.intake import bank
    from firstpaper.intake.kinds import is_key, key_now

    name = key_now(word.strip().lower())
    return "=" in word or is_key(name) or any(topic.name == name for topic in bank().topics)


def _keys(opened: "OpenCase", word: str) -> list[str]:
    """The questions meant by a key or by the name of a topic, as far as they apply now."""
    from firstpaper.intake import asked
    from firstpaper.intake.kinds import key_now

    name = key_now(word.strip().lower())
    keys = [one.key for one in asked(opened.case) if name in (one.key, one.topic.name)]
    if not keys:
        raise NothingToChange(what=name, close=_close(opened.case, name), path=opened.path)
    return keys


def _changed(opened: "OpenCase", given: Sequence[str], day: date) -> Result:
    """Take answers given as NAME=VALUE, all or none."""
    from firstpaper.cli.given.answers import with_answers
    from firstpaper.cli.words.differences import difference_data, difference_lines
    from firstpaper.intake.differing import differences

    before, after = opened.case, with_answers(opened.case, given, day)
    found = differences(before, after)
    if found:
        opened.keep(opened.file.with_case(after))
    head = _("Changed:") if found else _("Nothing changed: the case held all of this already.")
    return Result(
        data={"changed": [difference_data(one) for one in found]},
        text="\n".join([head, *difference_lines(found), "", next_line(after, opened.path, day)]),
        line=_("changed: {keys}").format(keys=", ".join(one.key for one in found))
        if found
        else _("nothing changed"),
    )


def _close(case: "Case", what: str) -> str:
    from firstpaper.cli.close_names import closest
    from firstpaper.intake import asked

    names = [name for one in asked(case) for name in (one.key, one.topic.name)]
    return closest(what, names)
