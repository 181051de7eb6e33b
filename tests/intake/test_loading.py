"""The bank's files are read strictly: anything they should not hold is an error that says where."""

from pathlib import Path

import pytest

from firstpaper.intake.loading import FOLDER, Bank, BankBroken, bank
from firstpaper.intake.question import Choice, Feeds
from tests.intake.small_bank import SMALL, topics, write_bank

GOOD = """
topic: people
title: The people
questions:
  - key: petitioner.name
    ask: What is your name?
    why: It goes on the form.
    feeds: {items: [cap.name]}
"""
CHOICE = GOOD.replace("petitioner.name", "matter.kind")
ALL_KINDS = "    choices: {dissolution: Divorce, legal_separation: Separation, nullity: Nullity}\n"


def test_a_good_file_is_read_as_written(tmp_path: Path) -> None:
    people, children = topics(tmp_path, SMALL)
    assert (people.name, people.title, people.opening) == ("people", "The people", "Who is who.")
    assert children.opening is None
    name, _other = people.questions
    assert name.examples == ("Maria Soto",)
    assert name.feeds == Feeds(items=("cap.name",))
    assert (name.when, name.applies, name.not_after_today) == (None, None, False)
    family, _how_many, _name, born_on, birthplace, _alike = children.questions
    assert family.choices[0] == Choice("minor_together", "Under 18")
    assert family.none == "No children"
    assert born_on.not_after_today
    assert birthplace.when == "was_born"
    assert birthplace.each == "child"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (GOOD + "    hnit: typo\n", "petitioner.name|a question: unknown property 'hnit' in line 9"),
        (GOOD + "    ask: Again?\n", "property 'ask' given twice, in line 9"),
        ("colour: red" + GOOD, "unknown property 'colour' in line 1"),
        (GOOD.replace("petitioner.name", "petitioner.nmae"), "petitioner.nmae: no fact has this key"),
        (GOOD.replace("    why: It goes on the form.\n", ""), "petitioner.name: property 'why' must be text"),
        (GOOD.replace("What is your name?", "[a, b]"), "property 'ask' must be text"),
        (GOOD.replace("What is your name?", "''"), "property 'ask' must be text"),
        (GOOD.replace("{items: [cap.name]}", "{}"), "petitioner.name: it feeds nothing"),
        (GOOD.replace("items:", "forms:"), "unknown property 'forms'"),
        (GOOD.replace("{items: [cap.name]}", "cap.name"), "expected names"),
        (GOOD + "    when: nobody_wrote_this\n", "there is no predicate 'nobody_wrote_this'"),
        (GOOD + "    when: TODAY\n", "there is no predicate 'TODAY'"),
        (GOOD + "    same_as: dates.married_on\n", "takes no answer of the same kind"),
        (GOOD + "    not_after_today: false\n", "can only be true"),
        (GOOD + "    examples: [[a]]\n", "must be text"),
        (GOOD + "    notice: {a: b}\n", "expected a list"),
        (GOOD + ALL_KINDS, "takes no choices"),
        (CHOICE, "matter.kind: expected names"),
        (
            CHOICE + "    choices: {dissolution: Divorce}\n",
            "choices without words: legal_separation, nullity",
        ),
        (CHOICE + ALL_KINDS.replace("nullity:", "annulment:"), "unknown property 'annulment'"),
        ("topic: people\ntitle: The people\n", "expected a list"),
        ("topic: people\nquestions: []\n", "property 'title' must be text"),
        ("- a\n- b\n", "expected names"),
        ("", "expected names"),
        ("topic: [people\n", "broken in line"),
        ("topic: &a people\n", "shortcut in line 1"),
        ("topic: !!str people\n", "tag in line 1"),
        (GOOD + "---\n" + GOOD, "two_documents in line 11|two_documents in line 10"),
    ],
)
def test_a_bad_file_is_refused_and_named(tmp_path: Path, text: str, says: str) -> None:
    with pytest.raises(BankBroken, match=says) as broken:
        topics(tmp_path, {"01-people.yaml": text})
    assert str(broken.value).startswith("01-people.yaml: ")


def test_a_fact_asked_for_in_two_files_is_refused(tmp_path: Path) -> None:
    made = write_bank(tmp_path, {"01-people.yaml": GOOD, "02-more.yaml": GOOD.replace("people", "more")})
    with pytest.raises(BankBroken, match=r"more: petitioner\.name is asked twice"):
        made.question("petitioner.name")


def test_files_that_are_no_topics_are_left_alone(tmp_path: Path) -> None:
    made = write_bank(tmp_path, {"01-people.yaml": GOOD, "notes.yaml": "x: 1", "1-short.yaml": "x: 1"})
    assert [topic.name for topic in made.topics] == ["people"]


def test_questions_are_found_for_every_child() -> None:
    found = bank().question("child.12.born_on")
    assert found is bank().question("child.*.born_on")
    assert found
    assert bank().question("petitioner.nmae") is None


def test_every_fact_is_asked_for_so_that_none_is_lost() -> None:
    assert bank().unasked == ()


def test_the_bank_is_read_once() -> None:
    assert bank() is bank()
    assert Bank(FOLDER).topics == bank().topics
