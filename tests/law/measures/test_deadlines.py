"""The dates that follow from what was recorded: worked tables, and what must hold for any dates.

One YAML file a table. Each case has the `record` (laid over the `base`), the day `on` we look from,
and what the dates whose key begins as `deadlines` says should be: by key, or for the only one there is.
What is left out of `expect` must not be there at all.
"""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, time, timedelta
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.deadline import Actor, Deadline, Meaning
from firstpaper.law.deadline_register import all_deadlines, deadlines
from firstpaper.law.figure import FigureNotInForce, court_calendar
from firstpaper.law.measures.disclosure import tax_returns_since
from firstpaper.law.measures.due import due_at_court, months_after
from firstpaper.law.measures.record import FAR_AHEAD_DAYS, happened
from firstpaper.law.measures.response import later_paper, response_due
from firstpaper.law.measures.service import attempts, service_complete
from firstpaper.law.measures.waiting import earliest_end
from firstpaper.law.register import all_rules

TABLES = sorted((Path(__file__).parent / "cases").glob("*.yaml"))
ONE_DAY = timedelta(days=1)


class _Loader(yaml.CSafeLoader):
    """Reads `on` as the word it is; YAML 1.1 takes it for a yes."""


_Loader.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in found if first not in "oO" or not tag.endswith(":bool")]
    for first, found in yaml.CSafeLoader.yaml_implicit_resolvers.items()
}


def _rows() -> list[Any]:
    rows = []
    for path in TABLES:
        table = yaml.load(path.read_text("utf-8"), _Loader)
        assert table["authority"].strip()
        for name, one in table["cases"].items():
            on, kind = one.get("on", table["on"]), one.get("kind", "dissolution")
            record = {**table["base"], **one["record"]}
            case = {"matter": {"kind": kind}, "record": record}
            rows.append(pytest.param(table["deadlines"], case, on, one["expect"], id=f"{path.stem}: {name}"))
    return rows


@pytest.mark.parametrize(("prefixes", "facts", "on", "expect"), _rows())
def test_the_dates_are_those_of_the_table(
    prefixes: list[str], facts: dict[str, Any], on: date, expect: Mapping[str, Any]
) -> None:
    found = {each.key: each for each in deadlines(Case.model_validate(facts), on)}
    meant = {key: each for key, each in found.items() if key.startswith(tuple(prefixes))}
    of_the_only_one = expect and not any("." in name for name in expect)
    wanted = dict.fromkeys(meant, expect) if of_the_only_one else expect
    assert set(meant) == set(wanted)
    assert len(meant) == 1 or not of_the_only_one
    for key, parts in wanted.items():
        _check(meant[key], parts)


def _check(deadline: Deadline, parts: Mapping[str, Any]) -> None:
    for name, value in parts.items():
        match name:
            case "steps":
                text = "\n".join(deadline.steps)
                assert [words for words in value if words not in text] == []
            case "if_missed":
                assert value in deadline.if_missed
            case "if_missed_not":
                assert value not in deadline.if_missed
            case _:
                assert getattr(deadline, name) == value, name


# What holds for any dates

DAYS = st.dates(date(2023, 1, 1), date(2035, 12, 31))
METHODS = st.sampled_from(
    [
        (ServiceMethod.PERSONAL, "served_on"),
        (ServiceMethod.SUBSTITUTED, "mailed_on"),
        (ServiceMethod.ACKNOWLEDGMENT, "acknowledged_on"),
        (ServiceMethod.OUT_OF_STATE_MAIL, "mailed_on"),
        (ServiceMethod.PUBLICATION, "first_published_on"),
        (ServiceMethod.POSTING, "complete_on"),
        (ServiceMethod.COURT_DIRECTED, "complete_on"),
        (ServiceMethod.ABROAD, "complete_on"),
    ]
)
LATE = date(2038, 12, 31)


def served(how: tuple[ServiceMethod, str], on: date, **record: Any) -> Case:
    method, key = how
    service = {"method": method, key: on.isoformat()}
    if method is ServiceMethod.ACKNOWLEDGMENT:
        service["acknowledgment_back_on"] = on.isoformat()
    facts = {"filed_on": "2022-12-30", "service": service, **record}
    return Case.model_validate({"matter": {"kind": "dissolution"}, "record": facts})


@given(METHODS, DAYS, st.integers(0, 400))
def test_a_later_service_never_gives_an_earlier_day(
    how: tuple[ServiceMethod, str], on: date, later: int
) -> None:
    first, second = served(how, on), served(how, on + timedelta(days=later))
    one, two = response_due(first, LATE), response_due(second, LATE)
    assert one
    assert two
    assert one.due.target <= two.due.target
    assert one.due.rolled <= two.due.rolled
    complete, again = service_complete(first, LATE), service_complete(second, LATE)
    assert complete
    assert again
    assert complete.day <= again.day


@given(METHODS, DAYS)
def test_mailing_and_waiting_never_make_the_time_shorter_than_by_hand(
    how: tuple[ServiceMethod, str], on: date
) -> None:
    by_hand, other = (
        response_due(served((ServiceMethod.PERSONAL, "served_on"), on), LATE),
        response_due(served(how, on), LATE),
    )
    assert by_hand
    assert other
    assert by_hand.due.target == on + timedelta(days=30)
    assert by_hand.due.target <= other.due.target


@given(METHODS, DAYS, DAYS)
def test_every_date_is_moved_forward_to_a_court_day_or_not_at_all(
    how: tuple[ServiceMethod, str], on: date, filed: date
) -> None:
    for each in deadlines(served(how, on, filed_on=filed.isoformat()), LATE):
        assert each.target <= each.rolled
        if each.meaning is Meaning.LAST_DAY or each.key == "response.default_from":
            assert court_calendar().is_court_day(each.rolled)
            last = each.dated.due.closed or each.target
            between = [last + day * ONE_DAY for day in range((each.rolled - last).days)]
            assert not any(court_calendar().is_court_day(day) for day in between)


@given(METHODS, DAYS, DAYS)
def test_the_list_is_in_order_complete_in_words_and_explained(
    how: tuple[ServiceMethod, str], on: date, filed: date
) -> None:
    found = deadlines(served(how, on, filed_on=filed.isoformat(), response_filed_on=on.isoformat()), LATE)
    assert all(one.target <= two.target for one, two in pairwise(found))
    assert len({each.key for each in found}) == len(found)
    for each in found:
        assert each.title
        assert not each.title.endswith(".")
        assert each.if_missed.endswith(".")
        assert each.steps
        assert each.authority
        assert each.rule in all_rules()


@given(DAYS)
def test_the_longer_reading_is_never_earlier_and_never_far_off(start: date) -> None:
    end = earliest_end(start)
    assert timedelta(days=181) < end.day - start
    assert end.day <= end.longer_day <= end.day + timedelta(days=2)
    assert end.day == end.expires + ONE_DAY
    assert ("after 182 days" in end.steps[-1]) is (end.longer_day > end.day)


@given(DAYS, DAYS)
def test_a_later_start_never_ends_a_marriage_sooner(one: date, two: date) -> None:
    first, second = sorted((one, two))
    assert earliest_end(first).day <= earliest_end(second).day
    assert earliest_end(first).longer_day <= earliest_end(second).longer_day


@given(DAYS, st.integers(0, 120))
def test_months_after_lands_in_the_month_that_many_later(start: date, months: int) -> None:
    reached = months_after(start, months).day
    assert (reached.year - start.year) * 12 + reached.month - start.month == months
    assert reached.day == start.day or (reached + ONE_DAY).day == 1


@given(st.dates(date(2023, 1, 1), date(2039, 12, 1)))
def test_a_due_day_is_missed_only_after_its_court_day(target: date) -> None:
    day = due_at_court(Case(), months_after(target, 0))
    assert not day.missed(day.rolled)
    assert day.missed(day.rolled + ONE_DAY)


# Records with a mistake in them


def test_a_last_day_is_missed_only_after_the_court_day() -> None:
    case = served((ServiceMethod.PERSONAL, "served_on"), date(2026, 10, 27), filed_on="2026-10-01")
    (response,) = (each for each in deadlines(case, LATE) if each.key == "response.petition")
    assert (response.missed(date(2026, 11, 30)), response.missed(date(2026, 12, 1))) == (False, True)


def test_a_first_day_is_never_missed() -> None:
    case = served((ServiceMethod.PERSONAL, "served_on"), date(2026, 10, 27))
    (opens,) = (each for each in deadlines(case, LATE) if each.key == "response.default_from")
    assert not opens.missed(LATE)
    assert opens.who is Actor.PETITIONER


def test_an_impossibly_late_day_breaks_nothing() -> None:
    facts: dict[str, Any] = {
        "filed_on": "2199-12-31",
        "waiver_filed_on": "2199-12-31",
        "fee": "waiver_asked",
        "service": {"method": "abroad", "complete_on": "2199-12-31"},
    }
    case = Case.model_validate({"matter": {"kind": "dissolution"}, "record": facts})
    on = date(2026, 11, 25)
    assert happened(case, on).filed_on is None
    assert happened(case, on).service.complete_on is None
    assert deadlines(case, on) == ()


def test_the_end_of_service_may_lie_ahead_but_not_by_years() -> None:
    on = date(2026, 11, 25)
    near, far = on + timedelta(days=FAR_AHEAD_DAYS), on + timedelta(days=FAR_AHEAD_DAYS + 1)
    kept = served((ServiceMethod.ABROAD, "complete_on"), near)
    dropped = served((ServiceMethod.ABROAD, "complete_on"), far)
    assert service_complete(kept, on) is not None
    assert service_complete(dropped, on) is None


def test_an_amended_petition_counts_from_the_first_one() -> None:
    facts = {"matter": {"kind": "dissolution", "amended": True, "first_filed_on": "2026-03-02"}}
    found = {each.key: each for each in deadlines(Case.model_validate(facts), date(2026, 11, 25))}
    assert found["dismissal.serve_by"].target == date(2029, 3, 2)
    assert not found["dismissal.serve_by"].planned


@pytest.mark.parametrize(
    ("amended", "first", "recorded", "serve_by"),
    [
        (True, "2026-03-02", "2026-03-05", date(2029, 3, 5)),
        (True, "2014-03-02", None, None),
        (True, "2026-12-02", None, None),
        (False, "2026-03-02", None, date(2029, 11, 25)),
        (None, "2026-03-02", "2026-03-05", date(2029, 3, 5)),
    ],
)
def test_what_was_recorded_comes_first_and_an_earlier_case_only_where_this_one_amends_it(
    amended: bool | None, first: str, recorded: str | None, serve_by: date | None
) -> None:
    facts = {
        "matter": {"kind": "dissolution", "amended": amended, "first_filed_on": first},
        "record": {"filed_on": recorded},
    }
    found = {each.key: each for each in deadlines(Case.model_validate(facts), date(2026, 11, 25))}
    assert (found["dismissal.serve_by"].target if found else None) == serve_by


@pytest.mark.parametrize(("filed", "counted"), [("2014", False), ("2014-12-31", False), ("2015", True)])
def test_a_day_is_too_long_ago_only_where_all_of_it_is(filed: str, counted: bool) -> None:
    case = Case.model_validate({"record": {"filed_on": filed}})
    assert (happened(case, date(2026, 11, 25)).filed_on is not None) is counted


def test_an_amended_petition_of_unknown_age_has_no_days() -> None:
    facts = {"matter": {"kind": "dissolution", "amended": True}}
    assert deadlines(Case.model_validate(facts), date(2026, 11, 25)) == ()


# Three tries before substituted service (Code Civ. Proc. 415.20(b)(2), from January 1, 2027)

JAN = date(2027, 1, 1)


def tried(*tries: tuple[int, str | None], left: date = date(2027, 1, 20)) -> bool | None:
    made = [{"on": (JAN + (day - 1) * ONE_DAY).isoformat(), "at": at} for day, at in tries]
    case = Case.model_validate({"record": {"service": {"method": "substituted", "attempts": made}}})
    counted = attempts(case, left)
    assert counted
    return counted.enough


@pytest.mark.parametrize(
    ("tries", "enough"),
    [
        ([(4, "08:00"), (5, "12:30"), (7, "19:00")], True),
        ([(4, "08:00"), (5, "12:30")], False),
        ([(4, "08:00"), (4, "12:30"), (7, "19:00")], False),
        ([(4, "08:00"), (5, "08:00"), (7, "19:00")], False),
        ([(4, "08:00"), (5, "08:00"), (7, "19:00"), (8, "13:00")], True),
        ([(4, "08:00"), (4, "12:00"), (4, "18:00"), (5, "08:00"), (6, "08:00")], False),
        ([(4, None), (5, "12:30"), (7, "19:00")], None),
        ([(4, None), (5, "12:30"), (7, "12:30")], False),
        ([(4, None), (5, None), (7, None)], None),
        ([(4, "08:00"), (5, "12:30"), (21, "19:00")], False),
        ([(4, "08:00"), (5, "12:30"), (20, "19:00")], True),
        ([], False),
    ],
)
def test_three_tries_lie_on_three_days_at_three_times(
    tries: list[tuple[int, str | None]], enough: bool | None
) -> None:
    assert tried(*tries) is enough


def test_before_2027_the_law_names_no_number() -> None:
    assert tried((1, "08:00"), left=date(2026, 12, 31)) is True
    assert tried(left=date(2026, 12, 31)) is True


def test_no_tries_recorded_is_not_the_same_as_none_made() -> None:
    assert attempts(Case(), date(2027, 1, 20)) is None


def test_a_time_of_day_is_kept_to_the_minute() -> None:
    case = Case.model_validate({"record": {"service": {"attempts": [{"on": "2027-01-04", "at": "18:05"}]}}})
    told = case.record.service.attempts
    assert isinstance(told, tuple)
    assert told[0].at == time(18, 5)


# Tax returns and later papers


@pytest.mark.parametrize(
    ("on", "since"),
    [
        (date(2027, 1, 24), date(2025, 1, 24)),
        (date(2028, 2, 29), date(2026, 2, 28)),
        (date(2026, 2, 28), date(2024, 2, 28)),
    ],
)
def test_tax_returns_go_back_two_years_from_the_day_of_service(on: date, since: date) -> None:
    """Fam. Code 2104(a): returns filed within the two years before the declaration was served."""
    assert tax_returns_since(on) == since


def test_a_later_paper_by_hand_adds_no_day() -> None:
    assert later_paper(Case(), date(2026, 11, 25), 30).day == date(2026, 12, 25)


def test_a_number_that_no_known_law_sets_costs_only_its_own_dates(monkeypatch: pytest.MonkeyPatch) -> None:
    """The dates that need the number are left out, and every other date is still there."""
    on = date(2026, 12, 1)
    facts = {"matter": {"kind": "dissolution"}, "record": {"filed_on": date(2026, 11, 25)}}
    case = Case.model_validate(facts)
    everything = {each.key for each in deadlines(case, on)}

    def without_a_number(_case: Case, _on: date) -> Any:
        raise FigureNotInForce("not known", "disclosure.days")

    without = replace(all_deadlines()["disclosure.petitioner"], count=without_a_number)
    monkeypatch.setitem(all_deadlines(), "disclosure.petitioner", without)
    left = {each.key for each in deadlines(Case.model_validate(facts), on)}
    assert left == everything - {"disclosure.petitioner"}
    assert left < everything
