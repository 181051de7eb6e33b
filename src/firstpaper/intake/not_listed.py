"""Things and debts that the interview was told by name, and that are not on the list yet."""

import re

from firstpaper.facts import Case, known
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.intake.engine import put, standing
from firstpaper.intake.kinds import Row
from firstpaper.intake.typed import fold

_TOLD = ("community_items", "separate_petitioner", "separate_respondent")
_LAST_FOUR = re.compile(r",? ?\b(?:ending(?: in)?|ends in|no\.?|#) ?(\d{4})$", re.IGNORECASE)


def named_not_listed(case: Case) -> tuple[str, ...]:
    """Their names as typed, in order; the petition asks for them, so that the list should hold them too."""
    told = standing(case).property
    named = dict.fromkeys(line for field in _TOLD for line in known(getattr(told, field)) or ())
    rows: tuple[Asset | Debt, ...] = (*case.asset, *case.debt)
    listed = {fold(known(row.words) or "") for row in rows}
    return tuple(line for line in named if not {fold(line), fold(_LAST_FOUR.sub("", line))} & listed)


def with_named(case: Case, row: Row, line: str) -> Case:
    """The case with a new row of that name; the last digits of an account go to their own fact."""
    words, digits = _LAST_FOUR.sub("", line), _LAST_FOUR.search(line)
    case = put(case, f"{row.group}.{row.number}.words", words)
    return put(case, f"{row.group}.{row.number}.last_four", digits[1]) if digits and words else case
