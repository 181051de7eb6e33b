"""The first day to file for a divorce with enough time lived here."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.deadline import Dated, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.finding import FIRST_COURT_DAY
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import is_filed
from firstpaper.law.register import findings

RULE = "residence.same_spouse"


@deadline(
    "First day to file, with enough time lived here",
    rule=RULE,
    meaning=Meaning.FIRST_DAY,
    if_missed="A divorce that is filed sooner can be lost. Waiting later does not mend it.",
    neutral="first day for the papers",
)
def same_spouse(case: Case, on: date) -> Dated | None:
    """The first day from the safe day on when a clerk takes papers, as the rule counts it."""
    if is_filed(case):
        return None
    for found in findings(case, on, [RULE]):
        if opens := found.dates.get(FIRST_COURT_DAY):
            return Dated(Due(opens, opens, found.steps))
    return None
