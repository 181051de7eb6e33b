"""One household's facts, and how one of them is read or replaced by its key.

A key is the path of a fact: ``petitioner.name``, or ``child.2.name`` for the second child. People,
question bank, fact files and findings all use the same keys.
"""

from typing import Any, Self

from pydantic import BaseModel

from firstpaper.facts.children import Child, Children, Custody
from firstpaper.facts.matter import Court, Dates, Matter, Residences
from firstpaper.facts.model import Facts
from firstpaper.facts.people import People, Petitioner, Respondent, Safety
from firstpaper.facts.record import Record
from firstpaper.facts.requests import Grounds, Property, Requests, Signing, Support


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
    property: Property = Property()
    requests: Requests = Requests()
    signing: Signing = Signing()
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
    if isinstance(here, tuple):
        index = _index(part)
        padded = list(here) + [Child() for _ in range(index + 1 - len(here))]
        padded[index] = _replaced(padded[index], rest, value, key) if rest else value
        return tuple(padded)
    if not isinstance(here, BaseModel) or part not in type(here).model_fields:
        raise KeyError(key)
    inner = _replaced(getattr(here, part), rest, value, key) if rest else value
    model = type(here)
    shallow = {name: getattr(here, name) for name in here.model_fields_set}
    return model.model_validate({**shallow, part: inner})


def _index(part: str) -> int:
    if not part.isdecimal() or not 1 <= int(part) <= 99:
        raise KeyError(part)
    return int(part) - 1
