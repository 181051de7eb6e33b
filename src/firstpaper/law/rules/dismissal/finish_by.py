"""The last day to bring the case to trial."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.dismissal import finish_by as last_day
from firstpaper.law.measures.due import months_after
from firstpaper.law.measures.record import filed_on
from firstpaper.law.register import rule
from firstpaper.law.rules.dismissal._words import only_if_left_out
from firstpaper.law.words import help_now, target_day
from firstpaper.locale import _

SPEAK_AFTER_MONTHS = 36
"""How long after the filing we begin to speak of it. Ours, not the law's."""

FACTS = (
    "record.filed_on",
    "record.support_or_custody_order",
    "record.trial_agreed_until",
    "record.time_left_out",
)


@rule(
    "The last day to bring the case to trial",
    cite=(
        "Code Civ. Proc. 583.310",
        "Code Civ. Proc. 583.360",
        "Code Civ. Proc. 583.161",
        "Code Civ. Proc. 583.330-583.350",
    ),
    since=date(2014, 1, 1),
    not_modelled=(
        "What counts as a trial, whether a judge leaves out the time you told us of, and more time by an "
        "emergency order."
    ),
)
def finish_by(case: Case, on: date) -> Found | None:
    """A case must be brought to trial within five years after the filing, or it is dismissed.

    How we count. The same day, five years later, moved to the next day the court is open.

    An example. Filed on Thursday, February 29, 2024. There is no February 29 in 2029, so the day is
    Wednesday, February 28, 2029.

    What keeps a case alive. It is not dismissed for delay while an order on child support, custody or
    visits has not ended. An order on spousal support does the same. So does an order against contact or
    abuse under the law on domestic violence, while it is in force. So does a separate trial that was held
    on one question.

    When it is longer. You two can agree on more time, in writing or in open court, where it goes into the
    court's notes. Record that day. Time while the court could not act, while a judge had stopped the case, or
    while a trial was not possible does not count. Only a judge can say if yours is such a time. If less than
    six months are left when such a time ends, the case is safe for six months after it.

    What to do. Most cases end by agreement or default, long before. If yours stands still, ask the
    self-help center what the next step is.
    """
    filed = filed_on(case, on)
    if filed is None or on < months_after(filed, SPEAK_AFTER_MONTHS).day:
        return None
    limit = last_day(case, on)
    if limit is None:  # once it is filed, nothing but such an order takes the day away
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("An order of the court keeps this case from being dismissed for delay."),
            _("If that order ends, look at this again."),
            facts=FACTS,
        )
    due = limit.due
    if due.missed(on) and not limit.missed(on):
        return only_if_left_out(limit, FACTS)
    over = due.missed(on)
    says = (
        _("The last day to bring the case to trial was {day}. The court must now dismiss it.")
        if over
        else _("The last day to bring the case to trial is {day}. After it, the court must dismiss it.")
    )
    return Found(
        Outcome.NOT_MET if over else Outcome.CLOSE,
        Weight.GET_ADVICE if over else Weight.LOOK_AGAIN,
        says.format(day=target_day(due)),
        help_now(),
        facts=FACTS,
        dates={"finish_by": due.target, "finish_by_moved_to": due.rolled},
        steps=due.steps,
    )
