"""Keep a passphrase off the screen that is typed before its prompt has appeared.

The system shows what is typed until a program tells it not to, and a busy computer may take seconds to reach
the prompt. So where a locked file is named, or one is to be locked, showing is turned off before anything is
loaded, and on again before the first question whose answer may be seen. Whatever was typed too early is
thrown away by the prompt.
"""

import atexit
import os
import sys
from collections.abc import Sequence
from contextlib import suppress
from typing import Any

try:
    import termios
except ImportError:  # Windows asks without showing from the first key on
    termios = None  # type: ignore[assignment]

SEALED = b'{"sealed":'
"""How a locked file begins. The package that knows is not loaded yet, to be here early."""
HOME = "home.case"
_ECHO = 3
"""Where termios keeps the switch, among the modes of a terminal."""
_before: list[Any] = []


def hide_what_is_typed(arguments: Sequence[str]) -> None:
    """Show nothing of what is typed from now on, where one of the files named is locked or is to be."""
    asked = arguments[:1] == ["seal"] or "--seal" in arguments
    if termios is None or not (asked or any(map(_is_locked, (*arguments, HOME)))):
        return
    with suppress(OSError, ValueError, AttributeError, termios.error):
        modes = termios.tcgetattr(sys.stdin.fileno())
        _before[:] = [sys.stdin.fileno(), termios.tcgetattr(sys.stdin.fileno())]
        modes[_ECHO] &= ~termios.ECHO
        termios.tcsetattr(sys.stdin.fileno(), termios.TCSANOW, modes)
        atexit.register(show_again)


def show_again() -> None:
    """Show what is typed, as before."""
    if _before:
        handle, modes = _before
        _before.clear()
        with suppress(OSError, termios.error):
            termios.tcsetattr(handle, termios.TCSADRAIN, modes)


def _is_locked(name: str) -> bool:
    try:
        with open(name, "rb", opener=_without_waiting) as file:
            return file.read(len(SEALED)) == SEALED
    except (OSError, ValueError):
        return False


def _without_waiting(path: str, flags: int) -> int:
    return os.open(path, flags | getattr(os, "O_NONBLOCK", 0))
