"""What goes behind the petition."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow, CustodySheet, CustodyTo, SeparateHow, VisitsTo
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.character import Plea, asset_characters, debt_characters, plea
from firstpaper.law.measures.children import CUSTODY_FORMS, has_minor_children, listed_children
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

SHEETS, PLAN, OTHER_WORDS = "custody.sheets", "custody.plan", "custody.other_words"
SEPARATE = ("property.separate_how", "property.separate_petitioner", "property.separate_respondent")
COMMUNITY = ("property.community_how", "property.community_items")


@rule(
    "What goes behind the petition",
    cite=("Cal. Rules of Court, rule 5.52(a)", "Fam. Code 3429(a)"),
    since=date(2020, 1, 1),
    not_modelled="Local forms and covers that a court may ask for besides.",
)
def attachments(case: Case, on: date) -> list[Found]:
    """Every page that the petition says is attached must be there, and every page must be announced.

    A box that says "see attachment" with nothing behind it is a common reason for a petition to come back,
    or for a judge to have nothing to decide on. A page that no box announces may be overlooked.

    What we check. A page on custody in your own words that is empty, or written but not chosen. "Other" for
    custody or visits with no words for it. A list of property that is empty, or written while another way
    was chosen. And which official forms you said you would add.

    With minor children of both of you, the declaration on where they have lived (form FL-105) goes with
    the petition. Leaving it off is a classic reason for papers to come back.

    An example. You choose to list your community property on the petition and then answer "nothing" when
    asked for the list. The petition would announce a list that is not there.

    What to do. Lay the pages side by side before you sign: each mark, then its page.
    """
    pages = (*_custody(case, on), *_separate(case, on), *_community(case, on))
    return [*(one._replace(cite=("common practice",)) for one in pages), *_forms(case, on)]


def _custody(case: Case, on: date) -> Iterator[Found]:
    sheets, plan = known(case.custody.sheets), known(case.custody.plan)
    if CustodySheet.OWN_PAGE in (sheets or ()) and not plan:
        yield _empty(
            _("You want to add a page on custody in your own words, but the page is empty."),
            _("Write the plan, or take the page off the list."),
            SHEETS,
            PLAN,
        )
    if sheets is not None and CustodySheet.OWN_PAGE not in sheets and plan:
        yield _unannounced(
            _("You wrote a plan for custody, but you did not choose to add it."),
            _("Choose the page in your own words, or leave the plan for later."),
            SHEETS,
            PLAN,
        )
    if _other_asked(case, on) and not known(case.custody.other_words):
        yield _empty(
            _('You chose "something else" for custody or visits, but there are no words for it yet.'),
            _("Say in a few words what you ask for."),
            "custody.legal",
            "custody.physical",
            "custody.visits",
            OTHER_WORDS,
        )


def _other_asked(case: Case, on: date) -> bool:
    if known(case.custody.alike) is False:
        children = listed_children(case, on)
        asked = [wish for child in children for wish in (child.legal, child.physical, child.visits)]
    else:
        asked = [known(case.custody.legal), known(case.custody.physical), known(case.custody.visits)]
    return any(wish in (CustodyTo.OTHER, VisitsTo.OTHER) for wish in asked)


def _pleas(case: Case, on: date) -> set[Plea | None]:
    """What is asked for the things that were listed one by one."""
    return {plea(one) for one in (*asset_characters(case, on), *debt_characters(case, on))}


def _separate(case: Case, on: date) -> Iterator[Found]:
    how = known(case.property.separate_how)
    listed = bool(known(case.property.separate_petitioner) or known(case.property.separate_respondent))
    if how is SeparateHow.LIST and not listed and Plea.CONFIRM not in _pleas(case, on):
        yield _empty(
            _("You want to list separate property, but nothing is on the list."),
            _("Write the list, or choose another way to speak of it."),
            *SEPARATE,
        )
    if how in (SeparateHow.CLASSES, SeparateHow.FL_160) and listed:
        yield _unannounced(
            _("You listed separate property, but you chose another way to speak of it."),
            _("Choose the list, or leave it out. What is listed here would not be on the petition."),
            *SEPARATE,
        )


def _community(case: Case, on: date) -> Iterator[Found]:
    how, listed = known(case.property.community_how), bool(known(case.property.community_items))
    if how is CommunityHow.LIST and not listed and Plea.DETERMINE not in _pleas(case, on):
        yield _empty(
            _("You want to list community property, but nothing is on the list."),
            _("Write the list, or choose another way to speak of it."),
            *COMMUNITY,
        )
    if how not in (CommunityHow.LIST, None) and listed:
        yield _unannounced(
            _("You listed community property, but you chose another way to speak of it."),
            _("Choose the list, or leave it out. What is listed here would not be on the petition."),
            *COMMUNITY,
        )


def _forms(case: Case, on: date) -> Iterator[Found]:
    if has_minor_children(case, on):
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You have minor children together, so form FL-105 must go with the petition."),
            _("Fill it in and put it behind the petition. Without it the papers are likely to come back."),
            facts=("children.family",),
        )
    forms = [name for sheet, name in CUSTODY_FORMS.items() if sheet in (known(case.custody.sheets) or ())]
    forms += ["FL-160"] if _on_fl_160(case) else []
    if forms:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You chose to add these forms: {forms}. The petition announces each of them.").format(
                forms=in_a_row(forms)
            ),
            _("Fill in each one and put it behind the petition, or take it off the list."),
            facts=(SHEETS, SEPARATE[0], COMMUNITY[0]),
            values={"forms.to_attach": forms},
        )


def _on_fl_160(case: Case) -> bool:
    separate, community = known(case.property.separate_how), known(case.property.community_how)
    return separate is SeparateHow.FL_160 or community is CommunityHow.FL_160


def _empty(says: str, do: str, *facts: str) -> Found:
    return Found(Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, says, do, facts=facts)


def _unannounced(says: str, do: str, *facts: str) -> Found:
    return Found(Outcome.NOT_MET, Weight.LOOK_AGAIN, says, do, facts=facts)
