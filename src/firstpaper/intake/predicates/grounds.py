"""When a question about the ground of a nullity is asked."""

from firstpaper.facts import Case, known
from firstpaper.facts.choices import GoodFaith, NullityFiler, NullityGround
from firstpaper.intake.predicates.matter import wants_nullity
from firstpaper.intake.predicates.parts import several


def files_for_one_of_the_two(case: Case) -> bool:
    """The filer is the parent, guardian, relative or conservator of one of the two."""
    for_another = (NullityFiler.PARENT_OR_GUARDIAN, NullityFiler.RELATIVE_OR_CONSERVATOR)
    return wants_nullity(case) and known(case.grounds.filer) in for_another


def claims_under_age(case: Case) -> bool:
    """The ground is that somebody was too young at the wedding."""
    return _claims(case, NullityGround.UNDER_AGE)


def claims_earlier_marriage(case: Case) -> bool:
    """The ground is an earlier marriage or partnership, ended by nobody."""
    return _claims(case, NullityGround.BIGAMY) or _claims(case, NullityGround.PRIOR_SPOUSE)


def claims_ground_that_ends_with_a_life(case: Case) -> bool:
    """A ground that is open only while both are alive."""
    return _claims(case, NullityGround.PRIOR_SPOUSE) or claims_unsound_mind(case)


def claims_unsound_mind(case: Case) -> bool:
    """The ground is that somebody did not understand what a wedding means."""
    return _claims(case, NullityGround.UNSOUND_MIND)


def claims_fraud(case: Case) -> bool:
    """The ground is that somebody was deceived into the union."""
    return _claims(case, NullityGround.FRAUD)


def claims_force(case: Case) -> bool:
    """The ground is that somebody was forced into the union."""
    return _claims(case, NullityGround.FORCE)


def claims_physical_incapacity(case: Case) -> bool:
    """The ground is that somebody could not have sexual relations and cannot be cured."""
    return _claims(case, NullityGround.PHYSICAL_INCAPACITY)


def filer_believed_union_valid(case: Case) -> bool:
    """The filer asks for a nullity of a union that the filer believed to be valid."""
    return wants_nullity(case) and known(case.grounds.good_faith) in (GoodFaith.PETITIONER, GoodFaith.BOTH)


def _claims(case: Case, ground: NullityGround) -> bool:
    return wants_nullity(case) and ground in several(case.grounds.nullity)
