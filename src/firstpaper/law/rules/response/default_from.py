"""From when a default can be asked for."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.record import TAKING_PART, day, happened, joint, responded, took_part
from firstpaper.law.measures.response import default_from as first_day
from firstpaper.law.measures.response import response_due
from firstpaper.law.measures.service import certainty, lacks_proof
from firstpaper.law.register import rule
from firstpaper.law.words import help_now
from firstpaper.locale import _

ASKED, PROOF = "record.default_asked_on", "record.service.proof_filed_on"


@rule(
    "When a default can be asked for",
    cite=(
        "Code Civ. Proc. 585",
        "Code Civ. Proc. 587",
        "Fam. Code 2335.5",
        "Cal. Rules of Court, rule 5.402",
        "Cal. Rules of Court, rule 5.74(c)(2)",
    ),
    since=date(2014, 1, 1),
    not_modelled="What else the default papers need, and how a default is undone.",
)
def default_from(case: Case, on: date) -> Found | None:
    """If the time to respond has run out in silence, you can ask for a default from the next day on.

    What a default means. The other side may no longer answer, and the judge decides on your papers alone.
    It is not a judgment yet. And the judge can give no more than the petition asked for.

    How we count. The last day to respond is counted first, closed court days and all. The day after it is
    the first day. If the court is closed, the first day on which a clerk can take the request.

    An example. The last day to respond is Monday, November 30, 2026. From Tuesday, December 1 you can
    file form FL-165.

    What it needs. The proof of service on file. The other side's last known address, to which a copy is
    mailed; "unknown" will not do unless the summons was published. A stamped envelope for the clerk. A
    statement on military service: see people.military.

    Until the default is entered, the other side can still respond. Once a response is filed, there is no
    default. In a joint petition you both have taken part, so ask before you try.
    """
    record = happened(case, on)
    asked, opens = day(record.default_asked_on), first_day(case, on)
    if known(record.default_asked_on) is not None:
        return _asked(case, on, asked, opens)
    if opens is None:
        return _took_part_otherwise(case, on)
    return _open(case, on, opens) if on >= opens.target else None


def _open(case: Case, on: date, opens: Due) -> Found:
    proved = not lacks_proof(case, on)
    return Found(
        Outcome.MET if proved else Outcome.CLOSE,
        Weight.GOOD_TO_KNOW if proved else Weight.LOOK_AGAIN,
        _says(proved=proved).format(day=spell_date(opens.rolled)),
        _("The form is FL-165. A copy is mailed to the other side, and the clerk needs a stamped envelope.")
        if proved
        else _("File the proof of service first. Without it there is no default."),
        facts=(*TAKING_PART, PROOF),
        dates={"default_from": opens.target, "default_from_court_day": opens.rolled},
        steps=opens.steps,
        certainty=certainty(case, on),
    )


def _says(*, proved: bool) -> str:
    if proved:
        return _(
            "No response is recorded. Since {day} you can ask for a default. Until then they can still "
            "respond."
        )
    return _(
        "No response is recorded, but you cannot ask for a default before a proof of service is on file. The "
        "first day for it was {day}. Until one is entered they can still respond."
    )


def _asked(case: Case, on: date, asked: date | None, opens: Due | None) -> Found | None:
    if joint(case) or took_part(case, on):
        return _found(
            _(
                "You asked for a default, but the other side has taken part in the case. A clerk may refuse "
                "it."
            )
        )
    if opens and asked and asked < opens.target:
        says = _(
            "You asked for a default before the time to respond was over. It can be asked for from {day}."
        )
        return _found(says.format(day=spell_date(opens.rolled)))
    if opens is None:
        return _found(
            _("You asked for a default, but we know of no service from which the time to respond ran.")
        )
    return None


def _took_part_otherwise(case: Case, on: date) -> Found | None:
    """The other side appeared without a response, and the time to respond is over."""
    owed = response_due(case, on)
    if joint(case) or owed is None or responded(case, on) or not owed.due.missed(on):
        return None
    return _found(_("The time to respond is over, and the other side took part without a response."))


def _found(says: str) -> Found:
    return Found(Outcome.FOR_A_LAWYER, Weight.GET_ADVICE, says, help_now(), facts=(ASKED, *TAKING_PART))
