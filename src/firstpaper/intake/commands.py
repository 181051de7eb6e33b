"""The words that are known at every question, such as "back".

A command is a whole line with nothing else in it. To give one of these words as an answer (a person
named Back), start the line with an equals sign: ``= Back``. Whatever follows the sign is taken word
for word.
"""

from enum import StrEnum

from firstpaper.intake.habits import command_named
from firstpaper.intake.typed import fold
from firstpaper.locale import _

LITERAL = "="


class Command(StrEnum):
    """What a person can do at any question besides answering it."""

    BACK = "back"
    WHY = "why"
    SKIP = "skip"
    DONT_KNOW = "don't know"
    REVIEW = "review"
    CHANGE = "change"
    UNDO = "undo"
    HELP = "help"
    LEAVE = "leave"


_ENGLISH = {
    Command.BACK: ("back", "go back"),
    Command.WHY: ("why", "why do you ask"),
    Command.SKIP: ("skip",),
    Command.DONT_KNOW: (
        "don't know",
        "dont know",
        "i don't know",
        "i dont know",
        "i do not know",
        "do not know",
        "idk",
        "dunno",
        "not sure",
        "i'm not sure",
        "im not sure",
        "i am not sure",
    ),
    Command.REVIEW: ("review",),
    Command.CHANGE: ("change",),
    Command.UNDO: ("undo",),
    Command.HELP: ("help",),
    Command.LEAVE: ("leave", "quit", "exit"),
}


def command_of(text: str) -> Command | None:
    """The command that this whole line is, or None where it is an answer."""
    word = fold(text)
    if set(word) <= set("?¿") and word:
        return Command.HELP
    here = command_named(word)
    return Command(here) if here else _words().get(word.rstrip(" .!?"))


def _words() -> dict[str, Command]:
    english = {word: command for command, words in _ENGLISH.items() for word in words}
    return english | {fold(word): command for command, word in _translated().items()}


def _translated() -> dict[Command, str]:
    return {
        Command.BACK: _("back"),
        Command.WHY: _("why"),
        Command.SKIP: _("skip"),
        Command.DONT_KNOW: _("don't know"),
        Command.REVIEW: _("review"),
        Command.CHANGE: _("change"),
        Command.UNDO: _("undo"),
        Command.HELP: _("help"),
        Command.LEAVE: _("leave"),
    }
