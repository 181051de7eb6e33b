"""Alone or together: what tells the two ways apart while nothing is filed and both are open."""

from collections.abc import Iterable, Iterator, Set
from dataclasses import replace
from datetime import date

from firstpaper.facts import Day
from firstpaper.forms.filing import Filing, plan
from firstpaper.forms.needed import FormNeeded, Goes, Stack, forms_needed
from firstpaper.law.agenda import Agenda, Entry, Later, agenda
from firstpaper.law.measures.record import begins_on, is_filed
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.packet.brief import Brief

_OPENS = (Stack.SUMMONS, Stack.PETITION, Stack.BEHIND)
"""What lies where FL-700 and FL-710 take the place of the ordinary petition."""


def may_yet_file_together(brief: Brief) -> bool:
    """Whether one petition for both, which nobody serves, is open to the two and nothing is filed yet."""
    return bool(brief.joint) and not is_filed(brief.case)


def dates_either_way(brief: Brief) -> Agenda:
    """The dates of the case; while both ways are open, those of each, with the way in the title."""
    alone, together = agenda(brief.case, brief.on), if_filed_together(brief)
    if together is None:
        return alone
    in_both = {_day(one) for one in alone.ahead} & {_day(one) for one in together.ahead}
    entries = (*_of_one_way(alone, in_both), *_of_one_way(together, in_both, together=True))
    starts = {one.starts for one in together.later}
    return replace(
        alone,
        entries=tuple(sorted(entries, key=lambda one: (one.deadline.target, one.deadline.key))),
        later=tuple(one if one.starts in starts else _later_alone(one) for one in alone.later),
    )


def _day(one: Entry) -> tuple[str, date]:
    return one.deadline.id, one.deadline.target


def _of_one_way(found: Agenda, in_both: Set[tuple[str, date]], *, together: bool = False) -> Iterator[Entry]:
    way = _("{title} (if you two file together)") if together else _("{title} (if you file alone)")
    for one in found.ahead:
        if _day(one) not in in_both:
            yield _titled(one, way.format(title=one.deadline.title))
        elif not together:
            yield one


def _titled(one: Entry, title: str) -> Entry:
    return replace(one, deadline=replace(one.deadline, dated=replace(one.deadline.dated, title=title)))


def _later_alone(one: Later) -> Later:
    return replace(one, starts=_("{event}, if you file alone").format(event=one.starts))


def if_filed_together(brief: Brief) -> Agenda | None:
    """The dates of the two, had they filed together on the day planned; None where that is not open."""
    begins = begins_on(brief.case, brief.on)
    if begins is None or not may_yet_file_together(brief):
        return None
    filed = brief.case.with_fact("record.filed_on", Day.of(begins)).with_fact("record.joint", True)
    return agenda(filed, begins)


def marked(brief: Brief, forms: Iterable[FormNeeded]) -> Iterator[FormNeeded]:
    """The forms, each that is for one who files alone marked so where both ways are open."""
    both = may_yet_file_together(brief)
    return (_alone(form) if both and _is_for_one_alone(form) else form for form in forms)


def of_both(brief: Brief) -> tuple[FormNeeded, ...]:
    """The forms that only two who file together get; none where that is not open to them."""
    return forms_needed(brief.case, brief.on, Filing.JOINT) if may_yet_file_together(brief) else ()


def _is_for_one_alone(form: FormNeeded) -> bool:
    if form.later:
        return form.form in plan(Filing.SERVICE).fills
    return form.stack in _OPENS or form.goes is Goes.SERVE


def _alone(form: FormNeeded) -> FormNeeded:
    return replace(form, only_if=spaced((_("Only if you file alone."), form.only_if)))
