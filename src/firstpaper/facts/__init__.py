"""What the filer told us: frozen models, one module a topic. No law, no defaults that decide."""

from firstpaper.facts.case import Case
from firstpaper.facts.day import Day
from firstpaper.facts.told import DONT_KNOW, DontKnow, Told, known

__all__ = ["DONT_KNOW", "Case", "Day", "DontKnow", "Told", "known"]
