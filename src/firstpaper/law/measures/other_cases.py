"""Other cases about the two or their children, wherever they were told."""

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import CustodyCase, OtherCase

OF_CHILDREN = {
    CustodyCase.FAMILY: OtherCase.CHILDREN,
    CustodyCase.GUARDIANSHIP: OtherCase.GUARDIANSHIP,
    CustodyCase.JUVENILE: OtherCase.JUVENILE,
    CustodyCase.ADOPTION: OtherCase.CHILDREN,
    CustodyCase.OTHER: OtherCase.CHILDREN,
}

_ABOUT_CHILDREN = frozenset(
    (OtherCase.CHILDREN, OtherCase.ELSEWHERE, OtherCase.JUVENILE, OtherCase.GUARDIANSHIP)
)


def other_cases(case: Case) -> tuple[OtherCase, ...]:
    """The kinds of other cases told, each once; `OTHER` where one was told and not its kind."""
    told: list[OtherCase] = []
    if known(case.matter.other_case):
        told += known(case.matter.other_case_kinds) or (OtherCase.OTHER,)
    told += [OF_CHILDREN[one] for one in known(case.uccjea.cases) or ()]
    return tuple(dict.fromkeys(told))


def another_court_may_decide(case: Case) -> bool:
    """Whether another court may be the one that decides about custody, or that is not known."""
    untold = case.matter.other_case is DONT_KNOW or case.uccjea.cases is DONT_KNOW
    return untold or another_court_told(case)


def another_court_told(case: Case) -> bool:
    """Whether a case was told that may be the one in which custody is decided."""
    return any(one is not OtherCase.BANKRUPTCY for one in other_cases(case))


def about_children(case: Case) -> bool:
    """Whether a case about the children themselves was told, in which there may be an order already."""
    return bool(_ABOUT_CHILDREN.intersection(other_cases(case)))


def decides_on_custody_instead(case: Case) -> OtherCase | None:
    """The kind of case told that may leave custody to another court or to a guardian; None where none was.

    A juvenile court alone decides while it protects the child (Welf. & Inst. Code 302(c), 304). The order of
    another state is changed here only in narrow cases (Fam. Code 3423).
    """
    told = other_cases(case)
    return next((kind for kind in _INSTEAD if kind in told), None)


_INSTEAD = (OtherCase.JUVENILE, OtherCase.GUARDIANSHIP, OtherCase.ELSEWHERE)


def told_and_denied(case: Case) -> bool:
    """Whether a case was told for form FL-105, and denied where it was asked first."""
    return case.matter.other_case is False and bool(known(case.uccjea.cases))
