"""Many like things held to one check, or to many."""

from collections.abc import Callable, Iterable
from typing import Any

import pytest

Check = Callable[..., None]


def for_each(
    things: Iterable[Any], name: Callable[[Any], object] = str
) -> Callable[[Check], Callable[[], None]]:
    """Turn a check of one thing into a test of all, where each takes no time: all that fail are named.

    The parts of a tuple are handed over one by one. Things that are still to be found, as a generator finds
    them, are looked for where the test runs, and not in every process that collects it.
    """

    def of_all(check: Check) -> Callable[[], None]:
        def test() -> None:
            everything = list(things)
            failed = [f"{name(thing)}: {why}" for thing in everything if (why := _failure(check, thing))]
            assert not failed, f"{len(failed)} of {len(everything)}:\n" + "\n".join(failed)
            assert everything

        test.__name__, test.__doc__, test.__module__ = check.__name__, check.__doc__, check.__module__
        return test

    return of_all


def one_by_one(things: Iterable[Any]) -> pytest.MarkDecorator:
    """A test of each thing as `one`; all tests of one thing, in whatever file, run one after the other.

    So what is worked out and drawn of a thing for one of them is still there for the next, in one process.
    """
    return pytest.mark.parametrize("one", list(things), ids=str, scope="session")


def _failure(check: Check, thing: Any) -> str:
    try:
        check(*thing) if type(thing) is tuple else check(thing)
    except Exception as error:
        return f"{type(error).__name__}: {error}"
    return ""
