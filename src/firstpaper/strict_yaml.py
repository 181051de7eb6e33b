"""YAML read strictly: a name written twice and anything but names, lists and plain values is refused."""

from typing import Any

import yaml

_TYPED = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
_AS_WRITTEN = getattr(yaml, "CBaseLoader", yaml.BaseLoader)
_TEXT, _LIST, _NAMES = (f"tag:yaml.org,2002:{kind}" for kind in ("str", "seq", "map"))
Parts = tuple[object, ...]


class YamlRefused(ValueError):
    """Text that is not the strict YAML read here: what is wrong with it, and at which names."""

    def __init__(self, problem: str, parts: Parts = ()) -> None:
        super().__init__(problem)
        self.problem = problem
        self.parts = parts


def content_of(text: str, as_written: bool = False) -> Any:
    """What the one document in `text` holds, None for an empty one. Raises YamlRefused.

    With `as_written` every value stays the text it was written as.
    """
    try:
        loader = (_AS_WRITTEN if as_written else _TYPED)(text)
        node = loader.get_single_node()
        return _content(loader, (), node) if node else None
    except YamlRefused:
        raise
    except (yaml.YAMLError, ValueError) as broken:
        raise YamlRefused(f"this is not YAML that can be read: {broken}") from broken


def _content(loader: Any, parts: Parts, node: yaml.Node) -> Any:
    """What a node holds. YAML readers let the last of two equal names win; here two are an error."""
    if isinstance(node, yaml.ScalarNode):
        return node.value if node.tag == _TEXT else loader.construct_object(node)
    if isinstance(node, yaml.SequenceNode) and node.tag == _LIST:
        return [_content(loader, (*parts, number), each) for number, each in enumerate(node.value, 1)]
    if isinstance(node, yaml.MappingNode) and node.tag == _NAMES:
        return _names(loader, parts, node)
    raise YamlRefused(f"nothing of the kind {node.tag} is read here", parts)


def _names(loader: Any, parts: Parts, node: yaml.MappingNode) -> dict[Any, Any]:
    content: dict[Any, Any] = {}
    for key, value in node.value:
        if not isinstance(key, yaml.ScalarNode):
            raise YamlRefused(f"a name must be one word, in line {key.start_mark.line + 1}", parts)
        name = _content(loader, parts, key)
        here = (*parts, name)
        if name in content:
            raise YamlRefused(f"written twice, again in line {key.start_mark.line + 1}", here)
        content[name] = _content(loader, here, value)
    return content
