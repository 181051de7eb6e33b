"""The first money page: what the pages are, how to keep them private, and the three groups they come in."""

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from firstpaper.counting import spell_date
from firstpaper.facts import known
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.sheet import Sheet


class Group(NamedTuple):
    """Pages that can be trusted alike."""

    title: str
    trust: str
    pages: tuple[tuple[str, str], ...]


def sheet(found: Reckoning, said: Iterable[Sheet], estimated: Iterable[Sheet], out: Iterable[Sheet]) -> Sheet:
    """The page that names all the others, in three groups."""
    return page(
        "start",
        _("Your private money pages"),
        Trust.PRIVATE,
        "",
        {
            "on": spell_date(found.on),
            "in_danger": bool(known(found.case.safety.dangers)),
            "hotline": figure("help.domestic_violence_hotline", found.on).value,
            "nothing_listed": not found.lines,
            "groups": tuple(group for group in _groups(said, estimated, out) if group.pages),
        },
    )


def _groups(said: Iterable[Sheet], estimated: Iterable[Sheet], out: Iterable[Sheet]) -> Sequence[Group]:
    return (
        Group(
            _("1. What can be said"),
            _("Where the law starts, and plain sums of your own numbers."),
            _named(said),
        ),
        Group(
            _("2. What can only be estimated"),
            _("Each page says how it was worked out, and each one ends with a lawyer."),
            _named(estimated),
        ),
        Group(_("3. What is left out"), "", _named(out)),
    )


def _named(sheets: Iterable[Sheet]) -> tuple[tuple[str, str], ...]:
    return tuple((sheet.title, sheet.purpose) for sheet in sheets)
