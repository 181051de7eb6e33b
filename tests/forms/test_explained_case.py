"""What the page of an item says of a case is what the form answers and what the rules find: one source."""

from collections import Counter
from datetime import date

from firstpaper.forms.explained_case import InCase, in_case
from firstpaper.forms.explained_copies import copies_of
from firstpaper.forms.explained_names import entries, entries_called
from firstpaper.forms.explanations import explanations
from firstpaper.forms.filing import every_form, maker
from firstpaper.forms.open_answers import open_items
from firstpaper.intake import standing
from firstpaper.law.register import findings
from tests.each import one_by_one
from tests.households.golden import Household, households

each_household = one_by_one(households())
WHOLE = tuple(one for one in households() if one.name in ("two-children-moved-county", "both-file-together"))


def page(one: Household, name: str) -> InCase:
    (entry,) = entries_called(name)
    return in_case(entry.read(), standing(one.case), one.on)


@each_household
def test_every_item_of_every_form_goes_by_exactly_one_page(one: Household) -> None:
    case = standing(one.case)
    for name in every_form():
        filled = maker(name)(case, one.on)
        for number in {form.form for form in filled}:
            pages = [copies_of(entry, filled) for entry in explanations(number)]
            shown = [each for copies in pages for _form, items in copies for each in items]
            answered = [each for form in filled if form.form == number for each in form.items]
            assert Counter(shown) == Counter(answered)


@each_household
def test_each_rule_behind_a_page_finds_there_what_it_finds_in_check(one: Household) -> None:
    case = standing(one.case)
    found = findings(case, one.on)
    behind = {rule for name in every_form() for entry in entries(name) for rule in entry.read().rules}
    for rule in sorted(behind):
        assert findings(case, one.on, [rule]) == tuple(each for each in found if each.id == rule)


@one_by_one(WHOLE)
def test_a_page_agrees_with_items_and_with_check(one: Household) -> None:
    case = standing(one.case)
    found = findings(case, one.on)
    for name in every_form():
        answers = {
            (form.use, each.concept): each for form in maker(name)(case, one.on) for each in form.items
        }
        for entry in entries(name):
            stands = in_case(entry.read(), case, one.on)
            here = {(form.use, each.concept): each for form, items in stands.copies for each in items}
            assert here.items() <= answers.items()
            from_check = [each for each in found if each.id in entry.read().rules]
            assert sorted(stands.findings, key=repr) == sorted(from_check, key=repr)
            assert open_items(here.values()) == tuple(each for each in here.values() if each.open_key)


@one_by_one(WHOLE)
def test_what_another_day_changes_is_what_the_form_says_on_that_day(one: Household) -> None:
    case = standing(one.case)
    for entry in entries("FL-100"):
        for later in in_case(entry.read(), case, one.on).later:
            then = {each.concept: each for form in maker("FL-100")(case, later.on) for each in form.items}
            assert all(then[each.concept] == each for each in later.items)
            assert later.on > one.on


def test_the_first_day_on_which_a_box_can_be_marked_is_named() -> None:
    one = Household("two-children-moved-county", date(2026, 11, 30))
    stands = page(one, "2a")

    (now,) = [items for _form, items in stands.copies]
    assert "mark" not in {each.action for each in now}
    first = stands.later[0]
    assert [(each.concept, each.action) for each in first.items] == [("residence.petitioner", "mark")]


def test_what_was_told_and_what_is_missing_are_named() -> None:
    one = Household("plain-childless-divorce", date(2026, 11, 30))
    stands = page(one, "2a")
    assert "residence.petitioner.state_since" in [each.key for each in stands.told]

    bare = standing(one.case.with_fact("residence.petitioner.state_since", None))
    (entry,) = entries_called("2a")
    missing = in_case(entry.read(), bare, one.on).unanswered
    assert [each.key for each in missing] == ["residence.petitioner.state_since"]


def test_a_form_that_the_case_does_not_use_has_no_copies() -> None:
    one = Household("plain-childless-divorce", date(2026, 11, 30))
    stands = page(one, "FL-105 homes")
    assert stands.copies == stands.later == ()
