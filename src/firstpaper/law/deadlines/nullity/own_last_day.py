"""The last day for the one who was under age, where a parent or guardian asks for the nullity."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.law.deadline import Dated
from firstpaper.law.deadline_register import deadline
from firstpaper.law.measures.nullity import own_limit
from firstpaper.law.measures.record import is_filed
from firstpaper.locale import _


@deadline(
    "Last day for the one who was under age to file for the nullity",
    rule="nullity.last_day",
    cite=("Fam. Code 2211(a)-(f)", "Code Civ. Proc. 12a"),
    if_missed="A judge may have to refuse it then. Ask about a divorce.",
    neutral="last day for the papers",
)
def own_last_day(case: Case, on: date) -> Dated | None:
    """Four years after the 18th birthday, until the petition is filed."""
    limit = None if is_filed(case) else own_limit(case, on)
    if limit is None or limit.due is None:
        return None
    name = known(case.grounds.filed_for)
    title = _("Last day for {name} to file for the nullity").format(name=name) if name else ""
    return Dated(limit.due, title=title)
