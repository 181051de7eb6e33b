"""When a question about the children, their custody or form FL-105 is asked."""

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import keeps_addresses_off
from firstpaper.facts.children import Child, first_of_both, is_of_both
from firstpaper.facts.choices import CustodySheet, CustodyTo, Danger, Declaration, Family, Parentage, VisitsTo
from firstpaper.intake.predicates.matter import union_began
from firstpaper.intake.predicates.parts import may_be_earlier, several


def has_minor_children_together(case: Case) -> bool:
    """The two have children together who are under 18."""
    return Family.MINOR_TOGETHER in several(case.children.family)


def has_children_together(case: Case) -> bool:
    """The two have a child under 18 together, or one on the way."""
    return has_minor_children_together(case) or Family.UNBORN_TOGETHER in several(case.children.family)


def has_several_children(case: Case) -> bool:
    """The two have more than one child under 18 together, counting one on the way."""
    born = (known(case.children.how_many) or 1) if has_minor_children_together(case) else 0
    unborn = Family.UNBORN_TOGETHER in several(case.children.family)
    return born + unborn > 1


def children_are_treated_alike(case: Case) -> bool:
    """There are children, and one wish about custody covers them all."""
    return has_children_together(case) and not _custody_differs(case)


def children_are_treated_differently(case: Case, child: Child) -> bool:
    """There is a child of both, and the wishes about custody differ from child to child."""
    return has_minor_children_together(case) and is_of_both(child) and _custody_differs(case)


def is_listed_child(case: Case, child: Child) -> bool:
    """One of the children under 18 of the two."""
    return has_minor_children_together(case)


def may_be_born_before_the_union(case: Case, child: Child) -> bool:
    """A child born to both who came before the wedding or registration, or whose day is not known."""
    born, began = known(child.born_on), union_began(case)
    to_both = known(child.parentage) not in (Parentage.ADOPTED_BY_BOTH, Parentage.ONE_PARENT_ONLY)
    return has_minor_children_together(case) and to_both and may_be_earlier(born, began)


def may_be_of_the_union_in_law(case: Case, child: Child) -> bool:
    """A child said to be of one alone, who may have been born after the wedding or registration."""
    born, began = known(child.born_on), union_began(case)
    alone = known(child.parentage) is Parentage.ONE_PARENT_ONLY
    return has_minor_children_together(case) and alone and may_be_earlier(began, born)


def has_children_of_one_alone(case: Case) -> bool:
    """There are children of just one of the two."""
    return Family.FROM_OTHERS in several(case.children.family)


def others_were_born_in_the_union(case: Case) -> bool:
    """One of the two gave birth to a child of one alone after the union began."""
    return has_children_of_one_alone(case) and known(case.children.others_in_union) is True


def signed_a_declaration(case: Case, child: Child) -> bool:
    """A child who may have come before the union, for whom both signed a declaration of parentage."""
    signed = (Declaration.SIGNED_WITH_COPY, Declaration.SIGNED_NO_COPY)
    return may_be_born_before_the_union(case, child) and known(child.declaration) in signed


def fills_in_the_declaration(case: Case) -> bool:
    """The two have children under 18, and the filer wants to fill in form FL-105 now."""
    return has_minor_children_together(case) and known(case.uccjea.now) is True


def fills_in_the_declaration_in_danger(case: Case) -> bool:
    """The filer wants to fill in form FL-105 now, and told of danger."""
    return fills_in_the_declaration(case) and bool(known(case.safety.dangers))


def is_in_the_declaration(case: Case, child: Child) -> bool:
    """A child of both, and the filer wants to fill in form FL-105 now."""
    return fills_in_the_declaration(case) and is_of_both(child)


def may_have_the_same_homes(case: Case, child: Child) -> bool:
    """A child of both whose homes matter, and who is not the first one told of."""
    first = first_of_both(case.child)
    return _homes_matter(case, child) and first is not None and child is not first


def tells_the_homes(case: Case, child: Child) -> bool:
    """A child of both whose homes matter, and are not just those of the first one told of."""
    same = may_have_the_same_homes(case, child) and known(child.same_homes) is True
    return _homes_matter(case, child) and not same


def may_tell_the_address(case: Case, child: Child) -> bool:
    """A child whose homes are told for form FL-105, and whose address need not be kept off it."""
    return fills_in_the_declaration(case) and tells_the_homes(case, child) and not keeps_addresses_off(case)


def knows_of_a_case_about_the_children(case: Case) -> bool:
    """The filer fills in form FL-105 and knows of another case about a child."""
    return fills_in_the_declaration(case) and bool(known(case.uccjea.cases))


def knows_of_a_protective_order(case: Case) -> bool:
    """The filer fills in form FL-105 and knows of a restraining order that holds now."""
    return fills_in_the_declaration(case) and bool(known(case.uccjea.orders))


def parents_and_told_of_violence(case: Case) -> bool:
    """The two have a child together, and the filer told of violence or of an order against it."""
    signs = (Danger.VIOLENCE, Danger.RESTRAINING_ORDER)
    told = several(case.safety.dangers)
    return has_children_together(case) and any(sign in told for sign in signs)


def custody_goes_to_somebody_else(case: Case) -> bool:
    """An answer about custody or visits was "other"."""
    shared = (known(case.custody.legal), known(case.custody.physical), known(case.custody.visits))
    one_by_one = [
        answer
        for child in case.child
        if children_are_treated_differently(case, child)
        for answer in (known(child.legal), known(child.physical), known(child.visits))
    ]
    answers = one_by_one if _custody_differs(case) else list(shared)
    return has_children_together(case) and any(a in (CustodyTo.OTHER, VisitsTo.OTHER) for a in answers)


def adds_own_custody_page(case: Case) -> bool:
    """The filer wants to add a page on custody in their own words."""
    return has_children_together(case) and CustodySheet.OWN_PAGE in several(case.custody.sheets)


def _homes_matter(case: Case, child: Child) -> bool:
    """A child of both in a family where a child lived outside California lately, or who is in the FL-105."""
    lately = has_minor_children_together(case) and Family.NOT_ALWAYS_HERE in several(case.children.family)
    return is_of_both(child) and (lately or fills_in_the_declaration(case))


def _custody_differs(case: Case) -> bool:
    return has_several_children(case) and known(case.custody.alike) is False
