"""The command line as a person, a pipe and another program meet it: always a real process, forked ready."""

import json
import os
import signal
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

import pexpect
import yaml

from firstpaper.casefile import CaseFile
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.intake import Asked, asked, facts_from, next_question
from tests.cli import ready

COMMAND = [sys.executable, "-m", "firstpaper"]
HOUSEHOLDS = Path(__file__).parents[2] / "demo" / "households"
ON = "2026-11-30"
PROMPT = "Your answer: "
NEXT_LINE = "Next line, or just Enter: "
TALL = 1000
"""Rows of a window in which nothing ever waits for Enter."""
MORE = "Enter for more: "
WHAT_NOW = "Type a number, or just Enter to leave: "
LOOK_OVER = "Look over your answers? Type yes, or just Enter: "


@dataclass(frozen=True)
class Ran:
    """What a finished command left: exit status, stdout and stderr."""

    exit: int
    out: str
    err: str

    @property
    def envelope(self) -> dict[str, Any]:
        """The JSON on stdout."""
        document: dict[str, Any] = json.loads(self.out)
        return document

    @property
    def said(self) -> str:
        """Everything on stderr on one line."""
        return flat(self.err)


def flat(text: str) -> str:
    """Text without line breaks, so that a folded sentence can be found."""
    return " ".join(text.split())


def environment(**more: str) -> dict[str, str]:
    """A plain environment: no screen width, an English UTF-8 computer."""
    kept = {name: value for name, value in os.environ.items() if name not in ("COLUMNS", "LINES")}
    return {**kept, "LC_ALL": "C.UTF-8", "TERM": "xterm-256color", **more}


def run_in(folder: Path, *arguments: object, typed: str | bytes = "", **more: str) -> Ran:
    """Run a command in a folder, with `typed` as its input. It never shows a traceback or an escape.

    With an environment of its own it is started anew, since Python reads some of that only at its start.
    """
    given = typed.encode() if isinstance(typed, str) else typed
    words = [str(one) for one in arguments]
    status, out, err = (_started if more else ready.ran)(words, folder, environment(**more), given)
    ran = Ran(status, out.decode(), err.decode())
    assert "Traceback" not in ran.err
    assert "\x1b" not in ran.out + ran.err
    return ran


def _started(
    arguments: list[str], folder: Path, environment: dict[str, str], typed: bytes
) -> tuple[int, bytes, bytes]:
    done = subprocess.run(
        [*COMMAND, *arguments],
        input=typed,
        capture_output=True,
        cwd=folder,
        env=environment,
        timeout=60,
        check=False,
    )
    return done.returncode, done.stdout, done.stderr


def answers_of(household: str) -> dict[str, str]:
    """The facts of an invented household, as typed text by key."""
    facts = yaml.load((HOUSEHOLDS / f"{household}.yaml").read_text("utf-8"), yaml.BaseLoader)
    return dict(_flat_facts(facts))


def _flat_facts(group: dict[str, Any], prefix: str = "") -> Iterator[tuple[str, str]]:
    for name, value in group.items():
        if name == "child":
            for number, row in enumerate(value, 1):
                yield from _flat_facts(row, f"child.{number}.")
        elif isinstance(value, dict):
            yield from _flat_facts(value, f"{prefix}{name}.")
        else:
            yield prefix + name, ", ".join(value) if isinstance(value, list) else value


@cache
def entered(household: str) -> Case:
    """The facts of an invented household, as entered from its file."""
    text = (HOUSEHOLDS / f"{household}.yaml").read_text("utf-8")
    case, problems = facts_from(text, date.fromisoformat(ON))
    assert problems == ()
    return case


@cache
def facts_of(household: str) -> Case:
    """The same facts, with "I don't know" at every question that the file leaves open."""
    case = entered(household)
    while one := next_question(case):
        case = case.with_fact(one.key, DONT_KNOW)
    return case


class Sitting:
    """A person at a real terminal, and the case file on the disk beside them."""

    def __init__(self, path: Path, *arguments: str, **more: str) -> None:
        self.path = path
        self.heard = ""
        self.child = ready.Forked(arguments, path.parent, environment(**more), (TALL, 90), timeout=8)

    @property
    def file(self) -> CaseFile:
        """The case file as it is on disk now."""
        return CaseFile.load(self.path) if self.path.exists() else CaseFile()

    @property
    def next(self) -> Asked | None:
        """The question that comes next, by the answers on disk."""
        return next_question(self.file.case, self.file.passed)

    def wait(self, pattern: str = PROMPT) -> str:
        """Everything said up to a prompt, on one line."""
        self.child.expect_exact(pattern)
        return self._heard(self.child.before)

    def type(self, line: str, then: str = PROMPT) -> str:
        """Type a line; everything said up to the prompt after it."""
        self.child.sendline(line)
        return self.wait(then)

    def answer(self, line: str) -> None:
        """Type an answer and wait for the next question or the end; Enter is typed at what lies between."""
        self.child.sendline(line)
        self._go_past(PROMPT, pexpect.EOF)

    def end(self) -> int:
        """Wait for the end; the exit status."""
        self._go_past(pexpect.EOF)
        self.child.close()
        return self.child.exitstatus

    def interrupt(self, how: signal.Signals) -> None:
        """Send it a signal, once."""
        self.child.kill(how)

    def stop(self) -> None:
        """End it, whatever it is doing."""
        if self.child.isalive():
            self.child.kill(signal.SIGKILL)
            self.child.wait()
        self.child.close()

    def _go_past(self, *ends: object) -> None:
        """Press Enter at the end of a long answer, at a full screen, and where more is offered at the end."""
        offers = [NEXT_LINE, LOOK_OVER, WHAT_NOW, MORE]
        while self.child.expect_exact([*offers, *ends]) < len(offers):
            self._heard(self.child.before)
            self.child.sendline("")
        self._heard(self.child.before)

    def _heard(self, text: str) -> str:
        self.heard += text
        return flat(text)


def written(folder: Path, household: str) -> Path:
    """A case file with the facts of an invented household."""
    path = folder / "home.case"
    CaseFile(facts_of(household)).save(path)
    return path


def without(path: Path, *keys: str) -> Path:
    """The same case file with some answers taken back."""
    file = CaseFile.load(path)
    case = file.case
    for key in keys:
        case = case.with_fact(key, None)
    file.with_case(case).save(path)
    return path


def stops_at(path: Path) -> list[str]:
    """The keys that have no answer yet, in order."""
    case = CaseFile.load(path).case
    return [one.key for one in asked(case) if case.fact(one.key) is None]
