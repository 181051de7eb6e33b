"""Help that waits when the screen is full, as every other long text does."""

import re
from contextlib import suppress
from typing import Any

import typer
from typer.core import TyperArgument, TyperCommand, TyperGroup

from firstpaper.cli.terminal import InputEnded, Left, Terminal
from firstpaper.locale import _, noted

NO_PAUSE = "--no-pause"
LANGUAGE = "--language"
AS_JSON = "--json"


def in_front(arguments: list[str]) -> list[str]:
    """The arguments with the options that hold for every command first, wherever they were typed."""
    first: list[str] = []
    rest: list[str] = []
    for before, word in zip(["", *arguments], arguments, strict=False):
        everywhere = word in (NO_PAUSE, LANGUAGE) or before == LANGUAGE or word.startswith(f"{LANGUAGE}=")
        (first if everywhere else rest).append(word)
    return [*first, *rest]


_HEADS = (noted("Usage:"), noted("Arguments:"), noted("Options:"), noted("Commands:"))
_ASKS_FOR_HELP = noted("Show this message and exit.")
"""What the library for command lines says in English only."""


def _in_our_words(text: str) -> str:
    for head in _HEADS:
        text = re.sub(rf"^{head}", _(head), text, flags=re.MULTILINE)
    return text.replace(_ASKS_FOR_HELP, _(_ASKS_FOR_HELP))


class _Read:
    """Shows help a screen at a time. A subclass of what typer calls a command."""

    def get_help(self, ctx: Any) -> str:
        """The help; empty where it was shown already, page by page."""
        text = _in_our_words(super().get_help(ctx))  # type: ignore[misc]
        terminal = Terminal()
        if not terminal.pauses_at(text):
            return text
        with suppress(Left, InputEnded):
            terminal.result(text)
        return ""


class _Argument(TyperArgument):
    """An argument shown by the words that we gave it, and not by its type in Python."""

    def _usage_display_name(self) -> str:
        words = self.metavar or ""
        return words if self.required or words.startswith("[") else f"[{words}]"

    def display_type_rich(self, ctx: Any) -> None:
        """Nothing: the words say what it takes."""


class Command(_Read, TyperCommand):
    """One command."""

    def __init__(self, *arguments: Any, **named: Any) -> None:
        super().__init__(*arguments, **named)
        for one in self.params:
            if isinstance(one, TyperArgument):
                one.__class__ = _Argument


class Commands(_Read, TyperGroup):
    """The command line as a whole. What it cannot understand is said in our words, or as JSON."""

    as_json = False
    """Whether the words typed ask for JSON."""

    def make_context(self, info_name: str | None, args: list[str], parent: Any = None, **extra: Any) -> Any:
        """Read the words before the command."""
        self.as_json = AS_JSON in args
        try:
            return super().make_context(info_name, args, parent, **extra)
        except Exception as error:
            self._explain(error)
            raise

    def invoke(self, ctx: Any) -> Any:
        """Read the words after the command, and run it."""
        try:
            return super().invoke(ctx)
        except Exception as error:
            self._explain(error)
            raise

    def _explain(self, error: Exception) -> None:
        """Where the words could not be understood, say so and end the program."""
        if not hasattr(error, "format_message") or type(error).__name__ == "NoArgsIsHelpError":
            return
        from firstpaper.cli.result import Exit, Result, show_at_once
        from firstpaper.cli.usage import explained

        context = getattr(error, "ctx", None)
        result = Result(errors=(explained(error),), exit=Exit.COULD_NOT_RUN)
        show_at_once(context.info_name if context else "firstpaper", self.as_json, result)
        raise typer.Exit(Exit.COULD_NOT_RUN) from None
