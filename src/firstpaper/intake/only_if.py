"""When a question applies, in plain words: for paper and for files, where nothing can be worked out.

One phrase for each predicate, to stand after "Only if". It may ask one person too many, never one too few:
an answer that is not needed is set aside when it is typed in.
"""

from collections.abc import Mapping

from firstpaper.facts.choices import Kind
from firstpaper.locale import _

_OF_KINDS: Mapping[str, frozenset[Kind]] = {
    "wants_divorce_or_separation": frozenset({Kind.DISSOLUTION, Kind.LEGAL_SEPARATION}),
    "wants_divorce_or_nullity": frozenset({Kind.DISSOLUTION, Kind.NULLITY}),
    "wants_legal_separation": frozenset({Kind.LEGAL_SEPARATION}),
    "wants_nullity": frozenset({Kind.NULLITY}),
}
"""Conditions that the kind of case alone decides."""


def only_if(predicate: str) -> str:
    """The condition that the predicate of this name tests, as words to stand after "Only if"."""
    return _phrases()[predicate]


def only_if_in(kind: Kind, predicate: str) -> str | None:
    """The same for a known kind of case, which the words leave out. None where each such case meets it."""
    if kind in _OF_KINDS.get(predicate, ()):
        return None
    return _once_the_kind_is_known().get(predicate) or _phrases()[predicate]


def _once_the_kind_is_known() -> Mapping[str, str]:
    return {
        "petitioner_lives_in_california": _("you live in California"),
        "petitioner_lives_in_this_county": _("you live in the county where you file"),
        "respondent_lives_in_california": _("your spouse or partner lives in California"),
        "respondent_lives_in_this_county": _("your spouse or partner lives in the county where you file"),
        "may_take_a_shorter_way": _("you told of no danger, and this is your first petition"),
    }


def _phrases() -> Mapping[str, str]:
    return {
        "is_married": _("you two are married"),
        "is_registered": _("you two registered as partners, here or elsewhere"),
        "is_registered_elsewhere": _("you two registered as partners outside California"),
        "wants_legal_separation": _("you ask for a legal separation"),
        "wants_nullity": _("you ask for a nullity"),
        "wants_divorce_or_separation": _("you ask for a divorce or a legal separation"),
        "wants_divorce_or_nullity": _("you ask for a divorce or a nullity"),
        "amends_a_petition": _("this petition replaces an earlier one"),
        "turns_separation_into_divorce": _(
            "the earlier petition asked for a separation, and now you ask for a divorce"
        ),
        "words_of_separation_are_in_doubt": _(
            "you do not know when it was said, or one of you cannot make decisions"
        ),
        "has_another_case": _("there is another court case about you two or your children"),
        "asked_before_to_end_the_union": _(
            "one of you has asked a court before to end the marriage or partnership"
        ),
        "must_hide_the_address": _("the other person must not learn where you live"),
        "parents_and_told_of_violence": _("you two have a child together, and you told of violence"),
        "needs_interpreter": _("somebody needs an interpreter in court"),
        **_where_the_two_live(),
        "may_be_of_the_union_in_law": _(
            "you said that this child is of just one of you, and it may have been born after the wedding"
        ),
        "has_grown_children": _("you have children together who are 18 or older"),
        "a_grown_child_needs_support": _("a grown child of both of you still needs support"),
        "has_children_of_one_alone": _("there are children of just one of you"),
        "others_were_born_in_the_union": _("one of you gave birth to such a child after the wedding"),
        **_children(),
        **_homes_of_the_children(),
        **_nullity(),
        "gives_up_own_support": _("you chose to end your own right to support"),
        "speaks_of_support": _("you ask for support for one of you, or keep it open"),
        "told_of_no_paper": _("the interview was told of no paper about property that you two signed"),
        "signed_a_paper": _("you two signed a paper about property or support"),
        "may_have_lived_elsewhere_together": _(
            "one of you has lived outside California at some time since the wedding"
        ),
        "asks_for_money_from_somebody_away": _(
            "your spouse or partner lives outside California, and you ask for money or to share things"
        ),
        "lists_separate_property": _("you chose to list each thing that is separate"),
        "lists_community_property": _("you chose to list each thing that you own together"),
        "wants_former_name_back": _("you want a former name back"),
        **_shorter_ways(),
        **_things(),
        **_whose_things(),
        **_debts_and_support(),
    }


def _where_the_two_live() -> Mapping[str, str]:
    return {
        "petitioner_lives_in_california": _("you live in California, and you do not ask for a nullity"),
        "petitioner_lives_in_this_county": _(
            "you live in the county where you file, and you do not ask for a nullity"
        ),
        "petitioner_moved_county_lately": _(
            "you moved here from another county, less than a year before you parted or later"
        ),
        "respondent_lives_in_california": _(
            "your spouse or partner lives in California, and you do not ask for a nullity"
        ),
        "petitioner_left_a_county": _("you came here from another county, not a year before you two parted"),
        "petitioners_own_county_may_do": _("you want a divorce, and you live in another county"),
        "respondents_own_county_may_do": _(
            "you want a divorce, your spouse lives in another county, and you came here not long ago"
        ),
        "respondent_lives_in_this_county": _(
            "your spouse or partner lives in the county where you file, and you do not ask for a nullity"
        ),
        "case_may_rest_on_respondents_stay": _(
            "your spouse or partner lives in the county where you file, and your own time here is short, "
            "broken off or may end"
        ),
        "only_respondents_stay_can_count": _(
            "your spouse or partner lives in the county where you file, and you do not"
        ),
        "respondent_left_a_county": _(
            "your spouse came here from another county, not a year before you two parted"
        ),
        "respondent_moved_county_lately": _(
            "your spouse or partner moved here from another county, less than a year before you parted "
            "or later"
        ),
        "married_and_both_live_elsewhere": _("you two are married, and neither of you lives in California"),
        "same_sex_and_both_live_elsewhere": _(
            "you are a married couple of the same sex, and neither of you lives in California"
        ),
        "same_sex_wedding_was_in_california": _(
            "you are a couple of the same sex who married in California, and neither of you lives here now"
        ),
        "cannot_divorce_at_home": _(
            "you married in California as a couple of the same sex, and no place where you live will "
            "end the marriage"
        ),
    }


def _children() -> Mapping[str, str]:
    return {
        "has_minor_children_together": _("you have children together who are under 18"),
        "has_children_together": _("you have a child under 18 together, or one on the way"),
        "has_several_children": _("you have more than one child under 18, counting one on the way"),
        "children_are_treated_alike": _("you have children together, and want the same for all of them"),
        "children_are_treated_differently": _("you do not want the same for all of your children"),
        "is_listed_child": _("you have this child, and the child is under 18"),
        "may_be_born_before_the_union": _(
            "this child was born to you both before you married or registered, or you are not sure"
        ),
        "signed_a_declaration": _("you both signed a declaration of parentage for this child"),
        "custody_goes_to_somebody_else": _('you chose "something else" for custody or visits'),
        "adds_own_custody_page": _("you want to add a page in your own words"),
    }


def _homes_of_the_children() -> Mapping[str, str]:
    return {
        "fills_in_the_declaration": _("you want to get form FL-105 ready now"),
        "fills_in_the_declaration_in_danger": _("you want to get form FL-105 ready now, and told of danger"),
        "is_in_the_declaration": _("you want to get form FL-105 ready now, and this child is on it"),
        "may_have_the_same_homes": _("there is a child before this one"),
        "tells_the_homes": _(
            "this is the first child, or has not lived in just the same places as the first"
        ),
        "may_tell_the_address": _("the address of this child need not stay secret"),
        "knows_of_a_case_about_the_children": _("you know of another court case about one of the children"),
        "knows_of_a_protective_order": _("you know of a restraining order that holds now"),
    }


def _nullity() -> Mapping[str, str]:
    return {
        "files_for_one_of_the_two": _("you ask for a nullity for somebody else, who is one of the couple"),
        "claims_under_age": _("you ask for a nullity because one of you was under 18"),
        "claims_earlier_marriage": _(
            "you ask for a nullity because one of you had an earlier spouse or partner"
        ),
        "claims_ground_that_ends_with_a_life": _(
            "you ask for a nullity because of an earlier spouse or partner, or an unsound mind"
        ),
        "claims_unsound_mind": _("you ask for a nullity because of an unsound mind"),
        "claims_fraud": _("you ask for a nullity because one of you was tricked"),
        "claims_force": _("you ask for a nullity because one of you was forced"),
        "claims_physical_incapacity": _("you ask for a nullity because one of you cannot have sex"),
        "filer_believed_union_valid": _(
            "you ask for a nullity, and you believed that the marriage or partnership was valid"
        ),
    }


def _shorter_ways() -> Mapping[str, str]:
    return {
        "may_take_a_shorter_way": _(
            "you told of no danger, and this is the first petition for a divorce or a separation"
        ),
        "looks_at_filing_together": _("you want to know about filing together"),
        "is_free_to_file_together": _(
            "you want to know about filing together, and nobody is pushing you to it"
        ),
        "both_would_sign_together": _("both of you would sign one petition"),
        "both_mean_to_agree": _("both of you would sign, and mean to settle all of it by agreement"),
        "looks_at_the_small_way": _(
            "you want to know about the short kind of divorce, and you have no children together"
        ),
        "has_a_lease_with_an_end": _("one of you rents a home, and the lease ends on a set day"),
        "may_ask_about_fees_alone": _(
            "this is a first petition, and you skipped the part on ways to save time or money"
        ),
        "looks_at_a_fee_waiver": _("it is hard for you to pay the court's fees"),
        "gets_none_of_the_benefits": _(
            "it is hard for you to pay the court's fees, and you get none of these benefits"
        ),
    }


def _things() -> Mapping[str, str]:
    return {
        "is_earned_over_time": _("it is a pension or plan from work, or it takes the place of pay"),
        "hangs_on_days_of_work": _("it is a pension, pay that comes late, or a stock option"),
        "has_an_end_of_work": _("it is a stock option, or the work that earned it has ended"),
        "is_stock_option": _("it is a stock option, or another share that work earns"),
        "is_injury_money": _("it is money for an injury"),
        "is_injury_by_somebody_else": _("it is money for an injury, and not from one of you to the other"),
        "is_a_thing_to_have": _("it is anything but a degree, a license or training"),
        "was_bought": _("it was bought, or one of you gave it to the other"),
        "is_personal_gift_of_the_spouse": _("one of you gave it to the other, such as a ring or a chair"),
        "is_used_by_one_alone": _("one of you gave it to the other, and that one alone uses it"),
        "may_be_grown_by_work": _(
            "it is one person's own business, or what one person's own things earned or grew to"
        ),
        "has_an_account_number": _("it is an account, a plan or a policy"),
        "has_a_loan_on_it": _("something is owed on it"),
        "was_paid_on_since": _("one of you alone paid on it since you parted"),
        "can_be_used_by_one": _("it is a house, land, a car or a boat"),
        "was_used_by_one_since": _("one of you alone has used it since you parted"),
    }


def _whose_things() -> Mapping[str, str]:
    return {
        "has_a_title_that_counts": _(
            "it is not a plan from work, late pay, a stock option, injury money or training"
        ),
        "is_in_own_trust": _("it is in a trust that the two of you made"),
        "may_be_mixed": _(
            "it was one person's own when it came, or pay from after you parted, or injury money"
        ),
        "may_hold_own_money": _("own money paid for it, or own money and other money lie in one account"),
        "may_come_from_elsewhere": _("you did not both live in California all the time"),
        "may_be_in_a_signed_paper": _("you two signed a paper about who owns or owes what"),
        "is_paid_for_bit_by_bit": _("it is a house, land or a business, or a car that own money paid for"),
        "is_house_from_before": _(
            "one of you had this house before the wedding, in one name, and money from the marriage went in"
        ),
    }


def _debts_and_support() -> Mapping[str, str]:
    return {
        "has_a_purpose": _("it is not support owed to an earlier family"),
        "may_not_be_for_the_family": _("it was not for the family's needs, and not for training"),
        "is_with_a_lender": _("it is a card or a loan"),
        "files_where_a_formula_is_known": _("you file in Santa Clara County"),
    }
