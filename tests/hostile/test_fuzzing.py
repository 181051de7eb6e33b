"""A bounded share of the fuzzing: what comes is taken or refused in words, and nothing else happens."""

from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from firstpaper.casefile import CaseFile
from firstpaper.errors import UserError
from firstpaper.packet import build
from tests.hostile.mangling import mangled, mangled_document
from tests.hostile.targets import HERE, REFUSED, TAKEN, TARGETS, TODAY, fed

MANGLED = {"facts": 40, "tables": 20, "case files": 80, "blanks": 80, "maps of blanks": 100}
DRAFTED = 12


@pytest.mark.parametrize("name", TARGETS)
@settings(max_examples=150, deadline=None)  # each target holds an input to its own time
@given(data=st.one_of(st.binary(max_size=300), st.text(max_size=200).map(str.encode)))
def test_anything_is_met(name: str, data: bytes) -> None:
    fed(name, data)


@pytest.mark.parametrize("name", TARGETS)
def test_a_good_input_is_taken(name: str) -> None:
    assert TAKEN in {fed(name, seed) for seed in TARGETS[name].seeds()} or name == "sealed files"


@pytest.mark.parametrize("name", TARGETS)
def test_a_good_input_with_faults_in_it_is_met(name: str) -> None:
    seeds = TARGETS[name].seeds()
    met = {fed(name, mangled(seeds, Random(number))) for number in range(MANGLED.get(name, 600))}
    assert met <= {TAKEN, REFUSED}


def test_a_case_file_with_other_values_in_it_is_met() -> None:
    seeds = TARGETS["case files"].seeds()
    met = {fed("case files", mangled_document(seeds, Random(number))) for number in range(120)}
    assert met == {TAKEN, REFUSED}


def test_whatever_a_case_file_may_hold_can_be_drafted() -> None:
    seeds = TARGETS["case files"].seeds()
    drafted = 0
    for number in range(DRAFTED * 10):
        try:
            file = CaseFile.parsed(HERE, mangled_document(seeds, Random(number)))
        except UserError:
            continue
        packet = build(file.case, TODAY)
        assert packet.html()
        assert not [one.id for one in packet.brief.findings if one.outcome == "could_not_be_checked"]
        drafted += 1
        if drafted == DRAFTED:
            return
    raise AssertionError("too few of them could be read")
