"""Hand-over pages for two shorter ways: one page each, and only where their rules say that they may fit."""

from collections.abc import Iterator

from firstpaper.facts import known
from firstpaper.facts.choices import Lease
from firstpaper.law.figure import figure
from firstpaper.law.finding import Finding, Outcome
from firstpaper.law.measures.short_way import LIMITS_ONLY, limits_known
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

SUMMARY, NOTICE = "summary.dissolution", "summary.partnership_notice"
FITS = (Outcome.MET, Outcome.CLOSE)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """A page for each way that may fit."""
    for one in brief.findings:
        if one.id in (SUMMARY, NOTICE) and may_fit(one):
            yield _summary(brief, one) if one.id == SUMMARY else _notice(brief, one)


def may_fit(found: Finding) -> bool:
    """Whether nothing told stands in the way; amounts that nobody has published yet do not."""
    return found.outcome in FITS or LIMITS_ONLY in found.values


def _summary(brief: Brief, found: Finding) -> Sheet:
    return _page(
        brief,
        found,
        "summary-dissolution.html",
        _("The short kind of divorce"),
        {
            "months": figure("summary_dissolution.waiting_months", brief.on).value,
            "credit_days": figure("summary_dissolution.credit_days", brief.on).value,
        },
    )


def _notice(brief: Brief, found: Finding) -> Sheet:
    months = figure("summary_dissolution.notice_months", brief.on).value
    return _page(
        brief, found, "partnership-notice.html", _("Ending a partnership by notice"), {"months": months}
    )


def _page(brief: Brief, found: Finding, template: str, title: str, values: dict[str, object]) -> Sheet:
    fee = figure("fees.first_paper", brief.on).value
    lease = known(brief.case.summary.lease_ends_on)
    rents = known(brief.case.summary.lease) is Lease.FIXED_END
    return Sheet(
        template=template,
        title=title,
        running=title,
        purpose=_("A shorter way that may be open to you. It takes the place of this petition."),
        follows=True,
        values={
            "brief": brief,
            "found": found,
            "fee": fee,
            "lease_ends": lease.sure if rents and lease else None,
            "limits": figure("summary_dissolution.property_limit", brief.on)
            if limits_known(brief.on)
            else None,
            **values,
        },
    )
