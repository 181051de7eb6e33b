"""The petition packet: sheets for one household and one filing day, as PDF or for a screen.

    packet = build(case, on)
    packet.pdf()       one tagged PDF/UA-1 file
    packet.html()      the same sheets for a screen
    packet.warnings    what could not be printed as typed, in plain words

`build(case, on, stages=[Stage.FIRST])` leaves out what is only wanted after the filing.

Nothing here decides anything: `brief` gathers what facts, law and forms say, `views` choose the
words, `templates/` lay them out, `paper` draws them.
"""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date
from typing import TYPE_CHECKING

from firstpaper.forms.filing import Stage
from firstpaper.locale import _, language, speaking
from firstpaper.packet.drawing import drawn
from firstpaper.packet.piles import Pile
from firstpaper.packet.views.sheet import Sheet

if TYPE_CHECKING:
    from firstpaper.blanks.filling import Filling
    from firstpaper.facts import Case
    from firstpaper.packet.brief import Brief

__all__ = ["Packet", "Pile", "Stage", "build", "unprintable"]


@dataclass(frozen=True, slots=True)
class Packet:
    """A packet worked out for one filing day, not drawn yet."""

    brief: "Brief"
    sheets: tuple[Sheet, ...]

    @property
    def title(self) -> str:
        """The title of the document. It names nobody: file lists and tabs show it."""
        begins = any(sheet.template == "after-you-file.html" for sheet in self.sheets[:1])
        return _("After the filing") if begins else _("Petition packet")

    @property
    def warnings(self) -> tuple[str, ...]:
        """What somebody typed that no font can print."""
        return unprintable(self.brief.case)

    def only(self, *piles: Pile) -> "Packet":
        """The same packet with the sheets of some piles alone."""
        return replace(self, sheets=tuple(sheet for sheet in self.sheets if sheet.pile in piles))

    def piles(self) -> "Iterator[tuple[Pile, Packet]]":
        """The packet taken apart by what the sheets are for; piles of nothing are left out."""
        for pile in Pile:
            if (part := self.only(pile)).sheets:
                yield pile, part

    def pdf(self) -> bytes:
        """The packet as one PDF. The same case and day give the same bytes."""
        return drawn(self.sheets, self.title, self.brief.on)

    def html(self) -> str:
        """The packet as one page for a screen, with nothing to fetch."""
        from firstpaper.packet.screen import screen  # noqa: PLC0415

        return screen(self.title, self.sheets)


def build(
    case: "Case",
    on: date,
    amends: "Case | None" = None,
    *,
    stages: Collection[Stage] = tuple(Stage),
    own: Mapping[str, str] | None = None,
    filled: "Mapping[tuple[str, str], Filling] | None" = None,
    hand_off_language: str = "",
) -> Packet:
    """Work out the packet of a case for a filing on the day `on`.

    `amends` is the case of the earlier petition that this one replaces; then a sheet shows what changes.
    `stages` are those whose sheets are wanted. `own` holds the text of sheets that a clinic brings, by the
    name of the file. `filled` says what went into copies of the court's own forms, by form and use; their
    worksheets shrink to check sheets. `hand_off_language` is that of whoever is given the hand-off sheet;
    without it, the one spoken. Raises OwnSheetRefused.
    """
    from firstpaper.packet.brief import brief  # noqa: PLC0415  (a read-along needs none of it)
    from firstpaper.packet.contents import Helped, sheets  # noqa: PLC0415
    from firstpaper.packet.own_sheets import own_sheet  # noqa: PLC0415

    worked_out = replace(brief(case, on, amends), on_blanks=filled or {})
    more = [own_sheet(name, text, worked_out) for name, text in (own or {}).items()]
    helped = None
    if hand_off_language not in ("", language()):
        with speaking(hand_off_language):
            helped = Helped(replace(brief(case, on, amends), on_blanks=filled or {}), hand_off_language)
    return Packet(worked_out, tuple(sheets(worked_out, stages, more, helped)))


def unprintable(case: "Case") -> tuple[str, ...]:
    """The characters of the answers that no font can print, each with what to do about them."""
    from firstpaper.packet.paper import missing_characters  # noqa: PLC0415

    missing = missing_characters("".join(_texts(case.plain())), "attachment")
    if not missing:
        return ()
    return (
        _(
            "These characters cannot be printed: {characters} The sign \ufffd stands in their place. "
            "Write them on the form by hand."
        ).format(characters=" ".join(missing)),
    )


def _texts(value: object) -> list[str]:
    if isinstance(value, str):
        return [value]
    many = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return [text for one in many for text in _texts(one)]
