"""The table of the first filing, the questions it hangs on, the last checks, and what single courts want.

Which form goes in which filing: Fam. Code 2330, 3429; Cal. Rules of Court, rule 5.50, 5.52, 5.60(a).
What a clerk may not refuse: Cal. Rules of Court, rule 1.42, 2.118(b), 2.135; Gov. Code 68634(b).
"""

import inspect
import re
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings

from firstpaper.facts import Case
from firstpaper.facts.counties import COUNTIES
from firstpaper.forms import when
from firstpaper.forms.asking import question
from firstpaper.forms.clerk import counter, last_checks
from firstpaper.forms.filing import Filing
from firstpaper.forms.local_forms import all_local_papers, local_papers
from firstpaper.forms.needed import Goes, forms_needed, table
from tests.any_case import any_case, filing_days
from tests.words.reading import barred_words, grade

ON = date(2026, 12, 1)
DATA = [path.read_text("utf-8") for path in Path(when.__file__).parent.rglob("*.yaml")]


def case(**facts: Any) -> Case:
    return Case.model_validate(facts)


def public() -> dict[str, Any]:
    return {
        name: function
        for name, function in inspect.getmembers(when, inspect.isfunction)
        if function.__module__ == when.__name__ and not name.startswith("_")
    }


def test_every_question_is_named_by_some_row_and_every_row_names_one() -> None:
    named = {name for text in DATA for name in re.findall(r"^\s*when: (\w+)$", text, re.MULTILINE)}
    assert named == set(public())
    assert all(function.__doc__ for function in public().values())


@pytest.mark.parametrize("name", ["_adds", "known", "date", "no_such_question", "Kind"])
def test_only_a_question_can_be_named(name: str) -> None:
    with pytest.raises(LookupError, match=name):
        question(name)


def test_each_row_is_filed_served_kept_or_asked_about() -> None:
    for row in table():
        assert row.goes in set(Goes)
        assert not (row.served and row.goes not in (Goes.FILE, Goes.ASK))
        assert bool(row.ask) or row.goes != Goes.ASK or not row.form
        assert row.ask == "" or row.ask.endswith("?")


@settings(max_examples=200, deadline=None)
@given(any_case(), filing_days())
def test_rows_of_one_form_never_apply_twice_for_one_use(filed: Case, on: date) -> None:
    labels = [each.label for each in forms_needed(filed, on)]
    assert len(labels) == len(set(labels))


@settings(max_examples=150, deadline=None)
@given(any_case(), filing_days())
def test_the_last_checks_fit_the_case(filed: Case, on: date) -> None:
    checks = [one.check for one in last_checks(filed, on)]
    amended = filed.matter.amended is True
    assert ("The case number is empty. The court gives it." in checks) is not amended
    assert ("The case number stands on every page." in checks) is amended
    assert any("FL-100 is signed" in check for check in checks)
    let_off = any("FW-001 and FW-003" in check for check in checks)
    assert ("You have the fee with you." in checks) is not (let_off or amended)


def test_a_clerk_may_not_refuse_for_what_the_rules_name() -> None:
    named = " ".join(one.authority for one in counter().may_not_refuse)
    for authority in ("1.42", "2.135", "2.118(b)", "68634(b)"):
        assert authority in named


def test_the_words_of_the_tables_read_easily() -> None:
    words = [text for filing in Filing for row in table(filing) for text in row.words] + list(counter().words)
    assert grade(words) <= 7
    assert [text for text in words if barred_words(text)] == []


def test_single_courts_are_counties_of_california_with_a_source_and_a_day() -> None:
    assert set(all_local_papers()) <= set(COUNTIES)
    for papers in all_local_papers().values():
        for paper in papers:
            assert paper.says.endswith(".")
            assert paper.source
            assert paper.checked_on <= date(2026, 12, 31)


def test_a_county_of_which_we_know_nothing_has_nothing() -> None:
    assert local_papers("Alpine") == local_papers(None) == ()
    assert [paper.number for paper in local_papers("San Diego")] == ["D-049"]


@pytest.mark.parametrize(
    ("facts", "form", "goes"),
    [
        ({"children": {"family": ["unborn_together"]}}, "FL-105", Goes.ASK),
        ({"children": {"family": ["minor_together"], "how_many": 1}}, "FL-105", Goes.FILE),
        ({"matter": {"kind": "nullity"}}, "FL-140", Goes.ASK),
        ({"matter": {"kind": "dissolution"}}, "FL-140", Goes.SERVE),
        ({"safety": {"dangers": ["violence"]}}, "DV-100", Goes.ASK),
        ({"people": {"special": ["interpreter"]}}, "INT-300", Goes.ASK),
    ],
)
def test_the_same_form_may_be_filed_served_or_only_asked_about(facts: dict, form: str, goes: Goes) -> None:
    (found,) = [each for each in forms_needed(case(**facts), ON) if each.label == form]
    assert found.goes is goes
    assert bool(found.ask) is (goes is Goes.ASK)
