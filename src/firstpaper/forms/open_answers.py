"""What an item says while the answer it needs is missing: which answer, and never a guess."""

from collections.abc import Collection, Iterable
from dataclasses import replace
from functools import cache

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.forms.answer import Action, Answer, ItemAnswer, blank
from firstpaper.locale import _


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
        return _phrases()[key]
    number, _dot, fact = rest.partition(".")
    return _of_a_child()[fact].format(number=number)


@cache
def _of_a_child() -> dict[str, str]:
    return {
        "name": _("the full name of child {number}"),
        "birthplace": _("where child {number} was born"),
        "same_homes": _("whether child {number} has lived where the first child has"),
        "homes": _("where child {number} has lived, and with whom"),
        "address": _("the address of child {number}"),
        "born_on": _("the birth date of child {number}"),
        "legal": _("who is to have legal custody of child {number}"),
        "physical": _("who is to have physical custody of child {number}"),
        "visits": _("who is to have visitation with child {number}"),
        "born_to_one_of_you": _("whether child {number} is a child of both in law"),
        "declaration": _("whether a declaration of parentage was signed for child {number}"),
    }


@cache
def _phrases() -> dict[str, str]:
    return {
        "matter.unions": _("whether you are married, registered partners, or both"),
        "matter.kind": _("which kind of case you want"),
        "matter.amended": _("whether a petition was already filed in this case"),
        "matter.case_number": _("the case number the court gave you"),
        "matter.first_filed_on": _("the day your first petition was filed"),
        "petitioner.name": _("your full legal name"),
        "petitioner.mailing": _("your mailing address"),
        "petitioner.phone": _("your telephone number"),
        "petitioner.email": _("your e-mail address"),
        "respondent.name": _("the full name of the other side"),
        "respondent.mailing": _("the address of the other side"),
        "court.county": _("the county where you will file"),
        "court.address": _("the address of the court"),
        "court.branch": _("the branch name of the court"),
        "dates.married_on": _("the date of your marriage"),
        "dates.registered_on": _("the date your partnership was registered"),
        "dates.separation_told_on": _("the day one of you told the other that it was over"),
        "dates.separation_acted_on": _("the day one of you began to act as if it was over"),
        "dates.back_together": _("when you were back together, and until when"),
        "residence.petitioner.lives": _("where you live"),
        "residence.petitioner.state_since": _("since when you have lived in California"),
        "residence.petitioner.county_since": _("since when you have lived in this county"),
        "residence.petitioner.own_county": _("in which county you live"),
        "residence.petitioner.own_county_since": _("since when you have lived in that county"),
        "residence.respondent.own_county": _("in which county the other side lives"),
        "residence.respondent.own_county_since": _("since when the other side has lived in that county"),
        "residence.petitioner.lives_in": _("the state or country where you live"),
        "residence.petitioner.intends_to_stay": _("whether you mean to keep your home in California"),
        "residence.exception.not_dissolvable_at_home": _("whether a court where you live would end it"),
        "residence.respondent.intends_to_stay": _(
            "whether the other side means to keep a home in California"
        ),
        "residence.respondent.lives": _("where the other side lives"),
        "residence.respondent.state_since": _("since when the other side has lived in California"),
        "residence.respondent.county_since": _("since when the other side has lived in this county"),
        "residence.respondent.lives_in": _("the state or country where the other side lives"),
        "children.family": _("which children there are"),
        "children.others_in_union": _("whether a child of one of you is a child of both in law"),
        "children.how_many": _("how many children under 18 you have together"),
        "grounds.reason": _("the legal reason for the case"),
        "grounds.nullity": _("the legal reason for the nullity"),
        "grounds.filer": _("who files for whom, and how the names of the two then stand"),
        "grounds.under_age": _("which of you was under 18"),
        "grounds.good_faith": _("who believed that the marriage was valid"),
        "custody.legal": _("who is to have legal custody"),
        "custody.physical": _("who is to have physical custody"),
        "custody.visits": _("who is to have visitation"),
        "custody.other_words": _('what "Other" is to mean for custody'),
        "custody.sheets": _("which custody sheets you want to attach"),
        "custody.plan": _("the words of your parenting plan"),
        "support.child_other": _("whether you want to add something about child support"),
        "support.grown_who": _("the name of the grown child who needs support"),
        "support.petitioner": _("what you want about support for you"),
        "support.respondent": _("what you want about support for the other side"),
        "support.own_right_ends": _("whether you really want to end your own right to support"),
        "support.other": _("whether you want to add something about support"),
        "property.separate_how": _("how to list separate property"),
        "property.separate_petitioner": _("what is your own separate property"),
        "property.separate_respondent": _("what is the other side's separate property"),
        "property.community_how": _("how to list community property"),
        "property.community_items": _("the list of community property"),
        "requests.fees": _("whether to ask for attorney's fees"),
        "requests.former_name": _("whether you want a former name back"),
        "requests.former_name_used": _("whether you have used that name before"),
        "requests.intends_to_amend": _("whether you want a divorce later, when the time has run"),
        "requests.putative_division": _("whether you ask to divide the property of the union"),
        "requests.other": _("whether you want to ask for something else"),
        "waiver.benefits": _("which benefits you get"),
        "waiver.household": _("how many people live on the same money"),
        "waiver.income": _("the income of your household"),
        "waiver.short_of_needs": _("whether you would be short of basic needs"),
        "uccjea.kept_private": _("whether to keep addresses off this form"),
        "uccjea.people": _("with whom else the children have lived"),
        "uccjea.cases": _("whether there is another case about a child"),
        "uccjea.case_words": _("what you know of the other cases"),
        "uccjea.orders": _("whether a restraining order holds now"),
        "uccjea.order_words": _("what you know of the orders"),
        "uccjea.claims": _("whether anyone else has or claims a child"),
        "signing.orders_read": _("that you have read the orders printed with the summons"),
    }
