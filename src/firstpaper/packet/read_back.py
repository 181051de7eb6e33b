"""The answers of a case on paper, for the filer to read through and sign."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.locale import _
from firstpaper.packet.drawing import drawn
from firstpaper.packet.views.read_back import sheet


def read_back(case: Case, on: date) -> bytes:
    """The pages as a PDF. They name addresses too, so they are for the filer and the helper alone."""
    return drawn([sheet(case, on)], _("Answers to read through"), on)
