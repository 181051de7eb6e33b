"""What has happened since the filing. These facts are recorded as they happen; no question asks for them."""

from datetime import time
from typing import Annotated

from pydantic import Field

from firstpaper.facts.choices import (
    FeeState,
    FinalDisclosure,
    LaterService,
    MailGoes,
    ServedBy,
    ServiceMethod,
    WaiverDenial,
    Who,
)
from firstpaper.facts.count import Age
from firstpaper.facts.day import Day
from firstpaper.facts.matter import Period
from firstpaper.facts.model import Facts
from firstpaper.facts.text import Line, Number
from firstpaper.facts.told import Told, ToldInWords

CalendarId = Annotated[str, Field(pattern="^[a-z]{20}$")]
"""Twenty letters drawn at random. They say nothing about anybody."""


class Attempt(Facts):
    """One try at handing the papers to the other side in person."""

    on: Day
    at: time | None = None


class Closure(Facts):
    """Days on which the whole court was closed on short notice, with a word on why.

    `last` is absent for a single day.
    """

    first: Day
    last: Day | None = None
    why: Line = ""


class Service(Facts):
    """How and when the first papers reached the other side. Each method has days of its own.

    `served_on` is the day the papers were handed over, or left with somebody else; `mailed_on` the day
    they were mailed. `served_by` and `server_age` tell of whoever did that, on that day. `complete_on` is
    for a method whose end a court's order or a treaty sets. `accepted_on` is the day the other side
    signed a waiver and acceptance of service.
    """

    method: Told[ServiceMethod] = None
    served_by: Told[ServedBy] = None
    server_age: Told[Age] = None
    attempts: Told[tuple[Attempt, ...]] = None
    served_on: Told[Day] = None
    mailed_on: Told[Day] = None
    acknowledged_on: Told[Day] = None
    acknowledgment_back_on: Told[Day] = None
    first_published_on: Told[Day] = None
    first_posted_on: Told[Day] = None
    complete_on: Told[Day] = None
    accepted_on: Told[Day] = None
    proof_filed_on: Told[Day] = None


class Record(Facts):
    """The events of the case, from the filing on.

    `case_number` is what the court gave at the filing. It stands apart from `matter.case_number`, which
    goes on a petition: on a first one that box stays empty.

    `joint` says that both filed one petition together; `revoked_on` and `revoked_by` that one of them
    turned it into an ordinary case. `amended_on` is the filing of a later petition that replaces an
    ordinary one. The `amended_served` facts are about whichever of the two later papers there is.
    `support_or_custody_order` is any order that keeps a case from being dismissed for delay (Code
    Civ. Proc. 583.161): support, custody or visits, domestic violence, or a separate trial held.
    `trial_on` is the first day set for the trial. The `agreed_until` days are those that both agreed on in
    writing or in open court (Code Civ. Proc. 583.230, 583.330); `time_left_out` is time that a judge may
    leave out of the times to serve and to finish (583.240, 583.340).
    `court_closed` are days on which the court was shut though no holiday was kept (Code Civ. Proc. 12b).
    One of the six days from `judgment_on` to `reconciled_on` says that the case file is done with; see
    `firstpaper.law.measures.ending`. `amends` and `amended_in` are the names of the case files of the earlier
    and of the newer petition, where one was begun from the other.
    The `summary` facts are about an earlier joint petition for summary dissolution.

    `calendar_id` ties the entries of a calendar to this case, so that a newer calendar file takes the
    place of an older one.
    """

    filed_on: Told[Day] = None
    case_number: ToldInWords[Number] = None
    joint: Told[bool] = None
    fee: Told[FeeState] = None
    waiver_filed_on: Told[Day] = None
    waiver_denied_on: Told[Day] = None
    waiver_denied_why: Told[WaiverDenial] = None
    service: Service = Service.nothing()
    response_filed_on: Told[Day] = None
    appeared_on: Told[Day] = None
    default_asked_on: Told[Day] = None
    disclosure_served_on: Told[Day] = None
    other_disclosure_served_on: Told[Day] = None
    amended_on: Told[Day] = None
    revoked_on: Told[Day] = None
    revoked_by: Told[Who] = None
    amended_served_on: Told[Day] = None
    amended_served_how: Told[LaterService] = None
    mail_goes: Told[MailGoes] = None
    support_or_custody_order: Told[bool] = None
    summary_filed_on: Told[Day] = None
    summary_revoked_on: Told[Day] = None
    trial_on: Told[Day] = None
    final_disclosure: Told[FinalDisclosure] = None
    serve_agreed_until: Told[Day] = None
    trial_agreed_until: Told[Day] = None
    time_left_out: Told[tuple[Period, ...]] = None
    court_closed: Told[tuple[Closure, ...]] = None
    judgment_on: Told[Day] = None
    dismissed_on: Told[Day] = None
    withdrawn_on: Told[Day] = None
    referred_on: Told[Day] = None
    transferred_on: Told[Day] = None
    reconciled_on: Told[Day] = None
    amends: ToldInWords[Number] = None
    amended_in: ToldInWords[Number] = None
    calendar_id: Told[CalendarId] = None
