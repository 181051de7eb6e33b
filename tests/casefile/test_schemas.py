"""A case file of every schema that was ever written opens, and one of a schema to come is refused politely.

`schemas/N.case` is a file as the program of that time saved it. It is never changed: a file on somebody's
disk is not changed either. A new schema adds a file here together with its upgrade.
"""

import json
import shutil
from pathlib import Path

import pytest

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.errors import CaseFileTooNew
from firstpaper.casefile.upgrades import SCHEMA

FOLDER = Path(__file__).parent / "schemas"


def test_every_schema_so_far_has_its_file() -> None:
    assert sorted(one.name for one in FOLDER.iterdir()) == [f"{n}.case" for n in range(1, SCHEMA + 1)]


@pytest.mark.parametrize("schema", range(1, SCHEMA + 1))
def test_an_old_file_opens_whole_and_is_saved_in_the_form_of_today(schema: int, tmp_path: Path) -> None:
    path = tmp_path / "home.case"
    shutil.copy(FOLDER / f"{schema}.case", path)
    assert json.loads(path.read_text("utf-8"))["firstpaper"]["schema"] == schema
    with OpenCase(path) as opened:
        case = opened.case
        assert case.petitioner.name
        assert len(case.child) == 2
        assert opened.file.passed == ("petitioner.phone",)
        opened.keep(opened.file)
    assert json.loads(path.read_text("utf-8"))["firstpaper"]["schema"] == SCHEMA
    assert CaseFile.load(path).case == case


def test_a_file_of_a_schema_to_come_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "home.case"
    document = json.loads((FOLDER / f"{SCHEMA}.case").read_text("utf-8"))
    document["firstpaper"] = {"schema": SCHEMA + 1, "saved_by": "9.9.9"}
    path.write_text(json.dumps(document), "utf-8")
    before = path.read_bytes()
    with pytest.raises(CaseFileTooNew, match=r"newer Firstpaper \(version 9\.9\.9\)"), OpenCase(path):
        pass
    assert path.read_bytes() == before
    assert [one.name for one in tmp_path.iterdir()] == ["home.case"]
