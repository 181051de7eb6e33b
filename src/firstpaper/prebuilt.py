"""Data files taken apart when the package is built, so that a command need not read YAML.

Beside each `name.yaml` an installed package has a `name.pickle`: what the file holds, and of which bytes that
was made. Where the file has been changed since, the YAML is read. In a checkout there is none.
A pickle can run code; so can every other file of the package, and this one comes with it.
"""

import pickle
from pathlib import Path
from typing import Any
from zlib import crc32

SUFFIX = ".pickle"


def prebuilt(path: Path, content: bytes, as_written: bool) -> Any:
    """What was prebuilt of the file whose bytes are `content`; None where nothing was, or not from these."""
    try:
        made_of, shape = pickle.loads(path.with_suffix(SUFFIX).read_bytes())  # noqa: S301
    except FileNotFoundError:
        return None
    return shape if made_of == _made_of(content, as_written) else None


def prebuild(content: bytes, as_written: bool) -> bytes:
    """What is to lie beside a data file whose bytes are `content`."""
    from firstpaper.strict_yaml import content_of  # noqa: PLC0415  (only when the package is built)

    shape = content_of(content.decode(), as_written)
    return pickle.dumps((_made_of(content, as_written), shape), pickle.HIGHEST_PROTOCOL)


def _made_of(content: bytes, as_written: bool) -> tuple[bool, int, int]:
    return as_written, len(content), crc32(content)
