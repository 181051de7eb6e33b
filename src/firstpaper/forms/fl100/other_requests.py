"""Item 11: attorney's fees, a former name, and other requests."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Fees, GoodFaith, Kind, Who
from firstpaper.facts.kinds import is_nullity, kind_of
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.fl100.places import space
from firstpaper.forms.fl100.words import paragraphs
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, attachment, see
from firstpaper.forms.saying import chosen, married, not_asked, partners
from firstpaper.law.measures.residence import may_state_intent
from firstpaper.locale import _, noted

NAME, NAME_WORDS = "requests.former_name", "requests.former_name.words"
BOX, WORDS, CONTINUED = "requests.other", "requests.other.words", "requests.other.continued"
INTENT = noted(
    "Petitioner intends to amend this petition to ask for a judgment of dissolution as soon as the residence "
    "requirements of Family Code section 2320 are met (Fam. Code, section 2321(b))."
)


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 11a to 11c."""
    yield from _fees(case)
    yield from _former_name(case)
    yield from _other(case, on)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The other requests, where they do not fit on the lines."""
    words = requests(case, on)
    if not words or space(WORDS, on).holds("\n".join(words)):
        return None
    return attachment(case, "11c", "Other requests", words)


def requests(case: Case, on: date) -> tuple[str, ...]:
    """The other requests as they are filed, in the petition's own voice, a paragraph each."""
    words = list(paragraphs(known(case.requests.other) or ""))
    if _putative(case):
        words.insert(0, _putative_words(case))
    if _intends_to_amend(case, on):
        words.insert(0, filed(INTENT))
    return tuple(words)


def _fees(case: Case) -> Iterator[Answer]:
    told, key = known(case.requests.fees), "requests.fees"
    law = "Fam. Code 2255" if is_nullity(case) else "Fam. Code 2030"
    asks = told is not None and told is not Fees.NOT_ASKED
    now = _("You ask for this now. You can also ask by a request of its own while the case runs.")
    not_now = _("You are not asking for fees. Either of you can still ask by a request while the case runs.")
    yield chosen(case, "requests.fees", key, asks, because=now, otherwise=not_now, authority=law)
    for who, holds, because in (
        (Who.PETITIONER, told is Fees.PAID_BY_PETITIONER, _("You ask that you pay.")),
        (Who.RESPONDENT, told is Fees.PAID_BY_RESPONDENT, _("You ask that the other side pays.")),
    ):
        words = {"because": because, "otherwise": not_now, "authority": law}
        yield chosen(case, f"requests.fees.{who}", key, holds, **words)


def _former_name(case: Case) -> Iterator[Answer]:
    name, used = known(case.requests.former_name), known(case.requests.former_name_used)
    if kind_of(case) is Kind.LEGAL_SEPARATION:
        no = _("A court cannot give a name back in a legal separation. A change-of-name case is another way.")
        yield from (blank(concept, no, "Fam. Code 2080") for concept in (NAME, NAME_WORDS))
    elif name is None:
        yield from (still_open(case, concept, "requests.former_name") for concept in (NAME, NAME_WORDS))
    elif not name:
        later = _("You ask for no former name. You can still do so later, even after the judgment.")
        yield from (blank(concept, later, "Fam. Code 2080") for concept in (NAME, NAME_WORDS))
    elif name.casefold() == (known(case.petitioner.name) or "").casefold():
        now = _("This is the name you have now. Check the spelling, or leave it out.")
        for concept in (NAME, NAME_WORDS):
            yield replace(blank(concept, now, "Fam. Code 2080"), open_key="requests.former_name")
    elif used is None:
        yield from (still_open(case, concept, "requests.former_name_used") for concept in (NAME, NAME_WORDS))
    elif not used:
        not_yours = _("This line can only give back a name that you had before.")
        for concept in (NAME, NAME_WORDS):
            yield replace(blank(concept, not_yours, "Fam. Code 2080"), open_key="requests.former_name")
    else:
        yield mark(
            NAME, _("You want this name back. A court says no only for fraud."), "Fam. Code 2080, 2081"
        )
        yield write(NAME_WORDS, name, _("The whole name, as you want it."), "Fam. Code 2080")


def _other(case: Case, on: date) -> Iterator[Answer]:
    words, page, missing = requests(case, on), attachment_page(case, on), _missing(case, on)
    if not words:
        for concept in (BOX, WORDS, CONTINUED):
            yield still_open(case, concept, missing) if missing else blank(concept, not_asked())
        return
    label = page.label if page else ""
    box = mark(BOX, _why(case, on), _authority(case, on), continues=label)
    yield flagged(case, box, missing) if missing else box
    if page:
        too_long = _("Your words are too long for the lines. They are on {label}.").format(label=label)
        says = meaning(lambda: "\n".join((see(page), *requests(case, on))))
        yield write(WORDS, see(page), too_long, _("common practice"), continues=label, meaning=says)
        yield mark(CONTINUED, too_long, _("common practice"), continues=label)
    else:
        says = meaning(lambda: "\n".join(requests(case, on)))
        fit = _("The words fit on the lines.")
        yield write(WORDS, "\n".join(words), fit, _authority(case, on), meaning=says)
        yield blank(CONTINUED, _("The words fit on the lines."))


def _why(case: Case, on: date) -> str:
    reasons = []
    if _intends_to_amend(case, on):
        reasons.append(
            _("It says that you want a divorce once the time has run. That makes the change easier.")
        )
    if _putative(case):
        reasons.append(_("A court divides property in a void or voidable marriage only if asked."))
    if known(case.requests.other):
        reasons.append(_("You want to add something in your own words."))
    return " ".join(reasons)


def _authority(case: Case, on: date) -> str:
    laws = []
    if _intends_to_amend(case, on):
        laws.append("Fam. Code 2321(b)")
    if _putative(case):
        laws.append("Fam. Code 2251(a)")
    return "; ".join(laws)


def _missing(case: Case, on: date) -> str:
    """The key of an answer that could still add a request; empty when all are answered."""
    kind = kind_of(case)
    if kind is None:
        return "matter.kind"
    if may_state_intent(case, on) and known(case.requests.intends_to_amend) is None:
        return "requests.intends_to_amend"
    if kind is Kind.NULLITY and known(case.grounds.good_faith) is None:
        return "grounds.good_faith"
    if kind is Kind.NULLITY and _believed(case) and known(case.requests.putative_division) is None:
        return "requests.putative_division"
    return "requests.other" if known(case.requests.other) is None else ""


def _intends_to_amend(case: Case, on: date) -> bool:
    return may_state_intent(case, on) and known(case.requests.intends_to_amend) is True


def _putative(case: Case) -> bool:
    """Only a party who believed in good faith that the union was valid may ask (Fam. Code 2251(a)(2))."""
    asks = known(case.requests.putative_division) is True
    return is_nullity(case) and asks and _believed(case)


def _believed(case: Case) -> bool:
    return known(case.grounds.good_faith) in (GoodFaith.PETITIONER, GoodFaith.BOTH)


def _putative_words(case: Case) -> str:
    if partners(case) and not married(case):
        return filed(
            "Petitioner believed in good faith that the domestic partnership was valid. Petitioner asks the "
            "court to declare Petitioner a putative partner and to divide the property acquired during the "
            "union as quasi-marital property (Fam. Code, section 2251(a))."
        )
    return filed(
        "Petitioner believed in good faith that the marriage was valid. Petitioner asks the court to declare "
        "Petitioner a putative spouse and to divide the property acquired during the union as quasi-marital "
        "property (Fam. Code, section 2251(a))."
    )
