"""Reading a table where facts are missing.

A row asks for a fact as if it were known. Where it is not, every value it could have is supposed in
turn, and the table is read once for each. If all readings come to the same code, the missing fact does
not matter. If they differ, nothing is said but what the fact would change. So a fact that is not known
can never make an answer firmer.
"""

from collections.abc import Iterator, Mapping
from typing import Any, Generic, NamedTuple, Self, TypeVar

from firstpaper.law.measures.character.outcome import Code, Row, Table, Verdict

T = TypeVar("T")


class NotTold(Exception):
    """A row asked for a fact that is not known; these are the values it could have."""

    def __init__(self, name: str, values: tuple[Any, ...]) -> None:
        super().__init__(name)
        self.name = name
        self.values = values


class Supposing:
    """Facts by name, each known or open between some values.

    `told` holds what is known; a name in `between` is open between those values.
    """

    def __init__(self, told: Mapping[str, Any], between: Mapping[str, tuple[Any, ...]]) -> None:
        self._told = told
        self._between = between

    def fact(self, name: str) -> Any:
        """The fact of that name; NotTold where it is not known."""
        value = self._told.get(name)
        if value is None:
            raise NotTold(name, self._between[name])
        return value

    def peek(self, name: str) -> Any:
        """The fact of that name, or None where it is not known."""
        return self._told.get(name)

    def supposing(self, name: str, value: Any) -> Self:
        """The same facts, supposing one of them."""
        return type(self)({**self._told, name: value}, self._between)


class _ByName:
    def __set_name__(self, _owner: type[Supposing], name: str) -> None:
        self._name = name


class Needed(_ByName, Generic[T]):
    """The fact of the property's own name; reading it raises NotTold where it is not known."""

    def __get__(self, look: Supposing, _owner: type[Supposing]) -> T:
        value: T = look.fact(self._name)
        return value


class IfTold(_ByName, Generic[T]):
    """The fact of the property's own name; None where it is not known."""

    def __get__(self, look: Supposing, _owner: type[Supposing]) -> T | None:
        value: T | None = look.peek(self._name)
        return value


class Leaf(NamedTuple):
    """What the table says once all it asks is known or supposed."""

    verdict: Verdict
    row: Row[Any]
    look: Supposing


class Fork(NamedTuple):
    """A fact that is not known, and what the table says for each value it could have."""

    name: str
    branches: Mapping[Any, "Tree"]


Tree = Leaf | Fork
L = TypeVar("L", bound=Supposing)


def readings(table: Table[L], look: L) -> Tree:
    """The table read for everything the unknown facts could be."""
    try:
        verdict, row = table.first(look)
    except NotTold as open_:
        return Fork(
            open_.name,
            {value: readings(table, look.supposing(open_.name, value)) for value in open_.values},
        )
    return Leaf(verdict, row, look)


def leaves(tree: Tree) -> Iterator[Leaf]:
    """Every reading."""
    if isinstance(tree, Leaf):
        yield tree
    else:
        for branch in tree.branches.values():
            yield from leaves(branch)


def codes(tree: Tree) -> tuple[Code, ...]:
    """Every code that comes out, each once."""
    return tuple(dict.fromkeys(leaf.verdict.code for leaf in leaves(tree)))


def deciding(tree: Tree) -> Iterator[Fork]:
    """The forks whose branches do not all come to one code, from the first asked to the last."""
    if isinstance(tree, Fork):
        if len(codes(tree)) > 1:
            yield tree
        for branch in tree.branches.values():
            yield from deciding(branch)
