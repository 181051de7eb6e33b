"""Errors that are for people.

One class a thing that can go wrong. The docstring is the message a person reads, with the places to
fill in braces: what happened, why it matters, what to do. `code` is for programs and never changes;
`exit_code` is what the command ends with. Details are file names, line numbers and keys of facts,
never what somebody told us.
"""

import os
import re
from inspect import cleandoc
from shlex import quote
from typing import ClassVar

from firstpaper.locale import _, paragraphs

_PLAIN_ON_WINDOWS = r"[\w@%+=:,./\\~-]+"


def quoted(word: str) -> str:
    """A word as the shell of this system takes it for one: in double quotes where Windows reads it."""
    if os.name != "nt":
        return quote(word)
    return word if re.fullmatch(_PLAIN_ON_WINDOWS, word) else '"' + word.replace('"', r"\"") + '"'


class UserError(Exception):
    """Something went wrong, and nothing was changed. Please try again."""

    code: ClassVar[str] = "error"
    exit_code: ClassVar[int] = 2

    def __init__(self, **details: object) -> None:
        super().__init__(self.code)
        self.details = details

    def __reduce__(self) -> tuple[object, ...]:
        return _again, (type(self), self.details)

    @property
    def message(self) -> str:
        """The message in the reader's language, with the details filled in, a line for each paragraph."""
        words = cleandoc(type(self).__doc__ or self.code)
        return "\n\n".join(map(self._filled, paragraphs(words)))

    def _filled(self, paragraph: str) -> str:
        """The paragraph with its details; where it is a command to type, as a shell takes them."""
        if not paragraph.startswith("firstpaper "):
            return _(paragraph).format(**self.details)
        return paragraph.format(**{name: quoted(str(value)) for name, value in self.details.items()})

    def __str__(self) -> str:
        return self.message


def _again(kind: type[UserError], details: dict[str, object]) -> UserError:
    """The same error, in another process."""
    return kind(**details)


class ProgramFault(UserError):
    """Firstpaper met a fault of its own and stopped ({fault}).

    What was saved before is safe and unchanged. Trying again may help. Please report this line to the
    people who make Firstpaper: it says where in the program it happened, and nothing about you.
    """

    code = "program_fault"
