"""What `enter` says: what a file of facts changed, or would change."""

from collections.abc import Iterator, Sequence
from pathlib import Path

from firstpaper.cli.talk.review import answered, still_open
from firstpaper.cli.words.differences import difference_data, difference_lines
from firstpaper.cli.words.listed import left_out
from firstpaper.facts import Case
from firstpaper.intake import set_aside
from firstpaper.intake.differing import Difference
from firstpaper.intake.listing import listed
from firstpaper.locale import _, _n

MOST_SHOWN = 20
"""New answers that are named one by one where all are; what is replaced is always named."""


def entered_head(case: Case, path: Path) -> Iterator[str]:
    """Where the facts are saved, and how many questions are answered and open."""
    taken, left = len(answered(case)), len(still_open(case))
    yield _("The facts are saved in {path}.").format(path=path)
    yield _n("{count} question is answered.", "{count} questions are answered.", taken).format(count=taken)
    yield _n("{count} is still open.", "{count} are still open.", left).format(count=left)


def entered_changes(found: Sequence[Difference]) -> Iterator[str]:
    """What was replaced, line by line, and what is new: named too, where it is not much."""
    new = [one for one in found if one.before is None]
    shown = [one for one in found if one.before is not None or len(new) <= MOST_SHOWN]
    if not found:
        yield _("Nothing changed: the case held all of this already.")
    if shown:
        yield _("What changed:")
        yield from difference_lines(shown)
    if more := len(found) - len(shown):
        yield _n("{count} answer is new.", "{count} answers are new.", more).format(count=more)


def set_aside_words(case: Case, keys: Sequence[str]) -> str:
    """Answers that do not count now: for the kind of case that was told, or until a kind is told."""
    names = ", ".join(keys)
    if case.matter.kind is None:
        return _("These answers count as soon as the kind of case is told: {keys}").format(keys=names)
    return _("These answers do not fit this kind of case and are set aside: {keys}").format(keys=names)


def entered_line(found: Sequence[Difference]) -> str:
    """What changed, for a line of one among many."""
    replaced = [one.key for one in found if one.before is not None]
    new = len(found) - len(replaced)
    parts = [
        *([_("changed: {keys}").format(keys=", ".join(replaced))] if replaced else []),
        *([_n("{count} new answer", "{count} new answers", new).format(count=new)] if new else []),
    ]
    return "; ".join(parts) or _("nothing changed")


def would_change(count: int) -> str:
    """How much would change, where nothing is saved."""
    if not count:
        return _("Nothing would change, and nothing was saved.")
    return _n(
        "{count} answer would change. Nothing was saved.",
        "{count} answers would change. Nothing was saved.",
        count,
    ).format(count=count)


def entered_data(case: Case, read: Case, found: Sequence[Difference]) -> dict[str, object]:
    """What a file of facts changed, for programs."""
    return {
        "changed": [difference_data(one) for one in found],
        "answered": len(answered(case)),
        "listed": len(listed(case)),
        "left_out": [one.key for one in left_out(read, case)],
        "open_questions": [one.key for one in still_open(case)],
        "set_aside": list(set_aside(case)),
    }
