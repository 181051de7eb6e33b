"""A file of facts: read like typed answers, every bad line named, nothing half taken."""

import json
from collections.abc import Mapping
from datetime import date
from inspect import cleandoc
from typing import Any

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day, known
from firstpaper.facts.matter import Period
from firstpaper.facts.people import Address
from firstpaper.intake.differing import differences
from firstpaper.intake.engine import put
from firstpaper.intake.entering import MOST_BYTES, Problem, facts_from
from firstpaper.intake.kinds import places
from tests.any_case import typed_case
from tests.intake.small_bank import TODAY


def entered(source: str | Mapping[str, Any]) -> Case:
    """The case of a source that has no problems."""
    case, problems = facts_from(source, TODAY)
    assert problems == ()
    return case


def problems_in(source: str | Mapping[str, Any]) -> tuple[Problem, ...]:
    """The problems of a source from which nothing must be taken."""
    before = put(Case(), "petitioner.phone", "555-0100")
    case, problems = facts_from(source, TODAY, before)
    assert case is before
    assert problems
    return problems


NESTED = """
petitioner:
  name: Ana Ruiz
  other_names: [Ana Soto, Ana Vega]
  mailing: {street: 1 A St, city: Fresno, zip: 93701}
respondent.name: Daniel Reyes
respondent.mailing: 2 B St, Reno, NV 89501
matter: {unions: [marriage], kind: dissolution, amended: no}
dates:
  married_on: 2012-06-14
  separation_told_on: about March 2026
  separation_acted_on: don't know
  back_together:
    - 2025-03-01 to 4/16/2025, tried again
    - {start: 2025-06-01, end: 2025-07-01, why: again}
    - start: June 2026
residence.petitioner: {lives: 2, state_since: 1990, absences: none}
safety.dangers: "1, 2"
children: {family: minor_together, how_many: two}
child:
  - name: Lucia
    born_on: 11/22/2014
  - name: =Back
people.language: ~
court.branch:
support.other: ""
support.child_other: |
  one
  two
"""


def test_keys_may_be_nested_or_dotted_and_values_are_read_as_typed() -> None:
    case = entered(NESTED)
    assert case.petitioner.name == "Ana Ruiz"
    assert case.petitioner.other_names == ("Ana Soto", "Ana Vega")
    assert case.petitioner.mailing == Address(street="1 A St", city="Fresno", state="CA", zip="93701")
    assert case.respondent.mailing == Address(street="2 B St", city="Reno", state="NV", zip="89501")
    assert case.matter.unions == ("marriage",)
    assert case.matter.amended is False
    assert case.dates.married_on == Day(2012, 6, 14)
    assert case.dates.separation_told_on == Day(2026, 3, unsure=True)
    assert case.dates.separation_acted_on is DONT_KNOW
    assert case.dates.back_together == (
        Period(start=Day(2025, 3, 1), end=Day(2025, 4, 16), why="tried again"),
        Period(start=Day(2025, 6, 1), end=Day(2025, 7, 1), why="again"),
        Period(start=Day(2026, 6)),
    )
    assert case.residence.petitioner.lives == "this_county"
    assert case.residence.petitioner.absences == ()
    assert case.safety.dangers == ("afraid", "violence")
    assert case.children.how_many == 2
    assert [child.name for child in case.child] == ["Lucia", "Back"]
    assert case.people.language is None
    assert case.court.branch is None
    assert case.support.other == ""
    assert case.support.child_other == "one\ntwo"


@pytest.mark.parametrize("source", ["", "# only a comment\n", "null", "~", "{}", {}])
def test_a_file_without_facts_gives_an_empty_case(source: str | Mapping[str, Any]) -> None:
    assert entered(source) == Case()


def test_facts_are_put_on_top_of_what_was_told() -> None:
    before = put(put(Case(), "petitioner.name", "Ana"), "petitioner.phone", "555-0100")
    case, problems = facts_from("petitioner: {name: Bea, phone: null}", TODAY, before)
    assert not problems
    assert case.petitioner.name == "Bea"
    assert case.petitioner.phone is None


@settings(max_examples=20, deadline=None)
@given(typed_case())
def test_a_case_written_out_is_read_back_the_same(case: Case) -> None:
    data = case.model_dump(mode="json", include={key.partition(".")[0] for key in places()})
    assert entered(data) == case
    assert entered(json.dumps(data)) == case
    assert entered(yaml.safe_dump(data, allow_unicode=True)) == case


BAD = """
petitioner:
  nmae: Ana
  phone: 1
  phone: 2
  name: 123-45-6789
respondent: Daniel
matter.kind: annulment
matter:
  kind: dissolution
  amended: [yes]
dates:
  married_on: 13/4/2012
  registered_on: {year: 2012}
  back_together:
    - 3/1/2025
child:
  - born_on: 1/1/2030
  - Leo
child.1.birthplace: {a: b}
child.31.name: Zoe
unknown: 1
court.address: {street: 1 A St, zip: 93701}
safety.dangers: [1, 99]
petitioner.other_names: [[Ana]]
? [a, b]
: c
"""


def test_every_bad_line_is_named_in_order() -> None:
    text = cleandoc(BAD).replace("? [a, b]\n: c", "")
    assert [(problem.line, problem.key) for problem in problems_in(text)] == [
        (2, "petitioner.nmae"),
        (4, "petitioner.phone"),
        (5, "petitioner.name"),
        (6, "respondent"),
        (7, "matter.kind"),
        (9, "matter.kind"),
        (10, "matter.amended"),
        (12, "dates.married_on"),
        (13, "dates.registered_on"),
        (15, "dates.back_together"),
        (17, "child.1.born_on"),
        (18, "child.2"),
        (19, "child.1.birthplace"),
        (20, "child.31.name"),
        (21, "unknown"),
        (22, "court.address"),
        (23, "safety.dangers"),
        (24, "petitioner.other_names"),
    ]


@pytest.mark.parametrize(
    ("source", "says"),
    [
        ("petitioner.nmae: Ana", "Did you mean petitioner.name?"),
        ("child: [{}, {bornon: 2015}]", "Did you mean child.2.born_on?"),
        ("dates:\n  marriedon: 2012", "Did you mean dates.married_on?"),
        ("zzz: 1", "There is no fact with this name"),
        ("child.*.name: Ana", "There is no fact with this name"),
        ("petitioner:\n  name: Ana\npetitioner.name: Bea", "the first time in line 2"),
        ("petitioner: {name: Ana}\nchild: {1: {name: A}}\nchild.1.name: B", "the first time in line 2"),
        ("petitioner: [Ana]", "a group of facts"),
        ("matter.kind: annulment", "Write one of these: dissolution, legal_separation, nullity."),
        ("dates.married_on: 2/30/2012", "There is no day 30"),
        ("dates.married_on: 2027-01-01", "still to come"),
        ("dates.back_together: [{end: 2020}]", "start of this period is missing"),
        ("dates.back_together: [{start: 2021, end: 2020}]", "before the start"),
        ("dates.back_together: [{begin: 2021}]", "Only these names"),
        ("court.address: {street: 1 A St}", "no city"),
        ("court.address: {street: 1 A St, city: Fresno, country: US}", "Only these names"),
        ("court.address: {street: " + "x" * 300 + ", city: Fresno}", "more than 200 letters"),
        ("petitioner.name: ''", "Nothing was typed|There is nothing"),
        ("petitioner.name: [Ana]", "one value, not a list"),
        ("petitioner.name: {first: Ana}", "one value, not a group"),
        ("children.how_many: 0", "none"),
        ("Ana", "made of lines"),
        ("[1, 2]", "made of lines"),
        ("petitioner:\n\tname: Ana", "tab in place of"),
        ("petitioner: {name: Ana", "could not be read near here"),
        ("a: b: c", "could not be read near here"),
        ("a: &x 1\nb: *x", "Shortcuts"),
        ("a: *x", "Shortcuts"),
        ("a: !!python/object/apply:os.system [id]", "begin with !"),
        ("a: 1\n---\nb: 2", "second document"),
        ("? [a]\n: b", "plain text"),
        ("a: " + "[" * 50 + "]" * 50, "nested too deep"),
        ("[" * 500_000, "could not be read near here"),
        ("{a: " * 200_000, "nested too deep"),
        ("a: [" + "1," * 30_000 + "]", "too much"),
        ("a: \ud800", "could not be read near here"),
        ("a: \x00", "could not be read near here"),
        ("# " + "x" * MOST_BYTES, "too large"),
    ],
)
def test_what_is_wrong_is_said_in_plain_words(source: str, says: str) -> None:
    messages = [problem.message for problem in problems_in(source)]
    assert any(says_one in message for message in messages for says_one in says.split("|")), messages


def test_a_secret_is_not_repeated_in_a_problem() -> None:
    (problem,) = problems_in("petitioner.name: my number is 123-45-6789")
    assert "6789" not in problem.message
    assert "Social Security" in problem.message


@given(st.text(max_size=300))
def test_whatever_the_file_holds_it_is_read_or_named(text: str) -> None:
    case, problems = facts_from(text, TODAY)
    assert case == Case() or not problems


JSON_LIKE = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=20) | st.dates(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=10), inner, max_size=3),
    max_leaves=8,
)
NAMES = st.sampled_from(
    ["petitioner", "name", "child", "1", "born_on", "dates", "married_on", "court.address"]
)


@given(st.dictionaries(NAMES, JSON_LIKE | st.dictionaries(NAMES, JSON_LIKE, max_size=3), max_size=4))
def test_whatever_a_mapping_holds_it_is_read_or_named(source: dict[str, Any]) -> None:
    case, problems = facts_from(source, TODAY)
    assert case == Case() or not problems


def test_a_mapping_that_holds_itself_is_refused() -> None:
    loop: dict[str, Any] = {}
    loop["petitioner"] = loop
    (problem,) = problems_in(loop)
    assert "nested too deep" in problem.message


def test_python_values_are_read_like_their_text() -> None:
    facts = {
        "dates": {"married_on": date(2012, 6, 14)},
        "matter": {"amended": True},
        "children.how_many": 2,
        "child": {1: {"name": "Lucia"}},
        "petitioner.other_names": ("Ana", "Bea"),
    }
    case = entered(facts)
    assert case.dates.married_on == Day(2012, 6, 14)
    assert case.matter.amended is True
    assert case.children.how_many == 2
    assert case.child[0].name == "Lucia"
    assert case.petitioner.other_names == ("Ana", "Bea")


# --- what is listed ---------------------------------------------------------------------------------

LISTED = """
schedule: {agreement: no, in_california: yes}
asset:
  - kind: checking
    words: Example Credit Union
    value: 1,200
    last_four: ending 0937
  - kind: real_estate
    words: House in Fresno
    house: {price: 240000}
    contributions:
      - me, $20,000, down payment, papers
      - {by: respondent, amount: 500, toward: loan, traced: no}
    documents: [Deed, Loan statement]
debt.1: {kind: credit_card, words: Visa}
debt.2.kind: tax
income.time_with_petitioner: 65%
"""


def test_things_and_debts_are_a_list_or_numbered() -> None:
    case = entered(LISTED)
    assert [one.words for one in case.asset] == ["Example Credit Union", "House in Fresno"]
    assert case.asset[0].last_four == "0937"
    assert case.asset[1].house.price == 240_000
    assert [(one.by, one.amount, one.traced) for one in known(case.asset[1].contributions) or ()] == [
        ("petitioner", 20_000, True),
        ("respondent", 500, False),
    ]
    assert [one.kind for one in case.debt] == ["credit_card", "tax"]
    assert case.income.time_with_petitioner == 65
    assert case.schedule.agreement is False


def test_a_row_that_is_there_is_changed_by_its_number_and_the_rest_stays() -> None:
    before = entered(LISTED)
    case, problems = facts_from({"asset": [{"value": "1300"}], "asset.3.words": "Piano"}, TODAY, before)
    assert problems == ()
    assert [one.words for one in case.asset] == ["Example Credit Union", "House in Fresno", "Piano"]
    assert case.asset[0].value == 1300


@pytest.mark.parametrize(
    ("source", "key", "says"),
    [
        ("asset.1.colour: red", "asset.1.colour", "no fact with this name"),
        ("asset.2.vallue: 5", "asset.2.vallue", "Did you mean asset.2.value?"),
        ("debt:\n  - owd: 5", "debt.1.owd", "Did you mean debt.1.owed?"),
        ("asset.3.words: Piano", "asset.1", "with no number left out"),
        ("asset: [{}, {words: Piano}]", "asset.1", "with no number left out"),
        ("asset: [{shares: 5}, {words: Piano}]", "asset.1", "can stand alone"),
        ("asset.100.words: Piano", "asset.100.words", "no fact with this name"),
        ("asset: [" + "{words: Spoon}, " * 100 + "]", "asset", "There is room for 99"),
        ("asset: Piano", "asset", "group of facts"),
        ("asset.1.words: Card 4111111111111111", "asset.1.words", "only the last 4 digits"),
        ("debt.1.last_four: 123-45-6789", "debt.1.last_four", "only the last 4 digits"),
        ("asset.1.contributions: [a boat]", "asset.1.contributions", "who paid, how much"),
        ("asset.1.contributions: [{by: me, amount: 5}]", "asset.1.contributions", "what it was for"),
        ("asset.1.contributions: [{amount: 5}]", "asset.1.contributions", "who paid"),
        ("asset.1.contributions: [none]", "asset.1.contributions", "one plain value on each line"),
        ("asset.1.acquired_on: 12/24/2026", "asset.1.acquired_on", "still to come"),
        ("record.filed_on: 11/1/2026", "record.filed_on", "no fact with this name"),
    ],
)
def test_a_line_about_a_thing_that_cannot_be_used_is_named(source: str, key: str, says: str) -> None:
    found = {one.key: one.message for one in problems_in(source)}
    assert says in found[key]


TWO_WAYS = """
matter.unions: marriage
dates: {married_on: 08/05/2016}
"""


def test_a_day_that_reads_two_ways_is_refused_with_both_readings() -> None:
    (problem,) = problems_in(TWO_WAYS)
    assert problem.key == "dates.married_on"
    assert "Friday, August 5, 2016 or Sunday, May 8, 2016" in problem.message
    assert "day_order: month_first" in problem.message


@pytest.mark.parametrize(
    ("order", "day"), [("month_first", date(2016, 8, 5)), ("day_first", date(2016, 5, 8))]
)
def test_a_file_says_once_how_it_writes_its_days(order: str, day: date) -> None:
    case, problems = facts_from(f"day_order: {order}{TWO_WAYS}", date(2026, 11, 28))
    assert problems == ()
    assert case.dates.married_on == Day.of(day)


def test_a_line_that_can_only_put_the_day_first_puts_the_others_in_doubt() -> None:
    told = f"day_order: month_first{TWO_WAYS}child: [{{born_on: 23/04/2015}}]\n"
    first, second = problems_in(told)
    assert "Another line of this file puts the day first" in first.message
    assert "no month 23" in second.message


def test_a_day_in_pieces_of_a_period_is_looked_at_too() -> None:
    (problem,) = problems_in("dates.back_together: [{start: 03/04/2020, end: 2020-05-01}]")
    assert "can be read two ways" in problem.message


def test_an_order_that_is_none_is_refused() -> None:
    (problem,) = problems_in("day_order: american\n")
    assert "month_first or day_first" in problem.message


@pytest.mark.parametrize("state", ["CA", "California", "california"])
def test_a_state_in_pieces_may_be_written_out(state: str) -> None:
    told = f"child: [{{name: Leo Marsh, homes: [{{start: 2020, place: Fresno, state: {state}}}]}}]"
    (lived,) = known(entered(told).child[0].homes) or ()
    assert lived.state == "CA"


TWO = """children: {how_many: 2}
child: [{name: Ada Lind, born_on: 2019-03-09}, {name: Bo Lind, born_on: 2021-04-08}]
"""


def put_onto(text: str, case: Case) -> Case:
    after, problems = facts_from(text, TODAY, case)
    assert problems == ()
    return after


def test_a_new_child_in_a_list_is_added_and_one_that_is_there_is_not() -> None:
    two = put_onto(TWO, Case.nothing())
    three = put_onto("child: [{name: Cy Lind, born_on: 2023-01-02}]", two)
    assert [one.name for one in three.child] == ["Ada Lind", "Bo Lind", "Cy Lind"]
    assert three.children.how_many == 3
    assert put_onto("child: [{name: Cy Lind, born_on: 2023-01-02}]", three) == three
    later = put_onto("child: [{name: bo lind, birthplace: 'Fresno, CA'}]", two)
    assert [one.birthplace for one in later.child] == [None, "Fresno, CA"]


def test_a_thing_is_the_one_that_is_called_the_same_however_its_kind_is_written() -> None:
    text = "asset: [{kind: checking, words: Example Bank, last_four: 4821}, {kind: cash, words: Box}]"
    listed = put_onto(text, Case.nothing())
    assert len(listed.asset) == 2
    assert put_onto(text, listed) == listed
    other = "asset: [{kind: Checking account, words: example bank, last_four: ending 4821, value: 900}]"
    again = put_onto(other, listed)
    assert [one.value for one in again.asset] == [900, None]
    assert len(put_onto("asset: [{kind: checking, words: Example Bank, last_four: 1111}]", again).asset) == 3


def test_a_list_with_its_number_is_the_whole_list() -> None:
    two = put_onto(TWO, Case.nothing())
    renamed = put_onto(TWO.replace("Ada", "Ada May"), two)
    assert [one.name for one in renamed.child] == ["Ada May Lind", "Bo Lind"]
    assert [one.key for one in differences(two, renamed)] == ["child.1.name"]
    assert differences(two, renamed)[0].other_person


def test_a_choice_is_never_guessed_from_its_beginning() -> None:
    for text in ("matter.kind: diss", "safety.dangers: [hide]"):
        assert "Write one of these" in facts_from(text, TODAY)[1][0].message
