"""How the program is removed: told by how it came here; case files stay, and how to erase them is said."""

import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from typer._completion_shared import install_bash, install_fish, install_zsh

from firstpaper.cli.installed import How, installed, tab_key_files
from tests.cli.person import Ran, flat

Run = Callable[..., Ran]


def test_it_names_the_case_files_and_how_to_erase_them_and_removes_nothing(
    run: Run, home: Path, tmp_path: Path
) -> None:
    (tmp_path / "below").mkdir()
    (tmp_path / "below" / "Pat's.case").write_bytes(home.read_bytes())
    before = sorted(tmp_path.rglob("*"))
    said = run("uninstall").out
    assert "firstpaper erase home.case" in said
    assert """firstpaper erase 'below/Pat'"'"'s.case'""" in said
    assert "pip uninstall firstpaper" in said
    assert "Nothing was removed" in flat(said)
    assert sorted(tmp_path.rglob("*")) == before


def test_a_folder_without_cases_says_where_else_to_look(run: Run, tmp_path: Path) -> None:
    (tmp_path / "none").mkdir()
    assert "No case file was found here" in run("uninstall", "none").out


@pytest.mark.parametrize(
    ("left_there", "how", "command"),
    [
        ("pipx_metadata.json", How.PIPX, "pipx uninstall firstpaper"),
        ("uv-receipt.toml", How.UV, "uv tool uninstall firstpaper"),
        ("pyvenv.cfg", How.PIP, f"{sys.executable} -m pip uninstall firstpaper"),
    ],
)
def test_the_command_is_that_of_what_installed_it(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, left_there: str, how: How, command: str
) -> None:
    (tmp_path / left_there).touch()
    monkeypatch.setattr(sys, "prefix", str(tmp_path))
    assert (installed().how, " ".join(installed().command)) == (how, command)


def test_a_folder_that_needs_no_python_is_removed_by_hand(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(sys, "executable", str(tmp_path / "firstpaper"))
    assert installed() == (How.FOLDER, tmp_path, ())


def test_what_the_tab_key_was_given_is_found(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("HOME", str(tmp_path))
    (tmp_path / ".bashrc").write_text("alias ll=ls\n")
    assert tab_key_files() == []
    for install in (install_bash, install_zsh, install_fish):
        install(prog_name="firstpaper", complete_var="_FIRSTPAPER_COMPLETE", shell=install.__name__[8:])
    found = [path.relative_to(tmp_path).as_posix() for path in tab_key_files()]
    assert found == [
        ".bash_completions/firstpaper.sh",
        ".zfunc/_firstpaper",
        ".config/fish/completions/firstpaper.fish",
        ".bashrc",
    ]
