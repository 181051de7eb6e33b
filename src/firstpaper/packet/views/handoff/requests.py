"""What the petition asks for, in a lawyer's few words."""

from collections.abc import Iterator

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow, CustodyTo, Fees, SeparateHow, SupportChoice, VisitsTo
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.handoff.line import Line


def requests(brief: Brief) -> Iterator[Line]:
    """Custody, support, property, fees and the former name, as far as they were told."""
    case = brief.case
    yield from _custody(case)
    yield from _support(case)
    yield from _property(case)
    if fees := _fees().get(known(case.requests.fees)):
        yield Line(_("Lawyer's fees"), fees)
    if name := known(case.requests.former_name):
        yield Line(_("Former name back"), name)


def _custody(case: Case) -> Iterator[Line]:
    custody = case.custody
    if known(custody.alike) is False:
        yield Line(_("Custody"), _("not alike for all children"))
        return
    if legal := _custody_to().get(known(custody.legal)):
        yield Line(_("Legal custody"), legal)
    if physical := _custody_to().get(known(custody.physical)):
        yield Line(_("Physical custody"), physical)
    if visits := _visits_to(case).get(known(custody.visits)):
        yield Line(_("Visits"), visits)


def _custody_to() -> dict[CustodyTo | None, str]:
    return {
        CustodyTo.PETITIONER: _("petitioner"),
        CustodyTo.RESPONDENT: _("respondent"),
        CustodyTo.JOINT: _("joint"),
        CustodyTo.OTHER: _("somebody else"),
    }


def _visits_to(case: Case) -> dict[VisitsTo | None, str]:
    supervised = known(case.custody.supervised) is True
    return {
        VisitsTo.PETITIONER: _("petitioner, supervised") if supervised else _("petitioner"),
        VisitsTo.RESPONDENT: _("respondent, supervised") if supervised else _("respondent"),
        VisitsTo.OTHER: known(case.custody.other_words) or _("another way"),
        VisitsTo.NOT_ASKED: _("not asked"),
    }


def _support(case: Case) -> Iterator[Line]:
    words: dict[SupportChoice | None, str] = {
        SupportChoice.ASK: _("asked now"),
        SupportChoice.RESERVE: _("reserved"),
        SupportChoice.END: _("to end for good"),
        SupportChoice.SAY_NOTHING: _("nothing said"),
    }
    told = (
        (_("petitioner: {asks}"), words.get(known(case.support.petitioner))),
        (_("respondent: {asks}"), words.get(known(case.support.respondent))),
    )
    if asked := "; ".join(whose.format(asks=asks) for whose, asks in told if asks):
        yield Line(_("Support"), asked)


def _property(case: Case) -> Iterator[Line]:
    separate: dict[SeparateHow | None, str] = {
        SeparateHow.NONE: _("none"),
        SeparateHow.CLASSES: _("by kinds"),
        SeparateHow.LIST: _("listed"),
        SeparateHow.FL_160: _("listed on FL-160"),
    }
    community: dict[CommunityHow | None, str] = {
        CommunityHow.NONE: _("none"),
        CommunityHow.NOT_YET_KNOWN: _("not yet known in full"),
        CommunityHow.LIST: _("listed"),
        CommunityHow.FL_160: _("listed on FL-160"),
    }
    if own := separate.get(known(case.property.separate_how)):
        yield Line(_("Separate property"), own)
    if shared := community.get(known(case.property.community_how)):
        yield Line(_("Community property"), shared)


def _fees() -> dict[Fees | None, str]:
    return {
        Fees.NOT_ASKED: _("not asked"),
        Fees.PAID_BY_RESPONDENT: _("respondent to pay"),
        Fees.PAID_BY_PETITIONER: _("petitioner to pay"),
    }
