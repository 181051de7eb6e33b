"""The packet in two parts: what is needed to file, and what comes after it."""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.packet import Stage, build
from firstpaper.packet.contents import stage_of
from firstpaper.packet.views.disclosure import when
from tests.each import one_by_one
from tests.households.golden import Household, households
from tests.packet.drawn import ALL, household, packet
from tests.packet.reading_pdf import page_words

ON = date(2026, 12, 1)
FILED = Day.parse("2026-11-25")
LATER_ONLY = {
    "after-you-file.html",
    "dates-ahead.html",
    "service.html",
    "service-server.html",
    "service-log.html",
    "disclosure.html",
}


@one_by_one(ALL)
def test_the_two_parts_are_the_whole_packet_and_the_first_holds_nothing_of_the_later(one: Household) -> None:
    first, later = (
        [sheet.title for sheet in build(one.case, one.on, stages=[stage]).sheets] for stage in Stage
    )
    assert first + later == [sheet.title for sheet in packet(one).sheets]
    assert not set(first) & set(later)
    templates = {sheet.template for sheet in build(one.case, one.on, stages=[Stage.FIRST]).sheets}
    assert not templates & LATER_ONLY


@pytest.mark.parametrize("stage", list(Stage))
def test_the_page_to_start_from_comes_first_and_names_each_other_sheet_of_its_part(stage: Stage) -> None:
    one = household("two-children-moved-county")
    start, *others = build(one.case, one.on, stages=[stage]).sheets
    contents = start.values["contents"]
    assert isinstance(contents, tuple)
    assert [entry.name for entry in contents] == list(
        dict.fromkeys(sheet.title if _alone(sheet, others) else sheet.group for sheet in others)
    )


def _alone(sheet: object, others: list) -> bool:
    group = sheet.group  # type: ignore[attr-defined]
    return not group or sum(other.group == group for other in others) == 1


def test_a_first_part_says_how_to_get_the_later_one_and_a_whole_packet_that_it_is_there() -> None:
    one = household("plain-childless-divorce")
    (first,) = page_words(build(one.case, one.on, stages=[Stage.FIRST]).pdf())[:1]
    assert "This gets you to the filing. The rest comes later." in first
    assert "firstpaper record" in first
    (whole,) = page_words(packet(one).pdf())[:1]
    assert "Behind them lies what comes after the filing." in whole


def test_a_case_is_at_its_later_stage_once_its_own_petition_is_filed() -> None:
    case = household("plain-childless-divorce").case
    assert stage_of(case) is Stage.FIRST
    assert stage_of(case.with_fact("record.filed_on", FILED)) is Stage.LATER
    amended = case.with_fact("record.filed_on", FILED).with_fact("matter.amended", True)
    assert stage_of(amended) is Stage.FIRST
    assert stage_of(amended.with_fact("record.amended_on", FILED)) is Stage.LATER
    assert stage_of(Case()) is Stage.FIRST


def _after(name: str = "plain-childless-divorce", **record: object) -> str:
    case = next(one.case for one in households() if one.name == name)
    for key, value in record.items():
        case = case.with_fact(f"record.{key.replace('__', '.')}", value)
    return " ".join(page_words(build(case, ON, stages=[Stage.LATER]).pdf())[:2])


def test_the_later_part_says_what_is_left_to_do() -> None:
    filed = _after(filed_on=FILED, case_number="26FL001234")
    assert "26FL001234" in filed
    assert "Have the papers served." in filed
    assert "No filing is recorded yet" not in filed
    served = _after(filed_on=FILED, service__method="personal", service__served_on=Day.parse("2026-11-28"))
    assert "Have the papers served." not in served
    assert "File the proof of service (FL-115)" in served
    answered = _after(filed_on=FILED, response_filed_on=Day.parse("2026-11-30"))
    assert "A response was filed." in answered
    assert "File the proof of service (FL-115)" not in answered


def test_an_amended_petition_is_to_be_served_like_the_first_papers() -> None:
    # Code Civ. Proc. 471.5(a); the manner of a first summons: secondary, In re Marriage of Rhoades (1984)
    again = _after("corrected-after-it-was-served", amended_on=FILED)
    assert "Have the amended petition served, like the first papers." in again
    served = _after("corrected-after-it-was-served", amended_on=FILED, amended_served_on=FILED)
    assert "Have the amended petition served" not in served


def test_before_an_amended_petition_money_and_days_count_from_the_first_one() -> None:
    # Fam. Code 2104(f): sixty days from October 1, 2026 are Monday, November 30, 2026
    one = next(each for each in households() if each.name == "corrected-after-it-was-served")
    words = " ".join(page_words(build(one.case, one.on, stages=[Stage.FIRST]).pdf())[:20])
    assert "Serve it by Monday, November 30, 2026." in words
    assert "Counted from the amended petition, it is Friday, January 15, 2027." in when(one.case, one.on)[1]
    assert "You do not pay the fee of the first petition again." in words
    assert "You have the fee with you." not in words
    unknown = one.case.with_fact("matter.first_filed_on", None)
    words = " ".join(page_words(build(unknown, one.on, stages=[Stage.FIRST]).pdf())[:20])
    assert "It counts from the first petition." in words


def test_after_a_summons_was_published_the_proof_is_filed_as_ordered_and_no_money_papers_are_owed() -> None:
    # Code Civ. Proc. 417.30; Fam. Code 2104(f), 2110
    printed = {"filed_on": FILED, "service__method": "publication"}
    known = _after(**printed, service__first_published_on=Day.parse("2026-11-26"))
    assert "File the proof of service: the sworn statement of the newspaper" in known
    assert "You owe no papers about money while the other side stays silent." in known
    answered = _after(**printed, response_filed_on=Day.parse("2026-11-30"))
    assert "the judge's order asks" not in answered
    assert "You owe no papers about money" not in answered


def test_the_later_part_of_a_joint_petition_serves_nobody() -> None:
    # Fam. Code 2331(b)
    together = _after("both-file-together", filed_on=FILED, joint=True)
    assert "You filed together, so nobody is served" in together
    assert "FL-115" not in together
    planned = _after("both-file-together")
    assert "If you filed alone, make these pages again" in planned
    assert "Proof of service of summons. Only if you file alone." in planned
    assert "FL-115 with the court" not in planned


def test_before_the_filing_the_later_part_says_that_it_is_only_planned() -> None:
    assert "No filing is recorded yet. These pages are worked out as if you file on" in _after()


def test_in_danger_the_later_part_begins_with_safety() -> None:
    assert "The day the papers reach the other side can be a day of danger." in _after(
        "address-must-stay-hidden", filed_on=FILED
    )
    assert "day of danger" not in _after(filed_on=FILED)


@pytest.mark.parametrize(
    ("name", "most"), [("plain-childless-divorce", 13), ("two-children-moved-county", 20)]
)
def test_what_somebody_needs_up_to_the_filing_stays_few_pages(name: str, most: int) -> None:
    one = household(name)
    drawn = build(one.case, one.on, stages=[Stage.FIRST]).pdf()
    assert len(page_words(drawn)) <= most
