"""The time to respond: to the petition, to an amended one, or to the paper that revoked a joint one."""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import Counted, day_after, days_after, short_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import LaterService, Who
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.measures.due import Due, due_at_court
from firstpaper.law.measures.record import day, happened, joint, joint_allowed, responded, took_part
from firstpaper.law.measures.service import certainty, service_complete
from firstpaper.locale import _, _n


class Paper(StrEnum):
    """The paper that has to be answered."""

    PETITION = "petition"
    AMENDED_PETITION = "amended_petition"
    REVOCATION = "revocation"


class ResponseDue(NamedTuple):
    """The last day to respond.

    `who` has to act; None where it was not recorded who revoked. `outer` is the later last day by
    the days that mailing adds: work to `due`, and take `outer` only as the outer limit. `certainty` is
    that of the day of service, or of the number of days where that is less sure.
    """

    paper: Paper
    who: Who | None
    served: date
    due: Due
    certainty: Certainty
    outer: Due | None = None


def response_due(case: Case, on: date) -> ResponseDue | None:
    """The last day to respond to the newest paper that was served; None where no time runs yet.

    A joint petition asks for no response (Fam. Code 2331(b)). An amended petition is answered from
    its own service on (Code Civ. Proc. 472(a)).
    """
    record = happened(case, on)
    served = day(record.amended_served_on)
    if joint(case):
        revoked = known(record.revoked_on) is not None
        return _to_revocation(case, served) if revoked and served and joint_allowed(served) else None
    if known(record.amended_on) is not None:
        return _to_amended(case, served, on) if served else None
    complete = service_complete(case, on)
    if complete is None:
        return None
    counted = complete.then(lambda start: days_after(start, figure("response.days", start).value))
    return ResponseDue(
        Paper.PETITION, Who.RESPONDENT, complete.day, due_at_court(case, counted), certainty(case, on)
    )


def answered(case: Case, owed: ResponseDue, on: date) -> bool:
    """Whether the paper was answered; an amended petition only by a response that came after it.

    After a joint petition was revoked, the recorded response is the paper that answers that.
    """
    if owed.paper is Paper.PETITION:
        return responded(case, on)
    came = known(happened(case, on).response_filed_on)
    return came is not None and (owed.paper is Paper.REVOCATION or came.latest >= owed.served)


def later_paper(case: Case, served: date, days: int) -> Counted:
    """The end of a time that a later paper starts, with the days its manner of service adds.

    Code Civ. Proc. 1013(a), (c). Mail to an address we do not know adds none, so that nobody counts
    on a day the law may not give. The summons and petition are never such a paper (413.20).
    """
    how, goes = known(case.record.amended_served_how), known(case.record.mail_goes)
    if how is LaterService.OVERNIGHT:
        extra: int = figure("service.overnight_extra_court_days", served).value
        court_days = calendar_of(case).add_court_days
        return days_after(served, days).then(lambda reached: court_days(reached, extra))
    if how is LaterService.MAIL and goes is not None:
        added: int = figure("service.mail_extra_days", served).value[goes]
        counted = days_after(served, days + added)
        return Counted(counted.day, (*counted.steps, _mail_adds(added)))
    return days_after(served, days)


def default_from(case: Case, on: date) -> Due | None:
    """The first day on which a default can be asked for: the day after the time to respond ended.

    `rolled` is the first day a clerk can take the request. None where no time runs, where the other
    side took part, and in a joint petition (Cal. Rules of Court, rule 5.74(c)(2)).
    """
    response = response_due(case, on)
    if response is None or joint(case) or took_part(case, on):
        return None
    last = response.due.rolled
    following = day_after(last)
    ended = _("{date}: the time to respond ends").format(date=short_date(last))
    opens = calendar_of(case).next_court_day_on_or_after(following)
    return Due(following, opens.day, (*response.due.steps, ended, *opens.steps))


def can_ask_for_default(case: Case, on: date) -> bool:
    """Whether the time to respond is over in silence, and nobody asked for a default yet."""
    opens = default_from(case, on)
    return opens is not None and opens.rolled <= on and happened(case, on).default_asked_on is None


def _to_revocation(case: Case, served: date) -> ResponseDue:
    law = figure("response.after_revocation_days", served)
    return ResponseDue(
        Paper.REVOCATION,
        _the_other(known(case.record.revoked_by)),
        served,
        due_at_court(case, days_after(served, law.value)),
        law.certainty,
        _outer(case, served, law.value),
    )


def _to_amended(case: Case, served: date, on: date) -> ResponseDue:
    """One who has not taken part is served as with a summons, so mailing adds nothing (413.20)."""
    law = figure("response.amended_days", served)
    return ResponseDue(
        Paper.AMENDED_PETITION,
        Who.RESPONDENT,
        served,
        due_at_court(case, days_after(served, law.value)),
        law.certainty,
        _outer(case, served, law.value) if took_part(case, on) else None,
    )


def _outer(case: Case, served: date, days: int) -> Due | None:
    later = later_paper(case, served, days)
    return due_at_court(case, later) if later.day != day_after(served, days) else None


def _the_other(who: Who | None) -> Who | None:
    return {Who.PETITIONER: Who.RESPONDENT, Who.RESPONDENT: Who.PETITIONER}.get(who) if who else None


def _mail_adds(days: int) -> str:
    return _n("Mailing adds {count} day.", "Mailing adds {count} days.", days).format(count=days)
