"""Each predicate, at least once where it holds and once where it does not."""

import inspect
from typing import Any

import pytest

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.children import Child
from firstpaper.intake.predicates import OF_THE_INTERVIEW
from tests.intake.predicates_of import predicates_of

PREDICATES = predicates_of(OF_THE_INTERVIEW)
Told = dict[str, Any]

MARRIED: Told = {"matter.unions": ["marriage"]}
DIVORCE: Told = {"matter.kind": "dissolution"}
SEPARATION: Told = {"matter.kind": "legal_separation"}
NULLITY: Told = {"matter.kind": "nullity"}
AMENDED: Told = {"matter.amended": True}
MINORS: Told = {"children.family": ["minor_together"]}
MOVED: Told = {"children.family": ["minor_together", "not_always_here"]}
TWO: Told = MINORS | {"children.how_many": 2}
DIFFERENT: Told = TWO | {"custody.alike": False}
HERE: Told = DIVORCE | MARRIED | {"residence.petitioner.lives": "this_county"}
OTHER_SIDE_HERE: Told = HERE | {"residence.respondent.lives": "this_county"}
BROKE_UP: Told = {"dates.separation_told_on": "2026-06-01", "dates.separation_acted_on": "2026-06-05"}
BOTH_AWAY: Told = MARRIED | {
    "residence.petitioner.lives": "other_state",
    "residence.respondent.lives": "abroad",
}
SAME_SEX: Told = BOTH_AWAY | {"residence.exception.same_sex": True}
SAME_SEX_HERE: Told = SAME_SEX | {"residence.exception.wedding_county": "Alameda"}
FIRST: Told = DIVORCE | {"matter.amended": False}
FILLS_IN: Told = MINORS | {"uccjea.now": True}
IN_DANGER: Told = FILLS_IN | {"safety.dangers": ["violence"]}
SAFE_AT_HOME: Told = FILLS_IN | {"safety.dangers": []}
SIBLING: Told = {"child.1.name": "Ana"}
SAFE: Told = FIRST | {"safety.dangers": []}
TOGETHER: Told = SAFE | {"shortcuts.look_at": ["together"]}
FREE: Told = TOGETHER | {"joint.pressed": False}
WILLING: Told = FREE | {"joint.willing": True}
SMALL: Told = SAFE | {"shortcuts.look_at": ["small"], "children.family": []}
LASTED_LONG: Told = MARRIED | {"dates.married_on": "2001-05-06", "dates.separation_told_on": "2026-03-01"}
LASTED_FOUR_YEARS: Told = LASTED_LONG | {"dates.married_on": "2022-05-06"}
WAIVER: Told = SAFE | {"shortcuts.look_at": ["fee_waiver"]}
ANOTHER: Told = {"matter.other_case": True}
BEFORE: Told = ANOTHER | {"matter.other_case_kinds": ["union"]}
AFRAID: Told = FIRST | {"safety.dangers": ["afraid"]}
AFRAID_AND_POOR: Told = AFRAID | {"waiver.wanted": True}


def since(who: str, state: Any, county: Any) -> Told:
    return {f"residence.{who}.state_since": state, f"residence.{who}.county_since": county}


STAYS: Told = {"residence.petitioner.intends_to_stay": True, "residence.petitioner.absences": []}
LONG_HERE: Told = HERE | BROKE_UP | STAYS | since("petitioner", "2009", "2012")
CAME_LATELY: Told = HERE | BROKE_UP | STAYS | since("petitioner", "2009", "2026-09-01")
OTHER_ELSEWHERE: Told = DIVORCE | MARRIED | {"residence.respondent.lives": "california"}
FILER_ELSEWHERE: Told = DIVORCE | MARRIED | {"residence.petitioner.lives": "california"}
MOVED_OTHER: Told = (
    FILER_ELSEWHERE
    | BROKE_UP
    | {"residence.respondent.lives": "this_county"}
    | since("respondent", "2009", "2026-03-01")
)


def files(filer: str, on: str = "under_age") -> Told:
    return ground(on) | {"grounds.filer": filer}


HOME_COUNTY: Told = {"residence.petitioner.own_county": "Fresno"}


def mailed_to(state: str) -> Told:
    address = {"street": "1 Olive Street", "city": "Springfield", "state": state, "zip": "93701"}
    return {"respondent.mailing": address}


def ground(name: str) -> Told:
    return NULLITY | {"grounds.nullity": [name]}


Example = tuple[str, str, Told]
HOLDS: tuple[Example, ...] = (
    ("fills_in_the_declaration", "now", FILLS_IN),
    ("fills_in_the_declaration_in_danger", "violence", IN_DANGER),
    ("knows_of_a_case_about_the_children", "adoption", FILLS_IN | {"uccjea.cases": ["adoption"]}),
    ("knows_of_a_protective_order", "criminal court", FILLS_IN | {"uccjea.orders": ["criminal"]}),
    ("is_married", "married and registered", {"matter.unions": ["marriage", "partners_california"]}),
    ("is_registered", "registered in California", {"matter.unions": ["partners_california"]}),
    ("is_registered", "registered elsewhere", {"matter.unions": ["partners_elsewhere"]}),
    ("wants_legal_separation", "legal separation", SEPARATION),
    ("wants_nullity", "nullity", NULLITY),
    ("wants_divorce_or_separation", "divorce", DIVORCE),
    ("wants_divorce_or_separation", "legal separation", SEPARATION),
    ("wants_divorce_or_nullity", "divorce", DIVORCE),
    ("wants_divorce_or_nullity", "nullity", NULLITY),
    ("amends_a_petition", "amended", AMENDED),
    (
        "turns_separation_into_divorce",
        "separation first, divorce now",
        AMENDED | DIVORCE | {"matter.first_kind": "legal_separation"},
    ),
    ("has_grown_children", "grown", {"children.family": ["grown"]}),
    (
        "a_grown_child_needs_support",
        "cannot earn",
        {"children.family": ["grown"], "support.grown": ["cannot_earn"]},
    ),
    ("has_children_of_one_alone", "stepchildren", {"children.family": ["from_others"]}),
    (
        "others_were_born_in_the_union",
        "born in the marriage",
        {"children.family": ["from_others"], "children.others_in_union": True},
    ),
    ("has_another_case", "another case", {"matter.other_case": True}),
    ("is_registered_elsewhere", "elsewhere", {"matter.unions": ["marriage", "partners_elsewhere"]}),
    ("asked_before_to_end_the_union", "yes", BEFORE),
    ("must_hide_the_address", "hide", {"safety.dangers": ["afraid", "hide_address"]}),
    ("parents_and_told_of_violence", "violence", MINORS | {"safety.dangers": ["violence"]}),
    ("parents_and_told_of_violence", "an order", MINORS | {"safety.dangers": ["restraining_order"]}),
    ("knows_of_no_other_case", "none", {"matter.other_case": False}),
    ("place_of_the_wedding_serves_nobody", "a divorce", {"matter.unions": ["marriage"]}),
    ("petitioner_came_from_outside", "abroad", {"residence.petitioner.previous_county": ""}),
    ("respondent_came_from_outside", "abroad", {"residence.respondent.previous_county": ""}),
    ("lives_with_the_respondent", "one home", {"residence.petitioner.lives": "same_home"}),
    ("never_had_another_name", "none", {"petitioner.other_names": []}),
    (
        "named_the_former_name_before",
        "one of them",
        {"petitioner.other_names": ["Ana Vega"], "requests.former_name": "Ana Vega"},
    ),
    ("words_of_separation_are_in_doubt", "no day", {"dates.separation_told_on": DONT_KNOW}),
    ("words_of_separation_are_in_doubt", "cannot decide", BROKE_UP | {"grounds.reason": "incapacity"}),
    ("needs_interpreter", "interpreter", {"people.special": ["filer_in_military", "interpreter"]}),
    ("petitioner_lives_in_california", "another county", {"residence.petitioner.lives": "california"}),
    (
        "petitioner_lives_in_california",
        "one home with the other",
        {"residence.petitioner.lives": "same_home"},
    ),
    ("petitioner_lives_in_california", "kind not told yet", {"residence.petitioner.lives": "this_county"}),
    ("petitioner_lives_in_this_county", "this county", HERE),
    ("petitioner_lives_in_this_county", "one home", HERE | {"residence.petitioner.lives": "same_home"}),
    (
        "petitioner_moved_county_lately",
        "moved after the break",
        HERE | BROKE_UP | since("petitioner", "2009", "2026-09-01"),
    ),
    (
        "petitioner_moved_county_lately",
        "moved one day less than a year before the break",
        HERE | BROKE_UP | since("petitioner", "2009", "2025-06-06"),
    ),
    (
        "petitioner_moved_county_lately",
        "the year of the move leaves it open",
        HERE | BROKE_UP | since("petitioner", "2009", "2025"),
    ),
    (
        "petitioner_moved_county_lately",
        "not sure of the move",
        HERE | BROKE_UP | since("petitioner", "2009", "2019?"),
    ),
    (
        "petitioner_moved_county_lately",
        "no break told yet",
        HERE | since("petitioner", "2009", "2019"),
    ),
    (
        "petitioner_left_a_county",
        "came from Kern",
        CAME_LATELY | {"residence.petitioner.previous_county": "Kern"},
    ),
    ("petitioner_left_a_county", "has not said from where", CAME_LATELY),
    ("petitioners_own_county_may_do", "in another county", FILER_ELSEWHERE),
    (
        "petitioners_own_county_may_do",
        "the other side came not long before the break",
        FILER_ELSEWHERE
        | BROKE_UP
        | {"residence.respondent.lives": "this_county"}
        | since("respondent", "2009", "2026-03-01"),
    ),
    ("respondents_own_county_may_do", "the filer came lately", CAME_LATELY | OTHER_ELSEWHERE),
    (
        "respondents_own_county_may_do",
        "the filer lives abroad",
        OTHER_ELSEWHERE | {"residence.petitioner.lives": "abroad"},
    ),
    (
        "respondents_own_county_may_do",
        "the filer may not stay",
        LONG_HERE | OTHER_ELSEWHERE | {"residence.petitioner.intends_to_stay": False},
    ),
    ("filers_time_is_enough", "here for years", LONG_HERE),
    ("county_of_filing_is_enough", "the county is chosen", HERE | {"court.county": "Kern"}),
    ("lives_in_a_county_of_its_own", "files elsewhere", HOME_COUNTY | {"court.county": "Kern"}),
    ("home_of_the_respondent_serves_nobody", "mail goes to California", LONG_HERE | mailed_to("CA")),
    ("respondent_left_a_county", "has not said from where", MOVED_OTHER),
    ("respondent_lives_in_california", "another county", {"residence.respondent.lives": "california"}),
    ("respondent_lives_in_this_county", "this county", OTHER_SIDE_HERE),
    (
        "case_may_rest_on_respondents_stay",
        "the filer lives elsewhere",
        OTHER_SIDE_HERE | {"residence.petitioner.lives": "other_state"},
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the filer was away",
        OTHER_SIDE_HERE | {"residence.petitioner.absences": [{"start": "2026-01-05", "end": "2026-03-01"}]},
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the filer does not mean to stay",
        OTHER_SIDE_HERE | {"residence.petitioner.intends_to_stay": False},
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the filer came later to the county",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2010", "2026-08-01")
        | since("respondent", "2010", "2010"),
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the filer's day is not known",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2010", DONT_KNOW)
        | since("respondent", "2010", "2010"),
    ),
    (
        "only_respondents_stay_can_count",
        "the filer lives in another county",
        OTHER_SIDE_HERE | {"residence.petitioner.lives": "california"},
    ),
    (
        "respondent_moved_county_lately",
        "filer elsewhere, other side moved after the break",
        OTHER_SIDE_HERE
        | BROKE_UP
        | {"residence.petitioner.lives": "other_state"}
        | since("respondent", "2010", "2026-07-01"),
    ),
    ("married_and_both_live_elsewhere", "both away", BOTH_AWAY),
    ("same_sex_and_both_live_elsewhere", "same sex", SAME_SEX),
    ("same_sex_wedding_was_in_california", "married in Alameda", SAME_SEX_HERE),
    (
        "cannot_divorce_at_home",
        "no court at home",
        SAME_SEX_HERE | {"residence.exception.not_dissolvable_at_home": True},
    ),
    ("has_minor_children_together", "a child", MINORS),
    ("has_children_together", "a child", MINORS),
    ("has_children_together", "one on the way", {"children.family": ["unborn_together"]}),
    ("has_several_children", "two", TWO),
    (
        "has_several_children",
        "one, and one on the way",
        {"children.family": ["minor_together", "unborn_together"], "children.how_many": 1},
    ),
    ("children_are_treated_alike", "one child", MINORS | {"children.how_many": 1}),
    ("children_are_treated_alike", "said so", TWO | {"custody.alike": True}),
    ("children_are_treated_alike", "not asked yet", TWO),
    ("custody_goes_to_somebody_else", "legal", MINORS | {"custody.legal": "other"}),
    ("custody_goes_to_somebody_else", "visits", MINORS | {"custody.visits": "other"}),
    ("custody_goes_to_somebody_else", "of one child", DIFFERENT | {"child.2.physical": "other"}),
    ("adds_own_custody_page", "own page", MINORS | {"custody.sheets": ["fl_311", "own_page"]}),
    ("files_for_one_of_the_two", "a parent", files("parent_or_guardian")),
    (
        "files_for_one_of_the_two",
        "a conservator",
        files("relative_or_conservator", "fraud"),
    ),
    ("claims_under_age", "under age", ground("under_age")),
    ("claims_earlier_marriage", "bigamy", ground("bigamy")),
    ("claims_earlier_marriage", "prior spouse", ground("prior_spouse")),
    ("claims_ground_that_ends_with_a_life", "prior spouse", ground("prior_spouse")),
    ("claims_ground_that_ends_with_a_life", "unsound mind", ground("unsound_mind")),
    ("claims_unsound_mind", "unsound mind", ground("unsound_mind")),
    ("claims_fraud", "fraud", ground("fraud")),
    ("claims_force", "force", ground("force")),
    ("claims_physical_incapacity", "incapacity", ground("physical_incapacity")),
    ("filer_believed_union_valid", "the filer", NULLITY | {"grounds.good_faith": "petitioner"}),
    ("filer_believed_union_valid", "both", NULLITY | {"grounds.good_faith": "both"}),
    ("gives_up_own_support", "end", {"support.petitioner": "end"}),
    ("speaks_of_support", "kept open", {"support.respondent": "reserve"}),
    ("only_keeps_support_open", "kept open", {"support.respondent": "reserve"}),
    ("speaks_of_support", "for the filer", {"support.petitioner": "ask"}),
    ("speaks_of_support", "for the other", {"support.respondent": "ask"}),
    ("lists_separate_property", "list", {"property.separate_how": "list"}),
    ("signed_a_paper", "agreement", {"people.special": ["agreement"]}),
    (
        "may_have_lived_elsewhere_together",
        "came after the wedding",
        DIVORCE | MARRIED | {"dates.married_on": "2013-05-18", "residence.petitioner.state_since": "2019"},
    ),
    ("may_have_lived_elsewhere_together", "lives elsewhere", {"residence.respondent.lives": "other_state"}),
    (
        "asks_for_money_from_somebody_away",
        "support",
        {"residence.respondent.lives": "abroad", "support.petitioner": "ask"},
    ),
    (
        "asks_for_money_from_somebody_away",
        "property",
        {"residence.respondent.lives": "other_state", "property.community_how": "not_yet_known"},
    ),
    ("lists_community_property", "list", {"property.community_how": "list"}),
    ("wants_former_name_back", "a name", DIVORCE | {"requests.former_name": "Maria Soto"}),
    ("may_take_a_shorter_way", "divorce, first petition, no danger", SAFE),
    ("may_take_a_shorter_way", "legal separation", SAFE | SEPARATION),
    ("looks_at_filing_together", "together", TOGETHER),
    ("looks_at_filing_together", "several ways", SAFE | {"shortcuts.look_at": ["together", "fee_waiver"]}),
    ("is_free_to_file_together", "nobody pushes", FREE),
    ("both_would_sign_together", "willing", WILLING),
    ("both_mean_to_agree", "agree", WILLING | {"joint.agree": True}),
    ("looks_at_the_small_way", "no children", SMALL),
    ("looks_at_the_small_way", "a child of one", SMALL | {"children.family": ["from_others"]}),
    ("looks_at_the_small_way", "four years", SMALL | LASTED_FOUR_YEARS),
    ("looks_at_the_small_way", "not sure since when", SMALL | LASTED_LONG | {"dates.married_on": "2001?"}),
    ("has_a_lease_with_an_end", "a lease with an end", SMALL | {"summary.lease": "fixed_end"}),
    ("may_ask_about_fees_alone", "danger was told", AFRAID),
    ("may_ask_about_fees_alone", "nullity", SAFE | NULLITY),
    ("looks_at_a_fee_waiver", "chosen among the ways", WAIVER),
    ("looks_at_a_fee_waiver", "asked alone", AFRAID_AND_POOR),
    ("gets_none_of_the_benefits", "none", WAIVER | {"waiver.benefits": []}),
    ("gets_none_of_the_benefits", "not sure", AFRAID_AND_POOR | {"waiver.benefits": DONT_KNOW}),
)

HOLDS_NOT: tuple[Example, ...] = (
    ("fills_in_the_declaration", "later", MINORS | {"uccjea.now": False}),
    ("fills_in_the_declaration", "no minor children", {"uccjea.now": True}),
    ("fills_in_the_declaration_in_danger", "no danger", SAFE_AT_HOME),
    ("knows_of_a_case_about_the_children", "none", FILLS_IN | {"uccjea.cases": []}),
    ("knows_of_a_case_about_the_children", "later", MINORS | {"uccjea.cases": ["family"]}),
    ("knows_of_a_protective_order", "none", FILLS_IN | {"uccjea.orders": []}),
    ("is_married", "registered only", {"matter.unions": ["partners_california"]}),
    ("is_married", "does not know", {"matter.unions": DONT_KNOW}),
    ("is_registered", "married only", MARRIED),
    ("wants_legal_separation", "divorce", DIVORCE),
    ("wants_nullity", "divorce", DIVORCE),
    ("wants_divorce_or_separation", "nullity", NULLITY),
    ("wants_divorce_or_separation", "not told", {}),
    ("wants_divorce_or_nullity", "legal separation", SEPARATION),
    ("amends_a_petition", "first filing", {"matter.amended": False}),
    ("amends_a_petition", "does not know", {"matter.amended": DONT_KNOW}),
    (
        "turns_separation_into_divorce",
        "a first filing with an answer left from before",
        DIVORCE | {"matter.amended": False, "matter.first_kind": "legal_separation"},
    ),
    (
        "turns_separation_into_divorce",
        "a divorce from the start",
        AMENDED | DIVORCE | {"matter.first_kind": "dissolution"},
    ),
    ("has_grown_children", "minors", MINORS),
    ("a_grown_child_needs_support", "none does", {"children.family": ["grown"], "support.grown": []}),
    ("has_children_of_one_alone", "children of both", MINORS),
    ("others_were_born_in_the_union", "none was", {"children.family": ["from_others"]}),
    ("words_of_separation_are_in_doubt", "a day", BROKE_UP | {"grounds.reason": "irreconcilable"}),
    ("has_another_case", "none", {"matter.other_case": False}),
    ("is_registered_elsewhere", "here", {"matter.unions": ["partners_california"]}),
    ("asked_before_to_end_the_union", "another kind", ANOTHER | {"matter.other_case_kinds": ["children"]}),
    (
        "asked_before_to_end_the_union",
        "taken back",
        BEFORE | {"matter.other_case": False},
    ),
    ("must_hide_the_address", "fear alone", {"safety.dangers": ["afraid"]}),
    ("parents_and_told_of_violence", "fear alone", MINORS | {"safety.dangers": ["afraid"]}),
    ("parents_and_told_of_violence", "no child", {"children.family": [], "safety.dangers": ["violence"]}),
    ("knows_of_no_other_case", "one", {"matter.other_case": True}),
    ("place_of_the_wedding_serves_nobody", "a nullity", NULLITY | {"matter.unions": ["marriage"]}),
    ("petitioner_came_from_outside", "Kern", {"residence.petitioner.previous_county": "Kern"}),
    ("respondent_came_from_outside", "Kern", {"residence.respondent.previous_county": "Kern"}),
    ("lives_with_the_respondent", "two homes", {"residence.petitioner.lives": "this_county"}),
    ("never_had_another_name", "one", {"petitioner.other_names": ["Ana Vega"]}),
    (
        "named_the_former_name_before",
        "another",
        {"petitioner.other_names": ["Ana Vega"], "requests.former_name": "Ana Soto"},
    ),
    ("needs_interpreter", "military", {"people.special": ["filer_in_military"]}),
    ("petitioner_lives_in_california", "abroad", {"residence.petitioner.lives": "abroad"}),
    (
        "petitioner_lives_in_california",
        "a nullity asks for no time here",
        NULLITY | {"residence.petitioner.lives": "this_county"},
    ),
    (
        "petitioner_lives_in_california",
        "a California partnership asks for no time here",
        HERE | {"matter.unions": ["partners_california"]},
    ),
    (
        "petitioner_lives_in_this_county",
        "another county",
        HERE | {"residence.petitioner.lives": "california"},
    ),
    (
        "petitioner_moved_county_lately",
        "moved a year before the break",
        HERE | BROKE_UP | since("petitioner", "2009", "2025-06-05"),
    ),
    (
        "petitioner_moved_county_lately",
        "came to the county and the state at once",
        HERE | BROKE_UP | since("petitioner", "2026-01-01", "2026-01-01"),
    ),
    (
        "petitioner_moved_county_lately",
        "the day is not known",
        HERE | BROKE_UP | since("petitioner", "2009", DONT_KNOW),
    ),
    (
        "petitioner_left_a_county",
        "came from outside California",
        CAME_LATELY | {"residence.petitioner.previous_county": ""},
    ),
    ("petitioner_left_a_county", "never moved", LONG_HERE),
    ("petitioners_own_county_may_do", "in the county of filing", HERE),
    ("petitioners_own_county_may_do", "a separation needs no time", FILER_ELSEWHERE | SEPARATION),
    (
        "petitioners_own_county_may_do",
        "the other side has been there for years",
        FILER_ELSEWHERE
        | BROKE_UP
        | {"residence.respondent.lives": "this_county"}
        | since("respondent", "2009", "2009"),
    ),
    ("respondents_own_county_may_do", "the filer has been here for years", LONG_HERE | OTHER_ELSEWHERE),
    ("respondents_own_county_may_do", "in the county of filing", CAME_LATELY | OTHER_SIDE_HERE),
    ("respondents_own_county_may_do", "a nullity needs no time", CAME_LATELY | OTHER_ELSEWHERE | NULLITY),
    ("filers_time_is_enough", "came lately", CAME_LATELY),
    ("county_of_filing_is_enough", "not chosen yet", HERE),
    ("county_of_filing_is_enough", "lives elsewhere", FILER_ELSEWHERE | {"court.county": "Kern"}),
    ("lives_in_a_county_of_its_own", "files at home", HOME_COUNTY | {"court.county": "Fresno"}),
    ("lives_in_a_county_of_its_own", "has not chosen a county", HOME_COUNTY),
    ("home_of_the_respondent_serves_nobody", "mail goes to Nevada", LONG_HERE | mailed_to("NV")),
    ("home_of_the_respondent_serves_nobody", "no address", LONG_HERE),
    ("home_of_the_respondent_serves_nobody", "came lately", CAME_LATELY | mailed_to("CA")),
    ("home_of_the_respondent_serves_nobody", "separation", LONG_HERE | SEPARATION | mailed_to("CA")),
    (
        "filers_time_is_enough",
        "not asked about staying yet",
        LONG_HERE | {"residence.petitioner.intends_to_stay": None},
    ),
    (
        "filers_time_is_enough",
        "was away",
        LONG_HERE | {"residence.petitioner.absences": [{"start": "2026-01-05"}]},
    ),
    (
        "respondent_left_a_county",
        "came from outside California",
        MOVED_OTHER | {"residence.respondent.previous_county": ""},
    ),
    ("respondent_lives_in_california", "not known", {"residence.respondent.lives": DONT_KNOW}),
    (
        "respondent_lives_in_this_county",
        "another county",
        OTHER_SIDE_HERE | {"residence.respondent.lives": "california"},
    ),
    (
        "case_may_rest_on_respondents_stay",
        "both came on the same day",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2026-01-01", "2026-01-01")
        | since("respondent", "2026-01-01", "2026-01-01"),
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the filer came later, but long ago",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2010", "2010")
        | since("respondent", "1990", "1990"),
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the other side's days are not known",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2026-01-01", "2026-01-01")
        | since("respondent", DONT_KNOW, DONT_KNOW),
    ),
    (
        "case_may_rest_on_respondents_stay",
        "the other side lives elsewhere",
        {"residence.petitioner.lives": "abroad", "residence.respondent.lives": "abroad"},
    ),
    ("only_respondents_stay_can_count", "both live here", OTHER_SIDE_HERE),
    (
        "respondent_moved_county_lately",
        "the filer has been here for years",
        OTHER_SIDE_HERE
        | BROKE_UP
        | since("petitioner", "2010", "2010")
        | since("respondent", "2010", "2026-07-01"),
    ),
    (
        "married_and_both_live_elsewhere",
        "one lives here",
        BOTH_AWAY | {"residence.petitioner.lives": "this_county"},
    ),
    (
        "married_and_both_live_elsewhere",
        "partners",
        BOTH_AWAY | {"matter.unions": ["partners_california"]},
    ),
    ("married_and_both_live_elsewhere", "not known", BOTH_AWAY | {"residence.respondent.lives": DONT_KNOW}),
    (
        "same_sex_and_both_live_elsewhere",
        "not of the same sex",
        SAME_SEX | {"residence.exception.same_sex": False},
    ),
    (
        "same_sex_wedding_was_in_california",
        "married elsewhere",
        SAME_SEX | {"residence.exception.wedding_county": ""},
    ),
    ("same_sex_wedding_was_in_california", "not told where", SAME_SEX),
    (
        "cannot_divorce_at_home",
        "a court at home would do it",
        SAME_SEX_HERE | {"residence.exception.not_dissolvable_at_home": False},
    ),
    ("has_minor_children_together", "grown", {"children.family": ["grown"]}),
    ("has_children_together", "stepchildren", {"children.family": ["from_others", "grown"]}),
    ("has_children_together", "none", {"children.family": []}),
    ("has_several_children", "one", MINORS | {"children.how_many": 1}),
    ("has_several_children", "a number left from before", {"children.family": [], "children.how_many": 3}),
    ("children_are_treated_alike", "said not", DIFFERENT),
    ("children_are_treated_alike", "no children", {"children.family": [], "custody.alike": True}),
    ("custody_goes_to_somebody_else", "joint", MINORS | {"custody.legal": "joint"}),
    (
        "custody_goes_to_somebody_else",
        "an answer for all, left from before the wishes differed",
        DIFFERENT | {"custody.legal": "other", "child.1.legal": "joint"},
    ),
    (
        "custody_goes_to_somebody_else",
        "a child of one parent",
        DIFFERENT | {"child.1.legal": "other", "child.1.parentage": "one_parent_only"},
    ),
    ("adds_own_custody_page", "forms only", MINORS | {"custody.sheets": ["fl_311"]}),
    ("files_for_one_of_the_two", "a spouse", files("spouse")),
    (
        "files_for_one_of_the_two",
        "the earlier spouse",
        files("former_spouse"),
    ),
    ("claims_under_age", "force", ground("force")),
    ("claims_under_age", "a divorce now", ground("under_age") | DIVORCE),
    ("claims_earlier_marriage", "fraud", ground("fraud")),
    ("claims_ground_that_ends_with_a_life", "bigamy", ground("bigamy")),
    ("claims_unsound_mind", "fraud", ground("fraud")),
    ("claims_fraud", "force", ground("force")),
    ("claims_force", "fraud", ground("fraud")),
    ("claims_physical_incapacity", "incest", ground("incest")),
    ("filer_believed_union_valid", "only the other", NULLITY | {"grounds.good_faith": "respondent"}),
    ("filer_believed_union_valid", "a divorce now", DIVORCE | {"grounds.good_faith": "both"}),
    ("gives_up_own_support", "reserve", {"support.petitioner": "reserve"}),
    ("gives_up_own_support", "ends the other's", {"support.respondent": "end"}),
    ("speaks_of_support", "ends it", {"support.petitioner": "end", "support.respondent": "say_nothing"}),
    ("only_keeps_support_open", "asks", {"support.respondent": "ask", "support.petitioner": "reserve"}),
    ("lists_separate_property", "kinds only", {"property.separate_how": "classes"}),
    ("signed_a_paper", "none", {"people.special": []}),
    (
        "may_have_lived_elsewhere_together",
        "came in the month of the wedding",
        DIVORCE | MARRIED | {"dates.married_on": "2013-05-18", "residence.petitioner.state_since": "2013-05"},
    ),
    ("may_have_lived_elsewhere_together", "nullity", NULLITY | {"residence.respondent.lives": "other_state"}),
    (
        "asks_for_money_from_somebody_away",
        "lives here",
        {"residence.respondent.lives": "california", "support.petitioner": "ask"},
    ),
    ("asks_for_money_from_somebody_away", "asks for none", {"residence.respondent.lives": "abroad"}),
    ("lists_community_property", "later", {"property.community_how": "not_yet_known"}),
    ("may_take_a_shorter_way", "danger was told", AFRAID),
    ("may_take_a_shorter_way", "danger is not known", FIRST | {"safety.dangers": DONT_KNOW}),
    ("may_take_a_shorter_way", "danger was not asked", FIRST),
    ("may_take_a_shorter_way", "nullity", SAFE | NULLITY),
    ("may_take_a_shorter_way", "amended", SAFE | AMENDED),
    ("may_take_a_shorter_way", "not known whether amended", SAFE | {"matter.amended": DONT_KNOW}),
    ("looks_at_filing_together", "other ways", WAIVER),
    ("looks_at_filing_together", "danger was told later", TOGETHER | {"safety.dangers": ["fled"]}),
    ("is_free_to_file_together", "pushed", TOGETHER | {"joint.pressed": True}),
    ("is_free_to_file_together", "not sure", TOGETHER | {"joint.pressed": DONT_KNOW}),
    ("both_would_sign_together", "not willing", FREE | {"joint.willing": False}),
    ("both_would_sign_together", "pushed after all", WILLING | {"joint.pressed": True}),
    ("both_mean_to_agree", "one issue for a judge", WILLING | {"joint.agree": False}),
    ("both_mean_to_agree", "not willing after all", WILLING | {"joint.willing": False, "joint.agree": True}),
    ("looks_at_the_small_way", "separation", SMALL | SEPARATION),
    ("looks_at_the_small_way", "a minor child", SMALL | MINORS),
    ("looks_at_the_small_way", "a child on the way", SMALL | {"children.family": ["unborn_together"]}),
    ("looks_at_the_small_way", "a grown child", SMALL | {"children.family": ["grown"]}),
    ("looks_at_the_small_way", "other ways", TOGETHER),
    ("looks_at_the_small_way", "a long marriage", SMALL | LASTED_LONG),
    ("has_a_lease_with_an_end", "month to month", SMALL | {"summary.lease": "no_fixed_end"}),
    ("has_a_lease_with_an_end", "a child now", SMALL | MINORS | {"summary.lease": "fixed_end"}),
    ("may_ask_about_fees_alone", "the other ways are open", SAFE),
    ("may_ask_about_fees_alone", "amended", AFRAID | AMENDED),
    ("may_ask_about_fees_alone", "kind not told", {"matter.amended": False}),
    ("looks_at_a_fee_waiver", "fees are no trouble", AFRAID | {"waiver.wanted": False}),
    ("looks_at_a_fee_waiver", "an answer left from before", SAFE | {"waiver.wanted": True}),
    ("looks_at_a_fee_waiver", "other ways", TOGETHER),
    ("gets_none_of_the_benefits", "one of them", WAIVER | {"waiver.benefits": ["ssi"]}),
    ("gets_none_of_the_benefits", "benefits not told", WAIVER),
    ("gets_none_of_the_benefits", "no waiver wanted", SAFE | {"waiver.benefits": []}),
    ("wants_former_name_back", "keeps the name", DIVORCE | {"requests.former_name": ""}),
    ("wants_former_name_back", "a separation now", SEPARATION | {"requests.former_name": "Maria Soto"}),
)

CHILD_HOLDS: tuple[tuple[str, str, Told, Told], ...] = (
    (
        "may_be_of_the_union_in_law",
        "born in the marriage",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2014-01-01", "parentage": "one_parent_only"},
    ),
    ("may_be_of_the_union_in_law", "no dates", MINORS, {"parentage": "one_parent_only"}),
    ("is_listed_child", "a child of both", MINORS, {}),
    ("children_are_treated_differently", "wishes differ", DIFFERENT, {"parentage": "born_to_both"}),
    ("children_are_treated_differently", "parentage not told", DIFFERENT, {}),
    (
        "may_be_born_before_the_union",
        "born the day before",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2012-06-13", "parentage": "born_to_both"},
    ),
    (
        "may_be_born_before_the_union",
        "the year leaves it open",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2012"},
    ),
    (
        "may_be_born_before_the_union",
        "not sure of the birth date",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2015-01-01?"},
    ),
    ("may_be_born_before_the_union", "wedding day not known", MINORS | MARRIED, {"born_on": "2015-01-01"}),
    ("signed_a_declaration", "with a copy", MINORS, {"declaration": "signed_with_copy"}),
    ("signed_a_declaration", "without a copy", MINORS, {"declaration": "signed_no_copy"}),
    ("is_in_the_declaration", "a child of both", FILLS_IN, {"parentage": "born_to_both"}),
    ("may_have_the_same_homes", "a second child", FILLS_IN | SIBLING, {"name": "Ben"}),
    ("may_have_the_same_homes", "a second child who lived elsewhere", MOVED | SIBLING, {"name": "Ben"}),
    ("tells_the_homes", "a child who lived elsewhere", MOVED, {}),
    ("tells_the_homes", "a child always here, for the form", FILLS_IN, {}),
    ("tells_the_homes", "not the same as the first", FILLS_IN | SIBLING, {"same_homes": False}),
    ("tells_the_homes", "the first child, whatever was told", FILLS_IN, {"same_homes": True}),
    ("may_tell_the_address", "no danger", SAFE_AT_HOME, {}),
    ("may_tell_the_address", "danger, but nothing to hide", IN_DANGER | {"uccjea.kept_private": False}, {}),
    (
        "may_be_born_before_the_union",
        "before the wedding, and no day of registration told",
        MINORS | {"matter.unions": ["marriage", "partners_california"], "dates.married_on": "2016-01-01"},
        {"born_on": "2017-01-01"},
    ),
)

CHILD_HOLDS_NOT: tuple[tuple[str, str, Told, Told], ...] = (
    ("may_be_of_the_union_in_law", "of both", MINORS, {"parentage": "born_to_both"}),
    (
        "may_be_of_the_union_in_law",
        "born before the wedding",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2012-06-13", "parentage": "one_parent_only"},
    ),
    ("is_listed_child", "an answer left from before", {"children.family": ["grown"]}, {"name": "Ana"}),
    ("children_are_treated_differently", "alike", TWO | {"custody.alike": True}, {}),
    ("children_are_treated_differently", "a child of one", DIFFERENT, {"parentage": "one_parent_only"}),
    ("signed_a_declaration", "not signed", MINORS, {"declaration": "not_signed"}),
    (
        "signed_a_declaration",
        "born in the marriage after all",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2014-01-01", "declaration": "signed_no_copy"},
    ),
    ("is_in_the_declaration", "a child of one", FILLS_IN, {"parentage": "one_parent_only"}),
    ("is_in_the_declaration", "later", MINORS, {}),
    ("may_have_the_same_homes", "no child of both before", FILLS_IN, {"name": "Ben"}),
    ("may_have_the_same_homes", "always here, and no form now", MINORS | SIBLING, {"name": "Ben"}),
    ("tells_the_homes", "all children always here", MINORS, {}),
    ("tells_the_homes", "a child of one", MOVED, {"parentage": "one_parent_only"}),
    ("tells_the_homes", "no minor children", {"children.family": ["not_always_here"]}, {}),
    ("tells_the_homes", "the same as the first", FILLS_IN | SIBLING, {"same_homes": True}),
    ("may_tell_the_address", "danger, and nothing said about it", IN_DANGER, {}),
    ("may_tell_the_address", "kept private", IN_DANGER | {"uccjea.kept_private": True}, {}),
    ("may_tell_the_address", "nothing told about danger", FILLS_IN, {}),
    ("may_tell_the_address", "only the homes matter", MOVED | {"safety.dangers": []}, {}),
    ("may_tell_the_address", "the same as the first", SAFE_AT_HOME | SIBLING, {"same_homes": True}),
    (
        "may_be_born_before_the_union",
        "born on the wedding day",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2012-06-14"},
    ),
    (
        "may_be_born_before_the_union",
        "adopted",
        MINORS | MARRIED | {"dates.married_on": "2012-06-14"},
        {"born_on": "2010-01-01", "parentage": "adopted_by_both"},
    ),
    (
        "may_be_born_before_the_union",
        "registered before the birth, married after it",
        MINORS
        | {
            "matter.unions": ["marriage", "partners_california"],
            "dates.registered_on": "2010-01-01",
            "dates.married_on": "2016-01-01",
        },
        {"born_on": "2012-01-01"},
    ),
)


def case_of(told: Told) -> Case:
    case = Case()
    for key, value in told.items():
        case = case.with_fact(key, value)
    return case


def named(examples: tuple[Any, ...]) -> list[str]:
    return [f"{example[0]}: {example[1]}" for example in examples]


@pytest.mark.parametrize(("name", "what", "told"), HOLDS, ids=named(HOLDS))
def test_holds(name: str, what: str, told: Told) -> None:
    assert PREDICATES[name](case_of(told)) is True


@pytest.mark.parametrize(("name", "what", "told"), HOLDS_NOT, ids=named(HOLDS_NOT))
def test_holds_not(name: str, what: str, told: Told) -> None:
    assert PREDICATES[name](case_of(told)) is False


@pytest.mark.parametrize(("name", "what", "told", "child"), CHILD_HOLDS, ids=named(CHILD_HOLDS))
def test_holds_for_a_child(name: str, what: str, told: Told, child: Told) -> None:
    assert PREDICATES[name](case_of(told), Child.model_validate(child)) is True


@pytest.mark.parametrize(("name", "what", "told", "child"), CHILD_HOLDS_NOT, ids=named(CHILD_HOLDS_NOT))
def test_holds_not_for_a_child(name: str, what: str, told: Told, child: Told) -> None:
    assert PREDICATES[name](case_of(told), Child.model_validate(child)) is False


def test_every_predicate_is_tried_both_ways() -> None:
    holds = {example[0] for example in (*HOLDS, *CHILD_HOLDS)}
    holds_not = {example[0] for example in (*HOLDS_NOT, *CHILD_HOLDS_NOT)}
    assert holds == holds_not == set(PREDICATES)


def test_every_predicate_says_what_it_means() -> None:
    assert [name for name, function in PREDICATES.items() if not function.__doc__] == []


ASKS_WHY_IT_IS_NOT_KNOWN = {"words_of_separation_are_in_doubt"}


@pytest.mark.parametrize("name", sorted(PREDICATES.keys() - ASKS_WHY_IT_IS_NOT_KNOWN))
def test_nothing_applies_only_because_the_person_does_not_know(name: str) -> None:
    """A case in which every single answer is "I don't know" makes no follow-up question appear."""
    from firstpaper.intake.kinds import places  # noqa: PLC0415

    keys = [key for key in places() if "*" not in key]
    case = case_of(dict.fromkeys(keys, DONT_KNOW))
    predicate = PREDICATES[name]
    children = (Child(),) if len(inspect.signature(predicate).parameters) == 2 else ()
    assert predicate(case, *children) is False
