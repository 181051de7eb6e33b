"""The last day to respond."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on, happened, joint
from firstpaper.law.measures.response import Paper, ResponseDue, answered, default_from, response_due
from firstpaper.law.measures.service import method, start_key
from firstpaper.law.register import rule
from firstpaper.law.words import target_day
from firstpaper.locale import _


@rule(
    "The last day to respond",
    cite=(
        "Fam. Code 2020",
        "Code Civ. Proc. 412.20(a)(3)",
        "Code Civ. Proc. 12, 12a",
        "Code Civ. Proc. 413.20",
        "Fam. Code 2331(b)",
    ),
    since=date(1999, 1, 1),
    not_modelled="A motion to quash, which gives more time (rule 5.63), and time that you two agreed on.",
)
def due(case: Case, on: date) -> Found | None:
    """The other side has 30 days from the day service is complete to file a response and serve it on you.

    How we count. The day of service is not counted. Day 30 is the last day. If the court is closed on it,
    the law moves it to the next day the court is open. Mailing the papers adds no days.

    An example. The papers are handed over on Tuesday, October 27, 2026. Day 30 is Thursday, November 26:
    Thanksgiving. Friday is a court holiday too, then comes the weekend. The last day is Monday,
    November 30.

    Which day service is complete depends on the way of service. See the pages whose names begin with
    service.

    After the last day the other side can still respond until a default is entered. See
    response.default_from.

    In a joint petition nobody has to respond: filing it counts as taking part, for both of you.
    """
    if joint(case) and known(happened(case, on).revoked_on) is None and filed_on(case, on):
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("No response is needed. In a joint petition you both take part from the filing on."),
            facts=("record.joint", "record.filed_on"),
        )
    owed = response_due(case, on)
    if owed is None or owed.paper is not Paper.PETITION:
        return None
    if answered(case, owed, on) or owed.due.missed(on):  # from then on response.default_from speaks
        return None
    return _found(case, on, owed)


def _found(case: Case, on: date, owed: ResponseDue) -> Found:
    opens, how = default_from(case, on), method(case)
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("The other side can respond until {day}.").format(day=target_day(owed.due)),
        _("Watch your mail. The response may come by ordinary mail."),
        facts=(start_key(how),) if how else (),
        dates={
            "service_complete": owed.served,
            "response_due": owed.due.target,
            "response_due_moved_to": owed.due.rolled,
            **({"default_from": opens.target} if opens else {}),
        },
        steps=owed.due.steps,
        certainty=owed.certainty,
    )
