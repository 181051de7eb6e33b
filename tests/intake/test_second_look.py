"""What looks like a slip is asked about; what people truly answer is not."""

import pytest

from firstpaper.facts import Case
from firstpaper.facts.choices import Danger
from firstpaper.intake import asking, read_answer
from firstpaper.intake.habits import written_in_it
from firstpaper.intake.second_look import doubt
from firstpaper.locale import speaking
from firstpaper.locale.catalogs import catalog_parts
from firstpaper.locale.po import messages
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


FOR_THE_COURT = ("support.other", "requests.other", "custody.plan", "custody.other_words", "uccjea.claims")


@pytest.mark.parametrize("key", FOR_THE_COURT)
@pytest.mark.parametrize(
    "typed",
    [
        "Quiero quedarme en la casa con mis hijos",
        "que el otro padre pague la escuela",
        "Manutención de los abuelos",
        "pido que no se acerque a la escuela de los niños",
    ],
)
def test_words_for_the_court_in_spanish_are_asked_about_once(key: str, typed: str) -> None:
    with speaking("es"):
        assert look(key, typed)
    assert look(key, typed) is None


@pytest.mark.parametrize(
    ("key", "typed"),
    [
        ("support.other", "Two years of support, paid on the first of each month"),
        ("requests.other", "The account at Banco Los Andes in De La Cruz Street"),
        ("custody.plan", "Weekends from Friday to Sunday at El Monte, and school days with me"),
        ("petitioner.other_names", "María de la Luz Pérez"),
        ("support.grown_who", "Ana de la Cruz"),
        ("asset.1.documents", "la escritura de la casa"),
    ],
)
def test_english_words_names_and_private_notes_are_not(key: str, typed: str) -> None:
    with speaking("es"):
        assert look(key, typed) is None


def test_the_sentences_of_the_catalog_tell_the_two_languages_apart() -> None:
    """All that the program says in both, where it is a sentence."""
    told = messages(catalog_parts("es")).items()
    both = [(en, one.said[0]) for (_context, en), one in told if len(en.split()) > 9 and one.is_said]
    assert len(both) > 2000
    with speaking("es"):
        taken_for_spanish = [en for en, _es in both if written_in_it(en)]
        missed = [es for _en, es in both if not written_in_it(es)]
    assert len(taken_for_spanish) < 0.001 * len(both), taken_for_spanish
    assert len(missed) < 0.03 * len(both), missed
