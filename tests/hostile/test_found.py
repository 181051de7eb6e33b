"""What the guided fuzzer found: of each way in which an input was met, the smallest. They are met alike now.

`found/` holds them as JSON, each byte as the letter of that number, since many are no text.
"""

import json
from pathlib import Path

import pytest

from tests.hostile.targets import TARGETS, fed

FOUND = Path(__file__).parent / "found"
CASES = [
    pytest.param(
        path.stem.replace("-", " "), one["input"].encode("latin-1"), one["met"], id=f"{path.stem} {at}"
    )
    for path in sorted(FOUND.glob("*.json"))
    for at, one in enumerate(json.loads(path.read_text("utf-8")))
]


def test_there_are_some_and_all_have_a_reader() -> None:
    assert len(CASES) > 40
    assert {path.stem.replace("-", " ") for path in FOUND.glob("*.json")} <= set(TARGETS)


@pytest.mark.parametrize(("name", "data", "met"), CASES)
def test_what_the_fuzzer_found_is_met_as_before(name: str, data: bytes, met: str) -> None:
    assert fed(name, data) == met
