"""The packets of many case files, on every core: one that fails stops no other, and no work is done twice."""

from collections.abc import Callable, Iterable, Sequence
from contextvars import copy_context
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from firstpaper.casefile import load
from firstpaper.cli.batch import together, tried
from firstpaper.cli.files.output import beside, is_pdf
from firstpaper.cli.files.pdf import Files
from firstpaper.cli.language import speak_for
from firstpaper.cli.processes import over_all
from firstpaper.cli.result import Exit, Result
from firstpaper.intake import standing
from firstpaper.law.measures.ending import ended
from firstpaper.locale import _, _n

PAYS_FROM = 4
"""Packets from which on a second process pays; one takes longer than starting it."""


@dataclass(frozen=True)
class Drafting:
    """How each packet is drafted. One that is newer than its case, and for the same day, is kept."""

    day: date
    passphrases: tuple[str, ...]
    lock: str | None
    again: bool
    require_complete: bool

    def __call__(self, path: Path) -> Result:
        """Draft the packet of one case beside its case file."""
        return copy_context().run(tried, self._drafted, path)

    def _drafted(self, path: Path) -> Result:
        from firstpaper.cli.files.packet import LATER_ENDING, Wanted, draft, wanted_now

        case = speak_for(load(path, self.passphrases)).case
        if ended(standing(case), self.day):
            return Result(data={"kept": False, "ended": True}, line=_("ended, so nothing is drafted"))
        wanted = wanted_now(case)
        pdf = beside(path, LATER_ENDING if wanted is Wanted.LATER else ".pdf")
        if not self.again and self._is_done(path, pdf):
            return Result(data={"pdf": str(pdf), "kept": True}, line=_("already drafted"))
        drafted = draft(
            case, self.day, Files(pdf, lock=self._lock()), wanted, require_complete=self.require_complete
        )
        return Result(data={**drafted.data, "kept": False}, exit=drafted.exit, line=drafted.line)

    def _lock(self) -> Callable[[bytes], bytes] | None:
        from firstpaper.packet.locked import locked

        passphrase = self.lock
        return None if passphrase is None else lambda pdf: locked(pdf, passphrase)

    def _is_done(self, path: Path, pdf: Path) -> bool:
        if not is_pdf(pdf) or pdf.stat().st_mtime < path.stat().st_mtime:
            return False
        return _drawn_for(pdf) == f"{self.day:%Y%m%d}"


def _drawn_for(pdf: Path) -> str:
    """The day that a PDF of ours carries; empty where it is locked or carries none."""
    from pypdf import PdfReader
    from pypdf.errors import PyPdfError

    try:
        info = PdfReader(pdf).metadata
        return str(info.get("/CreationDate", "")).removeprefix("D:")[:8] if info else ""
    except (PyPdfError, OSError, ValueError):
        return ""


def draft_all(
    files: Sequence[Path], drafting: Drafting, told: Callable[[int, int], None] | None = None
) -> Result:
    """The packets of all these cases, as one result."""
    done = list(zip(files, over_all(drafting, files, told, pays_from=PAYS_FROM, batch=1), strict=True))
    result = together(done)
    return Result(
        data={**result.data, **_counts([one for _path, one in done])},
        text="\n".join([result.text, *_summary([one for _path, one in done])]),
        exit=result.exit,
    )


def _counts(results: Iterable[Result]) -> dict[str, int]:
    found = list(results)
    return {
        "drafted": sum("sheets" in one.data for one in found),
        "kept": sum(bool(one.data.get("kept")) for one in found),
        "ended": sum(bool(one.data.get("ended")) for one in found),
        "failed": sum(bool(one.errors) for one in found),
        "stopped": sum(one.exit == Exit.STOPS for one in found),
    }


def _summary(results: Sequence[Result]) -> list[str]:
    count = _counts(results)
    kept, over, stopped = count["kept"], count["ended"], count["stopped"]
    words = [
        _n("{count} packet is drafted.", "{count} packets are drafted.", count["drafted"]).format(
            count=count["drafted"]
        )
    ]
    if kept:
        words.append(
            _n(
                "{count} was drafted before and is as good as new; --again drafts it anew.",
                "{count} were drafted before and are as good as new; --again drafts them anew.",
                kept,
            ).format(count=kept)
        )
    if over:
        words.append(
            _n("{count} is ended and was left out.", "{count} are ended and were left out.", over).format(
                count=over
            )
        )
    if stopped:
        words.append(
            _n(
                "{count} must not be filed yet; its cover page says why.",
                "{count} must not be filed yet; their cover pages say why.",
                stopped,
            ).format(count=stopped)
        )
    return words
