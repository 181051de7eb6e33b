"""A process in which the program is loaded and which forks at a word, so that a test waits for no start.

What runs is a real process with its own files, terminal, folder, environment and signals. Only the start of
Python and the imports are spared, and most of the work that a new lock costs on purpose. Tests of the start
itself, of what only a start reads, and of the cost of a lock use `COMMAND`.
"""

import fcntl
import io
import json
import os
import pty
import resource
import signal
import socket
import struct
import subprocess
import sys
import tempfile
import termios
import traceback
from collections.abc import Mapping, Sequence
from contextlib import suppress
from datetime import date
from functools import cache
from importlib import import_module
from pathlib import Path
from pkgutil import walk_packages
from typing import Any

from pexpect.fdpexpect import fdspawn

import firstpaper
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.cli import main
from firstpaper.intake import facts_from
from firstpaper.packet import build

TESTS = Path(__file__).parents[2]
MOST = 1 << 20
SLOW = 600
"""Seconds that loading may take where many programs share the computer."""
DAY = date(2026, 11, 30)
LIMITS = (resource.RLIMIT_FSIZE, resource.RLIMIT_NOFILE, resource.RLIMIT_AS)
"""What a process inherits from the test that begins it, and a fork would not."""
Message = dict[str, Any]


# --- in the tests -------------------------------------------------------------------------------


def ran(
    arguments: Sequence[str], folder: Path, environment: Mapping[str, str], typed: bytes, first: str = ""
) -> tuple[int, bytes, bytes]:
    """Exit status, stdout and stderr of a command that reads `typed`, and before all imports `first`."""
    with tempfile.TemporaryFile() as given, tempfile.TemporaryFile() as out, tempfile.TemporaryFile() as err:
        given.write(typed)
        given.seek(0)
        files = [given.fileno(), out.fileno(), err.fileno()]
        pid = _server().start(arguments, folder, environment, files, terminal=False, first=first)
        status = _server().ended(pid)
        assert status is not None, f"{arguments} did not end"
        out.seek(0)
        err.seek(0)
        return status, out.read(), err.read()


class Forked(fdspawn):  # type: ignore[misc]
    """A command at a terminal of its own, to be driven as pexpect drives a process that it started."""

    def __init__(
        self,
        arguments: Sequence[str],
        folder: Path,
        environment: Mapping[str, str],
        dimensions: tuple[int, int],
        timeout: float,
    ) -> None:
        ours, theirs = pty.openpty()
        fcntl.ioctl(theirs, termios.TIOCSWINSZ, struct.pack("HHHH", *dimensions, 0, 0))
        pid = _server().start(arguments, folder, environment, [theirs] * 3, terminal=True)
        os.close(theirs)
        super().__init__(ours, encoding="utf-8", timeout=timeout)
        self.pid: int = pid
        self.exitstatus: int | None = None
        self.signalstatus: int | None = None
        self.delaybeforesend = None

    def setwinsize(self, rows: int, columns: int) -> None:
        """Make the window another size; the process is told."""
        fcntl.ioctl(self.child_fd, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))

    def sendintr(self) -> None:
        """Type Ctrl-C."""
        self.send("\x03")

    def sendeof(self) -> None:
        """Type Ctrl-D."""
        self.send("\x04")

    def isalive(self) -> bool:
        """Whether the command still runs."""
        if self.exitstatus is None and self.signalstatus is None:
            self._know(_server().status(self.pid))
        return self.exitstatus is None and self.signalstatus is None

    def kill(self, number: int) -> None:
        """Send it a signal."""
        with suppress(ProcessLookupError):
            os.kill(self.pid, number)

    def wait(self) -> int:
        """Wait for its end; the exit status."""
        if self.exitstatus is None and self.signalstatus is None:
            self._know(_server().ended(self.pid))
        return self.exitstatus or 0

    def close(self, force: bool = True) -> None:
        """Hang up; without `force` let it see to its own end."""
        if self.child_fd != -1:
            super().close()
        if force:
            self.wait()

    def _know(self, status: int | None) -> None:
        if status is not None:
            self.exitstatus, self.signalstatus = (status, None) if status >= 0 else (None, -status)


class _Server:
    """The process that forks, and the line to it."""

    def __init__(self) -> None:
        self.line, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
        self.line.settimeout(SLOW)
        self.process = subprocess.Popen(
            [sys.executable, "-m", "tests.cli.ready", str(theirs.fileno())],
            pass_fds=[theirs.fileno()],
            cwd=TESTS,
            start_new_session=True,
        )
        theirs.close()

    def start(
        self,
        arguments: Sequence[str],
        folder: Path,
        environment: Mapping[str, str],
        files: list[int],
        *,
        terminal: bool,
        first: str = "",
    ) -> int:
        """Begin a command whose stdin, stdout and stderr are `files`; the number of its process."""
        told = {"arguments": list(arguments), "folder": str(folder), "environment": dict(environment)}
        limits = {limit: resource.getrlimit(limit) for limit in LIMITS}
        how = {"limits": list(limits.items()), "terminal": terminal, "first": first}
        pid = self._ask({**told, **how}, files)
        assert pid is not None
        return pid

    def status(self, pid: int) -> int | None:
        """Its exit status, the number of a signal below zero, or None while it runs."""
        return self._ask({"look": pid})

    def ended(self, pid: int) -> int | None:
        """The same, once it has ended; None where it does not."""
        try:
            return self._ask({"wait": pid})
        except TimeoutError:
            os.kill(pid, signal.SIGKILL)
            self.line.recv(MOST)
            return None

    def _ask(self, message: Message, files: Sequence[int] = ()) -> int | None:
        socket.send_fds(self.line, [json.dumps(message).encode()], files)
        answer: int | None = json.loads(self.line.recv(MOST))
        return answer


@cache
def _server() -> _Server:
    return _Server()


# --- in the process that forks ------------------------------------------------------------------


def _serve(line: socket.socket) -> None:
    ended: dict[int, int] = {}
    while True:
        data, files, _flags, _address = socket.recv_fds(line, MOST, 3)
        if not data:
            return
        message: Message = json.loads(data)
        if "arguments" in message:
            answer: int | None = _forked(message, files, line)
            for one in files:
                os.close(one)
        else:
            answer = _status(message, ended)
        line.send(json.dumps(answer).encode())


def _status(message: Message, ended: dict[int, int]) -> int | None:
    pid = message.get("wait") or message["look"]
    if pid not in ended:
        found, status = os.waitpid(pid, 0 if "wait" in message else os.WNOHANG)
        if not found:
            return None
        ended[pid] = os.waitstatus_to_exitcode(status)
    return ended[pid]


def _forked(message: Message, files: Sequence[int], line: socket.socket) -> int:
    pid = os.fork()
    if not pid:
        status = 1
        try:
            line.close()
            status = _run(message, files)
        except BaseException:
            traceback.print_exc()
        finally:
            os._exit(status)
    return pid


def _run(message: Message, files: Sequence[int]) -> int:
    if message["terminal"]:
        os.setsid()
        fcntl.ioctl(files[0], termios.TIOCSCTTY, 0)
    for at, one in enumerate(files):
        os.dup2(one, at)
    for one in files:
        os.close(one)
    for limit, bounds in message["limits"]:
        resource.setrlimit(limit, tuple(bounds))
    os.environ.clear()
    os.environ.update(message["environment"])
    os.chdir(message["folder"])
    sys.argv = ["firstpaper", *message["arguments"]]
    if message["first"]:
        import_module(message["first"])
    sys.stdin, sys.stdout, sys.stderr = (_stream(0, "r"), _stream(1, "w"), _stream(2, "w"))
    status = _status_of_main()
    for stream in (sys.stdout, sys.stderr):
        with suppress(OSError, ValueError):
            stream.flush()
    return status


def _stream(number: int, mode: str) -> io.TextIOWrapper:
    shown = os.isatty(number) or number == 2
    stream = open(number, f"{mode}b", closefd=False)  # noqa: SIM115 - it is the standard stream of a process
    return io.TextIOWrapper(stream, "utf-8", errors="surrogateescape", line_buffering=shown)


def _status_of_main() -> int:
    try:
        main()
    except SystemExit as end:
        if isinstance(end.code, str):
            sys.stderr.write(f"{end.code}\n")
            return 1
        return int(end.code or 0)
    except KeyboardInterrupt:
        signal.signal(signal.SIGINT, signal.SIG_DFL)
        os.kill(os.getpid(), signal.SIGINT)
    return 0


def _load() -> None:
    """Everything that a command may import, so that a fork has it."""
    for module in walk_packages(firstpaper.__path__, "firstpaper."):
        if not module.name.endswith("__main__"):
            import_module(module.name)


def _warm() -> None:
    """Read once what every command reads anew: questions, figures, rules, forms, fonts."""
    facts = (TESTS / "demo" / "households" / "two-children-moved-county.yaml").read_text("utf-8")
    case, _problems = facts_from(facts, DAY)
    packet = build(case, DAY)
    packet.pdf()
    packet.html()


def _lock_lightly() -> None:
    """Let a lock that a command makes cost the least that the program accepts."""
    new, light = Seal.new, Cost(memory_kib=8 * 1024, passes=1, lanes=1)
    Seal.new = lambda passphrase, cost=light: new(passphrase, cost)  # type: ignore[method-assign]


if __name__ == "__main__":
    _load()
    _warm()
    _lock_lightly()
    _serve(socket.socket(fileno=int(sys.argv[1])))
