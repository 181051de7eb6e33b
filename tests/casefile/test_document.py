"""The case file's format: nothing is lost on the way to disk and back, and nothing foreign gets in."""

import json
import os
import stat
from collections.abc import Iterator
from pathlib import Path

import pytest

from firstpaper import __version__
from firstpaper.casefile import CaseFile, upgrades
from firstpaper.casefile.errors import (
    CaseFileDamaged,
    CaseFileMissing,
    CaseFileTooNew,
    CaseFileUnreadable,
    NotACaseFile,
)
from firstpaper.casefile.upgrades import SCHEMA
from firstpaper.errors import UserError
from firstpaper.facts import DONT_KNOW, Case

SECRET = "Zebulon Quartermain"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


def household() -> CaseFile:
    case = Case()
    for key, value in {
        "petitioner.name": SECRET,
        "respondent.name": DONT_KNOW,
        "safety.dangers": (),
        "dates.married_on": "2009-06?",
        "child.2.name": "Ana Łukasz",
        "court.address": {"street": "1 Main Street", "city": "Alturas", "zip": "96101"},
        "residence.petitioner.absences": [{"start": "2024-01-02", "end": None, "why": "work"}],
        "support.other": "first line\nsecond line",
    }.items():
        case = case.with_fact(key, value)
    return CaseFile(case, ("petitioner.phone",))


def written(path: Path, document: object) -> Path:
    path.write_text(json.dumps(document), encoding="utf-8")
    return path


def test_every_kind_of_answer_comes_back_as_it_was(path: Path) -> None:
    household().save(path)
    assert CaseFile.load(path) == household()


def test_asked_and_empty_unknown_and_never_asked_stay_three_different_things(path: Path) -> None:
    household().save(path)
    case = CaseFile.load(path).case
    assert (case.safety.dangers, case.respondent.name, case.petitioner.phone) == ((), DONT_KNOW, None)


def test_only_what_was_answered_is_written(path: Path) -> None:
    CaseFile(Case().with_fact("petitioner.name", SECRET)).save(path)
    assert json.loads(path.read_text(encoding="utf-8")) == {
        "firstpaper": {"schema": SCHEMA, "saved_by": __version__},
        "facts": {"petitioner": {"name": SECRET}},
        "passed": [],
    }


def test_only_the_owner_can_read_it_whatever_the_umask(path: Path) -> None:
    before = os.umask(0)
    try:
        household().save(path)
    finally:
        os.umask(before)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


def test_a_file_that_was_open_to_others_is_closed_by_the_next_save(path: Path) -> None:
    household().save(path)
    path.chmod(0o644)
    CaseFile.load(path).save(path)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


def test_a_missing_file_says_how_to_begin(path: Path) -> None:
    with pytest.raises(CaseFileMissing, match=r"firstpaper ask .*home\.case"):
        CaseFile.load(path)


@pytest.mark.parametrize(
    "content",
    [b"", b"Dear Maria,\n", b'{"facts": {}}', b"[1, 2]", b"%PDF-1.7\n", b"\x00\xff" * 99, b'"firstpaper"'],
)
def test_a_file_of_another_kind_is_refused(path: Path, content: bytes) -> None:
    path.write_bytes(content)
    with pytest.raises(NotACaseFile):
        CaseFile.load(path)
    assert path.read_bytes() == content


def test_a_folder_or_a_pipe_is_refused(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    for path in (tmp_path, tmp_path / "pipe"):
        with pytest.raises(NotACaseFile):
            CaseFile.load(path)


def test_a_huge_file_is_refused(path: Path) -> None:
    path.write_bytes(b'{"firstpaper": ' + b" " * 10_000_001)
    with pytest.raises(NotACaseFile):
        CaseFile.load(path)


def test_a_name_no_system_can_hold_is_refused(tmp_path: Path) -> None:
    with pytest.raises(CaseFileUnreadable):
        CaseFile.load(tmp_path / ("n" * 300))


def test_a_file_that_breaks_off_is_damaged_at_a_line(path: Path) -> None:
    household().save(path)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) // 2])
    with pytest.raises(CaseFileDamaged, match=r"(?s)mistake at line \d+.*If you have a copy"):
        CaseFile.load(path)


@pytest.mark.parametrize(
    "document",
    [
        {"firstpaper": None},
        {"firstpaper": {"schema": "one"}},
        {"firstpaper": {"schema": True}, "facts": {}},
        {"firstpaper": {"schema": 0}, "facts": {}},
        {"firstpaper": {"schema": 1}},
        {"firstpaper": {"schema": 1}, "facts": None},
        {"firstpaper": {"schema": 1}, "facts": {}, "passed": 3},
        {"firstpaper": {"schema": 1}, "facts": {"petitioner": {"name": {"first": SECRET}}}},
        {"firstpaper": {"schema": 1}, "facts": {"petitioner": {SECRET: "x"}}},
        {"firstpaper": {"schema": 1}, "facts": {"dates": {"married_on": SECRET}}},
        {"firstpaper": {"schema": 1}, "facts": {"child": [{"born_on": "2020-02-31", "name": SECRET}]}},
    ],
)
def test_a_damaged_file_is_left_alone_and_its_facts_are_not_repeated(path: Path, document: object) -> None:
    before = written(path, document).read_bytes()
    with pytest.raises(CaseFileDamaged) as refused:
        CaseFile.load(path)
    assert SECRET not in refused.value.message
    assert path.read_bytes() == before


@pytest.mark.parametrize(
    ("facts", "key"),
    [
        ({"child": [{"born_on": "2020-02-31"}]}, r"child\.1\.born_on"),
        ({"waiver": {"household": 0}}, r"waiver\.household"),
        ({"children": {"how_many": 5000}}, r"children\.how_many"),
    ],
)
def test_a_damaged_answer_is_named_by_its_key(path: Path, facts: object, key: str) -> None:
    written(path, {"firstpaper": {"schema": 1}, "facts": facts})
    with pytest.raises(CaseFileDamaged, match=key):
        CaseFile.load(path)


def test_bytes_that_are_no_letters_and_endless_nesting_are_damage(path: Path) -> None:
    for rest in (b'"\xff\xff"}', b"[" * 200_000):
        path.write_bytes(b'{"firstpaper":' + rest)
        with pytest.raises(CaseFileDamaged):
            CaseFile.load(path)


@pytest.mark.parametrize(
    "document",
    [
        {"firstpaper": {"schema": SCHEMA + 1, "saved_by": "9.0"}, "facts": {"a future": "shape"}},
        {"firstpaper": {"schema": SCHEMA, "saved_by": "9.0"}, "facts": {}, "a future part": {}},
    ],
)
def test_a_newer_file_is_refused_politely(path: Path, document: object) -> None:
    before = written(path, document).read_bytes()
    with pytest.raises(CaseFileTooNew, match=r"newer Firstpaper \(version 9\.0\)"):
        CaseFile.load(path)
    assert path.read_bytes() == before


def test_an_older_file_goes_up_one_schema_at_a_time(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def rename(document: upgrades.Document) -> upgrades.Document:
        return {"firstpaper": document["firstpaper"], "answers": document["old answers"]}

    def regroup(document: upgrades.Document) -> upgrades.Document:
        return {"firstpaper": document["firstpaper"], "facts": {"petitioner": document["answers"]}}

    monkeypatch.setattr(upgrades, "SCHEMA", 3)
    monkeypatch.setattr("firstpaper.casefile.document.SCHEMA", 3)
    monkeypatch.setattr(upgrades, "UPGRADES", {1: rename, 2: regroup})
    written(path, {"firstpaper": {"schema": 1}, "old answers": {"name": SECRET}})
    assert CaseFile.load(path).case.petitioner.name == SECRET


def test_every_schema_before_this_one_has_a_way_up() -> None:
    assert sorted(upgrades.UPGRADES) == list(range(1, upgrades.SCHEMA))


def test_put_off_questions_that_no_longer_exist_are_forgotten(path: Path) -> None:
    document = {
        "firstpaper": {"schema": 1},
        "facts": {},
        "passed": ["petitioner.phone", "petitioner.shoe_size", 4, "\ud800"],
    }
    assert CaseFile.load(written(path, document)).passed == ("petitioner.phone",)


def test_every_error_says_what_happened_and_what_to_do_and_has_its_own_code() -> None:
    kinds = list(_below(UserError))
    assert len({kind.code for kind in kinds}) == len(kinds)
    for kind in kinds:
        assert kind.__doc__
        assert "code" in vars(kind)
        assert kind.exit_code == 2


def _below(kind: type[UserError]) -> Iterator[type[UserError]]:
    for one in kind.__subclasses__():
        yield one
        yield from _below(one)
