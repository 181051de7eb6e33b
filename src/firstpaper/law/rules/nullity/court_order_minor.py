"""A marriage under 18 that a court allowed."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import NullityGround
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import grounds
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open, without
from firstpaper.law.words import help_first
from firstpaper.locale import _

KEY = "grounds.court_allowed_minor"


@rule(
    "A marriage under 18 that a court allowed",
    cite="Fam. Code 2210(a)",
    since=date(2019, 1, 1),
    not_modelled=(
        "Whether an order was made in the right way, and orders of courts outside California. We read what "
        "2210(a) says of sections 302 and 303, and not those two themselves."
    ),
)
def court_order_minor(case: Case, on: date) -> Found | None:
    """The ground of under age is not open where a California court allowed the marriage beforehand.

    A person under 18 can marry in California only with a court order (Fam. Code 302 and 303). Where
    such an order was made before the wedding, the marriage cannot be undone for age alone. Other
    grounds, such as force or fraud, stay open.

    A parent's consent alone is not a court order. A permission given in another state or country is
    not an order under these two sections either; what follows from it is a question for a lawyer.

    Example: a girl of 17 married in Fresno, and a judge had signed an order for it. She cannot use the
    ground of under age. If only her parents had signed, she can.
    """
    if NullityGround.UNDER_AGE not in grounds(case):
        return None
    allowed = known(case.grounds.court_allowed_minor)
    if allowed:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _("You told us that a court allowed the marriage. Then it cannot be undone for age alone."),
            _("Leave this ground out, unless the order came from outside California. {open} {help}").format(
                open=stays_open(case, NullityGround.UNDER_AGE, on), help=help_first()
            ),
            facts=(KEY,),
            mended_by=without(case, NullityGround.UNDER_AGE, on),
        )
    if allowed is False:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("No court order allowed the marriage, so the ground of under age is not shut for that reason."),
            facts=(KEY,),
        )
    asked = case.grounds.court_allowed_minor is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if asked else Weight.LOOK_AGAIN,
        _("We need to know whether a court allowed the marriage beforehand."),
        _("The court or the county clerk where you married can say. {help}").format(help=help_first()),
        facts=(KEY,),
    )
