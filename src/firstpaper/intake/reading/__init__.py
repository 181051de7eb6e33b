"""Typed answers turned into facts: one module a kind of answer, all strict, none that guesses.

Expressions are texts here, and `re` compiles each when it is first met: one answer needs few of them.
"""

from collections.abc import Callable, Mapping
from datetime import date
from importlib import import_module
from typing import Any

from pydantic import ValidationError

from firstpaper.facts import DONT_KNOW
from firstpaper.intake.commands import LITERAL, Command, command_of
from firstpaper.intake.engine import Asked
from firstpaper.intake.habits import means
from firstpaper.intake.kinds import ONE_A_LINE, AnswerKind, place_of
from firstpaper.intake.reading.choices import (
    is_yes,
    read_choice,
    read_several,
    read_yes_no,
    written_choice,
    written_several,
)
from firstpaper.intake.reading.dates import read_day
from firstpaper.intake.reading.numbers import read_number, read_percent, read_quantity
from firstpaper.intake.reading.same import same_answer
from firstpaper.intake.refusals import AnswerRefused, Unreadable, refusal
from firstpaper.intake.typed import fold, tidy
from firstpaper.locale import _


def _once_needed(module: str, name: str) -> Callable[..., Any]:
    """A reader whose module is loaded with the first answer of its kind: few questions take one."""

    def read(*told: Any, **more: Any) -> Any:
        return getattr(import_module(f"{__name__}.{module}"), name)(*told, **more)

    return read


read_address = _once_needed("addresses", "read_address")
read_amount = _once_needed("amounts", "read_amount")
read_attempts = _once_needed("attempts", "read_attempts")
read_closures = _once_needed("closures", "read_closures")
read_contributions = _once_needed("contributions", "read_contributions")
read_homes = _once_needed("homes", "read_homes")
read_people = _once_needed("people", "read_people")
read_periods = _once_needed("periods", "read_periods")

LONGEST_ANSWER = 20_000
LONGEST_SHORT_ANSWER = 500
MOST_LINES = 200

_ANY_LENGTH = ONE_A_LINE | {AnswerKind.TEXT, AnswerKind.PARAGRAPH}
_NOTHING = {
    AnswerKind.TEXT: "",
    AnswerKind.PARAGRAPH: "",
    AnswerKind.LINES: (),
    AnswerKind.PERIODS: (),
    AnswerKind.PEOPLE: (),
    AnswerKind.ATTEMPTS: (),
    AnswerKind.CLOSURES: (),
    AnswerKind.CONTRIBUTIONS: (),
    AnswerKind.SEVERAL: (),
}
_NONE = {"0", "n", "no", "none", "none of these", "none of them", "nothing", "n/a", "na"}
_NONE |= {"ninguno", "ninguna", "nada"}


def read_answer(asked: Asked, text: str, today: date, *, written: bool = False) -> Any:
    """The fact that the typed `text` gives; DONT_KNOW where the person says so.

    `written` is for a file or a command line, where nobody sees the choices: there one is named whole.
    Raises AnswerRefused with words for the person.
    """
    if len(text) > (LONGEST_ANSWER if asked.kind in _ANY_LENGTH else LONGEST_SHORT_ANSWER):
        raise AnswerRefused(_("That is too long to be read as an answer here. Please type it shorter."))
    text = tidy(text)
    if text.startswith(LITERAL):
        text = text[len(LITERAL) :].strip()
    elif command_of(text) is Command.DONT_KNOW:
        return DONT_KNOW
    elif asked.none is not None and _says_nothing(asked, text):
        return _checked(asked.key, _NOTHING[asked.kind])
    elif set(text) == {"?"}:
        raise AnswerRefused(_("A question mark is no answer. If you do not know, type: don't know"))
    if not text:
        raise AnswerRefused(_nothing_typed(asked))
    if (same := same_answer(asked, text)) is not None:
        return same
    try:
        readers = {**_READERS, **_WRITTEN} if written else _READERS
        return _checked(asked.key, readers[asked.kind](asked, text, today))
    except Unreadable as unreadable:
        raise AnswerRefused(_with_examples(asked, unreadable.message)) from None
    except ValidationError as error:  # a part of the answer, such as a street, does not fit
        raise refusal(error) from None


def _with_examples(asked: Asked, message: str) -> str:
    """What was wrong, with an answer that the question itself shows."""
    if not asked.examples:
        return message
    return " ".join([message, _("For example: {examples}").format(examples="; ".join(asked.examples))])


def _checked(key: str, value: Any) -> Any:
    """The value as the fact's own model keeps it."""
    place = place_of(key)
    try:
        return getattr(place.model.model_validate({place.field: value}), place.field)
    except ValidationError as error:
        raise refusal(error) from None


def _lines(text: str) -> tuple[str, ...]:
    lines = tuple(line.strip() for line in text.splitlines() if line.strip())
    if len(lines) > MOST_LINES:
        raise AnswerRefused(_("That is more than {most} lines. Please list less.").format(most=MOST_LINES))
    return lines


_READERS: Mapping[AnswerKind, Callable[[Asked, str, date], Any]] = {
    AnswerKind.YES_NO: lambda asked, text, today: read_yes_no(text),
    AnswerKind.DATE: lambda asked, text, today: read_day(
        text, today, not_after_today=asked.question.not_after_today
    ),
    AnswerKind.CHOICE: lambda asked, text, today: read_choice(asked.choices, text),
    AnswerKind.SEVERAL: lambda asked, text, today: read_several(asked.choices, text),
    AnswerKind.TEXT: lambda asked, text, today: _text(asked.key, text),
    AnswerKind.PARAGRAPH: lambda asked, text, today: text,
    AnswerKind.LINES: lambda asked, text, today: _lines(text),
    AnswerKind.PERIODS: lambda asked, text, today: read_periods(
        text, today, not_after_today=asked.question.not_after_today
    ),
    AnswerKind.HOMES: lambda asked, text, today: read_homes(
        text, today, not_after_today=asked.question.not_after_today
    ),
    AnswerKind.PEOPLE: lambda asked, text, today: read_people(text),
    AnswerKind.ADDRESS: lambda asked, text, today: read_address(text),
    AnswerKind.NUMBER: lambda asked, text, today: read_number(text),
    AnswerKind.MONEY: lambda asked, text, today: read_amount(text),
    AnswerKind.PERCENT: lambda asked, text, today: read_percent(text),
    AnswerKind.QUANTITY: lambda asked, text, today: read_quantity(text),
    AnswerKind.ATTEMPTS: lambda asked, text, today: read_attempts(text, today),
    AnswerKind.CLOSURES: lambda asked, text, today: read_closures(text, today),
    AnswerKind.CONTRIBUTIONS: lambda asked, text, today: read_contributions(text, asked.case),
}

_WRITTEN: Mapping[AnswerKind, Callable[[Asked, str, date], Any]] = {
    AnswerKind.CHOICE: lambda asked, text, today: written_choice(asked.choices, text),
    AnswerKind.SEVERAL: lambda asked, text, today: written_several(asked.choices, text),
}


def _text(key: str, text: str) -> str:
    """Words as they were typed. "Yes" alone is not taken for a name."""
    if key.endswith("name") and is_yes(text):
        raise AnswerRefused(_("Please type the name itself. If there is none, type: none"))
    return text


def _says_nothing(asked: Asked, text: str) -> bool:
    word = fold(text).rstrip(" .!")
    return asked.kind in _NOTHING and (
        word in _NONE or word == fold(asked.none or "").rstrip(" .!") or means("nothing", word)
    )


def _nothing_typed(asked: Asked) -> str:
    if asked.none is not None:
        return _(
            "Nothing was typed. If the answer is nothing, type: none. To come back to this later, type: skip"
        )
    return _(
        "Nothing was typed. Type the answer, or one of these words: skip (come back later), "
        "don't know, back, why."
    )
