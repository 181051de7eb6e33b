"""What a fact is called, wherever it is spoken of: the one name that its question gives it."""

from firstpaper.facts import Case
from firstpaper.intake.engine import Asked, asking
from firstpaper.intake.events import events


def named(key: str, case: Case | None = None) -> str:
    """The fact at a key in a few words, as in "your full legal name"; a child is named as in the case.

    KeyError where no question asks for it.
    """
    case = case or Case.nothing()
    recorded = events().find(key)
    asked = Asked(recorded[1], key, recorded[0], None, case) if recorded else asking(key, case)
    if asked is None:
        raise KeyError(key)
    return asked.short
