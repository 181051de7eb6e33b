"""Three months in the county of filing."""

from collections.abc import Sequence
from datetime import date

from firstpaper.counting import ResidenceBand
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Who
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import SPOUSES, SpouseResidence, residence_key, residence_of
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._halves import Half, half_by_spouse
from firstpaper.law.rules.residence._words import by
from firstpaper.locale import _


@rule(
    "Three months in the county",
    cite=("Fam. Code 2320(a)", "Fam. Code 2322", "Gov. Code 6803, 6804", "Code Civ. Proc. 12"),
    since=date(2012, 1, 1),
    not_modelled="Whether living there was meant to last. Time away, and military postings, go to a person.",
    part_of="residence.same_spouse",
)
def county(case: Case, on: date) -> Sequence[Found]:
    """For a divorce, one of you must have lived in the county of filing for three months just before.

    What the law asks. The county is the one whose court you file in. The three months must come
    right before the day the petition is filed. Time in another county does not count, and neither
    does time in this county that ended when somebody moved away. This is one half of the rule. The
    same person must also have lived in California for six months.

    How we count. Three calendar months, or 91 days, whichever is longer. The law calls 91 days a
    quarter of a year (Gov. Code 6803). For six months, courts take the longer count: Gonzales v.
    County of Los Angeles (1988) 199 Cal.App.3d 601. Doing the same for three months is our careful
    reading. No published case says so. Between the two counts we say "close", and waiting is safer.

    An example. Somebody came to live in the county on January 31, 2026. Three calendar months end on
    April 30, which is day 89. Day 91 is May 2. The first day and the filing day do not count, so
    May 3 is the first safe day. It is a Sunday, and the court opens on Monday, May 4.

    If the day you gave for the county is before the day you gave for California, one of the two is
    wrong, for the county lies in California. Look at both again.

    What to do. Wait for the safe day. If you lived in another California county before, read the
    page residence.moved_county first.
    """
    mistaken = (found for who in SPOUSES if (found := _county_before_state(case, who)))
    return (*mistaken, *half_by_spouse(case, on, _half))


def _county_before_state(case: Case, who: Who) -> Found | None:
    told = residence_of(case, who)
    in_state, in_county = known(told.state_since), known(told.county_since)
    if in_state is None or in_county is None or in_county.latest >= in_state.earliest:
        return None
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.LOOK_AGAIN,
        says=by(
            who,
            _("By your answers you came to this county before you came to California. Both cannot be right."),
            _(
                "By your answers the other side came to this county before they came to California. "
                "Both cannot be right."
            ),
        ),
        do=_("Look at both days again."),
        facts=(residence_key(who, "state_since"), residence_key(who, "county_since")),
    )


def _half(spouse: SpouseResidence) -> Half:
    who = spouse.who
    return Half(
        fact="county_since",
        window=spouse.county,
        band=spouse.county_band,
        bands={
            ResidenceBand.MET: by(
                who,
                _("You have lived in {county} long enough: since {since}."),
                _("The other side has lived in {county} long enough: since {since}."),
            ),
            ResidenceBand.CLOSE: by(
                who,
                _(
                    "You have lived in {county} since {since}. "
                    "On {on} it is too close to say if that makes {months} months."
                ),
                _(
                    "The other side has lived in {county} since {since}. "
                    "On {on} it is too close to say if that makes {months} months."
                ),
            ),
            ResidenceBand.NOT_MET: by(
                who,
                _("You have lived in {county} since {since}. On {on} that is less than {months} months."),
                _(
                    "The other side has lived in {county} since {since}. "
                    "On {on} that is less than {months} months."
                ),
            ),
        },
        elsewhere=by(
            who,
            _("You do not live in {county}. So your own time does not count there."),
            _("The other side does not live in {county}. So their time does not count there."),
        ),
        unknown=by(
            who,
            _("We do not know if you live in the county where you file, and since when."),
            _("We do not know if the other side lives in the county where you file, and since when."),
        ),
        ask=by(
            who,
            _("Tell us where you live now, and the day you came to live in that county."),
            _("Tell us where the other side lives now, and the day they came to live in that county."),
        ),
    )
