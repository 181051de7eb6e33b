"""Names close to one that was not found."""

from collections.abc import Iterable
from difflib import get_close_matches

from firstpaper.locale import _


def closest(name: str, known: Iterable[str]) -> str:
    """Up to five known names that look like `name`, or hold it, as one line."""
    names = list(dict.fromkeys(known))
    holding = [one for one in names if name.lower() in one]
    found = dict.fromkeys([*get_close_matches(name.lower(), names, n=5, cutoff=0.5), *holding])
    return ", ".join(list(found)[:5]) or _("nothing")
