"""The language a command speaks: the one chosen for it, else the one of the case, else FIRSTPAPER_LANG.

Only languages whose catalog has no hole are offered. A case keeps the language in which it was begun.
"""

import os
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, ClassVar

import typer

from firstpaper.locale import _, _c, offered, speak, speaking

if TYPE_CHECKING:
    from firstpaper.casefile import CaseFile
    from firstpaper.cli.terminal import Terminal

OPTION = "--language"


class Chosen:
    """The language that was chosen on the command line; empty where none was."""

    language: ClassVar[str] = ""


def is_offered(named: str | None) -> str | None:
    """The language named to an option. Raises typer.BadParameter where it is not offered."""
    if named is not None and named not in offered():
        raise typer.BadParameter("is not one of " + ", ".join(f"'{one}'" for one in offered()))
    return named


def speak_as_chosen(arguments: Sequence[str]) -> None:
    """Speak the language named among the arguments, before anything is said or loaded that says something."""
    for word, after in zip(arguments, [*arguments[1:], ""], strict=True):
        named = after if word == OPTION else word.removeprefix(f"{OPTION}=")
        if named in offered():
            Chosen.language = named
            speak(named)


def speak_for(file: "CaseFile") -> "CaseFile":
    """Speak the language of a case, where none was chosen; a case without one is begun in the one chosen."""
    if not file.language:
        return replace(file, language=Chosen.language)
    if not Chosen.language and file.language in offered():
        speak(file.language)
    return file


def keep_chosen(file: "CaseFile") -> "CaseFile":
    """The case file with the language chosen on the command line, where one was."""
    return replace(file, language=Chosen.language or file.language)


def ask_for_language(terminal: "Terminal", file: "CaseFile") -> "CaseFile":
    """Ask at the very beginning of a case, in each language, where there is more than one to choose from."""
    if file.language or "FIRSTPAPER_LANG" in os.environ or len(offered()) == 1 or not terminal.interactive:
        return file
    names = [_in(one, lambda: _c("this language, by its own name", "English")) for one in offered()]
    question = " / ".join(_in(one, lambda: _("Which language? Type its number.")) for one in offered())
    answers = {str(number): one for number, one in enumerate(offered(), 1)}
    answers |= {name.casefold(): one for name, one in zip(names, offered(), strict=True)}
    choices = "\n".join(f"  {number}. {name}" for number, name in enumerate(names, 1))
    chosen = None
    while chosen is None:
        terminal.say(question, choices)
        chosen = answers.get(terminal.read("> ").strip().rstrip(".").casefold())
    terminal.line()
    speak(chosen)
    return replace(file, language=chosen)


def _in(language: str, words: Callable[[], str]) -> str:
    with speaking(language):
        return words()
