"""The measures of the union: Fam. Code 70 (both words and acts, a final break) and 2330(b)."""

from datetime import date
from typing import Any

import pytest

from firstpaper.facts import Case
from firstpaper.facts.choices import Union
from firstpaper.law.measures.marriage import back_together_after, length, separation, union_began


def dates(**told: Any) -> Case:
    return Case.model_validate({"matter": {"unions": ["marriage"]}, "dates": told})


def both(day: str) -> dict[str, str]:
    return {"separation_told_on": day, "separation_acted_on": day}


@pytest.mark.parametrize(
    ("told", "acted", "day"),
    [
        ("2026-02-03", "2026-02-10", date(2026, 2, 10)),
        ("2026-02-10", "2026-02-03", date(2026, 2, 10)),
        ("2026-02-03", "2026-02-03", date(2026, 2, 3)),
        ("2026-02", "2026-02-10", None),
        ("2026-02-03?", "2026-02-10", None),
        ("don't know", "2026-02-10", None),
        (None, "2026-02-10", None),
        ("2026-02-03", None, None),
    ],
)
def test_the_later_of_two_sure_days_is_offered_and_nothing_is_guessed(
    told: str | None, acted: str | None, day: date | None
) -> None:
    apart = separation(dates(separation_told_on=told, separation_acted_on=acted))

    assert apart.day == day
    assert apart.unsure is (day is None)
    assert apart.why.endswith(".")


def test_a_time_together_after_the_break_takes_the_day_away() -> None:
    case = dates(**both("2020-03-01"), back_together=[{"start": "2024-05-01", "end": "2024-05-08"}])

    assert separation(case).day is None
    assert "back together" in separation(case).why
    assert len(back_together_after(case, date(2020, 3, 1))) == 1
    assert back_together_after(case, date(2024, 5, 8)) == ()


def test_the_length_needs_both_ends_in_a_possible_order() -> None:
    assert (
        str(length(dates(married_on="2016-06-01", **both("2026-05-31")), Union.MARRIAGE))
        == "9 years and 11 months"
    )
    assert length(dates(married_on="2016-06", **both("2026-05-31")), Union.MARRIAGE) is None
    assert length(dates(married_on="2027-06-01", **both("2026-05-31")), Union.MARRIAGE) is None
    assert length(dates(married_on="2016-06-01"), Union.MARRIAGE) is None


def test_a_partnership_begins_when_it_is_registered() -> None:
    case = dates(married_on="2013-07-01", registered_on="2005-03-15", **both("2026-01-10"))

    assert union_began(case, Union.PARTNERS_CALIFORNIA) == date(2005, 3, 15)
    assert union_began(case, Union.MARRIAGE) == date(2013, 7, 1)
    assert union_began(dates(married_on="2013-07-01?"), Union.MARRIAGE) is None


def test_the_reason_names_one_day_or_the_later_of_two() -> None:
    same = Case.model_validate(
        {"dates": {"separation_told_on": "2026-02-03", "separation_acted_on": "2026-02-03"}}
    )
    assert separation(same).why == "The words and the acts came on the same day."
    later = same.with_fact("dates.separation_acted_on", "2026-02-10")
    assert (
        separation(later).why
        == "By Tue, Feb 10, 2026 it had been said and acted on. It is the later of the two days."
    )
