"""Words that the rules about dates share."""

from firstpaper.counting import month_name, spell_date
from firstpaper.facts import Day
from firstpaper.locale import _


def spell_day(day: Day) -> str:
    """As much of the day as was told: "Sunday, March 1, 2026", "March 2026" or "2026"."""
    if whole := day.whole:
        return spell_date(whole)
    if day.month:
        return _("{month} {year}").format(month=month_name(day.earliest), year=day.year)
    return str(day.year)
