"""What listed things and debts are taken to be: a table of cases, and what must hold for any case."""

from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.choices import (
    Acquired,
    AssetKind,
    DebtKind,
    DebtPurpose,
    LivedIn,
    MoneySource,
    TitleForm,
    Who,
)
from firstpaper.law.measures.character import (
    Character,
    Code,
    Confidence,
    Point,
    asset_character,
    asset_characters,
    debt_character,
    debt_characters,
)
from firstpaper.law.measures.character.assets import ASSETS
from firstpaper.law.measures.character.debts import DEBTS
from tests.law.rule_cases import laid_over

TABLE = yaml.safe_load((Path(__file__).parent / "character.yaml").read_text("utf-8"))
ON: date = TABLE["day"]
TAGS = {"statute", "opinion", "secondary", "derived", "memory"}
MARRIED, PARTED = date(2010, 6, 1), date(2024, 6, 1)
ONE_DAY = timedelta(days=1)


def facts_of(one: Mapping[str, Any]) -> dict[str, Any]:
    shared = laid_over(TABLE["base"], one.get("base", {}))
    return {**shared, **{kind: [one[kind]] for kind in ("asset", "debt") if kind in one}}


def character_of(case: Case) -> Character:
    (found,) = (*asset_characters(case, ON), *debt_characters(case, ON))
    return found


CASES = [pytest.param(one, id=name) for name, one in TABLE["cases"].items()]


@pytest.mark.parametrize("one", CASES)
def test_the_table_says_what_the_case_expects(one: Mapping[str, Any]) -> None:
    found = character_of(Case.model_validate(facts_of(one)))

    assert found.code == one["code"], [reason.says for reason in found.reasons]
    assert found.confidence == one.get("confidence", found.confidence)
    assert {str(flag.point) for flag in found.flags} >= set(one.get("flags", ()))
    assert found.missing == tuple(one.get("missing", found.missing))
    assert found.starts_as == one.get("starts_as", found.starts_as)
    alternatives = {each.value: list(each.codes) for each in found.alternatives}
    assert alternatives == one.get("alternatives", alternatives)
    cited = [cite for reason in found.reasons for cite in reason.cite]
    cited += [cite for flag in found.flags for cite in flag.cite]
    assert any(one["authority"] in cite for cite in cited) or (not one["authority"] and not cited), cited


@pytest.mark.parametrize("one", CASES)
def test_every_answer_is_worded_as_what_a_court_may_change(one: Mapping[str, Any]) -> None:
    found = character_of(Case.model_validate(facts_of(one)))

    assert one["tag"] in TAGS
    assert found.court.endswith(".")
    assert all(reason.says.endswith(".") for reason in found.reasons)
    assert all(flag.says.endswith(".") and flag.cite for flag in found.flags)
    assert (found.code is Code.UNKNOWN) == (found.confidence is Confidence.OPEN)
    case = Case.model_validate(facts_of(one))
    for key in found.missing:
        case.fact(key)  # KeyError for a key nobody knows


def test_every_row_of_both_tables_decides_a_case() -> None:
    rows = {row.name for table in (ASSETS, DEBTS) for row in table.rows}
    characters = [character_of(Case.model_validate(facts_of(one))) for one in TABLE["cases"].values()]

    assert rows <= {reason.row for each in characters for reason in each.reasons}


def test_every_point_is_raised_by_a_case() -> None:
    characters = [character_of(Case.model_validate(facts_of(one))) for one in TABLE["cases"].values()]

    assert set(Point) == {flag.point for each in characters for flag in each.flags}


def test_every_row_has_an_authority_and_a_sentence() -> None:
    for table in (ASSETS, DEBTS):
        names = [row.name for row in table.rows]
        assert len(set(names)) == len(names)
        assert all(row.cite and (row.check.__doc__ or "").endswith(".") for row in table.rows)


@pytest.mark.parametrize(
    ("paid_on", "presumes"),
    [
        ("2016-11-24", "have had the good of it already, so"),
        ("2016-11-25", "If it was paid more than 10 years"),
        ("2016-11-26", "have not had the good of it yet"),
        ("2016", "If it was paid more than 10 years"),
    ],
)
def test_the_presumption_on_training_turns_ten_years_before_filing(paid_on: str, presumes: str) -> None:
    """Fam. Code 2641(c)(1): less than, and more than, ten years; exactly ten is neither."""
    training = {"kind": "other", "how": "training", "by": "petitioner", "acquired_on": paid_on}
    (flag,) = asset_character(_case(training), 1, ON).flags
    assert presumes in flag.says


# What must hold for any case

_YES_NO = st.booleans()
_DAYS = st.dates(date(2006, 1, 1), date(2026, 11, 25)).map(str)
_ASSET = st.fixed_dictionaries(
    {
        "kind": st.sampled_from(list(AssetKind)),
        "how": st.sampled_from([how for how in Acquired if how is not Acquired.OWNED_BEFORE]),
        "acquired_on": _DAYS,
        "by": st.sampled_from(list(Who)),
        "title": st.sampled_from(list(TitleForm)),
        "source": st.sampled_from(list(MoneySource)),
        "lived_in": st.sampled_from(list(LivedIn)),
        "earned_from": _DAYS,
        "earned_until": _DAYS,
        **dict.fromkeys(
            (
                "still_earning",
                "traced",
                "mixed",
                "agreement",
                "worked_in",
                "changes_need_both",
                "used_by_one",
                "substantial",
                "living_apart",
                "hurt_by_spouse",
            ),
            _YES_NO,
        ),
    }
)
_ASSET = _ASSET.map(lambda asset: {**asset, "earned_until": None} if asset["still_earning"] else asset)
"""A thing of which everything is told, and nothing against something else."""

_DEBT = st.fixed_dictionaries(
    {
        "kind": st.sampled_from(list(DebtKind)),
        "incurred_on": _DAYS,
        "by": st.sampled_from(list(Who)),
        "purpose": st.sampled_from(list(DebtPurpose)),
        "for_family": _YES_NO,
        "agreement": _YES_NO,
    }
)
GENERAL: dict[str, Any] = {
    "matter.kind": "dissolution",
    "dates.married_on": str(MARRIED),
    "dates.separation_told_on": str(PARTED),
    "dates.separation_acted_on": str(PARTED),
    "schedule.support_arranged": False,
}


def _case(
    asset: Mapping[str, Any] | None = None, debt: Mapping[str, Any] | None = None, **facts: Any
) -> Case:
    rows = {"asset": [asset] if asset else [], "debt": [debt] if debt else []}
    case = Case.model_validate({**rows, "schedule": {"agreement": False, "in_california": True}})
    for key, value in {**GENERAL, **facts}.items():
        case = case.with_fact(key, value)
    return case


@settings(deadline=None)
@given(_ASSET, st.data())
def test_what_is_not_known_never_makes_an_answer_firmer(asset: dict[str, Any], data: st.DataObject) -> None:
    case = _case(asset)
    before = asset_character(case, 1, ON)
    keys = [*(f"asset.1.{name}" for name in asset), *GENERAL, "asset.1.agreement"]
    unknown = data.draw(st.lists(st.sampled_from(keys), min_size=1, max_size=5, unique=True))
    for key in unknown:
        case = case.with_fact(key, DONT_KNOW)
        after = asset_character(case, 1, ON)
        assert after.confidence.firmness <= before.confidence.firmness, (key, before, after)
        before = after


@settings(deadline=None)
@given(_DEBT, st.data())
def test_a_debt_is_never_firmer_for_what_is_not_known(debt: dict[str, Any], data: st.DataObject) -> None:
    case = _case(debt=debt)
    before = debt_character(case, 1, ON)
    unknown = data.draw(
        st.lists(
            st.sampled_from([*(f"debt.1.{name}" for name in debt), *GENERAL]),
            min_size=1,
            max_size=4,
            unique=True,
        )
    )
    for key in unknown:
        case = case.with_fact(key, DONT_KNOW)
        after = debt_character(case, 1, ON)
        assert after.confidence.firmness <= before.confidence.firmness, (key, before, after)
        before = after


_OTHER = {
    "petitioner": "respondent",
    "respondent": "petitioner",
    "petitioner_separate": "respondent_separate",
    "respondent_separate": "petitioner_separate",
}


def _swapped(facts: Mapping[str, Any]) -> dict[str, Any]:
    return {name: _OTHER.get(str(value), value) for name, value in facts.items()}


@settings(deadline=None)
@given(_ASSET, _DEBT, st.sets(st.sampled_from(["title", "source", "traced", "mixed", "by", "acquired_on"])))
def test_swapping_the_spouses_swaps_whose_it_is_and_nothing_else(
    asset: dict[str, Any], debt: dict[str, Any], unknown: set[str]
) -> None:
    asset = {name: DONT_KNOW if name in unknown else value for name, value in asset.items()}
    one, two = _case(asset, debt), _case(_swapped(asset), _swapped(debt))
    for character in (asset_character, debt_character):
        here, there = character(one, 1, ON), character(two, 1, ON)
        assert there.code == _OTHER.get(here.code, here.code)
        assert (there.confidence, there.starts_as) == (here.confidence, here.starts_as)
        assert set(there.missing) == set(here.missing)
        assert [flag.point for flag in there.flags] == [flag.point for flag in here.flags]


@pytest.mark.parametrize(
    ("moved_over", "facts", "inside", "outside"),
    [
        ("the wedding", {"how": "earned", "mixed": False}, Code.COMMUNITY, Code.RESPONDENT_SEPARATE),
        ("the wedding", {"how": "bought", "mixed": False}, Code.COMMUNITY, Code.RESPONDENT_SEPARATE),
        ("the wedding", {"how": "bought", "mixed": True}, Code.COMMUNITY, Code.MIXED),
        ("the separation", {"how": "earned", "mixed": False}, Code.COMMUNITY, Code.RESPONDENT_SEPARATE),
        (
            "the separation",
            {"how": "stock_option", "earned_until": "2024-06-30"},
            Code.MIXED,
            Code.RESPONDENT_SEPARATE,
        ),
    ],
)
def test_moving_a_day_over_an_end_of_the_marriage_changes_the_code(
    moved_over: str, facts: dict[str, Any], inside: Code, outside: Code
) -> None:
    """Fam. Code 770(a)(1): before. Fam. Code 771(a): after, so the day of separation is still inside."""
    days = {
        "the wedding": (MARRIED + ONE_DAY, MARRIED - ONE_DAY),
        "the separation": (PARTED, PARTED + ONE_DAY),
    }
    shared = {"kind": "vehicle", "by": "respondent", "title": "respondent", "source": "community"}
    found = [
        asset_character(_case({**shared, **facts, "acquired_on": str(day)}), 1, ON).code
        for day in days[moved_over]
    ]
    assert found == [inside, outside]


@settings(deadline=None)
@given(_ASSET, st.integers(-3, 3))
def test_a_partial_day_never_says_more_than_its_days_do(asset: dict[str, Any], shift: int) -> None:
    """A month is as firm as the least firm of its days at most, and firm only where they agree."""
    month = (MARRIED if shift % 2 else PARTED) + timedelta(days=31 * shift)
    whole = {f"{month:%Y-%m}-{day:02d}" for day in (1, 15, 28)}
    assume(asset["how"] != "earned")
    each = [asset_character(_case({**asset, "acquired_on": day}), 1, ON) for day in whole]
    partial = asset_character(_case({**asset, "acquired_on": f"{month:%Y-%m}"}), 1, ON)
    assert partial.code is Code.UNKNOWN or {one.code for one in each} == {partial.code}
    assert partial.confidence.firmness <= min(one.confidence.firmness for one in each)
