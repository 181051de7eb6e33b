"""Commands that a person is told to type. Each runs as it is printed, and stays on one line."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.terminal import KEEPS_TOGETHER
from firstpaper.errors import quoted
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case


def command(*words: object) -> str:
    """A command of this program with its arguments, quoted for the shell, to stand inside a sentence."""
    return line_of("firstpaper", *words)


def line_of(*words: object) -> str:
    """A command of any program, quoted for the shell."""
    return KEEPS_TOGETHER.join(_quoted(str(word)) for word in words)


def to_type(words: str, *arguments: object) -> str:
    """What a command is good for, and the command on a line of its own."""
    return f"{words}\n  {command(*arguments)}"


def next_line(case: "Case", path: Path, on: date) -> str:
    """The next step of a case in one line, with the command that goes with it."""
    from firstpaper.packet.next_step import next_step

    step = next_step(case, on)
    return to_type(_("Next: {words}").format(words=step.words), step.command, *step.about, path, *step.more)


def _quoted(word: str) -> str:
    return quoted(word).replace(" ", KEEPS_TOGETHER)
