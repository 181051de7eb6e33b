"""The line of time of a case: which days stand on it, black or white, and what it says."""

from collections.abc import Mapping
from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.packet.pictures.chart import Chart, Fill, Mark, Row, Span
from firstpaper.packet.pictures.timeline import timeline
from firstpaper.packet.pictures.words import alt_of, text_of

D = Day.parse

FACTS: Mapping[str, object] = {
    "matter.kind": "dissolution",
    "matter.unions": ("marriage",),
    "court.county": "Yolo",
    "dates.married_on": D("2016-06-14"),
    "dates.separation_told_on": D("2026-09-01"),
    "dates.separation_acted_on": D("2026-09-05"),
    "dates.back_together": (),
    "residence.petitioner.lives": "this_county",
    "residence.petitioner.state_since": D("2010-01-15"),
    "residence.petitioner.county_since": D("2026-09-10"),
    "residence.respondent.lives": "other_state",
}
SERVED = {
    "record.filed_on": D("2026-11-25"),
    "record.service.method": "personal",
    "record.service.served_on": D("2026-11-25"),
}


def case(changed: Mapping[str, object] | None = None) -> Case:
    told = Case()
    for key, value in {**FACTS, **(changed or {})}.items():
        told = told.with_fact(key, value)
    return told


def rows(chart: Chart) -> dict[str, Row]:
    return {row.title: row for row in chart.rows}


def test_before_the_filing_it_shows_what_led_here_and_what_follows() -> None:
    chart = timeline(case(), date(2026, 11, 25))
    assert [row.title for row in chart.rows] == [
        "Wedding",
        "Separation",
        "Filing, as planned",
        "Time lived here is long enough",
        "Your disclosure due",
        "Earliest end",
    ]
    assert chart.line is not None
    assert chart.line.day == date(2026, 12, 11)  # the first day right for it
    assert chart.today is None


def test_the_days_are_those_of_the_statutes() -> None:
    # Fam. Code 2320(a): 91 days from September 10 are December 10, three months too; December 11 is safe.
    # Filed that day. Fam. Code 2104(f): 60 days are February 9, 2027. Fam. Code 2339(a): six months from
    # December 11 expire on June 11, 2027; June 12 is the first.
    found = rows(timeline(case(), date(2026, 11, 25)))
    assert found["Time lived here is long enough"].marks == (Mark(date(2026, 12, 11), Fill.WHITE),)
    disclosure = found["Your disclosure due"]
    assert disclosure.marks == (Mark(date(2027, 2, 9), Fill.WHITE),)
    end = found["Earliest end"]
    assert end.marks == (Mark(date(2027, 6, 12), Fill.WHITE),)
    assert end.spans[-1].last == date(2027, 6, 11)
    assert "If the papers are served on Fri, Dec 11, 2026" in end.says


def test_after_service_the_time_to_respond_and_to_wait_run() -> None:
    # Fam. Code 2020: 30 days from November 25, 2026 are December 25; the court opens on December 28.
    chart = timeline(case(SERVED), date(2026, 12, 1))
    found = rows(chart)
    assert found["Petition filed"].marks == (Mark(date(2026, 11, 25)),)
    assert found["Service complete"].marks == (Mark(date(2026, 11, 25)),)
    response = found["Response due"]
    assert response.spans == (
        Span(date(2026, 11, 25), date(2026, 12, 1)),
        Span(date(2026, 12, 2), date(2026, 12, 25), Fill.WHITE),
    )
    assert "(court closed, so Mon, Dec 28, 2026)" in response.notes
    assert found["Earliest end"].says == "The marriage cannot end before Wed, May 26, 2027."
    assert "as it stands on Tue, Dec 1, 2026" in chart.says


def test_after_the_filing_today_has_a_line_of_its_own() -> None:
    chart = timeline(case(SERVED), date(2026, 12, 1))
    assert chart.line
    assert chart.today
    assert (chart.line.heavy, chart.today.heavy) == (True, False)
    assert (chart.today.day, chart.today.words) == (date(2026, 12, 1), "Today: Tue, Dec 1, 2026")
    assert timeline(case(SERVED), date(2036, 12, 1)).today is None


def test_what_is_done_is_no_longer_due() -> None:
    done = {
        **SERVED,
        "record.response_filed_on": D("2026-12-10"),
        "record.disclosure_served_on": D("2026-12-11"),
        "record.other_disclosure_served_on": D("2026-12-12"),
    }
    titles = rows(timeline(case(done), date(2026, 12, 20))).keys()
    assert {"The other side took part", "Your disclosure served", "Their disclosure served"} <= titles
    assert not {"Response due", "Your disclosure due", "Their disclosure due"} & titles


def test_a_legal_separation_has_no_day_on_which_it_ends() -> None:
    assert "Earliest end" not in rows(timeline(case({"matter.kind": "legal_separation"}), date(2026, 11, 25)))


def test_a_joint_petition_waits_from_its_filing() -> None:
    joint = {"record.filed_on": D("2026-11-25"), "record.joint": True}
    found = rows(timeline(case(joint), date(2026, 12, 1)))
    assert found["Earliest end"].marks == (Mark(date(2027, 5, 26), Fill.WHITE),)
    assert "The other side took part" not in found


@pytest.mark.parametrize(
    ("on", "stands", "fill"),
    [
        (date(2026, 11, 25), date(2026, 11, 25), Fill.WHITE),
        (date(2026, 11, 26), date(2026, 11, 30), Fill.WHITE),
        (date(2026, 11, 30), date(2026, 11, 30), Fill.WHITE),
        (date(2026, 12, 1), date(2026, 11, 25), Fill.BLACK),
    ],
)
def test_the_last_day_of_a_nullity_is_shown_and_is_not_gone_while_it_is_open(
    on: date, stands: date, fill: Fill
) -> None:
    # Fam. Code 2211(e): four years after a marriage of November 26, 2022 end on Thanksgiving Day 2026.
    force = {
        "matter.kind": "nullity",
        "grounds.filer": "spouse",
        "grounds.nullity": ("force",),
        "grounds.forced": "petitioner",
        "dates.married_on": D("2022-11-26"),
    }
    found = rows(timeline(case(force), on))["Last day to file: force"]
    assert found.marks == (Mark(stands, fill),)
    assert found.says == (
        "For the ground force, the last day to file is Wed, Nov 25, 2026 "
        "(court closed on Thu, Nov 26, 2026, so Mon, Nov 30, 2026)."
    )


def test_a_wedding_told_in_part_is_striped() -> None:
    wedding = rows(timeline(case({"dates.married_on": D("2026-02")}), date(2026, 11, 25)))["Wedding"]
    assert wedding.spans == (Span(date(2026, 2, 1), date(2026, 2, 28), Fill.STRIPED),)
    assert wedding.says == "You married in February 2026."


def test_rows_stand_in_the_order_of_their_days() -> None:
    chart = timeline(case(SERVED), date(2026, 12, 1))
    days = [(row.marks or row.spans) for row in chart.rows]
    firsts = [one[0].day if isinstance(one[0], Mark) else one[0].first for one in days]
    assert firsts == sorted(firsts)


def test_every_day_shown_is_in_the_words() -> None:
    chart = timeline(case(SERVED), date(2026, 12, 1))
    said = alt_of(chart)
    for row in chart.rows:
        for note in row.notes:
            assert note in said


def test_the_text_fits_a_terminal() -> None:
    assert max(map(len, text_of(timeline(case(), date(2026, 11, 25))).splitlines())) <= 78


def test_an_empty_case_has_its_filing_day_alone() -> None:
    assert [row.title for row in timeline(Case(), date(2026, 11, 25)).rows] == ["Filing, as planned"]


@pytest.mark.parametrize("appeared", [D("2026-12"), D("2026-12-03")])
def test_no_service_is_supposed_once_the_other_side_took_part(appeared: Day) -> None:
    # Fam. Code 2339(a): the six months run from that day, known or not
    told = case({"record.filed_on": D("2026-11-25"), "record.appeared_on": appeared})
    assert "If the papers are served" not in text_of(timeline(told, date(2027, 1, 6)))
