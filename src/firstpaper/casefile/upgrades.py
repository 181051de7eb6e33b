"""Case files of earlier versions, brought up to the schema of this one.

`UPGRADES[n]` turns the whole document of schema n into one of schema n + 1. It gets and returns plain
JSON values and never asks a question. A schema that this project has never written has no entry.
"""

from collections.abc import Callable
from typing import Any

SCHEMA = 1

Document = dict[str, Any]
UPGRADES: dict[int, Callable[[Document], Document]] = {}


def upgraded(document: Document, schema: int) -> Document:
    """The document of an earlier `schema` in the form of this version. KeyError where no way leads."""
    for earlier in range(schema, SCHEMA):
        document = UPGRADES[earlier](document)
    return document
