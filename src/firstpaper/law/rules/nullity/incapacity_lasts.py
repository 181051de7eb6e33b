"""A physical incapacity that lasts."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import NullityGround
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import grounds
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open, without
from firstpaper.law.words import help_first
from firstpaper.locale import _

KEY = "grounds.incapacity_continues"


@rule(
    "A physical incapacity that lasts",
    cite="Fam. Code 2210(f)",
    since=date(2019, 1, 1),
    not_modelled="Whether a condition is one that the law means, and what doctors say about a cure.",
)
def incapacity_lasts(case: Case, on: date) -> Found | None:
    """The ground of physical incapacity needs a condition that is still there and seems past cure.

    The law asks for three things: the incapacity was there on the wedding day, it goes on, and it
    appears that it cannot be cured. If it has passed, or can be cured, the ground is not open.

    Example: since before the wedding, a man has not been able to have sexual relations, and two doctors
    see no cure. The ground is open to the other spouse. If a treatment has since helped, it is not.

    A court may ask what doctors say. You need not tell the story in the petition.
    """
    if NullityGround.PHYSICAL_INCAPACITY not in grounds(case):
        return None
    lasts = known(case.grounds.incapacity_continues)
    if lasts is None:
        return _not_told(case)
    if lasts:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You told us that the condition is still there and that it seems past cure."),
            _("A judge may ask what doctors say. Keep their papers, and do not file them with the petition."),
            facts=(KEY,),
        )
    return Found(
        Outcome.NOT_MET,
        Weight.STOP,
        _("You told us that the condition has passed or may be cured. Then this ground is not open."),
        _("Leave this ground out. {open} {help}").format(
            open=stays_open(case, NullityGround.PHYSICAL_INCAPACITY, on), help=help_first()
        ),
        facts=(KEY,),
        mended_by=without(case, NullityGround.PHYSICAL_INCAPACITY, on),
    )


def _not_told(case: Case) -> Found:
    unknown = case.grounds.incapacity_continues is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        _("We need to know whether the condition is still there and seems past cure."),
        help_first() if unknown else _("Answer the question about it."),
        facts=(KEY,),
    )
