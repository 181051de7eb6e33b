"""The dates that follow from the filing and from what was recorded since, in one list.

Before the filing is recorded, the days are counted from the planned filing day and marked as
planned. What has been done is left out; what has been missed stays in, with its day.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from firstpaper.counting import short_date
from firstpaper.facts import Case, known
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureNotInForce
from firstpaper.law.measures import disclosure, dismissal, fees, response, service, waiting
from firstpaper.law.measures.due import Due, unmoved
from firstpaper.law.measures.record import filed_on, happened
from firstpaper.locale import _


class Meaning(StrEnum):
    """What a date is: a last day to act, a first day on which something can be, or a day of the court."""

    LAST_DAY = "last_day"
    FIRST_DAY = "first_day"
    COURT_DAY = "court_day"


class Actor(StrEnum):
    """Who has to act, or may."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    EITHER = "either"
    BOTH = "both"
    COURT = "court"


@dataclass(frozen=True, slots=True)
class Deadline:
    """One date of the case.

    `target` is the day to aim for; `rolled` the court day that the law moves it to where the court is
    closed. For a first day, `rolled` is the first day a clerk can take a paper. `if_missed` says what
    follows from doing nothing, and `rule` is the id of the rule that explains the day. `planned` is
    true while the day hangs on a filing that is only planned.
    """

    key: str
    rule: str
    title: str
    meaning: Meaning
    target: date
    rolled: date
    steps: tuple[str, ...]
    who: Actor
    if_missed: str
    authority: tuple[str, ...]
    certainty: Certainty
    planned: bool

    def missed(self, on: date) -> bool:
        """Whether a last day to act has passed on the day `on`, however it is counted."""
        return self.meaning is Meaning.LAST_DAY and on > self.rolled


def deadlines(case: Case, on: date) -> tuple[Deadline, ...]:
    """The dates still open on the day `on`, in their order.

    A date that needs a number which no law known to us sets on its day is left out; the rule about it
    says that it could not be checked.
    """
    found = (_deadline(case, on, counted) for counted in _counted(case, on))
    return tuple(sorted(found, key=lambda each: (each.target, each.key)))


@dataclass(frozen=True, slots=True)
class _Counted:
    """A date that was counted, with what differs from case to case."""

    key: str
    due: Due
    who: Actor | None = None
    certainty: Certainty | None = None
    also: str = ""


@dataclass(frozen=True, slots=True)
class _Law:
    """What is the same in every case for the dates of one key. `rule` is left out where it is the key."""

    authority: tuple[str, ...]
    who: Actor = Actor.PETITIONER
    meaning: Meaning = Meaning.LAST_DAY
    certainty: Certainty = Certainty.STATUTE
    rule: str = ""


_LAW = {
    "fees.waiver_deemed": _Law(
        ("Cal. Rules of Court, rule 3.53",), Actor.COURT, Meaning.COURT_DAY, Certainty.COURT
    ),
    "fees.waiver_denied": _Law(("Cal. Rules of Court, rule 5.43(a)",), certainty=Certainty.COURT),
    "service.acknowledgment": _Law(("Code Civ. Proc. 415.30(d)",), Actor.RESPONDENT),
    "response.petition": _Law(
        ("Fam. Code 2020", "Code Civ. Proc. 12, 12a"), Actor.RESPONDENT, rule="response.due"
    ),
    "response.amended_petition": _Law(
        ("Code Civ. Proc. 471.5(a), 472(a)",), Actor.RESPONDENT, rule="response.amended"
    ),
    "response.revocation": _Law(
        ("Fam. Code 2342.5(b)(2)(A)", "Code Civ. Proc. 1013"), Actor.EITHER, rule="response.amended"
    ),
    "response.default_from": _Law(
        ("Code Civ. Proc. 585, 587", "Fam. Code 2335.5"), meaning=Meaning.FIRST_DAY
    ),
    "disclosure.petitioner": _Law(("Fam. Code 2104(f)",), rule="disclosure.due"),
    "disclosure.respondent": _Law(("Fam. Code 2104(f)",), Actor.RESPONDENT, rule="disclosure.due"),
    "disclosure.final": _Law(("Fam. Code 2105(a)", "Code Civ. Proc. 12c(a)"), Actor.BOTH),
    "waiting.earliest_end": _Law(
        ("Fam. Code 2339(a)", "Fam. Code 2340"), Actor.COURT, meaning=Meaning.FIRST_DAY
    ),
    "waiting.summary_credit": _Law(
        ("Fam. Code 2342",), Actor.COURT, Meaning.FIRST_DAY, Certainty.UNCONFIRMED
    ),
    "dismissal.review": _Law(
        ("Cal. Rules of Court, rule 5.83(c)(2)",), Actor.COURT, Meaning.COURT_DAY, Certainty.COURT
    ),
    "dismissal.unserved": _Law(("Code Civ. Proc. 583.420(a)(1)",), rule="dismissal.optional"),
    "dismissal.serve_by": _Law(("Code Civ. Proc. 583.210(a)", "Code Civ. Proc. 583.250")),
    "dismissal.prove_by": _Law(("Code Civ. Proc. 583.210(b)", "Code Civ. Proc. 583.250")),
    "dismissal.untried": _Law(("Code Civ. Proc. 583.420(a)(2)(A)",), rule="dismissal.optional"),
    "dismissal.finish_by": _Law(("Code Civ. Proc. 583.310", "Code Civ. Proc. 583.360")),
}

_FROM_FILING = ("dismissal.", "disclosure.")


def _words(key: str) -> tuple[str, str]:
    """The title of a date, and what follows from doing nothing."""
    a_judge_may = _("From the next day on, a judge may dismiss the case.")
    the_court_must = _("The court must dismiss the case.")
    disclose = _("Serve the declaration of disclosure on the other side")
    still_owed = _("It is still owed. A judgment without it can be set aside.")
    return {
        "fees.waiver_deemed": (
            _("The court acts on the fee waiver request by this day"),
            _("If you hear nothing by the end of this day, the waiver counts as granted."),
        ),
        "fees.waiver_denied": (
            _("Pay the fee, ask again with a complete form, or ask for a hearing"),
            _("The clerk can void your petition."),
        ),
        "service.acknowledgment": (
            _("The form that says the papers came is signed and sent back"),
            _("Nobody was served this way. Have the papers served in another way."),
        ),
        "response.petition": (
            _("Last day to file and serve a response"),
            _("The petitioner can ask for a default. Until then a response can still be filed."),
        ),
        "response.amended_petition": (
            _("Last day to answer the amended petition"),
            _("If no response was filed at all, the petitioner can ask for a default."),
        ),
        "response.revocation": (
            _("Last day to file and serve an amended paper after the joint petition was revoked"),
            _("Ask the court what follows. Both of you had taken part in the case."),
        ),
        "response.default_from": (
            _("First day to ask for a default"),
            _("Until you ask, the other side can still respond."),
        ),
        "disclosure.petitioner": (disclose, still_owed),
        "disclosure.respondent": (
            _("The other side serves its declaration of disclosure on you"),
            still_owed,
        ),
        "disclosure.final": (
            _("Last day before the trial to serve your final declarations of disclosure"),
            still_owed,
        ),
        "waiting.earliest_end": (
            _("The marriage or partnership cannot end before this day"),
            _("Nothing ends by itself. A judge must sign a judgment that names the day."),
        ),
        "waiting.summary_credit": (
            _("Perhaps the marriage can end from this day, with credit for the summary case"),
            _("How the credit is counted is not settled. Ask the court."),
        ),
        "dismissal.review": (
            _("By about this day the court looks at how the case goes"),
            _("Your court may call you in. Read its mail."),
        ),
        "dismissal.unserved": (
            _("Serve the papers by this day, so that no judge may end the case"),
            a_judge_may,
        ),
        "dismissal.serve_by": (_("Last day to serve the papers"), the_court_must),
        "dismissal.prove_by": (_("Last day to file the proof of service"), the_court_must),
        "dismissal.untried": (_("Finish the case by this day, so that no judge may end it"), a_judge_may),
        "dismissal.finish_by": (_("Last day to bring the case to trial"), the_court_must),
    }[key]


def _deadline(case: Case, on: date, counted: _Counted) -> Deadline:
    law = _LAW[counted.key]
    title, if_missed = _words(counted.key)
    return Deadline(
        key=counted.key,
        rule=law.rule or counted.key,
        title=title,
        meaning=law.meaning,
        target=counted.due.target,
        rolled=counted.due.rolled,
        steps=counted.due.steps,
        who=counted.who or law.who,
        if_missed=f"{if_missed} {counted.also}".strip(),
        authority=law.authority,
        certainty=counted.certainty or law.certainty,
        planned=counted.key.startswith(_FROM_FILING) and filed_on(case, on) is None,
    )


def _counted(case: Case, on: date) -> Iterator[_Counted]:
    for count in (_fees, _service, _response, _default, _disclosure, _end, _summary_credit, _delay):
        try:
            yield from count(case, on)
        except FigureNotInForce:
            continue


def _fees(case: Case, on: date) -> Iterator[_Counted]:
    deemed = fees.waiver_deemed(case, on)
    if deemed and on <= deemed.day:
        yield _Counted("fees.waiver_deemed", unmoved(deemed))
    if denied := fees.after_denial(case, on):
        yield _Counted("fees.waiver_denied", denied)


def _service(case: Case, on: date) -> Iterator[_Counted]:
    if back := service.acknowledgment_back_by(case, on):
        yield _Counted("service.acknowledgment", back)


def _response(case: Case, on: date) -> Iterator[_Counted]:
    owed = response.response_due(case, on)
    if owed and not response.answered(case, owed, on):
        yield _Counted(
            f"response.{owed.paper}",
            owed.due,
            Actor(owed.who) if owed.who else None,
            owed.certainty,
            _outer_limit(owed.outer),
        )


def _default(case: Case, on: date) -> Iterator[_Counted]:
    opens = response.default_from(case, on)
    if opens and known(happened(case, on).default_asked_on) is None:
        yield _Counted("response.default_from", opens, certainty=service.certainty(case, on))


def _disclosure(case: Case, on: date) -> Iterator[_Counted]:
    owed = (disclosure.petitioner_disclosure(case, on), disclosure.respondent_disclosure(case, on))
    yield from (
        _Counted(f"disclosure.{each.who}", each.due, certainty=each.certainty) for each in owed if each
    )
    if final := disclosure.final_by(case, on):
        yield _Counted("disclosure.final", final.due, certainty=final.certainty)


def _end(case: Case, on: date) -> Iterator[_Counted]:
    running = waiting.clock(case, on)
    if running is None or not waiting.has_waiting(case):
        return
    end = waiting.earliest_end(running.start)
    steps = running.steps + end.steps
    certainty = service.certainty(case, on) if running.why is waiting.Starts.SERVICE else None
    yield _Counted(
        "waiting.earliest_end", Due(end.day, end.day, steps), certainty=certainty, also=_longer(end)
    )


def _summary_credit(case: Case, on: date) -> Iterator[_Counted]:
    if waiting.has_waiting(case) and (credited := waiting.credited_end(case, on)):
        yield _Counted("waiting.summary_credit", unmoved(credited))


def _delay(case: Case, on: date) -> Iterator[_Counted]:
    days = {
        "dismissal.review": dismissal.next_review(case, on),
        "dismissal.unserved": dismissal.unserved_until(case, on),
        "dismissal.serve_by": dismissal.serve_by(case, on),
        "dismissal.prove_by": dismissal.prove_by(case, on),
        "dismissal.untried": dismissal.untried_until(case, on),
        "dismissal.finish_by": dismissal.finish_by(case, on),
    }
    for key, found in days.items():
        if isinstance(found, dismissal.Limit):
            yield _Counted(key, found.due, also=_if_left_out(found.outer))
        elif found:
            yield _Counted(key, found)


def _outer_limit(outer: Due | None) -> str:
    if outer is None:
        return ""
    return _("Mailing moves the outer limit to {day}. Do not count on it.").format(
        day=short_date(outer.rolled)
    )


def _if_left_out(outer: Due | None) -> str:
    if outer is None:
        return ""
    return _("If a judge leaves out the time you told us of, it is {day}. Do not count on it.").format(
        day=short_date(outer.rolled)
    )


def _longer(end: waiting.EarliestEnd) -> str:
    if end.longer_day == end.day:
        return ""
    longer = _("A court that counts {days} days would say {day}.")
    return longer.format(days=end.longer_days, day=short_date(end.longer_day))
