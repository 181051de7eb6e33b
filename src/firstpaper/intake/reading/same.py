"""Answers like "same day" and "same as me": what another question was answered with."""

import re
from typing import Any

from firstpaper.facts import known
from firstpaper.intake.engine import Asked
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold
from firstpaper.locale import _

_SAME = (
    r"(?:on |at |since |it was )?(?:the |that )?same(?: (?:day|date|time|address|place|home))?"
    r"(?: (?:as|with) (?:me|mine|my own|before|above|that))?"
    r"|(?:el |la )?mism[oa](?: (?:día|dia|fecha|dirección|direccion|casa))?(?: que yo)?"
)


def same_answer(asked: Asked, text: str) -> Any:
    """The answer of the question that this one names in `same_as`; None where the text does not ask for it.

    Raises AnswerRefused where that answer is not known.
    """
    like = asked.question.same_as
    if like is None or not re.fullmatch(_SAME, fold(text).rstrip(" .!")):
        return None
    answer = known(asked.case.fact(like))
    if answer is None:
        raise AnswerRefused(_("The same as what? That is not answered yet. Please type it here in full."))
    return answer
