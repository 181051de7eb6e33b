"""No name of a key, a rule or a value, and no date as a file holds it, reaches somebody who reads."""

import re
from collections.abc import Iterator
from datetime import date

import pytest

from firstpaper.cli.words.findings import findings_text
from firstpaper.cli.words.why import in_this_case, question_page, rule_page
from firstpaper.facts import Case, Day
from firstpaper.intake import asked, asking, bank, standing
from firstpaper.intake.kinds import AnswerKind
from firstpaper.law.register import all_rules, findings
from tests.cli.person import facts_of

ON = date(2026, 11, 30)
COMMAND = re.compile(r"firstpaper\s\S+(?:\s[\w.]+)?|https?://\S+|--on \S+")
TOPICS = {name.partition(".")[0] for name in all_rules()}
MACHINE = re.compile(
    rf"\b\d{{4}}-\d\d|\b\d{{4}}\?|\b[a-z]+_[a-z_]+\b|(?<![/.@\w])(?:{'|'.join(sorted(TOPICS))})\.[a-z]\w+"
)


def machine_words(text: str) -> list[str]:
    return MACHINE.findall(COMMAND.sub("", text.replace("\u00a0", " ")))


def told_in_part(case: Case) -> Iterator[Case]:
    """The case with one of its dates told by the month only, and by the year without being sure."""
    for one in asked(case):
        day = case.fact(one.key)
        if one.kind is AnswerKind.DATE and isinstance(day, Day):
            yield case.with_fact(one.key, Day(day.year, day.month))
            yield case.with_fact(one.key, Day(day.year, unsure=True))


@pytest.mark.parametrize("household", ["plain-childless-divorce", "two-children-moved-county"])
def test_findings_speak_of_days_as_people_do(household: str) -> None:
    for case in told_in_part(facts_of(household)):
        found = findings(standing(case), ON)
        text = findings_text(found, steps=True) + in_this_case(case, found, ON)
        assert machine_words(text) == []


def test_pages_of_rules_name_each_other_by_title() -> None:
    wrong = {name: words for name, rule in all_rules().items() if (words := machine_words(rule_page(rule)))}
    assert wrong == {}


def test_why_a_question_is_asked_names_rules_by_title() -> None:
    for topic in bank().topics:
        for question in topic.questions:
            one = asking(question.key.replace("*", "1"), Case())
            assert one
            assert machine_words(question_page(one, ON)) == []


def test_machine_words_are_seen() -> None:
    said = "Told 2018-05 and 2008?. See residence.state, and in_california."
    assert len(machine_words(said)) == 4
