"""What is prebuilt of the data files is what their YAML holds, and nothing else is ever read."""

from collections.abc import Callable
from pathlib import Path

import pytest

import firstpaper
from firstpaper import data_files
from firstpaper.data_files import read_file
from firstpaper.forms.edition import load_edition
from firstpaper.forms.explanation import load_explanation
from firstpaper.intake import loading
from firstpaper.intake.events import events
from firstpaper.intake.loading import Bank, bank, listing
from firstpaper.law.figure_file import load_figures
from firstpaper.prebuilt import SUFFIX, Read, prebuild, prebuilt
from firstpaper.strict_yaml import content_of

PACKAGE = Path(firstpaper.__file__).parent
FILES = sorted(PACKAGE.rglob("*.yaml"))
TOPICS = {path: topic for each in (bank(), listing(), events()) for path, topic in each.by_file.items()}
READERS: dict[str, Callable[[Path], object]] = {
    "intake/habits": lambda path: read_file(path, as_written=True),
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
    content = path.read_bytes()
    here.write_bytes(content)
    what = Read.WORDS if as_written else Read.VALUES
    from_yaml = read_file(here, as_written=as_written)
    shape = content_of(content.decode(), as_written)
    here.with_suffix(SUFFIX).write_bytes(prebuild(content, what, shape))
    assert prebuilt(here, content, what) == from_yaml
    assert repr(read_file(here, as_written=as_written)) == repr(from_yaml)


@pytest.mark.parametrize("path", TOPICS, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_a_topic_is_the_same_with_what_was_prebuilt_and_without(
    path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    here, content = tmp_path / path.name, path.read_bytes()
    here.write_bytes(content)
    here.with_suffix(SUFFIX).write_bytes(prebuild(content, Read.TOPIC, TOPICS[path]))
    monkeypatch.setattr(loading, "read_text", lambda *_told, **_named: pytest.fail("the YAML is read"))
    (topic,) = Bank(tmp_path).topics
    assert topic == TOPICS[path]
    assert repr(topic) == repr(TOPICS[path])


def test_what_was_prebuilt_is_left_alone_once_its_file_has_changed(tmp_path: Path) -> None:
    here = tmp_path / "fees.yaml"
    here.write_text("paid: 435\n", "utf-8")
    here.with_suffix(SUFFIX).write_bytes(prebuild(here.read_bytes(), Read.VALUES, {"paid": 435}))
    assert read_file(here) == {"paid": 435}
    assert read_file(here, as_written=True) == {"paid": "435"}
    here.write_text("paid: 450\n", "utf-8")
    assert read_file(here) == {"paid": 450}


def test_a_topic_is_read_anew_once_its_file_has_changed(tmp_path: Path) -> None:
    path, topic = next(iter(TOPICS.items()))
    here = tmp_path / path.name
    here.write_bytes(path.read_bytes())
    here.with_suffix(SUFFIX).write_bytes(prebuild(path.read_bytes(), Read.TOPIC, topic))
    here.write_text(path.read_text("utf-8").replace(f"title: {topic.title}", "title: Another"), "utf-8")
    (read,) = Bank(tmp_path).topics
    assert (read.title, read.questions) == ("Another", topic.questions)


def test_every_file_is_prebuilt_as_the_program_reads_it(monkeypatch: pytest.MonkeyPatch) -> None:
    read: dict[Path, Read] = {}

    def seen(path: Path, _content: bytes, what: Read) -> None:
        read[path] = what

    monkeypatch.setattr(data_files, "prebuilt", seen)
    for folder, load in READERS.items():
        for path in sorted((PACKAGE / folder).rglob("*.yaml")):
            load(path)
    files = {path for path in FILES if any(path.is_relative_to(PACKAGE / each) for each in READERS)}
    assert files <= set(read)
    assert all(what is (Read.WORDS if is_as_written(path) else Read.VALUES) for path, what in read.items())
    assert {path for path in FILES if is_as_written(path)} - set(TOPICS) == {
        path for path, what in read.items() if what is Read.WORDS
    }
