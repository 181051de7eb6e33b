"""Another court case."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

OTHER, WORDS = "matter.other_case", "matter.other_case_words"


@rule(
    "Another court case",
    cite=("Fam. Code 3429(a)(1)-(2)", "Fam. Code 3429(d)", "Cal. Rules of Court, rule 5.63"),
    since=date(2013, 1, 1),
    not_modelled="Which court goes first, and what its orders do to this case.",
)
def other_case(case: Case, on: date) -> Found | None:
    """Another case about the two of you or the children can change what you file here, or whether you file.

    What the law says. If there are minor children, you must tell the court under oath of any other case
    about them that you know of, and go on telling it. Protective orders, adoptions and cases that end
    parental rights are named. If a case about the same marriage is open already, here or in another
    state, the other side can ask this court to stop the new one.

    Two ways to look at it. An open divorce case that the other side started is often no reason for a new
    petition: you file a response there. A child support case or a restraining order case can go on next
    to this one, but the judge must know of it.

    An example. The other side filed for divorce in Nevada in May. You file here in June. The two courts
    may not both go on. A lawyer should look at it before you file.

    What to do. Have the name of the court, the case number and the last order at hand.
    """
    told = known(case.matter.other_case)
    if told is None:
        unknown = case.matter.other_case is DONT_KNOW
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We need to know whether there is another court case about you two or the children."),
            _("Courts can search by name. So can the local child support office.")
            if unknown
            else _("Answer the question about other cases."),
            facts=(OTHER,),
        )
    if not told:
        return None
    says = _("There is another court case. It can change what you file here, or whether you need to file.")
    if has_minor_children(case, on):
        says = _("{says} With minor children, you must tell the court about it on form FL-105.").format(
            says=says
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        says,
        _do(case),
        facts=(OTHER, WORDS),
    )


def _do(case: Case) -> str:
    if known(case.matter.other_case_words):
        return _("Bring its latest papers. {help}").format(help=help_first())
    return _("Write down which court, what it is about, and its number. {help}").format(help=help_first())
