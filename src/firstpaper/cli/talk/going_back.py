"""Going back: to the last whole copy of a damaged file, or to how things stood before the last answer."""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.terminal import Terminal
from firstpaper.intake.differing import differences
from firstpaper.intake.kinds import ROWS, row_of
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.casefile import CaseFile, OpenCase
    from firstpaper.casefile.errors import CopyKept
    from firstpaper.facts import Case

MOST_SHOWN = 20
"""Answers that were taken back and are named one by one."""


def goes_on_from_copy(terminal: Terminal, path: Path, kept: "CopyKept") -> bool:
    """Offer to put the last whole copy in place, and do it where the person says yes."""
    if not terminal.interactive:
        return False
    from firstpaper.casefile import bring_back

    terminal.say(kept.message)
    typed = terminal.read(_("Go on from that copy now? Type yes, or just Enter to change nothing: "))
    terminal.line()
    if typed.strip().casefold() not in ("yes", _("yes")):
        return False
    bring_back(path)
    return True


def take_back(opened: "OpenCase") -> tuple[tuple[str, ...], str]:
    """Undo the last saved change: the keys of the answers that changed, and what to say about it."""
    before = opened.file
    after = opened.undo()
    if after is None:
        return (), _("There is nothing left to take back. Only the last few answers are kept for that.")
    keys = tuple(one.key for one in differences(before.case, after.case))
    if not keys:
        return (), _open_again(after.case, [key for key in before.passed if key not in after.passed])
    return keys, "\n".join(_taken_back(before, after.case, keys))


def _taken_back(before: "CaseFile", after: "Case", keys: Sequence[str]) -> Iterator[str]:
    """What was taken back: whole rows by their count, other answers by their questions."""
    rows = {group: len(before.case.fact(group)) - len(after.fact(group)) for group in ROWS}
    counted = [_rows_words(group, count) for group, count in rows.items() if count > 0]
    others = [key for key in keys if not _in_new_row(key, after, rows)]
    what = ", ".join(counted)
    if what and before.last:
        yield _("Taken back: {what}, {step}.").format(what=what, step=before.last)
    elif what:
        yield _("Taken back: {what}.").format(what=what)
    elif before.last:
        yield _("Taken back: what was {step}.").format(step=before.last)
    if others:
        yield (
            _("These answers are again what they were before:")
            if what or before.last
            else _("Taken back. These answers are again what they were before:")
        )
        yield from _questions(before.case, others)


def _open_again(case: "Case", keys: Sequence[str]) -> str:
    head = _("Taken back: the question you skipped is open again.")
    return "\n".join([head, *_questions(case, keys)])


def _rows_words(group: str, count: int) -> str:
    return {
        "child": _n("{count} child", "{count} children", count),
        "asset": _n("{count} thing", "{count} things", count),
        "debt": _n("{count} debt", "{count} debts", count),
    }[group].format(count=count)


def _in_new_row(key: str, after: "Case", rows: Mapping[str, int]) -> bool:
    """Whether the key is of a row that is not there any more."""
    row = row_of(key)
    return row is not None and rows[row.group] > 0 and row.number > len(after.fact(row.group))


def _questions(case: "Case", keys: Sequence[str]) -> Iterator[str]:
    """The questions alone: an answer that somebody took back is not shown once more."""
    shown = [words for key in keys if (words := _question(key, case))]
    yield from (f"  - {words}" for words in shown[:MOST_SHOWN])
    if (more := len(shown) - MOST_SHOWN) > 0:
        yield "  " + _n("And {count} more.", "And {count} more.", more).format(count=more)


def _question(key: str, case: "Case") -> str:
    from firstpaper.intake.events import asking_anything

    one = asking_anything(key, case)
    return one.ask if one else ""
