"""After you file: the page to start from once the papers are at the court."""

from collections.abc import Sequence
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Family, FeeState
from firstpaper.facts.kinds import is_nullity
from firstpaper.forms.needed import Goes
from firstpaper.forms.when import is_first_petition, wants_fee_waiver
from firstpaper.law.figure import figure
from firstpaper.law.finding import Weight
from firstpaper.law.measures.disclosure import served_unseen, waits_for_a_response
from firstpaper.law.measures.record import case_number, happened, is_filed, joint, responded
from firstpaper.law.measures.response import can_ask_for_default
from firstpaper.law.measures.service import (
    goes_as_a_later_paper,
    lacks_proof,
    needs_an_order,
    serves_again,
)
from firstpaper.locale import _
from firstpaper.locale.rows import as_sentence
from firstpaper.packet.brief import Brief
from firstpaper.packet.next_step import next_step
from firstpaper.packet.proof import proof_step
from firstpaper.packet.views.contents import named
from firstpaper.packet.views.either_way import marked, may_yet_file_together
from firstpaper.packet.views.service import is_to_be_served
from firstpaper.packet.views.sheet import Sheet


def sheet(brief: Brief, others: Sequence[Sheet]) -> Sheet:
    """The first sheet of what comes after the filing. It names the others, and says what to do in order."""
    case, on = brief.case, brief.on
    return Sheet(
        template="after-you-file.html",
        title=_("After you file"),
        running=_("After you file"),
        purpose=_("Start here when the court has your papers. It says what comes next."),
        values={
            "brief": brief,
            "filed": is_filed(case),
            "stopped": not is_filed(case) and bool(brief.of_weight(Weight.STOP)),
            "next_step": next_step(case, on).words if is_filed(case) else "",
            "case_number": case_number(case),
            "contents": tuple(named(others)),
            "together": joint(case),
            "may_file_together": may_yet_file_together(brief),
            "serve": is_to_be_served(brief),
            "again": serves_again(case),
            "as_later_paper": goes_as_a_later_paper(case, on),
            "by_order": needs_an_order(case, on),
            "proof": as_sentence(proof_step(case, on)),
            "default_open": can_ask_for_default(case, on),
            "lacks_proof": lacks_proof(case, on),
            "waits_for_waiver": _waits_for_waiver(case, on),
            "deemed_days": figure("fee_waiver.granted_after_court_days", on).value,
            "denial_days": figure("fee_waiver.after_denial_days", on).value,
            "unseen": served_unseen(case) and waits_for_a_response(case, on),
            "not_found": waits_for_a_response(case, on) and not served_unseen(case),
            "disclose": any(one.template == "disclosure.html" for one in others),
            "nullity": is_nullity(case),
            "disclosed": not is_nullity(case) and known(happened(case, on).disclosure_served_on) is not None,
            "unborn": Family.UNBORN_TOGETHER in (known(case.children.family) or ()),
            "response_days": figure("response.days", on).value,
            "answered": responded(case, on),
            "forms": [
                one
                for one in marked(brief, brief.forms)
                if one.later and one.form and one.goes is not Goes.ASK
            ],
            "hotline": figure("help.domestic_violence_hotline", on).value,
        },
    )


def _waits_for_waiver(case: Case, on: date) -> bool:
    """Whether a request to waive the fee goes in with the petition, or has no answer yet."""
    if is_filed(case):
        return known(case.record.fee) is FeeState.WAIVER_ASKED
    return is_first_petition(case, on) and wants_fee_waiver(case, on)
