"""The questions without a case: conditions in words, and the file of facts to be filled in."""

import re
from datetime import date

import yaml

from firstpaper.facts import Case
from firstpaper.facts.choices import Kind
from firstpaper.intake import bank, facts_from
from firstpaper.intake.blank import groups
from firstpaper.intake.events import events
from firstpaper.intake.kinds import is_key
from firstpaper.intake.loading import listing
from firstpaper.intake.only_if import only_if
from firstpaper.intake.skeleton import BEGINS, EXAMPLE, skeleton
from tests.each import for_each

TODAY = date(2026, 11, 30)
TOPICS = bank().topics
LISTED = listing().topics
CONDITIONS = {
    (one.when, one.only_if)
    for topic in (*TOPICS, *LISTED, *events().topics)
    for one in topic.questions
    if one.when and one.only_if
}
ONLY_IF = dict(sorted(CONDITIONS))
KEYS = [
    one.key.replace("*", str(number))
    for topic in TOPICS
    for one in topic.questions
    for number in ((1, 2) if "*" in one.key else (0,))
    if (one.key, number) != ("child.*.same_homes", 1)  # the same as whose?
]
KINDS = {Kind.DISSOLUTION: "divorce", Kind.LEGAL_SEPARATION: "separation", Kind.NULLITY: "nullity"}

WHOLE = skeleton(TOPICS, {"child": 2})
EXAMPLES = [
    line.removeprefix(EXAMPLE)
    for line in WHOLE.splitlines()
    if line.startswith(EXAMPLE) and is_key(line.removeprefix(EXAMPLE).partition(":")[0])
]


# --- conditions -----------------------------------------------------------------------------------


def test_a_condition_is_said_alike_wherever_it_stands() -> None:
    assert len(CONDITIONS) == len(ONLY_IF)


@for_each(ONLY_IF.values())
def test_the_words_of_a_condition_go_on_after_only_if(words: str) -> None:
    assert re.match(r"[a-z]", words)
    assert words[-1] not in ".,;:"
    assert "{" not in words


def test_no_two_conditions_are_said_in_the_same_words() -> None:
    assert len(set(ONLY_IF.values())) == len(ONLY_IF)


@for_each([name for name in ONLY_IF if name.startswith("claims_")])
def test_a_ground_is_asked_about_only_where_a_nullity_is_asked_for(name: str) -> None:
    assert ONLY_IF[name].startswith("you ask for a nullity because ")


@for_each(Kind)
def test_the_kind_of_case_is_no_condition_where_it_is_known(kind: Kind) -> None:
    asked = {one.when: one for topic in TOPICS for one in topic.questions if one.when}
    for one in asked.values():
        words = only_if(one, kind)
        assert words is None or len(words) <= len(only_if(one) or "")
    met = {name for name, one in asked.items() if only_if(one, kind) is None}
    assert met == {name for name in asked if name.startswith("wants_") and KINDS[kind] in name}


def test_questions_that_apply_together_stand_together_in_their_order() -> None:
    for topic in TOPICS:
        found = list(groups(topic, {"child": 1}))
        plain = [one.key.replace(".1.", ".*.") for group in found for one in group.questions]
        assert plain == [one.key for one in topic.questions if one.key != "child.*.same_homes"]
        assert all(len({one.question.when for one in group.questions}) == 1 for group in found)


# --- the file of facts ------------------------------------------------------------------------------


def test_it_holds_every_key_once_in_the_order_of_the_questions() -> None:
    waiting = re.findall(r"^#(\S+):$", WHOLE, re.MULTILINE)
    assert sorted(waiting) == sorted(KEYS)
    firsts = [key for key in waiting if "child.2." not in key]
    assert firsts == [key for key in KEYS if "child.2." not in key]


def test_as_it_comes_it_is_a_file_without_facts() -> None:
    assert yaml.safe_load(WHOLE) is None
    assert facts_from(WHOLE, TODAY) == (Case(), ())


def test_every_example_in_it_can_be_entered_at_its_key() -> None:
    assert [line.partition(":")[0] for line in EXAMPLES] == re.findall(r"^#(\S+):$", WHOLE, re.MULTILINE)
    case, problems = facts_from("\n".join(EXAMPLES), TODAY)
    assert problems == ()
    assert all(case.fact(key) is not None for key in KEYS)


@for_each(EXAMPLES, lambda line: line.partition(":")[0])
def test_filling_in_one_line_changes_one_fact(line: str) -> None:
    key = line.partition(":")[0]
    filled = WHOLE.replace(f"\n#{key}:\n", f"\n{line}\n")
    assert filled != WHOLE
    case, problems = facts_from(filled, TODAY)
    assert problems == ()
    assert [one for one in KEYS if case.fact(one) is not None] == [key]


def test_taking_away_every_number_sign_before_a_key_still_says_nothing() -> None:
    """No invented name slips into a case because somebody took the sign away and wrote nothing."""
    bare = re.sub(r"^#(?=[a-z])", "", WHOLE, flags=re.MULTILINE)
    case, problems = facts_from(bare, TODAY)
    assert problems == ()
    assert bare.count("\npetitioner.name:\n") == 1
    assert [key for key in KEYS if case.fact(key) is not None] == []


def test_every_choice_is_named_as_it_can_be_written() -> None:
    for topic in TOPICS:
        for group in groups(topic, {"child": 1}):
            for one in group.questions:
                for choice in one.choices:
                    assert f"# - {choice.value}: " in WHOLE
                    case, problems = facts_from({one.key: choice.value}, TODAY)
                    assert problems == ()
                    assert case.fact(one.key) in (choice.value, (choice.value,))


def test_it_leaves_room_for_as_many_children_as_asked_for() -> None:
    assert "child." not in re.sub(r"^# .*$", "", skeleton(TOPICS, {"child": 0}), flags=re.MULTILINE)
    assert "#child.5.name:" in skeleton(TOPICS, {"child": 5})
    assert "#child.6.name:" not in skeleton(TOPICS, {"child": 5})


def test_it_can_hold_one_topic_and_begins_with_the_words_given() -> None:
    court = [topic for topic in TOPICS if topic.name == "court"]
    text = skeleton(court, {"child": 2}, ["In danger? Call 911."])
    assert text.startswith(f"{BEGINS}# In danger? Call 911.\n")
    keys = ["residence.petitioner.own_county", "court.county", "court.address", "court.branch"]
    assert re.findall(r"^#(\S+):$", text, re.MULTILINE) == keys


def test_no_line_is_too_long_to_read_except_an_example() -> None:
    assert [line for line in WHOLE.splitlines() if len(line) > 102 and not line.startswith(EXAMPLE)] == []


# --- what is listed -----------------------------------------------------------------------------------


def test_things_and_debts_stand_in_the_file_with_examples_that_can_be_entered() -> None:
    text = skeleton(LISTED, {"asset": 2, "debt": 1})
    waiting = re.findall(r"^#(\S+):$", text, re.MULTILINE)
    assert waiting.count("asset.2.house.price") == waiting.count("debt.1.owed") == 1
    assert "debt.2.owed" not in waiting
    lines = [
        line.removeprefix(EXAMPLE)
        for line in text.splitlines()
        if line.startswith(EXAMPLE) and is_key(line.removeprefix(EXAMPLE).partition(":")[0])
    ]
    assert [line.partition(":")[0] for line in lines] == waiting
    case, problems = facts_from("\n".join(lines), TODAY)
    assert problems == ()
    assert [key for key in waiting if case.fact(key) is None] == []
