"""YAML as text with line numbers: no types guessed, no objects built, no shortcuts followed.

Every scalar stays the text that was typed (so ``No`` is a word and ``2026-03-14`` is text for the
date reader). Depth and size are bounded, and a name given twice is kept for the caller to refuse.
"""

from collections.abc import Iterator
from typing import NamedTuple

import yaml

DEEPEST = 12
MOST_NODES = 20_000
_NOT_ANSWERED = ("", "~", "null", "Null", "NULL")


class YamlRefused(Exception):
    """Text that is not the plain YAML read here. `line` counts from 1; None where there is none."""

    def __init__(self, code: str, line: int | None) -> None:
        super().__init__(code)
        self.code = code
        self.line = line


class Scalar(NamedTuple):
    """One value as typed."""

    text: str
    line: int | None = None
    quoted: bool = False

    @property
    def absent(self) -> bool:
        """Whether nothing was written (or ``null``), unlike the quoted empty text."""
        return not self.quoted and self.text in _NOT_ANSWERED


class Listed(NamedTuple):
    """A list of nodes."""

    line: int | None
    items: list["Node"]


class Named(NamedTuple):
    """Names and their nodes, in the order written. A name may come twice."""

    line: int | None
    pairs: list[tuple[Scalar, "Node"]]


Node = Scalar | Listed | Named


def read_yaml(text: str) -> Node:
    """The one document in `text`. Raises YamlRefused with a code:

    broken, too_deep, too_much, shortcut (an anchor or alias), tag, two_documents, name (a name that
    is not one word of text).
    """
    try:
        return _build(yaml.parse(text, Loader=yaml.CBaseLoader))
    except yaml.MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        raise YamlRefused("broken", mark.line + 1 if mark else None) from None
    except (yaml.YAMLError, UnicodeError, ValueError):
        raise YamlRefused("broken", None) from None


def _build(events: Iterator[yaml.Event]) -> Node:
    root: list[Node] = []
    open_nodes: list[Listed | Named] = []
    names: list[Scalar | None] = []
    count = 0
    for event in events:
        kind = type(event)
        if kind in (yaml.SequenceEndEvent, yaml.MappingEndEvent):
            open_nodes.pop()
            names.pop()
            continue
        if kind in _AROUND:
            continue
        line = event.start_mark.line + 1 if event.start_mark else None
        count += 1
        node = _node(event, line)
        if count > MOST_NODES:
            raise YamlRefused("too_much", line)
        if not open_nodes:
            root.append(node)
            if len(root) > 1:
                raise YamlRefused("two_documents", line)
        else:
            _attach(open_nodes[-1], names, node, line)
        if not isinstance(node, Scalar):
            open_nodes.append(node)
            names.append(None)
            if len(open_nodes) > DEEPEST:
                raise YamlRefused("too_deep", line)
    return root[0] if root else Scalar("")


_AROUND = (yaml.StreamStartEvent, yaml.StreamEndEvent, yaml.DocumentStartEvent, yaml.DocumentEndEvent)


def _node(event: yaml.Event, line: int | None) -> Node:
    if not isinstance(event, yaml.ScalarEvent | yaml.CollectionStartEvent) or event.anchor is not None:
        raise YamlRefused("shortcut", line)
    if event.tag not in (None, "!"):
        raise YamlRefused("tag", line)
    if isinstance(event, yaml.ScalarEvent):
        return Scalar(event.value, line, event.style not in (None, ""))
    return Listed(line, []) if isinstance(event, yaml.SequenceStartEvent) else Named(line, [])


def _attach(parent: Listed | Named, names: list[Scalar | None], node: Node, line: int | None) -> None:
    if isinstance(parent, Listed):
        parent.items.append(node)
        return
    name = names[-1]
    if name is not None:
        parent.pairs.append((name, node))
        names[-1] = None
    elif isinstance(node, Scalar):
        names[-1] = node
    else:
        raise YamlRefused("name", line)
