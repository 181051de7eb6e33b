"""Six months in California."""

from collections.abc import Sequence
from datetime import date

from firstpaper.counting import ResidenceBand
from firstpaper.facts import Case
from firstpaper.law.finding import Found
from firstpaper.law.measures.residence import SpouseResidence
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._halves import Half, half_by_spouse
from firstpaper.law.rules.residence._words import by
from firstpaper.locale import _


@rule(
    "Six months in California",
    cite=("Fam. Code 2320(a)", "Fam. Code 2322", "Gov. Code 6803, 6804", "Code Civ. Proc. 12"),
    since=date(2012, 1, 1),
    not_modelled="Whether living here was meant to last. Time away, and military postings, go to a person.",
    part_of="residence.same_spouse",
)
def state(case: Case, on: date) -> Sequence[Found]:
    """For a divorce, one of you must have lived in California for six months just before filing.

    What the law asks. The six months must come right before the day the petition is filed. Living
    here means that this is your home and you mean to stay. It does not depend on being a citizen or
    on a visa: In re Marriage of Dick (1993) 15 Cal.App.4th 144. Each of you is looked at alone
    (Fam. Code 2322), even when you share a home. This is one half of the rule. The other half is
    three months in the county, and the same person must meet both.

    How we count. A month is a calendar month, and half a year is 182 days. Where both can be meant,
    the longer counts: Gonzales v. County of Los Angeles (1988) 199 Cal.App.3d 601; Jimenez v. Chavez
    (2023) 97 Cal.App.5th 50. Those cases are about time limits. No published case counts the months
    of residence day by day. So we do not draw one sharp line. Before the first of the two days the
    rule is not met. From the day after the later one it is met. In between it is close, and waiting
    is safer.

    An example. Somebody came to live here on January 15, 2026. Six calendar months end on July 15.
    Day 182 is July 16. The first day and the filing day do not count, so July 17 is the first safe
    day to file.

    If you know only the month or the year, we count from the last day it can be.

    What to do. If the time is too short, wait for the safe day, or look at a legal separation,
    which needs no set time here.
    """
    return tuple(half_by_spouse(case, on, _half))


def _half(spouse: SpouseResidence) -> Half:
    who = spouse.who
    return Half(
        fact="state_since",
        window=spouse.state,
        band=spouse.state_band,
        bands={
            ResidenceBand.MET: by(
                who,
                _("You have lived in California long enough: since {since}."),
                _("The other side has lived in California long enough: since {since}."),
            ),
            ResidenceBand.CLOSE: by(
                who,
                _(
                    "You have lived in California since {since}. "
                    "On {on} it is too close to say if that makes {months} months."
                ),
                _(
                    "The other side has lived in California since {since}. "
                    "On {on} it is too close to say if that makes {months} months."
                ),
            ),
            ResidenceBand.NOT_MET: by(
                who,
                _("You have lived in California since {since}. On {on} that is less than {months} months."),
                _(
                    "The other side has lived in California since {since}. "
                    "On {on} that is less than {months} months."
                ),
            ),
        },
        elsewhere=by(
            who,
            _("You live outside California. So your own time does not count here."),
            _("The other side lives outside California. So their time does not count here."),
        ),
        unknown=by(
            who,
            _("We do not know since when you have lived in California."),
            _("We do not know since when the other side has lived in California."),
        ),
        ask=by(
            who,
            _("Tell us the day you came to live in California. The month or the year helps too."),
            _("Tell us the day the other side came to live in California. The month or the year helps too."),
        ),
    )
