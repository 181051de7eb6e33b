"""The questions on paper and as a file of facts, for an interview away from the computer."""

from collections.abc import Sequence
from datetime import date

from firstpaper.facts import Case
from firstpaper.intake import Topic
from firstpaper.intake.blank import Room
from firstpaper.intake.skeleton import open_skeleton, skeleton
from firstpaper.intake.to_come import Usual
from firstpaper.law.figure import figure
from firstpaper.locale import _
from firstpaper.packet.drawing import drawn
from firstpaper.packet.views import question_sheets


def blank_sheets(topics: Sequence[Topic], room: Room, on: date, usual: Usual | None = None) -> bytes:
    """Blank question sheets as a PDF, with blocks for so many rows of each group, as of the day `on`.

    With `usual`, the questions of that usual case alone.
    """
    return drawn(question_sheets.sheets(topics, room, on, usual), _("Question sheets"), on)


def blank_facts(topics: Sequence[Topic], room: Room, on: date) -> str:
    """A file of facts in which every answer is still to be written, as of the day `on`."""
    return skeleton(topics, room, first_words=[_safety(on)])


def open_question_sheets(topics: Sequence[Topic], case: Case, on: date) -> bytes:
    """Sheets as a PDF with only the questions that a case leaves open, as of the day `on`."""
    return drawn(question_sheets.open_sheets(case, topics), _("Question sheets"), on)


def open_facts(topics: Sequence[Topic], case: Case, on: date) -> str:
    """A file of facts with only the questions that a case leaves open, as of the day `on`."""
    return open_skeleton(topics, case, first_words=[_safety(on)])


def _safety(on: date) -> str:
    words = _(
        "In danger now? Call 911. The National Domestic Violence Hotline is free, day and night: {phone}. "
        "Keep this file where the other person in the case cannot find it."
    )
    return words.format(phone=figure("help.domestic_violence_hotline", on).value)
