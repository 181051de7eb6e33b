"""Files that a command makes for a person: written whole, for their owner alone, over nothing else."""

import re
from glob import escape
from pathlib import Path

from firstpaper.casefile.errors import CaseFileUnreadable, NotOurOutput
from firstpaper.casefile.saving import rests, save, sweep
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError

PDF = b"%PDF-"
HTML = b"<!doctype html"
CALENDAR = b"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Dates//Dates//EN\r\n"
LATER = "-later"
"""Ends the name of a packet for after the filing, so that it never replaces the one for the filing."""
PRIVATE = "-private"
"""Ends the name of the money pages, so that they never look like a packet."""
GUIDE = "-guide-"
"""Stands before the number of the form in the name of a read-along of a case."""
DRAFTS = {
    ".pdf": PDF,
    f"{LATER}.pdf": PDF,
    f"{PRIVATE}.pdf": PDF,
    ".html": HTML,
    f"{PRIVATE}.html": HTML,
    ".ics": CALENDAR,
}
"""The endings of the files drafted beside a case file, and how each kind begins."""
PIPE = Path("-")
"""Stands for standard output. What is said goes to standard error then."""
TABLE = "\ufeff".encode()
"""How every table begins, by whatever names follow."""
FACTS = (".yaml", ".yml")
ENDINGS = {PDF: (".pdf",), HTML: (".html", ".htm"), CALENDAR: (".ics",), TABLE: (".csv",)}
"""How the name of each kind of file ends."""
FILLED = re.compile(rf"({GUIDE}after|({GUIDE}|-)F[LW]-\d{{3}}(\([A-Z]\))?(-\d+)?)\.pdf")
"""The ending of a filled copy of the court's own form, with which copy it is, or of a read-along."""


class FactsThere(UserError):
    """The file {path} is already there, and somebody may have written answers in it.

    It was left alone. Choose another name. Or remove that file first, if nobody needs it.
    """

    code = "facts_there"


class OnePipe(UserError):
    """Two files cannot both go to standard output, so neither was made.

    Whatever reads them would find them as one. Give one of the two a name instead of -
    """

    code = "one_pipe"


class OtherEnding(UserError):
    """{path} was not made, because a file of this kind has a name that ends with {known}.

    With another ending, other programs would not know what it is. Type the command again with {known} at the
    end of the name.
    """

    code = "other_ending"


def beside(case: Path, ending: str) -> Path:
    """The draft of that ending under the name of a case file, beside it."""
    return case.with_name(case.stem + ending)


def write_output(path: Path, data: bytes, begins: bytes) -> None:
    """Write `data` to `path`, replacing only an empty file or one of the same kind. `-` is standard output.

    `begins` is how a file of that kind begins; letter case does not matter.
    """
    if path == PIPE:
        Terminal.put_out(data)
        return
    _refuse_other_files(path, begins)
    _refuse_other_endings(path, begins)
    sweep(path)
    save(path, data)


def write_facts(path: Path, text: str) -> None:
    """Write a file of facts, never over anything that is there. `-` is standard output."""
    if path == PIPE:
        Terminal.put_out(text.encode())
        return
    if path.exists() and (not path.is_file() or path.stat().st_size):
        raise FactsThere(path=path)
    _refuse_endings_but(FACTS, path)
    save(path, text.encode())


def one_pipe(*paths: Path | None) -> None:
    """Raise OnePipe where more than one of the files is to go to standard output."""
    if paths.count(PIPE) > 1:
        raise OnePipe


def is_pdf(path: Path) -> bool:
    """Whether a PDF lies there."""
    return path.is_file() and _begins(path, PDF)


def _refuse_other_endings(path: Path, begins: bytes) -> None:
    """Raise OtherEnding where the name says that the file is of another kind than the one made."""
    for start, right in ENDINGS.items():
        if begins.startswith(start):
            _refuse_endings_but(right, path)


def _refuse_endings_but(right: tuple[str, ...], path: Path) -> None:
    if path.suffix.lower() not in right:
        raise OtherEnding(path=path, known=right[0])


def drafts_beside(case: Path) -> list[Path]:
    """Drafts under the name of a case file, beside it, and what a killed drafting left."""
    found: list[Path] = []
    for ending, begins in DRAFTS.items():
        draft = beside(case, ending)
        if draft != case and draft.is_file() and _begins(draft, begins):
            found.append(draft)
        found += rests(draft)
    return [*found, *_filled_beside(case)]


def _filled_beside(case: Path) -> list[Path]:
    """Filled forms and read-alongs under the name of a case file, and what a killed drafting left."""
    found: list[Path] = []
    for path in sorted(case.parent.glob(f"{escape(case.stem)}-*.pdf")):
        if FILLED.fullmatch(path.name.removeprefix(case.stem)) and _begins(path, PDF):
            found += [path, *rests(path)]
    return found


def _begins(path: Path, begins: bytes) -> bool:
    try:
        with path.open("rb") as file:
            return file.read(len(begins)).lower() == begins.lower()
    except OSError:
        return False


def _refuse_other_files(path: Path, begins: bytes) -> None:
    if path.is_symlink():  # what it leads to is not ours to replace
        raise NotOurOutput(path=path)
    if not path.exists():
        return
    if not path.is_file():
        raise NotOurOutput(path=path)
    try:
        with path.open("rb") as file:
            opening = file.read(len(begins))
    except OSError as error:
        raise CaseFileUnreadable(path=path, reason=error.strerror or type(error).__name__) from error
    if opening and opening.lower() != begins.lower():
        raise NotOurOutput(path=path)
