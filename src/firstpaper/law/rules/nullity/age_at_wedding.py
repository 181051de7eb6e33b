"""Under 18 on the wedding day."""

from datetime import date

from firstpaper.counting import anniversary, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import NullityGround
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import first_union
from firstpaper.law.measures.nullity import grounds, over_age
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open
from firstpaper.law.words import help_first, leap_birthday, spaced
from firstpaper.locale import _

BORN = "grounds.minor_born_on"


@rule(
    "Under 18 on the wedding day",
    cite="Fam. Code 2210(a)",
    since=date(2019, 1, 1),
    not_modelled="Marriages made under the law of another state or country.",
)
def age_at_wedding(case: Case, on: date) -> Found | None:
    """For the ground of under age, the spouse must have been under 18 on the wedding day.

    It is the age on the day of the wedding that counts, not the age on the day the two met or began to
    live together. A person turns 18 on the 18th birthday, so a wedding on that birthday is not under
    age.

    Example: born on June 10, 2005 and married on August 1, 2022. That is 17 years old: under age.
    Married on June 10, 2023: exactly 18, and not under age.

    Where a date is known only in part, we say so and do not guess.
    """
    if NullityGround.UNDER_AGE not in grounds(case):
        return None
    key, wedding = first_union(case)
    born = known(case.grounds.minor_born_on)
    if born is None or wedding is None:
        return None
    of_age = figure("nullity.age_of_consent", on).value
    over = over_age(case, on)
    facts = (BORN, key)
    if over is False:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("By your dates, the spouse in question was under {age} on the wedding day.").format(age=of_age),
            facts=facts,
        )
    if over:
        birthday = anniversary(born.earliest, of_age)
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE if born.unsure or wedding.unsure else Weight.STOP,
            spaced((_of_age_already(of_age), leap_birthday(born))),
            _("Check both dates. If they are right, leave this ground out. {open} {help}").format(
                open=stays_open(case, NullityGround.UNDER_AGE, on), help=help_first()
            ),
            facts=facts,
            mended_by=(*facts, "grounds.nullity"),
            dates={"came_of_age": birthday},
            steps=(_("The {age}th birthday was {day}.").format(age=of_age, day=spell_date(birthday)),),
        )
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We cannot tell whether the spouse in question was under {age} on the wedding day.").format(
            age=of_age
        ),
        _("Look up the whole birth date and the whole wedding date."),
        facts=facts,
    )


def _of_age_already(age: int) -> str:
    return _(
        "By your dates, the spouse in question was already {age} on the wedding day. That is not under age."
    ).format(age=age)
