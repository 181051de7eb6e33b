"""A word of its own planted in every text of a case, and what each of them may be seen in.

`PLACES` names every fact that is typed as words. A new one fails the tests until it has a line here.
"""

from collections.abc import Iterable, Iterator
from contextlib import suppress
from enum import Enum
from functools import reduce
from types import UnionType
from typing import Annotated, Any, Union, get_args, get_origin

from pydantic import BaseModel, ValidationError

from firstpaper.facts import Case
from firstpaper.facts.model import Facts

ROWS = frozenset({"child", "asset", "debt"})
MANY = frozenset(
    {"other_names", "documents", "separate_petitioner", "separate_respondent", "community_items"}
    | {"claims", "case_words", "order_words"}
)
CONSONANTS, VOWELS = "bdfgklmnprstvz", "aeiou"


class Place(Enum):
    """Where the words of a fact may be seen while addresses are kept off the papers."""

    NOWHERE = "in nothing that leaves the case file"
    TOP_OF_THE_FORMS = "in the box at the top of the forms, and nowhere else"
    PRIVATE_PAGES = "on the private pages, never on one that is filed or served"
    PAPERS = "on the papers"


PLACES = {
    "asset.*.documents": Place.PRIVATE_PAGES,
    "asset.*.last_four": Place.PAPERS,
    "asset.*.note": Place.PRIVATE_PAGES,
    "asset.*.value_how": Place.PRIVATE_PAGES,
    "asset.*.words": Place.PAPERS,
    "child.*.address.city": Place.NOWHERE,
    "child.*.address.state": Place.NOWHERE,
    "child.*.address.street": Place.NOWHERE,
    "child.*.address.zip": Place.NOWHERE,
    "child.*.birthplace": Place.PAPERS,
    "child.*.homes.place": Place.NOWHERE,
    "child.*.homes.state": Place.PAPERS,
    "child.*.homes.with_whom": Place.NOWHERE,
    "child.*.name": Place.PAPERS,
    "court.address.city": Place.PAPERS,
    "court.address.state": Place.PAPERS,
    "court.address.street": Place.PAPERS,
    "court.address.zip": Place.PAPERS,
    "court.branch": Place.PAPERS,
    "court.county": Place.PAPERS,
    "custody.other_words": Place.PAPERS,
    "custody.plan": Place.PAPERS,
    "dates.back_together.why": Place.PAPERS,
    "dates.married_place": Place.PAPERS,
    "debt.*.documents": Place.PRIVATE_PAGES,
    "debt.*.last_four": Place.PAPERS,
    "debt.*.note": Place.PRIVATE_PAGES,
    "debt.*.words": Place.PAPERS,
    "grounds.filed_for": Place.PAPERS,
    "matter.case_number": Place.PAPERS,
    "matter.other_case_words": Place.PAPERS,
    "matter.registration": Place.PAPERS,
    "people.language": Place.PAPERS,
    "petitioner.email": Place.PAPERS,
    "petitioner.mailing.city": Place.TOP_OF_THE_FORMS,
    "petitioner.mailing.state": Place.TOP_OF_THE_FORMS,
    "petitioner.mailing.street": Place.TOP_OF_THE_FORMS,
    "petitioner.mailing.zip": Place.TOP_OF_THE_FORMS,
    "petitioner.name": Place.PAPERS,
    "petitioner.other_names": Place.PAPERS,
    "petitioner.phone": Place.PAPERS,
    "property.community_items": Place.PAPERS,
    "property.separate_petitioner": Place.PAPERS,
    "property.separate_respondent": Place.PAPERS,
    "record.amended_in": Place.PAPERS,
    "record.amends": Place.PAPERS,
    "record.calendar_id": Place.PAPERS,
    "record.case_number": Place.PAPERS,
    "record.court_closed.why": Place.PAPERS,
    "record.time_left_out.why": Place.PAPERS,
    "requests.former_name": Place.PAPERS,
    "requests.other": Place.PAPERS,
    "residence.exception.wedding_county": Place.PAPERS,
    "residence.petitioner.absences.why": Place.PAPERS,
    "residence.petitioner.lives_in": Place.PAPERS,
    "residence.petitioner.own_county": Place.PAPERS,
    "residence.petitioner.previous_county": Place.PAPERS,
    "residence.respondent.absences.why": Place.PAPERS,
    "residence.respondent.lives_in": Place.PAPERS,
    "residence.respondent.own_county": Place.PAPERS,
    "residence.respondent.previous_county": Place.PAPERS,
    "respondent.mailing.city": Place.PAPERS,
    "respondent.mailing.state": Place.PAPERS,
    "respondent.mailing.street": Place.PAPERS,
    "respondent.mailing.zip": Place.PAPERS,
    "respondent.name": Place.PAPERS,
    "respondent.other_names": Place.PAPERS,
    "support.child_other": Place.PAPERS,
    "support.grown_who": Place.PAPERS,
    "support.other": Place.PAPERS,
    "uccjea.case_words": Place.PAPERS,
    "uccjea.claims": Place.PAPERS,
    "uccjea.order_words": Place.PAPERS,
    "uccjea.people.address": Place.NOWHERE,
    "uccjea.people.name": Place.PAPERS,
    "uccjea.people.relation": Place.PAPERS,
}


def keys(*places: Place) -> tuple[str, ...]:
    """The facts whose words may be seen just there."""
    return tuple(key for key, place in PLACES.items() if place in places)


def planted(case: Case, wanted: Iterable[str]) -> Case:
    """The case with its own word in each of these facts; of rows in the last, which is the newest told.

    A fact that takes only words of a list, such as a county, keeps what it had.
    """
    for key in wanted:
        data = case.model_dump(mode="json", exclude_unset=True)
        _put(data, key.replace("*.", "").split("."), secret(key))
        with suppress(ValidationError):
            case = Case.model_validate(data)
    return case


def _put(data: dict[str, Any], path: list[str], word: str) -> None:
    name, rest = path[0], path[1:]
    if not rest:
        data[name] = [word] if isinstance(data.get(name), list) or name in MANY else word
        return
    inner = data.setdefault(name, [{}] if name in ROWS else {})
    if inner and inner != "don't know":
        _put(inner[-1] if isinstance(inner, list) else inner, rest, word)
    elif isinstance(inner, dict):
        _put(inner, rest, word)


def texts() -> Iterator[str]:
    """The key of every fact that is typed as words, with a star for the number of a row."""
    yield from _texts(Case, "")


def secret(key: str) -> str:
    """A word for this fact that stands nowhere else, easy to find again."""
    number = reduce(lambda total, sign: (total * 131 + ord(sign)) % 9_999_991, key, 7)
    letters = []
    for turn in range(6):
        number, at = divmod(number, len(CONSONANTS))
        letters.append(CONSONANTS[at] + VOWELS[(at + turn) % len(VOWELS)])
    return "".join(letters).capitalize()


def _texts(model: type[BaseModel], prefix: str) -> Iterator[str]:
    for name, field in model.model_fields.items():
        for kind, many in _kinds(field.annotation):
            star = ".*" if many and not prefix and isinstance(kind, type) and issubclass(kind, Facts) else ""
            if kind is str:
                yield f"{prefix}{name}"
            elif isinstance(kind, type) and issubclass(kind, Facts):
                yield from _texts(kind, f"{prefix}{name}{star}.")


def _kinds(annotation: Any, many: bool = False) -> Iterator[tuple[Any, bool]]:
    origin = get_origin(annotation)
    if origin is None:
        yield annotation, many
    elif origin in (Union, UnionType, tuple):
        for inner in get_args(annotation):
            yield from _kinds(inner, many or origin is tuple)
    elif origin is Annotated:
        yield from _kinds(get_args(annotation)[0], many)
