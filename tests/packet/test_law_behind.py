"""A worksheet says of a section that was not read in the law itself that it is not confirmed."""

import pytest

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.law.source import cited
from firstpaper.packet.views.law_behind import law_behind

IN_DOUBT = " (law not confirmed)"


def behind(authority: str) -> str:
    answer = ItemAnswer("FL-100", "2020-01-01", 2, "6c", "x", "Visits", Action.MARK, "", "", authority, "")
    return law_behind(answer)


@pytest.mark.parametrize(
    "authority", ["Fam. Code 2330(b)", "Cal. Rules of Court, rule 5.52", "Fam. Code 4335, 4336"]
)
def test_what_was_read_stands_alone(authority: str) -> None:
    assert behind(authority) == authority


@pytest.mark.parametrize("authority", ["Fam. Code 3100", "Code Civ. Proc. 412.30, 417.10(a)"])
def test_what_was_not_says_so(authority: str) -> None:
    assert not all(one.source.certainty.confirmed for one in cited(authority))
    assert behind(authority) == authority + IN_DOUBT


def test_common_practice_says_by_its_name_that_it_is_no_law() -> None:
    assert behind("common practice") == ""
    assert behind("Fam. Code 2104; common practice") == "Fam. Code 2104; common practice"
