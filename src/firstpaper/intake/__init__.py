"""The questions, the order they come in, and how a typed answer becomes a fact.

What is here: the bank (`bank/*.yaml`, one file a topic), the predicates that say when a question
applies, the engine that finds the next question and the facts that stand, the readers of typed
answers, and the reader of a file of facts. Every function is pure: no clock, no terminal; "today"
is an argument.

What is not here: law (`firstpaper.law`), the terminal (`firstpaper.cli`), saving
(`firstpaper.casefile`).

Names load when they are first used, so that the first prompt comes at once.
"""

from typing import TYPE_CHECKING

from firstpaper.on_first_use import names_of

if TYPE_CHECKING:
    from firstpaper.intake.commands import Command, command_of
    from firstpaper.intake.engine import (
        Asked,
        Progress,
        asked,
        asking,
        next_question,
        progress,
        put,
        set_aside,
        standing,
        switched,
    )
    from firstpaper.intake.entering import Problem, facts_from
    from firstpaper.intake.kinds import AnswerKind
    from firstpaper.intake.loading import Bank, bank
    from firstpaper.intake.question import Choice, Feeds, Question, Topic
    from firstpaper.intake.reading import read_answer
    from firstpaper.intake.refusals import AnswerRefused
    from firstpaper.intake.spoken import echo

__all__ = [
    "AnswerKind",
    "AnswerRefused",
    "Asked",
    "Bank",
    "Choice",
    "Command",
    "Feeds",
    "Problem",
    "Progress",
    "Question",
    "Topic",
    "asked",
    "asking",
    "bank",
    "command_of",
    "echo",
    "facts_from",
    "next_question",
    "progress",
    "put",
    "read_answer",
    "set_aside",
    "standing",
    "switched",
]

__getattr__ = names_of(
    __name__,
    {
        "commands": ("Command", "command_of"),
        "engine": (
            "Asked",
            "Progress",
            "asked",
            "asking",
            "next_question",
            "progress",
            "put",
            "set_aside",
            "standing",
            "switched",
        ),
        "entering": ("Problem", "facts_from"),
        "kinds": ("AnswerKind",),
        "loading": ("Bank", "bank"),
        "question": ("Choice", "Feeds", "Question", "Topic"),
        "reading": ("read_answer",),
        "refusals": ("AnswerRefused",),
        "spoken": ("echo",),
    },
)
