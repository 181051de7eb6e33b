"""Words a person sees, in their language.

Every string shown to a person passes through `_`, so that a translation is a catalog file and
never a change of code. The language comes from FIRSTPAPER_LANG alone: the language of the
computer may be the other spouse's. Without a catalog the English words in the code are shown.
"""

import os
from functools import cache
from gettext import NullTranslations, translation
from pathlib import Path

DOMAIN = "firstpaper"


@cache
def catalog() -> NullTranslations:
    """The message catalog for the chosen language; English where there is none."""
    language = os.environ.get("FIRSTPAPER_LANG", "en")
    return translation(DOMAIN, Path(__file__).parent, languages=[language], fallback=True)


def _(words: str) -> str:
    """The words in the reader's language."""
    return catalog().gettext(words) if words else ""


def _n(one: str, many: str, count: int) -> str:
    """The singular or plural words for `count`, in the reader's language."""
    return catalog().ngettext(one, many, count)


def language() -> str:
    """The language tag of the words shown, for PDF and HTML."""
    return catalog().info().get("language", "en-US")
