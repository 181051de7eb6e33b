"""Which day is the date of separation."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Lives, ToldTo
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import separation as separation_of
from firstpaper.law.measures.marriage import told_each_other
from firstpaper.law.measures.residence import SPOUSES, residence_of
from firstpaper.law.register import rule
from firstpaper.law.words import spaced, spell_day
from firstpaper.locale import _

FACTS = ("dates.separation_told_on", "dates.separation_acted_on")


@rule(
    "The date of separation",
    cite=("Fam. Code 70", "Fam. Code 771(a)"),
    since=date(2017, 1, 1),
    not_modelled="All other evidence. A judge looks at everything and may find another day.",
)
def separation(case: Case, on: date) -> Found | None:
    """You are separated from the day on which one of you has told the other that it is over, and acts on it.

    What the law asks (Fam. Code 70). A complete and final break. Two things show it: one of you told
    the other that the marriage is over, and that same person acts in keeping with it. Both must be
    there. A judge looks at all the evidence.

    How we find a day. We ask for the first time it was said after which you did not get back
    together, and for the day on which the person who said it began to act on it. The later of the two
    is the first day on which both were true, so we offer it. It is an offer: you sign the petition,
    and you decide which date is true. If you are not sure of a day, we show what you told us and
    leave the choice open.

    Said more than once. After a final break people often say it again: in anger, with a mediator, or
    when the papers are handed over. That does not move the date. But a break after which you lived as
    a couple again was not final, and the words spoken before it do not count.

    Told to somebody else, or to nobody. The law speaks of words from one of you to the other. If you
    told a conservator, a relative or a friend, or one of you just left, the day is open. We name none,
    and a lawyer should look at it. The court can still find a day from everything that happened.

    Living in one home does not by itself mean that you are together. The law was written to end two
    older court decisions that said otherwise (Fam. Code 70(c)).

    Why it matters. What each of you earns after that day is that person's own (Fam. Code 771(a)).
    Debts made after it are treated in another way too. And it ends the count of how long the
    marriage lasted.

    An example. On February 3 one of you says that it is over. On February 10 that person moves into
    another room and opens a bank account of their own. In July, with a mediator, that person says it
    again. The date we offer is February 10.

    What to do. Take the dates from a message, a lease or a bank letter if you can. If the other side
    will say another day and money hangs on it, ask a lawyer before you sign.
    """
    apart = separation_of(case)
    if apart.day:
        return _offered(case, apart.day, apart.told, apart.acted)
    if not told_each_other(case):
        return _not_said_to_the_other(case, apart.told, apart.acted)
    if apart.told and apart.told.sure and apart.acted and apart.acted.sure:
        return None  # both days are clear; the page dates.reconciliation says why they do not count
    return _open(case, apart.told, apart.acted)


def _offered(case: Case, day: date, told: Day | None, acted: Day | None) -> Found:
    assert told is not None
    assert acted is not None
    dates = {"separated_on": day, "told_on": told.earliest, "acted_on": acted.earliest}
    if told == acted:
        return Found(
            outcome=Outcome.MET,
            weight=Weight.GOOD_TO_KNOW,
            says=_("The date of separation by your answers is {date}.").format(date=spell_date(day)),
            do=_same_home(case),
            facts=FACTS,
            dates=dates,
        )
    says = _("It was said on {told} and acted on from {acted}. By {date} both had happened.")
    return Found(
        outcome=Outcome.MET,
        weight=Weight.LOOK_AGAIN,
        says=says.format(
            told=spell_date(told.earliest), acted=spell_date(acted.earliest), date=spell_date(day)
        ),
        do=spaced([_later_day(), _same_home(case)]),
        facts=FACTS,
        dates=dates,
    )


def _later_day() -> str:
    return _(
        "We offer the later day. Use it only if the one who said it is the one who acted on it, "
        "and you did not get back together after it."
    )


def _open(case: Case, told: Day | None, acted: Day | None) -> Found:
    asked = all(case.fact(key) is not None for key in FACTS)
    says = _("The date of separation is still open. Said: {told}. Acted on: {acted}.").format(
        told=_spelled(told), acted=_spelled(acted)
    )
    do = (
        _("We do not choose a date for you. Ask the self-help center or a lawyer which day fits the facts.")
        if asked
        else _("Tell us the day it was said, and the day that same person began to act on it.")
    )
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.GET_ADVICE if asked else Weight.LOOK_AGAIN,
        says=says,
        do=spaced([do, _same_home(case)]),
        facts=FACTS,
    )


def _not_said_to_the_other(case: Case, told: Day | None, acted: Day | None) -> Found:
    somebody = known(case.dates.separation_told_to) is ToldTo.SOMEBODY_ELSE
    says = (
        _("The date of separation is open: only somebody else was told that it was over, not one of you.")
        if somebody
        else _("The date of separation is open: nobody said to the other that it was over.")
    )
    days = _("Acted on: {acted}.").format(acted=_spelled(acted))
    if told or somebody:
        days = _("Said: {told}. Acted on: {acted}.").format(told=_spelled(told), acted=_spelled(acted))
    alone = known(case.safety.dangers) and _("Do not contact the other side for this.")
    do = _(
        "The law looks for words from one of you to the other, and for acts. "
        "Have a lawyer look at your facts before you sign a date. The court can still find one."
    )
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=spaced([says, days]),
        do=spaced([do, alone or "", _same_home(case)]),
        facts=(*FACTS, "dates.separation_told_to"),
    )


def _spelled(day: Day | None) -> str:
    if day is None:
        return _("not known")
    return _("{day}, not sure").format(day=spell_day(day)) if day.unsure else spell_day(day)


def _same_home(case: Case) -> str:
    if not any(known(residence_of(case, who).lives) is Lives.SAME_HOME for who in SPOUSES):
        return ""
    return _("Living in the same home does not by itself mean that you are not separated.")
