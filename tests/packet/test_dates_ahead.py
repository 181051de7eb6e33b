"""The page of dates ahead: one page, honest about what is only planned, and no name on it."""

from datetime import date

import page as page_validation
import pytest

from firstpaper.facts import Case
from firstpaper.packet.brief import brief
from firstpaper.packet.drawing import drawn
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.templates import render
from firstpaper.packet.views import dates_ahead
from firstpaper.packet.views.sheet import Sheet
from tests.each import one_by_one
from tests.households.golden import Household
from tests.packet.drawn import ALL, footed, household, packet
from tests.packet.read_back import words_of

PLAIN = household("plain-childless-divorce").case
FILED = {"record.filed_on": "2026-12-01", "record.case_number": "26FL001234"}
WAIVER = {**FILED, "record.fee": "waiver_asked", "record.waiver_filed_on": "2026-12-01"}
SERVED = {**WAIVER, "record.service.method": "personal", "record.service.served_on": "2026-12-05"}
PROVED = {**SERVED, "record.service.proof_filed_on": "2026-12-08", "record.response_filed_on": "2026-12-28"}


def with_record(told: dict[str, str]) -> Case:
    case = PLAIN
    for key, value in told.items():
        case = case.with_fact(key, value)
    return case


def sheet(told: dict[str, str], on: date) -> Sheet:
    (found,) = dates_ahead.sheets(brief(with_record(told), on))
    return found


def read(found: Sheet) -> list[str]:
    return words_of((found,), date(2026, 12, 1))


STAGES = [
    ({}, date(2026, 11, 30)),
    (FILED, date(2026, 12, 2)),
    (WAIVER, date(2026, 12, 2)),
    (SERVED, date(2027, 1, 6)),
    (PROVED, date(2027, 1, 6)),
]


@pytest.mark.parametrize(("told", "on"), STAGES)
def test_it_is_one_page_and_conforms_to_pdf_ua_1(told: dict[str, str], on: date) -> None:
    found = sheet(told, on)
    assert markup_errors(render(found.template, found.values)) == []
    assert len(read(found)) == 1
    report = page_validation.validate_pdf_bytes(drawn((found,), "Sheets", on), profile="ua1")
    assert report.is_compliant


@one_by_one(ALL)
def test_no_household_gets_more_than_one_page_of_it(one: Household) -> None:
    found = [each for each in packet(one).sheets if each.template == "dates-ahead.html"]
    assert len(found) <= 1
    for each in found:
        assert len(read(each)) == 1


def test_before_the_filing_it_says_that_the_dates_are_only_worked_out() -> None:
    (words,) = read(sheet({}, date(2026, 11, 25)))
    assert "Nothing is filed yet." in words
    assert "as if you file on Wednesday, November 25, 2026" in words
    assert (
        "Sun, Jan 24, 2027 (court closed, so Mon, Jan 25, 2027): Serve the declaration of disclosure" in words
    )  # Fam. Code 2104(f)
    assert "write the day in when it starts" in words


def test_after_the_filing_it_shows_what_happened_and_the_real_dates() -> None:
    (words,) = read(sheet(SERVED, date(2026, 12, 6)))
    assert "Nothing is filed yet." not in words
    assert "Case number: 26FL001234." in words
    assert (
        "Saturday, December 5, 2026: The papers were served or sent (Handed to the other side in person)"
        in words
    )
    assert "January 2027" in words
    assert (
        "Mon, Jan 4, 2027: Last day to file and serve a response. (for the other side)" in words
    )  # Fam. Code 2020
    assert "Sun, Jun 6, 2027: The marriage cannot end before this day." in words  # Fam. Code 2339(a)


def test_a_day_that_has_passed_says_what_follows() -> None:
    (words,) = read(sheet(SERVED, date(2027, 1, 6)))
    assert "This day has passed. The petitioner can ask for a default." in words
    assert "First day to ask for a default. This day has come." in words


def test_a_day_that_hangs_on_law_we_have_not_confirmed_says_so() -> None:
    """Fam. Code 2104(f) names no day for the second petitioner of a joint petition."""
    together = {"record.filed_on": "2026-12-01", "record.joint": True}
    (words,) = read(sheet(together, date(2026, 12, 6)))
    assert "on you. (for the other side) Not confirmed in the law: ask the self-help center." in words
    (words,) = read(sheet(SERVED, date(2026, 12, 6)))
    assert "Not confirmed" not in words


def test_while_both_ways_are_open_each_date_says_whose_it_is() -> None:
    """Fam. Code 2331(b), 2339(a): filed together on November 25, 2026, six months end on May 25, 2027."""
    (page,) = dates_ahead.sheets(brief(household("both-file-together").case, date(2026, 11, 25)))
    (words,) = read(page)
    assert "Wed, May 26, 2027: The marriage cannot end before this day (if you two" in words
    assert "Last day to serve the papers (if you file alone)." in words
    assert "Once the papers are served, if you file alone" in words
    assert "Serve the declaration of disclosure on the other side. (" not in words
    recorded = {"record.filed_on": "2026-12-01", "record.joint": True}
    assert "if you" not in " ".join(read(sheet(recorded, date(2026, 12, 6))))


def test_it_names_nobody() -> None:
    (words,) = read(sheet(SERVED, date(2026, 12, 6)))
    assert "Okafor" not in words
    assert "Soto" not in words


def test_somebody_in_danger_is_told_to_keep_it_hidden() -> None:
    case = PLAIN.with_fact("safety.dangers", ["afraid"])
    (found,) = dates_ahead.sheets(brief(case, date(2026, 11, 30)))
    assert "Keep this page where nobody else finds it." in read(found)[0]


def test_where_nothing_can_be_counted_there_is_no_page() -> None:
    case = with_record({"record.filed_on": "2026-12"})
    assert list(dates_ahead.sheets(brief(case, date(2027, 1, 6)))) == []


def test_it_follows_the_page_to_start_from_after_the_filing_which_names_it() -> None:
    titles = [one.title for one in packet(household("plain-childless-divorce")).sheets]
    assert titles.index("Dates ahead") == titles.index("After you file") + 1
    assert any(
        "Dates ahead." in words for words in footed(household("plain-childless-divorce"), "After you file")
    )
