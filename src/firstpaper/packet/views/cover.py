"""The cover checklist: what is in the packet, what to get, sign, stack, copy, pay and ask."""

from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.facts import known
from firstpaper.forms.clerk import counter, last_checks
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.fl105 import FORM as DECLARATION
from firstpaper.forms.needed import FormNeeded, Goes
from firstpaper.forms.stack import apart, stack
from firstpaper.law.figure import figure, oldest_check
from firstpaper.law.finding import Weight
from firstpaper.law.measures.child_homes import history_since
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.venue import VenueTest, venue_of
from firstpaper.law.words import child_words
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.contents import named
from firstpaper.packet.views.sheet import Sheet


def sheet(brief: Brief, others: Sequence[Sheet], *, with_later: bool) -> Sheet:
    """The first sheet of the packet. It names the others, up to the filing.

    `with_later` tells that what comes after the filing lies behind them. Else it says how to ask for that.
    """
    to_get = [form for form in brief.forms if form.form or form.goes is Goes.FILE]
    return Sheet(
        template="cover.html",
        title=_("Start here: cover checklist"),
        running=_("Cover checklist"),
        values={
            "brief": brief,
            "county": known(brief.case.court.county),
            "contents": tuple(named(others)),
            "stops": brief.of_weight(Weight.STOP),
            "advice": tuple(one for one in brief.of_weight(Weight.GET_ADVICE) if one not in brief.waits),
            "first_forms": tuple(_blanks(brief, [form for form in to_get if not form.later])),
            "with_later": with_later,
            "homes_since": tuple(_homes_since(brief)),
            "signed": [form for form in to_get if form.signed and not form.later and form.form != PETITION],
            "stack": stack(brief.forms, brief.ledger),
            "apart": apart(brief.forms),
            "amended": known(brief.case.matter.amended) is True,
            "fee": figure("fees.first_paper", brief.on),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "clerk_questions": tuple(_clerk_questions(brief)),
            "last_checks": last_checks(brief.case, brief.on),
            "may_not_refuse": counter().may_not_refuse,
            "checked_on": oldest_check(),
        },
    )


def _homes_since(brief: Brief) -> Iterator[tuple[str, date]]:
    """Each child with the first day of its homes on FL-105, where the filer fills in that form alone."""
    if any(form.form == DECLARATION for form in brief.filled):
        return
    for child in listed_children(brief.case, brief.on):
        yield child_words(child.number, child.name), history_since(child.born, brief.on)


def _blanks(brief: Brief, forms: Sequence[FormNeeded]) -> Iterator[tuple[FormNeeded, int]]:
    """Each form to get; the first of a number with how many of it to get in all, the others with 0."""
    filled = Counter(form.form for form in brief.filled)
    blank = Counter(form.form for form in forms if form.goes is Goes.SERVE)
    rows = Counter(form.form for form in forms)
    seen: set[str] = set()
    for form in forms:
        number = form.form
        yield form, 0 if number in seen else max(rows[number], filled[number] + blank[number])
        seen.add(number)


def _clerk_questions(brief: Brief) -> Iterator[str]:
    stands = venue_of(brief.case, brief.on)
    if stands and stands.test is VenueTest.NOBODY_HERE:
        yield _("We both live outside California. Does this county take our case? If not, which one?")
    yield _("Is this the right courthouse for a new family case?")
    yield _("Does this court want forms of its own with a new petition?")
    yield _("May I file by mail, drop box or online? Is there a fee for that?")
    yield _("Which edition of FL-100 and FL-110 do you take today?")
    yield from (form.ask for form in brief.forms if form.ask)
    if brief.hides_address:
        yield _("How does this court keep an address private? Do you take a Safe at Home address?")
