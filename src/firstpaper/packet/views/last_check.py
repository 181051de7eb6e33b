"""The last check: what to ask, what to pay, and what papers come back for, once all is copied."""

from collections.abc import Iterator

from firstpaper.forms.clerk import counter, last_checks
from firstpaper.forms.when import is_amended_petition
from firstpaper.law.figure import figure
from firstpaper.law.finding import NEEDS_PERMISSION, Weight
from firstpaper.law.measures.venue import VenueTest, venue_of
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One short sheet, behind the worksheets."""
    yield Sheet(
        template="last-check.html",
        title=_("The last check"),
        running=_("The last check"),
        purpose=_("What to ask, what to pay, and what to look at before you hand in the papers."),
        follows=True,
        values={
            "brief": brief,
            "stops": brief.of_weight(Weight.STOP),
            "amended": is_amended_petition(brief.case, brief.on),
            "fee": figure("fees.first_paper", brief.on),
            "clerk_questions": tuple(_clerk_questions(brief)),
            "last_checks": last_checks(brief.case, brief.on),
            "may_not_refuse": counter().may_not_refuse,
        },
    )


def _clerk_questions(brief: Brief) -> Iterator[str]:
    stands = venue_of(brief.case, brief.on)
    if stands and stands.test is VenueTest.NOBODY_HERE:
        yield _("We both live outside California. Does this county take our case? If not, which one?")
    if is_amended_petition(brief.case, brief.on):
        yield _("Does this court want forms of its own with an amended petition?")
    else:
        yield _("Is this the right courthouse for a new family case?")
        yield _("Does this court want forms of its own with a new petition?")
    yield _("May I file by mail, drop box or online? Is there a fee for that?")
    yield _("Which edition of FL-100 and FL-110 do you take today?")
    if any(NEEDS_PERMISSION in one.values for one in brief.findings):
        yield _("My petition for a nullity is late. On which form do I ask the judge to allow it?")
    yield from (form.ask for form in brief.forms if form.ask)
    if brief.hides_address:
        yield _("How does this court keep an address private? Do you take a Safe at Home address?")
