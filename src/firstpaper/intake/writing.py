"""The facts of a case as a file of facts: what is read back from it is the same case.

Every answer that was told is written, also one that does not count now. What happened after the filing is
recorded, not told, and is not in it.
"""

from typing import Any

import yaml

from firstpaper.facts import Case, Day, DontKnow
from firstpaper.facts.children import Home
from firstpaper.facts.matter import Period
from firstpaper.facts.model import Facts
from firstpaper.facts.people import Address
from firstpaper.facts.uccjea import Person
from firstpaper.intake.as_typed import as_typed
from firstpaper.intake.differing import told_keys
from firstpaper.intake.engine import Asked, asking
from firstpaper.intake.kinds import AnswerKind, row_of

LONGEST = 10_000
_AS_LISTS = (AnswerKind.SEVERAL, AnswerKind.LINES, AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.PEOPLE)


def facts_text(case: Case) -> str:
    """The file: a line for each answer, a blank line between groups."""
    lines: list[str] = []
    before = None
    for key in told_keys(case):
        value, asked = case.fact(key), asking(key, Case.nothing())
        if value is None or asked is None:
            continue
        group = row_of(key) or key.partition(".")[0]
        lines += [""] if lines and group != before else []
        lines.append(f"{key}: {_in_yaml(_written(asked, value))}")
        before = group
    return "\n".join([*lines, ""])


def _written(asked: Asked, value: Any) -> Any:
    """The answer as plain data, which the reader of a file of facts takes for it."""
    if isinstance(value, DontKnow):
        return value.value
    if isinstance(value, Day):
        return day_text(value)
    if isinstance(value, Address):
        return _parts(value, "street", "city", "state", "zip")
    if isinstance(value, tuple) and asked.kind in _AS_LISTS:
        return [_one(each) for each in value]
    if isinstance(value, tuple) and not value:
        return []
    return as_typed(asked, value)


def _one(value: Any) -> Any:
    if isinstance(value, Period):
        return {**_span(value), **({"why": value.why} if value.why else {})}
    if isinstance(value, Home):
        return {**_span(value), **_parts(value, "place", "state", "with_whom")}
    if isinstance(value, Person):
        return _parts(value, "name", "relation", "address")
    return str(value)


def _span(value: Period | Home) -> dict[str, str]:
    end = {"end": day_text(value.end)} if value.end else {}
    return {"start": day_text(value.start), **end}


def _parts(value: Facts, *names: str) -> dict[str, str]:
    told = ((name, getattr(value, name)) for name in names)
    return {name: text for name, text in told if text}


def day_text(day: Day) -> str:
    """A day with the year first, so that it cannot be mistaken; a word of doubt before it."""
    text = str(day).removesuffix("?")
    return f"about {text}" if day.unsure else text


def _in_yaml(value: Any) -> str:
    text: str = yaml.dump(value, Dumper=_Dumper, default_flow_style=True, allow_unicode=True, width=LONGEST)
    return text.removesuffix("...\n").strip()


class _Dumper(yaml.SafeDumper):
    """Text without quotes only where no reader could take it for anything else."""


def _text(dumper: yaml.SafeDumper, text: str) -> yaml.ScalarNode:
    plain = text.replace("_", "").replace("-", "").isalnum() and text.isascii()
    return dumper.represent_scalar("tag:yaml.org,2002:str", text, style=None if plain else '"')


_Dumper.add_representer(str, _text)
