"""When a form belongs to a filing: one plain question each, asked of standing facts and the filing day.

`filings/petition.yaml` names these functions under `when`.
"""

from datetime import date

from firstpaper.facts import Case, kinds, known
from firstpaper.facts.choices import (
    CustodyCase,
    CustodySheet,
    Danger,
    Declaration,
    Kind,
    LaterService,
    ServiceMethod,
    Special,
)
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.attachments import attachments
from firstpaper.forms.custody_wishes import wishes_of
from firstpaper.forms.fl105 import HAS_ROOM_FOR
from firstpaper.forms.fl160 import COMMUNITY, SEPARATE
from firstpaper.forms.fl160.things import is_used, runs_over
from firstpaper.law.measures.children import (
    concerns_children,
    has_minor_children,
    listed_children,
    may_list_a_child,
)
from firstpaper.law.measures.disclosure import waits_for_a_response
from firstpaper.law.measures.fees import wants_waiver
from firstpaper.law.measures.record import happened, took_part
from firstpaper.law.measures.residence import Route, residence_route
from firstpaper.law.measures.service import Serving, goes_as_a_later_paper, method, needs_an_order, serving


def always(case: Case, on: date) -> bool:
    """Every filing."""
    return True


def is_first_petition(case: Case, on: date) -> bool:
    """No petition was filed in this case before, as far as told."""
    return not is_amended_petition(case, on)


def is_amended_petition(case: Case, on: date) -> bool:
    """The petition takes the place of one filed before."""
    return known(case.matter.amended) is True


def amends_before_they_took_part(case: Case, on: date) -> bool:
    """The petition takes the place of one filed before, and the other side has not taken part."""
    return is_amended_petition(case, on) and not took_part(case, on)


def amends_after_they_took_part(case: Case, on: date) -> bool:
    """The petition takes the place of one filed before, in a case in which the other side took part."""
    return is_amended_petition(case, on) and took_part(case, on)


def can_mark_item_2(case: Case, on: date) -> bool:
    """The filer asks for a divorce, and a way into the court is open on that day."""
    return _asks_for_a_divorce(case, on) and residence_route(case, on) is not Route.NONE


def cannot_mark_item_2_yet(case: Case, on: date) -> bool:
    """The filer asks for a divorce, and no way into the court is open on that day as far as told."""
    return _asks_for_a_divorce(case, on) and residence_route(case, on) is Route.NONE


def is_nullity(case: Case, on: date) -> bool:
    """The filer asks for a nullity."""
    return kinds.is_nullity(case)


def is_no_nullity(case: Case, on: date) -> bool:
    """The filer asks for a divorce or a separation, or has not chosen yet."""
    return not is_nullity(case, on)


# --- children -----------------------------------------------------------------------------------


def has_a_minor_child(case: Case, on: date) -> bool:
    """There is a minor child of both, described or not."""
    return has_minor_children(case, on)


def has_only_an_unborn_child(case: Case, on: date) -> bool:
    """There is a child to decide about, but none is born."""
    return not has_minor_children(case, on) and bool(concerns_children(case, on))


def may_yet_list_a_child(case: Case, on: date) -> bool:
    """No child is on the petition, but one said to be of one spouse alone may belong there."""
    return may_list_a_child(case, on)


def has_two_children_for_the_declaration(case: Case, on: date) -> bool:
    """There are as many children as the custody declaration has room for, by the sheet of 2009."""
    return len(listed_children(case, on)) == HAS_ROOM_FOR


def has_more_children_than_the_declaration(case: Case, on: date) -> bool:
    """There are more children than the custody declaration has room for."""
    return len(listed_children(case, on)) > HAS_ROOM_FOR


def knows_of_a_restraining_order(case: Case, on: date) -> bool:
    """The custody declaration names a protective order that is in force."""
    return has_minor_children(case, on) and bool(known(case.uccjea.orders))


def knows_of_orders_to_attach(case: Case, on: date) -> bool:
    """The custody declaration names a case whose orders may be shown.

    The papers of a juvenile court and of an adoption are kept from the public.
    """
    open_ones = {CustodyCase.FAMILY, CustodyCase.GUARDIANSHIP}
    return has_minor_children(case, on) and not open_ones.isdisjoint(known(case.uccjea.cases) or ())


def adds_fl_311(case: Case, on: date) -> bool:
    """The filer chose the custody application sheet."""
    return _adds(case, CustodySheet.FL_311, on)


def adds_fl_312(case: Case, on: date) -> bool:
    """The filer chose the sheet on child abduction."""
    return _adds(case, CustodySheet.FL_312, on)


def adds_fl_341_c(case: Case, on: date) -> bool:
    """The filer chose the holiday schedule."""
    return _adds(case, CustodySheet.FL_341_C, on)


def adds_fl_341_d(case: Case, on: date) -> bool:
    """The filer chose the additional provisions."""
    return _adds(case, CustodySheet.FL_341_D, on)


def adds_fl_341_e(case: Case, on: date) -> bool:
    """The filer chose the sheet on joint legal custody."""
    return _adds(case, CustodySheet.FL_341_E, on)


def could_use_fl_311_for_different_wishes(case: Case, on: date) -> bool:
    """The wishes differ by child, and the filer did not choose the custody application sheet."""
    wishes = wishes_of(case, on)
    return bool(wishes.concerned) and wishes.differ and not adds_fl_311(case, on)


def has_a_copy_of_a_parentage_declaration(case: Case, on: date) -> bool:
    """A listed child has a declaration of parentage, and the filer has a copy."""
    told = [child.declaration for child in listed_children(case, on)]
    return bool(concerns_children(case, on)) and Declaration.SIGNED_WITH_COPY in told


# --- property -----------------------------------------------------------------------------------


def lists_separate_property_on_fl_160(case: Case, on: date) -> bool:
    """Item 9 of the petition points to a property declaration."""
    return is_used(case, SEPARATE)


def lists_community_property_on_fl_160(case: Case, on: date) -> bool:
    """Item 10 of the petition points to a property declaration."""
    return is_used(case, COMMUNITY)


def lists_property_on_fl_160(case: Case, on: date) -> bool:
    """Item 9 or item 10 of the petition points to a property declaration."""
    return lists_separate_property_on_fl_160(case, on) or lists_community_property_on_fl_160(case, on)


def runs_over_fl_160(case: Case, on: date) -> bool:
    """A list that is put on a property declaration is longer than its line."""
    separate = lists_separate_property_on_fl_160(case, on) and runs_over(case, SEPARATE, on)
    return separate or (lists_community_property_on_fl_160(case, on) and runs_over(case, COMMUNITY, on))


# --- after the filing ---------------------------------------------------------------------------


def has_service_to_prove_on_fl_115(case: Case, on: date) -> bool:
    """Papers are to be served, or were, on somebody who can be found, and there is no proof of it yet."""
    to_prove = serving(case, on) is not Serving.NOTHING and not goes_as_a_later_paper(case, on)
    return to_prove and not needs_an_order(case, on)


def may_prove_a_later_paper_by_mail(case: Case, on: date) -> bool:
    """An amended petition for somebody who took part has no proof yet, and was not handed over."""
    return _has_a_later_paper_to_prove(case, on, LaterService.PERSONAL)


def may_prove_a_later_paper_in_person(case: Case, on: date) -> bool:
    """An amended petition for somebody who took part has no proof yet, and was not mailed."""
    return _has_a_later_paper_to_prove(case, on, LaterService.MAIL)


def has_papers_to_serve_on_somebody_found(case: Case, on: date) -> bool:
    """Papers are still to be served on the other side, who can be found."""
    to_serve = serving(case, on) is Serving.SERVE and not goes_as_a_later_paper(case, on)
    return to_serve and not needs_an_order(case, on)


def is_for_somebody_locked_up(case: Case, on: date) -> bool:
    """The other side is in prison or jail."""
    return Special.OTHER_SIDE_LOCKED_UP in (known(case.people.special) or ())


def needs_an_order_to_serve(case: Case, on: date) -> bool:
    """Papers are still to be served on somebody who cannot be found."""
    return needs_an_order(case, on)


def may_prove_a_posting(case: Case, on: date) -> bool:
    """The papers were posted and the court has no proof of it, or may yet be posted."""
    return needs_an_order_to_serve(case, on) or _unproved(case, ServiceMethod.POSTING, on)


def may_prove_a_publication(case: Case, on: date) -> bool:
    """The summons was printed in a newspaper and the court has no proof of it, or may yet be printed."""
    return needs_an_order_to_serve(case, on) or _unproved(case, ServiceMethod.PUBLICATION, on)


def owes_a_disclosure(case: Case, on: date) -> bool:
    """The filer still has to show the other side their money and property; a nullity is another question."""
    unserved = known(happened(case, on).disclosure_served_on) is None
    return is_no_nullity(case, on) and unserved and not waits_for_a_response(case, on)


def may_come_to_owe_a_disclosure(case: Case, on: date) -> bool:
    """The filer owes none while the other side, whom nobody can find, stays silent."""
    return known(happened(case, on).disclosure_served_on) is None and waits_for_a_response(case, on)


# --- fees, court and help -----------------------------------------------------------------------


def wants_fee_waiver(case: Case, on: date) -> bool:
    """The filer wants to ask the court to let them off the fees."""
    return wants_waiver(case)


def may_yet_want_fee_waiver(case: Case, on: date) -> bool:
    """A first fee is due, and the filer has not said whether it is hard to pay."""
    if is_amended_petition(case, on):
        return False
    asked = known(case.waiver.wanted) is not None or known(case.shortcuts.look_at) is not None
    return not asked and not wants_fee_waiver(case, on)


def pays_the_first_fee(case: Case, on: date) -> bool:
    """The fee of a first petition is due, and the filer has not asked to be let off."""
    return is_first_petition(case, on) and not wants_fee_waiver(case, on)


def has_attachment_pages(case: Case, on: date) -> bool:
    """Some page of ours goes behind a form."""
    return bool(attachments(case, on))


def told_of_danger_beside_a_hidden_address(case: Case, on: date) -> bool:
    """The filer told of danger from the other side."""
    return bool(set(known(case.safety.dangers) or ()) - {Danger.HIDE_ADDRESS})


def needs_an_interpreter(case: Case, on: date) -> bool:
    """One of the two needs an interpreter in court."""
    return Special.INTERPRETER in (known(case.people.special) or ())


def _has_a_later_paper_to_prove(case: Case, on: date, in_another_way: LaterService) -> bool:
    to_prove = serving(case, on) is not Serving.NOTHING and goes_as_a_later_paper(case, on)
    return to_prove and known(case.record.amended_served_how) is not in_another_way


def _unproved(case: Case, how: ServiceMethod, on: date) -> bool:
    record = happened(case, on)
    return method(case) is how and known(record.service.proof_filed_on) is None and not took_part(case, on)


def _adds(case: Case, sheet: CustodySheet, on: date) -> bool:
    return bool(concerns_children(case, on)) and sheet in (known(case.custody.sheets) or ())


def _asks_for_a_divorce(case: Case, on: date) -> bool:
    """The filer asks for a divorce."""
    return kind_of(case) is Kind.DISSOLUTION
