"""Alone or together: what tells the two ways apart while nothing is filed and both are open."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from firstpaper.facts import Day
from firstpaper.forms.filing import Filing, plan
from firstpaper.forms.needed import FormNeeded, Goes, Stack, forms_needed
from firstpaper.law.agenda import Agenda, agenda
from firstpaper.law.measures.record import begins_on, is_filed
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.packet.brief import Brief

_OPENS = (Stack.SUMMONS, Stack.PETITION, Stack.BEHIND)
"""What lies where FL-700 and FL-710 take the place of the ordinary petition."""


def may_yet_file_together(brief: Brief) -> bool:
    """Whether one petition for both, which nobody serves, is open to the two and nothing is filed yet."""
    return bool(brief.joint) and not is_filed(brief.case)


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
