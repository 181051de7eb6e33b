"""On a screen of 80 by 24, every question is seen whole or waits for Enter, in each language."""

import sys
from pathlib import Path

import pexpect
import pytest

from firstpaper.intake import bank
from firstpaper.intake.events import events
from firstpaper.intake.loading import listing
from firstpaper.locale import _, offered, speaking
from tests.cli.person import MORE, PROMPT, environment, run_in

ROWS = 24
PAGE = 22

PUTS_EVERY_QUESTION = """
from firstpaper.cli.talk.questions import put_question
from firstpaper.cli.terminal import Terminal
from firstpaper.facts import Case
from firstpaper.intake import Asked, bank
from firstpaper.intake.events import events
from firstpaper.intake.loading import listing
from firstpaper.locale import _

terminal = Terminal()
for topic in (*bank().topics, *events().topics, *listing().topics):
    for one in topic.questions:
        row = 1 if one.each else None
        asked = Asked(one, one.key.replace("*", "1"), topic, row, Case.nothing())
        terminal.say(_(topic.title), _(topic.opening or ""), *asked.notice)
        put_question(terminal, asked, None, lead=[_("Question {number}").format(number=1)])
        terminal.read("Your answer: ")
"""


def screens(child: pexpect.spawn, more: str) -> list[int]:
    """How many rows were shown before each prompt, until the end."""
    rows = []
    while child.expect_exact([PROMPT, more, pexpect.EOF]) != 2:
        rows.append(child.before.removeprefix("\r\n").count("\r\n"))
        child.sendline("")
    return rows


@pytest.mark.parametrize("language", offered())
def test_no_screen_is_longer_than_a_page_without_a_pause(language: str) -> None:
    child = pexpect.spawn(
        sys.executable,
        ["-c", PUTS_EVERY_QUESTION],
        env=environment(FIRSTPAPER_LANG=language),
        encoding="utf-8",
        timeout=20,
        dimensions=(ROWS, 80),
    )
    child.delaybeforesend = None
    with speaking(language):
        rows = screens(child, _(MORE))
    asked = sum(len(topic.questions) for each in (bank(), events(), listing()) for topic in each.topics)
    assert len(rows) > asked  # some waited
    assert max(rows) <= PAGE


def test_without_a_terminal_nothing_waits(tmp_path: Path) -> None:
    assert MORE not in run_in(tmp_path, "law").out


def test_with_no_pause_nothing_waits(tmp_path: Path) -> None:
    child = pexpect.spawn(
        sys.executable,
        ["-m", "firstpaper", "law", "--no-pause"],
        cwd=str(tmp_path),
        env=environment(),
        encoding="utf-8",
        timeout=20,
        dimensions=(ROWS, 80),
    )
    child.expect_exact(pexpect.EOF)
    assert MORE not in child.before
