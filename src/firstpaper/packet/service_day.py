"""Where the day stands on which a service by order is complete, in words to act on.

A judge's order, a newspaper or the papers from abroad tell it (Code Civ. Proc. 413.30, 415.50; Cal. Rules of
Court, rule 5.72).
"""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.law.measures.service import lacks_its_day, method
from firstpaper.locale import _


def day_step(case: Case, on: date) -> str:
    """Where to look for that day, to go on after "Next:"; empty where it is known or not wanted."""
    if not lacks_its_day(case, on):
        return ""
    match method(case):
        case ServiceMethod.PUBLICATION:
            return _("ask the newspaper on which day it first printed the summons.")
        case ServiceMethod.ABROAD:
            return _("see in the papers from abroad on which day the other side was served.")
        case _:
            return _("read the judge's order, or ask the clerk, on which day service is complete.")
