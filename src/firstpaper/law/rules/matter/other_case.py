"""Another court case."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import OtherCase
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.measures.other_cases import other_cases, told_and_denied
from firstpaper.law.register import rule
from firstpaper.law.words import help_first, spaced
from firstpaper.locale import _

JUDGMENT = "matter.separation_judgment"
OTHER, KINDS, WORDS = "matter.other_case", "matter.other_case_kinds", "matter.other_case_words"


@rule(
    "Another court case",
    cite=("Fam. Code 3429(a)(1)-(2)", "Fam. Code 3429(d)"),
    since=date(2013, 1, 1),
    not_modelled="Which court goes first, and what its orders do to this case.",
)
def other_case(case: Case, on: date) -> list[Found]:
    """Another case about the two of you or the children can change what you file here, or whether you file.

    What the law says. If there are minor children, you must tell the court under oath of any other case
    about them that you know of, and go on telling it. Protective orders, adoptions and cases that end
    parental rights are named. If a case about the same marriage is open already, here or in another
    state, the other side can ask this court to stop the new one.

    Two ways to look at it. An open divorce case that the other side started is often no reason for a new
    petition: you file a response there. A child support case or a restraining order case can go on next
    to this one, but the judge must know of it.

    A case or an order elsewhere. A court here may not change a custody order of another state unless
    that court gives it up or everybody has left that state (Fam. Code 3423). If a custody case was open
    there first, the court here must wait and talk to that court (Fam. Code 3426). The court of a tribe
    and of another country count like that of a state (Fam. Code 3404, 3405). The divorce itself can go on
    here.

    An earlier judgment of legal separation. It does not bar a later divorce (Fam. Code 2347). What it
    settled stays settled, so the new petition asks for less.

    Juvenile court and guardianship. While a case in juvenile court is open because a child was found to
    need protection, that court alone decides about custody (Welf. & Inst. Code 302, 304). A guardian keeps
    the child until the court that named the guardian ends it.

    Bankruptcy. When somebody asks for bankruptcy, most claims against their property stop at once. The
    end of the marriage, custody and support can go on. Dividing the property has to wait
    (11 U.S.C. 362).

    An example. The other side filed for divorce in Nevada in May. You file here in June. The two courts
    may not both go on. A lawyer should look at it before you file.

    What to do. Have the name of the court, the case number and the last order at hand.
    """
    told = known(case.matter.other_case)
    if told is None:
        unknown = case.matter.other_case is DONT_KNOW
        need = Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We need to know whether there is another court case about you two or the children."),
            _("Courts can search by name. So can the local child support office.")
            if unknown
            else _("Answer the question about other cases."),
            facts=(OTHER,),
        )
        return [need, *_by_kind(case)]
    if told_and_denied(case):
        return [_denied(), *_by_kind(case)]
    return [_told(case, on), *_by_kind(case)] if told else []


def _told(case: Case, on: date) -> Found:
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
        cite=_cites(case, on),
    )


def _denied() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("For form FL-105 you told us of a case about a child. Before, you told us of no other case."),
        _("Look at both answers. If it is about a child of you two, change the first one. Bring its papers."),
        facts=(OTHER, "uccjea.cases"),
    )


def _after_separation() -> tuple[str, str]:
    return (
        _(
            "A court has already given a judgment of legal separation. It does not bar a divorce. But what "
            "it decided about property, support and children still holds."
        ),
        _(
            "Bring that judgment. Ask in which case, and with which petition, to ask for the divorce, and "
            "what is left to decide. {help}"
        ).format(help=help_first()),
    )


_SAME_UNION = ("Cal. Rules of Court, rule 5.63",)
_CITES = {
    OtherCase.UNION: _SAME_UNION,
    OtherCase.ELSEWHERE: (
        "Fam. Code 3423",
        "Fam. Code 3426",
        "Fam. Code 3404",
        "Fam. Code 3405",
        "Fam. Code 3427(a)",
        "Fam. Code 5700.611(a)",
    ),
    OtherCase.JUVENILE: ("Welf. & Inst. Code 302(c)", "Welf. & Inst. Code 304"),
    OtherCase.BANKRUPTCY: ("11 U.S.C. 362(a)", "11 U.S.C. 362(b)(2)(A)", "11 U.S.C. 541(a)"),
}


def _cites_of(case: Case, kind: OtherCase) -> tuple[str, ...]:
    if kind is OtherCase.UNION and known(case.matter.separation_judgment):
        return ("Fam. Code 2347", "Fam. Code 772")
    return _CITES.get(kind, ())


def _cites(case: Case, on: date) -> tuple[str, ...]:
    """What each kind of case told rests on; without children, a case of no such kind may be the same one."""
    cites = tuple(cite for kind in other_cases(case) for cite in _cites_of(case, kind))
    return cites or (() if has_minor_children(case, on) else _SAME_UNION)


def _by_kind(case: Case) -> list[Found]:
    """What each kind of case changes here."""
    words = _kinds()
    if known(case.matter.separation_judgment):
        words[OtherCase.UNION] = _after_separation()
    return [
        Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            *words[one],
            cite=_cites_of(case, one),
            facts=(KINDS, JUDGMENT, "uccjea.cases"),
        )
        for one in other_cases(case)
        if one in words
    ]


def _kinds() -> dict[OtherCase, tuple[str, str]]:
    bring = _("Bring the last order and the case number. {help}").format(help=help_first())
    return {
        OtherCase.UNION: (
            _("One of you has asked before to end this union. Two such cases may not both go on."),
            _("You may only have to file a response there. {help}").format(help=help_first()),
        ),
        OtherCase.ELSEWHERE: (
            _(
                "A court in another state or country, or of a tribe, may have to decide about the children. "
                "A judge here may not change its orders just because you live here now."
            ),
            spaced([_("The divorce itself can go on here. A support order has rules of its own."), bring]),
        ),
        OtherCase.JUVENILE: (
            _(
                "You told us of a juvenile case. While that court protects a child, it alone decides on "
                "custody."
            ),
            spaced([_("Ask before you mark any box about custody."), bring]),
        ),
        OtherCase.GUARDIANSHIP: (
            _("While a child has a guardian, the case here does not end that by itself."),
            spaced([_("Ask before you mark any box about custody."), bring]),
        ),
        OtherCase.BANKRUPTCY: (
            _(
                "In a bankruptcy, most claims against property stop. The end of the marriage, custody and "
                "support can go on, but dividing the property has to wait."
            ),
            _("Ask a bankruptcy lawyer when to file. Bring the bankruptcy number."),
        ),
    }


def _do(case: Case) -> str:
    if known(case.matter.other_case_words):
        return _("Bring its latest papers. {help}").format(help=help_first())
    return _("Write down which court, what it is about, and its number. {help}").format(help=help_first())
