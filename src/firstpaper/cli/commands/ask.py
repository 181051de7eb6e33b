"""`firstpaper ask`: the interview. The case file is begun with the first answer."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases, SealOption, lock_if_wanted
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import HOME, DefaultsOption, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.cli.terminal import InputEnded, Terminal
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from collections.abc import Callable

    from firstpaper.casefile import OpenCase
    from firstpaper.errors import UserError
    from firstpaper.facts import Case


class Begun(NamedTuple):
    """How a new case is begun: locked, and with the facts of a file."""

    seal: bool
    defaults: Path | None


def ask(
    case: HomeArgument = HOME,
    seal: SealOption = False,
    defaults: DefaultsOption = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Answer the questions, one at a time."""
    deliver("ask", as_json, lambda terminal: _ask(terminal, case, on, Begun(seal, defaults), passphrase_from))


def _ask(terminal: Terminal, path: Path, on: str | None, begun: Begun, passphrase_from: str | None) -> Result:
    from firstpaper.casefile.errors import CopyKept

    day = filing_day(on)
    passphrases = Passphrases(terminal, passphrase_from)
    try:
        return _sit_down(terminal, path, day, begun, passphrases)
    except CopyKept as kept:
        from firstpaper.cli.talk.going_back import goes_on_from_copy

        if not goes_on_from_copy(terminal, path, kept):
            raise
    return _sit_down(terminal, path, day, begun, passphrases)


def _sit_down(terminal: Terminal, path: Path, day: date, begun: Begun, passphrases: Passphrases) -> Result:
    from firstpaper.cli.language import ask_for_language, keep_chosen
    from firstpaper.cli.talk.interview import Interview
    from firstpaper.intake import next_question

    with passphrases.opening(path, begin=True) as opened:
        opened.file = ask_for_language(terminal, opened.file) if opened.new else keep_chosen(opened.file)
        if opened.new and begun.defaults:
            from firstpaper.cli.files.facts import FactsFile

            opened.file = opened.file.with_case(FactsFile(begun.defaults).onto(opened.case, day))
        lock_if_wanted(opened, passphrases, begun.seal)
        interview = Interview(terminal, opened, day)
        if next_question(opened.case) is None and terminal.interactive:
            return sit(terminal, opened, interview.run_finished, day)
        _greet(terminal, opened)
        return sit(terminal, opened, interview.run, day)


def sit(
    terminal: Terminal,
    opened: "OpenCase",
    interview: "Callable[[], None]",
    day: date,
    nobody: "type[UserError] | None" = None,
) -> Result:
    """Run an interview to its end, or until the person leaves, and say how things stand.

    `nobody` is raised where the input ends before any answer was kept.
    """
    from firstpaper.cli.talk.interview import NothingKept
    from firstpaper.cli.terminal import Left

    status, before = Exit.FINE, opened.file
    try:
        interview()
    except NothingKept:
        return Result()
    except Left:
        terminal.clear()
        _say_saved(terminal, opened)
    except InputEnded:
        if nobody and opened.file == before:
            raise nobody from None
        terminal.say(_("There is nothing more to read, so we stop here."))
        _say_saved(terminal, opened)
    except KeyboardInterrupt:
        terminal.line()
        _wipe_where_others_look(terminal, opened)
        _say_saved(terminal, opened)
        status = Exit.INTERRUPTED
    else:
        _wipe_where_others_look(terminal, opened)
        terminal.say(*_last_words(opened, day))
    return Result(data=_standing_data(opened), exit=status)


def _wipe_where_others_look(terminal: Terminal, opened: "OpenCase") -> None:
    """Take the answers off the screen of somebody who told of danger or of a shared computer."""
    from firstpaper.cli.talk.lock_offer import risky

    if risky(opened.case):
        terminal.clear()


def _greet(terminal: Terminal, opened: "OpenCase") -> None:
    from firstpaper.cli.files.left_open import tidied_words

    if opened.recovered:
        terminal.say(_("The last sitting ended suddenly. Every answer that was saved is here."))
    if opened.tidied:
        terminal.say(tidied_words(opened.tidied))
    if not opened.new:
        terminal.say(_("Welcome back. We go on where you stopped."))


def _say_saved(terminal: Terminal, opened: "OpenCase") -> None:
    copies = opened.copies
    if not opened.path.exists():
        terminal.say(_("Nothing was saved, because nothing was answered yet."))
        return
    terminal.say(
        " ".join(
            [
                _("Your answers are saved in {path}.").format(path=opened.path),
                *([_("Copies of the last saves are in {path}.").format(path=copies)] if copies else []),
            ]
        ),
        to_type(_("To go on later, type:"), "ask", opened.path),
    )


def _last_words(opened: "OpenCase", day: date) -> list[str]:
    from firstpaper.cli.talk.review import still_open

    left = still_open(opened.case)
    path = opened.path
    if not left:
        head = _("That was the last question. Thank you. Everything is saved in {path}.").format(path=path)
    else:
        count = _n("{count} question is still open:", "{count} questions are still open:", len(left))
        head = "\n".join([count.format(count=len(left)), *(f"  - {one.ask}" for one in left)])
    return [
        head,
        to_type(_("To see what stands in the way of a filing, type:"), "check", path),
        next_line(opened.case, path, day),
    ]


def _standing_data(opened: "OpenCase") -> dict[str, object]:
    from firstpaper.intake import progress

    place = progress(opened.case)
    return {
        "answered": place.answered,
        "applicable": place.applicable,
        "open_questions": _open_keys(opened.case),
        "passed": list(opened.file.passed),
    }


def _open_keys(case: "Case") -> list[str]:
    from firstpaper.cli.talk.review import still_open

    return [one.key for one in still_open(case)]
