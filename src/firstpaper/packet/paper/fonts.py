"""The typefaces of the sheets, and which of them can print a character.

Worksheets are set in Fira Sans. Attachments are set in Arimo, whose letters have the widths of
Arial, one of the typefaces that Cal. Rules of Court, rule 2.105 names. Arimo comes as one variable
font; only its regular instance can be embedded as it is, so attachments have no bold letters: a
heading stands out by its place. A character the first typeface lacks is taken from the other; one that
neither has prints as `PLACEHOLDER`, never as nothing.
"""

import re
import unicodedata
from collections.abc import Container, Iterator
from functools import cache, lru_cache
from importlib.resources import as_file, files
from itertools import groupby
from typing import Any

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFError, TTFont

PLACEHOLDER = "\ufffd"

_FILES = {
    "FiraSans-Regular": ("fontpkg_fira_sans", "FiraSans-Regular.ttf"),
    "FiraSans-SemiBold": ("fontpkg_fira_sans", "FiraSans-SemiBold.ttf"),
    "FiraSans-Italic": ("fontpkg_fira_sans", "FiraSans-Italic.ttf"),
    "FiraSans-SemiBoldItalic": ("fontpkg_fira_sans", "FiraSans-SemiBoldItalic.ttf"),
    "Arimo-Regular": ("fontpkg_arimo", "Arimo[wght].ttf"),
    "Arimo-Italic": ("fontpkg_arimo", "Arimo-Italic[wght].ttf"),
}

_FIRA = {
    (False, False): "FiraSans-Regular",
    (True, False): "FiraSans-SemiBold",
    (False, True): "FiraSans-Italic",
    (True, True): "FiraSans-SemiBoldItalic",
}
_ARIMO = {(bold, italic): "Arimo-Italic" if italic else "Arimo-Regular" for bold, italic in _FIRA}
_ORDER = {
    "worksheet": (_FIRA, _ARIMO),
    "reading": (_FIRA, _ARIMO),
    "attachment": (_ARIMO, _FIRA),
}


class _Embedded(TTFont):
    """A typeface embedded as a subset whose ToUnicode map is exact.

    The library's own map gives U+0000 for the missing-glyph slots, which PDF/UA-1 (7.21.7) forbids,
    and writes blocks of more than the 100 entries that the format allows.
    """

    def addObjects(self, doc: Any) -> None:  # noqa: N802 (the library's name)
        subsets = list(self.state[doc].subsets)
        super().addObjects(doc)
        for number, subset in enumerate(subsets):
            font = doc.idToObject[self._font_id(doc, number)]
            stream = doc.idToObject[font.ToUnicode.name]
            stream.content = _to_unicode(font.BaseFont, subset, self.face.charToGlyph)

    def _font_id(self, doc: Any, number: int) -> str:
        return f"{doc.fontMapping[self.fontName][1:]}+{number}"


def _to_unicode(name: str, subset: list[int], glyphs: Container[int]) -> str:
    """A ToUnicode map for the codes of one subset that have a picture (ISO 32000-1, 9.10.3)."""
    pairs = [
        f"<{code:02X}> <{chr(char).encode('utf-16-be').hex().upper()}>"
        for code, char in enumerate(subset)
        if char and char in glyphs and (char != 32 or code == 32)
    ]
    blocks = [pairs[at : at + 100] for at in range(0, len(pairs), 100)]
    maps = "\n".join(f"{len(block)} beginbfchar\n" + "\n".join(block) + "\nendbfchar" for block in blocks)
    return (
        "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
        "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
        f"/CMapName /{name} def\n/CMapType 2 def\n"
        f"1 begincodespacerange\n<00> <FF>\nendcodespacerange\n{maps}\n"
        "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend"
    )


class Face:
    """One typeface in one weight, with the widths of the words already measured."""

    __slots__ = ("_advances", "_font", "_glyphs", "_missing", "_widths", "name")

    def __init__(self, name: str) -> None:
        font = _registered(name)
        self.name = name
        self._font = font
        self._glyphs: dict[int, int] = font.face.charToGlyph
        self._advances: dict[int, float] = font.face.charWidths
        self._missing: float = font.face.defaultWidth
        self._widths: dict[str, float] = {}

    def has(self, char: str) -> bool:
        """Whether this typeface has a picture of `char`."""
        return bool(self._glyphs.get(ord(char)))

    def width(self, text: str) -> float:
        """The width of `text` in ems."""
        width = self._widths.get(text)
        if width is None:
            if len(self._widths) > 50_000:
                self._widths.clear()
            advance, missing = self._advances.get, self._missing
            width = sum(advance(ord(char), missing) for char in text) / 1000
            self._widths[text] = width
        return width

    def coded(self, text: str, document: Any) -> Iterator[tuple[int, str]]:
        """`text` as the strings to show it, each with the embedded subset in whose codes it stands.

        The codes of the first subset are those of ASCII, so that plain text stands for itself.
        """
        if text.isascii():
            yield 0, in_string(text)
            return
        for subset, codes in self._font.splitString(text, document):
            yield subset, in_string(codes.decode("latin-1"))

    def called(self, subset: int, document: Any) -> str:
        """What an embedded subset is called in the document."""
        name: str = self._font.getSubsetInternalName(subset, document)
        return name


def in_string(codes: str) -> str:
    """The characters, each for the byte of its code, as a string of a PDF (ISO 32000-1, 7.3.4.2)."""
    return f"({codes.translate(_ESCAPED) if _TO_ESCAPE(codes) else codes})"


_TO_ESCAPE = re.compile(r"[\x00-\x1f()\\\x7f-\xff]").search
_ESCAPED = {code: f"\\{code:03o}" for code in (*range(32), *range(127, 256))}
_ESCAPED |= {ord(sign): f"\\{sign}" for sign in "()\\"}
"""How a byte is written in a string where it cannot stand for itself."""


@cache
def _registered(name: str) -> TTFont:
    package, file = _FILES[name]
    try:
        with as_file(files(package) / "files" / file) as path:
            font = _Embedded(name, str(path), asciiReadable=True)
    except (ModuleNotFoundError, TTFError) as fault:
        message = f"The typeface {name} is missing, so no sheet can be drawn. Install the program again."
        raise RuntimeError(message) from fault
    pdfmetrics.registerFont(font)
    return font


@cache
def _face(style: str, rank: int, bold: bool, italic: bool) -> Face:
    return _of_name(_ORDER[style][rank][bold, italic])


@cache
def _of_name(name: str) -> Face:
    return Face(name)


def face(style: str, *, bold: bool = False, italic: bool = False) -> Face:
    """The first typeface of a style."""
    return _face(style, 0, bold, italic)


@lru_cache(maxsize=4096)
def runs(text: str, style: str, *, bold: bool = False, italic: bool = False) -> tuple[tuple[Face, str], ...]:
    """`text` (already `clean`) in pieces, each with the typeface that can print it."""
    first = _face(style, 0, bold, italic)
    if text.isascii():
        return ((first, text),)

    def chosen(char: str) -> int:
        return 0 if char == " " or first.has(char) else 1

    shown = "".join(char if char == " " or printable(char, style) else PLACEHOLDER for char in text)
    return tuple((_face(style, rank, bold, italic), "".join(chars)) for rank, chars in groupby(shown, chosen))


def text_width(text: str, style: str, *, bold: bool = False) -> float:
    """The width of `text` in ems, as `runs` would print it."""
    return sum(typeface.width(part) for typeface, part in runs(clean(text), style, bold=bold))


@cache
def printable(char: str, style: str) -> bool:
    """Whether a typeface of the style has `char` and it runs from left to right.

    Scripts that run from right to left would come out in the wrong order, so they count as not printable.
    """
    if unicodedata.bidirectional(char) in {"R", "AL", "AN"}:
        return False
    return any(_face(style, rank, False, False).has(char) for rank in (0, 1))


def missing_characters(text: str, style: str = "worksheet") -> str:
    """The characters of `text` that no typeface of `style` can print, each once, in order."""
    cleaned = clean(text)
    if cleaned.isascii():
        return ""
    return "".join(dict.fromkeys(c for c in cleaned if c != " " and not printable(c, style)))


_LOOK_ALIKE = {0x2010: "-", 0x2011: "-", 0x2007: "\u00a0", 0x202F: "\u00a0", 0xAD: "", 0x034F: ""}


class _Cleaner(dict[int, str]):
    """For `str.translate`: what stands for each character, worked out once."""

    def __missing__(self, code: int) -> str:
        char = chr(code)
        kind = unicodedata.category(char)
        if code in _LOOK_ALIKE:
            stand_in = _LOOK_ALIKE[code]
        elif code in {0x9, 0xA, 0xB, 0xC, 0xD, 0x85} or (kind[0] == "Z" and code != 0xA0):
            stand_in = " "
        elif kind in {"Cc", "Cf"} or 0xFE00 <= code <= 0xFE0F or 0xE0100 <= code <= 0xE01EF:
            stand_in = ""
        else:
            stand_in = char
        self[code] = stand_in
        return stand_in


_CLEANER = _Cleaner()


def clean(text: str) -> str:
    """`text` composed (NFC), on one line, without control characters and without marks that turn
    the reading direction. Spaces of every kind become plain ones; a no-break space stays."""
    if text.isascii() and text.isprintable():
        return text
    return unicodedata.normalize("NFC", text).translate(_CLEANER)
