"""The exact comparisons of Fam. Code 2400(a)(6)-(7): "in excess of" for debts and separate property, "less
than" for what both own; and the dated limits, which are never guessed."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.measures.short_way import Condition, Subject, conditions, limits_known

KNOWN = st.dates(date(2021, 1, 1), date(2022, 12, 31)) | st.dates(date(2025, 1, 1), date(2026, 12, 31))
UNKNOWN = st.dates(date(2023, 1, 1), date(2024, 12, 31)) | st.dates(date(2027, 1, 1), date(2030, 12, 31))
CENTS = st.integers(-1, 1).map(lambda cents: Decimal(cents) / 100)


def looked(on: date, **amounts: Decimal) -> dict[Subject, Condition]:
    case = Case.model_validate({"summary": amounts})
    return {one.subject: one for one in conditions(case, on)}


@given(KNOWN, CENTS)
def test_a_cent_decides(on: date, cent: Decimal) -> None:
    debt = Decimal(figure("summary_dissolution.debt_limit", on).value)
    worth = Decimal(figure("summary_dissolution.property_limit", on).value)
    found = looked(
        on,
        debts=debt + cent,
        community=worth + cent,
        separate_petitioner=worth + cent,
        separate_respondent=Decimal(0),
    )
    assert found[Subject.DEBTS].met is (cent <= 0)
    assert found[Subject.COMMUNITY].met is (cent < 0)
    assert found[Subject.SEPARATE].met is (cent <= 0)
    assert found[Subject.DEBTS].limit == debt
    assert not any(one.limit_unknown for one in found.values())


@given(UNKNOWN, st.integers(0, 10**8))
def test_without_limits_no_amount_is_judged(on: date, amount: int) -> None:
    found = looked(on, debts=Decimal(amount), community=Decimal(amount), separate_petitioner=Decimal(amount))
    for subject in (Subject.DEBTS, Subject.COMMUNITY, Subject.SEPARATE):
        assert found[subject].met is None
        assert found[subject].limit_unknown
    assert not limits_known(on)


@pytest.mark.parametrize("on", [date(2021, 1, 1), date(2022, 12, 31), date(2025, 1, 1), date(2026, 12, 31)])
def test_the_limits_are_known_on_the_edges_of_their_years(on: date) -> None:
    assert limits_known(on)


@given(KNOWN)
def test_what_was_not_told_is_open_and_never_met(on: date) -> None:
    assert {one.met for one in conditions(Case(), on)} == {None}
