"""The only place that reads from or writes to a terminal.

Results go to stdout; prompts and everything said on the way go to stderr. Lines are only ever added:
no colour, no cursor movement, no repainting, so that a screen reader, a pipe and a test all get the
same words. Nothing that a person typed can send a control character back to the screen. The one
exception is `clear`: it wipes what was said off the screen of somebody who leaves. What would run off
the top of the screen unread waits there for Enter.
"""

import io
import locale
import os
import shutil
import signal
import sys
import textwrap
from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from typing import ClassVar

from firstpaper.cli.early import show_again
from firstpaper.locale import _

WIDEST = 80
KEPT_FREE = 2
"""Rows of the screen below a full page: for the prompt, and for what is typed at it."""

BEAT = 0.5
"""Seconds after which a signal is seen that came just before the wait for a key."""

LONGEST_LINE = 50_000
"""Letters kept of one line: more than any answer may have, so that a longer line is refused as too long."""

KEEPS_TOGETHER = "\xa0"
"""A blank at which no line is broken: inside a command that is to be typed. It is shown as a plain one."""
OUR_COMMAND = "firstpaper "
"""What a line begins with that is to be typed as it stands, however long it is."""
_ADDRESS = "https://"
_JOINERS = "\u200c\u200d"
_UNREADABLE = "\ufffd"
_CLEARED = "\x1b[H\x1b[2J\x1b[3J"
"""Cursor to the top, screen empty, scrollback empty (ECMA-48; the last as the common terminals take it)."""


class InputEnded(Exception):
    """There is nothing more to read: the pipe is empty, or the person closed the input (Ctrl-D)."""


class Left(Exception):
    """The person leaves. What was answered is saved."""


def plain(text: str) -> str:
    """Text without any character that a terminal would obey or hide."""
    return _safe(text).replace(KEEPS_TOGETHER, " ")


def _safe(text: str) -> str:
    allowed = ("\n", KEEPS_TOGETHER, *_JOINERS)
    return "".join(c for c in text.replace("\t", " ") if c.isprintable() or c in allowed)


def wrapped(text: str, width: int) -> str:
    """Paragraphs and lists folded to `width`; a line keeps its indent, and so do the lines after it."""
    lines = (folded for line in _safe(text).split("\n") for folded in _folded(line, width))
    return "\n".join(lines).replace(KEEPS_TOGETHER, " ")


def _folded(line: str, width: int) -> list[str]:
    if not line.strip():
        return [""]
    body = line.lstrip()
    if body.startswith((OUR_COMMAND, _ADDRESS)):  # one that is broken cannot be copied
        return [line]
    hanging = len(line) - len(body) + _marker(body)
    return textwrap.wrap(
        body,
        width,
        initial_indent=line[: len(line) - len(body)],
        subsequent_indent=" " * hanging,
        break_long_words=KEEPS_TOGETHER not in body,
        break_on_hyphens=False,
    )


def _marker(body: str) -> int:
    """How wide a list marker such as "3. " or "- " is, so that the lines after it line up."""
    first, space, _rest = body.partition(" ")
    numbered = first[:-1].isdecimal() and first[-1] == "."
    return len(first) + 1 if space and (first == "-" or numbered) else 0


class Terminal:
    """The words that go out and the lines that come in."""

    pausing: ClassVar[bool] = True
    """Whether a full screen waits for Enter. Only a terminal does, whatever this says."""

    taken: ClassVar[bool] = False
    """Whether stdout holds a file, so that results go to stderr with everything else that is said."""

    def __init__(self) -> None:
        _replace_missing_streams()
        self.interactive = _is_terminal(sys.stdin)
        self._line_editing = self.interactive and _is_terminal(sys.stdout)
        self._pauses = self.pausing and self._line_editing and _is_terminal(sys.stderr)
        self._rows = 0
        for stream in (sys.stdout, sys.stderr, sys.stdin):
            if hasattr(stream, "reconfigure"):
                stream.reconfigure(errors="replace")
        if self._line_editing:
            _line_editing_without_traces()

    @property
    def piped(self) -> bool:
        """Whether another program or a file takes the results."""
        return not _is_terminal(sys.stdout)

    def pauses_at(self, text: str) -> bool:
        """Whether the text is more than one screen."""
        return self._pauses and self._rows + text.count("\n") + 1 > self._page

    def say(self, *paragraphs: str) -> None:
        """Say something on the way: paragraphs with an empty line after each."""
        for paragraph in paragraphs:
            self._line(wrapped(paragraph, self._width) + "\n")

    def line(self, text: str = "") -> None:
        """Say one thing on the way, without an empty line after it."""
        self._line(wrapped(text, self._width))

    def together(self, lines: Iterable[str]) -> None:
        """Say lines that belong together, on one screen where they fit on one."""
        text = wrapped("\n".join(lines), self._width)
        if self._rows and self.pauses_at(text):
            self._pause()
        self._line(text)

    def result(self, text: str) -> None:
        """Put the result of a command on stdout, folded for reading."""
        if self.taken:
            self.say(text)
            return
        for part in self._pages(wrapped(text, self._width)):
            sys.stdout.write(part + "\n")
            sys.stdout.flush()

    @classmethod
    def put_out(cls, data: bytes) -> None:
        """Put a file on stdout, exactly as it is."""
        cls.taken = True
        sys.stdout.flush()
        sys.stdout.buffer.write(data)
        sys.stdout.buffer.flush()

    def raw_result(self, text: str) -> None:
        """Put a result for programs on stdout, exactly as it is; on stderr where stdout holds a file."""
        stream = sys.stderr if self.taken else sys.stdout
        stream.write(text)
        stream.flush()

    def result_is_lost(self) -> None:
        """Nobody reads stdout any more, or its disk is full: say so, and let the program end in peace."""
        self.say(_("The result could not be written to where it was sent."))
        sys.stdout = io.StringIO()

    def read(self, prompt: str) -> str:
        """One line that somebody typed. Raises InputEnded when there is nothing more."""
        while True:
            line = self._read(plain(prompt))
            if _UNREADABLE not in line:
                return line
            self.say(_("Some of those letters did not arrive as letters. Please type the line again."))

    def read_unseen(self, prompt: str) -> str:
        """One line that does not show while it is typed. Only for a person at a terminal."""
        from getpass import getpass

        while True:
            try:
                with _signals_seen():
                    return getpass(plain(prompt))
            except UnicodeDecodeError:
                self.say(_("Some of those letters did not arrive as letters. Please type the line again."))
            except (EOFError, OSError) as error:
                self._line("")
                raise InputEnded from error

    def clear(self) -> None:
        """Empty the screen and what can be scrolled back to, where the terminal knows how; else nothing."""
        self._rows = 0
        if self.interactive and _is_terminal(sys.stderr) and _knows_escapes():
            with suppress(OSError):
                sys.stderr.write(_CLEARED)
                sys.stderr.flush()

    def _read(self, prompt: str) -> str:
        self._rows = 0
        sys.stdout.flush()
        show_again()
        try:
            if self._line_editing:
                with _signals_seen():
                    return input(prompt)[:LONGEST_LINE]
            sys.stderr.write(prompt)
            sys.stderr.flush()
            line = _bounded_line().removesuffix("\r")
            if not self.interactive:
                self._line("")
            return line
        except (EOFError, OSError) as error:
            self._line("")
            raise InputEnded from error

    def _line(self, text: str) -> None:
        with suppress(OSError):  # the window may be gone; what matters is saved
            for part in self._pages(text):
                sys.stderr.write(part + "\n")
                sys.stderr.flush()

    def _pages(self, text: str) -> Iterator[str]:
        """The text in parts that fit on the screen below what stands there unread, with a pause between."""
        lines = text.split("\n")
        while self._pauses and self._rows + len(lines) > self._page:
            if cut := _good_cut(lines, self._page - self._rows, self._page):
                yield "\n".join(lines[:cut])
                self._rows += cut
                lines = lines[cut:]
            if not any(lines):
                return
            self._pause()
        self._rows += len(lines)
        yield "\n".join(lines)

    def _pause(self) -> None:
        """Wait until the screen has been read. Raises Left where the person wants no more of it."""
        from firstpaper.intake.commands import Command, command_of

        typed = self._read(_("Enter for more: "))
        if command_of(typed) is Command.LEAVE:
            raise Left

    @property
    def _page(self) -> int:
        return max(shutil.get_terminal_size((WIDEST, 24)).lines - KEPT_FREE, KEPT_FREE)

    @property
    def _width(self) -> int:
        return min(WIDEST, shutil.get_terminal_size((WIDEST, 24)).columns)


def _good_cut(lines: list[str], room: int, screen: int) -> int:
    """How many of the lines to show first, so that as little as can be is torn apart.

    Up to an empty line, where the lower half of the room has one; else none, where all of them fit on a
    fresh screen; else as many as there is room for.
    """
    anyhow = 0 if len(lines) <= screen else max(room, 0)
    return next((at for at in range(room, room // 2, -1) if not lines[at - 1].strip()), anyhow)


def _bounded_line() -> str:
    """One line of the input, as much of it as is kept. Raises EOFError where there is nothing more."""
    line = sys.stdin.readline(LONGEST_LINE)
    if not line:
        raise EOFError
    more = line
    while len(more) == LONGEST_LINE and not more.endswith("\n"):  # the rest of it is read and let go
        more = sys.stdin.readline(LONGEST_LINE)
    return line.removesuffix("\n")


@contextmanager
def _signals_seen() -> Iterator[None]:
    """Break the wait for a key now and then, and go on with it.

    Python looks at a signal only where it breaks a wait. One that comes just before would be seen at the next
    key, and the lock of the case be kept till then.
    """
    if not hasattr(signal, "setitimer"):  # Windows
        yield
        return
    signal.signal(signal.SIGALRM, lambda _number, _frame: None)
    signal.setitimer(signal.ITIMER_REAL, BEAT, BEAT)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)


def _replace_missing_streams() -> None:
    """Stand-ins for streams that were closed before the program began."""
    sys.stdin = sys.stdin or io.StringIO()
    sys.stdout = sys.stdout or io.StringIO()
    sys.stderr = sys.stderr or io.StringIO()


def _knows_escapes() -> bool:
    """Whether the terminal obeys escape sequences; a terminal that says nothing about itself may not."""
    if os.name == "nt":
        return "WT_SESSION" in os.environ
    return os.environ.get("TERM", "dumb") not in ("", "dumb", "unknown")


def _is_terminal(stream: object) -> bool:
    with suppress(AttributeError, ValueError, OSError):
        return os.isatty(stream.fileno())  # type: ignore[attr-defined]
    return False


def _line_editing_without_traces() -> None:
    """Editing keys where the system has them; no escape sequences, and no memory of what was typed."""
    if not _line_editing_keeps_letters():
        return
    try:
        import readline
    except ImportError:
        return
    readline.parse_and_bind("set enable-bracketed-paste off")
    readline.parse_and_bind("set enable-meta-key off")
    with suppress(AttributeError):
        readline.set_auto_history(False)


def _line_editing_keeps_letters() -> bool:
    """Whether the computer is set to UTF-8; elsewhere the editing keys drop letters such as "Ł" silently."""
    try:
        return locale.nl_langinfo(locale.CODESET).upper() in ("UTF-8", "UTF8")
    except AttributeError:
        return False
