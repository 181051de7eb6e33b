"""What the filer told us: frozen models, one module a topic. No law, no defaults that decide.

Names load when they are first used: what only looks at letters needs no models.
"""

from typing import TYPE_CHECKING

from firstpaper.on_first_use import names_of

if TYPE_CHECKING:
    from firstpaper.facts.case import Case
    from firstpaper.facts.day import Day
    from firstpaper.facts.told import DONT_KNOW, DontKnow, Told, known

__all__ = ["DONT_KNOW", "Case", "Day", "DontKnow", "Told", "known"]

__getattr__ = names_of(
    __name__, {"case": ("Case",), "day": ("Day",), "told": ("DONT_KNOW", "DontKnow", "Told", "known")}
)
