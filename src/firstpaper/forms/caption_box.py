"""The boxes at the top of every form, each as one answer: the same words as on the petition.

What is written on a form is in English, the language of the court.
"""

from collections.abc import Iterator

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import for_the_court
from firstpaper.facts.people import Address
from firstpaper.forms.answer import Answer, write
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import short_title
from firstpaper.forms.saying import case_number, somebody_else_files, written_petitioner
from firstpaper.locale import _

FILER, COURT, NAMES, NUMBER = "caption.filer", "caption.court", "caption.names", "caption.case_number"


def caption(case: Case) -> Iterator[Answer]:
    """The four boxes of a caption."""
    yield filer(case)
    yield court(case)
    yield names(case)
    yield case_number(case, NUMBER)


def filer(case: Case, concept: str = FILER, *, because: str = "") -> Answer:
    """Who files, and how the court reaches them. `because` is for a paper that opens the case itself."""
    told = case.petitioner
    lines = (
        known(told.name) or "",
        *_address(for_the_court(case)),
        known(told.phone) or "",
        known(told.email) or "",
        "Self-represented",
    )
    address = for_the_court(case)
    cells = (
        known(told.name) or "",
        *((address.street, address.city, address.state, address.zip) if address else ("",) * 4),
        known(told.phone) or "",
        known(told.email) or "",
        "Self-represented",
    )
    return _written(case, concept, lines, cells, "petitioner.name", "petitioner.mailing", because=because)


def court(case: Case, concept: str = COURT, *, because: str = "") -> Answer:
    """Which court, and where it sits. `because` is for a paper that opens the case itself."""
    county = known(case.court.county)
    lines = (
        f"Superior Court of California, County of {county}" if county else "",
        *_address(known(case.court.address)),
        known(case.court.branch) or "",
    )
    address = known(case.court.address)
    cells = (
        county or "",
        *((address.street, f"{address.city} {address.zip}".strip()) if address else ("", "")),
        known(case.court.branch) or "",
    )
    return _written(case, concept, lines, cells, "court.county", "court.address", because=because)


def names(case: Case, concept: str = NAMES) -> Answer:
    """The two people, in the roles they keep."""
    if somebody_else_files(case):
        return written_petitioner(case, concept, "")
    petitioner, respondent = known(case.petitioner.name), known(case.respondent.name)
    lines = (
        f"Petitioner: {petitioner}" if petitioner else "",
        f"Respondent: {respondent}" if respondent else "",
    )
    cells = (petitioner or "", respondent or "")
    return _written(case, concept, lines, cells, "petitioner.name", "respondent.name")


def _written(
    case: Case, concept: str, lines: tuple[str, ...], cells: tuple[str, ...], *needed: str, because: str = ""
) -> Answer:
    missing = next((key for key in needed if known(case.fact(key)) is None), "")
    told = "\n".join(line for line in lines if line)
    if missing == needed[0] or not told:
        return still_open(case, concept, missing or needed[0])
    same = _("The same words as at the top of FL-100.")
    answer = write(concept, told, because or same, _("common practice"), cells=(cells,))
    return flagged(case, answer, missing) if missing else answer


def _address(address: Address | None) -> tuple[str, ...]:
    if address is None:
        return ()
    return (address.street, f"{address.city}, {address.state} {address.zip}".strip(", "))


def one_line(address: Address) -> str:
    """An address as it stands on one line."""
    return ", ".join(_address(address))


def only_names(case: Case) -> Iterator[Answer]:
    """The short heading of a page that is added to a form."""
    yield names(case)
    yield case_number(case, NUMBER)


def with_case_name(case: Case) -> Iterator[Answer]:
    """The heading of the two forms on court fees, which name the case by its short title."""
    yield filer(case, "filer")
    yield court(case, "court")
    yield case_number(case, "case_number")
    yield write("case_name", short_title(case), _("The short name of your case."), _("common practice"))


def which_court() -> str:
    """Where the words on the court come from, on a paper that opens the case itself."""
    return _("Copy it from the court's own website. A big county has more than one courthouse.")


def both_petitioners(case: Case, concept: str = NAMES) -> Answer:
    """The two people of a joint petition, in the order that they keep."""
    first, second = known(case.petitioner.name), known(case.respondent.name)
    if not first or not second:
        return still_open(case, concept, "petitioner.name" if not first else "respondent.name")
    later = _("On later forms the first of you is the petitioner, and the second is the respondent.")
    told = f"Petitioner 1: {first}\nPetitioner 2: {second}"
    return write(concept, told, later, "Cal. Rules of Court, rule 5.16(a)(2)", cells=((first, second),))
