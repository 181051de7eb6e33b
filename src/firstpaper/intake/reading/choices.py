"""Answers chosen from a list: by number, or by the beginning of their words."""

import re
from collections.abc import Sequence

from firstpaper.intake.habits import means
from firstpaper.intake.question import Choice
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

SHORTEST_START = 3

_YES = {"y", "yes", "yeah", "yep", "true", "si", "sí", "ok", "okay", "sure", "yup"}
_NO = {"n", "no", "nope", "false", "nah"}
_NUMBER = r"[#(]?(\d{1,6})[.):]?"
_SEVERAL_NUMBERS = r"\d{1,6}(?:(?: ?[,;&+] ?| and | y | )\d{1,6})*"
_BETWEEN = r" ?[,;&+] ?| and | y | "
_LEAD = r"(?:we are|i am|it is|a|an|the) "
"""Small words with which an answer may begin, and which people leave out."""
_BETWEEN_WORDS = r"\s*[,;\n]\s*"


def read_yes_no(text: str) -> bool:
    """Yes or no. Raises AnswerRefused for anything else."""
    if is_yes(text):
        return True
    if is_no(text):
        return False
    raise AnswerRefused(_("Please answer yes or no, in letters."))


def is_yes(text: str) -> bool:
    """Whether the whole text is one of the words for yes."""
    word = fold(text).rstrip(" .!")
    return word in _YES or word == fold(_("yes")) or means("yes", word)


def is_no(text: str) -> bool:
    """Whether the whole text is one of the words for no."""
    word = fold(text).rstrip(" .!")
    return word in _NO or word == fold(_("no")) or means("no", word)


def read_choice(choices: Sequence[Choice], text: str) -> str:
    """The value of the one choice meant. Raises AnswerRefused where it is not clear which."""
    number = re.fullmatch(_NUMBER, fold(text))
    if number:
        return _numbered(choices, number[1])
    if re.fullmatch(_SEVERAL_NUMBERS, fold(text)):
        raise AnswerRefused(_("Please choose one answer here: type one number."))
    return _named(choices, text)


def read_several(choices: Sequence[Choice], text: str) -> tuple[str, ...]:
    """The values of the choices meant, in the order shown. Raises AnswerRefused as `read_choice` does."""
    folded = fold(text)
    if re.fullmatch(_SEVERAL_NUMBERS, folded):
        chosen = {_numbered(choices, number) for number in re.split(_BETWEEN, folded)}
    elif exact := _exact(choices, folded):
        chosen = {exact.value}
    else:
        chosen = {read_choice(choices, part) for part in re.split(_BETWEEN_WORDS, text.strip()) if part}
    return tuple(choice.value for choice in choices if choice.value in chosen)


def written_choice(choices: Sequence[Choice], text: str) -> str:
    """The value of the choice that a file or a command line names: by its whole words, or by its number.

    Never by its beginning: nobody is there to see what was made of it. Raises AnswerRefused with the words
    that are right.
    """
    folded = fold(text).rstrip(" .!")
    number = re.fullmatch(_NUMBER, folded)
    if number and 1 <= int(number[1]) <= len(choices):
        return choices[int(number[1]) - 1].value
    exact = _exact(choices, folded)
    if exact is None:
        words = _("That is not one of the answers here. Write one of these: {names}.")
        raise AnswerRefused(words.format(names=", ".join(choice.value for choice in choices)))
    return exact.value


def written_several(choices: Sequence[Choice], text: str) -> tuple[str, ...]:
    """The values of the choices that a file or a command line names. Raises AnswerRefused."""
    folded = fold(text)
    if re.fullmatch(_SEVERAL_NUMBERS, folded):
        chosen = {written_choice(choices, number) for number in re.split(_BETWEEN, folded)}
    elif exact := _exact(choices, folded.rstrip(" .!")):
        chosen = {exact.value}
    else:
        chosen = {written_choice(choices, part) for part in re.split(_BETWEEN_WORDS, text.strip()) if part}
    return tuple(choice.value for choice in choices if choice.value in chosen)


def _numbered(choices: Sequence[Choice], digits: str) -> str:
    number = int(digits)
    if not 1 <= number <= len(choices):
        raise AnswerRefused(
            _("There is no answer number {number} here. Please type a number from 1 to {most}.").format(
                number=number, most=len(choices)
            )
        )
    return choices[number - 1].value


def _named(choices: Sequence[Choice], text: str) -> str:
    start = fold(text).rstrip(" .!")
    exact = _exact(choices, start)
    if exact:
        return exact.value
    meant = [choice for choice in choices if _begins(choice, start)]
    if len(meant) == 1:
        return meant[0].value
    if meant:
        numbers = ", ".join(str(choices.index(choice) + 1) for choice in meant)
        raise AnswerRefused(
            _("That could be more than one of the answers: {numbers}. Please type the number.").format(
                numbers=numbers
            )
        )
    raise AnswerRefused(
        _(
            "That is not one of the answers here. Please type the number of the answer, from 1 to {most}."
        ).format(most=len(choices))
    )


def _exact(choices: Sequence[Choice], folded: str) -> Choice | None:
    return next((choice for choice in choices if folded in _names(choice)), None)


def _begins(choice: Choice, start: str) -> bool:
    """Whether the choice begins so: with these letters, or with this whole word where there are few."""
    return any(
        name.startswith(start)
        and (len(start) >= SHORTEST_START or not name[len(start) : len(start) + 1].isalnum())
        for name in _names(choice)
        if start
    )


def _names(choice: Choice) -> tuple[str, ...]:
    words, value = fold(choice.words).rstrip(" .!"), fold(choice.value)
    return words, re.sub(_LEAD, "", words, count=1), value, value.replace("_", " ")
