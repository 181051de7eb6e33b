"""Answers given on the command line as ``name=value``, for the questions of the interview."""

from collections.abc import Sequence
from datetime import date

from firstpaper.cli.close_names import closest
from firstpaper.errors import UserError
from firstpaper.facts import Case
from firstpaper.intake import AnswerRefused, Asked, asked, put, read_answer
from firstpaper.intake.kinds import key_now
from firstpaper.intake.reading.day_order import one_reading


class NoSuchAnswer(UserError):
    """There is no question called {what} in this case now, so nothing was changed.

    Close to it: {close}. An answer with its new value looks like this: petitioner.phone=559-555-0142
    """

    code = "no_such_answer"


class AnswerNotRead(UserError):
    """The answer {what} could not be read, so nothing was changed. {reason}

    Correct it and type the command again.
    """

    code = "answer_not_read"


def with_answers(case: Case, given: Sequence[str], today: date) -> Case:
    """The case with each answer of `given` taken, in the order given. Raises a UserError; then none is."""
    for word in given:
        name, _is, value = word.partition("=")
        case = _with_answer(case, _applying(case, name.strip().lower()), value.strip(), today)
    return case


def _applying(case: Case, name: str) -> Asked:
    name = key_now(name)
    now = {one.key: one for one in asked(case)}
    if name not in now:
        raise NoSuchAnswer(what=name or "-", close=closest(name, list(now)))
    return now[name]


def _with_answer(case: Case, one: Asked, text: str, today: date) -> Case:
    try:
        value = read_answer(one, one_reading(one.kind, text), today, written=True) if text else None
        return put(case, one.key, value)
    except AnswerRefused as refused:
        raise AnswerNotRead(what=one.key, reason=refused.message) from None
