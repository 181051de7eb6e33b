"""Back together after the break."""

from datetime import date

from firstpaper.facts import Case, Day, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import back_together_after
from firstpaper.law.register import rule
from firstpaper.law.words import spell_day
from firstpaper.locale import _

FACTS = ("dates.back_together", "dates.separation_told_on", "dates.separation_acted_on")


@rule(
    "Back together after the separation",
    cite="Fam. Code 70(a)",
    since=date(2017, 1, 1),
    not_modelled="Whether you were truly back together. A night or a trip need not be that.",
)
def reconciliation(case: Case, on: date) -> Found | None:
    """A break is final only if you did not get back together after it.

    What the law asks. The date of separation is the day of a complete and final break (Fam. Code
    70). If you parted and then lived as a couple again, the first break was not final. The last one
    counts, and the marriage is that much longer.

    What we do. If a time back together lasted beyond the dates of separation that you gave, we do
    not use those dates. We ask you for the last break: the words and the acts after which you did
    not get back together. Words from before a time together belong to the break before it, even if
    the acts came later. Times together that ended before both of your dates change nothing.

    What is open. Whether a few days count as being back together depends on what the two of you
    meant. No rule counts the days.

    An example. You parted in March 2020 and lived as a couple again for a week in May 2024. People
    who help with these papers take the break after that week as the one that counts (common
    practice, no source).

    What to do. Look at the dates of separation again. If the dates change what you own or owe, ask
    a lawyer.
    """
    break_day = _first_told(case)
    if not break_day:
        return None
    periods = back_together_after(case, break_day.latest)
    if not periods:
        return _an_earlier_break(case)
    if any(period.end is None for period in periods):
        return Found(
            outcome=Outcome.NOT_MET,
            weight=Weight.GET_ADVICE,
            says=_("By your answers you are back together now. Then there is no final break yet."),
            do=_("If that has ended, tell us when. If not, talk to the self-help center before you file."),
            facts=FACTS,
        )
    last = max((period.end for period in periods if period.end), key=lambda end: end.latest)
    says = _("You were back together until {end}. That is after the separation you gave ({day}).")
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=says.format(end=spell_day(last), day=spell_day(break_day)),
        do=_("Look at both dates of separation again, and give the days of the last break."),
        facts=FACTS,
    )


def _an_earlier_break(case: Case) -> Found | None:
    """That an earlier break does not count, where every time back together ended before the last one."""
    ends = [period.end for period in known(case.dates.back_together) or () if period.end]
    if not ends:
        return None
    ended = max(ends, key=lambda end: end.latest)
    says = _("You were back together until {end}, so an earlier break was not the final one.")
    return Found(
        outcome=Outcome.MET,
        weight=Weight.GOOD_TO_KNOW,
        says=says.format(end=spell_day(ended)),
        do=_("The dates you gave lie after that time, as they should."),
        facts=FACTS,
    )


def _first_told(case: Case) -> Day | None:
    """The earlier of the days told for the words and the acts; sure or not. Both belong to the last break."""
    days = [known(case.dates.separation_told_on), known(case.dates.separation_acted_on)]
    return min((day for day in days if day), key=lambda day: day.latest, default=None)
