"""Hand-over pages for two shorter ways: one page each, and only where their rules say that they may fit."""

from collections.abc import Iterator

from firstpaper.facts import known
from firstpaper.facts.choices import Union
from firstpaper.law.figure import figure
from firstpaper.law.finding import Finding, Outcome
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

SUMMARY, NOTICE = "summary.dissolution", "summary.partnership_notice"
FITS = (Outcome.MET, Outcome.CLOSE)


def sheets(brief: Brief) -> Iterator[Sheet]:
    """A page for each way that may fit."""
    for one in brief.findings:
        if one.outcome in FITS and one.id in (SUMMARY, NOTICE):
            yield _summary(brief, one) if one.id == SUMMARY else _notice(brief, one)


def _summary(brief: Brief, found: Finding) -> Sheet:
    return _page(
        brief,
        found,
        "summary-dissolution.html",
        _("The short kind of divorce"),
        {
            "months": figure("summary_dissolution.waiting_months", brief.on).value,
            "credit_days": figure("summary_dissolution.credit_days", brief.on).value,
            "partners": Union.MARRIAGE not in (known(brief.case.matter.unions) or ()),
        },
    )


def _notice(brief: Brief, found: Finding) -> Sheet:
    months = figure("summary_dissolution.notice_months", brief.on).value
    return _page(
        brief, found, "partnership-notice.html", _("Ending a partnership by notice"), {"months": months}
    )


def _page(brief: Brief, found: Finding, template: str, title: str, values: dict[str, object]) -> Sheet:
    fee = figure("fees.first_paper", brief.on).value
    return Sheet(
        template=template,
        title=title,
        running=title,
        purpose=_("A shorter way that may be open to you. It takes the place of this petition."),
        follows=True,
        values={"brief": brief, "found": found, "fee": fee, **values},
    )
