"""When each side owes the other its preliminary declaration of disclosure (Fam. Code 2104)."""

from dataclasses import dataclass, replace
from datetime import date

from firstpaper.counting import MissingDay, add_months, count_back, days_after
from firstpaper.facts import Case, known
from firstpaper.facts.choices import FinalDisclosure, Kind, ServiceMethod, Who
from firstpaper.facts.kinds import kind_of
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.measures.due import Due, due_elsewhere, unmoved
from firstpaper.law.measures.record import amended_on, begins_on, day, filed_on, happened, joint, responded
from firstpaper.law.measures.service import cannot_be_found, method

_KINDS = (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION)
SETTLED = (FinalDisclosure.BOTH_SERVED, FinalDisclosure.BOTH_WAIVED)
"""The final declarations of disclosure are done with."""

_UNSEEN = (ServiceMethod.PUBLICATION, ServiceMethod.POSTING)


@dataclass(frozen=True, slots=True)
class DisclosureDue:
    """By when one side serves its preliminary declaration of disclosure on the other.

    `since` is the day from which the time runs. `after_publication` tells that it is the shorter time
    after a response to a published or posted summons. `by_the_amended` is the day by the other reading,
    which counts from an amended petition: the section says only "the petition". For the second petitioner
    of a joint petition the section names no day: counting from the joint filing is our reading.
    """

    who: Who
    since: date
    due: Due
    certainty: Certainty
    after_publication: bool
    by_the_amended: Due | None = None


@dataclass(frozen=True, slots=True)
class FinalDue:
    """By when both serve their final declarations of disclosure before a trial."""

    due: Due
    certainty: Certainty


def disclosure_asked_for(case: Case) -> bool:
    """Whether Fam. Code 2103 names this kind of case. It does not name a nullity."""
    return kind_of(case) in _KINDS


def served_unseen(case: Case) -> bool:
    """Whether the summons was published or posted by order of the court (Fam. Code 2104(f), 2110)."""
    return method(case) in _UNSEEN


def unseen(case: Case) -> bool:
    """Whether the summons was published or posted, or must be because nobody can find the other side."""
    return served_unseen(case) or (method(case) is None and cannot_be_found(case))


def waits_for_a_response(case: Case, on: date) -> bool:
    """Whether the petitioner owes no declaration while the other side stays silent."""
    return disclosure_asked_for(case) and unseen(case) and not responded(case, on)


def if_found(case: Case, on: date) -> DisclosureDue | None:
    """The petitioner's last day if the other side is found after all, and served in another way."""
    filed = None if served_unseen(case) else begins_on(case, on)
    return _owed(Who.PETITIONER, filed, figure("disclosure.days", filed)) if filed else None


def answered_on_no_known_day(case: Case, on: date) -> bool:
    """Whether a response to a published or posted summons starts the time, on a day that is not known."""
    came = responded(case, on) and day(happened(case, on).response_filed_on) is None
    return disclosure_asked_for(case) and served_unseen(case) and came


def petitioner_disclosure(case: Case, on: date) -> DisclosureDue | None:
    """The petitioner's last day; None where it was served, where none is owed, or where none is owed yet.

    After publication or posting the petitioner owes none while the other side stays silent. So none is
    counted where that is to be expected, because nobody can find them; nor after a response whose day is not
    known.
    """
    record = happened(case, on)
    if not disclosure_asked_for(case) or known(record.disclosure_served_on) is not None:
        return None
    if waits_for_a_response(case, on) or answered_on_no_known_day(case, on):
        return None
    answered = day(record.response_filed_on)
    if served_unseen(case) and answered:
        shorter = figure("disclosure.after_publication_days", answered)
        return _owed(Who.PETITIONER, answered, shorter, after_publication=True)
    filed = begins_on(case, on)
    if filed is None:
        return None
    owed = _owed(Who.PETITIONER, filed, figure("disclosure.days", filed))
    return replace(owed, by_the_amended=_by_the_amended(case, on))


def _by_the_amended(case: Case, on: date) -> Due | None:
    """The same number of days, counted from the amended petition."""
    amended = amended_on(case, on)
    if amended is None:
        return None
    return due_elsewhere(days_after(amended, figure("disclosure.days", amended).value))


def respondent_disclosure(case: Case, on: date) -> DisclosureDue | None:
    """The respondent's last day; None where it was served, or where no response has been filed."""
    record = happened(case, on)
    if not disclosure_asked_for(case) or known(record.other_disclosure_served_on) is not None:
        return None
    filed = filed_on(case, on) if joint(case) else day(record.response_filed_on)
    if filed is None:
        return None
    owed = _owed(Who.RESPONDENT, filed, figure("disclosure.days", filed))
    return replace(owed, certainty=Certainty.UNCONFIRMED) if joint(case) else owed


def final_by(case: Case, on: date) -> FinalDue | None:
    """The last day to serve the final declaration of disclosure before a trial (Fam. Code 2105(a)).

    None where no trial is set, where the section does not name the case, or once both served or gave it up.
    The day is counted back from the trial and never moved forward: nobody says that a closed court gives
    more time here, so the safe reading stands.
    """
    record = happened(case, on)
    trial = day(record.trial_on)
    if trial is None or not disclosure_asked_for(case) or known(record.final_disclosure) in SETTLED:
        return None
    law = figure("disclosure.final_days_before_trial", trial)
    return FinalDue(unmoved(count_back(trial, law.value)), law.certainty)


def tax_returns_since(served: date) -> date:
    """The earliest day on which a tax return was filed that goes with a declaration served that day."""
    years: int = figure("disclosure.tax_return_years", served).value
    return add_months(served, -12 * years, missing_day=MissingDay.LAST_DAY_OF_MONTH)


def _owed(who: Who, start: date, law: FigureValue, *, after_publication: bool = False) -> DisclosureDue:
    counted = days_after(start, law.value)
    return DisclosureDue(who, start, due_elsewhere(counted), law.certainty, after_publication)
