"""What somebody with a fee waiver must tell the court."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import FeeState
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "What you owe the court with a fee waiver",
    cite=("Gov. Code 68636(a)", "Gov. Code 68639"),
    since=date(2019, 1, 1),
    not_modelled=(
        "When the court looks again at your means, and when it asks the other side to pay your fees."
    ),
)
def waiver_duties(case: Case, on: date) -> Found | None:
    """If your money changes while you have a fee waiver, you must tell the court within five days.

    It is about changes that let you pay all or a part of the fees. The form is FW-010. The waiver ends 60
    days after the judgment, or after the case ends in another way.

    An example. You find work on March 1 with pay that is no longer low. Tell the court by March 6.
    """
    if known(case.record.fee) is not FeeState.WAIVER_GRANTED:
        return None
    days = figure("fee_waiver.report_change_days", on).value
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("You have a fee waiver. If you can pay later on, tell the court within {days} days.").format(
            days=days
        ),
        _("The form is FW-010. The waiver ends {days} days after the judgment.").format(
            days=figure("fee_waiver.ends_after_days", on).value
        ),
        facts=("record.fee",),
        values={"fee_waiver.report_change_days": days},
    )
