"""Households past their filing, each served in its own way: the later part of the packet and the calendar."""

from collections import defaultdict
from io import BytesIO
from typing import Any

import page as page_validation
from icalendar import Calendar
from pypdf import PdfReader

from firstpaper.law.agenda import agenda
from firstpaper.packet.calendar import calendar
from firstpaper.packet.drawing import drawn
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.pictures.chart import Chart
from firstpaper.packet.pictures.shares import Shares
from firstpaper.packet.pictures.words import text_of
from firstpaper.packet.templates import render
from tests.each import one_by_one
from tests.households.golden import Household, later_part
from tests.packet.drawn import FOLLOWED

each_day = one_by_one(FOLLOWED)
TIED = "abcdefghijklmnopqrst"


@each_day
def test_every_sheet_is_in_the_markup_and_conforms_to_pdf_ua_1(one: Household) -> None:
    # ISO 14289-1 (PDF/UA-1), by an outside validator
    packet = later_part(one)
    for sheet in packet.sheets:
        assert markup_errors(render(sheet.template, sheet.values)) == [], sheet.title
    data = packet.pdf()
    report = page_validation.validate_pdf_bytes(data, profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []
    outline = [entry.title for entry in PdfReader(BytesIO(data)).outline if not isinstance(entry, list)]
    assert outline == [sheet.title for sheet in packet.sheets]


@each_day
def test_the_dates_fit_on_their_one_page(one: Household) -> None:
    (sheet,) = (each for each in later_part(one).sheets if each.template == "dates-ahead.html")
    assert len(PdfReader(BytesIO(drawn((sheet,), "Sheets", one.on))).pages) == 1


def read(one: Household) -> dict[str, Any]:
    parsed = Calendar.from_ical(calendar(agenda(one.case, one.on), TIED))
    return {str(event["UID"]): event for event in parsed.walk("VEVENT")}


@each_day
def test_the_calendar_is_read_back_with_a_reminder_for_all_that_lies_ahead(one: Household) -> None:
    # RFC 5545, by an outside reader
    found = agenda(one.case, one.on)
    events = read(one)
    assert sorted(event.decoded("DTSTART") for event in events.values()) == [
        entry.deadline.target for entry in found.entries
    ]
    for event in events.values():
        ahead = event.decoded("DTSTART") > one.on and str(event["STATUS"]) != "CANCELLED"
        assert bool(event.walk("VALARM")) == ahead, event["SUMMARY"]


def test_made_again_later_each_date_keeps_its_identity_and_gets_a_higher_revision() -> None:
    days: dict[str, list[Household]] = defaultdict(list)
    for one in FOLLOWED:
        days[one.name].append(one)
    pairs = [(days[0], days[1]) for days in days.values() if len(days) > 1]
    assert len(pairs) >= 3
    for before, after in pairs:
        old, new = read(before), read(after)
        assert old.keys() & new.keys()
        for uid in old.keys() & new.keys():
            assert int(new[uid]["SEQUENCE"]) > int(old[uid]["SEQUENCE"])


def test_after_a_posting_every_page_asks_for_the_day_and_none_to_serve_or_post() -> None:
    one = next(one for one in FOLLOWED if one.name == "posted-at-the-courthouse")  # the day is not told yet
    sheets = {sheet.template: render(sheet.template, sheet.values) for sheet in later_part(one).sheets}
    for template in ("after-you-file.html", "road.html"):
        assert "on which day service is complete" in sheets[template], template
    assert "publish or post the summons" not in sheets["road.html"]
    assert "served on Thu, Dec 3, 2026" not in " ".join(map(text_of, pictures_of(one)))


def pictures_of(one: Household) -> list[Chart | Shares]:
    return [chart for sheet in later_part(one).sheets for chart in sheet.pictures.values()]
