"""The last day to ask for a nullity, for each ground that has one."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.deadline import Chart, Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.nullity import grounds, time_limit
from firstpaper.law.measures.record import is_filed
from firstpaper.law.words import ground_words


@deadline(
    "Last day to ask for the nullity",
    rule="nullity.last_day",
    cite=("Fam. Code 2211(a)-(f)", "Code Civ. Proc. 12a"),
    if_missed="A judge may have to refuse it then. Ask about another ground, or about a divorce.",
    neutral="last day for the papers",
    chart=Chart("Last day to file", "For the ground {about}, the last day to file is {day}."),
)
def last_day(case: Case, on: date) -> list[Dated]:
    """One for each ground with a last day, until the petition is filed."""
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Dated]:
    if is_filed(case) or not is_nullity(case):
        return
    for ground in grounds(case):
        limit = time_limit(case, ground, on)
        if limit.last_day and limit.rolled:
            due = Due(min(limit.last_day, limit.rolled), limit.rolled, limit.steps)
            yield Dated(due, part=ground, about=ground_words(ground))
