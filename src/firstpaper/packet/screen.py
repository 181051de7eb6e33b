"""The packet for a screen: the same sheets, one HTML page, nothing to fetch and nothing to run."""

import re
from collections.abc import Iterable, Mapping, Sequence
from html import escape

from firstpaper.locale import _, language, speaking, tag
from firstpaper.packet.drawing import pictures
from firstpaper.packet.pictures.shapes import Drawing
from firstpaper.packet.pictures.svg import svg
from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet

SIGN = re.compile(r'<(tick|line)((?:\s+[a-z]+(?:="[^"<>]*")?)*)\s*/?>')
"""A box or a line in every spelling that the sheet markup knows, so that none is lost on a screen."""
WIDTHS = re.compile(r' widths="[^"]*"')
ROW = re.compile(r"<tr>.*?</tr>", re.DOTALL)
WIDTH = re.compile(r'\bwidth="(\d+)"')
DONE = re.compile(r'<done for="([^"]*)"/>')
PAPER_PAGE = re.compile(r' <small>[^<]*<page sheet="[^"]*"/>[^<]*</small>')
"""Where a sheet starts on paper; on a screen the list at the top leads there."""


def screen(title: str, sheets: Iterable[Sheet]) -> str:
    """All sheets on one page, with a list of them at the top."""
    shown = [_shown(number, sheet) for number, sheet in enumerate(sheets, start=1)]
    return render("screen.html", {"title": title, "language": tag(), "sheets": shown})


def _shown(number: int, sheet: Sheet) -> dict[str, str]:
    other = "" if sheet.language == language() else tag(sheet.language)
    with speaking(sheet.language):
        worth = f"<p><small>{escape(sheet.worth)}</small></p>" if sheet.worth else ""
        html = for_screen(sheet.markup, pictures(sheet)) + worth
    return {"id": f"sheet-{number}", "title": sheet.title, "html": html, "language": other}


def for_screen(markup: str, pictured: Mapping[str, Sequence[Drawing]]) -> str:
    """The sheet markup as standard HTML. Values are escaped, so these tags are the template's own."""
    markup = SIGN.sub(_sign, WIDTHS.sub("", markup))
    markup = ROW.sub(_scoped, markup.replace('<th class="label">', "<th>"))
    markup = PAPER_PAGE.sub("", DONE.sub(_done, markup))
    for name, drawings in pictured.items():
        markup = markup.replace(f'<figure name="{name}"/>', _figure(drawings))
    return _lower_headings(markup)


def _scoped(found: re.Match[str]) -> str:
    """A row of a table, in which each heading says whether it heads a column or this row."""
    scope = "row" if "<td" in found[0] else "col"
    return found[0].replace("<th", f'<th scope="{scope}"')


def _figure(drawings: Sequence[Drawing]) -> str:
    """Pictures side by side with the keyboard's reach, because a small screen shows them by scrolling."""
    name = escape(_("Picture; scroll sideways to see all of it"))
    return f'<figure tabindex="0" role="group" aria-label="{name}">{"".join(map(svg, drawings))}</figure>'


def _done(found: re.Match[str]) -> str:
    """A box to tick when an item is copied. What the template put in is escaped already."""
    return _labeled('<input type="checkbox" aria-label="{words} {item}">', _("copied:"), item=found[1])


def _sign(found: re.Match[str]) -> str:
    tag, attributes = found[1], found[2]
    if tag == "tick" and "marked" in attributes:
        return _labeled('<span class="tick marked" role="img" aria-label="{words}"></span>', _("marked box"))
    if tag == "tick":
        return _labeled('<input type="checkbox" aria-label="{words}">', _("tick when done"))
    short = WIDTH.search(attributes)
    style = f' style="width: {short[1]}%"' if short else ""
    blank = '<span class="line" role="img" aria-label="{words}"{style}></span>'
    return _labeled(blank, _("line to write on"), style=style)


def _labeled(html: str, words: str, **filled: str) -> str:
    """Standard HTML with the words that a screen reader says in place of a sign."""
    return html.format(words=escape(words), **filled)


def _lower_headings(markup: str) -> str:
    """One h1 a page: the headings of a sheet move one level down."""
    for level in (3, 2, 1):
        markup = markup.replace(f"<h{level}>", f"<h{level + 1}>").replace(f"</h{level}>", f"</h{level + 1}>")
    return markup
