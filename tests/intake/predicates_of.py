"""The predicates of a bank, found in its modules."""

from collections.abc import Callable, Sequence
from importlib import import_module
from inspect import getmembers, isfunction, signature

from firstpaper.facts import Case


def predicates_of(modules: Sequence[str]) -> dict[str, Callable[..., bool]]:
    """Every public function there that looks at a case and says yes or no, by its name."""
    found = (each for name in modules for each in getmembers(import_module(name), isfunction))
    return {name: function for name, function in found if not name.startswith("_") and _is_one(function)}


def _is_one(function: Callable[..., object]) -> bool:
    if not function.__module__.startswith("firstpaper.intake.predicates."):
        return False
    asks = signature(function)
    first = next(iter(asks.parameters.values()), None)
    return asks.return_annotation is bool and first is not None and first.annotation is Case
