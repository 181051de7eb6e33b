"""One household's facts, and how one of them is read or replaced by its key.

A key is the path of a fact: ``petitioner.name``, or ``child.2.name`` for the second child. People,
question bank, fact files and findings all use the same keys.
"""

from collections.abc import Callable, Mapping
from functools import cache
from typing import Annotated, Any, Self, cast, get_args, get_origin

from pydantic import BaseModel, Field, ValidationError

from firstpaper.facts.children import Child, Children, Custody
from firstpaper.facts.income import Income
from firstpaper.facts.matter import Court, Dates, Matter, Residences
from firstpaper.facts.model import Facts
from firstpaper.facts.people import People, Petitioner, Respondent, Safety
from firstpaper.facts.record import Record
from firstpaper.facts.requests import Grounds, Property, Requests, Signing, Support
from firstpaper.facts.schedule import MOST_LISTED, Asset, Debt, Schedule
from firstpaper.facts.screens import FeeWaiver, Joint, Shortcuts, Summary
from firstpaper.facts.uccjea import CustodyDeclaration

_Listed = Field(max_length=MOST_LISTED)


class Case(Facts):
    """What the filer told us. No law, and no default that decides anything."""

    safety: Safety = Safety.nothing()
    matter: Matter = Matter.nothing()
    petitioner: Petitioner = Petitioner.nothing()
    respondent: Respondent = Respondent.nothing()
    people: People = People.nothing()
    court: Court = Court.nothing()
    dates: Dates = Dates.nothing()
    residence: Residences = Residences.nothing()
    children: Children = Children.nothing()
    child: tuple[Child, ...] = ()
    grounds: Grounds = Grounds.nothing()
    custody: Custody = Custody.nothing()
    support: Support = Support.nothing()
    income: Income = Income.nothing()
    property: Property = Property.nothing()
    schedule: Schedule = Schedule.nothing()
    asset: Annotated[tuple[Asset, ...], _Listed] = ()
    debt: Annotated[tuple[Debt, ...], _Listed] = ()
    requests: Requests = Requests.nothing()
    signing: Signing = Signing.nothing()
    shortcuts: Shortcuts = Shortcuts.nothing()
    joint: Joint = Joint.nothing()
    summary: Summary = Summary.nothing()
    waiver: FeeWaiver = FeeWaiver.nothing()
    uccjea: CustodyDeclaration = CustodyDeclaration.nothing()
    record: Record = Record.nothing()

    @classmethod
    def told(cls, facts: Mapping[str, Any]) -> Self:
        """A case from stored facts, checked group by group, so that a group not told costs nothing.

        Raises pydantic.ValidationError for facts that do not fit or that no model knows.
        """
        groups = {name: group for name in cls.model_fields if (group := _group_model(cls, name))}
        try:
            checked: dict[str, Any] = {
                name: groups[name].model_validate(told) for name, told in facts.items()
            }
        except (KeyError, AttributeError, ValidationError):  # rows, no facts at all, or one that does not fit
            return cls.model_validate(facts)
        return cast(Self, cls.model_construct(_fields_set=set(checked), **checked))

    def fact(self, key: str) -> Any:
        """The fact at `key`; None where its place does not exist yet. KeyError for an unknown key."""
        here: Any = self
        for part in key.split("."):
            if part in _fields(here.__class__):
                here = getattr(here, part)
            elif isinstance(here, tuple):
                index = _index(part)
                if index >= len(here):
                    return None
                here = here[index]
            else:
                raise KeyError(key)
        return here

    def with_fact(self, key: str, value: Any) -> Self:
        """A case in which the fact at `key` is `value`, checked by its model.

        Raises pydantic.ValidationError where the value does not fit, KeyError for an unknown key.
        """
        return self._with(key, value, _checked)

    def supposing(self, key: str, value: Any) -> Self:
        """The same for a value of ours, which fits: no model is built to check it."""
        return self._with(key, value, _unchecked)

    def supposing_all(self, answers: Mapping[str, Any]) -> Self:
        """The same for several at once, each outside the numbered rows. Of a group one copy is made."""
        return cast(Self, _supposed(self, answers))

    def _with(self, key: str, value: Any, put: "_Put") -> Self:
        try:
            replaced = _replaced(self, key.split("."), value, put)
        except KeyError:
            raise KeyError(key) from None
        assert isinstance(replaced, type(self))
        return replaced


@cache
def _fields(kind: type) -> frozenset[str]:
    """The names of its fields, none where it is no model; asked for thousands of times in one check."""
    return frozenset(kind.model_fields if issubclass(kind, BaseModel) else ())


_Put = Callable[[BaseModel, str, Any], BaseModel]
"""Puts a value into the facts that it belongs to."""


def _replaced(here: Any, path: list[str], value: Any, put: _Put) -> Any:
    part, rest = path[0], path[1:]
    if not isinstance(here, BaseModel) or part not in type(here).model_fields:
        raise KeyError(part)
    if not rest:
        return put(here, part, value)
    row = row_model(type(here), part)
    told = getattr(here, part)
    if not row:
        return _unchecked(here, part, _replaced(told, rest, value, put))
    return put(here, part, _with_row(told, row, rest, value, put))


def _checked(here: BaseModel, part: str, value: Any) -> BaseModel:
    """The facts with one replaced, checked by their model; groups of facts around it need no check."""
    shallow = {name: getattr(here, name) for name in here.model_fields_set}
    return type(here).model_validate({**shallow, part: value})


def _unchecked(here: BaseModel, part: str, value: Any) -> BaseModel:
    return here.model_copy(update={part: value})


def _supposed(here: BaseModel, answers: Mapping[str, Any]) -> BaseModel:
    update: dict[str, Any] = {}
    inside: dict[str, dict[str, Any]] = {}
    for key, value in answers.items():
        part, _dot, rest = key.partition(".")
        if rest:
            inside.setdefault(part, {})[rest] = value
        else:
            update[part] = value
    groups = {part: _supposed(getattr(here, part), told) for part, told in inside.items()}
    return here.model_copy(update=update | groups)


def _with_row(rows: tuple[Facts, ...], row: type[Facts], path: list[str], value: Any, put: _Put) -> Any:
    """The rows with one of them replaced, and empty rows before it where they did not exist yet."""
    index, rest = _index(path[0]), path[1:]
    padded = [*rows, *(row() for _ in range(index + 1 - len(rows)))]
    padded[index] = _replaced(padded[index], rest, value, put) if rest else value
    return tuple(padded)


def row_model(model: type[BaseModel], name: str) -> type[Facts] | None:
    """The model of one row, where the field itself holds rows of facts (the children, what is owned)."""
    annotation = model.model_fields[name].annotation
    row = get_args(annotation)[0] if get_origin(annotation) is tuple else None
    return row if isinstance(row, type) and issubclass(row, Facts) else None


def _group_model(model: type[BaseModel], name: str) -> type[Facts] | None:
    group = model.model_fields[name].annotation
    return group if isinstance(group, type) and issubclass(group, Facts) else None


def _index(part: str) -> int:
    if not part.isdecimal() or not 1 <= int(part) <= 99:
        raise KeyError(part)
    return int(part) - 1
