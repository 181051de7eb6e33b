"""From sheets to the bytes of one PDF."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date

from firstpaper.locale import tag
from firstpaper.packet.pictures.drawing import drawings_of
from firstpaper.packet.pictures.shapes import FONT_SIZE, Drawing
from firstpaper.packet.pictures.share_bars import drawn_shares
from firstpaper.packet.pictures.shares import Shares
from firstpaper.packet.views.sheet import Sheet


def drawn(sheets: Iterable[Sheet], title: str, on: date) -> bytes:
    """The sheets as one tagged PDF that carries the day `on`. The same sheets give the same bytes."""
    from firstpaper.packet.paper import SheetSource, draw  # noqa: PLC0415  (slow to import)

    sheets = tuple(sheets)
    behind = (False, *(sheet.given_away for sheet in sheets))
    sources = [
        SheetSource(
            sheet.title,
            sheet.markup,
            sheet.style,
            sheet.foot,
            pictures(sheet),
            sheet.follows and not behind_one_given_away,
            sheet.style != "attachment",
            sheet.language,
        )
        for behind_one_given_away, sheet in zip(behind, sheets, strict=False)
    ]
    return draw(sources, title=title, lang=tag(), on=on)


def pictures(sheet: Sheet) -> Mapping[str, Sequence[Drawing]]:
    """The pictures of a sheet laid out for its column, by name; one too high for a page in parts."""
    if not sheet.pictures:
        return {}
    from firstpaper.packet.paper import text_column, text_width  # noqa: PLC0415  (slow to import)

    def measure(text: str, bold: bool) -> float:
        return text_width(text, sheet.style, bold=bold) * FONT_SIZE

    width = text_column(sheet.style)
    return {
        name: (drawn_shares(chart, width, measure),)
        if isinstance(chart, Shares)
        else drawings_of(chart, width, measure)
        for name, chart in sheet.pictures.items()
    }
