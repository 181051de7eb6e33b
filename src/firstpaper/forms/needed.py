"""Which official forms a household needs, why, and where each one goes.

`filings/*.yaml` have the tables, one for each filing; here they are read for one case.

The forms are the court's own and free. We never print a page that looks like one (Cal. Rules of Court
1.43, 2.132). Titles are short forms of the official ones.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from functools import cache
from typing import Any

from firstpaper.data_files import Place, built, read_file
from firstpaper.facts import Case
from firstpaper.forms.asking import question
from firstpaper.forms.edition import as_printed
from firstpaper.forms.filing import FOLDER, Filing
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureNotInForce, FigureValue, UnknownFigureError, figure
from firstpaper.locale import _


class Goes(StrEnum):
    """Where a form goes. `ASK` is a question for the clerk: it differs by court or by case."""

    FILE = "file"
    SERVE = "serve"
    KEEP = "keep"
    ASK = "ask"


class Stack(StrEnum):
    """Where in the stack for the clerk a paper lies. `APART` is a stack of its own, served on nobody."""

    SUMMONS = "summons"
    PETITION = "petition"
    BEHIND = "behind"
    DECLARATION = "declaration"
    LOCAL = "local"
    APART = "apart"


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the table: a form, and the question on which it hangs."""

    title: str
    why: str
    goes: str
    when: str
    form: str = ""
    authority: str = ""
    only_if: str = ""
    label: str = ""
    ask: str = ""
    stack: str = ""
    served: bool = False
    signed: bool = False
    later: bool = False

    @property
    def words(self) -> tuple[str, ...]:
        """Everything in it that a person sees, for translators."""
        texts = (self.title, self.why, self.only_if, self.ask)
        return tuple(text for text in texts if text)


@dataclass(frozen=True, slots=True)
class FormNeeded:
    """One form to get.

    `form` is its number; empty where only the court knows it, or where it is a paper of the filer's own.
    `only_if` names the case in which it is needed. `copy_served` says that the other side gets a copy
    of what is filed, `signed` that the filer signs it, and `later` that it is no part of the first
    filing. `label` is what the items call it that send their reader there; `stack` its place in the stack
    for the clerk; `ask` the question to the clerk. `edition` is the date to look for on the sheet, in
    words; `edition_on` is that day, None where it is not known; `certainty` says how sure it is, and
    `edition_note` what may change.
    """

    form: str
    title: str
    why: str
    goes: Goes
    authority: str
    only_if: str
    label: str
    ask: str
    stack: Stack | None
    copy_served: bool
    signed: bool
    later: bool
    edition: str = ""
    edition_on: date | None = None
    edition_note: str = ""
    certainty: Certainty = Certainty.UNCONFIRMED


def forms_needed(case: Case, on: date, filing: Filing = Filing.PETITION) -> tuple[FormNeeded, ...]:
    """The forms for a filing on the day `on`, in the order in which they are used."""
    return tuple(_needed(row, on) for row in table(filing) if question(row.when)(case, on))


@cache
def table(filing: Filing = Filing.PETITION) -> tuple[Row, ...]:
    """Every row of the table of that filing, checked; none where its file has no table."""
    path = FOLDER / f"{filing}.yaml"
    told = read_file(path).get("forms")
    rows = Place(path.name).into("forms").rows(told) if told else ()
    return tuple(_row(place, shape) for place, shape in rows)


def _row(place: Place, shape: Any) -> Row:
    row = built(Row, place, place.mapping(shape))
    for name, values in (("goes", Goes), ("stack", Stack)):
        if told := getattr(row, name):
            place.into(name).one_of(values, told)
    question(row.when)
    if row.goes == Goes.ASK and row.form and not row.ask:
        raise place.into("ask").error("a form to ask about needs the question")
    return row


def _needed(row: Row, on: date) -> FormNeeded:
    return FormNeeded(
        form=row.form,
        title=_(row.title),
        why=_(row.why),
        goes=Goes(row.goes),
        authority=_(row.authority) if row.authority else "",
        only_if=_(row.only_if) if row.only_if else "",
        label=_(row.label) or row.form or _(row.title),
        ask=_(row.ask) if row.ask else "",
        stack=Stack(row.stack) if row.stack else None,
        copy_served=row.served,
        signed=row.signed,
        later=row.later,
        **dict(_edition(row.form, on)),
    )


def _edition(form: str, on: date) -> Iterator[tuple[str, Any]]:
    """What is known of the edition of that form on the day, by the names of the fields that hold it."""
    if not form:
        return
    told = _edition_figure(form, on)
    day: date | None = told.value["edition"] if told else None
    if told:
        yield "edition_note", _(told.note)
        yield "certainty", told.certainty
    yield "edition_on", day
    if told is None or day is None:
        yield "edition", _("We do not know. Ask the court.")
    else:
        as_far_as_known = _("{date}, as far as we know").format(date=as_printed(day))
        yield "edition", as_printed(day) if told.value["verified_against_pdf"] else as_far_as_known


def _edition_figure(form: str, on: date) -> FigureValue | None:
    try:
        return figure(f"form_edition.{form}", on)
    except (UnknownFigureError, FigureNotInForce):
        return None
