"""What FL-115, which proves service, and FL-117, which the other side can sign instead, have in common.

They are no part of the first filing. The filer prepares the top and the list of papers; the rest belongs to
the person who serves, or to the one who gets the papers (Code Civ. Proc. 414.10, 415.30, 417.10).
"""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.record import Service
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.caption_box import NUMBER, court, filer, names
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.served import served_filled_and_blank
from firstpaper.law.measures.record import case_number
from firstpaper.law.measures.service import serves_again, wrong_server
from firstpaper.law.words import spaced
from firstpaper.locale import _

PROVED = ("FL-105", "FL-160")
"""The forms of the first filing that have a line of their own on the proof, as filed and blank."""
DISCLOSURE = ("papers.fl140", "papers.fl142", "papers.fl150", "papers.fl155")


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
    yield names(case)
    number = case_number(case)
    copy = _("Copy it from the petition that the court stamped. File first, then serve.")
    missing = replace(still_open(case, NUMBER, "matter.case_number"), because=copy)
    yield write(NUMBER, number, _("The number the court gave this case.")) if number else missing


def papers(case: Case, on: date) -> Iterator[Answer]:
    """Which papers are in the envelope. Nothing is marked that is not surely in it."""
    amended = _("It is the amended petition this time.") if serves_again(case) else ""
    together = _("Yours is a family case. The three forms go together, and FL-120 stays blank.")
    others = _("If another form is in the envelope, mark its line below too.")
    yield mark(
        "papers.petition",
        spaced((together, amended, others)),
        "Cal. Rules of Court, rule 5.68",
    )
    not_yours = _("This is for another kind of case.")
    yield blank("papers.parentage", not_yours)
    yield blank("papers.custody", not_yours)
    both = served_filled_and_blank(case, on)
    more = _("You have more forms in the envelope. The boxes below name them.")
    if both.intersection(PROVED):
        yield mark("papers.more", more)
    else:
        yield blank("papers.more", _("Only if one of the forms below is in the envelope. Then mark it."))
    yield _if_in(
        "papers.fl105", "FL-105" in both, _("You have a child under 18 together. Both copies go along.")
    )
    yield from (_only_if_added(concept) for concept in DISCLOSURE)
    yield _if_in(
        "papers.fl160", "FL-160" in both, _("You put it behind the petition. A blank one goes along.")
    )
    yield _only_if_added("papers.fl300")
    local = _("Only for more papers, such as forms of your own court. Then name them here.")
    yield blank("papers.other", local)


def _if_in(concept: str, there: bool, because: str) -> Answer:
    return mark(concept, because) if there else _only_if_added(concept)


def _only_if_added(concept: str) -> Answer:
    return blank(concept, _("Mark it only if this form is in the envelope."))
