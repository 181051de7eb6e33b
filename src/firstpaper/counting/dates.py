"""Dates in words, the same on every computer and in the reader's language.

`strftime` names follow the computer's locale, so a Spanish computer would mix languages and two
computers would print two different packets. Names and word order come from the message catalog.
"""

from datetime import date

from firstpaper.locale import _, _c

_MONTHS = (
    lambda: _("January"),
    lambda: _("February"),
    lambda: _("March"),
    lambda: _("April"),
    lambda: _("May"),
    lambda: _("June"),
    lambda: _("July"),
    lambda: _("August"),
    lambda: _("September"),
    lambda: _("October"),
    lambda: _("November"),
    lambda: _("December"),
)
"""Looked up one at a time: a list of dates asks for thousands of them."""
_SHORT_MONTHS = (
    lambda: _c("short", "Jan"),
    lambda: _c("short", "Feb"),
    lambda: _c("short", "Mar"),
    lambda: _c("short", "Apr"),
    lambda: _c("short", "May"),
    lambda: _c("short", "Jun"),
    lambda: _c("short", "Jul"),
    lambda: _c("short", "Aug"),
    lambda: _c("short", "Sep"),
    lambda: _c("short", "Oct"),
    lambda: _c("short", "Nov"),
    lambda: _c("short", "Dec"),
)
_WEEKDAYS = (
    lambda: _("Monday"),
    lambda: _("Tuesday"),
    lambda: _("Wednesday"),
    lambda: _("Thursday"),
    lambda: _("Friday"),
    lambda: _("Saturday"),
    lambda: _("Sunday"),
)
_SHORT_WEEKDAYS = (
    lambda: _c("short", "Mon"),
    lambda: _c("short", "Tue"),
    lambda: _c("short", "Wed"),
    lambda: _c("short", "Thu"),
    lambda: _c("short", "Fri"),
    lambda: _c("short", "Sat"),
    lambda: _c("short", "Sun"),
)


def weekday_name(day: date) -> str:
    """The full weekday name, as in "Thursday"."""
    return _WEEKDAYS[day.weekday()]()


def month_name(day: date) -> str:
    """The full month name, as in "November"."""
    return _MONTHS[day.month - 1]()


def spell_date(day: date) -> str:
    """The whole date in words, as in "Thursday, November 26, 2026"."""
    return _("{weekday}, {month} {day}, {year}").format(
        weekday=weekday_name(day), month=month_name(day), day=day.day, year=day.year
    )


def short_date(day: date) -> str:
    """The date in short words, as in "Thu, Nov 26, 2026"."""
    return _c("short", "{weekday}, {month} {day}, {year}").format(
        weekday=_short_weekday(day), month=short_month(day), day=day.day, year=day.year
    )


def _short_weekday(day: date) -> str:
    return _SHORT_WEEKDAYS[day.weekday()]()


def short_month(day: date) -> str:
    """The month in a short word, as in "Nov"."""
    return _SHORT_MONTHS[day.month - 1]()
