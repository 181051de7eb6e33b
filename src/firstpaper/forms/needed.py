"""Which official forms a household needs beside the petition, why, and where each one goes.

The forms are the court's own and free. We never print a page that looks like one (Cal. Rules of Court
1.43, 2.132). Titles are short forms of the official ones.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import (
    CommunityHow,
    CustodySheet,
    Danger,
    Declaration,
    Kind,
    SeparateHow,
    Shortcut,
    Special,
)
from firstpaper.forms.attachments import attachments
from firstpaper.forms.edition import as_printed
from firstpaper.forms.fl100.children import concerns_children, copy_of_declaration
from firstpaper.forms.fl100.custody import FORMS as CUSTODY_FORMS
from firstpaper.forms.fl100.custody import wishes_of
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureNotInForce, UnknownFigureError, figure
from firstpaper.law.measures.children import has_minor_children, listed_children
from firstpaper.locale import _


class Goes(StrEnum):
    """Where a form goes. `ASK` is a question for the clerk: it differs by court or by case."""

    FILE = "file"
    SERVE = "serve"
    KEEP = "keep"
    ASK = "ask"


@dataclass(frozen=True, slots=True)
class FormNeeded:
    """One form to get.

    `form` is its number; empty where only the court knows it, or where it is a paper of the filer's own.
    `only_if` names the case in which it is needed. `copy_served` says that the other side gets a copy
    of what is filed, `signed` that the filer signs it, and `later` that it is no part of the first
    filing. `edition` is the date to look for on the sheet, in words; `edition_on` is that day, None
    where it is not known; `certainty` says how sure it is, and `edition_note` what may change.
    """

    form: str
    title: str
    why: str
    goes: Goes
    authority: str = ""
    only_if: str = ""
    copy_served: bool = False
    signed: bool = False
    later: bool = False
    edition: str = ""
    edition_on: date | None = None
    edition_note: str = ""
    certainty: Certainty = Certainty.UNCONFIRMED


def forms_needed(case: Case, on: date) -> tuple[FormNeeded, ...]:
    """The forms for a petition filed on the day `on`, in the order in which they are used."""
    return tuple(_dated(each, on) for each in _needed(case, on))


def _needed(case: Case, on: date) -> Iterator[FormNeeded]:
    yield from _opening(case)
    yield from _about_children(case, on)
    yield from _about_property(case)
    yield from _court_and_fees(case, on)
    yield from _about_service()
    yield from _disclosure(case)
    yield from _special(case)


def _dated(needed: FormNeeded, on: date) -> FormNeeded:
    """The form with its edition, as far as that is known on the day."""
    if not needed.form:
        return needed
    unknown = replace(needed, edition=_("We do not know. Ask the court."))
    try:
        told = figure(f"form_edition.{needed.form}", on)
    except (UnknownFigureError, FigureNotInForce):
        return unknown
    day = told.value["edition"]
    dated = replace(unknown, edition_note=_(told.note), certainty=told.certainty)
    if day is None:
        return dated
    printed = as_printed(day)
    as_far_as_known = _("{date}, as far as we know").format(date=printed)
    verified = told.value["verified_against_pdf"]
    return replace(dated, edition_on=day, edition=printed if verified else as_far_as_known)


def _opening(case: Case) -> Iterator[FormNeeded]:
    yield FormNeeded(
        "FL-100",
        _("Petition"),
        _("It opens your case. The worksheets say what goes in each item."),
        Goes.FILE,
        "Fam. Code 2330; Cal. Rules of Court 5.60(a)",
        copy_served=True,
        signed=True,
    )
    amended = _(
        "You file an amended petition. Ask the clerk whether the court must issue a new summons with it."
    )
    first = _("It tells the other side that a case has begun. Its page 2 has orders that bind you both.")
    yield FormNeeded(
        "FL-110",
        _("Summons"),
        amended if known(case.matter.amended) else first,
        Goes.FILE,
        "Fam. Code 231-233; Code Civ. Proc. 412.20",
        copy_served=True,
    )


def _about_children(case: Case, on: date) -> Iterator[FormNeeded]:
    declaration = _("Declaration on where the children have lived (UCCJEA)")
    law = "Fam. Code 3429; Cal. Rules of Court 5.52(a)"
    if has_minor_children(case, on):
        why = _("You have a child under 18 together. The other side gets a copy of yours, and a blank one.")
        yield FormNeeded("FL-105", declaration, why, Goes.FILE, law, copy_served=True, signed=True)
    elif concerns_children(case, on):
        ask = _("Your only child is not yet born. Ask the clerk whether you need this form now.")
        yield FormNeeded("FL-105", declaration, ask, Goes.ASK, law)
    if len(listed_children(case, on)) > 1:
        yield FormNeeded(
            "FL-105(A)",
            _("Added page of that declaration"),
            _("It has room for more children."),
            Goes.FILE,
            law,
            only_if=_("Only if FL-105 has no room for each child."),
            copy_served=True,
        )
    if concerns_children(case, on):
        yield from _custody_sheets(case, on)
        yield from _declaration_copy(case, on)


def _custody_sheets(case: Case, on: date) -> Iterator[FormNeeded]:
    titles = {
        "FL-311": _("Child custody and visitation application attachment"),
        "FL-312": _("Request for child abduction prevention orders"),
        "FL-341(C)": _("Children's holiday schedule attachment"),
        "FL-341(D)": _("Additional provisions - physical custody attachment"),
        "FL-341(E)": _("Joint legal custody attachment"),
    }
    chosen = known(case.custody.sheets) or ()
    for sheet, form in CUSTODY_FORMS.items():
        if sheet in chosen:
            why = _("You chose to add it behind item 6 of the petition. It must ask for the same as item 6.")
            yield FormNeeded(form, titles[form], why, Goes.FILE, _("common practice"), copy_served=True)
    if CustodySheet.FL_311 not in chosen and wishes_of(case, on).differ:
        yield FormNeeded(
            "FL-311",
            titles["FL-311"],
            _("You ask for different things for your children. Its table can show that too."),
            Goes.FILE,
            _("common practice"),
            only_if=_("Only if you would rather use the court's own sheet than our page."),
            copy_served=True,
        )


def _declaration_copy(case: Case, on: date) -> Iterator[FormNeeded]:
    told = [child.declaration for child in listed_children(case, on)]
    if Declaration.SIGNED_WITH_COPY in told:
        why = _("You marked item 4e and have a copy. Put it behind the petition.")
        yield FormNeeded("", copy_of_declaration(), why, Goes.FILE, "Fam. Code 7573", copy_served=True)


def _about_property(case: Case) -> Iterator[FormNeeded]:
    law = "Fam. Code 115"
    if known(case.property.separate_how) is SeparateHow.FL_160:
        separate = _("You chose it for item 9. Mark it so at the top, and use it for nothing else.")
        title = _("Property declaration for separate property")
        yield FormNeeded("FL-160", title, separate, Goes.FILE, law, copy_served=True, signed=True)
    if known(case.property.community_how) is CommunityHow.FL_160:
        community = _("You chose it for item 10. Mark it so at the top, and use it for nothing else.")
        title = _("Property declaration for community property")
        yield FormNeeded("FL-160", title, community, Goes.FILE, law, copy_served=True, signed=True)


def _court_and_fees(case: Case, on: date) -> Iterator[FormNeeded]:
    if attachments(case, on):
        yield FormNeeded(
            "MC-025",
            _("Attachment to Judicial Council form"),
            _("A form page for attachments. You can copy the words of our attachment pages onto it."),
            Goes.FILE,
            _("common practice"),
            only_if=_("Only if the clerk wants attachments on this form."),
            copy_served=True,
        )
    yield FormNeeded(
        "",
        _("Your court's own forms"),
        _("Some courts want a cover sheet or a certificate of their own. Ask the clerk."),
        Goes.ASK,
        "Cal. Rules of Court 5.4",
    )
    poor = "" if _wants_fee_waiver(case) else _("Only if you cannot pay the filing fee.")
    confidential = _("It asks to file without paying. It is private: keep it apart from the other papers.")
    law = "Gov. Code 68632-68634; Cal. Rules of Court 3.51"
    yield FormNeeded(
        "FW-001", _("Request to waive court fees"), confidential, Goes.FILE, law, only_if=poor, signed=True
    )
    order = _("Fill in only the top. The judge does the rest.")
    yield FormNeeded("FW-003", _("Order on court fee waiver"), order, Goes.FILE, law, only_if=poor)


def _wants_fee_waiver(case: Case) -> bool:
    return known(case.waiver.wanted) is True or Shortcut.FEE_WAIVER in (known(case.shortcuts.look_at) or ())


def _about_service() -> Iterator[FormNeeded]:
    blank = _("Leave it blank. The other side needs it to answer you.")
    yield FormNeeded("FL-120", _("Response"), blank, Goes.SERVE, "Fam. Code 2020; Cal. Rules of Court 5.68")
    server = _("The person who hands over the papers fills it in and signs it. Then you file it.")
    yield FormNeeded(
        "FL-115",
        _("Proof of service of summons"),
        server,
        Goes.FILE,
        "Code Civ. Proc. 417.10; Cal. Rules of Court 5.66",
        later=True,
    )
    yield FormNeeded(
        "FL-117",
        _("Notice and acknowledgment of receipt"),
        _("Two copies go by mail with the papers. It counts only if one comes back signed."),
        Goes.SERVE,
        "Code Civ. Proc. 415.30",
        only_if=_("Only if the other side is likely to sign for papers sent by mail."),
        later=True,
    )


def _disclosure(case: Case) -> Iterator[FormNeeded]:
    if known(case.matter.kind) is Kind.NULLITY:
        ask = _(
            "The law on telling each other about money does not name a nullity. Ask if you need to do it."
        )
        yield FormNeeded(
            "FL-140", _("Declaration of disclosure"), ask, Goes.ASK, "Fam. Code 2103", later=True
        )
        return
    law = "Fam. Code 2103, 2104"
    give = _("You give it to the other side after you file. Do not file it.")
    for form, title in (
        ("FL-140", _("Declaration of disclosure")),
        ("FL-142", _("Schedule of assets and debts")),
        ("FL-150", _("Income and expense declaration")),
    ):
        yield FormNeeded(form, title, give, Goes.SERVE, law, signed=True, later=True)
    proof = _(
        "You file it to show that the other side got your disclosure. The disclosure itself is not filed."
    )
    yield FormNeeded(
        "FL-141",
        _("Declaration on service of the declaration of disclosure"),
        proof,
        Goes.FILE,
        "Fam. Code 2103, 2106",
        signed=True,
        later=True,
    )


def _special(case: Case) -> Iterator[FormNeeded]:
    if known(case.matter.kind) is not Kind.NULLITY:
        steps = _("The court's own guide to the steps of a case. Read it; it is not filed.")
        yield FormNeeded("FL-107-INFO", _("Legal steps for a divorce or legal separation"), steps, Goes.KEEP)
    dangers = set(known(case.safety.dangers) or ())
    if dangers - {Danger.HIDE_ADDRESS}:
        protection = _(
            "A request for a restraining order. It costs nothing and can come first. Get help with it."
        )
        title = _("Request for domestic violence restraining order")
        yield FormNeeded("DV-100", title, protection, Goes.ASK, _("common practice"))
    if Special.INTERPRETER in (known(case.people.special) or ()):
        hearing = _("For a hearing. Some courts have a form of their own.")
        yield FormNeeded("INT-300", _("Request for interpreter"), hearing, Goes.ASK, later=True)
