"""What a command hands back, and the one place that turns it into words or JSON.

Every command, also one that failed, ends in the same envelope with `--json`:
``{"firstpaper": 1, "command": ..., "exit": ..., "data": {...}, "errors": [{"code", "message"}]}``.
"""

import json
import signal
import sys
import traceback
from collections.abc import Callable, Mapping
from contextlib import suppress
from enum import IntEnum, StrEnum
from pathlib import Path
from types import MappingProxyType
from typing import NamedTuple, NoReturn

import typer

from firstpaper.cli.clock import clock_words, today
from firstpaper.cli.terminal import InputEnded, Left, Terminal
from firstpaper.errors import ProgramFault, UserError
from firstpaper.locale import ENGLISH, _, language, unmarked

ENVELOPE = 1
PACKAGE = Path(__file__).parents[1]


class Exit(IntEnum):
    """What the exit status of a command means."""

    FINE = 0
    STOPS = 1
    """It ran, and found something that stops a filing."""
    COULD_NOT_RUN = 2
    OPEN = 3
    """It ran, and questions are open; only where --require-complete asks for a complete case."""
    INTERRUPTED = 130
    """The person pressed Ctrl-C."""


class State(StrEnum):
    """How far a case has come before its filing. A stop weighs more than an open question."""

    STOP = "stop"
    OPEN = "open"
    COMPLETE = "complete"


def state_of(stops: bool, is_open: bool) -> State:
    """The state of a case in which something stops a filing, or something is still open."""
    if stops:
        return State.STOP
    return State.OPEN if is_open else State.COMPLETE


def exit_for(state: State, require_complete: bool) -> Exit:
    """The exit status for a state: an open question counts only where a complete case is asked for."""
    if state is State.STOP:
        return Exit.STOPS
    return Exit.OPEN if state is State.OPEN and require_complete else Exit.FINE


class Result(NamedTuple):
    """The outcome of a command: for programs in `data`, for people in `text`.

    `line` is what is said of it in one line, where it is one of many. `as_it_is` says that the text is for
    another program, and not to be folded.
    """

    data: Mapping[str, object] = MappingProxyType({})
    text: str = ""
    exit: int = Exit.FINE
    errors: tuple[UserError, ...] = ()
    line: str = ""
    as_it_is: bool = False


def deliver(command: str, as_json: bool, work: Callable[[Terminal], Result]) -> NoReturn:
    """Run a command's work, show its result, and end the program with its exit status."""
    _leave_no_memory_image()
    signal.signal(signal.SIGTERM, _end)
    if hasattr(signal, "SIGHUP"):
        signal.signal(signal.SIGHUP, _end)
    terminal = Terminal()
    if words := clock_words(today()):
        terminal.say(words)
    result = _ran(terminal, work)
    _show(terminal, command, as_json, result)
    raise typer.Exit(result.exit)


def show_at_once(command: str, as_json: bool, result: Result) -> None:
    """Show a result for which no work was done, because the command line was not understood."""
    _show(Terminal(), command, as_json, result)


def _show(terminal: Terminal, command: str, as_json: bool, result: Result) -> None:
    try:
        if as_json:
            terminal.raw_result(envelope(command, result))
        else:
            _tell(terminal, result)
    except OSError:
        terminal.result_is_lost()
        raise typer.Exit(Exit.COULD_NOT_RUN) from None


def envelope(command: str, result: Result) -> str:
    """The JSON that programs read. ASCII only, so that no terminal obeys anything in it."""
    document = {
        "firstpaper": ENVELOPE,
        "command": command,
        "exit": int(result.exit),
        "data": dict(result.data),
        "errors": [{"code": error.code, "message": error.message} for error in result.errors],
    }
    if language() != ENGLISH:
        document = json.loads(unmarked(json.dumps(document, ensure_ascii=False, default=str)))
    return json.dumps(document, indent=1, default=str) + "\n"


def _ran(terminal: Terminal, work: Callable[[Terminal], Result]) -> Result:
    try:
        return work(terminal)
    except UserError as error:
        return Result(errors=(error,), exit=error.exit_code)
    except (KeyboardInterrupt, InputEnded, Left):
        terminal.say("", _("Stopped."))
        return Result(exit=Exit.INTERRUPTED)
    except LookupError as error:
        from firstpaper.cli.law_day import no_law_for

        told = no_law_for(error)
        return Result(errors=(told or ProgramFault(fault=_fault(error)),), exit=Exit.COULD_NOT_RUN)
    except Exception as error:  # a fault of ours must reach a person as words, with nothing of theirs in it
        return Result(errors=(ProgramFault(fault=_fault(error)),), exit=Exit.COULD_NOT_RUN)


def _tell(terminal: Terminal, result: Result) -> None:
    if result.text and result.as_it_is:
        terminal.raw_result(result.text + "\n")
    elif result.text:
        with suppress(Left, InputEnded, KeyboardInterrupt):  # somebody has read enough of it
            terminal.result(result.text)
    for error in result.errors:
        terminal.say(error.message)


def _fault(error: Exception) -> str:
    """The kind of fault and the place in this program, without the values it was working on."""
    ours = [
        f"{Path(frame.filename).relative_to(PACKAGE).as_posix()}:{frame.lineno}"
        for frame in traceback.extract_tb(error.__traceback__)
        if Path(frame.filename).is_relative_to(PACKAGE)
    ]
    return " ".join([type(error).__name__, *ours[-1:]])


def _leave_no_memory_image() -> None:
    """Tell the system not to write the answers to the disk should the program crash."""
    try:
        import resource
    except ImportError:  # a system that has no such limit
        return
    with suppress(OSError, ValueError):
        resource.setrlimit(resource.RLIMIT_CORE, (0, 0))


def _end(number: int, _frame: object) -> NoReturn:
    """The window was closed or the computer shuts down: let go of locks and end."""
    sys.exit(128 + number)
