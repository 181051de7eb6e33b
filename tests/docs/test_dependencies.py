"""What is installed beside this program: every dependency has an end, and a clinic can check what it gets."""

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement

ROOT = Path(__file__).parents[2]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text())["project"]
DIRECT = [Requirement(one) for one in PROJECT["dependencies"]]
PINNED = (ROOT / ".ci" / "constraints.txt").read_text()


@pytest.mark.parametrize("one", DIRECT, ids=lambda one: one.name)
def test_each_ends_before_a_version_that_may_break_it(one: Requirement) -> None:
    assert {"<"} <= {bound.operator for bound in one.specifier}


@pytest.mark.parametrize("one", DIRECT, ids=lambda one: one.name)
def test_each_is_pinned_with_hashes_inside_its_bounds(one: Requirement) -> None:
    with_hash = rf"^{re.escape(one.name)}==(\S+).*\\\n\s+--hash=sha256:[0-9a-f]{{64}}"
    found = re.search(with_hash, PINNED, re.MULTILINE)
    assert found
    assert found[1] in one.specifier


def test_the_list_names_no_place_to_fetch_from() -> None:
    assert not re.search(r"https?:|index-url|find-links|file:", PINNED)
