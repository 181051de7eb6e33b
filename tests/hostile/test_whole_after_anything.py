"""Small versions of what `python -m tests.hardening` does at length."""

from pathlib import Path
from random import Random

import pytest

from tests.hostile import disks
from tests.hostile.hammering import hammered
from tests.hostile.kills import killed_again_and_again, left_over


@pytest.mark.parametrize("sealed", [False, True])
def test_a_killed_interview_loses_at_most_the_line_on_its_way(tmp_path: Path, sealed: bool) -> None:
    seen = killed_again_and_again(tmp_path, 2 if sealed else 8, Random(7), sealed=sealed)
    assert seen["answers saved"] > 0
    assert set(left_over(tmp_path / "home.case")) <= {"home.case", "home.case.copies", "words"}


def test_writers_side_by_side_lose_nothing(tmp_path: Path) -> None:
    assert hammered(tmp_path, 1.5, 2, Random(7), kills=False)["saves"] > 4


def test_writers_that_are_killed_lose_nothing(tmp_path: Path) -> None:
    assert hammered(tmp_path, 2.5, 2, Random(7), kills=True)["writers killed"] > 2


def test_a_disk_that_fills_up_at_any_size_leaves_a_whole_file(tmp_path: Path) -> None:
    assert disks.limited_at_every_size(tmp_path, 700)["told as a full disk"] > 3


def test_a_read_only_folder_and_a_forbidden_file_are_told() -> None:
    assert disks.without_permission() == {
        "read-only folder": "folder_read_only",
        "file without permission": "case_file_unreadable",
    }


def test_a_folder_that_goes_away_is_told(tmp_path: Path) -> None:
    assert disks.gone_meanwhile(tmp_path) == "folder_missing"
