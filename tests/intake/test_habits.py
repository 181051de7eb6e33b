"""What people type who write Spanish, by the rows of the glossary. No published source: common usage."""

from datetime import date
from decimal import Decimal

import pytest

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.counties import COUNTIES, county_named
from firstpaper.intake import AnswerRefused, Command, asking, command_of, read_answer
from firstpaper.intake.habits import _of, bare
from firstpaper.intake.reading.addresses import _countries, _plain, read_address
from firstpaper.locale import language, speaking

TODAY = date(2026, 11, 30)


@pytest.fixture(autouse=True)
def spanish():
    with speaking("es"):
        yield


def read(key: str, text: str):
    asked = asking(key, Case())
    assert asked is not None
    return read_answer(asked, text, TODAY)


@pytest.mark.parametrize(
    ("command", "typed"),
    [
        (Command.BACK, "atrás atras Regresar VOLVER anterior back"),
        (Command.SKIP, "saltar omitir pasar siguiente luego después despues skip"),
        (Command.HELP, "ayuda ayúdame ayúdeme ¿? help"),
        (Command.LEAVE, "salir terminar dejar cerrar adiós quit"),
        (Command.REVIEW, "revisar repasar review"),
        (Command.CHANGE, "cambiar corregir change"),
        (Command.UNDO, "deshacer quitar undo"),
    ],
)
def test_a_command_has_many_words(command: Command, typed: str) -> None:
    assert {command_of(word) for word in typed.split()} == {command}


@pytest.mark.parametrize("typed", ["por qué", "por que", "porqué", "¿Por qué?", "why"])
def test_why_is_asked_in_many_spellings(typed: str) -> None:
    assert command_of(typed) is Command.WHY


@pytest.mark.parametrize(
    "typed",
    [
        "no sé",
        "no se",
        "No se.",
        "nose",
        "no lo sé",
        "no sabemos",
        "ni idea",
        "quién sabe",
        "sepa",
        "no estoy seguro",
        "no estoy segura",
        "no me acuerdo",
        "no recuerdo",
    ],
)
@pytest.mark.parametrize("key", ["matter.amended", "petitioner.phone", "dates.married_on"])
def test_not_knowing_is_never_read_as_no(key: str, typed: str) -> None:
    assert read(key, typed) is DONT_KNOW


@pytest.mark.parametrize(
    "typed", ["sí", "si", "SI", "claro", "claro que sí", "así es", "correcto", "s", "ok"]
)
def test_yes_has_many_words(typed: str) -> None:
    assert read("matter.amended", typed) is True


@pytest.mark.parametrize("typed", ["no", "No, gracias", "nunca", "para nada", "ya no", "todavía no", "nel"])
def test_no_has_many_words(typed: str) -> None:
    assert read("matter.amended", typed.replace(",", "")) is False


@pytest.mark.parametrize("typed", ["ninguno", "ninguna", "nada", "nadie", "no hay", "no tengo", "none"])
def test_none_has_many_words(typed: str) -> None:
    assert read("petitioner.other_names", typed) == ()


FIFTH = Day(2019, 3, 5)


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("5 de marzo de 2019", FIFTH),
        ("el 5 de marzo del 2019", FIFTH),
        ("5/marzo/2019", FIFTH),
        ("5/mar/2019", FIFTH),
        ("cinco de marzo de 2019", FIFTH),
        ("cinco de marzo de dos mil diecinueve", FIFTH),
        ("martes 5 de marzo de 2019", FIFTH),
        ("marzo 5 del 2019", FIFTH),
        ("el día 5 de marzo de 2019", FIFTH),
        ("1º de marzo de 2019", Day(2019, 3, 1)),
        ("primero de marzo de 2019", Day(2019, 3, 1)),
        ("1ro de marzo de 2019", Day(2019, 3, 1)),
        ("treinta y uno de marzo de 2019", Day(2019, 3, 31)),
        ("Marzo/2019", Day(2019, 3)),
        ("marzo de 2019", Day(2019, 3)),
        ("el año 2019", Day(2019)),
        ("a mediados de 2019", Day(2019, unsure=True)),
        ("como en marzo de 2019", Day(2019, 3, unsure=True)),
        ("creo que en 2019", Day(2019, unsure=True)),
        ("hace dos meses", Day(2026, 9, unsure=True)),
        ("el mes pasado", Day(2026, 10)),
        ("el año pasado", Day(2025)),
        ("antier", Day(2026, 11, 28)),
        ("ayer", Day(2026, 11, 29)),
    ],
)
def test_a_date_is_read_as_it_is_said(typed: str, day: Day) -> None:
    assert read("dates.married_on", typed) == day


@pytest.mark.parametrize(
    ("typed", "amount"),
    [
        ("2,450.75", "2450.75"),
        ("2.450,75", "2450.75"),
        ("2450,75", "2450.75"),
        ("$2,450", "2450"),
        ("2 mil", "2000"),
        ("2mil", "2000"),
        ("mil", "1000"),
        ("2 mil 500", "2500"),
        ("como 900 dólares al mes", "900"),
        ("900 mensuales", "900"),
        ("nada", "0"),
    ],
)
def test_an_amount_is_read_with_comma_and_point(typed: str, amount: str) -> None:
    assert read("waiver.income", typed) == Decimal(amount)


@pytest.mark.parametrize("typed", ["2.450", "un billón", "900 a la quincena", "900 quincenales", "500 pesos"])
def test_an_amount_that_can_mean_two_things_is_asked_about(typed: str) -> None:
    with pytest.raises(AnswerRefused):
        read("waiver.income", typed)


@pytest.mark.parametrize(("typed", "count"), [("2 niños", 2), ("tres hijos", 3), ("un", 1), ("dos", 2)])
def test_a_count_is_read_with_what_is_counted(typed: str, count: int) -> None:
    assert read("children.how_many", typed) == count


@pytest.mark.parametrize(
    ("typed", "county"),
    [
        ("Condado de Los Ángeles", "Los Angeles"),
        ("condado de fresno", "Fresno"),
        ("San José", None),
        ("el condado de San Benito, California", "San Benito"),
    ],
)
def test_a_county_is_named_in_spanish(typed: str, county: str | None) -> None:
    if county is None:
        with pytest.raises(ValueError, match="unknown_county"):
            county_named(typed)
    else:
        assert county_named(typed) == county
    assert len({bare(name) for name in COUNTIES}) == len(COUNTIES)


def test_a_country_goes_on_the_form_in_english() -> None:
    assert read_address("Calle Olivo 1420, Guadalajara, México").state in ("México", "Mexico")
    assert read_address("12 Teheran-ro, Seúl, Corea").state == "South Korea"
    assert read_address("Calle Mayor 3, Madrid, España").state == "Spain"


def test_every_country_named_here_is_one_that_the_reader_knows() -> None:
    assert {_plain(name) for name in _of("es").countries.values()} <= _countries()


def test_english_is_read_as_before_where_english_is_spoken() -> None:
    with speaking("en"):
        assert language() == "en"
        assert command_of("pasar") is None
        assert read("petitioner.other_names", "Nadie Flores") == ("Nadie Flores",)
        with pytest.raises(AnswerRefused):
            read("waiver.income", "2.450,75")
