"""Item 5: the legal ground. It must agree with the kind of case at the top of page 1."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, NullityGround, Reason, Who
from firstpaper.facts.kinds import is_nullity, kind_of
from firstpaper.forms.answer import Action, Answer, blank, mark
from firstpaper.forms.open_answers import not_before_advice, still_open
from firstpaper.forms.saying import chosen, kind_words
from firstpaper.law.measures.nullity import VOID, defeated, grounds
from firstpaper.locale import _

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
    yield from _divorce_or_separation(case)
    yield from _nullity(case, on)


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
    if is_nullity(case):
        return blank(concept, _("A nullity has its own reasons, in 5b and 5c."))
    told = known(case.grounds.reason)
    otherwise = _("You did not choose this reason.")
    words = {"because": because, "otherwise": otherwise, "authority": authority}
    return chosen(case, concept, "grounds.reason", told is reason, **words)


def _nullity(case: Case, on: date) -> Iterator[Answer]:
    """5b and 5c: a heading is marked where one of its reasons is."""
    never = _("You gave a reason of this kind: it was never valid.")
    until_ended = _("You gave a reason of this kind: it is valid until a judge says that it is not.")
    void = [_ground(case, ground, on) for ground in NullityGround if ground in VOID]
    voidable = [_ground(case, ground, on) for ground in NullityGround if ground not in VOID]
    yield _heading("grounds.void", void, never, "Fam. Code 2200, 2201")
    yield from void
    yield _heading("grounds.voidable", voidable, until_ended, "Fam. Code 2210")
    yield from voidable


def _heading(concept: str, reasons: list[Answer], because: str, authority: str) -> Answer:
    if any(reason.action is Action.MARK for reason in reasons):
        return mark(concept, because, authority)
    still = next((reason for reason in reasons if reason.open_key), reasons[0])
    return replace(still, concept=concept, authority="")


def _ground(case: Case, ground: NullityGround, on: date) -> Answer:
    concept = f"grounds.{ground}"
    if not is_nullity(case):
        return _no_nullity(case, concept)
    if not grounds(case):
        return still_open(case, concept, "grounds.nullity")
    if ground not in grounds(case):
        return blank(concept, _("You did not choose this reason."))
    if ground is NullityGround.UNDER_AGE and not _is_about_the_filer(case):
        return _age_of_somebody_else(case, concept)
    if defeated(case, ground, on):
        return not_before_advice(concept, _shut(), "grounds.nullity")
    because = _("You chose this reason. Have a lawyer look at the facts before you file.")
    return mark(concept, because, AUTHORITY[ground])


def _shut() -> str:
    return _(
        "You chose this reason, but by your own answers its last day has passed, or it never held. Get help "
        "before you mark it or give it up."
    )


def _is_about_the_filer(case: Case) -> bool:
    return known(case.grounds.under_age) in (Who.PETITIONER, Who.BOTH)


def _age_of_somebody_else(case: Case, concept: str) -> Answer:
    """5c(1) speaks of the petitioner's age; only the one who was under 18 can use it (Fam. Code 2210(a))."""
    if known(case.grounds.under_age) is None:
        return still_open(case, concept, "grounds.under_age")
    not_you = _("This line speaks of your own age. Only the one who was under 18 can use it. Get help first.")
    answer = blank(concept, not_you, AUTHORITY[NullityGround.UNDER_AGE])
    return replace(answer, open_key="grounds.nullity")


def _no_nullity(case: Case, concept: str) -> Answer:
    if kind_of(case) is None:
        return still_open(case, concept, "matter.kind")
    return blank(concept, _("You are not asking for a nullity."))
