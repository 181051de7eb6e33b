"""Filings: which official forms we help to fill in for each, and in which order it is worth doing.

`filings/*.yaml` has one file a filing, and each form answers for itself in `<form>/form.py`. Its
`form(case, on)` gives its copies for a case: none where the case does not use it, two where it is used twice.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from functools import cache
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.data_files import Place, built, read_file
from firstpaper.forms.edition import slug
from firstpaper.forms.filled import FilledForm

if TYPE_CHECKING:
    from firstpaper.facts import Case

FOLDER = Path(__file__).with_name("filings")
Maker = Callable[["Case", date], tuple[FilledForm, ...]]


class Stage(StrEnum):
    """Where a case stands: on the way to its filing, or past it."""

    FIRST = "first"
    LATER = "later"


class Filing(StrEnum):
    """What is filed together; the name of its file."""

    PETITION = "petition"
    JOINT = "joint_petition"
    SERVICE = "service"


@dataclass(frozen=True, slots=True)
class Plan:
    """One filing: its stage, the form that says what it asks for, and every form to fill in, in order."""

    stage: Stage
    main: str
    fills: tuple[str, ...]


def filled_forms(case: "Case", on: date, filing: Filing = Filing.PETITION) -> tuple[FilledForm, ...]:
    """The forms of one filing for one case on the day `on`; `case` holds standing facts."""
    return tuple(form for name in plan(filing).fills for form in maker(name)(case, on))


def every_form() -> tuple[str, ...]:
    """The number of every form that we help to fill in, filing by filing."""
    return tuple(dict.fromkeys(name for filing in Filing for name in plan(filing).fills))


@cache
def plan(filing: Filing) -> Plan:
    """The file of that filing, checked; DataFileError where a form has nobody to answer for it."""
    path = FOLDER / f"{filing}.yaml"
    told, place = read_file(path), Place(path.name)
    told.pop("forms", None)
    fills = tuple(_fills(place.into("fills"), place.into("fills").sequence(told.pop("fills", None))))
    stage = place.into("stage").one_of(Stage, told.pop("stage", None))
    found = built(Plan, place, told, fills=fills, stage=stage)
    if found.main not in fills:
        raise place.into("main").error("the main form must be one of those to fill in")
    return found


def maker(form: str) -> Maker:
    """What answers for a form; LookupError where nothing does."""
    try:
        found: Maker = import_module(f"firstpaper.forms.{slug(form)}.form").form
    except ModuleNotFoundError as missing:
        raise LookupError(f"nothing answers for form {form}") from missing
    return found


def _fills(place: Place, names: list[str]) -> Iterator[str]:
    for name in names:
        try:
            maker(name)
        except LookupError as missing:
            raise place.into(name).error(str(missing)) from missing
        yield name
