"""When a question about the case, the people, the court or the dates is asked."""

from firstpaper.facts import DONT_KNOW, Case, Day, known
from firstpaper.facts.choices import Danger, Kind, OtherCase, Reason, Special, Union
from firstpaper.facts.kinds import is_nullity, kind_of
from firstpaper.intake.predicates.parts import several


def is_married(case: Case) -> bool:
    """The two are married."""
    return Union.MARRIAGE in several(case.matter.unions)


def is_registered(case: Case) -> bool:
    """The two are registered partners, here or elsewhere."""
    unions = several(case.matter.unions)
    return Union.PARTNERS_CALIFORNIA in unions or Union.PARTNERS_ELSEWHERE in unions


def is_registered_elsewhere(case: Case) -> bool:
    """The two are partners under the law of another state or country."""
    return Union.PARTNERS_ELSEWHERE in several(case.matter.unions)


def wants_legal_separation(case: Case) -> bool:
    """The filer asks for a legal separation."""
    return kind_of(case) is Kind.LEGAL_SEPARATION


def wants_nullity(case: Case) -> bool:
    """The filer asks for a nullity."""
    return is_nullity(case)


def wants_divorce_or_separation(case: Case) -> bool:
    """The filer asks for a dissolution or a legal separation."""
    return kind_of(case) in (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION)


def wants_divorce_or_nullity(case: Case) -> bool:
    """The filer asks for a dissolution or a nullity."""
    return kind_of(case) in (Kind.DISSOLUTION, Kind.NULLITY)


def amends_a_petition(case: Case) -> bool:
    """A petition in this case was filed before."""
    return known(case.matter.amended) is True


def turns_separation_into_divorce(case: Case) -> bool:
    """The first petition asked for a legal separation, and this one asks for a dissolution."""
    first, now = known(case.matter.first_kind), kind_of(case)
    return amends_a_petition(case) and first is Kind.LEGAL_SEPARATION and now is Kind.DISSOLUTION


def has_another_case(case: Case) -> bool:
    """Another court case about the family is open, or its orders still hold."""
    return known(case.matter.other_case) is True


def asked_before_to_end_the_union(case: Case) -> bool:
    """One of the two has asked a court before to end the marriage or partnership."""
    return has_another_case(case) and OtherCase.UNION in several(case.matter.other_case_kinds)


def must_hide_the_address(case: Case) -> bool:
    """The other side must not learn where the filer lives."""
    return Danger.HIDE_ADDRESS in several(case.safety.dangers)


def needs_interpreter(case: Case) -> bool:
    """Somebody in the case needs an interpreter in court."""
    return Special.INTERPRETER in several(case.people.special)


def words_of_separation_are_in_doubt(case: Case) -> bool:
    """The person does not know on what day it was said, or one of the two cannot make decisions."""
    incapable = known(case.grounds.reason) is Reason.INCAPACITY
    return case.dates.separation_told_on is DONT_KNOW or incapable


def knows_of_no_other_case(case: Case) -> bool:
    """There is no other case, and so no earlier petition in this one."""
    return known(case.matter.other_case) is False


def place_of_the_wedding_serves_nobody(case: Case) -> bool:
    """Only a nullity, and a couple that registered too, needs the place of the wedding."""
    return known(case.matter.unions) == (Union.MARRIAGE,) and not wants_nullity(case)


def union_began(case: Case) -> Day | None:
    """The first day of the first union; None where a day that could be the first is not known."""
    days = [known(case.dates.married_on)] if is_married(case) else []
    days += [known(case.dates.registered_on)] if is_registered(case) else []
    told = [day for day in days if day is not None]
    return min(told, key=lambda day: day.earliest) if told and len(told) == len(days) else None
