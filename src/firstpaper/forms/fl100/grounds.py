"""Item 5: the legal ground. It must agree with the kind of case at the top of page 1."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, NullityGround, Reason, Who
from firstpaper.forms.answer import Answer, blank, mark, mark_if
from firstpaper.forms.fl100.told import chosen, kind_of, kind_words
from firstpaper.forms.open_answers import still_open
from firstpaper.law.measures.nullity import VOID, grounds
from firstpaper.locale import _

VOIDABLE = tuple(ground for ground in NullityGround if ground not in VOID)
AUTHORITY = {
    NullityGround.INCEST: "Fam. Code 2200",
    NullityGround.BIGAMY: "Fam. Code 2201",
    NullityGround.UNDER_AGE: "Fam. Code 2210(a)",
    NullityGround.PRIOR_SPOUSE: "Fam. Code 2210(b)",
    NullityGround.UNSOUND_MIND: "Fam. Code 2210(c)",
    NullityGround.FRAUD: "Fam. Code 2210(d)",
    NullityGround.FORCE: "Fam. Code 2210(e)",
    NullityGround.PHYSICAL_INCAPACITY: "Fam. Code 2210(f)",
}


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 5a to 5c."""
    del on
    yield from _divorce_or_separation(case)
    yield from _nullity(case)


def _divorce_or_separation(case: Case) -> Iterator[Answer]:
    kind = kind_of(case)
    for concept, line in (
        ("grounds.dissolution", Kind.DISSOLUTION),
        ("grounds.separation", Kind.LEGAL_SEPARATION),
    ):
        because = _("You ask for {kind}.").format(kind=kind_words(line))
        otherwise, law = _("You are not asking for {kind}.").format(kind=kind_words(line)), "Fam. Code 2310"
        yield chosen(
            case, concept, "matter.kind", kind is line, because=because, otherwise=otherwise, authority=law
        )
    yield _reason(
        case,
        "grounds.irreconcilable",
        Reason.IRRECONCILABLE,
        _("The reason used almost always. No story and no fault belongs here."),
        "Fam. Code 2310(a), 2335",
    )
    yield _reason(
        case,
        "grounds.incapacity",
        Reason.INCAPACITY,
        _("You chose this reason. It needs medical proof, so talk to a lawyer or the self-help center."),
        "Fam. Code 2310(b), 2312",
    )


def _reason(case: Case, concept: str, reason: Reason, because: str, authority: str) -> Answer:
    if kind_of(case) is Kind.NULLITY:
        return blank(concept, _("A nullity has its own reasons, in 5b and 5c."))
    told = known(case.grounds.reason)
    otherwise = _("You did not choose this reason.")
    words = {"because": because, "otherwise": otherwise, "authority": authority}
    return chosen(case, concept, "grounds.reason", told is reason, **words)


def _nullity(case: Case) -> Iterator[Answer]:
    """5b and 5c: a heading is marked where one of its reasons is."""
    for heading, reasons in (("grounds.void", tuple(VOID_IN_ORDER)), ("grounds.voidable", VOIDABLE)):
        boxes = [_ground(case, ground) for ground in reasons]
        yield _heading(case, heading, any(ground for ground in reasons if _usable(case, ground)))
        yield from boxes


VOID_IN_ORDER = tuple(ground for ground in NullityGround if ground in VOID)


def _heading(case: Case, concept: str, holds: bool) -> Answer:
    if kind_of(case) is not Kind.NULLITY:
        return _no_nullity(case, concept)
    because = {
        "grounds.void": _("You gave a reason of this kind: the marriage was never valid."),
        "grounds.voidable": _("You gave a reason of this kind: the marriage is valid until a judge ends it."),
    }[concept]
    authority = {"grounds.void": "Fam. Code 2200, 2201", "grounds.voidable": "Fam. Code 2210"}[concept]
    return chosen(
        case,
        concept,
        "grounds.nullity",
        holds,
        because=because,
        otherwise=_("You gave no reason of this kind."),
        authority=authority,
    )


def _ground(case: Case, ground: NullityGround) -> Answer:
    concept = f"grounds.{ground}"
    if kind_of(case) is not Kind.NULLITY:
        return _no_nullity(case, concept)
    if known(case.grounds.nullity) is None:
        return still_open(case, concept, "grounds.nullity")
    if ground is NullityGround.UNDER_AGE and ground in grounds(case):
        return _under_age(case, concept)
    because = _("You chose this reason. Have a lawyer look at the facts before you file.")
    return mark_if(
        concept, ground in grounds(case), because, _("You did not choose this reason."), AUTHORITY[ground]
    )


def _under_age(case: Case, concept: str) -> Answer:
    """5c(1) speaks of the petitioner's age; only the one who was under 18 can use it (Fam. Code 2210(a))."""
    who = known(case.grounds.under_age)
    if who is None:
        return still_open(case, concept, "grounds.under_age")
    authority = AUTHORITY[NullityGround.UNDER_AGE]
    if who is Who.RESPONDENT:
        not_you = _(
            "This line speaks of your own age. Only the one who was under 18 can use it. Get help first."
        )
        return replace(blank(concept, not_you, authority), open_key="grounds.nullity")
    return mark(
        concept, _("You said that you were under 18. Have a lawyer look at the facts first."), authority
    )


def _usable(case: Case, ground: NullityGround) -> bool:
    if ground is NullityGround.UNDER_AGE and known(case.grounds.under_age) not in (Who.PETITIONER, Who.BOTH):
        return False
    return ground in grounds(case)


def _no_nullity(case: Case, concept: str) -> Answer:
    if kind_of(case) is None:
        return still_open(case, concept, "matter.kind")
    return blank(concept, _("You are not asking for a nullity."))
