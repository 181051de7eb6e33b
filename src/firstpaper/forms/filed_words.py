"""Words of ours that stand on a court paper, and what they mean for somebody who reads another language.

Papers in a California court are in English (Code Civ. Proc. 185(a)), and some are signed under penalty of
perjury: nobody should have to sign words that they cannot read. What a person typed is never translated.
"""

from collections.abc import Callable
from contextvars import ContextVar

from firstpaper.locale import ENGLISH, _, language

_EXPLAINED: ContextVar[bool] = ContextVar("filed words are explained", default=False)


def filed(words: str) -> str:
    """The words in English, as they are filed; inside `meaning` in the reader's language."""
    return _(words) if _EXPLAINED.get() else words


def meaning(of: Callable[[], str]) -> str:
    """What the words that `of` puts together mean; nothing where they are the reader's own, or in English."""
    if language() == ENGLISH:
        return ""
    before = _EXPLAINED.set(True)
    try:
        explained = of()
    finally:
        _EXPLAINED.reset(before)
    return "" if explained == of() else explained
