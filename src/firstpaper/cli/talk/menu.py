"""What is asked on the side in a conversation: a yes, or one of a numbered list. The word leave leaves."""

from collections.abc import Callable, Sequence
from typing import TypeVar

from firstpaper.cli.talk.questions import small_number
from firstpaper.cli.terminal import Left, Terminal
from firstpaper.intake import Command, command_of
from firstpaper.intake.reading.choices import is_yes

T = TypeVar("T")


def read(terminal: Terminal, prompt: str) -> str:
    """What is typed at a prompt. Raises Left where the person leaves."""
    typed = terminal.read(prompt)
    terminal.line()
    if command_of(typed) is Command.LEAVE:
        raise Left
    return typed


def yes(terminal: Terminal, prompt: str) -> bool:
    """Whether a question is answered with yes. Raises Left."""
    return is_yes(read(terminal, prompt))


def show(terminal: Terminal, lines: Sequence[str]) -> None:
    """The lines of a list, each with its number."""
    for number, line in enumerate(lines, 1):
        terminal.line(f"  {number}. {line}")


def pick(terminal: Terminal, options: Sequence[T], words: Callable[[T], str], prompt: str) -> T | None:
    """One of the options, by its number. Anything that is no number on the list picks none. Raises Left."""
    show(terminal, [words(option) for option in options])
    number = small_number(read(terminal, prompt))
    return options[number - 1] if 1 <= number <= len(options) else None
