"""A calendar file of the dates (RFC 5545), for the calendar program somebody uses already.

Written by hand: all-day events, a handful of properties, every line ended and folded as the standard
asks. Whoever sees the calendar sees the titles, so they name nobody and no kind of case; with plain
titles they say nothing at all. The same dates on the same day give the same bytes.
"""

from collections.abc import Iterable, Iterator
from datetime import date
from hashlib import sha256

from firstpaper.counting import days_after, short_date
from firstpaper.law.agenda import Agenda, Entry, State
from firstpaper.law.deadline import Deadline, Meaning
from firstpaper.law.words import moved_to, not_confirmed, spaced
from firstpaper.locale import _

LONGEST_LINE = 75
"""Octets of a line without its end (RFC 5545, 3.1)."""

PRODUCT = "-//Dates//Dates//EN"
"""Some calendar programs show who made a file; a neutral name gives nothing away."""

FIRST_DAY_COUNTED = date(2020, 1, 1)
"""Where the revision number starts. Each later day's file is a newer revision of the same entries."""

_AT_NINE_A_WEEK_BEFORE, _AT_NINE_THE_DAY_BEFORE, _AT_NINE = "-P6DT15H", "-PT15H", "PT9H"
"""Reminders, counted from the midnight at which an all-day entry begins."""


def calendar(found: Agenda, calendar_id: str, *, plain_titles: bool = False) -> bytes:
    """The dates as a calendar file. `calendar_id` ties its entries to one case.

    A newer file with the same id takes the place of the older one entry by entry, where the calendar
    program knows how. A date that is done or over is called off, and says so in its title.
    """
    return whole(event_lines(found.entries, found.on, calendar_id, plain_titles=plain_titles))


def event_lines(
    entries: Iterable[Entry], on: date, calendar_id: str, *, plain_titles: bool, label: str = ""
) -> list[str]:
    """The lines of a calendar about one case. `label` stands before each title, where many share it."""
    return [line for one in entries for line in _event(one, on, calendar_id, plain_titles, label)]


def whole(events: Iterable[str]) -> bytes:
    """A calendar file from the lines of its entries."""
    head = ("BEGIN:VCALENDAR", "VERSION:2.0", f"PRODID:{PRODUCT}", "CALSCALE:GREGORIAN")
    lines = (*head, *events, "END:VCALENDAR")
    return "".join(f"{part}\r\n" for line in lines for part in _folded(line)).encode()


def _event(one: Entry, on: date, calendar_id: str, plain_titles: bool, label: str) -> Iterator[str]:
    day = one.deadline.target
    title = _plain_title() if plain_titles else _title(one)
    title = f"{label}: {title}" if label else title
    yield "BEGIN:VEVENT"
    yield f"UID:{_uid(calendar_id, one.deadline.first_id)}"
    yield f"DTSTAMP:{on:%Y%m%d}T000000Z"
    yield f"SEQUENCE:{max(0, (on - FIRST_DAY_COUNTED).days)}"
    yield f"DTSTART;VALUE=DATE:{day:%Y%m%d}"
    yield f"DTEND;VALUE=DATE:{days_after(day, 1).day:%Y%m%d}"
    yield f"SUMMARY:{_escaped(title)}"
    if not plain_titles and (words := _description(one.deadline)):
        yield f"DESCRIPTION:{_escaped(words)}"
    yield f"STATUS:{_status(one)}"
    yield "CLASS:PRIVATE"
    yield "TRANSP:TRANSPARENT"
    if one.open and day > on:
        for trigger in _reminders(one):
            yield from ("BEGIN:VALARM", "ACTION:DISPLAY", f"DESCRIPTION:{_escaped(title)}")
            yield from (f"TRIGGER:{trigger}", "END:VALARM")
    yield "END:VEVENT"


def _status(one: Entry) -> str:
    if not one.open:
        return "CANCELLED"
    sure = one.deadline.certainty.confirmed and not one.deadline.planned
    return "CONFIRMED" if sure else "TENTATIVE"


def _uid(calendar_id: str, name: str) -> str:
    """The name of an entry, the same in every file of the case. It gives away neither case nor date."""
    return sha256(f"{calendar_id} {name}".encode()).hexdigest()[:32]


def _reminders(one: Entry) -> Iterable[str]:
    if one.deadline.meaning is Meaning.LAST_DAY:
        return (_AT_NINE_A_WEEK_BEFORE, _AT_NINE_THE_DAY_BEFORE)
    return (_AT_NINE,)


def _plain_title() -> str:
    return _("Reminder")


def _title(one: Entry) -> str:
    name = one.deadline.neutral
    if one.state is State.DONE:
        return _("Court papers, done: {name}").format(name=name)
    if one.state in (State.NOT_NEEDED, State.PASSED):
        return _("Court papers, over: {name}").format(name=name)
    if one.deadline.planned:
        return _("Court papers, planned: {name}").format(name=name)
    return _("Court papers: {name}").format(name=name)


def _description(deadline: Deadline) -> str:
    return spaced((_hangs_on(deadline), not_confirmed(deadline.certainty)))


def _hangs_on(deadline: Deadline) -> str:
    if moved := moved_to(deadline.dated.due, short_date):
        return f"{moved[:1].upper()}{moved[1:]}."
    return _("This day hangs on the day of filing.") if deadline.planned else ""


def _escaped(text: str) -> str:
    """Text as a value (RFC 5545, 3.3.11): no line break, comma, semicolon or backslash of its own."""
    for plain, written in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\n", "\\n")):
        text = text.replace(plain, written)
    return "".join(letter for letter in text if letter.isprintable())


def _folded(line: str) -> Iterator[str]:
    """The line in pieces of 75 octets at most, each but the first begun with a space; no letter is cut."""
    piece, size = "", 0
    for letter in line:
        octets = len(letter.encode())
        if size + octets > LONGEST_LINE:
            yield piece
            piece, size = " ", 1
        piece, size = piece + letter, size + octets
    yield piece
