"""The last day to ask for a nullity, for each ground that has one."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import NullityFiler
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.deadline import Chart, Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.nullity import grounds, time_limit
from firstpaper.law.measures.record import is_filed
from firstpaper.law.words import ground_words
from firstpaper.locale import _


@deadline(
    "Last day to file for the nullity",
    rule="nullity.last_day",
    cite=("Fam. Code 2211(a)-(f)", "Code Civ. Proc. 12a"),
    if_missed=(
        "A judge may have to refuse it then. "
        "Ask a lawyer about a late petition, another ground, or a divorce."
    ),
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
        if limit.due:
            yield Dated(limit.due, title=_title(case), part=ground, about=ground_words(ground))


def _title(case: Case) -> str:
    """A parent has a last day of their own (Fam. Code 2211(a)(2))."""
    if known(case.grounds.filer) is not NullityFiler.PARENT_OR_GUARDIAN:
        return ""
    return _("Last day for you, as parent or guardian, to file for the nullity")
