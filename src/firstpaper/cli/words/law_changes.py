"""What changes soon, in words for a terminal and as plain data for programs."""

from collections.abc import Iterator, Sequence

from firstpaper.counting import spell_date
from firstpaper.law.changes import NEAR_DAYS, Change
from firstpaper.locale import _


def changes_text(changes: Sequence[Change]) -> Iterator[str]:
    """The changes under a heading, in the order of their days; nothing where there is none."""
    if changes:
        yield _("SOON: what is different if you file later, within {days} days").format(days=NEAR_DAYS)
        yield from ("\n".join(_lines(change)) for change in changes)


def change_data(change: Change) -> dict[str, object]:
    """One change for programs."""
    return {
        "on": change.on,
        "rule": change.rule,
        "title": change.title,
        "says": change.says,
        "heavier": change.heavier,
        "lighter": change.lighter,
        "before": [one.says for one in change.before],
        "after": [one.says for one in change.after],
    }


def _lines(change: Change) -> Iterator[str]:
    yield f"  - {change.title}"
    yield f"    {change.says}"
    if change.heavier:
        yield "    " + _("Better before {day}.").format(day=spell_date(change.on))
    elif change.lighter:
        yield "    " + _("Better from that day on.")
