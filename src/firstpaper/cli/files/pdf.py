"""What the commands that draft a PDF share: where it goes, what locks it, the version for a screen."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.files.passphrases import Passphrases
from firstpaper.errors import UserError

if TYPE_CHECKING:
    from firstpaper.facts import Case

Lock = Callable[[bytes], bytes]


class OnlyPdfLocked(UserError):
    """A version for the screen cannot be locked, so nothing was drafted.

    Leave out either --seal or --html. A locked PDF can be read on a screen too.
    """

    code = "only_pdf_locked"


@dataclass(frozen=True)
class Files:
    """Where a draft goes: the PDF, what locks it, and the version for the screen."""

    pdf: Path
    html: Path | None = None
    lock: Lock | None = None

    def write(self, pdf: bytes, html: Callable[[], str]) -> None:
        """Put the draft where it goes. `html` is asked only where a version for the screen is wanted."""
        from firstpaper.cli.files.output import HTML, PDF, one_pipe, write_output

        one_pipe(self.pdf, self.html)
        write_output(self.pdf, self.lock(pdf) if self.lock else pdf, PDF)
        if self.html:
            write_output(self.html, html().encode(), HTML)


def refuse_locked_screen(seal: bool, html: Path | None) -> None:
    """Raise OnlyPdfLocked where a version for the screen was asked for too. Nothing was asked or done yet."""
    if seal and html:
        raise OnlyPdfLocked


def files_for(pdf: Path, html: Path | None, seal: bool, passphrases: Passphrases, case: "Case") -> Files:
    """Where a draft of a case goes, with a passphrase chosen for it if it is to be locked."""
    return Files(pdf, html, _lock(passphrases, case) if seal else None)


def _lock(passphrases: Passphrases, case: "Case") -> Lock:
    """What locks the finished PDF with a passphrase chosen for it."""
    from firstpaper.packet.locked import locked

    passphrase = passphrases.choose_one(case)
    return lambda pdf: locked(pdf, passphrase)
