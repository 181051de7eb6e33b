"""Item 7: child support. Three printed sentences, and one line for other words."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import GrownNeed
from firstpaper.forms.answer import Answer, blank
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.fl100.places import space
from firstpaper.forms.fl100.words import line_of_words, page_of_words
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment
from firstpaper.law.measures.children import concerns_children, open_on_children
from firstpaper.law.measures.other_cases import other_cases
from firstpaper.locale import _, noted

FOR_GROWN = {
    GrownNeed.IN_SCHOOL: noted(
        "Support for our child who is 18, unmarried, a full-time high school student and not self-supporting "
        "(Fam. Code, § 3901)"
    ),
    GrownNeed.CANNOT_EARN: noted(
        "Support for our adult child who is incapacitated from earning a living and without sufficient means "
        "(Fam. Code, § 3910)"
    ),
}
"""In English, the language of the court."""

BOX, WORDS = "support.child.other", "support.child.other.words"


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 7a to 7d."""
    yield blank(
        "support.child.request",
        _("Nothing to mark. The judge can order child support wherever there are children of both."),
        "Fam. Code 4001",
    )
    yield blank(
        "support.child.assignment",
        _("Nothing to mark. Child support is most often taken straight out of the pay."),
        "Fam. Code 5230(a)",
    )
    yield blank(
        "support.child.interest",
        _("Nothing to mark. Support that is paid late costs interest."),
        "Code Civ. Proc. 685.010(a)",
    )
    yield from _other(case, on)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The other words, where they are longer than the line."""
    return page_of_words(case, "7d", "Child support", _words(case, on), space(WORDS, on))


def _words(case: Case, on: date) -> str:
    """The filer's own words on child support, and the support asked for a grown child."""
    own = known(case.support.child_other) if concerns_children(case, on) else ""
    return "\n".join(part for part in (own, *_for_grown_children(case)) if part)


def _for_grown_children(case: Case) -> Iterator[str]:
    """What is asked for a grown child, as it is filed. Relief not asked cannot be given on default."""
    names = "; ".join(known(case.support.grown_who) or ())
    for need in known(case.support.grown) or ():
        asked = filed(FOR_GROWN[need])
        yield f"{asked}: {names}." if names else f"{asked}."


def _other(case: Case, on: date) -> Iterator[Answer]:
    concerned = concerns_children(case, on)
    grown = bool(known(case.support.grown))
    if concerned is None and not grown:
        yield from (still_open(case, concept, open_on_children(case, on)) for concept in (BOX, WORDS))
    elif not concerned and not grown:
        none = _("There is no child under 18 of both of you, born or on the way.")
        yield from (blank(concept, none) for concept in (BOX, WORDS))
    elif concerned and known(case.support.child_other) is None and not grown:
        yield from (still_open(case, concept, "support.child_other") for concept in (BOX, WORDS))
    elif words := _words(case, on):
        yield from _said(case, on, words)
    else:
        yield from (blank(concept, _nothing_given_up(case)) for concept in (BOX, WORDS))


def _nothing_given_up(case: Case) -> str:
    """Why an empty item 7 gives nothing up, and what may stand there where another case was told."""
    if other_cases(case):
        return _("You give nothing up. If a child support case is open, its number may go at 7d: ask first.")
    return _("You give nothing up: the printed words let a judge decide child support.")


def _said(case: Case, on: date, words: str) -> Iterator[Answer]:
    grown = bool(known(case.support.grown))
    missing = grown and not known(case.support.grown_who)
    says = meaning(lambda: _words(case, on))
    for answer in line_of_words(BOX, WORDS, words, attachment_page(case, on), ours=grown, says=says):
        yield flagged(case, answer, "support.grown_who") if missing else answer
