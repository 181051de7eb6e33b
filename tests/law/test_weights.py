"""How much a finding matters is chosen and explained, rule by rule."""

from pathlib import Path

import firstpaper
from firstpaper.data_files import read_file
from firstpaper.law.finding import Weight
from firstpaper.law.register import all_rules
from tests.law.rule_cases import RULE_CASES

WEIGHTS = Path(firstpaper.__file__).parents[2] / "docs" / "weights.yaml"


def test_every_rule_says_why_it_weighs_what_it_weighs() -> None:
    because = read_file(WEIGHTS)

    assert because.keys() == all_rules().keys(), because.keys() ^ all_rules().keys()
    assert all(why.endswith(".") and len(why.split()) > 3 for why in because.values())


def test_only_law_that_was_read_stops_a_filing() -> None:
    for one in RULE_CASES:
        for finding in all_rules()[one.rule].apply(one.case, one.on):
            assert finding.weight is not Weight.STOP or finding.certainty.confirmed, (one.name, finding.says)
