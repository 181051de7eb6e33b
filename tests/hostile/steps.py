"""Every command killed at every system call by which it changes a file, one after another.

The program is loaded once; each trial is a child of it that stops itself, is watched by strace, and is ended
by SIGKILL as it enters the chosen call. Without strace a shim of `os` ends the child in front of the same
calls, but cannot see what is written through buffered files.
"""

import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from io import StringIO
from pathlib import Path

from firstpaper.casefile import CaseFile, OpenCase, load
from firstpaper.casefile.belongings import finish_removing
from firstpaper.casefile.copies import Copies
from firstpaper.casefile.reading import is_sealed
from firstpaper.casefile.saving import rests
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.cli.app import app
from firstpaper.errors import UserError
from firstpaper.facts import Case
from tests.cli.every_command import COMMANDS, options, set_out
from tests.cli.person import ON, facts_of

CALLS = (
    "write",
    "ftruncate",
    "fsync",
    "link",
    "linkat",
    "rename",
    "renameat",
    "renameat2",
    "unlink",
    "unlinkat",
    "mkdir",
    "mkdirat",
    "rmdir",
)
SHIMMED = ("write", "ftruncate", "fsync", "link", "replace", "rename", "unlink", "mkdir", "rmdir")
OLD, NEW = "marble otter seven violins", "copper lantern ninety pears"
QUICK = Cost(8 * 1024, 1, 1)
SECRET = "Okafor"
PAPERS = (".pdf", ".html", ".ics")
"""What a command drafts is open on purpose, and is not looked through."""
ADDED: dict[str, list[str]] = {
    "seal, another passphrase": ["seal", "home.case"],
    "enter, locked from the start": ["enter", "fresh.case", "more.yaml", "--seal", "--on", ON],
}
TYPED = {"ask": "Annex\n", "change": "Annex\n"}
SAVES = (0, 3, 12)
"""How often the case was saved before: no copies, a few, as many as are kept."""
LEAVE_PAPERS = ("packet", "guide", "money", "dates", "paper", "demo", "erase", "amend", "shelf", "blank")
"""What is half written of a paper goes with the next paper of that name, or with `erase`."""
DRAFTING = ("packet", "paper", "guide", "money", "demo", "blank", "compare")
MOST_SHIMMED = 1000
LONG = 900
"""Seconds after which a trial hangs. On a busy machine it may wait long for its turn."""


@dataclass
class Figures:
    """What was counted, and what must stay 0."""

    kills: int = 0
    commands: int = 0
    lost: int = 0
    open_beside_locked: int = 0
    by_command: dict[str, int] = field(default_factory=dict)

    def told(self) -> dict[str, object]:
        """For the line that is printed."""
        return {
            "kills": self.kills,
            "commands": self.commands,
            "answers lost or files broken": self.lost,
            "plain text beside a locked file": self.open_beside_locked,
            "by": "strace" if strace() else "a shim of os",
        }


def strace() -> str | None:
    """The watcher, where there is one that may watch."""
    return shutil.which("strace")


def killed_at_every_step(most: int | None = None, only: tuple[str, ...] = ()) -> Figures:
    """Kill each command, on open and on locked cases, at each of its steps; at most `most` times in all."""
    figures = Figures()
    with _cheap_seals():
        for name, words, sealed, saves in _ways(only):
            with tempfile.TemporaryDirectory(prefix="steps-") as folder:
                _Way(name, words, sealed, saves, Path(folder), figures).run(most)
            figures.commands += 1
            if most is not None and figures.kills >= most:
                break
    return figures


@contextmanager
def _cheap_seals() -> Iterator[None]:
    """New seals at the least cost that is accepted: what is tried here is when they are cut off."""
    made = Cost.__init__
    usual = made.__defaults__
    made.__defaults__ = (QUICK.memory_kib, QUICK.passes, QUICK.lanes)
    try:
        yield
    finally:
        made.__defaults__ = usual


def every_command() -> list[str]:
    """The names of the commands, those last that take long because they draft papers."""
    words = {**COMMANDS, **ADDED}
    return sorted(words, key=lambda name: words[name][0] in DRAFTING)


def _ways(only: tuple[str, ...]) -> Iterator[tuple[str, list[str], bool, int]]:
    for name, words in {**COMMANDS, **ADDED}.items():
        if only and name not in only:
            continue
        for sealed in (False, True):
            if (name == "seal" and sealed) or (name in ("unseal", "seal, another passphrase") and not sealed):
                continue
            plain = [word for word in words if word not in ("--passphrase-from", "words")]
            secret = sealed or "seal" in (words[0], *words[1:]) or "--seal" in words
            able = "--passphrase-from" in options(words[0])
            given = [*plain, *(["--passphrase-from", "words"] if secret and able else [])]
            yield from ((name, given, sealed, saves) for saves in SAVES)


class _Way:
    """One command on one kind of case, killed at each of its steps in a fresh folder."""

    def __init__(
        self, name: str, words: list[str], sealed: bool, saves: int, folder: Path, figures: Figures
    ) -> None:
        self.name, self.words, self.sealed = name, words, sealed
        self.folder, self.figures = folder, figures
        self.ready = folder / "ready"
        self.ready.mkdir()
        _set_out(self.ready, sealed, saves)
        self.before = _cases(self.ready)
        _warm(self._fresh(), words)
        done = self._fresh()
        self.calls = _calls(done, words)
        self.after = _cases(done)

    def run(self, most: int | None) -> None:
        """Every call, first, second, third and on."""
        for call, count in self.calls.items():
            for number in range(1, count + 1):
                if (most is not None and self.figures.kills >= most) or not self._killed(call, number):
                    break

    def _killed(self, call: str, number: int) -> bool:
        folder = self._fresh()
        status = _ended(_child(folder, self.words, (call, number)))
        if not (os.WIFSIGNALED(status) and os.WTERMSIG(status) == signal.SIGKILL):
            return False
        self.figures.kills += 1
        kind = f"{self.name}{', locked' if self.sealed else ''}"
        self.figures.by_command[kind] = self.figures.by_command.get(kind, 0) + 1
        if self.words[0] == "unseal" and call.startswith("rename"):
            _cases(folder)  # its new file has a name and no place yet: the next opening takes it away
        self._check(folder, f"{kind}: {call} {number}")
        return True

    def _check(self, folder: Path, where: str) -> None:
        for path in folder.glob("*.case"):
            if _open_beside(path):
                self.figures.open_beside_locked += 1
                raise AssertionError(f"{where}: plain text beside {path.name}")
        if self.words[0] == "erase":
            finish_removing(folder / "home.case")
        for name, found in _cases(folder).items():
            if found not in (self.before.get(name), self.after.get(name)):
                self.figures.lost += 1
                raise AssertionError(f"{where}: {name} is neither as before nor as after")
        for name in ("home.case", "new.case", "newer.case", "listed.case", "fresh.case"):
            with suppress(UserError), OpenCase(folder / name, begin=True, passphrases=[OLD, NEW]):
                pass
        left = [one.name for one in folder.rglob(".case-*")]
        if left and self.words[0] not in LEAVE_PAPERS:
            raise AssertionError(f"{where}: {left} stay")

    def _fresh(self) -> Path:
        folder = self.folder / "trial"
        shutil.rmtree(folder, ignore_errors=True)
        shutil.copytree(self.ready, folder)
        return folder


def _set_out(folder: Path, sealed: bool, saves: int) -> None:
    set_out(folder, CaseFile(facts_of("plain-childless-divorce").with_fact("court.branch", None)))
    (folder / "words").write_text(f"{OLD}\n{NEW}\n" if sealed else f"{NEW}\n")
    seal = Seal.new(OLD, QUICK) if sealed else None
    with OpenCase(folder / "home.case") as opened:
        first = opened.file
        opened.seal_with(seal)
        for number in range(saves):
            opened.keep(first.with_case(first.case.with_fact("petitioner.other_names", (f"Name {number}",))))
    for path in (folder / "new.case", folder / "listed.case") if sealed else ():
        with OpenCase(path) as opened:
            opened.seal_with(seal)


def _cases(folder: Path) -> dict[str, Case | None]:
    """The facts in each case file, without the word that a calendar is tied to, which is drawn by chance."""
    found: dict[str, Case | None] = {}
    for name in ("home.case", "newer.case", "fresh.case"):
        if not (folder / name).exists():
            continue
        with suppress(UserError):
            case = load(folder / name, [OLD, NEW]).case
            found[name] = case.with_fact("record.calendar_id", None)
            continue
        found[name] = None
    return found


def _open_beside(path: Path) -> bool:
    """Whether a locked file has words of the case in the open beside it, in what belongs to it."""
    if not is_sealed(path.read_bytes()):
        return False
    beside = [*Copies(path).folder.glob("*"), *path.parent.glob(f"{path.name}.*"), *rests(path)]
    return any(one.is_file() and SECRET.encode() in one.read_bytes() for one in beside)


# --- a child that is killed -----------------------------------------------------------------------------


def _child(
    folder: Path, words: list[str], kill: tuple[str, int] | None, log: Path | None = None
) -> tuple[int, "subprocess.Popen[bytes] | None"]:
    """Begin a command in a child of this process, to be killed at a call."""
    watched = kill is not None and strace() is not None
    child = os.fork()
    if not child:
        _be_the_command(folder, words, kill, watched=watched)
    if not watched:
        return child, None
    assert kill
    os.waitpid(child, os.WUNTRACED)
    watcher = _watch(child, *kill, log)
    os.kill(child, signal.SIGCONT)
    return child, watcher


def _be_the_command(folder: Path, words: list[str], kill: tuple[str, int] | None, *, watched: bool) -> None:
    """Never returns."""
    try:
        os.chdir(folder)
        sys.stdin = StringIO(TYPED.get(words[0], ""))
        sys.stdout = sys.stderr = StringIO()
        if watched:
            os.kill(os.getpid(), signal.SIGSTOP)
        elif kill:
            _shim(kill[1])
        app(words, prog_name="firstpaper")
    finally:
        os._exit(0)


def _warm(folder: Path, words: list[str]) -> None:
    """Run the command here once, so that no child has to load and work out what is the same each time."""
    kept = Path.cwd(), sys.stdin, sys.stdout, sys.stderr
    signals = {number: signal.getsignal(number) for number in (signal.SIGTERM, signal.SIGHUP)}
    try:
        os.chdir(folder)
        sys.stdin, sys.stdout, sys.stderr = StringIO(TYPED.get(words[0], "")), StringIO(), StringIO()
        with suppress(SystemExit):
            app(words, prog_name="firstpaper")
    finally:
        os.chdir(kept[0])
        _before, sys.stdin, sys.stdout, sys.stderr = kept
        for number, handler in signals.items():
            signal.signal(number, handler)


def _calls(folder: Path, words: list[str]) -> dict[str, int]:
    """Run the command to its end, and count its calls; by the shim all are one kind, of unknown number."""
    if not strace():
        _ended(_child(folder, words, None))
        return {"any": MOST_SHIMMED}
    log = folder.parent / "calls"
    _ended(_child(folder, words, ("", 0), log))
    found = re.findall(r"^(?:\d+ +)?(\w+)\(", log.read_text(errors="replace"), re.MULTILINE)
    return {call: found.count(call) for call in CALLS if call in found}


def _watch(child: int, call: str, number: int, log: Path | None) -> "subprocess.Popen[bytes]":
    """Kill the child as it enters that call; without a call note all of them in the log."""
    traced = f"trace={call or ','.join(CALLS)}"
    kill = ["-e", f"inject={call}:signal=KILL:when={number}"] if call else []
    watcher = subprocess.Popen(
        [str(strace()), "-f", "-o", str(log or os.devnull), "-p", str(child), "-e", traced, *kill],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    limit = time.monotonic() + LONG
    while "TracerPid:\t0\n" in Path(f"/proc/{child}/status").read_text() and time.monotonic() < limit:
        time.sleep(0.002)
    return watcher


def _shim(last: int) -> None:
    """End this process in front of the call with this number."""
    count = 0

    def counting(real: Callable[..., object]) -> Callable[..., object]:
        def counted(*args: object, **kwargs: object) -> object:
            nonlocal count
            count += 1
            if count == last:
                os.kill(os.getpid(), signal.SIGKILL)
            return real(*args, **kwargs)

        return counted

    for name in SHIMMED:
        setattr(os, name, counting(getattr(os, name)))


def _ended(begun: tuple[int, "subprocess.Popen[bytes] | None"]) -> int:
    child, watcher = begun
    limit = time.monotonic() + LONG
    while True:
        if watcher:  # the first may have come before the watcher was ready for it
            os.kill(child, signal.SIGCONT)
        done, status = os.waitpid(child, os.WNOHANG)
        if done and not os.WIFSTOPPED(status):
            break
        if time.monotonic() > limit:
            os.kill(child, signal.SIGKILL)
            os.waitpid(child, 0)
            raise AssertionError("a command hangs")
        time.sleep(0.01)
    if watcher:
        watcher.wait(LONG)
    return status
