"""When a question is asked. Each function answers one plain question about what was told so far.

No law and no clock: whether an answer is good enough is for the rules to say. A fact that was not
told, or that the person does not know, never makes a question appear unless its predicate says so.
The bank names these functions under `when`; those for the questions of one child take the child too.
"""

from collections.abc import Collection

from firstpaper.facts import DONT_KNOW, Case, Day, agreements, known
from firstpaper.facts.addresses import keeps_addresses_off
from firstpaper.facts.children import Child, first_of_both, is_of_both
from firstpaper.facts.choices import (
    AWAY,
    HERE,
    IN_CALIFORNIA,
    CommunityHow,
    CustodySheet,
    CustodyTo,
    Danger,
    Declaration,
    Family,
    Fees,
    GoodFaith,
    Kind,
    Lease,
    Lives,
    NullityFiler,
    NullityGround,
    OtherCase,
    Parentage,
    Reason,
    SeparateHow,
    Shortcut,
    Special,
    SupportChoice,
    Union,
    VisitsTo,
)
from firstpaper.facts.kinds import is_nullity, kind_of
from firstpaper.facts.matter import Residence

# --- which case ---------------------------------------------------------------------------------


def is_married(case: Case) -> bool:
    """The two are married."""
    return Union.MARRIAGE in _several(case, "matter.unions")


def is_registered(case: Case) -> bool:
    """The two are registered partners, here or elsewhere."""
    unions = _several(case, "matter.unions")
    return Union.PARTNERS_CALIFORNIA in unions or Union.PARTNERS_ELSEWHERE in unions


def is_registered_elsewhere(case: Case) -> bool:
    """The two are partners under the law of another state or country."""
    return Union.PARTNERS_ELSEWHERE in _several(case, "matter.unions")


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
    return has_another_case(case) and OtherCase.UNION in _several(case, "matter.other_case_kinds")


def must_hide_the_address(case: Case) -> bool:
    """The other side must not learn where the filer lives."""
    return Danger.HIDE_ADDRESS in _several(case, "safety.dangers")


def needs_interpreter(case: Case) -> bool:
    """Somebody in the case needs an interpreter in court."""
    return Special.INTERPRETER in _several(case, "people.special")


# --- where the two live -------------------------------------------------------------------------


def petitioner_lives_in_california(case: Case) -> bool:
    """The filer lives in California, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.petitioner.lives) in IN_CALIFORNIA


def petitioner_lives_in_this_county(case: Case) -> bool:
    """The filer lives in the county of filing, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.petitioner.lives) in HERE


def petitioner_moved_county_lately(case: Case) -> bool:
    """The filer came to the county of filing later than to California, and not long before the break."""
    stay = case.residence.petitioner
    return petitioner_lives_in_this_county(case) and _moved_county_lately(case, stay)


def petitioner_left_a_county(case: Case) -> bool:
    """The filer came from another county of California, or has not said from where."""
    return petitioner_moved_county_lately(case) and known(case.residence.petitioner.previous_county) != ""


def petitioners_own_county_may_do(case: Case) -> bool:
    """The filer lives in another county than that of filing, where the other side may be too new."""
    elsewhere = known(case.residence.petitioner.lives) is Lives.CALIFORNIA
    return elsewhere and _divorce_needs_time(case) and not _surely_long_here(case, case.residence.respondent)


def respondents_own_county_may_do(case: Case) -> bool:
    """The other side lives in another county than that of filing, where the filer may be too new."""
    elsewhere = known(case.residence.respondent.lives) is Lives.CALIFORNIA
    return elsewhere and _divorce_needs_time(case) and not filers_time_is_enough(case)


def filers_time_is_enough(case: Case) -> bool:
    """The filer came to this state and county a year or more before the break, stayed, and means to stay."""
    filer = case.residence.petitioner
    return (
        _surely_long_here(case, filer) and not known(filer.absences) and known(filer.intends_to_stay) is True
    )


def respondent_lives_in_california(case: Case) -> bool:
    """The other side lives in California, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.respondent.lives) in IN_CALIFORNIA


def respondent_lives_in_this_county(case: Case) -> bool:
    """The other side lives in the county of filing, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.respondent.lives) in HERE


def case_may_rest_on_respondents_stay(case: Case) -> bool:
    """The other side lives in the county of filing and may have been here long enough when the filer has not.

    That can be so only where the filer lives elsewhere, has been away or may not stay; or where the
    filer came not long before the break, and the other side came earlier or may have.
    """
    filer = case.residence.petitioner
    return respondent_lives_in_this_county(case) and (
        known(filer.lives) not in HERE
        or bool(known(filer.absences))
        or known(filer.intends_to_stay) is False
        or _respondent_may_have_come_first(case)
    )


def only_respondents_stay_can_count(case: Case) -> bool:
    """The other side lives in the county of filing and the filer does not."""
    return respondent_lives_in_this_county(case) and known(case.residence.petitioner.lives) not in HERE


def respondent_moved_county_lately(case: Case) -> bool:
    """The case may rest on the other side's stay, and they changed county not long before the break."""
    stay = case.residence.respondent
    return case_may_rest_on_respondents_stay(case) and _moved_county_lately(case, stay)


def respondent_left_a_county(case: Case) -> bool:
    """The other side came from another county of California, or the filer has not said from where."""
    return respondent_moved_county_lately(case) and known(case.residence.respondent.previous_county) != ""


def married_and_both_live_elsewhere(case: Case) -> bool:
    """The two are married, and neither lives in California."""
    both = (known(case.residence.petitioner.lives), known(case.residence.respondent.lives))
    return is_married(case) and all(lives in AWAY for lives in both)


def same_sex_and_both_live_elsewhere(case: Case) -> bool:
    """The two are a married same-sex couple, and neither lives in California."""
    return married_and_both_live_elsewhere(case) and known(case.residence.exception.same_sex) is True


def same_sex_wedding_was_in_california(case: Case) -> bool:
    """A same-sex couple who both live elsewhere married in a California county."""
    return same_sex_and_both_live_elsewhere(case) and bool(known(case.residence.exception.wedding_county))


def cannot_divorce_at_home(case: Case) -> bool:
    """A same-sex couple married in California, and no place where either lives would end the marriage."""
    told = known(case.residence.exception.not_dissolvable_at_home)
    return same_sex_wedding_was_in_california(case) and told is True


def words_of_separation_are_in_doubt(case: Case) -> bool:
    """The person does not know on what day it was said, or one of the two cannot make decisions."""
    incapable = known(case.grounds.reason) is Reason.INCAPACITY
    return case.dates.separation_told_on is DONT_KNOW or incapable


# --- children -----------------------------------------------------------------------------------


def has_minor_children_together(case: Case) -> bool:
    """The two have children together who are under 18."""
    return Family.MINOR_TOGETHER in _several(case, "children.family")


def has_children_together(case: Case) -> bool:
    """The two have a child under 18 together, or one on the way."""
    return has_minor_children_together(case) or Family.UNBORN_TOGETHER in _several(case, "children.family")


def has_several_children(case: Case) -> bool:
    """The two have more than one child under 18 together, counting one on the way."""
    born = (known(case.children.how_many) or 1) if has_minor_children_together(case) else 0
    unborn = Family.UNBORN_TOGETHER in _several(case, "children.family")
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
    born, began = known(child.born_on), _union_began(case)
    to_both = known(child.parentage) not in (Parentage.ADOPTED_BY_BOTH, Parentage.ONE_PARENT_ONLY)
    return has_minor_children_together(case) and to_both and _may_be_earlier(born, began)


def may_be_of_the_union_in_law(case: Case, child: Child) -> bool:
    """A child said to be of one alone, who may have been born after the wedding or registration."""
    born, began = known(child.born_on), _union_began(case)
    alone = known(child.parentage) is Parentage.ONE_PARENT_ONLY
    return has_minor_children_together(case) and alone and _may_be_earlier(began, born)


def has_children_of_one_alone(case: Case) -> bool:
    """There are children of just one of the two."""
    return Family.FROM_OTHERS in _several(case, "children.family")


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
    told = _several(case, "safety.dangers")
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
    return has_children_together(case) and CustodySheet.OWN_PAGE in _several(case, "custody.sheets")


# --- grounds of a nullity -----------------------------------------------------------------------


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


# --- what the petition asks for -----------------------------------------------------------------


def gives_up_own_support(case: Case) -> bool:
    """The filer chose to end the court's power to order support for the filer."""
    return known(case.support.petitioner) is SupportChoice.END


def has_grown_children(case: Case) -> bool:
    """The two have children together who are 18 or older."""
    return Family.GROWN in _several(case, "children.family")


def a_grown_child_needs_support(case: Case) -> bool:
    """A grown child of both is still in high school, or cannot earn a living."""
    return has_grown_children(case) and bool(_several(case, "support.grown"))


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
    began = _union_began(case)
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


# --- ways to save time or money ------------------------------------------------------------------


def may_take_a_shorter_way(case: Case) -> bool:
    """A first petition for a divorce or separation, and no sign of danger was told."""
    safe = known(case.safety.dangers) == ()
    return safe and wants_divorce_or_separation(case) and known(case.matter.amended) is False


def looks_at_filing_together(case: Case) -> bool:
    """The filer wants to know about one petition for both."""
    return _looks_at(case, Shortcut.TOGETHER)


def is_free_to_file_together(case: Case) -> bool:
    """Nobody pushes the filer to file together."""
    return looks_at_filing_together(case) and known(case.joint.pressed) is False


def both_would_sign_together(case: Case) -> bool:
    """The other side would sign one petition too."""
    return is_free_to_file_together(case) and known(case.joint.willing) is True


def both_mean_to_agree(case: Case) -> bool:
    """Both would sign one petition, and mean to settle everything by agreement."""
    return both_would_sign_together(case) and known(case.joint.agree) is True


def looks_at_the_small_way(case: Case) -> bool:
    """The filer wants to know about the short kind of divorce, has no child with the other side, and has
    not surely been married or registered for many years.
    """
    together = (Family.MINOR_TOGETHER, Family.UNBORN_TOGETHER, Family.GROWN)
    divorce = kind_of(case) is Kind.DISSOLUTION
    family = _several(case, "children.family")
    closed = any(one in family for one in together) or _surely_a_long_union(case)
    return divorce and _looks_at(case, Shortcut.SMALL) and not closed


def has_a_lease_with_an_end(case: Case) -> bool:
    """One of the two rents a home, and the lease ends on a set day."""
    return looks_at_the_small_way(case) and known(case.summary.lease) is Lease.FIXED_END


def may_ask_about_fees_alone(case: Case) -> bool:
    """A first petition of somebody for whom the other ways are not open, or not safe."""
    first = kind_of(case) is not None and known(case.matter.amended) is False
    return first and not may_take_a_shorter_way(case)


def looks_at_a_fee_waiver(case: Case) -> bool:
    """The filer wants to know about not paying the court's fees."""
    alone = may_ask_about_fees_alone(case) and known(case.waiver.wanted) is True
    return alone or _looks_at(case, Shortcut.FEE_WAIVER)


def gets_none_of_the_benefits(case: Case) -> bool:
    """The filer looks at a fee waiver, and has not named a benefit that is enough by itself."""
    benefits = case.waiver.benefits
    return looks_at_a_fee_waiver(case) and benefits is not None and not known(benefits)


# --- what need not be asked -----------------------------------------------------------------------


def knows_of_no_other_case(case: Case) -> bool:
    """There is no other case, and so no earlier petition in this one."""
    return known(case.matter.other_case) is False


def county_of_filing_is_enough(case: Case) -> bool:
    """The county of filing is chosen, and the filer did not say that they live in another one."""
    elsewhere = known(case.residence.petitioner.lives) is Lives.CALIFORNIA
    return known(case.court.county) is not None and not elsewhere


def lives_in_a_county_of_its_own(case: Case) -> bool:
    """The filer named the county where they live, and files in another one."""
    home, filing = known(case.residence.petitioner.own_county), known(case.court.county)
    return bool(home and filing) and home != filing


def home_of_the_respondent_serves_nobody(case: Case) -> bool:
    """The filer's own time is enough for a divorce, and papers can be handed over in California."""
    mailing = known(case.respondent.mailing)
    here = mailing is not None and mailing.state == "CA"
    return here and _divorce_needs_time(case) and filers_time_is_enough(case)


def place_of_the_wedding_serves_nobody(case: Case) -> bool:
    """Only a nullity, and a couple that registered too, needs the place of the wedding."""
    return known(case.matter.unions) == (Union.MARRIAGE,) and not wants_nullity(case)


def petitioner_came_from_outside(case: Case) -> bool:
    """Before this county, the filer lived in no other county of California."""
    return known(case.residence.petitioner.previous_county) == ""


def respondent_came_from_outside(case: Case) -> bool:
    """Before this county, the other side lived in no other county of California."""
    return known(case.residence.respondent.previous_county) == ""


def lives_with_the_respondent(case: Case) -> bool:
    """The filer told that the two live in one home."""
    return known(case.residence.petitioner.lives) is Lives.SAME_HOME


def never_had_another_name(case: Case) -> bool:
    """The filer has used no other name, so there is none to get back."""
    return known(case.petitioner.other_names) == ()


def named_the_former_name_before(case: Case) -> bool:
    """The name wanted back is one that the filer told of as used before."""
    return known(case.requests.former_name) in (known(case.petitioner.other_names) or ())


# --- parts --------------------------------------------------------------------------------------


def _asks_for_support(case: Case) -> bool:
    """The filer asks for an order that one of the two pay support to the other."""
    return SupportChoice.ASK in (known(case.support.petitioner), known(case.support.respondent))


_FAR_TOO_LONG = 10
"""Years: no law, only so many that nobody needs to be asked on."""


def _came_later(stay: Residence, began: Day | None) -> bool:
    """Whether that person lives elsewhere, or surely came to California after the union began."""
    if known(stay.lives) in AWAY:
        return True
    came = known(stay.state_since)
    return came is not None and began is not None and came.earliest > began.latest


def _several(case: Case, key: str) -> Collection[object]:
    """The answers chosen where several may be; none where nothing was told."""
    chosen = known(case.fact(key))
    return chosen if isinstance(chosen, tuple) else ()


def _looks_at(case: Case, way: Shortcut) -> bool:
    return may_take_a_shorter_way(case) and way in _several(case, "shortcuts.look_at")


def _time_here_counts(case: Case) -> bool:
    """The case is of a kind in which the time spent here may matter.

    It does not for a nullity, nor for a partnership that was registered in California and no marriage.
    """
    return not wants_nullity(case) and known(case.matter.unions) != (Union.PARTNERS_CALIFORNIA,)


def _claims(case: Case, ground: NullityGround) -> bool:
    return wants_nullity(case) and ground in _several(case, "grounds.nullity")


def _homes_matter(case: Case, child: Child) -> bool:
    """A child of both in a family where a child lived outside California lately, or who is in the FL-105."""
    lately = has_minor_children_together(case) and Family.NOT_ALWAYS_HERE in _several(case, "children.family")
    return is_of_both(child) and (lately or fills_in_the_declaration(case))


def _custody_differs(case: Case) -> bool:
    return has_several_children(case) and known(case.custody.alike) is False


def _divorce_needs_time(case: Case) -> bool:
    return kind_of(case) is Kind.DISSOLUTION and _time_here_counts(case)


def _surely_long_here(case: Case, stay: Residence) -> bool:
    days = (known(stay.state_since), known(stay.county_since))
    return known(stay.lives) in HERE and all(_long_before_the_break(case, day) for day in days)


def _moved_county_lately(case: Case, stay: Residence) -> bool:
    state, county = known(stay.state_since), known(stay.county_since)
    later = state is not None and county is not None and state != county and state.earliest < county.latest
    return later and not _long_before_the_break(case, county)


def _respondent_may_have_come_first(case: Case) -> bool:
    filer, other = case.residence.petitioner, case.residence.respondent
    pairs = (
        (known(other.state_since), known(filer.state_since)),
        (known(other.county_since), known(filer.county_since)),
    )
    days_told = all(came is not None for came, _filer_came in pairs)
    return days_told and any(
        _may_be_earlier(came, filer_came) and not _long_before_the_break(case, filer_came)
        for came, filer_came in pairs
    )


def _long_before_the_break(case: Case, since: Day | None) -> bool:
    """Whether a stay surely began a year or more before the break, and so before any filing."""
    breaks = (known(case.dates.separation_told_on), known(case.dates.separation_acted_on))
    if since is None or since.unsure:
        return False
    year_later = (since.latest.year + 1, since.latest.month, since.latest.day)
    firsts = [day.earliest for day in breaks if day is not None and not day.unsure]
    return any(year_later <= (first.year, first.month, first.day) for first in firsts)


def _surely_a_long_union(case: Case) -> bool:
    """Whether the union had lasted ten years or more, far beyond what any short way allows."""
    began, broke = _union_began(case), known(case.dates.separation_told_on)
    if began is None or broke is None or began.unsure or broke.unsure:
        return False
    return broke.earliest.year - began.latest.year > _FAR_TOO_LONG


def _union_began(case: Case) -> Day | None:
    """The first day of the first union; None where a day that could be the first is not known."""
    days = [known(case.dates.married_on)] if is_married(case) else []
    days += [known(case.dates.registered_on)] if is_registered(case) else []
    told = [day for day in days if day is not None]
    return min(told, key=lambda day: day.earliest) if told and len(told) == len(days) else None


def _may_be_earlier(one: Day | None, other: Day | None) -> bool:
    """Whether the first day may lie before the second, also because one of them is not known for sure."""
    if one is None or other is None or one.unsure or other.unsure:
        return True
    return one.earliest < other.latest
