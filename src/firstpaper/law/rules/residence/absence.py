"""Time away, military postings, and the wish to stay: for a person to weigh."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import MissingDay, add_months
from firstpaper.facts import Case, DontKnow, known
from firstpaper.facts.choices import AWAY, Special, Who
from firstpaper.facts.matter import Period
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    day_that_counts,
    residence_key,
    residence_of,
    spouse_residence,
    who_has_the_time,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import by, tested_for_residence
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

SERVING = {Who.PETITIONER: Special.FILER_IN_MILITARY, Who.RESPONDENT: Special.OTHER_SIDE_IN_MILITARY}


@rule(
    "Time away, military postings, and the wish to stay",
    cite=("Fam. Code 2320(a)", "Gov. Code 244"),
    since=date(2012, 1, 1),
    not_modelled="Everything here. It is flagged for a person and never decided.",
)
def absence(case: Case, on: date) -> tuple[Found, ...]:
    """Living here means that this is your home and you mean to keep it; doubts go to a person.

    What the law says. You live where your home is, and where you go back to when a job or another
    special reason no longer calls you away (Gov. Code 244). You lose it only by going somewhere else
    and meaning to stay there. So time away for work, study, illness or military duty does not end
    your home here, if you meant to come back. In the same way, being sent here under orders does
    not by itself make this your home: In re Marriage of Thornton (1982) 135 Cal.App.3d 500.

    A visa does not decide it either. A person who is here on a visa for visitors can have a home
    here: In re Marriage of Dick (1993) 15 Cal.App.4th 144. We do not ask about it.

    Item 2 of the petition says under oath that somebody "has been a resident". So its box stays open for
    somebody who does not mean to stay, or who cannot say it of their own home.

    What this program does. It looks for long times away in the months that count, for military
    service, and for somebody who does not mean to stay. It does not decide what they mean.

    An example. You have lived here for years, and spent eight weeks of this fall with your sick
    mother in Texas. Most likely your home stayed here. Have it looked at before you file.

    What to do. Show the dates to the court's self-help center or a lawyer. If the other one of you
    meets the rule without such doubts, the case can rest on that.
    """
    if not tested_for_residence(case) or day_that_counts(case, on) != on:
        return ()
    concerns = {who: tuple(_concerns(case, who, on)) for who in who_has_the_time(case, on)}
    if concerns:
        clear = not all(concerns.values())
        return tuple(_doubt(case, who, told, clear=clear) for who, told in concerns.items() if told)
    return tuple(_posted_away(who) for who in SPOUSES if _serves_elsewhere(case, who, on))


def _concerns(case: Case, who: Who, on: date) -> Iterator[tuple[str, str]]:
    """Each doubt about a spouse who otherwise qualifies, with the key of its fact."""
    told = residence_of(case, who)
    if any(_in_the_months_that_count(period, on) for period in known(told.absences) or ()):
        yield residence_key(who, "absences"), _("a long time away")
    if SERVING[who] in (known(case.people.special) or ()):
        yield "people.special", _("military service")
    if known(told.intends_to_stay) is False:
        yield residence_key(who, "intends_to_stay"), _("no plan to stay")
    if isinstance(told.intends_to_stay, DontKnow):
        yield residence_key(who, "intends_to_stay"), _("no clear plan to stay")


def _in_the_months_that_count(period: Period, on: date) -> bool:
    months = figure("residence.state_months", on).value
    since = add_months(on, -months, missing_day=MissingDay.LAST_DAY_OF_MONTH)
    return period.start.earliest <= on and (period.end is None or period.end.latest >= since)


def _doubt(case: Case, who: Who, concerns: tuple[tuple[str, str], ...], *, clear: bool) -> Found:
    says = by(
        who,
        _("You have the time here. But a person should look at this: {concerns}."),
        _("The other side has the time here. But a person should look at this: {concerns}."),
    )
    other = _(
        "The other one of you meets the rule without such doubts, and one is enough. "
        "Mark only the one that you can swear to."
    )
    show = _("Show the dates to the self-help center or a lawyer before you file. We do not decide this.")
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.LOOK_AGAIN if clear else Weight.GET_ADVICE,
        says=says.format(concerns=in_a_row([words for _key, words in concerns])),
        do=other if clear else show,
        facts=tuple(key for key, _words in concerns),
    )


def _serves_elsewhere(case: Case, who: Who, on: date) -> bool:
    return spouse_residence(case, who, on).lives in AWAY and SERVING[who] in (
        known(case.people.special) or ()
    )


def _posted_away(who: Who) -> Found:
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=spaced(
            [
                by(
                    who,
                    _("You serve in the military and live elsewhere now."),
                    _("The other side serves in the military and lives elsewhere now."),
                ),
                _("A home in California is not lost by orders, if it was meant to be kept."),
            ]
        ),
        do=_("Ask a legal assistance office on base, or a lawyer, before you give up on filing here."),
        facts=("people.special", residence_key(who, "lives")),
    )
