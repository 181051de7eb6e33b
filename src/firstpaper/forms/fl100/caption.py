"""The caption: who files, in which court, which kind of case; and the headings of pages 2 and 3."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import for_the_court
from firstpaper.facts.choices import Danger, Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.caption_box import which_court
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.open_answers import not_before_advice, still_open
from firstpaper.forms.saying import (
    case_number,
    chosen,
    get_help_with_this_box,
    kind_words,
    married,
    married_words,
    partners,
    somebody_else_files,
    unions_of,
    written,
    written_petitioner,
)
from firstpaper.law.county_words import right_from
from firstpaper.law.measures.venue import Venue, VenueTest, venue_of
from firstpaper.law.words import spaced
from firstpaper.locale import _

LINES = {
    "cap.dissolution": Kind.DISSOLUTION,
    "cap.separation": Kind.LEGAL_SEPARATION,
    "cap.nullity": Kind.NULLITY,
}


def answers(case: Case, on: date) -> Iterator[Answer]:
    """The boxes at the top of the three pages."""
    yield from _filer(case)
    yield from _address(case)
    yield from _reach(case)
    yield from _court(case, on)
    yield from _names(case, "cap")
    yield from _kind(case)
    yield case_number(case, "cap.case_number")
    yield blank("cap.stamp", _("Only the court writes here."))
    for page in ("head2", "head3"):
        yield from _names(case, page)
        yield case_number(case, f"{page}.case_number")


def _filer(case: Case) -> Iterator[Answer]:
    no_lawyer = _("This is for lawyers. You file for yourself.")
    yield blank("cap.bar", no_lawyer)
    same = _("Use your full legal name, spelled the same way on every form.")
    help_first = get_help_with_this_box() if somebody_else_files(case) else ""
    yield written(case, "cap.name", "petitioner.name", help_first or same, _("common practice"))
    yield blank("cap.firm", no_lawyer)
    self_represented = _('You have no lawyer. "In pro per" means the same and is fine too.')
    says = meaning(lambda: filed("Self-represented"))
    yield write(
        "cap.for", "Self-represented", help_first or self_represented, _("common practice"), meaning=says
    )


def _address(case: Case) -> Iterator[Answer]:
    address = for_the_court(case)
    concepts = ("cap.street", "cap.city", "cap.state", "cap.zip")
    if address is None:
        yield from (still_open(case, concept, "petitioner.mailing") for concept in concepts)
        return
    because = _address_words(case)
    lines = (address.street, address.city, address.state, address.zip)
    for concept, line in zip(concepts, lines, strict=True):
        empty = _("Your address has no such line.")
        yield write(concept, line, because, _("common practice")) if line else blank(concept, empty)


def _address_words(case: Case) -> str:
    if known(case.safety.safe_at_home):
        return _("Make sure it is the address that Safe at Home gave you. Never write where you live.")
    if Danger.HIDE_ADDRESS in (known(case.safety.dangers) or ()):
        return _(
            "The other side will see this. Use only the safe mailing address. Never write where you live."
        )
    return _("Court mail comes here. Anyone can see it, and the other side will get it.")


def _reach(case: Case) -> Iterator[Answer]:
    phone = _("The court may call you. The other side will see this number.")
    no_phone = _("You chose to give none. Ask the clerk whether this court needs one.")
    yield written(case, "cap.phone", "petitioner.phone", phone, nothing=no_phone)
    free = "Cal. Rules of Court, rule 2.118(b)"
    yield blank("cap.fax", _("Nobody has to give a fax number."), free)
    email = _(
        "It helps you not to miss a notice. Giving it does not mean that papers may be served by e-mail."
    )
    no_email = _("You chose to give none. Nobody has to give an e-mail address.")
    yield written(
        case, "cap.email", "petitioner.email", email, "Cal. Rules of Court, rule 2.251(b)", nothing=no_email
    )


def _court(case: Case, on: date) -> Iterator[Answer]:
    yield _county(case, on)
    address = known(case.court.address)
    look = which_court()
    if address is None:
        yield still_open(case, "cap.court_street", "court.address")
        yield still_open(case, "cap.court_city_zip", "court.address")
    else:
        yield write("cap.court_street", address.street, look, _("common practice"))
        yield write("cap.court_city_zip", f"{address.city} {address.zip}".strip(), look, _("common practice"))
    yield blank(
        "cap.court_mailing", _("Only if the court's website gives another address for mail. Then copy it.")
    )
    no_branch = _("You said that your court has no branch name.")
    yield written(case, "cap.court_branch", "court.branch", look, _("common practice"), nothing=no_branch)


def _county(case: Case, on: date) -> Answer:
    """The county, and whether it is the right one; open where the answers name another county."""
    stands = venue_of(case, on)
    if stands and stands.test is VenueTest.WEDDING and not stands.right:
        must = _("By your answers it must be the county where you married. Change the county first.")
        return not_before_advice("cap.county", must, "court.county")
    because, authority = _county_words(case, stands, on)
    return written(case, "cap.county", "court.county", because, authority)


def _county_words(case: Case, stands: Venue | None, on: date) -> tuple[str, str]:
    test, right = (stands.test, stands.right) if stands else (None, None)
    if test is VenueTest.WEDDING:
        return _("The county where you married."), "Fam. Code 2320(b)(2)"
    if test is VenueTest.NOBODY_HERE:
        return _("Neither of you lives in California. Ask the clerk which county."), "Code Civ. Proc. 395(a)"
    if kind_of(case) in (Kind.LEGAL_SEPARATION, Kind.NULLITY) or unions_of(case) == (
        Union.PARTNERS_CALIFORNIA,
    ):
        return _home_words(right), "Code Civ. Proc. 395(a)"
    because = spaced((_three_months_words(right), right_from(case, on) if right is False else ""))
    return because, "Fam. Code 2320(a); Code Civ. Proc. 395(a)"


def _home_words(right: bool | None) -> str:
    if right:
        return _("A county where one of you lives on the day of filing.")
    must = _("It must be a county where one of you lives on the day of filing.")
    return must if right is None else must + " " + _("By your answers that is not so.")


def _three_months_words(right: bool | None) -> str:
    if right:
        return _("A county where one of you has lived for the last three months.")
    must = _("It must be a county where one of you has lived for the three months before filing.")
    return must if right is None else must + " " + _("By your answers that is not so yet.")


def _names(case: Case, page: str) -> Iterator[Answer]:
    petitioner = _("You are called the petitioner from now on.")
    yield written_petitioner(case, f"{page}.petitioner", petitioner, _("common practice"))
    respondent = _("The other side is called the respondent from now on.")
    yield written(case, f"{page}.respondent", "respondent.name", respondent, _("common practice"))


def _kind(case: Case) -> Iterator[Answer]:
    amended = known(case.matter.amended) is True
    first = _("This is the first petition in this case.")
    again = _("A petition was filed in this case before. This one takes its place as a whole.")
    authority = "Cal. Rules of Court, rule 5.74(a)(2)" if amended else ""
    yield chosen(
        case, "cap.amended", "matter.amended", amended, because=again, otherwise=first, authority=authority
    )
    for line, kind in LINES.items():
        yield from _kind_line(case, line, kind)


def _kind_line(case: Case, line: str, kind: Kind) -> Iterator[Answer]:
    told = kind_of(case)
    unions = {"marriage": married(case), "partnership": partners(case)}
    if told is not kind:
        otherwise = _("You are not asking for {kind}.").format(kind=kind_words(kind))
        for concept in (line, *(f"{line}.{union}" for union in unions)):
            yield blank(concept, otherwise) if told else still_open(case, concept, "matter.kind")
        return
    yield mark(line, _("You ask for {kind}.").format(kind=kind_words(kind)), "Fam. Code 2330(a)")
    because = {
        "marriage": married_words(case),
        "partnership": _("You are registered partners of each other."),
    }
    otherwise = _("This does not fit the two of you.")
    both = "Fam. Code 299(e)" if all(unions.values()) else "Fam. Code 2330(a)"
    for union, holds in unions.items():
        words = {"because": because[union], "otherwise": otherwise, "authority": both}
        yield chosen(case, f"{line}.{union}", "matter.unions", holds, **words)
