"""What the guided fuzzer found: of each way of meeting an input the smallest. They are met alike now."""

import pytest

from tests.hostile.targets import FOUND, TARGETS, fed, found

CASES = [
    pytest.param(name, data, met, id=f"{name} {at}")
    for name in TARGETS
    for at, (data, met) in enumerate(found(name))
]


def test_there_are_some_and_all_have_a_reader() -> None:
    assert len(CASES) > 40
    assert {path.stem.replace("-", " ") for path in FOUND.glob("*.json")} <= set(TARGETS)


@pytest.mark.parametrize(("name", "data", "met"), CASES)
def test_what_the_fuzzer_found_is_met_as_before(name: str, data: bytes, met: str) -> None:
    assert fed(name, data) == met
