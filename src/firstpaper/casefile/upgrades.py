"""Case files of earlier versions, brought up to the schema of this one.

`UPGRADES[n]` turns the whole document of schema n into one of schema n + 1. It gets and returns plain
JSON values and never asks a question. A schema that this project has never written has no entry.

The schema goes up with every version that has a fact or an answer more, also where nothing else changes: an
earlier program then says that the file is newer, and not that it is damaged.
"""

from collections.abc import Callable
from typing import Any

from firstpaper.former_names import Named, former_names

SCHEMA = 2

Document = dict[str, Any]


def _asks_more(document: Document) -> Document:
    """Schema 2, of version 0.2.0, has more facts. What was told before means what it meant."""
    return document


UPGRADES: dict[int, Callable[[Document], Document]] = {1: _asks_more}


def renamed(facts: Document) -> bool:
    """Give every fact that is told under a former name its name of today; whether there was one."""
    found = [_moved(facts, old.split("."), new.split(".")) for old, new in former_names()[Named.FACT].items()]
    return any(found)


def _moved(facts: Any, old: list[str], new: list[str]) -> bool:
    """Move what is told at one path to the other; in rows (`*`) within each row."""
    if "*" in old:
        rows, at_old, at_new = old.index("*"), old[old.index("*") + 1 :], new[new.index("*") + 1 :]
        return bool([row for row in _at(facts, old[:rows]) or () if _moved(row, at_old, at_new)])
    group = _at(facts, old[:-1])
    if not isinstance(group, dict) or old[-1] not in group:
        return False
    value, home = group.pop(old[-1]), facts
    for part in new[:-1]:
        home = home.setdefault(part, {})
    home.setdefault(new[-1], value)
    return True


def _at(facts: Any, path: list[str]) -> Any:
    for part in path:
        facts = facts.get(part) if isinstance(facts, dict) else None
    return facts


def upgraded(document: Document, schema: int) -> Document:
    """The document of an earlier `schema` in the form of this version. KeyError where no way leads."""
    for earlier in range(schema, SCHEMA):
        document = UPGRADES[earlier](document)
    return document
