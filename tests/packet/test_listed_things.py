"""What the packet says of things that were listed one by one: names and counts, and never an amount."""

from typing import Any

from firstpaper.facts import Case
from firstpaper.facts.choices import CommunityHow, SeparateHow
from firstpaper.packet import Packet, build
from firstpaper.packet.views import handoff
from tests.each import one_by_one
from tests.households.golden import Household
from tests.packet.drawn import ALL, household
from tests.packet.read_back import words_of

AMOUNTS = ("17,654.32", "17654.32", "9,411.07", "9411.07", "3,187.65", "3187.65")
CAR: dict[str, Any] = {
    "kind": "vehicle",
    "words": "2018 minivan",
    "how": "bought",
    "acquired_on": "2018",
    "title": "joint",
    "value": "17654.32",
    "owed": "9411.07",
    "last_four": "4471",
}
CASH = {"kind": "cash", "how": "inherited", "by": "petitioner", "title": "no_paper", "mixed": False}
CARD = {"kind": "credit_card", "words": "Visa", "incurred_on": "2025-01-01", "owed": "3187.65"}


def with_list(case: Case, *, how: bool = True) -> Case:
    """The case with things listed one by one, and with lists in the petition."""
    rows = Case.model_validate({"asset": [CAR, CASH, {"kind": "other", "words": "Box"}], "debt": [CARD]})
    listed = case.model_copy(update={"asset": rows.asset, "debt": rows.debt})
    told = listed.with_fact("schedule.agreement", False).with_fact("schedule.in_california", True)
    if not how:
        return told
    return told.with_fact("property.separate_how", SeparateHow.LIST).with_fact(
        "property.community_how", CommunityHow.LIST
    )


def packet_of(name: str) -> Packet:
    one = household(name)
    return build(with_list(one.case), one.on)


@one_by_one(ALL)
def test_the_hand_off_sheet_takes_two_pages_at_most_with_a_long_list(one: Household) -> None:
    told = with_list(one.case, how=False)
    long = told.model_copy(update={"asset": told.asset * 33, "debt": told.debt * 99})
    packet = build(long, one.on)
    sheet = handoff.sheet(packet.brief)
    assert len(words_of([sheet])) <= 2


def test_the_hand_off_sheet_counts_what_is_listed_and_names_no_thing_and_no_amount() -> None:
    packet = packet_of("two-children-moved-county")
    sheet = handoff.sheet(packet.brief)
    page = " ".join(words_of([sheet]))
    assert "Listed: 3 things, 1 debt:" in page
    assert "1 presumed community, 1 presumed separate, 2 not known yet" in page
    assert "minivan" not in page
    assert not any(amount in page for amount in AMOUNTS)


def test_nothing_is_said_where_nothing_is_listed() -> None:
    one = household("plain-childless-divorce")
    sheet = handoff.sheet(build(one.case, one.on).brief)
    assert "Listed" not in " ".join(words_of([sheet]))


@one_by_one(ALL)
def test_no_amount_of_the_list_is_anywhere_in_the_packet(one: Household) -> None:
    html = build(with_list(one.case), one.on).html()
    assert not any(amount in html for amount in AMOUNTS)


def test_a_thing_stands_in_one_place_of_the_petition() -> None:
    packet = packet_of("two-children-moved-county")
    written = {answer.concept: answer.value for answer in packet.brief.items if answer.value}
    pages = {page.label: page.rows for page in packet.brief.attachments}
    said = [*written.values(), *(cell for rows in pages.values() for row in rows for cell in row)]
    assert sum("minivan" in words for words in said) == 1
    assert sum("Cash" in words for words in said) == 1
    assert any("Box (character to be determined)" in words for words in said)


def test_a_doubt_stands_behind_a_thing_that_was_also_typed() -> None:
    """The reason beside the item speaks of words in brackets, so they must be there."""
    one = household("plain-childless-divorce")
    case = with_list(one.case).with_fact("property.community_items", ("box", "Piano"))
    written = {answer.concept: answer for answer in build(case, one.on).brief.items}
    assert "words in brackets" in written["property.community.determine"].because
    lines = written["property.community.rows"].value.splitlines()
    assert lines[:2] == ["box (character to be determined)", "Piano"]
    assert sum("box" in line.lower() for line in lines) == 1
