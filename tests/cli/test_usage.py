"""Command lines that cannot be understood, and what the Tab key offers."""

from collections.abc import Callable
from pathlib import Path

import pytest

from firstpaper import errors
from firstpaper.casefile import CaseFile
from tests.cli.person import Ran

Run = Callable[..., Ran]

WRONG = {
    "no command": (["chek"], "Did you mean check?"),
    "no option": (["check", "--stepz"], "Close to it: --steps"),
    "no choice": (["packet", "--part", "middle"], "must be one of these: first, later, all."),
    "no number": (["shelf", "--due", "soon"], "must be a whole number"),
    "too small": (["shelf", "--due", "-1"], "must be at least 0"),
    "too large": (["shelf", "--due", "99999"], "can be 3660 at most"),
    "too many": (["dates", "a.case", "b.case"], "more words than this command takes"),
    "missing": (["amend", "a.case"], "Something is missing: NEW"),
    "no value": (["undo", "--passphrase-from"], "needs a value"),
    "before": (["--nothing", "check"], "no such option"),
}


@pytest.mark.parametrize("way", WRONG)
def test_a_wrong_command_line_is_answered_in_our_words_and_in_json(run: Run, way: str) -> None:
    words, said = WRONG[way]
    ran = run(*words)
    assert ran.exit == 2
    assert ran.out == ""
    assert said in ran.said
    assert "--help" in ran.said
    assert not [part for part in ("Usage:", "Error:", "Value error", "Input should") if part in ran.err]
    ran = run(*words, "--json") if way != "no value" else run("--json", *words)
    if way == "no value":
        return
    assert ran.exit == 2
    (error,) = ran.envelope["errors"]
    assert error["code"] == ("usage_of_program" if way in ("no command", "before") else "usage")


def test_what_was_typed_is_not_repeated(run: Run) -> None:
    for words in (["Rosalind"], ["packet", "--part", "Rosalind"], ["dates", "a", "Rosalind"]):
        assert "Rosalind" not in run(*words).said


def offered(run: Run, *words: str) -> list[str]:
    """What Tab offers in bash for the last of these words."""
    line = " ".join(["firstpaper", *words])
    asked = {"_FIRSTPAPER_COMPLETE": "complete_bash", "COMP_WORDS": line, "COMP_CWORD": str(len(words))}
    return run(**asked).out.split()


def test_the_tab_key_completes_commands_options_names_and_choices(run: Run, home: Path) -> None:
    CaseFile.load(home).save(home.with_name("other.case"))
    assert offered(run, "rec") == ["record"]
    assert "--require-complete" in offered(run, "check", "--req")
    assert offered(run, "change", "petitioner.ph") == ["petitioner.phone"]
    assert offered(run, "change", "matter.kind=") == [
        f"matter.kind={one}" for one in ("dissolution", "legal_separation", "nullity")
    ]
    assert offered(run, "record", "home.case", "dismissa") == ["dismissal"]
    assert offered(run, "record", "other.c") == ["other.case"]
    assert offered(run, "schedule", "home.case", "add", "asset", "acq") == ["acquired_on="]
    assert offered(run, "shelf", "--stage", "ser") == ["served"]


def test_the_tab_key_shows_short_lists_before_a_letter_is_typed(run: Run) -> None:
    assert "served" in offered(run, "shelf", "--stage", "")
    assert offered(run, "shelf", "--stage", "ser") == ["served"]


def test_help_names_what_to_type_and_no_type_of_python(run: Run) -> None:
    for name, usage in (
        ("check", "[OPTIONS] [CASE]..."),
        ("enter", "[OPTIONS] [CASE]... FACTS"),
        ("amend", "[OPTIONS] EARLIER NEW"),
        ("show", "[OPTIONS] [CASE]"),
    ):
        shown = run(name, "--help").out
        assert f"Usage: firstpaper {name} {usage}\n" in shown
        assert "<" not in shown


@pytest.mark.parametrize("shell", ["bash", "zsh", "fish"])
def test_the_lines_for_a_shell_are_shown_or_put_in_place(run: Run, tmp_path: Path, shell: str) -> None:
    assert "_FIRSTPAPER_COMPLETE" in run("--show-completion", shell).out
    ran = run("--install-completion", shell, HOME=str(tmp_path))
    assert ran.exit == 0
    assert "from the next window on" in ran.out
    assert [one for one in tmp_path.rglob("*") if one.is_file()]


def test_a_hint_is_quoted_as_the_shell_of_the_system_reads_it(monkeypatch: pytest.MonkeyPatch) -> None:
    assert errors.quoted("O'Brien, Pat.case") == "'O'\"'\"'Brien, Pat.case'"
    monkeypatch.setattr("firstpaper.errors.os.name", "nt")
    assert errors.quoted("O'Brien, Pat.case") == '"O\'Brien, Pat.case"'
    assert errors.quoted(r"C:\Users\pat\26-1.case") == r"C:\Users\pat\26-1.case"
