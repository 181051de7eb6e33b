"""A language that nobody speaks: every message in it is the English one with other vowels.

What is still written with plain vowels when it is spoken never passed through a catalog, or is a fact.
"""

import re
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from unittest.mock import patch

from firstpaper.locale import catalogs, offered, speaking
from firstpaper.locale.po import Message, compiled

ROOT = Path(__file__).parents[2]
TONGUE = "qq"
_KEPT = re.compile(r"\{[^{}]*\}|%\(\w+\)s|%%|<[^<>]+>|&\w+;")
_VOWELS = str.maketrans("aeiouAEIOU", "áéíóúÁÉÍÓÚ")
_HEADER = """Language: qq
Content-Type: text/plain; charset=UTF-8
Plural-Forms: nplurals=2; plural=(n != 1);
"""


def in_pseudo(words: str) -> str:
    """The words with other vowels; what is filled in and what is markup stays."""
    pieces, kept = _KEPT.split(words), [*_KEPT.findall(words), ""]
    return "".join(piece.translate(_VOWELS) + same for piece, same in zip(pieces, kept, strict=True))


@cache
def catalog() -> dict[tuple[str, str], Message]:
    """Every message that the project's check collects."""
    with patch.object(sys, "path", [str(ROOT / ".ci"), *sys.path]):
        from collect import collected  # noqa: PLC0415  (it stands beside the check, in no package)
    found = {("", ""): Message("", (_HEADER,), False)}
    for place in collected():
        one, many = (place.words, "") if isinstance(place.words, str) else place.words
        said = (in_pseudo(one), in_pseudo(many)) if many else (in_pseudo(one),)
        if place.key not in found or many:
            found[place.key] = Message(many, said, False)
    return found


@contextmanager
def speaking_pseudo() -> Iterator[None]:
    """Speak it inside."""
    with TemporaryDirectory() as folder, patch.object(catalogs, "FOLDER", Path(folder)):
        (Path(folder) / TONGUE).mkdir()
        (Path(folder) / TONGUE / "firstpaper.mo").write_bytes(compiled(catalog()))
        for kept in (catalogs.catalog, offered):
            kept.cache_clear()
        with speaking(TONGUE):
            yield
    for kept in (catalogs.catalog, offered):
        kept.cache_clear()
