"""What an item says while the answer it needs is missing: which answer, and never a guess."""

from collections.abc import Collection, Iterable
from dataclasses import replace

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.forms.answer import Action, Answer, ItemAnswer, blank
from firstpaper.locale import _, noted


def still_open(case: Case, concept: str, key: str) -> Answer:
    """Left empty, because the fact at `key` is missing, in part, or not sure."""
    return replace(blank(concept, why_open(case, key)), open_key=key)


def flagged(case: Case, answer: Answer, key: str) -> Answer:
    """The answer as far as it goes, with the fact that is still missing named."""
    marked = answer.action is Action.MARK and isinstance(case.fact(key), Day)
    why = _mark_if_sure(key) if marked else why_open(case, key)
    return replace(answer, because=f"{answer.because} {why}".strip(), open_key=key)


def open_items(items: Iterable[ItemAnswer], asked_still: Collection[str] = ()) -> tuple[ItemAnswer, ...]:
    """The items that wait for a fact, but for those that wait for a question in `asked_still`."""
    return tuple(one for one in items if one.open_key and one.open_key not in asked_still)


def item_numbers(items: Iterable[ItemAnswer]) -> str:
    """The items in a row, as in "3a(1), 3a(2)"; those without a number by their labels."""
    return ", ".join(dict.fromkeys(one.item or one.label for one in items))


def _mark_if_sure(key: str) -> str:
    return _(
        "Mark it only if you are sure that the time is long enough. Find out to the day: {what}."
    ).format(what=what_is_asked(key))


def not_before_advice(concept: str, because: str, key: str) -> Answer:
    """Left empty although the fact at `key` was told: a person has to look at that answer first."""
    return replace(blank(concept, because), open_key=key)


def why_open(case: Case, key: str) -> str:
    """One or two sentences on the missing fact."""
    told = case.fact(key)
    if told is DONT_KNOW:
        words = _("You do not know this yet: {what}. Leave it empty until you do.")
    elif isinstance(told, Day) and told.whole is None:
        words = _("A part of the date is missing: {what}. Do not guess.")
    elif isinstance(told, Day):
        words = _("You are not sure of this yet: {what}. Find out before you write it here.")
    elif told is None:
        words = _("Not answered yet: {what}.")
    else:
        words = _("Still open: {what}.")
    return words.format(what=what_is_asked(key))


def what_is_asked(key: str) -> str:
    """The fact at a key in a few words, as in "your full legal name"."""
    first, _dot, rest = key.partition(".")
    if first != "child":
        return _(_PHRASES[key])
    number, _dot, fact = rest.partition(".")
    return _(_OF_A_CHILD[fact]).format(number=number)


_OF_A_CHILD = {
    "name": noted("the full name of child {number}"),
    "birthplace": noted("where child {number} was born"),
    "same_homes": noted("whether child {number} has lived where the first child has"),
    "homes": noted("where child {number} has lived, and with whom"),
    "address": noted("the address of child {number}"),
    "born_on": noted("the birth date of child {number}"),
    "legal": noted("who is to have legal custody of child {number}"),
    "physical": noted("who is to have physical custody of child {number}"),
    "visits": noted("who is to have visitation with child {number}"),
    "born_to_one_of_you": noted("whether child {number} is a child of both in law"),
    "declaration": noted("whether a declaration of parentage was signed for child {number}"),
}


_PHRASES = {
    "matter.unions": noted("whether you are married, registered partners, or both"),
    "matter.kind": noted("which kind of case you want"),
    "matter.amended": noted("whether a petition was already filed in this case"),
    "matter.case_number": noted("the case number the court gave you"),
    "matter.first_filed_on": noted("the day your first petition was filed"),
    "petitioner.name": noted("your full legal name"),
    "petitioner.mailing": noted("your mailing address"),
    "petitioner.phone": noted("your telephone number"),
    "petitioner.email": noted("your e-mail address"),
    "respondent.name": noted("the full name of the other side"),
    "respondent.mailing": noted("the address of the other side"),
    "court.county": noted("the county where you will file"),
    "court.address": noted("the address of the court"),
    "court.branch": noted("the branch name of the court"),
    "dates.married_on": noted("the date of your marriage"),
    "dates.registered_on": noted("the date your partnership was registered"),
    "dates.separation_told_on": noted("the day one of you told the other that it was over"),
    "dates.separation_acted_on": noted("the day one of you began to act as if it was over"),
    "dates.back_together": noted("when you were back together, and until when"),
    "residence.petitioner.lives": noted("where you live"),
    "residence.petitioner.state_since": noted("since when you have lived in California"),
    "residence.petitioner.county_since": noted("since when you have lived in this county"),
    "residence.petitioner.own_county": noted("in which county you live"),
    "residence.petitioner.own_county_since": noted("since when you have lived in that county"),
    "residence.respondent.own_county": noted("in which county the other side lives"),
    "residence.respondent.own_county_since": noted("since when the other side has lived in that county"),
    "residence.petitioner.lives_in": noted("the state or country where you live"),
    "residence.petitioner.intends_to_stay": noted("whether you mean to keep your home in California"),
    "residence.exception.not_dissolvable_at_home": noted("whether a court where you live would end it"),
    "residence.respondent.intends_to_stay": noted(
        "whether the other side means to keep a home in California"
    ),
    "residence.respondent.lives": noted("where the other side lives"),
    "residence.respondent.state_since": noted("since when the other side has lived in California"),
    "residence.respondent.county_since": noted("since when the other side has lived in this county"),
    "residence.respondent.lives_in": noted("the state or country where the other side lives"),
    "children.family": noted("which children there are"),
    "children.others_in_union": noted("whether a child of one of you is a child of both in law"),
    "children.how_many": noted("how many children under 18 you have together"),
    "grounds.reason": noted("the legal reason for the case"),
    "grounds.nullity": noted("the legal reason for the nullity"),
    "grounds.filer": noted("who files for whom, and how the names of the two then stand"),
    "grounds.under_age": noted("which of you was under 18"),
    "grounds.good_faith": noted("who believed that the marriage was valid"),
    "custody.legal": noted("who is to have legal custody"),
    "custody.physical": noted("who is to have physical custody"),
    "custody.visits": noted("who is to have visitation"),
    "custody.other_words": noted('what "Other" is to mean for custody'),
    "custody.sheets": noted("which custody sheets you want to attach"),
    "custody.plan": noted("the words of your parenting plan"),
    "support.child_other": noted("whether you want to add something about child support"),
    "support.grown_who": noted("the name of the grown child who needs support"),
    "support.petitioner": noted("what you want about support for you"),
    "support.respondent": noted("what you want about support for the other side"),
    "support.own_right_ends": noted("whether you really want to end your own right to support"),
    "support.other": noted("whether you want to add something about support"),
    "property.separate_how": noted("how to list separate property"),
    "property.separate_petitioner": noted("what is your own separate property"),
    "property.separate_respondent": noted("what is the other side's separate property"),
    "property.community_how": noted("how to list community property"),
    "property.community_items": noted("the list of community property"),
    "requests.fees": noted("whether to ask for attorney's fees"),
    "requests.former_name": noted("whether you want a former name back"),
    "requests.former_name_used": noted("whether you have used that name before"),
    "requests.intends_to_amend": noted("whether you want a divorce later, when the time has run"),
    "requests.putative_division": noted("whether you ask to divide the property of the union"),
    "requests.other": noted("whether you want to ask for something else"),
    "waiver.benefits": noted("which benefits you get"),
    "waiver.household": noted("how many people live on the same money"),
    "waiver.income": noted("the income of your household"),
    "waiver.short_of_needs": noted("whether you would be short of basic needs"),
    "uccjea.kept_private": noted("whether to keep addresses off this form"),
    "uccjea.people": noted("with whom else the children have lived"),
    "uccjea.cases": noted("whether there is another case about a child"),
    "uccjea.case_words": noted("what you know of the other cases"),
    "uccjea.orders": noted("whether a restraining order holds now"),
    "uccjea.order_words": noted("what you know of the orders"),
    "uccjea.claims": noted("whether anyone else has or claims a child"),
    "signing.orders_read": noted("that you have read the orders printed with the summons"),
}
