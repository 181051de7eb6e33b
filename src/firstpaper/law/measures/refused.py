"""A sum that is not worked out, and why."""

from typing import NamedTuple


class Refused(NamedTuple):
    """What stands in the way, each in one plain sentence. `missing` are the keys of facts not known."""

    why: tuple[str, ...]
    missing: tuple[str, ...] = ()
    cite: tuple[str, ...] = ()
