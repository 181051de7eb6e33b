"""The one thing to do next, at every place where a case can stand."""

from datetime import date

import pytest

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.facts.choices import (
    CommunityHow,
    FeeState,
    Kind,
    LaterService,
    Lives,
    ServedBy,
    ServiceMethod,
    Special,
)
from firstpaper.packet.next_step import next_step
from tests.cli.person import facts_of

PLAIN = facts_of("plain-childless-divorce")
ON = date(2026, 12, 7)
OPEN = {"property.community_how": CommunityHow.NONE}
"""Said beside kinds of things owned together, so that 10a and 10b cannot both stand."""
NEW_IN_THE_COUNTY = {
    "residence.petitioner.county_since": Day(2026, 10, 12),
    "residence.petitioner.previous_county": DONT_KNOW,
    "residence.petitioner.previous_county_until": DONT_KNOW,
    "residence.respondent.lives": Lives.OTHER_STATE,
    "respondent.ever_here": DONT_KNOW,
    "property.elsewhere_kinds": (),
}
HANDED_OVER_BY_THE_FILER = {
    "record.service.method": ServiceMethod.PERSONAL,
    "record.service.served_by": ServedBy.FILER,
}
SIGNED_BEFORE_IT_WAS_MAILED = {
    "record.service.method": ServiceMethod.ACKNOWLEDGMENT,
    "record.service.mailed_on": Day(2026, 12, 4),
    "record.service.acknowledged_on": Day(2026, 12, 2),
}
FILED = {"record.filed_on": Day(2026, 12, 1)}
SENT = {
    **FILED,
    "record.service.method": ServiceMethod.ACKNOWLEDGMENT,
    "record.service.mailed_on": Day(2026, 12, 4),
}
SERVED = {
    **FILED,
    "record.service.method": ServiceMethod.PERSONAL,
    "record.service.served_on": Day(2026, 12, 5),
}
PROVED = {**SERVED, "record.service.proof_filed_on": Day(2026, 12, 7)}
ANSWERED = {**PROVED, "record.response_filed_on": Day(2026, 12, 20)}
MISSING = {"people.special": (Special.OTHER_SIDE_MISSING,)}
PRINTED = {
    **MISSING,
    "record.service.method": ServiceMethod.PUBLICATION,
    "record.service.first_published_on": Day(2026, 11, 5),
}
POSTED = {
    **MISSING,
    "record.service.method": ServiceMethod.POSTING,
    "record.service.complete_on": Day(2026, 12, 4),
}
SIGNED = {
    "record.service.acknowledged_on": Day(2026, 12, 5),
    "record.service.acknowledgment_back_on": Day(2026, 12, 7),
}
BY_RECEIPT = {"record.service.method": ServiceMethod.OUT_OF_STATE_MAIL}
LEFT = {
    "record.service.method": ServiceMethod.SUBSTITUTED,
    "record.service.served_on": Day(2026, 12, 5),
}
NEW_YEAR = date(2027, 1, 6)
"""Two days after service in the year in which the proof needs photographs (Code Civ. Proc. 417.10(a)(1))."""
AMENDED = {"record.amended_on": Day(2026, 12, 6)}
AGAIN = {"record.amended_served_on": Day(2026, 12, 7), "record.service.proof_filed_on": Day(2026, 12, 6)}
LATER_AMENDED = {"record.amended_on": Day(2027, 1, 4)}
TOLD_ANSWERED = {
    **FILED,
    **LATER_AMENDED,
    "matter.amended": True,
    "matter.case_number": "26FL00123",
    "matter.first_filed_on": Day(2026, 12, 1),
    "matter.first_kind": Kind.DISSOLUTION,
    "matter.other_side_answered": True,
}
MAILED = {"record.amended_served_on": Day(2027, 1, 5), "record.amended_served_how": LaterService.MAIL}
HANDED = MAILED | {"record.amended_served_how": LaterService.PERSONAL}
OVERNIGHT = MAILED | {"record.amended_served_how": LaterService.OVERNIGHT}
PROVED_AGAIN = {"record.service.proof_filed_on": Day(2027, 1, 6)}
NEXT_YEAR = date(2027, 1, 6)
DENIED = {"record.fee": FeeState.WAIVER_DENIED, "record.waiver_denied_on": Day(2026, 12, 4)}
"""Ten days from the notice (Cal. Rules of Court, rule 5.43(a))."""
LATE = date(2027, 2, 3)
"""After the sixty days of FILED, and the day they move to (Fam. Code 2104(f))."""
DISCLOSED = {"record.disclosure_served_on": Day(2026, 12, 6)}


def by_order(method: ServiceMethod) -> dict[str, object]:
    """Service in a way that an order or a treaty sets, on a day that nobody told."""
    return {**MISSING, "record.service.method": method}


def case(facts: dict[str, object], begun: Case = PLAIN) -> Case:
    for key, value in facts.items():
        begun = begun.with_fact(key, value)
    return begun


@pytest.mark.parametrize(
    ("facts", "on", "words", "command"),
    [
        ({"petitioner.phone": None}, ON, "the question that is left", ("ask",)),
        (
            {"dates.separation_told_on": Day(2019, 3, 3)},
            ON,
            "Tell us again: the date of your marriage and the day one of you told the other",
            ("change", "dates.married_on", "dates.separation_told_on"),
        ),
        (
            {"signing.orders_read": False, **NEW_IN_THE_COUNTY},
            ON,
            "mend the 2 things that stop a filing, one by one. The first is “The orders in the summons",
            ("change", "signing.orders_read"),
        ),
        (
            NEW_IN_THE_COUNTY,
            ON,
            "wait until Wednesday, January 13, 2027. Until then",
            ("packet", "--on", "2027-01-13"),
        ),
        (HANDED_OVER_BY_THE_FILER, ON, "how the papers were served", ("record", "served")),
        (SIGNED_BEFORE_IT_WAS_MAILED, ON, "Tell us again", ("record",)),
        (
            OPEN,
            ON,
            "not finished in FL-100, or ask the self-help center about it: 10a, 10b. It rests on",
            ("change", "property.community_how"),
        ),
        (
            {
                "respondent.name": DONT_KNOW,
                "dates.married_on": Day(2014, 6),
                "requests.former_name": DONT_KNOW,
            },
            ON,
            "It rests on the full name of the other side, the date of your marriage and whether you want",
            ("change", "respondent.name", "dates.married_on", "requests.former_name"),
        ),
        (
            {
                **OPEN,
                "respondent.name": DONT_KNOW,
                "dates.married_on": Day(2014, 6),
                "support.petitioner": DONT_KNOW,
            },
            ON,
            "It rests first of all on the full name of the other side, the date of your marriage and what",
            ("change", "respondent.name", "dates.married_on", "support.petitioner"),
        ),
        (
            {"matter.kind": DONT_KNOW},  # 5a rests on the reason too, which nobody asks before the kind
            ON,
            "11c. It rests on which kind of case you want.",
            ("change", "matter.kind"),
        ),
        ({}, ON, "file them with the clerk", ("packet",)),
        (FILED, ON, "best by Sat, Jan 30, 2027: somebody 18 or older, never you", ("record", "served")),
        (SENT, ON, "FL-117", ("record", "acknowledged")),
        (SERVED, ON, "FL-115", ("record", "proof")),
        (FILED | MISSING, ON, "FL-980 and FL-982", ("record", "served")),
        (FILED | PRINTED, ON, "sworn statement of the newspaper", ("record", "proof")),
        (FILED | POSTED, ON, "FL-985", ("record", "proof")),
        (FILED | by_order(ServiceMethod.POSTING), ON, "read the judge's order", ("record", "served")),
        (FILED | by_order(ServiceMethod.COURT_DIRECTED), ON, "read the judge's order", ("record", "served")),
        (FILED | by_order(ServiceMethod.PUBLICATION), ON, "first printed the summons", ("record", "served")),
        (FILED | by_order(ServiceMethod.ABROAD), ON, "the papers from abroad", ("record", "served")),
        (SENT | SIGNED, ON, "the signed FL-117 behind it", ("record", "proof")),
        (SENT | BY_RECEIPT, date(2026, 12, 20), "the signed receipt", ("record", "proof")),
        (
            SERVED | {"record.service.served_on": Day(2027, 1, 4)},
            NEW_YEAR,
            "the photographs",
            ("record", "proof"),
        ),
        (FILED | LEFT, ON, "mail a second set", ("record", "served")),
        (PROVED | AMENDED, ON, "the amended petition served", ("record", "amended-served")),
        (
            PROVED | AMENDED,
            ON,
            "they are due by Sat, Jan 30, 2027",
            ("record", "amended-served"),
        ),
        (PROVED | AMENDED, LATE, "can go along: they were due by", ("record", "amended-served")),
        (PROVED | AMENDED | DISCLOSED, ON, "hands it over. Then record it.", ("record", "amended-served")),
        (PROVED | AMENDED | AGAIN, ON, "for the amended petition", ("record", "proof")),
        (ANSWERED | LATER_AMENDED, NEXT_YEAR, "mails it or hands it over", ("record", "amended-served")),
        (TOLD_ANSWERED, NEXT_YEAR, "mails it or hands it over", ("record", "amended-served")),
        (TOLD_ANSWERED | MAILED, NEXT_YEAR, "by mail (FL-335)", ("record", "proof")),
        (TOLD_ANSWERED | HANDED, NEXT_YEAR, "service (FL-330)", ("record", "proof")),
        (TOLD_ANSWERED | OVERNIGHT, NEXT_YEAR, "FL-335 if it was mailed, FL-330 if", ("record", "proof")),
        (TOLD_ANSWERED | MAILED | PROVED_AGAIN, NEXT_YEAR, "stamp on it", ("record", "response")),
        (
            ANSWERED | LATER_AMENDED | {"record.response_filed_on": Day(2027, 1, 4)},
            NEXT_YEAR,
            "a response came, perhaps to the amended petition",
            ("record", "amended-served"),
        ),
        (MISSING | TOLD_ANSWERED, NEXT_YEAR, "mails it or hands it over", ("record", "amended-served")),
        (FILED | DENIED, ON, "FW-006), by Mon, Dec 14, 2026", ("record", "fee")),
        (FILED | DENIED, date(2026, 12, 15), "still stands", ("record", "fee")),
        (PROVED, ON, "FL-140", ("record", "disclosure")),
        (
            PROVED | {"record.default_asked_on": Day(2027, 1, 6)},
            LATE,
            "now: they were due by",
            ("record", "disclosure"),
        ),
        (PROVED, date(2027, 1, 5), "FL-165, with a stamped envelope", ("record", "default")),
        (PROVED | DISCLOSED, ON, "watch the day", ("dates",)),
        (ANSWERED, date(2027, 1, 5), "FL-140", ("record", "disclosure")),
        (
            PROVED | {"record.response_filed_on": Day(2026, 12)},
            date(2027, 1, 5),
            "on which day the response was filed",
            ("record", "response"),
        ),
        (
            PROVED | {"record.appeared_on": Day(2026, 12)},
            date(2027, 1, 5),
            "first took part: ask the clerk",
            ("record", "appeared"),
        ),
    ],
)
def test_the_next_step_is_the_first_that_is_not_done(
    facts: dict[str, object], on: date, words: str, command: tuple[str, ...]
) -> None:
    step = next_step(case(facts), on)
    assert words in step.words
    assert (step.command, *step.more) == command
