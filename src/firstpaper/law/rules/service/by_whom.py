"""Whether whoever handed over the papers may do that."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import ServedBy
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import day, joint, took_part
from firstpaper.law.measures.service import server_age, wrong_server
from firstpaper.law.register import rule
from firstpaper.locale import _

BY, AGE, METHOD = "record.service.served_by", "record.service.server_age", "record.service.method"


@rule(
    "Who handed over the papers",
    cite=("Code Civ. Proc. 414.10", "Code Civ. Proc. 417.10(a)"),
    since=date(1970, 7, 1),
    not_modelled="Whether a court would still take a signed FL-117 that the filer mailed alone.",
)
def by_whom(case: Case, on: date) -> Found | None:
    """Papers handed over by you, or by somebody under 18, are not served at all.

    What the law says. A summons may be served by any person who is at least 18 years old and not a party
    to the case. You are a party. So is the other side.

    What follows. Nothing has begun to run: no time to respond, no first day for a default, no six months.
    A default that rests on it can be undone, even after the judgment. Nobody may sign a proof of service
    that says something else than what happened.

    What to do. Have the papers served again, by somebody who may. Then record it anew. It costs little now
    and saves a case later.

    An example. You gave him the papers at the door on December 2, and a friend, who is 34, gives them to
    him on December 9. The time runs from December 9.

    If the other side has taken part in the case, service no longer matters.
    """
    if joint(case) or took_part(case, on) or known(case.record.service.method) is None:
        return None
    if wrong_server(case):
        return _no_service(case)
    return _not_known(case)


def _no_service(case: Case) -> Found:
    myself = known(case.record.service.served_by) is ServedBy.FILER
    age = server_age(day(case.record.service.served_on))
    says = (
        _("You handed over or mailed the papers yourself. In law they are not served, and no time runs.")
        if myself
        else _(
            "Whoever handed over or mailed the papers was under {age}. In law they are not served, and no "
            "time runs."
        ).format(age=age)
    )
    return Found(
        Outcome.NOT_MET,
        Weight.STOP,
        says,
        _(
            "Have them served again by somebody else who is {age} or older. Then record that. File no proof "
            "of this service, and do not ask for a default."
        ).format(age=age),
        facts=(METHOD, BY, AGE),
        mended_by=(METHOD,),
        values={"service.server_age": age},
    )


def _not_known(case: Case) -> Found | None:
    service = case.record.service
    if DONT_KNOW not in (service.served_by, service.server_age):
        return None
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We count from this service, but we do not know if whoever did it may serve papers."),
        _("Ask who it was, and how old. It must be somebody else than you, {age} or older.").format(
            age=server_age(day(service.served_on))
        ),
        facts=(METHOD, BY, AGE),
    )
