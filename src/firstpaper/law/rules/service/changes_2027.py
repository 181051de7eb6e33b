"""Service and its proof on both sides of January 1, 2027."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.record import Record
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import (
    BY_HAND,
    method,
    near,
    new_text_begins,
    proof_needed,
    service_open,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, PROOF
from firstpaper.locale import _

SERVED, MAILED, TRIES = "record.service.served_on", "record.service.mailed_on", "record.service.attempts"


@rule(
    "New rules on service from January 1, 2027",
    cite=(
        "Code Civ. Proc. 417.10(a)(1)-(5) (Stats. 2025, ch. 563)",
        "Code Civ. Proc. 415.20(b)(1)-(2) (Stats. 2025, ch. 563)",
        "Code Civ. Proc. 473.2 (Stats. 2025, ch. 563)",
    ),
    since=date(2026, 1, 1),
    not_modelled="How courts treat service that lies on both sides of the day. The acts do not say.",
)
def changes_2027(case: Case, on: date) -> list[Found]:
    """From January 1, 2027, the proof that papers were served by hand needs photographs of the place.

    What changes. Each time the papers are handed over, left or tried, the server takes a photograph of the
    place. It must carry a stamp that the telephone or camera sets by itself: day, time and position. At a
    home or a business it must show the door, or else the entrance, with words on why not the door. Where
    there is no signal, or where a picture would put the server in danger, a written statement takes its
    place. Three tries must come before papers are left with somebody else. See service.substituted.

    Mail with a form to sign (FL-117) needs no photograph.

    Does it bind a friend who serves? The law says "process server" and does not say if a friend is one.
    So plan for it: your friend should take the pictures too.

    What it can cost. Somebody who says that they were not served can ask the court to undo a judgment by
    default. Then you must prove the service.

    Which text counts? The acts only say that the new text works from January 1, 2027. What happens to
    service before that day with a proof filed after it is not said. A proof filed before that day is not
    bad only because a photograph is missing.

    An example. The papers are handed over on December 30, 2026. File the proof on December 31 and the new
    text does not touch it. If you file it on January 4, 2027, a court could ask for a photograph. So have
    one taken.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    begins = new_text_begins(on)
    if service_open(case, on) and near(begins, on):
        yield _to_be_served(begins, on)
    if method(case) in BY_HAND:
        record = happened(case, on)
        if proof_needed(case, on):
            yield from _proof(record, begins, on)
        if _straddles(record, begins):
            yield _both_sides(begins)


def _to_be_served(begins: date, on: date) -> Found:
    ahead = _(
        "From {day} on the server takes a photograph of the place each time. That is at each try, and when "
        "the papers are handed over or left. Papers left with somebody else need three tries first."
    )
    now = _(
        "The server takes a photograph of the place each time: at each try, and when the papers are handed "
        "over or left. The day, time and position are stamped on it. Papers left with somebody else need "
        "three tries first."
    )
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        ahead.format(day=spell_date(begins)) if on < begins else now,
        _("Tell the person who serves before they start. A friend should take the pictures too."),
        facts=("record.filed_on", METHOD),
        dates={"changes_on": begins},
    )


def _proof(record: Record, begins: date, on: date) -> Iterator[Found]:
    served = day(record.service.served_on)
    if served is None:
        return
    if served >= begins:
        yield _found(
            _(
                "The papers were served after the law changed. The proof needs photographs of the place, or "
                "a written reason for each that is missing."
            ),
            _(
                "Put them behind form FL-115. If neither is there, ask the self-help center before you file "
                "the proof."
            ),
            begins,
        )
    elif on >= begins:
        yield _found(
            _(
                "The papers were served before the law changed, but the proof is filed after it. The acts "
                "do not say if it needs a photograph."
            ),
            _("File the proof now, with a photograph if there is one. Ask the clerk if it is enough."),
            begins,
        )
    elif near(begins, on):
        yield _found(
            _(
                "A proof of service filed before {day} is not bad only because it has no photograph. For one "
                "filed later, the acts do not say."
            ).format(day=spell_date(begins)),
            _("File the proof of service before that day if you can."),
            begins,
        )


def _straddles(record: Record, begins: date) -> bool:
    """Whether some of the tries, the leaving and the mailing lie before the change and some after it."""
    service = record.service
    tried = [each.on.sure for each in known(service.attempts) or ()]
    days = [each for each in (*tried, day(service.served_on), day(service.mailed_on)) if each]
    return bool(days) and min(days) < begins <= max(days)


def _both_sides(begins: date) -> Found:
    return _found(
        _(
            "Some steps of this service lie before {day} and some after. The acts do not say which text "
            "counts, so meet the newer one."
        ).format(day=spell_date(begins)),
        _("Have at least three tries on three days and at three times, with a photograph of each."),
        begins,
    )


def _found(says: str, do: str, begins: date) -> Found:
    facts = (METHOD, SERVED, MAILED, TRIES, PROOF)
    return Found(Outcome.CLOSE, Weight.LOOK_AGAIN, says, do, facts=facts, dates={"changes_on": begins})
