"""The cover checklist: what is in the packet, what to get, sign, copy and ask."""

from collections.abc import Sequence

from firstpaper.law.figure import figure, oldest_check
from firstpaper.law.finding import Weight
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet


def sheet(brief: Brief, others: Sequence[Sheet]) -> Sheet:
    """The first sheet of the packet. It names all the others."""
    fee = figure("fees.first_paper", brief.on)
    return Sheet(
        template="cover.html",
        title=_("Start here: cover checklist"),
        running=_("Cover checklist"),
        values={
            "brief": brief,
            "contents": others,
            "stops": brief.of_weight(Weight.STOP),
            "advice": brief.of_weight(Weight.GET_ADVICE),
            "fee": fee,
            "checked_on": oldest_check(),
            "to_file": tuple(form for form in brief.forms if form.goes == "file"),
            "to_serve": tuple(form for form in brief.forms if form.goes == "serve"),
            "to_ask": tuple(form for form in brief.forms if form.goes == "ask"),
        },
    )
