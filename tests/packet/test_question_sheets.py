"""The blank question sheets, drawn and read back: every question whole, with room for its answer."""

from datetime import date
from functools import cache

import pytest

from firstpaper.facts.choices import Kind
from firstpaper.intake import AnswerKind, Asked, bank
from firstpaper.intake.blank import Group, groups
from firstpaper.intake.to_come import usual
from firstpaper.law.figure import figure
from firstpaper.packet.blank import blank_sheets
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.templates import render
from firstpaper.packet.views.question_sheets import sheets
from tests.packet.paper.pages_read_back import Drawn
from tests.words.reading import barred_words, grade, longest_sentence
from tests.words.reading import words as words_of
from tests.words.test_sheet_words import sentences_of

ON = date(2026, 11, 30)
HOTLINE = figure("help.domestic_violence_hotline", ON).value
TOPICS = bank().topics


class Printed(Drawn):
    """A set of sheets as printed."""

    def __init__(self, data: bytes) -> None:
        self.data = data


@cache
def printed(children: int = 2) -> Printed:
    return Printed(blank_sheets(TOPICS, {"child": children}, ON))


@cache
def words(children: int = 2) -> str:
    """All words on the paper, without spaces, so that no line break hides them."""
    return squeezed(printed(children).whole_text)


def mine(choice: str) -> str:
    """A choice as the one who files says it."""
    return choice.replace("your spouse or partner", "my spouse or partner")


def squeezed(text: str) -> str:
    return "".join(text.split())


def asked(children: int = 2) -> list[tuple[Group, Asked]]:
    return [
        (group, one)
        for topic in TOPICS
        for group in groups(topic, {"child": children})
        for one in group.questions
    ]


def boxes_for(one: Asked) -> int:
    """How many boxes to tick a question has: its answers, "none", "not sure" of a date, "I don't know"."""
    extra = {AnswerKind.YES_NO: 2, AnswerKind.DATE: 1}.get(one.kind, 0)
    return len(one.choices) + extra + bool(one.none) + 1


SEVERAL_LINES = 4
LINES_FOR = {
    "yes_no": 0,
    "choice": 0,
    "several": 0,
    "date": 3,
    "text": 1,
    "number": 1,
    "money": 1,
    "address": 4,
    "periods": 9,
    "homes": 16,
}


def test_they_conform_to_pdf_ua_1() -> None:
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    report = printed().report
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    assert report.is_compliant


@pytest.mark.parametrize("children", [0, 1, 2, 30])
def test_they_are_written_in_the_sheet_markup(children: int) -> None:
    for sheet in sheets(TOPICS, {"child": children}, ON):
        assert markup_errors(render(sheet.template, sheet.values)) == [], sheet.title


def test_every_question_is_there_in_order_with_all_its_words() -> None:
    at = 0
    for group, one in asked():
        parts = [*one.notice, one.ask, one.hint or "", *map(mine, (choice.words for choice in one.choices))]
        for part in (*parts, one.none or "", one.key):
            assert words().find(squeezed(part), at) >= 0, (one.key, part)
        at = words().find(squeezed(one.ask), at)  # the next may stand beside it, and both go on overleaf
        assert not group.only_if or squeezed(f"Only if {group.only_if}") in words()[:at]


def test_the_keys_are_those_of_the_bank_for_as_many_children_as_asked_for() -> None:
    for children in (0, 1, 3):
        wanted = []
        for topic in TOPICS:
            plain = [one.key for one in topic.questions if "*" not in one.key]
            rows = [one.key for one in topic.questions if "*" in one.key]
            wanted += plain + [key.replace("*", str(n)) for key in rows for n in range(1, children + 1)]
        wanted = [key for key in wanted if key != "child.1.same_homes"]  # the same as whose?
        assert sorted(one.key for _group, one in asked(children)) == sorted(wanted)
        assert all(key in words(children) for key in wanted)
        assert f"child.{children + 1}." not in words(children)


def test_each_question_has_a_box_for_every_answer_and_a_line_for_every_piece() -> None:
    figures = [each.alt for each in printed().heard.all("Figure")]
    start_page_lines = 2
    assert figures.count("empty box to mark") == sum(boxes_for(one) for _group, one in asked())
    lines = sum(LINES_FOR.get(one.kind, SEVERAL_LINES) for _group, one in asked())
    assert len(figures) - figures.count("empty box to mark") == lines + start_page_lines


def test_a_condition_stands_over_its_questions_and_says_where_to_go_on() -> None:
    said = printed().spoken
    assert "Only if you two are married: On what day did you marry?" in said
    assert "Child 1 Only if you have this child, and the child is under 18. If not, go on" in said


def test_help_comes_before_anything_that_could_lead_to_the_filer() -> None:
    first_page = printed().text(0)
    assert HOTLINE in first_page
    assert "911" in first_page
    address = words().index("petitioner.mailing")
    dangers = words().index("safety.dangers")
    assert words()[:dangers].count(squeezed(HOTLINE)) >= 3
    assert dangers < address


def test_the_page_on_how_to_use_them_is_one_page_and_comes_with_any_topic() -> None:
    assert "Before you begin" in printed().text(1)
    court = next(topic for topic in TOPICS if topic.name == "court")
    alone = Printed(blank_sheets([court], {"child": 2}, ON))
    assert "not legal advice" in alone.text(0)
    assert "cannot find them" in alone.text(0)
    assert HOTLINE in alone.text(0)
    assert "court.county" in alone.whole_text
    assert "petitioner.name" not in alone.whole_text


def test_every_child_begins_a_page_of_its_own() -> None:
    pages = [printed(3).text(number) for number in range(len(printed(3).leaves))]
    starts = [text for text in pages if text.startswith("Child ")]
    with_children = sum(any(one.each for one in topic.questions) for topic in TOPICS)
    assert [text[:7] for text in starts] == ["Child 1", "Child 2", "Child 3"] * with_children
    custody_for_all = next(text for text in pages if "custody.other_words" in text)
    assert "child.3." not in custody_for_all


def test_one_child_is_not_called_the_first() -> None:
    assert squeezed("What is the full name of your child?") in words(1)
    assert squeezed("What is the full name of your second child?") in words(2)


def test_no_question_is_split_between_two_pages() -> None:
    pages = [squeezed(printed().text(number)) for number in range(len(printed().leaves))]
    split = [
        one.key
        for _group, one in asked()
        if not any(squeezed(one.ask) in page and squeezed(one.key) in page for page in pages)
    ]
    assert split == []


@cache
def of_a_plain_divorce() -> Printed:
    return Printed(blank_sheets(TOPICS, {}, ON, usual(Kind.DISSOLUTION, children=False)))


def test_a_plain_divorce_without_children_takes_twelve_pages() -> None:
    assert len(of_a_plain_divorce().leaves) <= 12
    assert of_a_plain_divorce().report.is_compliant


def test_sheets_for_one_kind_of_case_state_no_condition_that_each_such_case_meets() -> None:
    text = of_a_plain_divorce().spoken
    assert "Only if you live in California: Since what day" in text
    assert "do not ask for a nullity" not in text
    assert "Only if you ask for a divorce" not in text
    assert "Only if you ask for a divorce or a legal separation" in printed().spoken


def test_nobody_is_named_and_no_place_for_a_name_is_left_over() -> None:
    text = printed().whole_text
    assert "{" not in text
    assert "Where does your spouse or partner live now?" in text


def test_letters_are_12_points_or_more_and_all_is_black_or_grey() -> None:
    for page in printed().pages:
        body = [char for char in page.chars if char["bottom"] < page.height - 60 and char["text"].strip()]
        assert all(char["size"] > 11.99 for char in body)
        assert all(len(set(char["non_stroking_color"] or (0,))) == 1 for char in page.chars)


def test_the_same_day_gives_the_same_bytes() -> None:
    assert blank_sheets(TOPICS[:2], {"child": 1}, ON) == blank_sheets(TOPICS[:2], {"child": 1}, ON)


def test_the_page_on_how_to_use_them_reads_easily() -> None:
    own = sentences_of(next(sheets(TOPICS, {"child": 2}, ON)))
    assert len(own) > 10
    assert grade(own) <= 7.0
    assert max(len(words_of(longest_sentence(text))) for text in own) <= 25
    assert [word for text in own for word in barred_words(text)] == []
