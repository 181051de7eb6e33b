"""The bank's files are read strictly: anything they should not hold is an error that says where."""

import re
from pathlib import Path

import pytest

from firstpaper.intake.loading import FOLDER, Bank, bank
from firstpaper.intake.question import Choice, Feeds
from tests.intake.small_bank import SMALL, topics, write_bank

GOOD = """
topic: people
title: The people
questions:
  - key: petitioner.name
    short: your name
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
        (GOOD + "    hnit: typo\n", "> petitioner.name > hnit: nothing is known by that name here"),
        (GOOD + "    ask: Again?\n", "> questions > 1 > ask: written twice, again in line 10"),
        ("colour: red" + GOOD, "yaml > colour: nothing is known by that name here"),
        (GOOD.replace("petitioner.name", "petitioner.nmae"), "> petitioner.nmae: no fact has this key"),
        (GOOD.replace("    why: It goes on the form.\n", ""), "> petitioner.name > why: this is missing"),
        (
            GOOD.replace("  - key: petitioner.name\n    short", "  - short"),
            "> 1 > key: this must be some words",
        ),
        (GOOD.replace("What is your name?", "[a, b]"), "> ask: this must be some words"),
        (GOOD.replace("What is your name?", "''"), "> ask: this must be some words"),
        (GOOD.replace("{items: [cap.name]}", "{}"), "> feeds: this must be names with something under each"),
        (GOOD.replace("{items: [cap.name]}", "{items: }"), "> feeds > items: this must be some words"),
        (GOOD.replace("items:", "forms:"), "> feeds > forms: nothing is known by that name here"),
        (GOOD.replace("{items: [cap.name]}", "cap.name"), "> feeds: this must be names"),
        (GOOD.replace("    short: your name\n", ""), "> petitioner.name > short: this is missing"),
        (GOOD + "    when: is_married\n", "> petitioner.name: `only_if` says in words what `when` names"),
        (GOOD + "    only_if: you two are married\n", "and stands with it alone"),
        (
            GOOD + "    when: nobody_wrote_this\n    only_if: nobody\n",
            "> when: there is no predicate 'nobody_wrote_this'",
        ),
        (GOOD + "    when: TODAY\n    only_if: today\n", "there is no predicate 'TODAY'"),
        (GOOD + "    same_as: dates.married_on\n", "takes no answer of the same kind"),
        (GOOD + "    not_after_today: false\n", "> not_after_today: this can only be true"),
        (GOOD + "    examples: [[a]]\n", "> examples > 1: this must be some words"),
        (GOOD + "    notice: {a: b}\n", "> notice: this must be a list"),
        (GOOD + ALL_KINDS, "takes no choices"),
        (CHOICE, "> matter.kind > choices: this must be names"),
        (CHOICE + "    choices: {dissolution: Divorce}\n", "> choices > legal_separation: this is missing"),
        (CHOICE + ALL_KINDS.replace("nullity:", "annulment:"), "> choices > annulment: nothing is known"),
        ("topic: people\ntitle: The people\n", "> questions: this is missing"),
        ("topic: people\nquestions: []\n", "> title: this is missing"),
        ("topic: people\ntitle: The people\nquestions: []\n", "> questions: this must be a list"),
        ("- a\n- b\n", "yaml: this must be names with something under each"),
        ("", "yaml: this must be names with something under each"),
        ("topic: [people\n", "yaml: this is not YAML that can be read: "),
        ("? [topic]\n: people\n", "yaml: a name must be one word, in line 1"),
        ("topic: !people {a: b}\n", "yaml > topic: nothing of the kind !people is read here"),
        (GOOD + "---\n" + GOOD, "yaml: this is not YAML that can be read: "),
    ],
)
def test_a_bad_file_is_refused_and_named(tmp_path: Path, text: str, says: str) -> None:
    with pytest.raises(match=re.escape(says)) as refused:
        topics(tmp_path, {"01-people.yaml": text})
    assert str(refused.value).startswith("01-people.yaml")


def test_a_fact_asked_for_in_two_files_is_refused(tmp_path: Path) -> None:
    made = write_bank(tmp_path, {"01-people.yaml": GOOD, "02-more.yaml": GOOD.replace("people", "more")})
    with pytest.raises(match=r"more: petitioner\.name is asked twice"):
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
