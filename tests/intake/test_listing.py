"""What the two own, owe and earn: asked only where it matters, and never left contradicting."""

import inspect
from collections import Counter
from datetime import date
from decimal import Decimal
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from firstpaper.cli.words.why import measure_words
from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.schedule import MOST_LISTED, Asset, Contribution
from firstpaper.intake import AnswerKind, asking, echo, facts_from, read_answer
from firstpaper.intake.engine import applies, asked, standing
from firstpaper.intake.kinds import ROWS, Row, listed_places, place_of
from firstpaper.intake.listing import (
    about,
    all_about,
    in_general,
    is_empty,
    listed,
    new_row,
    notes_on,
    rows,
    settled,
    unasked,
    with_told,
    without_row,
)
from firstpaper.intake.loading import LISTING_FOLDER, listing
from firstpaper.intake.predicates import OF_THE_LISTING
from firstpaper.intake.question import Question
from firstpaper.law import measures
from firstpaper.law.measures.character import asset_character, debt_character
from firstpaper.law.register import all_rules
from tests.each import for_each
from tests.intake.predicates_of import predicates_of

TODAY = date(2026, 11, 25)
TOPICS = listing().topics
QUESTIONS: list[Question] = [question for topic in TOPICS for question in topic.questions]
PREDICATES = predicates_of(OF_THE_LISTING)
THING, DEBT = Row("asset", 1), Row("debt", 1)
MARRIED, PARTED = Day(2010, 6, 1), Day(2024, 6, 1)
OUR_LIST = "schedule"

a_few = settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow])
"""Each case is told fact by fact, which takes its time."""

each_question = for_each(QUESTIONS, lambda question: question.key)


def told(facts: dict[str, Any], onto: Case | None = None) -> Case:
    case = onto or Case()
    for key, value in facts.items():
        case = case.with_fact(key, value)
    return case


def thing(**facts: Any) -> Case:
    return told({f"asset.1.{name.replace('__', '.')}": value for name, value in facts.items()}, BASE)


def debt(**facts: Any) -> Case:
    return told({f"debt.1.{name}": value for name, value in facts.items()}, BASE)


BASE = told(
    {
        "matter.kind": "dissolution",
        "matter.unions": ("marriage",),
        "dates.married_on": MARRIED,
        "dates.separation_told_on": PARTED,
        "dates.separation_acted_on": PARTED,
        "schedule.agreement": False,
        "schedule.in_california": True,
        "schedule.support_arranged": False,
    }
)


# --- the data ---------------------------------------------------------------------------------------


def test_every_listed_fact_has_one_question_and_every_question_a_fact() -> None:
    assert Counter(question.key for question in QUESTIONS) == Counter(list(listed_places()))


def test_a_topic_is_about_one_kind_of_row_and_named_as_its_file() -> None:
    for topic in TOPICS:
        assert len({question.each for question in topic.questions}) == 1
        assert list(LISTING_FOLDER.glob(f"[0-9][0-9]-*{topic.name.partition('-')[0]}*.yaml"))
    assert {topic.questions[0].each for topic in TOPICS} == {None, *ROWS} - {"child"}


@each_question
def test_choices_cover_every_value_and_every_answer_has_a_short_name(question: Question) -> None:
    values = place_of(question.key).choices
    assert {choice.value for choice in question.choices} == set(values or ())
    assert question.short
    assert len(question.short) <= 66
    assert question.short[0].islower()


@each_question
def test_every_example_is_an_answer_and_is_said_back(question: Question) -> None:
    one = asking(question.key.replace("*", "1"), Case())
    assert one is not None
    for example in question.examples:
        value = read_answer(one, example, TODAY)
        assert read_answer(one, echo(one, value), TODAY) == value
    plain = question.kind in (AnswerKind.YES_NO, AnswerKind.CHOICE)
    assert plain or question.examples or question.none or question.hint


@each_question
def test_days_lie_in_the_past(question: Question) -> None:
    """All but the day from which a stock option can be used."""
    dated = question.kind is AnswerKind.DATE
    assert question.not_after_today is (dated and question.key != "asset.*.earned_until")


@each_question
def test_a_predicate_takes_the_row_where_a_question_is_about_one(question: Question) -> None:
    if question.applies is not None:
        taken = list(inspect.signature(question.applies).parameters)
        assert len(taken) == (2 if question.each else 1)


def test_every_predicate_is_used() -> None:
    used = {question.when for question in QUESTIONS if question.when}
    assert set(predicates_of(OF_THE_LISTING[:1])) <= used <= PREDICATES.keys()


@each_question
def test_what_a_question_feeds_exists(question: Question) -> None:
    assert set(question.feeds.rules) <= set(all_rules())
    assert set(question.feeds.sheets) <= {"FL-160", OUR_LIST}
    assert question.feeds.items == ()


@each_question
def test_a_measure_that_it_feeds_reads_the_fact(question: Question) -> None:
    field = question.key.rpartition(".")[2]
    for name in question.feeds.measures:
        assert name in measure_words()
        module = import_module(f"{measures.__name__}.{name}")
        assert module.__file__
        path = Path(module.__file__)
        files = path.parent.glob("*.py") if path.name == "__init__.py" else [path]
        text = "".join(each.read_text("utf-8") for each in files)
        assert field in text or field in MEASURED_BY_ANOTHER_NAME, name


MEASURED_BY_ANOTHER_NAME = {"childcare", "health_costs"}
"""Costs on top of support, which `child_support.shared_costs` takes as an amount."""


def test_the_interview_goes_on_as_if_nothing_were_listed() -> None:
    full = thing(kind="vehicle", words="Car", value=Decimal(100))
    assert [one.key for one in asked(full)] == [one.key for one in asked(BASE)]
    assert standing(full).asset == full.asset


# --- what is asked of which thing ---------------------------------------------------------------------

PLAIN = ["kind", "words", "value", "owed", "how", "by", "acquired_on", "title"]
ACCOUNT = thing(kind="checking", how="earned", by="both", acquired_on=Day(2015, 3), title="joint")
NO_ACCOUNT = thing(kind="household", how="bought", by="both", acquired_on=Day(2015, 3), title="no_paper")


def asks(case: Case, row: Row = THING) -> list[str]:
    return [one.key.partition(".1.")[2] for one in about(row).asked(case)]


def test_a_plain_bank_account_needs_few_questions() -> None:
    assert asks(ACCOUNT) == [*PLAIN, "held_by", "last_four", "proposal"]


def test_papers_and_notes_are_asked_only_of_those_who_want_to_tell_more() -> None:
    assert [one.key for one in notes_on(THING).asked(ACCOUNT)] == [
        f"asset.1.{name}" for name in ("valued_on", "value_how", "documents", "note")
    ]
    assert [one.key for one in notes_on(DEBT).asked(BASE)] == [
        f"debt.1.{name}" for name in ("owed_on", "documents", "note")
    ]
    whole = {one.key for one in all_about(THING).asked(ACCOUNT)}
    assert whole == {one.key for part in (about(THING), notes_on(THING)) for one in part.asked(ACCOUNT)}


HOUSE = {
    "kind": "real_estate",
    "how": "owned_before",
    "by": "petitioner",
    "title": "petitioner",
    "mixed": True,
}
OPTION = {"how": "stock_option", "kind": "investments"}
PENSION = {"kind": "pension", "how": "earned"}
RING = {"kind": "valuables", "how": "from_spouse"}
HURT = {"how": "injury", "kind": "savings"}
BOUGHT = {"how": "bought", "kind": "vehicle"}
BEFORE, DURING, AFTER = Day(2005, 1, 1), Day(2015, 1, 1), Day(2025, 1, 1)

HOLDS: tuple[tuple[str, Case], ...] = (
    ("is_earned_over_time", thing(**PENSION)),
    ("is_earned_over_time", thing(how="in_place_of_pay", kind="cash")),
    ("hangs_on_days_of_work", thing(**OPTION)),
    ("has_an_end_of_work", thing(**PENSION, still_earning=False)),
    ("has_an_end_of_work", thing(**OPTION)),
    ("is_stock_option", thing(**OPTION)),
    ("is_injury_money", thing(**HURT)),
    ("is_injury_by_somebody_else", thing(**HURT, hurt_by_spouse=False)),
    ("is_a_thing_to_have", NO_ACCOUNT),
    ("was_bought", thing(**BOUGHT)),
    ("is_personal_gift_of_the_spouse", thing(**RING)),
    ("is_used_by_one_alone", thing(**RING, used_by_one=True)),
    ("has_a_title_that_counts", thing(**BOUGHT)),
    ("is_in_own_trust", thing(title="own_trust")),
    ("may_be_mixed", thing(**{**HOUSE, "mixed": None})),
    ("may_be_mixed", thing(**HURT)),
    ("may_be_mixed", thing(**BOUGHT, acquired_on=BEFORE)),
    ("may_be_mixed", thing(kind="savings", how="earned", acquired_on=AFTER)),
    ("may_be_mixed", thing(kind="savings", how="growth", title="joint")),
    ("may_hold_own_money", thing(**BOUGHT, source="petitioner_separate")),
    ("may_hold_own_money", thing(kind="savings", how="bought", source="part_separate", title="joint")),
    ("may_hold_own_money", thing(kind="savings", how="inherited", title="joint")),
    ("may_hold_own_money", thing(kind="investments", how="gift", title="petitioner", mixed=True)),
    ("may_be_grown_by_work", thing(how="growth", kind="investments")),
    ("may_be_grown_by_work", thing(how="bought", kind="business", acquired_on=BEFORE)),
    ("may_come_from_elsewhere", told({"schedule.in_california": False}, thing(**BOUGHT))),
    ("may_come_from_elsewhere", told({"schedule.in_california": DONT_KNOW}, thing(**PENSION))),
    (
        "may_come_from_elsewhere",
        told({"schedule.in_california": False}, thing(how="gift", kind="cash", mixed=True)),
    ),
    ("may_be_in_a_signed_paper", told({"schedule.agreement": True}, NO_ACCOUNT)),
    ("is_paid_for_bit_by_bit", thing(kind="real_estate", how="bought")),
    ("is_paid_for_bit_by_bit", thing(**BOUGHT, source="part_separate")),
    ("is_house_from_before", thing(**HOUSE)),
    ("is_house_from_before", thing(**{**HOUSE, "how": "bought"}, acquired_on=BEFORE)),
    ("is_house_from_before", thing(**{**HOUSE, "how": "bought"}, acquired_on=MARRIED)),
    ("is_house_from_before", thing(**{**HOUSE, "how": "bought"}, acquired_on=Day(2010, unsure=True))),
    ("has_an_account_number", ACCOUNT),
    ("has_a_loan_on_it", thing(owed=Decimal(1))),
    ("was_paid_on_since", thing(owed=Decimal(1), paid_after=Decimal(1))),
    ("can_be_used_by_one", thing(**BOUGHT)),
    ("was_used_by_one_since", thing(**BOUGHT, used_after_by="respondent")),
)
HOLDS_NOT: tuple[tuple[str, Case], ...] = (
    ("is_earned_over_time", ACCOUNT),
    ("hangs_on_days_of_work", ACCOUNT),
    ("has_an_end_of_work", thing(**PENSION, still_earning=True)),
    ("is_stock_option", thing(**PENSION)),
    ("is_injury_money", ACCOUNT),
    ("is_injury_by_somebody_else", thing(**HURT, hurt_by_spouse=True)),
    ("is_a_thing_to_have", thing(how="training")),
    ("was_bought", ACCOUNT),
    ("is_personal_gift_of_the_spouse", thing(**{**RING, "kind": "vehicle"})),
    ("is_used_by_one_alone", thing(**RING, used_by_one=False)),
    ("has_a_title_that_counts", thing(**PENSION)),
    ("has_a_title_that_counts", thing(**HURT)),
    ("is_in_own_trust", thing(title="somebody_else")),
    ("may_be_mixed", ACCOUNT),
    ("may_be_mixed", thing(**BOUGHT, acquired_on=DURING)),
    ("may_be_mixed", thing(**{**HOUSE, "title": "joint"})),
    ("may_be_mixed", thing(**PENSION, acquired_on=BEFORE)),
    ("may_hold_own_money", thing(**BOUGHT, source="community")),
    ("may_hold_own_money", thing(kind="vehicle", how="inherited", title="joint")),
    ("may_hold_own_money", thing(kind="investments", how="gift", title="petitioner", mixed=False)),
    ("may_be_grown_by_work", thing(how="bought", kind="business", acquired_on=DURING)),
    ("may_come_from_elsewhere", thing(**BOUGHT)),
    ("may_come_from_elsewhere", told({"schedule.in_california": False}, thing(how="gift", kind="vehicle"))),
    ("may_be_in_a_signed_paper", NO_ACCOUNT),
    ("is_paid_for_bit_by_bit", ACCOUNT),
    ("is_paid_for_bit_by_bit", thing(**BOUGHT, source="community")),
    ("is_house_from_before", thing(**{**HOUSE, "mixed": False})),
    ("is_house_from_before", thing(**{**HOUSE, "how": "bought"}, acquired_on=DURING)),
    ("has_an_account_number", NO_ACCOUNT),
    ("has_a_loan_on_it", thing(owed=Decimal(0))),
    ("was_paid_on_since", thing(owed=Decimal(1), paid_after=Decimal(0))),
    ("can_be_used_by_one", ACCOUNT),
    ("was_used_by_one_since", thing(**BOUGHT, used_after_by="both")),
)
DEBTS: tuple[tuple[str, Case, bool], ...] = (
    ("has_a_purpose", debt(kind="tax"), True),
    ("has_a_purpose", debt(kind="support_owed"), False),
    ("may_not_be_for_the_family", debt(kind="credit_card", purpose="own"), True),
    ("may_not_be_for_the_family", debt(kind="student_loan", purpose="harm"), True),
    ("may_not_be_for_the_family", debt(kind="credit_card", purpose="household"), False),
    ("may_not_be_for_the_family", debt(kind="student_loan", purpose="own"), False),
    ("is_with_a_lender", debt(kind="credit_card"), True),
    ("is_with_a_lender", debt(kind="tax"), False),
    ("was_paid_on_since", debt(paid_after=Decimal(5)), True),
    ("was_paid_on_since", debt(paid_after=Decimal(0)), False),
)


@pytest.mark.parametrize(("name", "case"), HOLDS)
def test_holds(name: str, case: Case) -> None:
    assert PREDICATES[name](case, case.asset[0]) is True


@pytest.mark.parametrize(("name", "case"), HOLDS_NOT)
def test_holds_not(name: str, case: Case) -> None:
    assert PREDICATES[name](case, case.asset[0]) is False


@pytest.mark.parametrize(("special", "holds"), [((), True), (("agreement",), False)])
def test_a_paper_told_of_in_the_interview_is_not_asked_again(special: tuple[str, ...], holds: bool) -> None:
    assert PREDICATES["told_of_no_paper"](told({"people.special": special})) is holds


@pytest.mark.parametrize(("name", "case", "holds"), DEBTS)
def test_holds_for_a_debt(name: str, case: Case, holds: bool) -> None:
    assert PREDICATES[name](case, case.debt[0]) is holds


def test_the_county_formula_is_offered_where_it_is_known() -> None:
    assert PREDICATES["files_where_a_formula_is_known"](told({"court.county": "Santa Clara"}))
    assert not PREDICATES["files_where_a_formula_is_known"](told({"court.county": "Fresno"}))
    assert not PREDICATES["files_where_a_formula_is_known"](Case())


def test_every_predicate_is_tried_both_ways() -> None:
    used = {question.when for question in QUESTIONS if question.when and question.each}
    yes = {name for name, _case in HOLDS} | {name for name, _case, holds in DEBTS if holds}
    no = {name for name, _case in HOLDS_NOT} | {name for name, _case, holds in DEBTS if not holds}
    assert used <= yes
    assert used <= no


def test_where_the_wedding_is_not_told_a_thing_may_be_from_before_it() -> None:
    case = thing(**BOUGHT, acquired_on=DURING).with_fact("dates.married_on", None)
    assert "mixed" in asks(case)


# --- what law needs is asked, and nothing else counts ---------------------------------------------------

DAYS = st.dates(date(2004, 1, 1), date(2026, 11, 1)).map(Day.of)
BY_KIND: dict[AnswerKind, st.SearchStrategy[Any]] = {
    AnswerKind.YES_NO: st.booleans(),
    AnswerKind.DATE: DAYS,
    AnswerKind.MONEY: st.decimals(0, 900_000, places=2),
    AnswerKind.QUANTITY: st.integers(0, 400),
    AnswerKind.PERCENT: st.decimals(0, 100, places=2),
    AnswerKind.TEXT: st.sampled_from(["4821", "0937"]),
    AnswerKind.PARAGRAPH: st.just("A note"),
    AnswerKind.LINES: st.just(("Deed",)),
    AnswerKind.CONTRIBUTIONS: st.just(
        (Contribution(by="petitioner", amount=Decimal(500), toward="principal", traced=True),)
    ),
}


def value_for(question: Question) -> st.SearchStrategy[Any]:
    if question.choices:
        return st.sampled_from([choice.value for choice in question.choices])
    return BY_KIND[question.kind]


@st.composite
def answered(draw: st.DrawFn, row: Row) -> Case:
    """A case in which everything that was asked about one row was answered, each day to the day."""
    case = BASE
    for key in ("schedule.agreement", "schedule.in_california", "schedule.support_arranged"):
        case = case.with_fact(key, draw(st.booleans()))
    while left := about(row).open(case):
        case = with_told(case, left[0].key, draw(value_for(left[0].question)))
    return case


@a_few
@given(answered(THING))
def test_once_all_is_answered_about_a_thing_the_law_misses_nothing(case: Case) -> None:
    character = asset_character(case, 1, TODAY)
    assume(all(reason.row != "contradiction" for reason in character.reasons))
    assume(case.asset[0].acquired_on not in (MARRIED, PARTED))
    assert character.missing == ()


@a_few
@given(answered(DEBT))
def test_once_all_is_answered_about_a_debt_the_law_misses_nothing(case: Case) -> None:
    assume(case.debt[0].incurred_on not in (MARRIED, PARTED))
    assert debt_character(case, 1, TODAY).missing == ()


SPEAK_FOR_THEMSELVES = (".agreement", ".lived_in", ".earned_from", ".earned_until", ".still_earning")
"""Facts that the law looks at wherever they are told. They may differ from what is told in general."""


@st.composite
def facts_about(draw: st.DrawFn, group: str) -> Case:
    """A case with any facts about one row, also some that nobody asks for."""
    case = BASE
    for question in QUESTIONS:
        if question.each == group and not question.key.endswith(SPEAK_FOR_THEMSELVES) and draw(st.booleans()):
            case = case.with_fact(question.key.replace("*", "1"), draw(value_for(question)))
    return case


@a_few
@given(facts_about("asset"))
def test_what_nobody_asks_for_says_nothing_about_a_thing(case: Case) -> None:
    assume(case.asset)
    kept = settled(case)
    assume(kept.asset)
    assert asset_character(kept, 1, TODAY).code == asset_character(case, 1, TODAY).code


@a_few
@given(facts_about("debt"))
def test_what_nobody_asks_for_says_nothing_about_a_debt(case: Case) -> None:
    assume(case.debt)
    assert debt_character(settled(case), 1, TODAY).code == debt_character(case, 1, TODAY).code


HOUSEHOLDS = sorted((Path(__file__).parents[2] / "demo" / "households").glob("*.yaml"))


@pytest.mark.parametrize("path", HOUSEHOLDS, ids=lambda path: path.stem)
def test_an_invented_household_tells_only_what_is_asked(path: Path) -> None:
    case, problems = facts_from(path.read_text("utf-8"), TODAY)
    assert problems == ()
    assert list(unasked(case)) == []


# --- telling, changing, taking out ------------------------------------------------------------------------


def test_what_no_longer_goes_with_a_thing_is_taken_out() -> None:
    case = thing(**HOUSE, house__price=Decimal(240000), last_four=None)
    again = with_told(case, "asset.1.kind", "vehicle")
    assert again.asset[0].house.price is None
    assert again.asset[0].mixed is True
    other = with_told(again, "asset.1.how", "inherited")
    assert other.asset[0].mixed is True


def test_taking_one_fact_out_takes_out_what_hung_on_it() -> None:
    case = thing(**RING, used_by_one=True, substantial=False)
    assert (
        listed(with_told(case, "asset.1.kind", "pet")).keys()
        & {
            "asset.1.used_by_one",
            "asset.1.substantial",
        }
        == set()
    )


@a_few
@given(facts_about("asset"))
def test_a_settled_case_holds_only_what_is_asked_for(case: Case) -> None:
    kept = settled(case)
    assert list(unasked(kept)) == []
    assert settled(kept) is kept
    assert set(listed(kept)) <= set(listed(case))


def test_a_thing_taken_out_moves_those_after_it_up() -> None:
    case = told({f"asset.{number}.words": name for number, name in enumerate("abc", 1)})
    assert [one.words for one in without_row(case, Row("asset", 2)).asset] == ["a", "c"]
    assert without_row(case, Row("asset", 2)).debt == ()
    assert rows(case) == (Row("asset", 1), Row("asset", 2), Row("asset", 3))


def test_there_is_room_for_so_many_and_no_more() -> None:
    assert new_row(Case(), "debt") == Row("debt", 1)
    full = Case(asset=(Asset(words="Spoon"),) * MOST_LISTED)
    assert new_row(full, "asset") is None
    assert not is_empty(full, Row("asset", MOST_LISTED))
    assert is_empty(full, Row("debt", 1))


def test_what_is_asked_once_is_what_holds_for_all_and_the_incomes() -> None:
    general, income = in_general()
    assert [one.key.partition(".")[0] for one in general.asked(Case())] == ["schedule"] * 3
    assert [one.key for one in income.asked(Case())] == ["income.petitioner_net", "income.respondent_net"]
    with_children = told({"children.family": ("minor_together",), "children.how_many": 2})
    assert len(income.asked(with_children)) == 7
    assert [one.key for one in general.told(BASE)] == [one.key for one in general.asked(BASE)]


def test_a_question_of_a_row_that_is_not_there_yet_sees_an_empty_row() -> None:
    (owed,) = [one for one in QUESTIONS if one.key == "asset.*.paid_after"]
    assert applies(owed, Case(), 3) is False
