"""The calendar file: what an outside reader of RFC 5545 makes of it, and what it gives away."""

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar

from firstpaper.cli.files.output import CALENDAR
from firstpaper.facts import Case
from firstpaper.law.agenda import Agenda, agenda
from firstpaper.packet import calendar as written
from firstpaper.packet.calendar import LONGEST_LINE, calendar

ON = date(2026, 12, 6)
TIED = "abcdefghijklmnopqrst"
NAMES = {"petitioner": {"name": "Dana Marie Okafor"}, "respondent": {"name": "Luis Soto"}}
SERVED = {"filed_on": "2026-12-01", "service": {"method": "personal", "served_on": "2026-12-05"}}


def case(kind: str = "dissolution", **record: Any) -> Case:
    return Case.model_validate({**NAMES, "matter": {"kind": kind}, "record": record})


def read(found: Agenda, tied_to: str = TIED, *, plain_titles: bool = False) -> dict[str, Any]:
    """The events by title, as the outside reader gives them."""
    parsed = Calendar.from_ical(calendar(found, tied_to, plain_titles=plain_titles))
    assert parsed["VERSION"] == "2.0"
    return {str(event["UID"]): event for event in parsed.walk("VEVENT")}


def by_title(found: Agenda) -> dict[str, Any]:
    return {str(event["SUMMARY"]): event for event in read(found).values()}


# --- the dates --------------------------------------------------------------------------------------


def test_every_date_is_a_whole_day_on_the_day_to_aim_for() -> None:
    found = agenda(case(**SERVED), ON)
    events = read(found)
    assert len(events) == len(found.entries)
    days = sorted(event.decoded("DTSTART") for event in events.values())
    assert days == [one.deadline.target for one in found.entries]
    for event in events.values():
        assert event["DTSTART"].params["VALUE"] == "DATE"
        assert event.decoded("DTEND") - event.decoded("DTSTART") == timedelta(days=1)


def test_the_day_the_law_moves_it_to_is_in_the_description() -> None:
    """Code Civ. Proc. 12a: January 30, 2027 is a Saturday."""
    event = by_title(agenda(case(**SERVED), ON))["Court papers: list to hand over"]
    assert event.decoded("DTSTART") == date(2027, 1, 30)
    assert "Mon, Feb 1, 2027" in str(event["DESCRIPTION"])


def test_a_day_that_hangs_on_law_we_have_not_confirmed_is_tentative_and_says_so() -> None:
    """Fam. Code 2104(f) names no day for the second petitioner. By hand: Code Civ. Proc. 415.10."""
    together = {"filed_on": "2026-12-01", "joint": True}
    unsure = by_title(agenda(case(**together), ON))["Court papers: list from the other side due"]
    assert unsure["STATUS"] == "TENTATIVE"
    assert "Not confirmed in the law" in str(unsure["DESCRIPTION"])
    sure = by_title(agenda(case(**SERVED), ON))["Court papers: answer due"]
    assert sure["STATUS"] == "CONFIRMED"
    assert "Not confirmed" not in str(sure.get("DESCRIPTION", ""))


def test_a_last_day_reminds_a_week_and_a_day_before_at_nine() -> None:
    event = by_title(agenda(case(**SERVED), ON))["Court papers: answer due"]
    midnight = timedelta()
    triggers = [alarm["TRIGGER"].dt for alarm in event.walk("VALARM")]
    nine = timedelta(hours=9)
    assert triggers == [midnight - timedelta(days=7) + nine, midnight - timedelta(days=1) + nine]
    assert {str(alarm["ACTION"]) for alarm in event.walk("VALARM")} == {"DISPLAY"}


def test_a_first_day_and_a_day_of_the_court_remind_on_the_day_itself() -> None:
    events = by_title(agenda(case(**SERVED), ON))
    for title in ("Court papers: next step possible", "Court papers: review by the court"):
        assert [alarm["TRIGGER"].dt for alarm in events[title].walk("VALARM")] == [timedelta(hours=9)]


def test_what_is_done_is_called_off_and_reminds_nobody() -> None:
    event = by_title(agenda(case(**SERVED), ON))["Court papers, done: last day to hand over papers"]
    assert event["STATUS"] == "CANCELLED"
    assert event.walk("VALARM") == []


def test_what_is_not_needed_any_more_is_over() -> None:
    found = agenda(case(**SERVED, response_filed_on="2026-12-06"), ON)
    assert by_title(found)["Court papers, over: next step possible"]["STATUS"] == "CANCELLED"


def test_a_day_that_has_passed_reminds_nobody() -> None:
    found = agenda(case(**SERVED), date(2027, 3, 1))
    missed = by_title(found)["Court papers: answer due"]
    assert missed["STATUS"] == "CONFIRMED"
    assert missed.walk("VALARM") == []


def test_before_the_filing_every_date_is_planned_and_tentative() -> None:
    events = read(agenda(case(), ON))
    assert events
    assert {str(event["STATUS"]) for event in events.values()} == {"TENTATIVE"}
    assert all(str(event["SUMMARY"]).startswith("Court papers, planned: ") for event in events.values())


# --- a newer file takes the place of an older one --------------------------------------------------------


def test_a_date_that_moves_keeps_its_name_and_gets_a_higher_revision() -> None:
    before = read(agenda(case(**SERVED), ON))
    moved = {**SERVED, "service": {"method": "personal", "served_on": "2026-12-04"}}
    after = read(agenda(case(**moved), ON + timedelta(days=1)))
    assert set(before) == set(after)
    assert all(after[uid]["SEQUENCE"] > before[uid]["SEQUENCE"] for uid in before)
    assert all(after[uid].decoded("DTSTAMP") > before[uid].decoded("DTSTAMP") for uid in before)
    assert [uid for uid in before if before[uid].decoded("DTSTART") != after[uid].decoded("DTSTART")]


def test_a_planned_date_becomes_the_real_one() -> None:
    planned, real = read(agenda(case(), ON)), read(agenda(case(filed_on="2026-12-05"), ON))
    assert set(planned) <= set(real)


def test_two_cases_never_share_a_name() -> None:
    found = agenda(case(**SERVED), ON)
    assert set(read(found)) & set(read(found, "tsrqponmlkjihgfedcba")) == set()


def test_the_same_dates_on_the_same_day_are_the_same_bytes() -> None:
    assert calendar(agenda(case(**SERVED), ON), TIED) == calendar(agenda(case(**SERVED), ON), TIED)


def test_both_sides_of_the_new_year_have_their_days() -> None:
    for served, answer in ((date(2026, 12, 2), date(2027, 1, 1)), (date(2027, 1, 1), date(2027, 1, 31))):
        record = {**SERVED, "service": {"method": "personal", "served_on": served.isoformat()}}
        found = agenda(case(**record), date(2027, 1, 1))
        assert by_title(found)["Court papers: answer due"].decoded("DTSTART") == answer


# --- what it gives away ------------------------------------------------------------------------------------

TELLING = ("okafor", "dana", "luis", "soto", "divorce", "marriage", "petition", "spouse", "firstpaper", TIED)


@pytest.mark.parametrize("plain_titles", [False, True])
@pytest.mark.parametrize("kind", ["dissolution", "legal_separation", "nullity"])
def test_nothing_in_it_names_a_person_or_the_kind_of_case(kind: str, plain_titles: bool) -> None:
    for record in ({}, SERVED, {"filed_on": "2026-12-01", "joint": True}):
        text = calendar(agenda(case(kind, **record), ON), TIED, plain_titles=plain_titles).decode().lower()
        assert [word for word in TELLING if word in text] == []


def test_plain_titles_say_nothing_at_all() -> None:
    events = read(agenda(case(**SERVED), ON), plain_titles=True)
    assert {str(event["SUMMARY"]) for event in events.values()} == {"Reminder"}
    assert not any("DESCRIPTION" in event for event in events.values())
    assert "court" not in calendar(agenda(case(**SERVED), ON), TIED, plain_titles=True).decode().lower()


def test_it_is_private_and_takes_no_time() -> None:
    for event in read(agenda(case(**SERVED), ON)).values():
        assert event["CLASS"] == "PRIVATE"
        assert event["TRANSP"] == "TRANSPARENT"


# --- the lines (RFC 5545, 3.1 and 3.3.11) -----------------------------------------------------------------


@given(st.dates(date(2026, 12, 1), date(2031, 12, 31)), st.sampled_from([{}, SERVED]))
def test_every_line_is_short_ends_as_it_must_and_reads_back(on: date, record: dict[str, Any]) -> None:
    data = calendar(agenda(case(**record), on), TIED)
    assert data.startswith(CALENDAR)
    assert data.endswith(b"END:VCALENDAR\r\n")
    lines = data.split(b"\r\n")
    assert all(len(line) <= LONGEST_LINE for line in lines)
    assert b"\n" not in data.replace(b"\r\n", b"")
    assert Calendar.from_ical(data).to_ical()


@given(st.text(max_size=300))
def test_any_text_reads_back_as_it_was_written(text: str) -> None:
    shown = "".join(letter for letter in text if letter.isprintable())
    lines = "\r\n".join(written._folded(f"SUMMARY:{written._escaped(shown)}"))
    assert all(len(line.encode()) <= LONGEST_LINE for line in lines.split("\r\n"))
    event = Calendar.from_ical(
        f"BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\n{lines}\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    )
    assert str(event.walk("VEVENT")[0]["SUMMARY"]) == shown
