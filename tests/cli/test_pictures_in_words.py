"""The pictures of the packet, said in sentences by `check` and `dates`: only when asked for."""

from collections.abc import Callable
from pathlib import Path

from firstpaper.casefile import CaseFile
from tests.cli.person import Ran, facts_of, flat

Run = Callable[..., Ran]
HEAD = "WHAT THE PICTURES OF THE PACKET SHOW"
ON = "2026-11-25"


def test_they_are_silent_unless_asked_for(run: Run, home: Path) -> None:
    for command in ("check", "dates"):
        ran = run(command, "home.case", "--on", ON)
        assert HEAD not in ran.out
        assert run(command, "home.case", "--json", "--on", ON).envelope["data"]["pictures"] == []


def test_check_says_how_long_each_has_lived_here_and_the_days(run: Run, home: Path) -> None:
    CaseFile(facts_of("two-children-moved-county")).save(home)
    said = flat(run("check", "home.case", "--pictures", "--on", ON).out)
    after = said.partition(HEAD)[2]
    assert "You have lived in Santa Barbara County since Wed, Sep 16, 2026." in after  # Fam. Code 2320(a)
    assert "For Hector Quintero, no time in Santa Barbara County can be counted." in after
    assert "You plan to file on Thu, Dec 17, 2026." in after  # the first day that is right for it


def test_check_says_where_the_children_have_lived_but_no_hidden_place(run: Run, home: Path) -> None:
    CaseFile(facts_of("address-must-stay-hidden")).save(home)
    after = flat(run("check", "home.case", "--pictures", "--on", ON).out).partition(HEAD)[2]
    assert "This picture shows the homes of Sofia Markova" in after
    assert "Sacramento" not in after


def test_dates_says_what_happened_and_what_lies_ahead(run: Run, home: Path) -> None:
    run("record", "home.case", "filed", "day=11/20/2026", "--on", ON)
    run("record", "home.case", "served", "method=personal", "day=11/24/2026", "--on", ON)
    ran = run("dates", "home.case", "--pictures", "--on", ON)
    after = flat(ran.out).partition(HEAD)[2]
    assert "The petition was filed on Fri, Nov 20, 2026." in after
    assert "The other side has until Thu, Dec 24, 2026 to respond." in after  # Fam. Code 2020
    assert max(map(len, ran.out.splitlines())) <= 80
    assert not set("|+=#*█") & set(after)
