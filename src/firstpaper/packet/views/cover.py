"""The cover checklist: what is in the packet, what to get, sign, stack, copy, pay and ask."""

from collections.abc import Iterator, Sequence
from itertools import groupby

from firstpaper.facts import known
from firstpaper.forms.needed import FormNeeded, Goes
from firstpaper.law.figure import figure, oldest_check
from firstpaper.law.finding import Weight
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

PETITION = "FL-100"
SUMMONS = "FL-110"
ATTACHMENT_CARRIER = "MC-025"
FEE_WAIVER = ("FW-001", "FW-003")


def sheet(brief: Brief, others: Sequence[Sheet]) -> Sheet:
    """The first sheet of the packet. It names all the others."""
    numbered = [form for form in brief.forms if form.form]
    return Sheet(
        template="cover.html",
        title=_("Start here: cover checklist"),
        running=_("Cover checklist"),
        values={
            "brief": brief,
            "county": known(brief.case.court.county),
            "contents": tuple(_contents(others)),
            "stops": brief.of_weight(Weight.STOP),
            "advice": brief.of_weight(Weight.GET_ADVICE),
            "first_forms": [form for form in numbered if not form.later],
            "later_forms": [form for form in numbered if form.later],
            "signed": [form for form in numbered if form.signed and not form.later and form.form != PETITION],
            "stack": tuple(_stack(brief)),
            "fee": figure("fees.first_paper", brief.on),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "clerk_questions": tuple(_clerk_questions(brief)),
            "checked_on": oldest_check(),
        },
    )


def _contents(others: Sequence[Sheet]) -> Iterator[tuple[str, str]]:
    """The other sheets by name, with neighbours of one group on one line."""
    for group, alike in groupby(others, key=lambda sheet: sheet.group):
        found = tuple(alike)
        if group and len(found) > 1:
            yield group, _("Copy them onto the blank form. They say what to mark and write in every item.")
        else:
            yield from ((sheet.title, sheet.purpose) for sheet in found)


def _stack(brief: Brief) -> Iterator[str]:
    """The papers for the clerk in order (common practice; the court's own list wins)."""
    yield _("FL-110, the summons. The clerk stamps it and gives it back.")
    yield _("FL-100, the petition, all its pages.")
    for one in brief.attachments:
        yield _("{label}, behind FL-100.").format(label=one.label)
    for form in brief.forms:
        if _stands_in_stack(form):
            line = _("{form}. {only_if}") if form.only_if else _("{form}.")
            yield line.format(form=form.form, only_if=form.only_if)
    yield _("Your court's own forms, if it has any.")


def _stands_in_stack(form: FormNeeded) -> bool:
    own_place = (PETITION, SUMMONS, ATTACHMENT_CARRIER, *FEE_WAIVER)
    return form.goes is Goes.FILE and not form.later and bool(form.form) and form.form not in own_place


def _clerk_questions(brief: Brief) -> Iterator[str]:
    yield _("Is this the right courthouse for a new family case?")
    yield _("Does this court want forms of its own with a new petition?")
    yield _("May I file by mail, drop box or online? Is there a fee for that?")
    yield _("Which edition of FL-100 and FL-110 do you take today?")
    for form in brief.forms:
        if form.goes is Goes.ASK and form.form:
            yield _("How do I ask for this: {title} ({form})?").format(title=form.title, form=form.form)
    if brief.hides_address:
        yield _("How does this court keep an address private? Do you take a Safe at Home address?")
