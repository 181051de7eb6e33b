"""Whom to call in danger, by where a person lives."""

from datetime import date

from firstpaper.facts.choices import Lives
from firstpaper.law.figure import figure
from firstpaper.locale import _


def emergency_number(lives: Lives | None, on: date) -> str:
    """The number of this country; for somebody in another one, in words, that there it is another."""
    if lives is Lives.ABROAD:
        return _("the emergency number where you are")
    here: str = figure("help.emergency", on).value
    return here
