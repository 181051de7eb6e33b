"""Events in an order that cannot be are always stopped; events in order never are."""

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case, Day
from firstpaper.law.finding import Weight
from firstpaper.law.register import findings
from firstpaper.law.rules.dates.record_order import ORDER, REVOKED

LATE = date(2036, 12, 31)
DAYS = st.dates(date(2026, 1, 1), date(2035, 12, 31))
PAIRS = st.sampled_from(ORDER)


def stopped(case: Case) -> list[tuple[str, ...]]:
    found = findings(case, LATE, ["dates.record_order"])
    return [each.facts for each in found if each.weight is Weight.STOP]


def recorded(pair: tuple[str, str], first: date, second: date) -> Case:
    case = Case().with_fact("record.joint", REVOKED in pair)  # only a joint petition can be revoked
    return case.with_fact(pair[0], Day.of(first)).with_fact(pair[1], Day.of(second))


@given(PAIRS, DAYS, st.integers(1, 4000))
def test_what_came_too_early_is_stopped(pair: tuple[str, str], first: date, days: int) -> None:
    assert stopped(recorded(pair, first, first - timedelta(days=days))) == [pair]


@given(PAIRS, DAYS, st.integers(0, 300))
def test_what_came_later_or_the_same_day_is_not(pair: tuple[str, str], first: date, days: int) -> None:
    assert stopped(recorded(pair, first, first + timedelta(days=days))) == []


@given(st.lists(DAYS, min_size=6, max_size=6).map(sorted))
def test_a_whole_case_in_order_is_never_stopped(days: list[date]) -> None:
    keys = (
        "record.filed_on",
        "record.service.mailed_on",
        "record.service.acknowledged_on",
        "record.service.acknowledgment_back_on",
        "record.service.proof_filed_on",
        "record.response_filed_on",
    )
    case = Case().with_fact("record.service.method", "acknowledgment")
    for key, day in zip(keys, days, strict=True):
        case = case.with_fact(key, Day.of(day))
    assert findings(case, LATE, ["dates.record_order"]) == ()
