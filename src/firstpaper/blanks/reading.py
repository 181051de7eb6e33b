"""Reading a form that somebody brings. Whatever is in the file is data: no script in it is ever run."""

import hashlib
import logging
import re
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import replace
from io import BytesIO
from typing import TYPE_CHECKING, Any

from firstpaper.blanks import printed
from firstpaper.blanks.blank import Blank, Box, FieldKind, Phrase, Spot
from firstpaper.blanks.errors import (
    AlreadySigned,
    FillingForbidden,
    Locked,
    NoFields,
    NotAPdf,
    OnlyXfa,
    TooMuch,
)
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from pypdf import PdfReader

MOST_BYTES, MOST_PAGES, MOST_FIELDS, DEEPEST = 20_000_000, 40, 3_000, 24
MOST_LETTERS = 20_000
"""Ours: a court form is far smaller than each of these."""

READ_ONLY, MULTI_LINE, PASSWORD, RADIO, PUSH, COMB, RICH = (
    1,
    1 << 12,
    1 << 13,
    1 << 15,
    1 << 16,
    1 << 24,
    1 << 25,
)
MAY_FILL = 0b1_0000_1000
"""The permissions to change a file and to fill in its fields (ISO 32000-1, table 22: bits 4 and 9)."""
LETTERS = re.compile(r"/(\S+)\s+([\d.]+)\s+Tf")
"""The font and the size that a field names for its letters."""
_UNHEARD = logging.NullHandler()
"""Takes what the library remarks on a broken file, which would else be put on the screen of the person."""


@contextmanager
def read_as_data(name: str) -> Iterator[None]:
    """Takes every way in which a broken file can fail inside the block as NotAPdf.

    A file is read bit by bit as it is asked for, and the libraries that do so raise nearly anything where
    something in it is not what it should be.
    """
    try:
        yield
    except UserError:
        raise
    except Exception as broken:
        raise NotAPdf(name=name) from broken


def read_blank(data: bytes, name: str) -> Blank:
    """The form in these bytes; `name` is what messages call it. Raises the errors of `errors.py`."""
    with read_as_data(name):
        reader = opened(data, name)
        pages = len(reader.pages)
        found = phrases_of(data, pages)
        spots = tuple(_placed(_spots(reader), found))
        if not spots:
            raise OnlyXfa(name=name) if _xfa(reader) else NoFields(name=name)
        return Blank(hashlib.sha256(data).hexdigest(), pages, spots, found, tuple(_oddities(reader, spots)))


def opened(data: bytes, name: str) -> "PdfReader":
    """The file, opened with an empty password where it wants one, and fit to be filled in."""
    from pypdf import PdfReader  # noqa: PLC0415 - slow to import

    if len(data) > MOST_BYTES:
        raise TooMuch(name=name)
    if not data.lstrip()[:5] == b"%PDF-":
        raise NotAPdf(name=name)
    with read_as_data(name):
        logging.getLogger("pypdf").addHandler(_UNHEARD)
        reader = PdfReader(BytesIO(data))
        if reader.is_encrypted and not reader.decrypt(""):
            raise Locked(name=name)
        if len(reader.pages) > MOST_PAGES:
            raise TooMuch(name=name)
        allowed = reader.user_access_permissions if reader.is_encrypted else None
        if allowed is not None and not int(allowed) & MAY_FILL:
            raise FillingForbidden(name=name)
        if _signed(reader):
            raise AlreadySigned(name=name)
        return reader


def phrases_of(data: bytes, pages: int) -> tuple[Phrase, ...]:
    """The words printed on every page, as they are seen."""
    import pypdfium2  # noqa: PLC0415 - slow to import

    document = pypdfium2.PdfDocument(data, password="")
    return tuple(phrase for number in range(pages) for phrase in _phrases_on(document, number))


def _phrases_on(document: Any, number: int) -> Iterator[Phrase]:
    page = document[number]
    seen = _Seen(page.get_rotation(), *page.get_mediabox())
    text = page.get_textpage()
    count = min(text.count_chars(), MOST_LETTERS)
    words = text.get_text_range(0, count) if count else ""
    letters = (
        [
            (letter, *seen.box(text.get_charbox(index, loose=True)))
            for index, letter in enumerate(words)
            if letter not in "\r\n"
        ]
        if len(words) == count
        else []
    )
    yield from printed.phrases(letters, number + 1)


class _Seen:
    """Turns places of a page as the file has them into places as they are seen."""

    def __init__(self, turned: int, left: float, bottom: float, right: float, top: float) -> None:
        self.turned, self.left, self.bottom = turned % 360, left, bottom
        self.width, self.height = right - left, top - bottom

    def box(self, corners: Sequence[float]) -> tuple[float, float, float, float]:
        """Left, bottom, right and top, as seen."""
        (a, b), (c, d) = self._point(*corners[:2]), self._point(*corners[2:4])
        return min(a, c), min(b, d), max(a, c), max(b, d)

    def _point(self, x: float, y: float) -> tuple[float, float]:
        x, y = x - self.left, y - self.bottom
        return {
            90: (y, self.width - x),
            180: (self.width - x, self.height - y),
            270: (self.height - y, x),
        }.get(self.turned, (x, y))


def _spots(reader: "PdfReader") -> Iterator[Spot]:
    """Every spot, the widgets of one field and state together, in the order in which they are found."""
    found: dict[tuple[str, str], Spot] = {}
    default = str(_form(reader).get("/DA") or "")
    for number, page in enumerate(reader.pages, 1):
        seen = _Seen(int(page.rotation or 0), *(float(edge) for edge in page.mediabox))
        for widget in widgets(page):
            spot = _spot(widget, number, seen, default)
            if spot is None:
                continue
            before = found.get(spot.key)
            found[spot.key] = replace(before, boxes=(*before.boxes, *spot.boxes)) if before else spot
            if len(found) > MOST_FIELDS:
                return
    yield from found.values()


def widgets(page: Any) -> Iterator[Any]:
    """The places of fields on a page."""
    for one in page.get("/Annots") or ():
        widget = one.get_object()
        if isinstance(widget, dict) and widget.get("/Subtype") == "/Widget" and "/Rect" in widget:
            yield widget


def lineage(widget: Any) -> list[Any]:
    """The widget and the fields above it, nearest first; a circle ends it."""
    line: list[Any] = []
    one = widget
    while isinstance(one, dict) and len(line) < DEEPEST and not any(one is other for other in line):
        line.append(one)
        parent = one.get("/Parent")
        one = parent.get_object() if parent is not None else None
    return line


def inherited(line: Sequence[Any], key: str) -> Any:
    """What the nearest of them says."""
    return next((one[key] for one in line if key in one), None)


def full_name(line: Sequence[Any]) -> str:
    """The name of a field from the top down."""
    return ".".join(str(one["/T"]) for one in reversed(line) if "/T" in one)


def kind_of(line: Sequence[Any]) -> FieldKind | None:
    """What kind of field it is; None where the file does not say."""
    flags = int(inherited(line, "/Ff") or 0)
    kind = inherited(line, "/FT")
    if kind == "/Btn":
        return FieldKind.BUTTON if flags & PUSH else FieldKind.BOX
    return {"/Tx": FieldKind.TEXT, "/Ch": FieldKind.CHOICE, "/Sig": FieldKind.SIGNATURE}.get(str(kind))


def on_state(widget: Any) -> str:
    """What a box is called when it is marked; empty where it has no such look."""
    normal = (widget.get("/AP") or {}).get("/N")
    looks = normal.get_object() if normal is not None else {}
    names = [str(name) for name in looks if str(name) != "/Off"] if isinstance(looks, dict) else []
    return names[0].removeprefix("/") if names else ""


def _spot(widget: Any, page: int, seen: _Seen, default: str) -> Spot | None:
    line = lineage(widget)
    kind = kind_of(line)
    if kind is None:
        return None
    flags, longest = int(inherited(line, "/Ff") or 0), inherited(line, "/MaxLen")
    return Spot(
        name=full_name(line),
        kind=kind,
        boxes=(Box(page, *seen.box([float(edge) for edge in widget["/Rect"]])),),
        state=on_state(widget) if kind is FieldKind.BOX else "",
        tooltip=" ".join(str(inherited(line, "/TU") or "").split()),
        longest=int(longest) if isinstance(longest, int) and longest > 0 else None,
        comb=bool(flags & COMB) and kind is FieldKind.TEXT,
        lines=bool(flags & MULTI_LINE) and kind is FieldKind.TEXT,
        rich=bool(flags & RICH) and kind is FieldKind.TEXT,
        computed=_computes(line),
        locked=bool(flags & READ_ONLY),
        near={},
        size=_size(str(inherited(line, "/DA") or default)),
    )


def _size(look: str) -> float:
    """The size of letters that a default appearance names (ISO 32000-1, 12.7.3.3)."""
    told = LETTERS.search(look)
    return float(told[2]) if told else 0.0


def _computes(line: Sequence[Any]) -> bool:
    actions = inherited(line, "/AA")
    return isinstance(actions, dict) and "/C" in actions


def _placed(spots: Iterator[Spot], phrases: Sequence[Phrase]) -> Iterator[Spot]:
    """The spots down the pages, each with the words around it."""
    ordered = sorted(spots, key=lambda one: (one.place.page, -round(one.place.middle / 6), one.place.left))
    for spot in ordered:
        page = [one for one in phrases if one.box.page == spot.place.page]
        others = [box for one in ordered for box in one.boxes if box.page == spot.place.page]
        head = printed.heading(spot.place, printed.headings(page))
        yield replace(spot, near=printed.near(spot.place, page, others), heading=head)


def _form(reader: "PdfReader") -> Any:
    form = reader.root_object.get("/AcroForm")
    return form.get_object() if form is not None else {}


def _xfa(reader: "PdfReader") -> bool:
    return "/XFA" in _form(reader)


def _signed(reader: "PdfReader") -> bool:
    """Whether a signature field holds a signature, or the file as a whole is certified."""
    if "/Perms" in reader.root_object:
        return True
    lines = (lineage(widget) for page in reader.pages for widget in widgets(page))
    return any(kind_of(line) is FieldKind.SIGNATURE and inherited(line, "/V") is not None for line in lines)


def _oddities(reader: "PdfReader", spots: Sequence[Spot]) -> Iterator[str]:
    root = reader.root_object
    if _xfa(reader):
        yield _(
            "It has a second copy of its fields (XFA). The filled copy leaves that out, so that what is "
            "filled in shows."
        )
    scripts = "/OpenAction" in root or "/AA" in root or "/JavaScript" in (root.get("/Names") or {})
    if scripts or any(spot.computed for spot in spots):
        yield _("It has small programs in it. They are never run, and the filled copy leaves them out.")
    if reader.is_encrypted:
        yield _("It is locked without a password. The filled copy is not locked.")
    if any(spot.locked for spot in spots):
        yield _("Some of its fields cannot be changed. They stay as they are.")
