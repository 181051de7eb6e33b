"""The first day to turn a legal separation into a divorce, where that is meant."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.deadline import Dated, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import begins_on, happened, opens_on
from firstpaper.law.measures.residence import first_safe_day, may_state_intent


@deadline(
    "First day to ask for a divorce, in an amended petition",
    rule="residence.separation_first",
    cite="Fam. Code 2321",
    meaning=Meaning.FIRST_DAY,
    if_missed="Nothing is lost. The separation goes on as long as nobody amends it.",
    neutral="first day for new papers",
    done_by="record.amended_on",
)
def divorce_later(case: Case, on: date) -> Dated | None:
    """The first day from the safe day on when a clerk takes papers, if nobody moves."""
    begins = begins_on(case, on)
    if begins is None or known(happened(case, on).amended_on) is not None:
        return None
    if not known(case.requests.intends_to_amend) or not may_state_intent(case, begins):
        return None
    ready = first_safe_day(case, begins)
    if ready is None:
        return None
    opens = opens_on(case, ready)
    return Dated(Due(opens.day, opens.day, opens.steps))
