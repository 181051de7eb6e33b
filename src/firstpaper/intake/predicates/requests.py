"""When a question about support, property or anything else the petition asks for is asked."""

from firstpaper.facts import Case, Day, agreements, known
from firstpaper.facts.choices import AWAY, CommunityHow, Family, Fees, SeparateHow, SupportChoice
from firstpaper.facts.matter import Residence
from firstpaper.intake.predicates.children import has_minor_children_together
from firstpaper.intake.predicates.matter import union_began, wants_divorce_or_nullity, wants_nullity
from firstpaper.intake.predicates.parts import several


def gives_up_own_support(case: Case) -> bool:
    """The filer chose to end the court's power to order support for the filer."""
    return known(case.support.petitioner) is SupportChoice.END


def has_grown_children(case: Case) -> bool:
    """The two have children together who are 18 or older."""
    return Family.GROWN in several(case.children.family)


def a_grown_child_needs_support(case: Case) -> bool:
    """A grown child of both is still in high school, or cannot earn a living."""
    return has_grown_children(case) and bool(several(case.support.grown))


def speaks_of_support(case: Case) -> bool:
    """The filer asks for support for one of the two, or keeps it open."""
    told = (known(case.support.petitioner), known(case.support.respondent))
    return _asks_for_support(case) or SupportChoice.RESERVE in told


def only_keeps_support_open(case: Case) -> bool:
    """The filer keeps support open and asks for none, so hardly anybody has more to say about it."""
    told = (known(case.support.petitioner), known(case.support.respondent))
    return SupportChoice.RESERVE in told and SupportChoice.ASK not in told


def signed_a_paper(case: Case) -> bool:
    """The two signed a paper about property or support."""
    return agreements.told_of_an_agreement(case)


def may_have_lived_elsewhere_together(case: Case) -> bool:
    """One of the two came to California after the wedding or registration, or lives elsewhere now."""
    began = union_began(case)
    stays = (case.residence.petitioner, case.residence.respondent)
    return not wants_nullity(case) and any(_came_later(stay, began) for stay in stays)


def asks_for_money_from_somebody_away(case: Case) -> bool:
    """The other side lives outside California, and the petition asks for money or to divide property."""
    away = known(case.residence.respondent.lives) in AWAY
    divides = known(case.property.community_how) not in (None, CommunityHow.NONE)
    fees = known(case.requests.fees) not in (None, Fees.NOT_ASKED)
    return away and (_asks_for_support(case) or has_minor_children_together(case) or divides or fees)


def lists_separate_property(case: Case) -> bool:
    """The filer wants to list separate property in the petition."""
    return known(case.property.separate_how) is SeparateHow.LIST


def lists_community_property(case: Case) -> bool:
    """The filer wants to list community property in the petition."""
    return known(case.property.community_how) is CommunityHow.LIST


def wants_former_name_back(case: Case) -> bool:
    """The filer named a former name to take back."""
    return wants_divorce_or_nullity(case) and bool(known(case.requests.former_name))


def never_had_another_name(case: Case) -> bool:
    """The filer has used no other name, so there is none to get back."""
    return known(case.petitioner.other_names) == ()


def named_the_former_name_before(case: Case) -> bool:
    """The name wanted back is one that the filer told of as used before."""
    return known(case.requests.former_name) in (known(case.petitioner.other_names) or ())


def _asks_for_support(case: Case) -> bool:
    """The filer asks for an order that one of the two pay support to the other."""
    return SupportChoice.ASK in (known(case.support.petitioner), known(case.support.respondent))


def _came_later(stay: Residence, began: Day | None) -> bool:
    """Whether that person lives elsewhere, or surely came to California after the union began."""
    if known(stay.lives) in AWAY:
        return True
    came = known(stay.state_since)
    return came is not None and began is not None and came.earliest > began.latest
