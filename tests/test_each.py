"""The helper that holds many things to one check loses none of them, and says what failed."""

import pytest

from tests.each import for_each


def test_all_that_fail_are_named_with_what_failed() -> None:
    @for_each(range(5))
    def is_even(number: int) -> None:
        assert number % 2 == 0, "odd"

    with pytest.raises(
        AssertionError, match=r"(?s)2 of 5:\n1: AssertionError: odd.*\n3: AssertionError: odd"
    ):
        is_even()


def test_a_check_that_breaks_is_a_failure_too() -> None:
    @for_each([(1, 0), (1, 1)], name=lambda pair: f"{pair[0]}/{pair[1]}")
    def divides(one: int, other: int) -> None:
        assert one // other

    with pytest.raises(AssertionError, match="1 of 2:\n1/0: ZeroDivisionError"):
        divides()


def test_nothing_to_check_is_no_success() -> None:
    @for_each([])
    def anything(thing: object) -> None:
        assert thing

    with pytest.raises(AssertionError):
        anything()


def test_what_is_still_to_be_found_is_looked_for_where_the_test_runs() -> None:
    found: list[int] = []

    @for_each(found.append(number) or number for number in range(3))
    def is_small(number: int) -> None:
        assert number < 2, "large"

    assert found == []
    with pytest.raises(AssertionError, match="1 of 3:\n2: AssertionError: large"):
        is_small()
