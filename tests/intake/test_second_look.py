"""What looks like a slip is asked about; what people truly answer is not."""

import pytest

from firstpaper.facts import Case
from firstpaper.facts.choices import Danger
from firstpaper.intake import asking, read_answer
from firstpaper.intake.second_look import doubt
from tests.intake.small_bank import TODAY

SLIPS = {
    "petitioner.name": (
        "firstpaper packet home.case",
        "josé maría o'neil-garcía jr",
        "DANA OKAFOR",
        "Dana",
        "Dana 2",
    ),
    "respondent.name": ("my wife", "My husband", "unknown", "him"),
    "requests.former_name": ("dana",),
    "respondent.other_names": ("september 3 2011", "Dana Soto\nmy ex"),
    "child.1.name": ("my son", "lucia soto"),
    "child.1.address": ("PO Box 118, Fresno, CA 93701",),
    "petitioner.phone": ("jose@", "no phone"),
    "petitioner.email": ("jose@", "@example.org", "jose"),
    "dates.married_place": ("3/15/26", "the 14th of june 2012", "LA"),
    "child.1.birthplace": ("yes", "no."),
    "dates.married_on": ("June 2016", "2016", "about 2016"),
    "child.1.born_on": ("March 2019",),
    "support.other": ("firstpaper packet new.case --amends mine.case", "1", "y", "yes", " 2. "),
    "requests.other": ("1", "x"),
    "custody.other_words": ("3",),
}
MEANT = {
    "petitioner.name": ("Dana Marie Okafor", "Nguyễn Thị Mai", "María-José O'Neil, Jr."),
    "petitioner.phone": ("(559) 555-0142", "none"),
    "petitioner.email": ("maria.soto@example.org",),
    "dates.married_place": ("Fresno County, California",),
    "child.1.birthplace": ("Lima", "Fresno, CA"),
    "dates.married_on": ("6/14/2016", "about 6/14/2016", "don't know"),
    "residence.petitioner.state_since": ("2009",),
    "support.other": ("Two years of support", "no", "none"),
    "respondent.name": ("don't know",),
    "respondent.other_names": ("Soto", "Dana Soto\nDana Reyes", "none"),
}


def look(key: str, typed: str, case: Case = Case.nothing()) -> str | None:  # noqa: B008
    one = asking(key, case)
    assert one
    return doubt(one, typed, read_answer(one, typed, TODAY))


@pytest.mark.parametrize(("key", "typed"), [(key, typed) for key, all_ in SLIPS.items() for typed in all_])
def test_a_slip_is_asked_about(key: str, typed: str) -> None:
    assert look(key, typed)


@pytest.mark.parametrize(("key", "typed"), [(key, typed) for key, all_ in MEANT.items() for typed in all_])
def test_what_is_plainly_meant_is_not(key: str, typed: str) -> None:
    assert look(key, typed) is None


@pytest.mark.parametrize(
    ("county", "lives", "odd"),
    [("Fresno", "5", True), ("Fresno", "2", False), ("", "1", True), ("", "4", False), (None, "5", False)],
)
def test_a_home_elsewhere_than_the_county_told_before_is_asked_about(
    county: str | None, lives: str, odd: bool
) -> None:
    told = Case().with_fact("residence.petitioner.own_county", county)
    assert bool(look("residence.petitioner.lives", lives, told)) is odd


@pytest.mark.parametrize("danger", [Danger.HIDE_ADDRESS, Danger.FLED])
def test_somebody_in_hiding_is_asked_whether_a_street_is_where_they_sleep(danger: Danger) -> None:
    hiding = Case().with_fact("safety.dangers", (danger,))
    words = look("petitioner.mailing", "55 Hidden Lane, Redding, CA 96001", hiding)
    assert words
    assert "Is this where you sleep?" in words
    assert look("petitioner.mailing", "PO Box 118, Fresno, CA 93701", hiding) is None
    assert look("petitioner.mailing", "55 Hidden Lane, Redding, CA 96001") is None
