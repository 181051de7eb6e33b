"""The items of the petition, as most tests of it want them."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.fl100.form import form


def petition(case: Case, on: date) -> tuple[ItemAnswer, ...]:
    """What to do with every item of FL-100 for a filing on the day `on`."""
    return form(case, on)[0].items
