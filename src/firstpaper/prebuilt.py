"""What was read of the data files when the package was built, so that a command need not read YAML.

Beside each `name.yaml` an installed package has a `name.pickle`: what the reader of the file made of it, and
of which bytes. Where the file has been changed since, the YAML is read. In a checkout there is none.
A pickle can run code; so can every other file of the package, and this one comes with it.
"""

import pickle
from enum import StrEnum
from pathlib import Path
from typing import Any
from zlib import crc32

SUFFIX = ".pickle"


class Read(StrEnum):
    """What the reader of a file made of it."""

    VALUES = "values"
    WORDS = "words"
    """As VALUES, but every value is the text it was written as."""
    TOPIC = "topic"
    """The questions of a bank file, checked."""


def prebuilt(path: Path, content: bytes, what: Read) -> Any:
    """What was prebuilt of the file whose bytes are `content`; None where nothing was, or not from these."""
    try:
        made_of, made = pickle.loads(path.with_suffix(SUFFIX).read_bytes())  # noqa: S301
    except FileNotFoundError:
        return None
    return made if made_of == _made_of(content, what) else None


def prebuild(content: bytes, what: Read, made: Any) -> bytes:
    """What is to lie beside a data file whose bytes are `content`, of which its reader made `made`."""
    return pickle.dumps((_made_of(content, what), made), pickle.HIGHEST_PROTOCOL)


def _made_of(content: bytes, what: Read) -> tuple[str, int, int]:
    return what.value, len(content), crc32(content)
