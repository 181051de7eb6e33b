"""What is asked, what comes next, and what stands: on a small bank by hand, on the real one by properties."""

from collections.abc import Iterable, Iterator
from pathlib import Path
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.children import Child
from firstpaper.intake import engine
from firstpaper.intake.engine import (
    Asked,
    Progress,
    asked,
    asking,
    next_question,
    progress,
    put,
    set_aside,
    standing,
    switched,
)
from firstpaper.intake.loading import Bank, bank
from firstpaper.intake.question import Question
from tests.any_case import typed_answer, typed_case, typed_keys
from tests.intake.small_bank import SMALL, write_bank

MINORS = ("minor_together",)


def told(**facts: Any) -> Case:
    """A case with these facts; two underscores stand for a dot."""
    case = Case()
    for key, value in facts.items():
        case = put(case, key.replace("__", "."), value)
    return case


def keys(stops: Iterable[Asked]) -> list[str]:
    return [stop.key for stop in stops]


def walked(*cases: Case) -> list[tuple[Asked, ...]]:
    return [asked(case) for case in cases]


@pytest.fixture
def small(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Bank:
    """The small bank in place of the real one."""
    made = write_bank(tmp_path, SMALL)
    monkeypatch.setattr(engine, "bank", lambda: made)
    monkeypatch.setattr(engine, "bank_for", lambda key: made)
    return made


TWO = {"children__family": MINORS, "children__how_many": 2}


# --- by hand, on the small bank -------------------------------------------------------------------


@pytest.mark.usefixtures("small")
def test_questions_come_in_the_order_of_the_bank_and_children_one_after_the_other() -> None:
    case = told(**TWO, child__1__born_on="2019-01-02")
    assert keys(asked(case)) == [
        "petitioner.name",
        "respondent.name",
        "children.family",
        "children.how_many",
        "child.1.name",
        "child.1.born_on",
        "child.1.birthplace",
        "child.2.name",
        "child.2.born_on",
        "custody.alike",
    ]


@pytest.mark.usefixtures("small")
def test_the_next_question_is_the_first_without_an_answer() -> None:
    case = Case()
    order = []
    answers = {"children.family": MINORS, "children.how_many": 1, "child.1.born_on": "2019"}
    while stop := next_question(case):
        order.append(stop.key)
        case = put(case, stop.key, answers.get(stop.key, "Ana"))
    assert order == [
        "petitioner.name",
        "respondent.name",
        "children.family",
        "children.how_many",
        "child.1.name",
        "child.1.born_on",
        "child.1.birthplace",
    ]


@pytest.mark.usefixtures("small")
def test_questions_passed_over_are_not_next_and_not_knowing_is_an_answer() -> None:
    case = told(petitioner__name=DONT_KNOW)
    following = next_question(case, passed={"respondent.name"})
    assert following
    assert following.key == "children.family"
    assert next_question(case, passed=["respondent.name", "children.family"]) is None


@pytest.mark.usefixtures("small")
def test_only_the_files_that_are_needed_are_read(small: Bank) -> None:
    stop = next_question(Case())
    assert stop
    assert [path.name for path in small.loaded] == ["01-people.yaml"]


@pytest.mark.usefixtures("small")
def test_a_case_is_walked_once_and_another_that_says_the_same_by_itself(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    begun: list[Case] = []
    walk = engine._Walk

    def seen(case: Case) -> engine._Walk:
        begun.append(case)
        return walk(case)

    monkeypatch.setattr(engine, "_Walk", seen)
    case, other = told(petitioner__name="Ana"), told(petitioner__name="Ana")
    assert asked(case) == asked(case)
    assert next_question(case) in asked(case)
    assert standing(case) == case
    assert begun == [case]
    assert asked(other) == asked(case)
    assert [one is other for one in begun] == [False, True]


@pytest.mark.usefixtures("small")
def test_a_walk_that_broke_off_is_begun_again(monkeypatch: pytest.MonkeyPatch) -> None:
    case = told(petitioner__name="Ana")

    def interrupted(*_told: object) -> bool:
        raise KeyboardInterrupt

    with monkeypatch.context() as broken:
        broken.setattr(engine, "applies", interrupted)
        with pytest.raises(KeyboardInterrupt):
            asked(case)
    assert keys(asked(case)) == ["petitioner.name", "respondent.name", "children.family"]


@pytest.mark.usefixtures("small")
def test_progress_counts_what_applies_now() -> None:
    assert progress(Case()) == Progress(0, 3, 1, 2)
    assert progress(told(petitioner__name="Ana", respondent__name="Bo")) == Progress(2, 3, 2, 2)
    assert progress(told(petitioner__name="Ana"), passed={"respondent.name"}) == Progress(1, 3, 2, 2)
    assert progress(told(**TWO)) == Progress(2, 9, 1, 2)
    everyone = told(petitioner__name="Ana", respondent__name="Bo", children__family=())
    assert progress(everyone) == Progress(3, 3, 2, 2)


@pytest.mark.usefixtures("small")
@pytest.mark.parametrize("how_many", [None, DONT_KNOW])
def test_no_child_is_asked_about_before_their_number_is_known(how_many: Any) -> None:
    case = told(children__family=MINORS, children__how_many=how_many)
    assert not [stop for stop in asked(case) if stop.row]


@pytest.mark.usefixtures("small")
def test_what_was_unsaid_does_not_stand_and_comes_back() -> None:
    case = told(**TWO, custody__alike=True, child__1__name="Lucia", child__2__name="Mateo")
    unsaid = put(case, "children.family", ())
    assert standing(unsaid) == told(children__family=())
    assert set_aside(unsaid) == ("children.how_many", "child.1.name", "child.2.name", "custody.alike")
    assert standing(put(unsaid, "children.family", MINORS)) == standing(case) == case


@pytest.mark.usefixtures("small")
def test_children_beyond_the_number_told_do_not_stand() -> None:
    case = put(told(**TWO, child__1__name="Lucia", child__2__name="Mateo"), "children.how_many", 1)
    assert standing(case).child == (Child(name="Lucia"),)
    assert set_aside(case) == ("child.2.name",)


@pytest.mark.usefixtures("small")
def test_a_child_question_that_does_not_apply_to_one_child_leaves_the_others() -> None:
    case = told(**TWO, child__1__birthplace="Fresno", child__2__born_on="2019", child__2__birthplace="Reno")
    kept = standing(case)
    assert kept.child[0].birthplace is None
    assert kept.child[1].birthplace == "Reno"


@pytest.mark.usefixtures("small")
def test_a_fact_that_nothing_asks_about_does_not_stand() -> None:
    assert standing(told(petitioner__name="Ana", petitioner__phone="555")) == told(petitioner__name="Ana")


@pytest.mark.usefixtures("small")
def test_an_answer_tells_what_it_switched_on_and_off() -> None:
    one = told(children__family=MINORS, children__how_many=1)
    on, off = switched(*walked(one, put(one, "children.how_many", 2)))
    assert keys(on) == ["child.2.name", "child.2.born_on", "custody.alike"]
    assert off == ()
    on, off = switched(*walked(one, put(one, "children.family", ())))
    assert on == ()
    assert keys(off) == ["children.how_many", "child.1.name", "child.1.born_on"]


@pytest.mark.usefixtures("small")
def test_names_stand_in_the_words_as_soon_as_they_are_told() -> None:
    case = told(**TWO)
    first, second = (asking(f"child.{number}.name", case) for number in (1, 2))
    assert first
    assert second
    assert first.ask == "What is the name of your first child?"
    assert second.ask == "What is the name of your second child?"
    assert first.why == "the person who files and the other side in your county."
    case = put(
        put(put(case, "petitioner.name", "{respondent}"), "respondent.name", "Bo"), "court.county", "Yolo"
    )
    stop = asking("child.1.name", put(case, "child.1.name", "Lucia"))
    assert stop
    assert stop.ask == "What is the name of Lucia?"
    assert stop.why == "{respondent} and Bo in Yolo."


@pytest.mark.usefixtures("small")
@pytest.mark.parametrize(
    ("number", "how_many", "words"),
    [(1, 1, "your child"), (10, 12, "your tenth child"), (11, 12, "your child number 11")],
)
def test_a_child_without_a_name_is_told_apart_by_number(number: int, how_many: int, words: str) -> None:
    stop = asking(f"child.{number}.born_on", told(children__family=MINORS, children__how_many=how_many))
    assert stop
    assert stop.ask == f"When was {words} born?"


@pytest.mark.usefixtures("small")
@pytest.mark.parametrize(
    "key", ["petitioner.nmae", "child.x.name", "child.31.name", "child.0.name", "", "child"]
)
def test_a_key_that_nothing_asks_about_has_no_question(key: str) -> None:
    assert asking(key, Case()) is None


# --- properties, on the real bank -----------------------------------------------------------------

few = settings(max_examples=50, deadline=None)


def applies(question: Question, case: Case, child: int | None) -> bool:
    if question.applies is None:
        return True
    if child is None:
        return question.applies(case)
    return question.applies(case, case.child[child - 1] if child <= len(case.child) else Child())


def every_place() -> Iterator[tuple[str, Question, int | None]]:
    for key in typed_keys():
        question = bank().question(key)
        assert question
        yield key, question, int(key.split(".")[1]) if question.each else None


PLACES = tuple(every_place())


@few
@given(typed_case())
def test_predicates_look_only_at_what_was_asked_before(case: Case) -> None:
    """What makes one walk enough: no answer can switch a question that came before it."""
    earlier = Case()
    for key, question, child in PLACES:
        if key.startswith("child.") and len(earlier.child) < len(case.child):
            earlier = earlier.with_fact(
                "child", (*earlier.child, *(Child() for _row in case.child))[: len(case.child)]
            )
        assert applies(question, earlier, child) == applies(question, case, child), key
        if child is None or child <= len(case.child):
            earlier = earlier.with_fact(key, case.fact(key))


def test_what_other_answers_are_enough_for_is_not_open_though_the_answer_was_not_known() -> None:
    """Somebody who does not know their county by name, and then says that they live where they file."""
    unknown = told(residence__petitioner__own_county=DONT_KNOW, matter__kind="dissolution")
    county = "residence.petitioner.own_county"
    assert county in keys(asked(unknown))
    files_here = put(unknown, "court.county", "Humboldt")
    assert county not in keys(asked(files_here))
    assert county in keys(asked(put(files_here, "residence.petitioner.lives", "california")))
    assert county in keys(asked(put(files_here, county, "Humboldt")))


@few
@given(typed_case())
def test_every_fact_that_stands_has_a_question_that_applies(case: Case) -> None:
    kept = standing(case)
    for key, question, child in PLACES:
        if kept.fact(key) is not None:
            assert kept.fact(key) == case.fact(key) or follows(question, kept, case.fact(key))
            assert applies(question, kept, child), key


def follows(question: Question, kept: Case, told: object) -> bool:
    """Whether an answer that was not told follows from others."""
    return told is None and question.implied is not None and bool(question.spared and question.spared(kept))


@few
@given(typed_case())
def test_every_answer_left_out_has_a_question_that_does_not_apply(case: Case) -> None:
    kept = standing(case)
    how_many = kept.children.how_many
    rows = how_many if isinstance(how_many, int) else 0
    for key, question, child in PLACES:
        if case.fact(key) is not None and kept.fact(key) is None:
            assert not applies(question, kept, child) or (child or 0) > rows, key


@few
@given(typed_case())
def test_what_stands_goes_on_standing(case: Case) -> None:
    kept = standing(case)
    assert standing(kept) == kept
    assert keys(asked(kept)) == keys(asked(case))


@few
@given(
    typed_case(),
    st.sampled_from([key for key, _question, child in PLACES if child is None]),
    st.randoms(use_true_random=True),
)
def test_changing_an_answer_back_brings_everything_back(case: Case, key: str, draw: Random) -> None:
    other = typed_answer(key, draw)
    assert standing(put(put(case, key, other), key, case.fact(key))) == standing(case)


@few
@given(typed_case())
def test_the_next_question_applies_and_is_open(case: Case) -> None:
    stop = next_question(case)
    open_stops = [each for each in asked(case) if case.fact(each.key) is None]
    assert (stop.key if stop else None) == (open_stops[0].key if open_stops else None)
    if stop:
        assert all(next_question(case, {each.key for each in open_stops[:n]}) != stop for n in range(1, 3))


@few
@given(typed_case())
def test_progress_never_counts_what_does_not_apply(case: Case) -> None:
    counted = progress(case)
    assert counted.applicable == len(list(asked(case)))
    assert 0 <= counted.answered <= counted.applicable
    assert 1 <= counted.topic_number <= counted.topics <= len(bank().topics)


@few
@given(typed_case(), typed_case())
def test_what_is_switched_on_one_way_is_switched_off_the_other(one: Case, other: Case) -> None:
    on, off = switched(*walked(one, other))
    back_on, back_off = switched(*walked(other, one))
    assert keys(on) == keys(back_off)
    assert keys(off) == keys(back_on)
    assert not set(keys(on)) & set(keys(off))


@few
@given(typed_case())
def test_every_question_can_be_said(case: Case) -> None:
    for stop in asked(case):
        words = (
            stop.ask,
            stop.why,
            stop.hint,
            stop.none,
            *stop.notice,
            *(each.words for each in stop.choices),
        )
        assert not any("{" in text for text in words if text)


def test_a_day_told_in_part_is_an_answer() -> None:
    case = told(dates__married_on=Day(2012))
    assert "dates.married_on" not in {stop.key for stop in asked(case) if case.fact(stop.key) is None}
