"""Which row is meant by one that carries no number: the one that is called the same, or a new one.

So a list that is entered twice adds nothing. A thing is known by its kind, its words and the last digits of
an account, a child by its name. Only what both sides tell is compared.
"""

from collections.abc import Collection, Mapping
from datetime import date
from hashlib import sha256
from typing import Any

from firstpaper.facts import Case
from firstpaper.intake.engine import asking
from firstpaper.intake.reading import read_answer
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold

NAMING: Mapping[str, tuple[str, ...]] = {
    "child": ("name",),
    "asset": ("kind", "words", "last_four"),
    "debt": ("kind", "words", "last_four"),
}
"""The facts by which a row is known from the others of its group."""

ID_BEGINS, ID_LETTERS = "r", 7
"""A mark begins with a letter of no number: of 01234567 or 12e45678 a spreadsheet would make another one."""


def called(row: Any, group: str) -> dict[str, str]:
    """What is told of a row by which it is known."""
    told = ((name, getattr(row, name, None)) for name in NAMING[group])
    return {name: fold(str(value)) for name, value in told if value not in (None, "")}


def told_names(texts: Mapping[str, str], group: str, today: date) -> dict[str, str]:
    """The same of a row that is only typed yet: each text as it would be kept."""
    told = ((name, texts[name]) for name in NAMING[group] if texts.get(name, "").strip())
    return {name: fold(_as_kept(f"{group}.1.{name}", text, today)) for name, text in told}


def _as_kept(key: str, text: str, today: date) -> str:
    asked = asking(key, Case.nothing())
    assert asked is not None
    try:
        return str(read_answer(asked, text, today, written=True))
    except AnswerRefused:  # told with its place when the row itself is read
        return text


def same_row(case: Case, group: str, names: Mapping[str, str], taken: Collection[int]) -> int | None:
    """The number of the row that is called so and is not taken yet; None where there is none."""
    if not names:
        return None
    for number, row in enumerate(case.fact(group), 1):
        if number not in taken and _are_one(called(row, group), names):
            return number
    return None


def ids(case: Case, group: str) -> list[str]:
    """A short mark for each row, by what it is called now. The same things have the same marks, always."""
    seen: dict[str, int] = {}
    marks = []
    for row in case.fact(group):
        text = "|".join(f"{name}={words}" for name, words in called(row, group).items())
        seen[text] = seen.get(text, 0) + 1
        mark = sha256(f"{group}|{text}|{seen[text]}".encode()).hexdigest()
        marks.append(ID_BEGINS + mark[:ID_LETTERS])
    return marks


def _are_one(there: Mapping[str, str], told: Mapping[str, str]) -> bool:
    """Whether two rows are called the same. A kind alone says too little where the other one has a name."""
    both = there.keys() & told.keys()
    if not both or any(there[name] != told[name] for name in both):
        return False
    return both != {"kind"} or there.keys() == told.keys()
