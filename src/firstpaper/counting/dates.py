"""Dates in words, the same on every computer and in the reader's language.

`strftime` names follow the computer's locale, so a Spanish computer would mix languages and two
computers would print two different packets. Names and word order come from the message catalog.
"""

from datetime import date

from firstpaper.locale import _

_SHORT_MONTHS = (
    lambda: _("Jan"),
    lambda: _("Feb"),
    lambda: _("Mar"),
    lambda: _("Apr"),
    lambda: _("May"),
    lambda: _("Jun"),
    lambda: _("Jul"),
    lambda: _("Aug"),
    lambda: _("Sep"),
    lambda: _("Oct"),
    lambda: _("Nov"),
    lambda: _("Dec"),
)
"""Looked up one at a time: a list of dates asks for thousands of them."""
_SHORT_WEEKDAYS = (
    lambda: _("Mon"),
    lambda: _("Tue"),
    lambda: _("Wed"),
    lambda: _("Thu"),
    lambda: _("Fri"),
    lambda: _("Sat"),
    lambda: _("Sun"),
)


def weekday_name(day: date) -> str:
    """The full weekday name, as in "Thursday"."""
    return (
        _("Monday"),
        _("Tuesday"),
        _("Wednesday"),
        _("Thursday"),
        _("Friday"),
        _("Saturday"),
        _("Sunday"),
    )[day.weekday()]


def month_name(day: date) -> str:
    """The full month name, as in "November"."""
    return (
        _("January"),
        _("February"),
        _("March"),
        _("April"),
        _("May"),
        _("June"),
        _("July"),
        _("August"),
        _("September"),
        _("October"),
        _("November"),
        _("December"),
    )[day.month - 1]


def spell_date(day: date) -> str:
    """The whole date in words, as in "Thursday, November 26, 2026"."""
    return _("{weekday}, {month} {day}, {year}").format(
        weekday=weekday_name(day), month=month_name(day), day=day.day, year=day.year
    )


def short_date(day: date) -> str:
    """The date in short words, as in "Thu, Nov 26, 2026"."""
    return _("{weekday}, {month} {day}, {year}").format(
        weekday=_short_weekday(day), month=short_month(day), day=day.day, year=day.year
    )


def _short_weekday(day: date) -> str:
    return _SHORT_WEEKDAYS[day.weekday()]()


def short_month(day: date) -> str:
    """The month in a short word, as in "Nov"."""
    return _SHORT_MONTHS[day.month - 1]()
