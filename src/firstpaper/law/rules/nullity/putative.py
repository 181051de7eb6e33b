"""Belief that the marriage was good."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import GoodFaith
from firstpaper.facts.kinds import is_nullity
from firstpaper.intake.predicates.grounds import files_for_one_of_the_two
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

BELIEF = "grounds.good_faith"
REQUEST = "requests.putative_division"


@rule(
    "Belief that the marriage was good",
    cite=("Fam. Code 2251(a)", "Fam. Code 2251(b)", "Fam. Code 2254"),
    since=date(2016, 1, 1),
    not_modelled="Whether a court would find the belief honest, and how the property is then divided.",
)
def putative(case: Case, on: date) -> Found | None:
    """In a nullity, property is divided as in a divorce only if a spouse who believed in the marriage asks.

    The court gives a spouse who honestly believed that the marriage was good the name of a "putative
    spouse". What the two got during the union, and would have owned together in a good marriage, is
    then divided as in a divorce. But the court does it only "upon request" of a putative spouse. Support
    too can be ordered only for a putative spouse. The court may also decide about property later, if it
    keeps that open in its judgment.

    Example: a woman marries a man who hid that he was still married. She believed that all was well. She
    asks in her petition for the division. If she does not ask, the court need not divide anything.

    Two ways to look at it. Asking keeps a right that is otherwise lost, and it costs nothing to ask.
    But a division works both ways: what you earned in that time may be divided too. Whether asking is
    good for you depends on who owns and owes what. A lawyer can say.
    """
    if not is_nullity(case):
        return None
    belief = known(case.grounds.good_faith)
    asks = known(case.requests.putative_division)
    if belief is None:
        return _belief_not_told(case)
    if belief in (GoodFaith.NEITHER, GoodFaith.RESPONDENT):
        return _not_the_filer(belief, asks)
    if asks:
        return Found(
            Outcome.MET,
            Weight.GET_ADVICE,
            _(
                "You ask the court to divide what you two got during the union. That goes under other "
                "requests."
            ),
            _(
                "Bring what shows that you believed the marriage was good. Let a lawyer look at it first: "
                "your own pay of that time may be divided too."
            ),
            facts=(BELIEF, REQUEST),
        )
    return _filer_does_not_ask(case, asks)


def _belief_not_told(case: Case) -> Found:
    unknown = case.grounds.good_faith is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        _("Property and support in a nullity depend on who believed that the marriage was good."),
        help_first() if unknown else _("Answer the question about what each of you believed."),
        facts=(BELIEF,),
    )


def _not_the_filer(belief: GoodFaith, asks: bool | None) -> Found:
    if asks:
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _("You ask to divide property, but only a spouse who believed the marriage was good can ask."),
            _("Look at both answers again. {help}").format(help=help_first()),
            facts=(BELIEF, REQUEST),
        )
    other = _(
        "The other side can ask the court to divide property and for support. You cannot, on your answers."
    )
    neither = _("On your answers, the court will not divide property as in a divorce, nor order support.")
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        other if belief is GoodFaith.RESPONDENT else neither,
        _("Things you own together can still be sorted out in other ways. Ask a lawyer which."),
        facts=(BELIEF,),
    )


def _believed(case: Case) -> str:
    if not files_for_one_of_the_two(case):
        return _(
            "You believed the marriage was good. Even so, the court divides property only if you ask for it."
        )
    name = known(case.grounds.filed_for) or _("The one you file for")
    return _(
        "{name} believed the marriage was good. Even so, the court divides property only if the petition "
        "asks for it."
    ).format(name=name)


def _filer_does_not_ask(case: Case, asks: bool | None) -> Found:
    never_asked = asks is None and case.requests.putative_division is not DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW if asks is None else Outcome.NOT_MET,
        Weight.LOOK_AGAIN if never_asked else Weight.GET_ADVICE,
        _believed(case),
        _("Decide whether to ask. It can help or cost you, by who owns and owes what. {help}").format(
            help=help_first()
        ),
        facts=(BELIEF, REQUEST),
    )
