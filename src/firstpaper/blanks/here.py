"""Which maps somebody confirmed here: a list beside them that is true only in the folder where it was
written.

It names each map by its digest and by its number on this disk, so a folder that was copied from elsewhere has
to be confirmed again. It holds no personal data but the name that the person gave.
"""

import json
from pathlib import Path

from firstpaper.blanks.mapping import digest
from firstpaper.casefile import save

LIST = "confirmed-here.json"


def confirm_here(path: Path, who: str, day: str) -> None:
    """Write down that the map at `path` was confirmed as it now stands."""
    told = {name: one for name, one in _read(path).items() if name != path.name}
    told[path.name] = {**_mark(path), "who": who, "on": day}
    save(path.with_name(LIST), (json.dumps(told, indent=1) + "\n").encode())


def is_confirmed_here(path: Path) -> bool:
    """Whether the map at `path` was confirmed in this folder, and has not changed since by one byte."""
    told = _read(path).get(path.name, {})
    mark = _mark(path)
    return isinstance(told, dict) and all(told.get(name) == value for name, value in mark.items())


def _mark(path: Path) -> dict[str, object]:
    return {"sha256": digest(path.read_text("utf-8")), "number": path.stat().st_ino}


def _read(path: Path) -> dict[str, object]:
    try:
        told = json.loads(path.with_name(LIST).read_text("utf-8"))
    except (OSError, ValueError):
        return {}
    return told if isinstance(told, dict) else {}
