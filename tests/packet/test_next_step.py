"""The one thing to do next, at every place where a case can stand."""

from datetime import date

import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.choices import ServiceMethod
from firstpaper.packet.next_step import next_step
from tests.cli.person import facts_of

PLAIN = facts_of("plain-childless-divorce")
ON = date(2026, 12, 7)
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
DISCLOSED = {"record.disclosure_served_on": Day(2026, 12, 6)}


def case(facts: dict[str, object], begun: Case = PLAIN) -> Case:
    for key, value in facts.items():
        begun = begun.with_fact(key, value)
    return begun


@pytest.mark.parametrize(
    ("facts", "on", "words", "command"),
    [
        ({"petitioner.phone": None}, ON, "the question that is left", ("ask",)),
        ({"dates.separation_told_on": Day(2019, 3, 3)}, ON, "stop", ("check",)),
        ({}, ON, "file them with the clerk", ("packet",)),
        (FILED, ON, "best by Sat, Jan 30, 2027: somebody 18 or older, never you", ("record", "served")),
        (SENT, ON, "FL-117", ("record", "acknowledged")),
        (SERVED, ON, "FL-115", ("record", "proof")),
        (PROVED, ON, "FL-140", ("record", "disclosure")),
        (PROVED, date(2027, 1, 5), "FL-165, with a stamped envelope", ("record", "default")),
        (PROVED | DISCLOSED, ON, "watch the day", ("dates",)),
        (ANSWERED, date(2027, 1, 5), "FL-140", ("record", "disclosure")),
    ],
)
def test_the_next_step_is_the_first_that_is_not_done(
    facts: dict[str, object], on: date, words: str, command: tuple[str, ...]
) -> None:
    step = next_step(case(facts), on)
    assert words in step.words
    assert (step.command, *step.more) == command
