"""Events of the case that cannot have happened in the order recorded."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import ServiceMethod
from firstpaper.intake.fact_names import named
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.court import COUNTS_FROM
from firstpaper.law.measures.record import day, joint, joint_allowed, recorded_days
from firstpaper.law.register import rule
from firstpaper.law.words import spell_day
from firstpaper.locale import _

FILED, REVOKED, AMENDED = "record.filed_on", "record.revoked_on", "record.amended_on"
SERVED, MAILED = "record.service.served_on", "record.service.mailed_on"
SIGNED, BACK = "record.service.acknowledged_on", "record.service.acknowledgment_back_on"
PRINTED, POSTED = "record.service.first_published_on", "record.service.first_posted_on"
COMPLETE, ACCEPTED = "record.service.complete_on", "record.service.accepted_on"
PROOF, RESPONSE, APPEARED = "record.service.proof_filed_on", "record.response_filed_on", "record.appeared_on"
DEFAULT, AMENDED_SERVED = "record.default_asked_on", "record.amended_served_on"
SUMMARY, SUMMARY_REVOKED = "record.summary_filed_on", "record.summary_revoked_on"
ASKED, DENIED = "record.waiver_filed_on", "record.waiver_denied_on"
TRIAL = "record.trial_on"
JUDGMENT, DISMISSED, MOVED = "record.judgment_on", "record.dismissed_on", "record.transferred_on"
TRIES, METHOD, JOINT = "record.service.attempts", "record.service.method", "record.joint"

AFTER_FILING = (
    SERVED, MAILED, SIGNED, BACK, PRINTED, POSTED, COMPLETE, ACCEPTED, PROOF, RESPONSE, APPEARED, DEFAULT,
    REVOKED, AMENDED, AMENDED_SERVED, TRIAL, JUDGMENT, DISMISSED, MOVED,
)  # fmt: skip

ORDER = (
    *((FILED, later) for later in AFTER_FILING),
    (MAILED, SIGNED),
    (SIGNED, BACK),
    (SERVED, PROOF),
    (MAILED, PROOF),
    (PRINTED, PROOF),
    (POSTED, PROOF),
    (SERVED, DEFAULT),
    (MAILED, DEFAULT),
    (AMENDED, AMENDED_SERVED),
    (REVOKED, AMENDED_SERVED),
    (ASKED, DENIED),
    (SUMMARY, SUMMARY_REVOKED),
    (SUMMARY_REVOKED, FILED),
)
"""Pairs of events, the first of which cannot come after the second."""


@rule(
    "Events of the case in a possible order",
    cite=("Fam. Code 2330", "Fam. Code 2331", "Code Civ. Proc. 415.10-415.50", "Code Civ. Proc. 417.30"),
    since=date(1994, 1, 1),
    not_modelled="Events that are possible but unlikely, and which of two dates is the wrong one.",
)
def record_order(case: Case, on: date) -> list[Found]:
    """A paper is filed before it is served, and served before its service is proved.

    What we check. Nothing is served, answered or asked for before the petition is filed. A copy is mailed
    after the papers were left. A form is signed after it was mailed, and comes back after it was signed.
    The proof of service comes after the service. A default is asked for after the service. An event that
    lies ahead of the day we look from has not happened.

    We also say so if what must have come first was not recorded: the filing, or the service that a proof
    is about. That is no mistake. It only leaves the dates uncounted.

    Two events on the same day are possible. If you gave only a month or a year, we speak up only when no
    day in it would fit. But a date that is not whole starts no count, so we ask for it.

    One thing looks wrong and is not. The other side can file a response before anybody served them. It
    counts as taking part. We only ask you to look again.

    An example. Filed on November 25, 2026, and handed over on November 5: one of the two is a slip.

    What to do. Look at the stamps on your papers, and correct the date. Every count depends on it.
    """
    return [
        *_order(case),
        *_without_filing(case),
        *_without_service(case),
        *_response_first(case),
        *_joint(case),
        *_ahead(case, on),
        *_long_ago(case),
        *_in_part(case),
    ]


def _order(case: Case) -> Iterator[Found]:
    days = dict(recorded_days(case.record))
    for first, second in (*ORDER, *_of_method(case)):
        if first in days and second in days and days[second].latest < days[first].earliest:
            yield _impossible(first, days[first], second, days[second])
    filed = days.get(FILED)
    tries = [each.on for each in known(case.record.service.attempts) or ()]
    early = [each for each in tries if filed and each.latest < filed.earliest]
    if filed and early:
        yield _impossible(FILED, filed, TRIES, early[0])


def _of_method(case: Case) -> tuple[tuple[str, str], ...]:
    """Left before it was mailed: only where papers are left and then mailed."""
    if known(case.record.service.method) is ServiceMethod.SUBSTITUTED:
        return ((SERVED, MAILED),)
    return ()


def _impossible(first: str, first_day: Day, second: str, second_day: Day) -> Found:
    says = _("This cannot be: {second} ({second_day}) came before {first} ({first_day}).")
    return Found(
        Outcome.NOT_MET,
        Weight.STOP,
        says.format(
            first=named(first),
            first_day=spell_day(first_day),
            second=named(second),
            second_day=spell_day(second_day),
        ),
        _("One of these dates is wrong. Look at the stamps on your papers and correct it."),
        facts=(first, second),
        mended_by=(first, second),
    )


def _without_filing(case: Case) -> Iterator[Found]:
    """Something that follows the filing, while neither this filing nor an earlier one was told."""
    days = dict(recorded_days(case.record))
    later = next((key for key in AFTER_FILING if key in days), None)
    if later is None or FILED in days or known(case.matter.first_filed_on) is not None:
        return
    yield _first_missing(later, days[later], FILED)


def _without_service(case: Case) -> Iterator[Found]:
    days = dict(recorded_days(case.record))
    if PROOF in days and known(case.record.service.method) is None:
        yield _first_missing(PROOF, days[PROOF], METHOD)


def _first_missing(later: str, told: Day, missing: str) -> Found:
    says = _("You recorded {later} ({day}), but not {missing}. The dates that count from it are missing.")
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        says.format(later=named(later), day=spell_day(told), missing=named(missing)),
        _("Record that too. The day is stamped or written on your papers."),
        facts=(missing, later),
    )


def _response_first(case: Case) -> Iterator[Found]:
    days = dict(recorded_days(case.record))
    response, served = days.get(RESPONSE), days.get(SERVED) or days.get(MAILED)
    if response and served and response.latest < served.earliest:
        yield Found(
            Outcome.CLOSE,
            Weight.LOOK_AGAIN,
            _("The response ({response}) came before the papers were served ({served}). That can be.").format(
                response=spell_day(response), served=spell_day(served)
            ),
            _("If both dates are right, do nothing. The response counts as taking part in the case."),
            facts=(RESPONSE, SERVED, MAILED),
        )


def _joint(case: Case) -> Iterator[Found]:
    filed = day(case.record.filed_on)
    if joint(case) and filed and filed >= COUNTS_FROM and not joint_allowed(filed):
        yield Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _("You recorded a joint petition filed on {day}. The law had no joint petitions yet.").format(
                day=spell_date(filed)
            ),
            _("Correct the date, or record that you filed alone. A summary dissolution is another thing."),
            facts=(JOINT, FILED),
            mended_by=(FILED, JOINT),
        )
    if joint(case) and known(case.record.service.method) is not None:
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("A joint petition is not served, but a way of service was recorded."),
            _("If you filed alone, record that. If you filed together, take the service out."),
            facts=(JOINT, METHOD),
        )
    if known(case.record.revoked_on) is not None and not joint(case):
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("Only a joint petition can be revoked, but the record does not say that you filed together."),
            _("If you filed together, record that. If not, take the revoking out."),
            facts=(JOINT, REVOKED),
        )


def _ahead(case: Case, on: date) -> Iterator[Found]:
    for key, told in recorded_days(case.record):
        if told.earliest > on and key not in (COMPLETE, TRIAL):
            yield Found(
                Outcome.NOT_MET,
                Weight.LOOK_AGAIN,
                _("This lies ahead, so we do not count it yet: {event} ({day}).").format(
                    event=named(key), day=spell_day(told)
                ),
                _("If it has happened, correct the date. Today we take to be {on}.").format(
                    on=spell_date(on)
                ),
                facts=(key,),
            )


def _long_ago(case: Case) -> Iterator[Found]:
    for key, told in recorded_days(case.record):
        if told.latest < COUNTS_FROM:
            yield Found(
                Outcome.FOR_A_LAWYER,
                Weight.LOOK_AGAIN,
                _(
                    "This is too long ago for us to count from: {event} ({day}). We count from {first} on."
                ).format(event=named(key), day=spell_day(told), first=spell_date(COUNTS_FROM)),
                _("If the date is right, ask the self-help center how your case stands."),
                facts=(key,),
            )


def _in_part(case: Case) -> Iterator[Found]:
    for key, told in recorded_days(case.record):
        if told.sure is None:
            yield Found(
                Outcome.NEED_TO_KNOW,
                Weight.LOOK_AGAIN,
                _("We cannot count from a day that is not whole and sure: {event} ({day}).").format(
                    event=named(key), day=spell_day(told)
                ),
                _("Look at the stamp on the paper, or ask the clerk, and record the whole day."),
                facts=(key,),
            )
