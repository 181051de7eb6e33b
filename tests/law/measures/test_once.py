"""A measure worked out once for a case: the same answer for that case, those arguments and that language."""

from collections.abc import Callable
from datetime import date

from firstpaper.facts import Case
from firstpaper.law.measures.once import once_a_case
from firstpaper.locale import language, speaking

ON = date(2026, 11, 30)


def counted() -> tuple[list[Case], Callable[..., tuple[str, date, bool, str]]]:
    asked: list[Case] = []

    @once_a_case
    def measure(case: Case, on: date, *, twice: bool = False) -> tuple[str, date, bool, str]:
        asked.append(case)
        return case.petitioner.name or "", on, twice, language()

    return asked, measure


def test_it_is_worked_out_once_for_a_case_and_its_arguments() -> None:
    asked, measure = counted()
    case = Case().with_fact("petitioner.name", "Dana Okafor")
    assert measure(case, ON) == measure(case, ON) == ("Dana Okafor", ON, False, "en")
    assert len(asked) == 1
    assert measure(case, date(2027, 1, 4))[1] == date(2027, 1, 4)
    assert measure(case, ON, twice=True)[2]
    assert len(asked) == 3


def test_of_another_case_nothing_is_kept() -> None:
    asked, measure = counted()
    one, other = (Case().with_fact("petitioner.name", name) for name in ("Dana Okafor", "Lee Ito"))
    assert [measure(each, ON)[0] for each in (one, other, one)] == ["Dana Okafor", "Lee Ito", "Dana Okafor"]
    assert len(asked) == 3


def test_a_case_that_is_equal_is_another_case() -> None:
    asked, measure = counted()
    assert measure(Case(), ON) == measure(Case(), ON)
    assert len(asked) == 2


def test_what_was_said_in_one_language_is_not_said_in_another() -> None:
    _asked, measure = counted()
    case = Case()
    assert measure(case, ON)[3] == "en"
    with speaking("es"):
        assert measure(case, ON)[3] == "es"
    assert measure(case, ON)[3] == "en"
