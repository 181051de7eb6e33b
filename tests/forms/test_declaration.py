"""The custody declaration, FL-105: the children's homes, the other questions, and addresses kept off it.

What must be on the sheet is Fam. Code 3429(a); when it is filed is Cal. Rules of Court, rule 5.52. Where each
answer stands is common practice, no source: the numbers of the sheet of 2025 are not known.
"""

from dataclasses import asdict
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.facts.addresses import keeps_addresses_off
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import ItemKind, edition_for
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl105.form import attachment_pages
from firstpaper.forms.fl105.form import form as declaration
from firstpaper.intake import standing
from firstpaper.packet import build
from tests.any_case import any_case, filing_days
from tests.households.golden import households

ON = date(2026, 12, 1)
FL_105 = edition_for("FL-105", ON)

LUCIA: dict[str, Any] = {
    "name": "Lucia Reyes",
    "born_on": "2016-02-29",
    "birthplace": "Delano, California",
    "parentage": "born_to_both",
    "homes": [
        {
            "start": "2016-02",
            "end": "2026-09-16",
            "place": "Bakersfield",
            "state": "CA",
            "with_whom": "both of us",
        },
        {"start": "2026-09-16", "place": "Fresno", "state": "CA", "with_whom": "Ana Soto"},
    ],
    "address": {"street": "415 Third Street", "city": "Fresno", "state": "CA", "zip": "93701"},
}
MATEO: dict[str, Any] = {
    "name": "Mateo Reyes",
    "born_on": "2019-11-02",
    "birthplace": "Fresno, California",
    "parentage": "born_to_both",
    "same_homes": True,
}
FAMILY: dict[str, Any] = {
    "safety": {"dangers": []},
    "matter": {"unions": ["marriage"], "amended": False},
    "petitioner": {"name": "Ana Soto", "mailing": {"street": "PO Box 118", "city": "Fresno", "zip": "93701"}},
    "respondent": {
        "name": "Luis Reyes",
        "mailing": {"street": "9 Oak Street", "city": "Delano", "zip": "93215"},
    },
    "court": {
        "county": "Fresno",
        "address": {"street": "1130 Example Avenue", "city": "Fresno", "zip": "93724"},
    },
    "dates": {"separation_told_on": "2026-09-01", "separation_acted_on": "2026-09-16"},
    "children": {"family": ["minor_together"], "how_many": 2},
    "child": [LUCIA, MATEO],
    "uccjea": {"now": True, "people": [], "cases": [], "orders": [], "claims": []},
}


def family(**facts: Any) -> Case:
    return Case.model_validate({**FAMILY, **facts})


def uccjea(**facts: Any) -> dict[str, Any]:
    return {**FAMILY["uccjea"], **facts}


def sheet(case: Case, number: int = 0) -> dict[str, ItemAnswer]:
    return {answer.concept: answer for answer in declaration(case, ON)[number].items}


def everything(forms: tuple[FilledForm, ...], case: Case) -> str:
    """Every word of the forms and of the pages behind them."""
    items = [str(asdict(answer)) for form in forms for answer in form.items]
    return "\n".join([*items, *(str(asdict(page)) for page in attachment_pages(case, ON))])


# --- the sheet as a whole ---------------------------------------------------------------------------


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_every_concept_is_answered_once_with_a_reason_and_as_what_it_is(case: Case, on: date) -> None:
    for form in declaration(case, on):
        assert [answer.concept for answer in form.items] == [item.concept for item in form.edition.items]
        for answer in form.items:
            assert answer.because.strip(), answer
            assert bool(answer.value) == (answer.action is Action.WRITE), answer
            if answer.open_key:
                case.fact(answer.open_key)
            if answer.action is Action.MARK:
                assert answer.kind == ItemKind.BOX


@pytest.mark.parametrize(
    ("what", "concepts"),
    [
        ("the child's present address or whereabouts", {"child.a.home.1"}),
        ("the places of the last five years", {"child.a.home.1", "child.a.home.4", "more_homes"}),
        ("names and present addresses of those the child lived with", {"people"}),
        ("whether the filer took part in another custody case", {"cases.yes", "cases.no", "cases.rows"}),
        ("the court and number of that case", {"cases.rows"}),
        ("adoptions and the end of parental rights", {"cases.adoption", "cases.juvenile"}),
        ("domestic violence and protective orders", {"orders.yes", "orders.rows"}),
        ("others with custody or claims to it", {"claims.yes", "claims.rows"}),
        ("under penalty of perjury", {"signing.perjury", "signing.signature"}),
        ("a duty to tell of later cases", {"signing.update"}),
        ("what is confidential", {"confidential"}),
    ],
)
def test_what_the_law_asks_has_a_place(what: str, concepts: set[str]) -> None:
    """Fam. Code 3429(a)-(d), point by point."""
    assert concepts <= {item.concept for item in FL_105.items}, what


def test_the_numbers_of_2025_are_not_known_and_the_sheet_says_so() -> None:
    assert not FL_105.numbered
    assert all(item.item is None and item.page is None and not item.confirmed for item in FL_105.items)
    assert "we have not seen the numbers" in FL_105.caution
    assert FL_105.item("child.b.same").was == "3b"


@pytest.mark.parametrize(
    "facts",
    [
        {"uccjea": uccjea(now=False)},
        {"uccjea": uccjea(now=None)},
        {"child": [], "children": {"family": []}},
        {
            "child": [{**LUCIA, "born_on": "2008-01-01"}],
            "children": {"family": ["minor_together"], "how_many": 1},
        },
    ],
    ids=["later", "not asked", "no child", "grown up"],
)
def test_it_is_there_only_where_it_is_wanted_and_a_child_is_listed(facts: dict[str, Any]) -> None:
    assert declaration(family(**facts), ON) == ()
    assert attachment_pages(family(**facts), ON) == ()


# --- children and homes -----------------------------------------------------------------------------


def test_the_homes_stand_newest_first_with_names_in_full() -> None:
    found = sheet(family())
    assert found["children.count"].value == "2"
    assert found["child.a.name"].value == "Lucia Reyes"
    assert found["child.a.born_on"].value == "02/29/2016"
    assert found["child.a.home.1"].value == (
        "09/16/2026 - present\n415 Third Street, Fresno, CA 93701\nAna Soto"
    )
    assert found["child.a.home.2"].value == "02/2016 - 09/16/2026\nBakersfield, CA\nAna Soto and Luis Reyes"
    assert found["child.a.home.3"].action is Action.BLANK
    assert found["people"].value == ("Ana Soto, parent\nLuis Reyes, parent, 9 Oak Street, Delano, CA 93215")


def test_a_child_with_the_same_homes_has_the_box_and_no_rows() -> None:
    found = sheet(family())
    assert found["child.b.same"].action is Action.MARK
    assert {found[f"child.b.home.{row}"].action for row in range(1, 5)} == {Action.BLANK}
    assert not any(found[f"child.b.home.{row}"].open_key for row in range(1, 5))


def test_homes_told_one_by_one_are_the_same_where_they_are_equal_since_the_birth() -> None:
    own = {**MATEO, "same_homes": False, "address": LUCIA["address"]}
    homes = [{**LUCIA["homes"][0], "start": "2019-11-02"}, LUCIA["homes"][1]]
    assert sheet(family(child=[LUCIA, {**own, "homes": homes}]))["child.b.same"].action is Action.MARK
    moved = [{**homes[0], "end": "2026-09-10"}, {**homes[1], "start": "2026-09-10"}]
    assert sheet(family(child=[LUCIA, {**own, "homes": moved}]))["child.b.same"].action is Action.BLANK


def test_a_second_child_whose_homes_were_not_asked_is_open_at_that_question() -> None:
    found = sheet(family(child=[LUCIA, {**MATEO, "same_homes": None}]))
    assert found["child.b.same"].open_key == "child.2.same_homes"
    assert found["child.b.home.1"].open_key == "child.2.same_homes"
    no_homes = sheet(family(child=[{**LUCIA, "homes": None}, MATEO]))
    assert no_homes["child.a.home.1"].open_key == "child.1.homes"
    assert no_homes["child.b.home.1"].open_key == "child.1.homes"


def test_only_homes_of_the_last_five_years_are_listed() -> None:
    old = {"start": "2016-02", "end": "2021-11-30", "place": "Reno", "state": "NV", "with_whom": "both of us"}
    found = sheet(family(child=[{**LUCIA, "homes": [old, *LUCIA["homes"]]}, MATEO]))
    assert "Reno" not in "".join(answer.value for answer in found.values())
    on_the_line = {**old, "end": "2021-12-01"}
    found = sheet(family(child=[{**LUCIA, "homes": [on_the_line, *LUCIA["homes"]]}, MATEO]))
    assert "Reno, NV" in found["child.a.home.3"].value


def test_homes_beyond_the_rows_go_on_a_page_that_the_box_announces() -> None:
    years = range(2022, 2027)
    homes = [
        {
            "start": f"{year}-01-01",
            "end": f"{year}-12-31",
            "place": f"Town {year}",
            "state": "CA",
            "with_whom": "me",
        }
        for year in years
    ]
    case = family(child=[{**LUCIA, "homes": homes}], children={"family": ["minor_together"], "how_many": 1})
    (page,) = attachment_pages(case, ON)
    assert page.rows == (("Lucia Reyes", "01/01/2022 - 12/31/2022", "Town 2022, CA", "Ana Soto", "parent"),)
    box = sheet(case)["more_homes"]
    assert (box.action, box.continues) == (Action.MARK, page.label)
    assert page.behind == "Declaration Under UCCJEA (FL-105)"


def test_each_child_beyond_the_second_has_an_added_page() -> None:
    more = [
        {**MATEO, "name": name, "born_on": born}
        for name, born in (("Eva", "2021-01-05"), ("Leo", "2023-05-06"))
    ]
    case = family(child=[LUCIA, MATEO, *more], children={"family": ["minor_together"], "how_many": 4})
    forms = declaration(case, ON)
    assert [(form.form, form.use) for form in forms] == [
        ("FL-105", ""),
        ("FL-105(A)", "Eva"),
        ("FL-105(A)", "Leo"),
    ]
    assert sheet(case)["more_children"].continues == "FL-105(A)"
    assert sheet(case, 1)["child.name"].value == "Eva"
    assert sheet(case, 1)["child.same"].action is Action.MARK


# --- cases, orders, claims --------------------------------------------------------------------------


def test_other_cases_orders_and_claims_are_marked_and_told_as_typed() -> None:
    told = uccjea(
        cases=["family", "adoption"],
        case_words=["Kern County, BCS-26-0001234, open"],
        orders=["criminal"],
        order_words=[],
        claims=["Rosa Vega, 12 Elm Street, visits, Lucia"],
    )
    found = sheet(family(uccjea=told))
    marked = {concept for concept, answer in found.items() if answer.action is Action.MARK}
    assert {
        "cases.yes",
        "cases.family",
        "cases.adoption",
        "orders.yes",
        "orders.criminal",
        "claims.yes",
    } < marked
    assert not marked & {"cases.no", "cases.juvenile", "orders.family", "claims.no"}
    assert found["cases.rows"].value == "Kern County, BCS-26-0001234, open"
    assert "Ask the clerk" in found["orders.rows"].because
    assert found["claims.rows"].value.startswith("Rosa Vega")


@pytest.mark.parametrize(
    ("matter", "orders", "why"),
    [
        ({"other_case": True, "other_case_kinds": ["other"]}, [], "You told us of a case"),
        ({"other_case": True}, [], "You told us of a case"),
        ({"other_case": False}, ["family"], "You told us of a protective order"),
    ],
    ids=["a case", "a case of no kind", "an order"],
)
def test_nobody_is_told_to_swear_to_no_other_case_who_told_of_one(
    matter: dict[str, Any], orders: list[str], why: str
) -> None:
    """Fam. Code 3429(a)(2) counts cases on violence and on protective orders."""
    case = family(matter={**FAMILY["matter"], **matter}, uccjea=uccjea(orders=orders, order_words=[]))
    found = sheet(case)
    for box in ("cases.yes", "cases.no", "cases.family", "cases.rows"):
        assert (found[box].action, found[box].open_key) == (Action.BLANK, "uccjea.cases")
        assert why in found[box].because


@pytest.mark.parametrize(
    "matter",
    [{"other_case": False}, {"other_case": True, "other_case_kinds": ["bankruptcy"]}],
    ids=["none", "a bankruptcy"],
)
def test_no_other_case_is_marked_where_none_about_them_was_told(matter: dict[str, Any]) -> None:
    found = sheet(family(matter={**FAMILY["matter"], **matter}))
    assert (found["cases.no"].action, found["cases.no"].open_key) == (Action.MARK, "")


def test_people_of_homes_before_the_years_that_count_stay_off_the_sheet() -> None:
    """Fam. Code 3429(a): the persons with whom the child has lived during the last five years."""
    foster = {"name": "Rosa Vega", "relation": "foster mother", "address": "12 Elm Street, Lodi, CA 95240"}
    home = {"start": "2016-02", "end": "2021-11-30", "place": "Lodi", "state": "CA", "with_whom": "Rosa Vega"}
    since = {**LUCIA["homes"][0], "start": "2021-12-01"}
    told = {"uccjea": uccjea(people=[foster])}
    alone = {"children": {"family": ["minor_together"], "how_many": 1}}
    left_out = sheet(family(child=[{**LUCIA, "homes": [home, since, LUCIA["homes"][1]]}], **told, **alone))
    assert "Elm Street" not in str(left_out)
    assert "Not on the list: Rosa Vega." in left_out["people"].because

    on_the_line = [{**home, "end": "2021-12-01"}, since, LUCIA["homes"][1]]
    asked = sheet(family(child=[{**LUCIA, "homes": on_the_line}], **told, **alone))
    assert "12 Elm Street" in asked["people"].value


def test_everybody_in_a_home_is_described() -> None:
    home = {**LUCIA["homes"][1], "with_whom": "both of us and Rosa Vega"}
    told = uccjea(people=[{"name": "Rosa Vega", "relation": "aunt"}])
    alone = {"children": {"family": ["minor_together"], "how_many": 1}}
    found = sheet(family(child=[{**LUCIA, "homes": [home]}], uccjea=told, **alone))
    assert found["child.a.home.1"].rows[0]["relation"] == "parents, aunt"


def test_words_that_are_too_long_for_the_rows_go_on_a_page() -> None:
    case = family(uccjea=uccjea(cases=["family"], case_words=[f"Case {number}" for number in range(9)]))
    (page,) = attachment_pages(case, ON)
    assert page.paragraphs == tuple(f"Case {number}" for number in range(9))
    rows = sheet(case)["cases.rows"]
    assert (rows.value, rows.continues) == (f"See {page.label}.", page.label)


# --- addresses that must stay private ---------------------------------------------------------------

SECRETS = ("415 Third Street", "Hidden Town", "77 Secret Road", "Aunt Rosa")
HIDDEN = {
    **LUCIA,
    "homes": [
        LUCIA["homes"][0],
        {"start": "2026-09-16", "place": "Hidden Town", "state": "CA", "with_whom": "Aunt Rosa and me"},
    ],
}
PEOPLE = [{"name": "Rosa Vega", "relation": "aunt", "address": "77 Secret Road, Hidden Town, CA 93999"}]


@pytest.mark.parametrize("dangers", [["violence"], ["hide_address"], "don't know", None], ids=str)
@pytest.mark.parametrize("kept", [True, "don't know", None], ids=str)
def test_no_private_address_leaves_the_case_file(dangers: Any, kept: Any) -> None:
    case = family(
        safety={"dangers": dangers},
        child=[HIDDEN, {**MATEO, "same_homes": True}],
        uccjea=uccjea(kept_private=kept, people=PEOPLE),
    )
    assert keeps_addresses_off(case)
    words = everything(declaration(case, ON), case)
    assert [secret for secret in SECRETS if secret in words] == []
    assert "09/16/2026 - present\\nCA" in words
    assert "Bakersfield, CA" in words  # a home of the time together, which the other side knows


def test_the_box_is_marked_only_where_violence_or_abuse_is_alleged() -> None:
    danger = {"safety": {"dangers": ["violence"]}, "child": [HIDDEN, MATEO]}
    alleged = sheet(family(**danger, uccjea=uccjea(kept_private=True)))
    assert alleged["confidential"].action is alleged["child.a.private"].action is Action.MARK
    unsure = sheet(family(**danger, uccjea=uccjea(kept_private="don't know")))
    assert unsure["confidential"].open_key == unsure["child.a.private"].open_key == "uccjea.kept_private"
    open_ = sheet(family(**danger, uccjea=uccjea(kept_private=False)))
    assert open_["confidential"].action is Action.BLANK
    assert "415 Third Street" not in open_["child.a.home.1"].value  # another town than the home told
    assert "Hidden Town" in open_["child.a.home.1"].value


@pytest.mark.parametrize(
    ("with_whom", "shown"),
    [
        ("both of us", True),
        ("Both parents", True),
        ("Luis Reyes and his mother", True),
        ("Ana Soto", False),
        ("my sister", False),
        ("", False),
    ],
)
def test_a_home_is_shown_in_danger_only_where_the_other_side_lived_there_too(
    with_whom: str, shown: bool
) -> None:
    homes = [{**LUCIA["homes"][0], "with_whom": with_whom}, LUCIA["homes"][1]]
    danger = {"safety": {"dangers": ["violence"]}, "uccjea": uccjea(kept_private=True)}
    found = sheet(family(**danger, child=[{**LUCIA, "homes": homes}]))
    assert ("Bakersfield" in found["child.a.home.2"].value) is shown


def test_a_whole_packet_never_shows_what_must_stay_private() -> None:
    """Also not an address that was told before the danger was, and that does not stand any more."""
    one = next(one for one in households() if one.name == "address-must-stay-hidden")
    case = one.case
    for key, value in {
        "child.1.address": {"street": "415 Third Street", "city": "Sacramento", "zip": "95811"},
        "uccjea.people": PEOPLE,
    }.items():
        case = case.with_fact(key, value)
    assert standing(case).fact("child.1.address") is None
    html = build(case, one.on).html()
    assert "415 Third Street" not in html
    assert "77 Secret Road" not in html
    assert "Rosa Vega" in html


# --- what is missing --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("facts", "concept", "key"),
    [
        ({"child": [{**LUCIA, "birthplace": None}, MATEO]}, "child.a.born_in", "child.1.birthplace"),
        ({"child": [{**LUCIA, "name": None}, MATEO]}, "child.a.name", "child.1.name"),
        ({"child": [{**LUCIA, "born_on": "2016"}, MATEO]}, "child.a.born_on", "child.1.born_on"),
        ({"child": [{**LUCIA, "address": None}, MATEO]}, "child.a.home.1", "child.1.address"),
        ({"petitioner": {"name": "Ana Soto"}}, "caption.filer", "petitioner.mailing"),
        ({"petitioner": {}}, "caption.filer", "petitioner.name"),
        ({"respondent": {}}, "caption.names", "respondent.name"),
        ({"court": {"county": "Fresno"}}, "caption.court", "court.address"),
        ({"uccjea": uccjea(people=None)}, "people", "uccjea.people"),
        ({"uccjea": uccjea(cases=None)}, "cases.yes", "uccjea.cases"),
        ({"uccjea": uccjea(cases=["other"])}, "cases.rows", "uccjea.case_words"),
        ({"uccjea": uccjea(orders="don't know")}, "orders.family", "uccjea.orders"),
        ({"uccjea": uccjea(claims=None)}, "claims.no", "uccjea.claims"),
    ],
)  # fmt: skip
def test_an_item_whose_answer_is_missing_names_the_question(
    facts: dict[str, Any], concept: str, key: str
) -> None:
    assert sheet(family(**facts))[concept].open_key == key
