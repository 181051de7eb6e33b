"""What FL-115, which proves service, and FL-117, which the other side can sign instead, have in common.

They are no part of the first filing. The filer prepares the top and the list of papers; the rest belongs to
the person who serves, or to the one who gets the papers (Code Civ. Proc. 414.10, 415.30, 417.10).
"""

from collections.abc import Iterator, Mapping, Set
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.record import Service
from firstpaper.facts.text import in_latin_letters
from firstpaper.forms.answer import Action, Answer, blank, fill, mark, write
from firstpaper.forms.caption_box import NAMES, NUMBER, court, filer, names
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.served import served_filled_and_blank
from firstpaper.law.measures.record import case_number
from firstpaper.law.measures.service import serves_again, wrong_server
from firstpaper.law.words import spaced
from firstpaper.locale import _

MORE = tuple(
    f"papers.{form}" for form in ("fl105", "fl140", "fl142", "fl150", "fl155", "fl160", "fl300", "other")
)
"""The lines for further forms, each as filed and blank, in the order of the sheet."""


def of_this_service(case: Case) -> Case:
    """The case without the record of an earlier service, where the papers have to be served anew."""
    if not (serves_again(case) or wrong_server(case)):
        return case
    record = case.record.model_copy(update={"service": Service.nothing()})
    return case.model_copy(update={"record": record})


def caption(case: Case) -> Iterator[Answer]:
    """The top. By now the court has given a number."""
    yield filer(case)
    yield court(case)
    yield _names(case)
    number = case_number(case)
    copy = _("Copy it from the petition that the court stamped. File first, then serve.")
    missing = replace(still_open(case, NUMBER, "matter.case_number"), because=copy)
    yield write(NUMBER, number, _("The number the court gave this case.")) if number else missing


def _names(case: Case) -> Answer:
    """Both names; as the stamped petition has them, where what stands there was not ours to say."""
    told = names(case)
    if told.action is Action.WRITE and not told.open_key and in_latin_letters(told.value):
        return told
    return fill(NAMES, _("Copy both names from the petition that the court stamped."))


def papers(case: Case, on: date) -> Iterator[Answer]:
    """Which papers are in the envelope. Nothing is marked that is not surely in it."""
    amended = _("It is the amended petition this time.") if serves_again(case) else ""
    together = _("Yours is a family case. The three forms go together, and FL-120 stays blank.")
    yield mark("papers.petition", spaced((together, amended)), "Cal. Rules of Court, rule 5.68")
    not_yours = _("This is for another kind of case.")
    yield blank("papers.parentage", not_yours)
    yield blank("papers.custody", not_yours)
    yield from _more(served_filled_and_blank(case, on))


def _more(both: Set[str]) -> Iterator[Answer]:
    """The lines for further forms: those surely there marked, the others left to the filer."""
    sure = {concept: why for concept, (form, why) in _proved().items() if form in both}
    named = _("You have more forms in the envelope. The boxes below name them.")
    own = _("Mark those that are in the envelope, and no other.")
    any_more = _("Only if more forms are in the envelope: mark the first box, and one for each of them.")
    yield mark("papers.more", named) if sure else fill("papers.more", any_more)
    for concept in MORE:
        left = own if sure else any_more
        yield mark(concept, sure[concept]) if concept in sure else fill(concept, left)


def _proved() -> Mapping[str, tuple[str, str]]:
    """The forms of the first filing that have a line of their own on the proof, and why it is marked."""
    return {
        "papers.fl105": ("FL-105", _("You have a child under 18 together. Both copies go along.")),
        "papers.fl160": ("FL-160", _("You put it behind the petition. A blank one goes along.")),
    }
