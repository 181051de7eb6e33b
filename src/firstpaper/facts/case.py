"""One household's facts, and how one of them is read or replaced by its key.

A key is the path of a fact: ``petitioner.name``, or ``child.2.name`` for the second child. People,
question bank, fact files and findings all use the same keys.
"""

from typing import Annotated, Any, Self, get_args, get_origin

from pydantic import BaseModel, Field

from firstpaper.facts.children import Child, Children, Custody
from firstpaper.facts.income import Income
from firstpaper.facts.matter import Court, Dates, Matter, Residences
from firstpaper.facts.model import Facts
from firstpaper.facts.people import People, Petitioner, Respondent, Safety
from firstpaper.facts.record import Record
from firstpaper.facts.requests import Grounds, Property, Requests, Signing, Support
from firstpaper.facts.schedule import MOST_LISTED, Asset, Debt, Schedule
from firstpaper.facts.screens import FeeWaiver, Joint, Shortcuts, Summary

_Listed = Field(max_length=MOST_LISTED)


class Case(Facts):
    """What the filer told us. No law, and no default that decides anything."""

    safety: Safety = Safety()
    matter: Matter = Matter()
    petitioner: Petitioner = Petitioner()
    respondent: Respondent = Respondent()
    people: People = People()
    court: Court = Court()
    dates: Dates = Dates()
    residence: Residences = Residences()
    children: Children = Children()
    child: tuple[Child, ...] = ()
    grounds: Grounds = Grounds()
    custody: Custody = Custody()
    support: Support = Support()
    income: Income = Income()
    property: Property = Property()
    schedule: Schedule = Schedule()
    asset: Annotated[tuple[Asset, ...], _Listed] = ()
    debt: Annotated[tuple[Debt, ...], _Listed] = ()
    requests: Requests = Requests()
    signing: Signing = Signing()
    shortcuts: Shortcuts = Shortcuts()
    joint: Joint = Joint()
    summary: Summary = Summary()
    waiver: FeeWaiver = FeeWaiver()
    record: Record = Record()

    def fact(self, key: str) -> Any:
        """The fact at `key`; None where its place does not exist yet. KeyError for an unknown key."""
        here: Any = self
        for part in key.split("."):
            if isinstance(here, tuple):
                index = _index(part)
                if index >= len(here):
                    return None
                here = here[index]
            elif isinstance(here, BaseModel) and part in type(here).model_fields:
                here = getattr(here, part)
            else:
                raise KeyError(key)
        return here

    def with_fact(self, key: str, value: Any) -> Self:
        """A case in which the fact at `key` is `value`, checked by its model.

        Raises pydantic.ValidationError where the value does not fit, KeyError for an unknown key.
        """
        replaced = _replaced(self, key.split("."), value, key)
        assert isinstance(replaced, type(self))
        return replaced


def _replaced(here: Any, path: list[str], value: Any, key: str) -> Any:
    part, rest = path[0], path[1:]
    if not isinstance(here, BaseModel) or part not in type(here).model_fields:
        raise KeyError(key)
    model, inner = type(here), value
    if rest:
        row = row_model(model, part)
        told = getattr(here, part)
        inner = _with_row(told, row, rest, value, key) if row else _replaced(told, rest, value, key)
    shallow = {name: getattr(here, name) for name in here.model_fields_set}
    return model.model_validate({**shallow, part: inner})


def _with_row(rows: tuple[Facts, ...], row: type[Facts], path: list[str], value: Any, key: str) -> Any:
    """The rows with one of them replaced, and empty rows before it where they did not exist yet."""
    index, rest = _index(path[0]), path[1:]
    padded = [*rows, *(row() for _ in range(index + 1 - len(rows)))]
    padded[index] = _replaced(padded[index], rest, value, key) if rest else value
    return tuple(padded)


def row_model(model: type[BaseModel], name: str) -> type[Facts] | None:
    """The model of one row, where the field itself holds rows of facts (the children, what is owned)."""
    annotation = model.model_fields[name].annotation
    row = get_args(annotation)[0] if get_origin(annotation) is tuple else None
    return row if isinstance(row, type) and issubclass(row, Facts) else None


def _index(part: str) -> int:
    if not part.isdecimal() or not 1 <= int(part) <= 99:
        raise KeyError(part)
    return int(part) - 1
