"""What changes in a case, one line each: the key of the answer, what it is now, what stood there before."""

from collections.abc import Iterator, Sequence

from firstpaper.intake.differing import Difference
from firstpaper.intake.spoken import echo
from firstpaper.locale import _


def difference_line(one: Difference) -> str:
    """One change, old and new."""
    if one.before is None:
        return _("{key}: {after} (new)").format(key=one.key, after=_said(one, one.after))
    if one.after is None:
        return _("{key}: taken out (was: {before})").format(key=one.key, before=_said(one, one.before))
    return _("{key}: {after} (was: {before})").format(
        key=one.key, after=_said(one, one.after), before=_said(one, one.before)
    )


def difference_lines(found: Sequence[Difference]) -> Iterator[str]:
    """Each change as an item of a list."""
    yield from (f"  - {difference_line(one)}" for one in found)


def difference_data(one: Difference) -> dict[str, object]:
    """One change for programs; what was not told is null."""
    return {
        "key": one.key,
        "before": None if one.before is None else _said(one, one.before),
        "after": None if one.after is None else _said(one, one.after),
    }


def _said(one: Difference, value: object) -> str:
    return " / ".join(echo(one.asked, value).splitlines())
