"""Every official form that we help to fill in, item by item, in the order in which it is worth doing."""

from collections.abc import Callable
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.declaration import declaration
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl110 import summons
from firstpaper.forms.fl160.form import property_declarations
from firstpaper.forms.fl311 import custody_application
from firstpaper.forms.fw001 import fee_waiver
from firstpaper.forms.petition import petition_form

MAKERS: tuple[Callable[[Case, date], tuple[FilledForm, ...]], ...] = (
    petition_form,
    summons,
    declaration,
    custody_application,
    property_declarations,
    fee_waiver,
)


def filled_forms(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The forms of one case for a filing on the day `on`; `case` holds standing facts."""
    return tuple(form for maker in MAKERS for form in maker(case, on))
