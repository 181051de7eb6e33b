"""Which children are listed, against an outside date library.

Fam. Code 2330(b)(5): the age and birth date of each minor child; Fam. Code 6500: under 18. Ages agree with
python-dateutil, whose birthdays of February 29 also fall on February 28 in common years.
"""

from datetime import date

from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.children import Child, Children
from firstpaper.facts.choices import Family, Parentage
from firstpaper.law.measures.children import has_minor_children, listed_children, open_on_children, unborn

BIRTHS = st.dates(date(2000, 1, 1), date(2030, 12, 31))
FILINGS = st.dates(date(2026, 1, 1), date(2030, 12, 31))


def household(*children: Child) -> Case:
    told = Children(family=(Family.MINOR_TOGETHER,), how_many=len(children) or None)
    return Case(children=told, child=children)


def born(day: object, **told: object) -> Child:
    return Child.model_validate({"name": "Ana Vale", "born_on": day, "parentage": "born_to_both", **told})


@given(BIRTHS, FILINGS)
def test_a_child_is_listed_from_birth_until_the_eighteenth_birthday(birth: date, on: date) -> None:
    listed = listed_children(household(born(birth)), on)

    assert bool(listed) is (birth <= on < birth + relativedelta(years=18))
    assert all(child.age == relativedelta(on, birth).years for child in listed)


@given(st.lists(BIRTHS, max_size=6), FILINGS)
def test_children_stand_oldest_first_and_keep_their_numbers(births: list[date], on: date) -> None:
    listed = listed_children(household(*map(born, births)), on)

    days = [child.born_on for child in listed]
    assert days == sorted(day for day in days if day)
    assert all(births[child.number - 1] == child.born_on for child in listed)


@given(st.integers(2000, 2030), st.integers(1, 12), FILINGS)
def test_a_month_of_birth_keeps_a_child_listed_while_one_of_its_days_would(
    year: int, month: int, on: date
) -> None:
    first = date(year, month, 1)
    last = first + relativedelta(day=31)
    listed = listed_children(household(born(f"{year}-{month:02d}")), on)

    assert bool(listed) is (first <= on < last + relativedelta(years=18))
    for child in listed:
        ages = {relativedelta(on, day).years for day in (first, min(last, on))}
        assert child.born_on is None
        assert child.age == (ages.pop() if len(ages) == 1 else None)
        assert child.under_age is (True if on < first + relativedelta(years=18) else None)


def test_a_child_without_a_birth_date_stands_last_with_no_age() -> None:
    unknown = born("don't know", name="Luis Vale")
    listed = listed_children(household(unknown, born(date(2020, 2, 2))), date(2026, 11, 25))

    assert [(child.number, child.age, child.under_age) for child in listed] == [(2, 6, True), (1, None, None)]


def test_only_children_of_both_are_listed() -> None:
    mine = born(date(2020, 2, 2), parentage=Parentage.ONE_PARENT_ONLY)

    assert listed_children(household(mine), date(2026, 11, 25)) == ()
    assert not has_minor_children(household(mine), date(2026, 11, 25))


def test_children_told_of_but_not_yet_described_are_not_forgotten() -> None:
    told = Children(family=(Family.MINOR_TOGETHER, Family.UNBORN_TOGETHER), how_many=2)

    assert has_minor_children(Case(children=told), date(2026, 11, 25))
    assert unborn(Case(children=told))
    assert not has_minor_children(Case(), date(2026, 11, 25))
    assert not unborn(Case())


def test_an_empty_place_in_the_list_is_no_child() -> None:
    assert listed_children(household(Child(), born(date(2020, 2, 2))), date(2026, 11, 25))[0].number == 2


def test_on_the_first_day_that_can_be_the_birthday_it_is_open_whether_a_child_is_a_minor() -> None:
    (child,) = listed_children(household(born("2008-11")), date(2026, 11, 1))
    assert child.under_age is None
    (child,) = listed_children(household(born("2008-11")), date(2026, 10, 31))
    assert child.under_age is True


def test_without_a_number_one_child_is_looked_for_and_no_more() -> None:
    case = Case(children=Children(family=(Family.MINOR_TOGETHER,)))
    assert has_minor_children(case, date(2026, 11, 25)) is True
    of_one = born(date(2015, 1, 1), parentage="one_parent_only")
    assert has_minor_children(case.model_copy(update={"child": (of_one,)}), date(2026, 11, 25)) is False


def test_what_leaves_the_children_open_is_a_child_presumed_of_both_or_the_family_itself() -> None:
    """Fam. Code 7611(a): a child born in the marriage, whatever was said of its parents."""
    told = {
        "dates": {"married_on": "2015-06-01"},
        "children": {"family": ["minor_together"], "how_many": 1},
        "child": [{"name": "Ana Vale", "born_on": "2018-03-04", "parentage": "one_parent_only"}],
    }
    assert open_on_children(Case.model_validate(told), date(2026, 11, 25)) == "child.1.born_to_one_of_you"
    assert open_on_children(Case(), date(2026, 11, 25)) == "children.family"
