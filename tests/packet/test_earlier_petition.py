"""The petition that an amended one replaces is held against it as it was filed."""

from datetime import date
from typing import Any

from firstpaper.facts import Case
from firstpaper.packet.brief import Brief, brief

HOUSEHOLD: dict[str, Any] = {
    "matter": {"kind": "dissolution", "unions": ["marriage"], "amended": False},
    "dates": {"married_on": "2005-06-01"},
    "children": {"family": ["minor_together"], "how_many": 1},
    "child": [{"name": "Lucia Quintero", "born_on": "2008-08-01"}],
}
NEW = date(2026, 11, 30)


def held_against(record: dict[str, Any], matter: dict[str, Any] | None = None) -> Brief:
    told = {**HOUSEHOLD, "matter": {**HOUSEHOLD["matter"], **(matter or {})}, "record": record}
    new = {**HOUSEHOLD, "matter": {**HOUSEHOLD["matter"], "amended": True}}
    return brief(Case.model_validate(new), NEW, amends=Case.model_validate(told))


def children_of(found: Brief) -> str:
    assert found.earlier
    return " ".join(one.value for one in found.earlier.items if one.concept.startswith("children."))


def test_a_child_who_has_turned_18_since_is_still_on_the_petition_that_was_filed() -> None:
    """Fam. Code 6500: a minor is under 18; she turned 18 on August 1, 2026, after the filing."""
    found = held_against({"filed_on": "2026-06-01"})
    assert found.earlier
    assert found.earlier.filed_on == date(2026, 6, 1)
    assert "Lucia" in children_of(found)


def test_one_that_was_amended_itself_counts_from_its_own_filing() -> None:
    amended = {"amended": True, "first_filed_on": "2026-06-01"}
    found = held_against({"filed_on": "2026-06-01", "amended_on": "2026-09-01"}, amended)
    assert found.earlier
    assert found.earlier.filed_on == date(2026, 9, 1)
    assert "Lucia" not in children_of(found)


def test_a_filing_day_that_was_not_recorded_is_not_made_up() -> None:
    found = held_against({})
    assert found.earlier
    assert found.earlier.filed_on is None
    assert "Lucia" not in children_of(found)
