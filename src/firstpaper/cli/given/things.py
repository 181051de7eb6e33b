"""What is owned and owed told as details on the command line, such as `asset 2 value=1200`."""

from collections.abc import Mapping, Sequence
from datetime import date

from firstpaper.cli.close_names import closest
from firstpaper.cli.talk.questions import small_number
from firstpaper.errors import UserError
from firstpaper.facts import Case
from firstpaper.intake import AnswerRefused, read_answer
from firstpaper.intake.engine import asking
from firstpaper.intake.kinds import ROWS, Row, in_row
from firstpaper.intake.listing import (
    Part,
    all_about,
    in_general,
    new_row,
    with_told,
)
from firstpaper.intake.only_if import only_if
from firstpaper.intake.reading.day_order import one_reading

MOST_SHOWN = 12
"""Where there are no more names than this, all of them are shown to somebody who mistypes one."""


class NoSuchRow(UserError):
    """There is no {what} on the list, so nothing was changed.

    To see the list with its numbers, add --list to the command. A thing is named like this: asset 2. A
    debt is named like this: debt 1.
    """

    code = "no_such_row"


class ListFull(UserError):
    """There is room for {count} on the list, and it is full. Nothing was changed.

    Put small things together as one, such as: furniture and things at home.
    """

    code = "list_full"


class NoSuchFact(UserError):
    """Nothing called {what} can be told here, so nothing was changed.

    Write it like this: value=1200. Close to it: {close}.
    """

    code = "no_such_fact"


class FactNotAsked(UserError):
    """The fact {what} does not go with this one, so nothing was changed.

    It is told only if {reason}. Leave it out, or tell the others first.
    """

    code = "fact_not_asked"


class FactRefused(UserError):
    """The fact {what} could not be read, so nothing was changed. {reason}

    Correct it and type the command again.
    """

    code = "fact_refused"


class NothingToList(UserError):
    """Nothing was told about it, so nothing was changed.

    Say at least what it is, like this: {close}
    """

    code = "nothing_to_list"


class NothingLeft(UserError):
    """Nothing would be told any more about {what}, so nothing was changed.

    To take it off the list, write it like this: {close}
    """

    code = "nothing_left"


def rows_named(case: Case, words: Sequence[str]) -> tuple[Row, ...]:
    """The things or debts named by words such as "asset 2", or "asset 3 5 7". Raises NoSuchRow."""
    group = group_named(words[0]) if words else ""
    numbers = {word: small_number(word) for word in words[1:]}
    for word, number in (numbers or {"": 0}).items():
        if not group or not 1 <= number <= len(case.fact(group)):
            raise NoSuchRow(what=" ".join([*words[:1], word]).strip() or "-")
    return tuple(Row(group, number) for number in numbers.values())


def group_named(word: str) -> str:
    """The group that a word names; empty where it names none."""
    known_words = {"asset": "asset", "assets": "asset", "thing": "asset", "debt": "debt", "debts": "debt"}
    return known_words.get(word.strip().lower(), "")


def row_to_add(case: Case, group: str) -> Row:
    """The next free row. Raises ListFull."""
    row = new_row(case, group)
    if row is None:
        raise ListFull(count=ROWS[group])
    return row


def with_details(case: Case, parts: Sequence[Part], given: Sequence[str], today: date) -> Case:
    """The case with the details told that were given as `name=value`. Raises a UserError."""
    names = _names(parts)
    left = dict(_pair(text, names) for text in given)
    while key := next((one.key for part in parts for one in part.asked(case) if one.key in left), None):
        case = _with_value(case, key, left.pop(key), today)
    for key in left:
        asked = asking(key, case)
        raise FactNotAsked(what=_short_key(key), reason=(only_if(asked.question) if asked else "") or "")
    return case


def taken_back(row: Row | None, given: Sequence[str]) -> list[str]:
    """The keys of details that were given as nothing, as in ``value=``."""
    pairs = [_pair(text, _names(all_parts(row))) for text in given]
    return [key for key, value in pairs if not value]


def _names(parts: Sequence[Part]) -> Mapping[str, str]:
    """Every name that a detail can have, with the key it means: the key, its end, or its last word."""
    keys = [
        in_row(question.key, part.number)
        for part in parts
        for topic in part.topics
        for question in topic.questions
    ]
    last = [key.rpartition(".")[2] for key in keys]
    alone = {word: key for word, key in zip(last, keys, strict=True) if last.count(word) == 1}
    return {**alone, **{_short_key(key): key for key in keys}, **{key: key for key in keys}}


def _short_key(key: str) -> str:
    """The key without its group and number: ``house.price`` for ``asset.2.house.price``."""
    first, *rest = key.split(".")
    return ".".join(rest[1:] if first in ROWS else rest)


def _pair(text: str, names: Mapping[str, str]) -> tuple[str, str]:
    name, _is, value = text.partition("=")
    key = names.get(name.strip().lower()) if _is else None
    if key is None:
        short = list(dict.fromkeys(map(_short_key, names.values())))
        close = ", ".join(short) if len(short) <= MOST_SHOWN else closest(name, short)
        raise NoSuchFact(what=name.strip() or "-", close=close)
    return key, value.strip()


def _with_value(case: Case, key: str, text: str, today: date) -> Case:
    asked = asking(key, case)
    assert asked is not None
    try:
        typed = one_reading(asked.kind, text)
        return with_told(case, key, read_answer(asked, typed, today, written=True) if text else None)
    except AnswerRefused as refused:
        raise FactRefused(what=_short_key(key), reason=refused.message) from None


def all_parts(row: Row | None) -> tuple[Part, ...]:
    """What details can be told about a row, or where there is none what is told once."""
    return (all_about(row),) if row else in_general()
