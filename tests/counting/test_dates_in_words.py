"""Dates in words do not depend on the computer, and can be translated whole."""

import locale as system_locale
from datetime import date, timedelta
from gettext import NullTranslations

import pytest
from babel.dates import format_date
from hypothesis import given
from hypothesis import strategies as st

from firstpaper import locale
from firstpaper.counting import month_name, short_date, spell_date, weekday_name


@given(day=st.dates(date(1900, 1, 1), date(2100, 12, 31)))
def test_the_english_agrees_with_the_common_locale_data(day: date) -> None:
    """Babel carries the Unicode locale data."""
    assert spell_date(day) == format_date(day, "full", locale="en_US")
    assert short_date(day) == format_date(day, "EEE, MMM d, y", locale="en_US")
    assert f"{weekday_name(day)} {month_name(day)}" == format_date(day, "EEEE MMMM", locale="en_US")


def test_the_language_of_the_computer_does_not_matter() -> None:
    before = system_locale.setlocale(system_locale.LC_TIME)
    try:
        system_locale.setlocale(system_locale.LC_TIME, "C")
        assert spell_date(date(2026, 11, 26)) == "Thursday, November 26, 2026"
    finally:
        system_locale.setlocale(system_locale.LC_TIME, before)


def test_the_words_and_their_order_come_from_the_catalog(monkeypatch: pytest.MonkeyPatch) -> None:
    words = {
        "{weekday}, {month} {day}, {year}": "{weekday}, {day} de {month} de {year}",
        "Thursday": "jueves",
        "November": "noviembre",
    }

    class Catalog(NullTranslations):
        def gettext(self, message: str) -> str:
            return words.get(message, message)

    monkeypatch.setattr(locale, "catalog", Catalog)
    assert spell_date(date(2026, 11, 26)) == "jueves, 26 de noviembre de 2026"


def test_every_weekday_and_month_has_its_own_name() -> None:
    year = [date(2026, 1, 1) + timedelta(days=number) for number in range(365)]
    assert len({weekday_name(day) for day in year}) == 7
    assert len({month_name(day) for day in year}) == 12
