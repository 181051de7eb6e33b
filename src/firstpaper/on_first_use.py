"""Names of a package that load when they are first used, so that who needs one does not wait for all."""

from collections.abc import Callable, Iterable, Mapping
from importlib import import_module
from sys import modules
from typing import Any


def names_of(package: str, homes: Mapping[str, Iterable[str]]) -> Callable[[str], Any]:
    """What a package calls for a name that it has not loaded: `homes` says in which module each name is."""
    home_of = {name: module for module, names in homes.items() for name in names}

    def load(name: str) -> Any:
        if name not in home_of:
            raise AttributeError(f"module {package!r} has no attribute {name!r}")
        value = getattr(import_module(f"{package}.{home_of[name]}"), name)
        setattr(modules[package], name, value)
        return value

    return load
