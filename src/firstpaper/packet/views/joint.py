"""Filing together: what it means, how to leave it, and worksheets. Only where the rules allow it."""

from collections.abc import Iterator
from dataclasses import replace

from firstpaper.counting import days_after
from firstpaper.facts import known
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.when import has_a_minor_child
from firstpaper.law.figure import figure
from firstpaper.law.measures.due import due_elsewhere
from firstpaper.law.measures.waiting import earliest_end
from firstpaper.law.words import target_day
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet
from firstpaper.packet.views.worksheet import of_form

WAY = "joint"


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One page on filing together; none where it is not open to the two."""
    if not brief.joint:
        return
    fee, days = figure("fees.first_paper", brief.on).value, figure("disclosure.days", brief.on).value
    divorce = kind_of(brief.case) is Kind.DISSOLUTION
    yield Sheet(
        template="joint.html",
        title=_("If you two file together"),
        running=_("If you two file together"),
        purpose=_("A choice in place of FL-100 and FL-110. Read it before you choose."),
        values={
            "brief": brief,
            "both_fees": {"low": 2 * fee["low"], "high": 2 * fee["high"]},
            "both_waive": known(brief.case.joint.both_waive) is True,
            "ends": earliest_end(brief.begins) if divorce else None,
            "disclosure_days": days,
            "disclosure_due": target_day(due_elsewhere(days_after(brief.begins, days))),
            "response_days": figure("response.days", brief.on).value,
            "children": has_a_minor_child(brief.case, brief.on),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
        },
    )


def worksheets(brief: Brief) -> Iterator[Sheet]:
    """The worksheets for filing together."""
    for count, form in enumerate(brief.joint):
        group = _("Worksheets for filing together")
        yield replace(of_form(form, brief.on), follows=count > 0, way=WAY, group=group)
