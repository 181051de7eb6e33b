"""A worksheet in another language: the lines of the English one, the words to copy, and what they mean."""

import pytest

from firstpaper.facts import Case, Day
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.saying import about
from firstpaper.locale import speaking, unmarked
from firstpaper.packet import build
from firstpaper.packet.brief import brief
from firstpaper.packet.views import worksheet
from firstpaper.packet.views.grids import Grid
from firstpaper.packet.views.worksheet import Row
from tests.each import one_by_one
from tests.households.golden import Household
from tests.packet.drawn import ALL, household
from tests.packet.reading_pdf import page_words


def _lines(one: Household, language: str) -> list[Row | Grid]:
    with speaking(language):
        sheets = worksheet.sheets(brief(one.case, one.on))
        sections = [section for sheet in sheets for section in sheet.values["sections"]]  # type: ignore[attr-defined]
        return [row for section in sections for row in section.rows]


def _shape(line: Row | Grid) -> object:
    if isinstance(line, Grid):
        return tuple(row.pieces for row in line.rows)
    return line.kind, len(line.labels), len(line.boxes), len(line.lines)


@one_by_one(ALL)
def test_the_lines_of_a_worksheet_are_those_of_the_english_one(one: Household) -> None:
    assert [_shape(line) for line in _lines(one, "es")] == [_shape(line) for line in _lines(one, "en")]


def _copied(one: Household, language: str) -> dict[str, str]:
    """The words to copy with what they mean."""
    lines = _lines(one, language)
    return {unmarked(" ".join(line.lines)): line.meaning for line in lines if isinstance(line, Row)}


def test_words_of_ours_are_copied_in_english_with_what_they_mean_beside() -> None:
    one = household("he-is-in-prison")
    told = _copied(one, "es")
    (ours,) = (
        words for words in told if words.startswith("All property and debts from before the marriage:")
    )
    assert told[ours].startswith(
        "Todos los bienes y deudas de antes del matrimonio: para la parte que los tenía."
    )
    (not_yet_known,) = (words for words in told if "They include: household goods and debts." in words)
    assert "Entre otras cosas: cosas de la casa y deudas." in told[not_yet_known]
    assert not any(_copied(one, "en").values())


def test_what_a_person_typed_is_not_translated() -> None:
    told = _copied(household("a-grown-son-who-cannot-earn"), "es")
    assert told["See Attachment 7d."].endswith("(Fam. Code 3910): Simon Castellan.")


def test_a_day_known_in_part_is_told_in_both_languages() -> None:
    day = Day.parse("2010-06")
    with speaking("es"):
        assert (about(day), meaning(lambda: about(day))) == ("about June 2010", "alrededor de junio de 2010")
        assert filed("present") == "present"
    with speaking("en"):
        assert meaning(lambda: about(day)) == ""


def test_the_words_of_ours_in_a_table_are_explained_under_it() -> None:
    told = [
        line.meaning
        for line in _lines(household("lists-on-the-courts-own-form"), "es")
        if isinstance(line, Grid)
    ]
    assert any("present: hasta hoy" in unmarked(words) for words in told)


@pytest.mark.parametrize(("language", "said"), [("es", True), ("en", False)])
def test_the_order_of_a_date_is_told_where_another_one_is_usual(language: str, said: bool) -> None:
    one = household("plain-childless-divorce")
    with speaking(language):
        petition, summons, *_others = worksheet.sheets(brief(one.case, one.on))
        words = " ".join(petition.values["cautions"])  # type: ignore[arg-type]
        assert ("mes/día/año" in words) is said
        assert "mes/día/año" not in " ".join(summons.values["cautions"])  # type: ignore[arg-type]


def test_an_empty_case_has_no_words_of_ours_to_explain() -> None:
    with speaking("es"):
        sheets = worksheet.sheets(brief(Case(), household("plain-childless-divorce").on))
        rows = [row for sheet in sheets for section in sheet.values["sections"] for row in section.rows]  # type: ignore[attr-defined]
    assert {row.meaning for row in rows} <= {"", "por su propia cuenta, sin abogado o abogada."}


def test_the_heads_of_columns_are_not_broken_inside_a_word() -> None:
    one = household("two-children-moved-county")
    with speaking("es"):
        words = set(" ".join(page_words(build(one.case, one.on).pdf())).split())
    assert {"Formulario", "Punto"} <= words
    assert not {"Formulari", "Punt"} & words
