"""Case files of every version that was released open, and one of a schema to come is refused politely.

`schemas/N/` holds files as the last version of that schema saved them. They are never changed: a file on
somebody's disk is not changed either. Those called `every-fact` tell together every fact that there was, with
every answer that could be chosen. `python -m tests.casefile.every_fact` writes them for the schema of now,
when a version is made.
"""

import json
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.errors import CaseFileTooNew
from firstpaper.casefile.reading import is_sealed
from firstpaper.casefile.upgrades import SCHEMA, renamed
from tests.casefile.every_fact import FOLDER, PASSPHRASE, every_answer, told_in

FILES = sorted(FOLDER.glob("*/*.case"))
OPEN = [one for one in FILES if not is_sealed(one.read_bytes())]


def named(path: Path) -> str:
    return f"{path.parent.name}/{path.stem}"


def facts_in(path: Path) -> dict[str, Any]:
    """The facts that a file tells, each under its name of today."""
    facts: dict[str, Any] = json.loads(path.read_text("utf-8"))["facts"]
    renamed(facts)
    return facts


def leaves(told: Any, key: str = "") -> Iterator[tuple[str, Any]]:
    """Each value by the place it stands in."""
    if isinstance(told, dict | list):
        for part, value in told.items() if isinstance(told, dict) else enumerate(told):
            yield from leaves(value, f"{key}.{part}")
    else:
        yield key, told


def test_every_released_schema_has_files_and_a_locked_one() -> None:
    kept = {int(folder.name) for folder in FOLDER.iterdir()}
    assert kept in (set(range(1, SCHEMA)), set(range(1, SCHEMA + 1)))
    assert {int(one.parent.name) for one in FILES if one not in OPEN} == kept


@pytest.mark.parametrize("path", OPEN, ids=named)
def test_an_old_file_opens_whole_and_is_saved_in_the_form_of_today(path: Path, tmp_path: Path) -> None:
    here = shutil.copy(path, tmp_path / "home.case")
    assert json.loads(path.read_text("utf-8"))["firstpaper"]["schema"] == int(path.parent.name)
    with OpenCase(here) as opened:
        case, passed = opened.case, opened.file.passed
        opened.keep(opened.file)
    saved = json.loads(here.read_text("utf-8"))
    assert saved["firstpaper"]["schema"] == SCHEMA
    assert dict(leaves(saved["facts"])) == dict(leaves(facts_in(path)))
    again = CaseFile.load(here)
    assert (again.case, again.passed) == (case, passed)


def test_what_was_put_off_in_an_old_file_is_put_off_still() -> None:
    assert CaseFile.load(FOLDER / "1" / "children.case").passed == ("petitioner.phone",)


@pytest.mark.parametrize("path", [one for one in FILES if one not in OPEN], ids=named)
def test_an_old_locked_file_opens_stays_locked_and_says_the_same(path: Path, tmp_path: Path) -> None:
    here = shutil.copy(path, tmp_path / "home.case")
    with OpenCase(here, passphrases=[PASSPHRASE]) as opened:
        opened.keep(opened.file)
    assert is_sealed(here.read_bytes())
    assert CaseFile.load(here, [PASSPHRASE]).case == CaseFile.load(path.parent / "children.case").case


def test_a_fact_that_a_released_schema_does_not_have_needs_a_new_schema() -> None:
    newest = FOLDER / str(SCHEMA)
    if newest.exists():
        told = set().union(*(told_in(facts_in(one)) for one in newest.glob("every-fact-*.case")))
        assert {key for key, _answer in every_answer()} <= {key for key, _answer in told}, "raise SCHEMA"


def test_a_file_of_a_schema_to_come_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "home.case"
    document = json.loads((FOLDER / "1" / "children.case").read_text("utf-8"))
    document["firstpaper"] = {"schema": SCHEMA + 1, "saved_by": "9.9.9"}
    path.write_text(json.dumps(document), "utf-8")
    before = path.read_bytes()
    with pytest.raises(CaseFileTooNew, match=r"newer Firstpaper \(version 9\.9\.9\)"), OpenCase(path):
        pass
    assert path.read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == ["home.case"]
