"""Reading the parts of a catalog and compiling them, in the formats of GNU gettext.

Written here because a program that runs from its checkout needs no more than these few lines of the formats,
at once; the parts themselves are written by a library, in the project's own check.
"""

import re
import struct
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import NamedTuple

_TEXT = r'"[^\n]*"(?:\n"[^\n]*")*'
_MESSAGE = (
    rf"(?m)^(?:#,([^\n]*)\n)?(?:msgctxt ({_TEXT})\n)?msgid ({_TEXT})\n(?:msgid_plural ({_TEXT})\n)?"
    rf"((?:msgstr(?:\[\d+\])? {_TEXT}\n?)+)"
)
_HOLE = r'(?m)^#,.*\bfuzzy\b|^msgstr(?:\[\d+\])? ""\n(?!")'
_SAID = rf"msgstr(?:\[\d+\])? ({_TEXT})"
_ESCAPE = r"\\(.)"
_ESCAPED = {"n": "\n", "t": "\t"}
_MAGIC, _START = 0x950412DE, 28
Key = tuple[str, str]
"""A message's context, empty where it has none, and its English words."""


class Message(NamedTuple):
    """One message: its words by number, one where it counts nothing."""

    plural: str
    said: tuple[str, ...]
    fuzzy: bool

    @property
    def is_said(self) -> bool:
        """Whether it can be shown: translated whole, and by a person who was sure."""
        return all(self.said) and not self.fuzzy


def messages(parts: Iterable[Path]) -> dict[Key, Message]:
    """Every message of a catalog by its key; the header has the empty one."""
    return {key: message for part in parts for key, message in _read(part.read_text("utf-8"))}


def is_whole(parts: Iterable[Path]) -> bool:
    """Whether every message in these parts is translated; told without reading them message by message."""
    return not any(re.search(_HOLE, part.read_text("utf-8")) for part in parts)


def compiled(catalog: Mapping[Key, Message]) -> bytes:
    """The catalog as an `.mo` file, without the messages that are not translated."""
    rows = sorted(_row(key, message) for key, message in catalog.items() if message.is_said)
    keys, values = (b"".join(row[side] + b"\0" for row in rows) for side in (0, 1))
    first, second = _START, _START + 8 * len(rows)
    texts = second + 8 * len(rows)
    head = struct.pack("<7I", _MAGIC, 0, len(rows), first, second, 0, texts)
    places = [
        *_places((row[0] for row in rows), texts),
        *_places((row[1] for row in rows), texts + len(keys)),
    ]
    return head + struct.pack(f"<{len(places)}I", *places) + keys + values


def _places(texts: Iterable[bytes], start: int) -> Iterator[int]:
    for text in texts:
        yield from (len(text), start)
        start += len(text) + 1


def _row(key: Key, message: Message) -> tuple[bytes, bytes]:
    context, words = key
    name = "\x04".join(filter(None, (context, words))) + ("\0" + message.plural if message.plural else "")
    return name.encode(), "\0".join(message.said).encode()


def _read(part: str) -> Iterator[tuple[Key, Message]]:
    for flags, context, words, plural, said in re.findall(_MESSAGE, part):
        yield (
            (_plain(context), _plain(words)),
            Message(_plain(plural), tuple(map(_plain, re.findall(_SAID, said))), "fuzzy" in flags),
        )


def _plain(text: str) -> str:
    text = text[1:-1].replace('"\n"', "")
    return re.sub(_ESCAPE, lambda found: _ESCAPED.get(found[1], found[1]), text) if "\\" in text else text
