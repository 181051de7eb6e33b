"""The first day to ask for a default."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.deadline import Chart, Dated, Event, Meaning
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import TAKING_PART, happened
from firstpaper.law.measures.response import default_from as counted
from firstpaper.law.measures.service import certainty, lacks_proof
from firstpaper.locale import _


@deadline(
    "First day to ask for a default",
    rule="response.default_from",
    cite=("Code Civ. Proc. 585", "Code Civ. Proc. 587", "Fam. Code 2335.5"),
    meaning=Meaning.FIRST_DAY,
    if_missed="Until you ask, the other side can still respond.",
    neutral="next step possible",
    chart=Chart("A default can be asked for", "From {day} on you can ask for a default."),
    done_by="record.default_asked_on",
    needless_by=TAKING_PART,
    waits_for=Event.SERVED,
)
def default_from(case: Case, on: date) -> Dated | None:
    """The first day on which a clerk is there after the time to respond ended."""
    opens = counted(case, on)
    if opens is None or known(happened(case, on).default_asked_on) is not None:
        return None
    proof = _("File the proof of service first: without it there is no default.")
    return Dated(
        Due(opens.rolled, opens.rolled, opens.steps),
        certainty=certainty(case, on),
        also=proof if lacks_proof(case, on) else "",
    )
