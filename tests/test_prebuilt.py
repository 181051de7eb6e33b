"""What is prebuilt of the data files is what their YAML holds, and nothing else is ever read."""

from collections.abc import Callable
from pathlib import Path

import pytest

import firstpaper
from firstpaper import data_files
from firstpaper.data_files import read_file
from firstpaper.forms.edition import load_edition
from firstpaper.forms.explanation import load_explanation
from firstpaper.intake.events import events
from firstpaper.intake.loading import Bank, listing
from firstpaper.law.figure_file import load_figures
from firstpaper.prebuilt import SUFFIX, prebuild, prebuilt

PACKAGE = Path(firstpaper.__file__).parent
FILES = sorted(PACKAGE.rglob("*.yaml"))
READERS: dict[str, Callable[[Path], object]] = {
    "intake/bank": lambda path: Bank(path.parent).topics,
    "intake/listing": lambda _path: listing.__wrapped__().topics,
    "intake/events": lambda _path: events.__wrapped__().topics,
    "law/figures": load_figures,
    "forms/editions": load_edition,
    "forms/explained/fl100": lambda path: load_explanation(path, "FL-100"),
}


def is_as_written(path: Path) -> bool:
    """What `hatch_build.py` takes a file for."""
    return "intake" in path.relative_to(PACKAGE).parts


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_the_same_is_read_with_what_was_prebuilt_and_without(path: Path, tmp_path: Path) -> None:
    here, as_written = tmp_path / path.name, is_as_written(path)
    here.write_bytes(path.read_bytes())
    from_yaml = read_file(here, as_written=as_written)
    here.with_suffix(SUFFIX).write_bytes(prebuild(path.read_bytes(), as_written))
    assert prebuilt(here, here.read_bytes(), as_written) == from_yaml
    assert repr(read_file(here, as_written=as_written)) == repr(from_yaml)


def test_what_was_prebuilt_is_left_alone_once_its_file_has_changed(tmp_path: Path) -> None:
    here = tmp_path / "fees.yaml"
    here.write_text("paid: 435\n", "utf-8")
    here.with_suffix(SUFFIX).write_bytes(prebuild(here.read_bytes(), as_written=False))
    assert read_file(here) == {"paid": 435}
    assert read_file(here, as_written=True) == {"paid": "435"}
    here.write_text("paid: 450\n", "utf-8")
    assert read_file(here) == {"paid": 450}


def test_every_file_is_prebuilt_as_the_program_reads_it(monkeypatch: pytest.MonkeyPatch) -> None:
    read: dict[Path, bool] = {}

    def seen(path: Path, _content: bytes, as_written: bool) -> None:
        read[path] = as_written

    monkeypatch.setattr(data_files, "prebuilt", seen)
    for folder, load in READERS.items():
        for path in sorted((PACKAGE / folder).rglob("*.yaml")):
            load(path)
    assert {path for path in FILES if any(path.is_relative_to(PACKAGE / each) for each in READERS)} <= set(
        read
    )
    assert all(as_written == is_as_written(path) for path, as_written in read.items())
