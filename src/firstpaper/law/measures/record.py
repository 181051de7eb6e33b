"""What has happened by a day: the record as the measures and rules read it.

A day told in part, or marked as not sure, starts no clock; neither does one that lies ahead, or one
before the years whose law we know.
"""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import Counted, day_after
from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.record import Record, Service
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import COUNTS_FROM, calendar_of
from firstpaper.law.measures.once import once_a_case

FAR_AHEAD_DAYS = 366
"""How far ahead an order may set the end of service; a later day we take for a slip. Ours, not the law's."""

TRIAL_AHEAD_DAYS = 5 * 366
"""How far ahead a trial may be set. Ours, not the law's."""

_AHEAD = {"complete_on": FAR_AHEAD_DAYS, "trial_on": TRIAL_AHEAD_DAYS}
"""Days that are set beforehand, and how far."""

TAKING_PART = ("record.response_filed_on", "record.appeared_on", "matter.other_side_answered")
"""The facts by which the other side took part in a petition of one side alone."""

_NOTHING = Record.nothing()
_DAYS = tuple(name for name in Record.model_fields if name.endswith("_on"))
_SERVICE_DAYS = tuple(name for name in Service.model_fields if name.endswith("_on"))


def day(fact: Day | DontKnow | None) -> date | None:
    """The day where it was recorded whole and without doubt, so that it can start a clock."""
    told = known(fact)
    return told.sure if told else None


@once_a_case
def happened(case: Case, on: date) -> Record:
    """The record without the days that have not come on the day `on`, and those too long ago to count.

    The end of service and the trial may lie ahead, as a court's order sets them.
    """
    record = case.record
    if record == _NOTHING:
        return record
    left_out = {name: None for name in _DAYS if _outside(getattr(record, name), _latest_for(name, on))}
    service = {
        name: None for name in _SERVICE_DAYS if _outside(getattr(record.service, name), _latest_for(name, on))
    }
    if not left_out and not service:
        return record
    return record.model_copy(update={**left_out, "service": record.service.model_copy(update=service)})


def is_filed(case: Case, on: date | None = None) -> bool:
    """Whether the petition now drafted was recorded as filed, by the day `on` where one is given.

    An amended one has a filing of its own.
    """
    record = case.record if on is None else happened(case, on)
    return known(record.amended_on if known(case.matter.amended) else record.filed_on) is not None


def filed_on(case: Case, on: date) -> date | None:
    """The day the case was begun: its first petition, where the one now drafted amends it."""
    recorded = day(happened(case, on).filed_on)
    if recorded or not known(case.matter.amended):
        return recorded
    first = case.matter.first_filed_on
    return None if _outside(first, on) else day(first)


@once_a_case
def begins_on(case: Case, on: date) -> date | None:
    """The day the case was begun, or is planned to be: the first from `on` on that is right for it.

    That is one on which a clerk is there, and for a divorce one on which somebody has lived here long
    enough. None where a filing was recorded that cannot be counted from, and for an amended petition of
    unknown age.
    """
    begun_before = known(case.record.filed_on) is not None or known(case.matter.amended) is True
    return filed_on(case, on) or (None if begun_before else _right_from(case, on))


def _right_from(case: Case, on: date) -> date:
    from firstpaper.law.measures.residence import ready_from  # noqa: PLC0415  (few answers ask for it)

    opens = opens_on(case, on).day
    ready = ready_from(case, opens)
    return opens_on(case, ready).day if ready and ready > opens else opens


def amended_on(case: Case, on: date) -> date | None:
    """The day of the amended petition, filed or planned; None where there is none, or no day of it."""
    recorded = known(happened(case, on).amended_on)
    if recorded is None and known(case.matter.amended):
        return opens_on(case, on).day
    return day(recorded)


def judged_on(case: Case, on: date) -> date:
    """The day by which the petition now drafted is judged: the one on which it can really be filed.

    A filing planned for a closed day happens on the next open one. Once it is filed, `on` is today.
    """
    return on if is_filed(case) else opens_on(case, on).day


@once_a_case
def opens_on(case: Case, on: date) -> Counted:
    """The first day from `on` on when a clerk takes papers; what comes on a closed day is filed only then."""
    return calendar_of(case).next_court_day_on_or_after(on)


def case_number(case: Case) -> str | None:
    """The number the court gave the case: recorded at the filing, or told for an amended petition.

    It goes on every later paper. A first petition leaves its box empty, whatever was recorded.
    """
    return known(case.record.case_number) or known(case.matter.case_number)


def joint(case: Case) -> bool:
    """Whether both filed the petition together (Fam. Code 2330(a))."""
    return known(case.record.joint) is True


def joint_allowed(filed: date) -> bool:
    """Whether the law had joint petitions on that day (Fam. Code 2342.5(i))."""
    return bool(figure("joint_petition.allowed", filed).value)


def appeared_on(case: Case, on: date) -> date | None:
    """The first day on which the other side took part; a response is taking part (Code Civ. Proc. 1014).

    In a joint petition both take part from the filing on (Fam. Code 2331(b)).
    """
    record = happened(case, on)
    if joint(case):
        return day(record.filed_on)
    return min(filter(None, (day(record.response_filed_on), day(record.appeared_on))), default=None)


def took_part(case: Case, on: date) -> bool:
    """Whether the other side took part, be the day known or not.

    A response that was only told of, for an amended petition, has no day. So it starts no time, but it ends
    what taking part ends on whatever day (Code Civ. Proc. 417.30, 583.220; Cal. Rules of Court, rule 5.62).
    """
    record = happened(case, on)
    if joint(case):
        return known(record.filed_on) is not None
    return responded(case, on) or known(record.appeared_on) is not None


def responded(case: Case, on: date) -> bool:
    """Whether a response is on file, recorded or told, be the day known or not."""
    return known(happened(case, on).response_filed_on) is not None or _told_of_a_response(case) is True


def answered_first(case: Case, on: date) -> bool | None:
    """Whether a response was on file before the petition that is amended now: recorded, or else told.

    One that may have come after the amended petition may be an answer to that, and says nothing here.
    """
    return True if _came_first(case, on, "response_filed_on") else _told_of_a_response(case)


def _told_of_a_response(case: Case) -> bool | None:
    """What was told of the first petition, where this one amends it."""
    return known(case.matter.other_side_answered) if known(case.matter.amended) else None


def took_part_first(case: Case, on: date) -> bool | None:
    """Whether the other side took part before that, by a response or in another way."""
    return True if _came_first(case, on, "appeared_on") else answered_first(case, on)


def _came_first(case: Case, on: date, name: str) -> bool:
    """Whether that day of the record surely lies before the amended petition, if one is recorded."""
    record = happened(case, on)
    came, amended = known(getattr(record, name)), known(record.amended_on)
    return came is not None and (amended is None or came.latest < amended.earliest)


def recorded_days(record: Record) -> Iterator[tuple[str, Day]]:
    """Each day that was recorded, whole or not, with its key."""
    places = [(f"record.{name}", getattr(record, name)) for name in _DAYS]
    places += [(f"record.service.{name}", getattr(record.service, name)) for name in _SERVICE_DAYS]
    for key, fact in places:
        told = known(fact)
        if told is not None:
            yield key, told


def _outside(fact: Day | DontKnow | None, limit: date) -> bool:
    told = known(fact)
    return told is not None and (told.earliest > limit or told.latest < COUNTS_FROM)


def _latest_for(name: str, on: date) -> date:
    ahead = _AHEAD.get(name)
    return day_after(on, ahead) if ahead else on
