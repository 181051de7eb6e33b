"""The terminal itself: closed, resized, dumb, without colour, and gone while somebody types."""

import os
import signal
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pexpect
import pytest

from firstpaper.cli.terminal import BEAT
from tests.cli.person import MORE, ON, PROMPT, Ran, Sitting, flat, without

Run = Callable[..., Ran]
Begin = Callable[..., Sitting]


@pytest.mark.parametrize("more", [{"TERM": "dumb"}, {"TERM": ""}, {"NO_COLOR": "1"}, {"FORCE_COLOR": "1"}])
def test_no_terminal_gets_colour_or_moving_about(sit: Begin, home: Path, more: dict[str, str]) -> None:
    without(home, "court.branch")
    sitting = sit(**more)
    sitting.wait()
    for word in ("help", "review", "why"):
        sitting.type(word)
    assert "\x1b" not in sitting.heard


def test_words_fold_to_a_window_that_is_made_narrower_and_nothing_is_lost(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.child.setwinsize(40, 30)
    sitting.child.sendline("help")
    sitting.child.expect_exact("At every question")
    shown = "At every question" + sitting.child.after.partition("At every question")[2]
    sitting.child.expect_exact("leave: stop")
    lines = (shown + sitting.child.before).splitlines()
    assert max(map(len, lines)) <= 30
    sitting.wait()
    sitting.child.sendline("Annex")
    assert sitting.end() == 0
    assert sitting.file.case.court.branch == "Annex"


@pytest.mark.parametrize("size", [(1, 1), (2, 3), (500, 2000)])
def test_a_window_of_any_size_is_asked_in(sit: Begin, home: Path, size: tuple[int, int]) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.child.setwinsize(*size)
    while sitting.child.expect_exact([MORE, PROMPT]) == 0:
        sitting.child.sendline("")
    sitting.child.sendline("Annex")
    assert sitting.end() == 0
    assert sitting.file.case.court.branch == "Annex"


@pytest.mark.parametrize("how", [signal.SIGHUP, signal.SIGTERM, signal.SIGINT])
def test_a_long_answer_that_is_interrupted_leaves_the_file_as_it_was(
    sit: Begin, home: Path, how: signal.Signals
) -> None:
    without(home, "petitioner.other_names", "court.branch")
    before = home.read_bytes()
    sitting = sit()
    sitting.wait()
    sitting.type("Dana Ade", then="just Enter: ")
    sitting.interrupt(how)
    assert sitting.end() in (130, 128 + how)
    assert home.read_bytes() == before
    assert not home.with_name("home.case.lock").exists()


def test_a_terminal_that_goes_away_lets_go_of_the_case(sit: Begin, home: Path, run: Run) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.child.close(force=False)
    ran = run("change", "home.case", "court.branch", "--on", ON, typed="Annex\n")
    assert ran.exit == 0


def test_ctrl_d_in_the_middle_of_a_line_is_no_answer_by_itself(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.child.sendeof()
    assert sitting.end() == 0
    assert "nothing more to read" in flat(sitting.heard)
    assert sitting.file.case.court.branch is None


def test_ctrl_c_twice_is_as_good_as_once(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    sitting.child.sendintr()
    sitting.child.sendintr()
    assert sitting.end() in (130, None)
    assert not home.with_name("home.case.lock").exists()


def test_the_title_of_the_window_is_left_alone(sit: Begin, home: Path) -> None:
    sitting = sit()
    assert sitting.end() == 0
    assert "\x1b]" not in sitting.heard
    assert "\a" not in sitting.heard


def test_nothing_is_kept_of_what_was_typed(sit: Begin, home: Path, tmp_path: Path) -> None:
    (tmp_path / "own").mkdir()
    without(home, "court.branch")
    sitting = sit(HOME=str(tmp_path / "own"), HISTFILE=str(tmp_path / "own" / "history"))
    sitting.wait()
    sitting.child.sendline("Annex")
    assert sitting.end() == 0
    assert os.listdir(tmp_path / "own") == []  # noqa: PTH208
    assert PROMPT in sitting.heard or "Annex" in sitting.heard


WAITING = """
import signal, threading, time
from firstpaper.cli.terminal import Terminal

def interrupt():
    time.sleep(0.2)
    signal.pthread_kill(threading.get_ident(), signal.SIGINT)

threading.Thread(target=interrupt, daemon=True).start()
try:
    Terminal().{reads}("Your answer: ")
except KeyboardInterrupt:
    print("seen")
"""
"""A signal sent to another thread breaks no wait for a key, nor does one that comes just before the wait."""


@pytest.mark.parametrize("reads", ["read", "read_unseen"])
def test_a_signal_that_breaks_no_wait_is_seen_without_a_key(reads: str) -> None:
    child = pexpect.spawn(sys.executable, ["-c", WAITING.format(reads=reads)], encoding="utf-8", timeout=20)
    child.expect_exact("seen")
    child.close()


def test_an_answer_typed_slowly_arrives_whole(sit: Begin, home: Path) -> None:
    without(home, "court.branch")
    sitting = sit()
    sitting.wait()
    for part in ("Ann", "ex \u0141", "\u00f3d\u017a\n"):
        time.sleep(1.2 * BEAT)
        sitting.child.send(part)
    assert sitting.end() == 0
    assert sitting.file.case.court.branch == "Annex \u0141\u00f3d\u017a"
