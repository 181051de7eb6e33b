"""The lines on custody and visits."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import CustodyTo, VisitsTo
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children, listed_children, unborn
from firstpaper.law.register import rule
from firstpaper.law.words import child_words
from firstpaper.locale import _

LINES = ("legal", "physical", "visits")


@rule(
    "The lines on custody and visits",
    cite=(
        "Fam. Code 3003",
        "Fam. Code 3004",
        "Fam. Code 3006",
        "Fam. Code 3007",
    ),
    since=date(2000, 1, 1),
    not_modelled="What is best for a child. That is for the parents and the court.",
)
def custody_lines(case: Case, on: date) -> list[Found]:
    """With children, the petition says who should have legal custody, physical custody and visits.

    The words. Legal custody: who makes the big choices on health, school and welfare. Physical custody:
    with whom the child lives. Joint physical custody means that each parent has significant time, not
    that it is half and half. Visits (parenting time) are for the parent with whom the child does not
    mainly live.

    What we check. That no line is empty by oversight. And that visits are not asked for the same parent
    who is to have the children: somebody with whom they live needs no visits. Where both are to have
    physical custody, the line on visits is usually left empty.

    Both sides. Asking for something is not an order, and you can change your mind. But where nobody
    answers, the court can only go by what the petition asks. If there has been violence, see the pages
    on safety first.

    An example. Physical custody to the petitioner, and visits to the petitioner too. One of the two is a
    slip. Usually visits to the respondent were meant.

    What to do. Read the three lines together, as one sentence.
    """
    if not (has_minor_children(case, on) or unborn(case)):
        return []
    if known(case.custody.alike) is False:
        return list(_one_by_one(case, on))
    told = {line: getattr(case.custody, line) for line in LINES}
    return list(_about("", "custody", told))


def _one_by_one(case: Case, on: date) -> Iterator[Found]:
    for child in listed_children(case, on):
        told = {line: case.fact(f"{child.key}.{line}") for line in LINES}
        yield from _about(child_words(child.number, child.name), child.key, told)


def _about(name: str, place: str, told: dict[str, object]) -> Iterator[Found]:
    physical, visits = told["physical"], told["visits"]
    facts = tuple(f"{place}.{line}" for line in LINES)
    open_lines = [line for line in LINES if told[line] in (None, DONT_KNOW)]
    if "visits" in open_lines and visits is None and physical is CustodyTo.JOINT:
        open_lines.remove("visits")
    if open_lines:
        yield Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE if DONT_KNOW in told.values() else Weight.LOOK_AGAIN,
            _of(name, _("A line on custody or visits has no answer yet.")),
            _("Answer it, or ask the self-help center what each choice means."),
            facts=tuple(f"{place}.{line}" for line in open_lines),
        )
    if _same_parent(physical, visits):
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _of(name, _("You ask for physical custody and for visits for the same parent.")),
            _("Visits are for the parent with whom the children do not mainly live. Look at both lines."),
            facts=facts,
            cite=("common practice",),
        )


def _same_parent(physical: object, visits: object) -> bool:
    return (physical, visits) in (
        (CustodyTo.PETITIONER, VisitsTo.PETITIONER),
        (CustodyTo.RESPONDENT, VisitsTo.RESPONDENT),
    )


def _of(name: str, says: str) -> str:
    return _("{name}: {says}").format(name=name, says=says) if name else says
