"""Item 10: community and quasi-community property. The petition lists it; it does not divide it."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow, CommunityKind, GoodFaith
from firstpaper.facts.kinds import is_nullity
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.fl100.places import Places, space
from firstpaper.forms.listed_things import as_filed, not_typed, taken_in, things_of_item_10, typed
from firstpaper.forms.open_answers import not_before_advice, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.forms.saying import see_the_paper_first
from firstpaper.intake.spoken import echo
from firstpaper.law.measures.character import Code, asset_characters, debt_characters
from firstpaper.law.words import spaced
from firstpaper.locale import _, noted

NONE, DETERMINE = "property.community.none", "property.community.determine"
LAW = "Fam. Code 760, 2550"
PLACES = Places(
    "property.community.fl_160",
    "property.community.attachment",
    "property.community.listed",
    "property.community.rows",
    noted("FL-160 (community property)"),
    LAW,
)
LINES = (DETERMINE, *PLACES.all)
FILED_KINDS = {
    CommunityKind.HOME: noted("a home or land"),
    CommunityKind.VEHICLES: noted("vehicles"),
    CommunityKind.ACCOUNTS: noted("bank and investment accounts"),
    CommunityKind.RETIREMENT: noted("pensions and retirement plans"),
    CommunityKind.HOUSEHOLD: noted("household goods"),
    CommunityKind.BUSINESS: noted("a business"),
    CommunityKind.DEBTS: noted("debts"),
    CommunityKind.TAX_REFUNDS: noted("tax refunds"),
    CommunityKind.DIGITAL: noted("digital assets"),
    CommunityKind.PETS: noted("pets"),
}
NOT_YET_KNOWN = {
    True: noted(
        "All quasi-marital property and debts. Petitioner does not yet know their full extent "
        "and will state it as it becomes known."
    ),
    False: noted(
        "All community and quasi-community property and debts. Petitioner does not yet know their full "
        "extent and will state it as it becomes known."
    ),
}
"""What is said of property not known in full, by whether it is a nullity: there was no community then."""


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 10a and 10b."""
    how = known(case.property.community_how)
    if how is None:
        yield from (still_open(case, concept, "property.community_how") for concept in (NONE, *LINES))
    elif how is CommunityHow.NONE:
        yield from _none(case, on)
    elif how is CommunityHow.LIST and not _items(case, on):
        yield blank(NONE, _not_none())
        yield from (still_open(case, concept, "property.community_items") for concept in LINES)
    else:
        yield blank(NONE, _not_none())
        yield mark(DETERMINE, _determine(case, how, on), LAW)
        yield from PLACES.marked(attachment_page(case, on), _list(case, how, on))


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The list, where it does not fit on the lines."""
    text = _text(case, on)
    if not text or space(PLACES.rows, on).holds(text):
        return None
    asks = "Petitioner asks the court to determine the rights of both parties to the following:"
    title = f"{_class(case).capitalize()} property"
    if known(case.property.community_how) is CommunityHow.LIST:
        rows = tuple((item,) for item in _items(case, on))
        return attachment(case, "10b", title, (asks,), columns=("Item",), rows=rows)
    return attachment(case, "10b", title, (asks, *text.splitlines()))


def _not_none() -> str:
    return _("There is something to decide about.")


def _determine(case: Case, how: CommunityHow, on: date) -> str:
    asks = _("You ask the judge to decide who gets what. You propose no shares here.")
    taken = taken_in(case, on) if how in (CommunityHow.LIST, CommunityHow.FL_160) else ""
    return spaced((asks, taken, _only_for_a_believer(case), see_the_paper_first(case)))


def _only_for_a_believer(case: Case) -> str:
    if not is_nullity(case):
        return ""
    if known(case.grounds.good_faith) in (GoodFaith.NEITHER, GoodFaith.RESPONDENT):
        return _(
            "In a nullity only a spouse who believed that the marriage was valid can ask. By your answers "
            "you did not."
        )
    return _("In a nullity a spouse must ask for this, and must have believed that the marriage was valid.")


def _none(case: Case, on: date) -> Iterator[Answer]:
    """10a as the filer chose; open where they also named things owned or owed together, which 10b takes."""
    if not _text(case, on):
        none = _("You said that there is none.")
        forgotten = "" if is_nullity(case) else _("What is forgotten here stays owned by both of you.")
        yield mark(NONE, spaced((none, forgotten)), LAW)
        yield from (blank(concept, _("You marked that there is none.")) for concept in LINES)
        return
    look = _("You said that there is none, but you also named things you own or owe together. Look again.")
    yield not_before_advice(NONE, look, "property.community_how")
    named = _("This is what you named. Look again before you sign: only one of 10a and 10b can be right.")
    yield replace(mark(DETERMINE, named, LAW), open_key="property.community_how")
    says = meaning(lambda: _text(case, on))
    lines = write(PLACES.rows, _text(case, on), named, LAW, meaning=says)
    yield from PLACES.marked(attachment_page(case, on), lines)


def _list(case: Case, how: CommunityHow, on: date) -> Answer | None:
    """The words on the lines; None where the list is on the court's form."""
    if how is CommunityHow.FL_160:
        return None
    if how is CommunityHow.LIST:
        last_four = _("As you listed it. Never more than the last four digits of an account.")
        whole = spaced((_each_kind_listed(case), last_four))
        return write(PLACES.rows, _text(case, on), whole, "Cal. Rules of Court, rule 1.201(a)")
    later = _(
        "You can state the full list later. But if the other side never answers, the judge can decide only "
        "what the petition told them."
    )
    says = meaning(lambda: _text(case, on))
    return write(PLACES.rows, _text(case, on), later, _("common practice"), meaning=says)


def _each_kind_listed(case: Case) -> str:
    """The kinds told of, beside a list in the filer's own words: a default gives only what was asked for."""
    kinds = known(case.property.community_kinds)
    if not kinds:
        return ""
    named = ". ".join(echo("property.community_kinds", (kind,)) for kind in kinds)
    return _("You told us of these kinds. See that your list has each: {kinds}.").format(kinds=named)


def _listed(case: Case, on: date) -> bool:
    """Whether something listed belongs to both for sure, or is presumed to until somebody shows otherwise."""
    listed = (*asset_characters(case, on), *debt_characters(case, on))
    return any(one.holds_community or one.starts_as is Code.COMMUNITY for one in listed)


def _items(case: Case, on: date) -> tuple[str, ...]:
    """The list as it is filed: first as typed, then what was listed besides."""
    items, things = filter(None, known(case.property.community_items) or ()), things_of_item_10(case, on)
    return (*as_filed(items, things), *(one.filed for one in not_typed(things, typed(case))))


def _text(case: Case, on: date) -> str:
    """What goes on the lines, as it is filed."""
    how = known(case.property.community_how)
    if how is CommunityHow.LIST:
        return "\n".join(_items(case, on))
    kinds = _filed(known(case.property.community_kinds))
    elsewhere = _filed(known(case.property.elsewhere_kinds))
    from_elsewhere = filed("Acquired while a party lived outside California (quasi-community): {kinds}.")
    last = (from_elsewhere.format(kinds=elsewhere),) if elsewhere else ()
    if how is CommunityHow.NONE:
        listed = _items(case, on) if _listed(case, on) else ()
        return "\n".join((*((f"{kinds[0].upper()}{kinds[1:]}.",) if kinds else ()), *last, *listed))
    if how is not CommunityHow.NOT_YET_KNOWN:
        return ""
    named = (filed("They include: {kinds}.").format(kinds=kinds),) if kinds else ()
    return "\n".join((filed(NOT_YET_KNOWN[is_nullity(case)]), *named, *last))


def _filed(told: Sequence[CommunityKind] | None) -> str:
    """The kinds in a row, with a comma before the "and" wherever the row could be misread without it."""
    named = [words for kind, words in FILED_KINDS.items() if kind in (told or ())]
    kinds = [filed(words) for words in named]
    if len(kinds) < 2:
        return "".join(kinds)
    clear = len(kinds) == 2 and not any(" and " in words for words in named)
    row = filed("{first} and {last}") if clear else filed("{first}, and {last}")
    return row.format(first=", ".join(kinds[:-1]), last=kinds[-1])


def _class(case: Case) -> str:
    """What the law calls what is shared; in a nullity there was no community (Fam. Code 2251(a)(2))."""
    return "quasi-marital" if is_nullity(case) else "community and quasi-community"
