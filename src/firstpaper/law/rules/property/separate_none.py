"""No separate property at all."""

from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import SeparateHow
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import separation
from firstpaper.law.register import rule
from firstpaper.locale import _

HOW = "property.separate_how"
LISTS = ("property.separate_petitioner", "property.separate_respondent")


@rule(
    "No separate property at all",
    cite=("Fam. Code 770(a)", "Fam. Code 771(a)"),
    since=date(2017, 1, 1),
    not_modelled="Property that is part separate and part community, and what can be traced.",
)
def separate_none(case: Case, on: date) -> Found | None:
    """What one of you owned before, was given, inherited, or earned after the separation is separate.

    What the law says. Separate property is what a person owned before the marriage, what came later as a
    gift or an inheritance, and what these things earn. Pay earned after the date of separation is
    separate too.

    Why "none" is rare. Nearly everybody owned something before the wedding: clothes, a phone, a car, a bank
    account, a student loan. And whoever has earned since the separation owns that pay alone.

    Both sides of it. At this stage naming the classes is enough for many people: what each owned before,
    gifts and inheritances, and what was earned or owed after the separation. A list is more work, but
    nothing is left in doubt.

    An example. Separated in May, filing in November. The pay from May to November is separate property,
    so "none" is not quite true.

    What to do. If you are not sure, name the classes rather than "none".
    """
    how = known(case.property.separate_how)
    if how is None:
        unknown = case.property.separate_how is DONT_KNOW
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We need to know what the petition should say about separate property."),
            _("If you do not know, naming the classes is a way that leaves little out.")
            if unknown
            else _("Answer that question."),
            facts=(HOW,),
        )
    if how is not SeparateHow.NONE:
        return None
    if known(case.property.separate_petitioner) or known(case.property.separate_respondent):
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _("The petition would say that there is no separate property, but you listed some."),
            _("Look at both answers again. Choose the list, or take the things off it."),
            facts=(HOW, *LISTS),
            mended_by=(HOW,),
        )
    apart = separation(case).day
    if apart and apart < on:
        return Found(
            Outcome.MET,
            Weight.LOOK_AGAIN,
            _(
                "Your petition says that there is no separate property. Pay earned since {day} is separate."
            ).format(day=short_date(apart)),
            _("Think of what each of you owned before, was given, or earned since you parted."),
            facts=(HOW, "dates.separation_told_on", "dates.separation_acted_on"),
            dates={"separated_on": apart},
        )
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _("Your petition says that there is no separate property. That is rare."),
        _("Think of what each of you owned before the wedding, was given, or inherited."),
        facts=(HOW,),
    )
