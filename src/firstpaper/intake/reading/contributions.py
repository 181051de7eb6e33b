"""Separate money put into a thing, one payment a line: ``Maria, $60,000, down payment, papers``."""

import re
from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import TypeVar

from pydantic import ValidationError

from firstpaper.facts import DONT_KNOW, Case, DontKnow, known
from firstpaper.facts.choices import ContributionFor, Who
from firstpaper.facts.money import in_dollars
from firstpaper.facts.schedule import Contribution
from firstpaper.intake.commands import Command, command_of
from firstpaper.intake.reading.amounts import read_amount
from firstpaper.intake.reading.periods import each_line
from firstpaper.intake.refusals import AnswerRefused, refusal
from firstpaper.intake.typed import fold
from firstpaper.locale import _

Meaning = TypeVar("Meaning")

LONGEST_LINE = 600

_AMOUNT = r"(?<![\w,.$])\$? ?(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d{1,2})?(?![\w])"
_BETWEEN = r"\s*[,:]\s*|\s+(?=with(?:out)?\s|no papers)"
_LEADING = r"^(?:by|from|of|for|as|to|the|a|an|on|de|para)\s+"
_SEPARATOR = " ,:-"

_WHO = {
    Who.PETITIONER: "petitioner/me/i/mine/myself/my money/yo",
    Who.RESPONDENT: (
        "respondent/other/other side/other person/spouse/my spouse/husband/my husband/wife/my wife/partner/"
        "my partner"
    ),
    Who.BOTH: "both/both of us/us/we/ambos",
}
_TOWARD = {
    ContributionFor.DOWN_PAYMENT: "down payment/down_payment/down/deposit",
    ContributionFor.PRINCIPAL: (
        "principal/loan/loan principal/mortgage/loan payments/payments on the loan/paid on the loan/paying "
        "the loan/loan payment"
    ),
    ContributionFor.IMPROVEMENT: (
        "improvement/improvements/improving it/making it better/building/building work/remodel/remodeling"
    ),
}
_PAPERS = {
    True: "papers/with papers/papers show it/traced/yes/records/with records",
    False: "no papers/without papers/not traced/no/no records/without records",
}


def read_contributions(text: str, case: Case) -> tuple[Contribution, ...]:
    """The payments, in the order typed. Raises AnswerRefused naming the line that is not clear.

    A person is named as "me", "my spouse" or "both", by the side of the case, or by the name in `case`.
    """
    return each_line(text, lambda line: _contribution(line, case))


def contribution(
    by: Who, amount: Decimal, toward: ContributionFor, traced: bool | DontKnow | None
) -> Contribution:
    """The payment so described. Raises AnswerRefused where a piece does not fit."""
    try:
        return Contribution(by=by, amount=amount, toward=toward, traced=traced)
    except ValidationError as error:
        raise refusal(error) from None


def in_pieces(by: str, amount: str, toward: str, traced: str, case: Case) -> Contribution:
    """The payment whose pieces were typed apart. Raises AnswerRefused where one is not clear."""
    who, what = _who(by, case), _meant(_TOWARD, toward)
    if who is None:
        raise AnswerRefused(_("Please say who paid: petitioner, respondent or both."))
    if what is None:
        raise AnswerRefused(_("Please say what it was for: down payment, loan or improvement."))
    return contribution(who, read_amount(amount), what, _traced(traced))


def spell_contribution(one: Contribution, case: Case | None = None) -> str:
    """The payment in words that read back as the same payment; who paid by name where `case` has names."""
    toward = {
        ContributionFor.DOWN_PAYMENT: "down payment",
        ContributionFor.PRINCIPAL: "loan",
        ContributionFor.IMPROVEMENT: "improvement",
    }[one.toward]
    papers = {True: "papers", False: "no papers", DONT_KNOW: DONT_KNOW.value, None: ""}[one.traced]
    who = _name(one.by, case) if case else one.by.value
    return ", ".join(filter(None, (who, in_dollars(one.amount), toward, papers)))


def _contribution(line: str, case: Case) -> Contribution:
    if len(line) > LONGEST_LINE:
        raise AnswerRefused(_("That line is too long. Please give one payment on each line."))
    for amount in re.finditer(_AMOUNT, line):
        who = _who(line[: amount.start()], case)
        if who is None:
            continue
        pieces = [piece for piece in re.split(_BETWEEN, line[amount.end() :].strip(_SEPARATOR)) if piece]
        what = _meant(_TOWARD, pieces[0]) if pieces else None
        if what is None or len(pieces) > 2:
            break
        return contribution(who, read_amount(amount[0]), what, _traced(pieces[1] if pieces[1:] else ""))
    raise AnswerRefused(
        _(
            "Please say who paid, how much, what for (down payment, loan or improvement), and whether there "
            "are papers. Like this: me, $20,000, down payment, papers"
        )
    )


def _traced(text: str) -> bool | DontKnow | None:
    if not text.strip():
        return None
    if command_of(text) is Command.DONT_KNOW:
        return DONT_KNOW
    found = _meant(_PAPERS, text)
    if found is None:
        raise AnswerRefused(_("Please end the line with: papers, no papers, or don't know."))
    return found


def _who(text: str, case: Case) -> Who | None:
    word = _plain(text)
    if found := _meant(_WHO, text):
        return found
    named = [who for who, names in _names(case) if word in names]
    return named[0] if len(named) == 1 else None


def _names(case: Case) -> Iterator[tuple[Who, tuple[str, ...]]]:
    """Each of the two by whole name and by first name."""
    for who, fact in ((Who.PETITIONER, case.petitioner.name), (Who.RESPONDENT, case.respondent.name)):
        if name := known(fact):
            yield who, (_plain(name), _plain(name.split()[0]))


def _name(who: Who, case: Case) -> str:
    """The name of that spouse where it can be read back; else the side of the case."""
    told = {Who.PETITIONER: case.petitioner.name, Who.RESPONDENT: case.respondent.name}.get(who)
    name = known(told) if told else None
    return name if name and not re.search(_AMOUNT, name) and _who(name, case) is who else who.value


def _meant(words: Mapping[Meaning, str], text: str) -> Meaning | None:
    word = _plain(text)
    return next((meaning for meaning, all_words in words.items() if word in all_words.split("/")), None)


def _plain(text: str) -> str:
    word = fold(text).strip(_SEPARATOR)
    while shorter := re.sub(_LEADING, "", word, count=1):
        if shorter == word:
            break
        word = shorter
    return word.rstrip(" .!")
