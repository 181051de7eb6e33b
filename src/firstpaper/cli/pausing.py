"""Help that waits when the screen is full, as every other long text does."""

from contextlib import suppress
from typing import Any

from typer.core import TyperCommand, TyperGroup

from firstpaper.cli.terminal import InputEnded, Left, Terminal

NO_PAUSE = "--no-pause"


def in_front(arguments: list[str]) -> list[str]:
    """The arguments with the option that holds for every command first, wherever it was typed."""
    return sorted(arguments, key=lambda one: one != NO_PAUSE)


class _Read:
    """Shows help a screen at a time. A subclass of what typer calls a command."""

    def get_help(self, ctx: Any) -> str:
        """The help; empty where it was shown already, page by page."""
        text: str = super().get_help(ctx)  # type: ignore[misc]
        terminal = Terminal()
        if not terminal.pauses_at(text):
            return text
        with suppress(Left, InputEnded):
            terminal.result(text)
        return ""


class Command(_Read, TyperCommand):
    """One command."""


class Commands(_Read, TyperGroup):
    """The command line as a whole."""
