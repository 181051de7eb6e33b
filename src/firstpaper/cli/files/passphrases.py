"""Where passphrases come from, and how a new one is chosen.

A person types them unseen at the terminal. A script names a file or a pipe with an option of its own; a
passphrase is never an argument and never an environment variable, because other programs can read those.
"""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.language import speak_for
from firstpaper.cli.terminal import InputEnded, Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.casefile.passphrase import Strength
    from firstpaper.casefile.sealing import Seal
    from firstpaper.facts import Case

TRIES = 3
MOST_SHARED = 5
"""Lines of a file that are tried as passphrases where many case files are opened; each try takes a while."""
PIPE = "-"
_LONGEST_SOURCE = 10_000

PassphraseOption = Annotated[
    str | None,
    typer.Option(
        "--passphrase-from",
        metavar="FILE",
        help=_(
            "For scripts: the file whose first line is the passphrase, or - for the first line piped in. A "
            "new one that is chosen is the next line."
        ),
    ),
]
SealOption = Annotated[
    bool, typer.Option("--seal", help=_("Lock the case file with a passphrase from this save on."))
]


class PassphraseUnreadable(UserError):
    """No passphrase could be read from {path}: {reason}.

    Nothing was changed. The first line of that file must be the passphrase, and nothing else.
    """

    code = "passphrase_unreadable"


class PassphraseNeeded(UserError):
    """A new passphrase is needed to lock this file, and there is nobody here to ask for it.

    Nothing was changed. Type the command yourself in a terminal window. For a script there is the option
    --passphrase-from.
    """

    code = "passphrase_needed"


class NextLineNeeded(UserError):
    """A new passphrase is needed to lock this, and {path} has no more lines.

    Nothing was changed. Its first line opens the case file. Write the new passphrase on the line after it; it
    may be the same one.
    """

    code = "next_passphrase_needed"


class NoneChosen(UserError):
    """No passphrase was chosen, so nothing was locked, and nothing was saved.

    To go on without a passphrase, type the command again without --seal.
    """

    code = "no_passphrase_chosen"


class Passphrases:
    """The person at the terminal, or the lines of a file or pipe, one after another."""

    def __init__(self, terminal: Terminal, source: str | None) -> None:
        self._terminal = terminal
        self._source = source
        self._lines = self._lines_of(source) if source is not None else None
        self._told_of_locks = False
        self._shared: list[str] | None = None
        self._for_all: str | None = None

    def shared(self) -> "Passphrases":
        """The same for many case files: each line of a file is tried on each, and what was typed is kept."""
        self._shared = [] if self._lines is None else self._every_line()
        return self

    def _every_line(self) -> list[str]:
        assert self._lines is not None
        lines = islice(self._lines, 1 if self._source == PIPE else MOST_SHARED)
        return [line for line in lines if line]

    def tries(self, path: Path) -> Iterator[str]:
        """Passphrases to open the file at `path` with, until one fits."""
        if self._shared is not None:
            yield from self._shared
        if self._shared is not None and self._lines is not None:
            return
        if self._lines is not None:
            yield from islice(self._lines, 1)
        elif self._terminal.interactive:
            prompt = _("Passphrase for {path} (it does not show while you type): ").format(path=path)
            yield self._typed(prompt)
            for _more in range(TRIES - 1):
                self._terminal.say(
                    _(
                        "That is not the passphrase. Look at the Caps Lock key and the language of your "
                        "keyboard, and try again."
                    )
                )
                yield self._typed(prompt)

    def _typed(self, prompt: str) -> str:
        typed = self._terminal.read_unseen(prompt)
        if self._shared is not None and typed:
            self._shared.insert(0, typed)
        return typed

    @contextmanager
    def opening(self, path: Path, *, begin: bool = False) -> "Iterator[OpenCase]":
        """The case file held open for writing; told once where its folder cannot keep two windows apart."""
        from firstpaper.casefile import OpenCase

        with OpenCase(path, begin=begin, passphrases=self.tries(path)) as opened:
            opened.file = speak_for(opened.file)
            if opened.alone and not self._told_of_locks:
                self._terminal.say(no_locks_words())
                self._told_of_locks = True
            yield opened

    def given(self) -> tuple[str, ...]:
        """The passphrases of a file or pipe, for many cases alike; none where a person would be asked."""
        return tuple(self._every_line()) if self._lines is not None else ()

    @property
    def from_a_file(self) -> bool:
        """Whether a file or a pipe holds them, and nobody is asked."""
        return self._lines is not None

    def ask_for_many(self, count: int) -> tuple[str, ...]:
        """One passphrase for the locked files of a folder, typed once; none where just Enter is typed."""
        if self._lines is not None or not self._terminal.interactive:
            return ()
        prompt = _n(
            "Passphrase for {count} locked file, or just Enter to leave it locked: ",
            "Passphrase for {count} locked files, or just Enter to leave them locked: ",
            count,
        ).format(count=count)
        typed = self._terminal.read_unseen(prompt)
        return (typed,) if typed else ()

    def choose(self, known: "Case") -> str:
        """A new passphrase, chosen with care; empty where the person decides against one.

        Raises PassphraseNeeded where nobody is there. Words of the case count as easy to guess. Where many
        case files are at hand, it is chosen once for all of them; the first line of a file is that one too.
        """
        if self._shared is None:
            return self._choose(known)
        if self._for_all is None:
            lines = self._shared if self._lines is not None else []
            self._for_all = lines[0] if lines else self._choose(known)
        return self._for_all

    def _choose(self, known: "Case") -> str:
        if self._lines is not None:
            if chosen := next(self._lines, ""):
                return chosen
            raise NextLineNeeded(path=self._source)
        if self._terminal.interactive:
            self._terminal.say(how_to_choose())
            return self._chosen(words_of(known))
        raise PassphraseNeeded

    def choose_one(self, known: "Case") -> str:
        """The same where locking was asked for. Raises NoneChosen where the person decides against it."""
        chosen = self.choose(known)
        if not chosen:
            raise NoneChosen
        return chosen

    def _chosen(self, known: frozenset[str]) -> str:
        from firstpaper.casefile.passphrase import prepared, strength

        while first := self._terminal.read_unseen(_("New passphrase, or just Enter for none: ")):
            again = self._terminal.read_unseen(_("The same once more: "))
            if prepared(again) != prepared(first):
                self._terminal.say(_("The two were not the same. Please try again."))
                continue
            how_strong = strength(first, known)
            self._terminal.say(strength_words(how_strong))
            if how_strong != "weak" or self._keeps_weak():
                return first
        return ""

    def _keeps_weak(self) -> bool:
        typed = self._terminal.read(_("Type use to take it all the same, or just Enter to choose another: "))
        self._terminal.line()
        return typed.strip().casefold() in ("use", _("use"))

    def _lines_of(self, source: str) -> Iterator[str] | None:
        if source != PIPE:
            return iter(_read_lines(Path(source)))
        return None if self._terminal.interactive else self._piped()

    def _piped(self) -> Iterator[str]:
        while True:
            try:
                yield self._terminal.read("")
            except InputEnded as error:
                reason = _("nothing more was piped in")
                raise PassphraseUnreadable(path=PIPE, reason=reason) from error


def lock_if_wanted(opened: "OpenCase", passphrases: Passphrases, wanted: bool) -> None:
    """Do what --seal asks for: lock a file that is not locked yet. Nothing on disk is changed before."""
    if wanted and not opened.sealed:
        opened.seal_with(new_seal(passphrases.choose_one(opened.case)))


def new_seal(passphrase: str) -> "Seal":
    """The seal made from a new passphrase."""
    from firstpaper.casefile.sealing import Seal

    return Seal.new(passphrase)


def no_locks_words() -> str:
    """What to know of a folder without locks."""
    return _(
        "This folder cannot keep two windows apart by itself. Open this case file in one window only, and on "
        "one computer only."
    )


def how_to_choose() -> str:
    """What to know before choosing a passphrase."""
    return _(
        "Choose four words or more that have nothing to do with each other, and remember them. Leave out "
        "names, birthdays and anything the other person could guess. If you forget the passphrase, nobody "
        "can open the file any more. We cannot either. Nothing shows while you type it."
    )


def strength_words(strength: "Strength") -> str:
    """How strong a passphrase is, in plain words."""
    return {
        "weak": _(
            "This passphrase is weak. Somebody who knows you, or a computer that tries many, could guess it."
        ),
        "fair": _("This passphrase is fair. One more word would make it a strong one."),
        "strong": _("This passphrase is strong. Guessing it would take fast computers many years."),
    }[strength]


def words_of(case: "Case") -> frozenset[str]:
    """The names, places and numbers in a case: what somebody who knows the filer would try first."""
    text = case.model_dump_json(exclude_unset=True)
    return frozenset(re.findall(r"[^\W\d_]{3,}|\d{2,}", text))


def _read_lines(path: Path) -> list[str]:
    try:
        with path.open(encoding="utf-8-sig", newline=None) as file:
            lines = file.read(_LONGEST_SOURCE).split("\n")
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) else None
        raise PassphraseUnreadable(path=path, reason=reason or _("it is not plain text")) from error
    if not lines[0]:
        raise PassphraseUnreadable(path=path, reason=_("its first line is empty"))
    return lines
