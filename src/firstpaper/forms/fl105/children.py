"""The children and their homes: two on the form itself, each further one on an added page."""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import (
    home_of_a_person,
    home_of_the_filer,
    home_of_the_other_side,
    keeps_addresses_off,
)
from firstpaper.forms.answer import Answer, blank, fill, mark, write
from firstpaper.forms.caption_box import one_line
from firstpaper.forms.fl105 import ADDED_PAGE, FORM, LAW
from firstpaper.forms.fl105 import homes as rows
from firstpaper.forms.fl105.confidential import get_help_first, marks_the_box, wants_help_first
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, unnumbered
from firstpaper.forms.saying import on_the_sheet
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

LETTERS = ("a", "b")
FACTS = ("name", "born_in", "born_on", "sex")


def answers(case: Case, on: date) -> Iterator[Answer]:
    """How many children, their two blocks, and where the rest is."""
    children = listed_children(case, on)
    yield _count(case, children)
    printed = rows.printed_rows(FORM, on)
    for place, letter in enumerate(LETTERS):
        block = Block(f"child.{letter}", printed, children[0] if place and children else None)
        if place < len(children):
            yield from block.answers(case, children[place], on)
        else:
            yield from block.empty(points_back=place > 0)
    yield from _people(case, rows.longer_ago(case, children, on))
    yield _more_homes(case, on)
    yield _more_children(children)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The homes that the sheets have no row for."""
    children = listed_children(case, on)
    left = tuple(_without_a_row(case, children, on))
    if not left:
        return None
    return unnumbered(
        case,
        FORM,
        "Residence information",
        ("The residence information of the children continues here:",),
        columns=("Child's name", "Period of residence", "Residence", "Lived with", "Relationship"),
        rows=left,
    )


class Block(NamedTuple):
    """The place of one child on a sheet: its concept, and how many rows are printed there for homes.

    `first` is the child whose homes the box "same" points to; None in the block of that child itself.
    """

    concept: str
    printed: int
    first: ListedChild | None = None

    def answers(self, case: Case, child: ListedChild, on: date) -> Iterator[Answer]:
        """The answers about the child that has this place."""
        yield from _facts(case, child, self.concept)
        same = self.first is not None and rows.same_as(case, child, self.first, on)
        if self.first is not None:
            yield _same(case, child, self.concept, same)
        yield _private(case, child, self.concept, on)
        if same:
            box = _("The box says that it is the same.")
            yield from (blank(concept, box) for concept in self._homes)
        else:
            yield from rows.answers(case, child, f"{self.concept}.home", self.printed, on)

    def empty(self, *, points_back: bool) -> Iterator[Answer]:
        """The answers where no child has this place."""
        no_more = _("You need room for one child only.")
        facts = (*FACTS, *(["same"] if points_back else []), "private")
        for concept in (*(f"{self.concept}.{fact}" for fact in facts), *self._homes):
            yield blank(concept, no_more)

    @property
    def _homes(self) -> Iterator[str]:
        return (f"{self.concept}.home.{number}" for number in range(1, self.printed + 1))


def _count(case: Case, children: tuple[ListedChild, ...]) -> Answer:
    why = _("As many as in item 4 of the petition.")
    if not children:
        return still_open(case, "children.count", "children.family")
    answer = write("children.count", str(len(children)), why, LAW)
    return flagged(case, answer, "children.how_many") if known(case.children.how_many) is None else answer


def _facts(case: Case, child: ListedChild, concept: str) -> Iterator[Answer]:
    same_name = _("As on the petition.")
    name, born_in, born_on = (f"{concept}.{fact}" for fact in FACTS[:3])
    yield (write(name, child.name, same_name) if child.name else still_open(case, name, f"{child.key}.name"))
    yield (
        write(born_in, child.birthplace, _("City and state."))
        if child.birthplace
        else still_open(case, born_in, f"{child.key}.birthplace")
    )
    sure = child.born.sure if child.born else None
    yield (
        write(born_on, on_the_sheet(sure), same_name)
        if sure
        else still_open(case, born_on, f"{child.key}.born_on")
    )
    yield fill(f"{concept}.sex", _("If your form asks for it, fill it in."))


def _same(case: Case, child: ListedChild, concept: str, same: bool | None) -> Answer:
    box = f"{concept}.same"
    if same is None:
        return still_open(case, box, rows.homes_key(case, child))
    if same:
        return mark(box, _("By your answers, since birth this child lived in just the same places."))
    return blank(box, _("The homes are not all the same. List them below."))


def _private(case: Case, child: ListedChild, concept: str, on: date) -> Answer:
    box, marks = f"{concept}.private", marks_the_box(case)
    told = rows.rows_of(case, child, on)
    if not any(row.private for row in told):
        return blank(box, _("By your answers, none of these homes must stay private."))
    if wants_help_first(case):
        return fill(box, get_help_first(), LAW)
    if marks is None:
        return still_open(case, box, "uccjea.kept_private")
    return mark(box, _("Mark it beside each home for which we write only the state."), LAW)


def _people(case: Case, longer_ago: tuple[str, ...]) -> Iterator[Answer]:
    """The people the children lived with: the two spouses, then the others, with the address of each."""
    concept, told = "people", known(case.uccjea.people)
    cells = tuple(_person_rows(case, longer_ago))
    if not cells:
        yield still_open(case, concept, "petitioner.name" if told is not None else "uccjea.people")
        return
    lines = "\n".join(", ".join(filter(None, row)) for row in cells)
    why = spaced((_beside_the_names(case), _left_out(longer_ago)))
    answer = write(concept, lines, why, cells=cells)
    yield flagged(case, answer, "uccjea.people") if told is None else answer


def _beside_the_names(case: Case) -> str:
    if keeps_addresses_off(case):
        return _(
            "Write no address of yours, of the children, or of anybody you live with. The box on "
            "confidential addresses says why. Get help with this part."
        )
    return _("Write beside each name where that person lives today. A box for mail is no home.")


def _left_out(names: tuple[str, ...]) -> str:
    if not names:
        return ""
    only = _("Not on the list: {names}. No child lived there in the years that the form asks about.")
    return only.format(names=in_a_row(names))


def _person_rows(case: Case, longer_ago: tuple[str, ...]) -> Iterator[tuple[str, str, str]]:
    homes = ((case.petitioner, home_of_the_filer(case)), (case.respondent, home_of_the_other_side(case)))
    for spouse, home in homes:
        if name := known(spouse.name):
            yield name, "parent", one_line(home) if home else ""
    listed = (one for one in known(case.uccjea.people) or () if one.name not in longer_ago)
    for person in listed:
        yield person.name, person.relation, home_of_a_person(case, person) or ""


def _more_homes(case: Case, on: date) -> Answer:
    page, concept = attachment_page(case, on), "more_homes"
    if page is None:
        return blank(concept, _("Your rows are enough, as far as we know the sheet."))
    more = _("You have more homes than we know rows for. The rest is on {label}.").format(label=page.label)
    return mark(concept, more, continues=page.label)


def _more_children(children: tuple[ListedChild, ...]) -> Answer:
    concept = "more_children"
    if len(children) <= len(LETTERS):
        return blank(concept, _("Your children have room on this form."))
    each = _("Each further child has a page of its own: form {form}.").format(form=ADDED_PAGE)
    return mark(concept, each, continues=ADDED_PAGE)


def _without_a_row(case: Case, children: tuple[ListedChild, ...], on: date) -> Iterator[tuple[str, ...]]:
    """The homes for which no row is left, each with the name of its child."""
    for place, child in enumerate(children):
        if place and rows.same_as(case, child, children[0], on):
            continue
        form = FORM if place < len(LETTERS) else ADDED_PAGE
        for row in rows.rows_of(case, child, on)[rows.printed_rows(form, on) :]:
            yield child.name or "", row.days, row.place, row.people, row.relation
