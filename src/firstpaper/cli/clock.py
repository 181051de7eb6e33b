"""The one place that asks what day it is. Everything else is told the day."""

from datetime import date, datetime


def today() -> date:
    """The day on this computer's calendar."""
    return datetime.now().astimezone().date()
