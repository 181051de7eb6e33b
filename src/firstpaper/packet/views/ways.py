"""The ways that one packet holds, where there is more than one: what each takes, and where it is told."""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet


class Way(NamedTuple):
    """One way to end the union: what it is, the forms it takes, and the sheets that tell of it, in order."""

    name: str
    forms: str
    says: str
    sheets: tuple[str, ...]


def ways(brief: Brief, sheets: Sequence[Sheet]) -> tuple[Way, ...]:
    """The ways to choose from; none where only the ordinary petition is open."""
    others = tuple(_others(brief, sheets))
    return (_alone(brief, sheets), *others) if others else ()


def _alone(brief: Brief, sheets: Sequence[Sheet]) -> Way:
    numbers = (form.form for form in brief.filled if not form.private)
    named = (_("Worksheet for {form}").format(form=PETITION), _("The last check"))
    return Way(
        name=_("You file alone"),
        forms=", ".join(dict.fromkeys(numbers)),
        says=_("The parts below are for this way."),
        sheets=tuple(sheet.title for sheet in sheets if sheet.title in named),
    )


def _others(brief: Brief, sheets: Sequence[Sheet]) -> Iterator[Way]:
    for sheet in sheets:
        if sheet.template == "joint.html":
            worksheets = [one.title for one in sheets if one.way == "joint"]
            yield Way(
                name=_("The two of you file one petition"),
                forms=", ".join(dict.fromkeys(form.form for form in brief.joint)),
                says=_("Its stack and its last check stand on its own page."),
                sheets=(sheet.title, *worksheets[:1]),
            )
        elif sheet.template == "summary-dissolution.html":
            yield Way(sheet.title, "FL-800, FL-810", _("The self-help center helps with it."), (sheet.title,))
        elif sheet.template == "partnership-notice.html":
            yield Way(sheet.title, _("a notice to the state"), sheet.purpose, (sheet.title,))
