"""The ground of a divorce or a legal separation."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Kind, Reason
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

KEY = "grounds.reason"


@rule(
    "The ground of a divorce or a legal separation",
    cite=("Fam. Code 2310", "Fam. Code 2311", "Fam. Code 2312", "Fam. Code 2332", "Fam. Code 2335"),
    since=date(2015, 1, 1),
    not_modelled="Whether somebody lacks the capacity to decide; that takes medical proof.",
)
def reason(case: Case, on: date) -> Found | None:
    """A divorce or a legal separation rests on one of two grounds, and no story is told.

    What the law says. The first ground is irreconcilable differences: the marriage has broken down and
    cannot be saved. The second is that a spouse has for good lost the legal capacity to make decisions.
    Either is stated in general words. Nobody has to prove fault, and the petition is no place for what
    the other one did: proof of misconduct is not allowed there.

    The first ground is almost always the one used, for a legal separation too. One of you is enough to
    say that the differences cannot be mended.

    The second ground is rare. It needs proof by doctors that the spouse lacked that capacity when the
    petition was filed and still does. It is not meant for illness alone. A guardian or conservator must
    be served too, or the court names somebody to speak for that spouse. The duty of support does not end
    with it.

    An example. A husband has a severe memory disease. His wife may still use irreconcilable differences.
    The second ground would mean experts and a second person to serve.

    What to do. If you think of the second ground, see a lawyer first.
    """
    if kind_of(case) not in (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION):
        return None
    told = known(case.grounds.reason)
    if told is None:
        unknown = case.grounds.reason is DONT_KNOW
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We need to know which of the two grounds your petition rests on."),
            _("Most people use irreconcilable differences. The self-help center can explain both.")
            if unknown
            else _("Answer the question about the reason."),
            facts=(KEY,),
        )
    if told is Reason.INCAPACITY:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "You chose the ground of lost capacity to make decisions. It needs proof by doctors, and is "
                "rare."
            ),
            _("{help} A guardian or conservator may have to be served too.").format(help=help_first()),
            facts=(KEY,),
        )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("Your petition rests on irreconcilable differences. Nobody has to prove fault."),
        _("Tell no story in the petition. What the other one did has no place there."),
        facts=(KEY,),
    )
