"""Every message in the code is collected for translators, and nothing translated outlives its block."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.locale.pseudo import catalog

SOURCE = Path(__file__).parents[2] / "src"
LOOKED_UP = {"_": 0, "_n": 0, "noted": 0, "_c": 1, "beside": 0}
FILES = [path for path in sorted(SOURCE.rglob("*.py")) if "def _(" not in path.read_text("utf-8")]


def _words(path: Path) -> Iterator[str]:
    """The words written out in calls that look up a message."""
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in LOOKED_UP:
            first = node.args[LOOKED_UP[node.func.id]]
            if isinstance(first, ast.Constant) and any(map(str.isalpha, str(first.value))):
                yield first.value


def test_every_message_written_in_the_code_is_collected() -> None:
    collected = {words for _context, words in catalog()}
    missing = {words: path.name for path in FILES for words in _words(path)}
    assert not [(words, name) for words, name in missing.items() if words not in collected]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_nothing_is_translated_while_a_module_is_loaded_or_kept(path: Path) -> None:
    tree = ast.parse(path.read_text("utf-8"))
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef) and any("cache" in ast.dump(one) for one in node.decorator_list):
            assert not list(_calls(node)), f"{node.name} is kept, and its words would be too"
    commands = "cli" in path.parts  # a command is loaded once its language is known
    loaded = [one for node in tree.body if not isinstance(node, ast.FunctionDef) for one in _at_once(node)]
    assert commands or not loaded


def _calls(node: ast.AST) -> Iterator[ast.Call]:
    for one in ast.walk(node):
        if isinstance(one, ast.Call) and isinstance(one.func, ast.Name) and one.func.id in ("_", "_n", "_c"):
            yield one


def _at_once(node: ast.AST) -> Iterator[ast.Call]:
    """The calls made while the module is loaded: none inside of functions."""
    if isinstance(node, ast.FunctionDef | ast.Lambda):
        return
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("_", "_n", "_c"):
        yield node
    for inner in ast.iter_child_nodes(node):
        yield from _at_once(inner)
