"""People, one a line: ``Rosa Vega, grandmother, 12 Elm Street, Delano, CA 93215``."""

import re

from pydantic import ValidationError

from firstpaper.facts.uccjea import Person
from firstpaper.intake.reading.periods import each_line
from firstpaper.intake.refusals import refusal

_BEGINS_AN_ADDRESS = r"(?i)(?:\d|p\.? ?o\.? box\b|box\b)"


def read_people(text: str) -> tuple[Person, ...]:
    """The people, in the order typed. Raises AnswerRefused naming the line that does not fit."""
    return each_line(text, _person)


def person(name: str, relation: str, address: str) -> Person:
    """The person so described. Raises AnswerRefused where a piece does not fit."""
    try:
        return Person(name=name, relation=relation, address=address)
    except ValidationError as error:
        raise refusal(error) from None


def _person(line: str) -> Person:
    """The name comes first, then what the person is to the children, where that is no address."""
    name, *pieces = (piece.strip() for piece in line.split(","))
    rest = [piece for piece in pieces if piece]
    has_relation = bool(rest) and not re.match(_BEGINS_AN_ADDRESS, rest[0])
    relation, address = (rest[0], rest[1:]) if has_relation else ("", rest)
    return person(name, relation, ", ".join(address))
