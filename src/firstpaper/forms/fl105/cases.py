"""Other cases about the children, protective orders, and other people who have or claim them."""

from collections.abc import Iterator, Sequence
from datetime import date
from enum import StrEnum

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodyCase, OrderedBy
from firstpaper.forms.answer import Answer, blank, fill, mark, write
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filed_words import meaning
from firstpaper.forms.fl105 import FORM
from firstpaper.forms.open_answers import not_before_advice, still_open
from firstpaper.forms.pages import Attachment, see, unnumbered
from firstpaper.law.measures.other_cases import another_court_may_decide
from firstpaper.locale import _

CASES_LAW, CLAIMS_LAW = "Fam. Code 3429(a)(1)-(2)", "Fam. Code 3429(a)(3)"
ROWS = {
    "cases.rows": ("uccjea.case_words", "Other cases"),
    "orders.rows": ("uccjea.order_words", "Protective orders"),
    "claims.rows": ("uccjea.claims", "Persons who have or claim a child"),
}


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Yes or no, the kinds, and the rows of each of the three questions."""
    yield from _of_cases(case, on)
    orders = known(case.uccjea.orders)
    yield _orders(case, orders)
    yield from _kinds(case, "orders", OrderedBy, orders, "uccjea.orders")
    yield _rows(case, "orders.rows", orders, "uccjea.orders", on)
    claims = known(case.uccjea.claims)
    yield from _yes_or_no(case, "claims", claims, "uccjea.claims", CLAIMS_LAW)
    yield _rows(case, "claims.rows", claims, "uccjea.claims", on)


def attachment_pages(case: Case, on: date) -> Iterator[Attachment]:
    """A page for each of the three whose rows do not hold what was told."""
    for concept in ROWS:
        if page := attachment_page(case, concept, on):
            yield page


def attachment_page(case: Case, concept: str, on: date) -> Attachment | None:
    """The page for the words of one of the three, where they do not fit on its rows."""
    key, title = ROWS[concept]
    words = tuple(line for line in known(case.fact(key)) or () if line)
    if not words or edition_for(FORM, on).item(concept).holds("\n".join(words)):
        return None
    return unnumbered(case, FORM, title, words)


def _of_cases(case: Case, on: date) -> Iterator[Answer]:
    """The question on other cases; open where "none" was told here and a case or an order elsewhere."""
    told, key = known(case.uccjea.cases), "uccjea.cases"
    found = (
        *_yes_or_no(case, "cases", told, key, CASES_LAW),
        *_kinds(case, "cases", CustodyCase, told, key),
        _rows(case, "cases.rows", told, key, on),
    )
    doubt = _why_not_none(case) if told == () else ""
    yield from (not_before_advice(one.concept, doubt, key) for one in found) if doubt else found


def _why_not_none(case: Case) -> str:
    """Why "I know of no other case" cannot be sworn to yet; empty where nothing told speaks against it."""
    if another_court_may_decide(case) and known(case.matter.other_case):
        return _(
            "You told us of a case, and here of none. You swear to this line. Ask the self-help center "
            "before you mark “yes” or “no”."
        )
    if known(case.uccjea.orders):
        return _(
            "You told us of a protective order. A case stands behind it. You swear to this line. Ask the "
            "self-help center before you mark “yes” or “no”."
        )
    return ""


def _yes_or_no(
    case: Case, concept: str, told: Sequence[object] | None, key: str, law: str
) -> Iterator[Answer]:
    yes, no = f"{concept}.yes", f"{concept}.no"
    if told is None:
        yield from (still_open(case, box, key) for box in (yes, no))
    elif told:
        yield mark(yes, _("You told us of one."), law)
        yield blank(no, _("You marked the other box."))
    else:
        yield blank(yes, _("You know of none."))
        yield mark(no, _("You know of none. If you hear of one later, you must tell the court."), law)


def _orders(case: Case, told: Sequence[object] | None) -> Answer:
    concept = "orders.yes"
    if told is None:
        return still_open(case, concept, "uccjea.orders")
    if not told:
        return blank(concept, _none("orders"))
    return mark(
        concept, _("You told us of an order that holds now. Attach a copy if you have one."), CASES_LAW
    )


def _none(concept: str) -> str:
    """What was told where there is none of the three."""
    return _("You know of no order that holds now.") if concept == "orders" else _("You know of none.")


def _kinds(
    case: Case, concept: str, kinds: type[StrEnum], told: Sequence[object] | None, key: str
) -> Iterator[Answer]:
    for kind in kinds:
        box = f"{concept}.{kind}"
        if told is None:
            yield still_open(case, box, key)
        elif kind in told:
            yield mark(box, _("You named this kind."))
        else:
            yield blank(box, _("You did not name this kind.") if told else _none(concept))


def _rows(case: Case, concept: str, told: Sequence[object] | None, key: str, on: date) -> Answer:
    words_key = ROWS[concept][0]
    if told is None:
        return still_open(case, concept, key)
    if not told:
        return blank(concept, _none(concept.partition(".")[0]))
    words = known(case.fact(words_key))
    if words is None:
        return still_open(case, concept, words_key)
    lines = tuple(line for line in words if line)
    if not lines:
        return fill(concept, _("You know no more. Ask the clerk of that court, and write what you find out."))
    if page := attachment_page(case, concept, on):
        more = _("Your words are too long for the rows. They are on {label}.").format(label=page.label)
        says = meaning(lambda: see(page))
        return write(concept, see(page), more, _("common practice"), continues=page.label, meaning=says)
    return write(concept, "\n".join(lines), _("Copy each part into the column with the same name."))
