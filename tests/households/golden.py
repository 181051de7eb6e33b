"""What each invented household must get: every item, every finding, and the words of its packet.

    python tests/households/golden.py     write the expected files anew; then read the difference

The expected files are read by people: a change in one is a change in what a filer is told.
"""

import shlex
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from functools import cache
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

from firstpaper.cli.given.events import named_event, with_details
from firstpaper.cli.words.agenda import agenda_text
from firstpaper.facts import Case
from firstpaper.intake import facts_from
from firstpaper.law.agenda import agenda
from firstpaper.packet import Packet, Stage, build
from firstpaper.packet.brief import Brief
from firstpaper.packet.pictures.words import text_of
from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet

HERE = Path(__file__).parent
EXPECTED = HERE / "expected"
HOUSEHOLDS = HERE.parents[1] / "demo" / "households"


@dataclass(frozen=True)
class Household:
    """An invented household on one day. `recorded` is what was typed to `record` by then."""

    name: str
    on: date
    recorded: tuple[str, ...] = ()

    @property
    def case(self) -> Case:
        """Its facts, read as a fact file is read, and then its record, as the command reads it."""
        return _case(self)

    @property
    def expected(self) -> Path:
        """The folder of its expected files."""
        return EXPECTED / f"{self.name}-{self.on.isoformat()}"

    def __str__(self) -> str:
        return f"{self.name} on {self.on}"


@cache
def _case(household: Household) -> Case:
    text = (HOUSEHOLDS / f"{household.name}.yaml").read_text("utf-8")
    case, problems = facts_from(text, household.on)
    assert not problems, problems
    assert case is not None
    for typed in household.recorded:
        event, *details = shlex.split(typed)
        case = with_details(case, named_event(event), details, household.on)
    return case


@cache
def packet(one: Household) -> Packet:
    """Its whole packet."""
    return build(one.case, one.on)


@cache
def later_part(one: Household) -> Packet:
    """The part of its packet for what follows the filing."""
    return build(one.case, one.on, stages=[Stage.LATER])


def households() -> tuple[Household, ...]:
    """Every household on each of its filing days."""
    return tuple(Household(one["name"], on) for one in _index() for on in one["on"])


def followed() -> tuple[Household, ...]:
    """Every household that is followed past its filing, on each of those days."""
    return tuple(each for one in _index() for each in _since(one["name"], one.get("since", ())))


def _index() -> list[dict[str, Any]]:
    index: list[dict[str, Any]] = tomllib.loads((HERE / "index.toml").read_text("utf-8"))["household"]
    return index


def _since(name: str, days: Iterable[dict[str, Any]]) -> Iterator[Household]:
    recorded: tuple[str, ...] = ()
    for day in days:
        recorded += tuple(day["record"])
        yield Household(name, day["on"], recorded)


def texts(household: Household) -> dict[str, str]:
    """What the household gets, as text files by name."""
    if household.recorded:
        later = later_part(household)
        case, on = later.brief.case, household.on
        return {
            "dates.txt": agenda_text(case, agenda(case, on), everything=True) + "\n",
            "packet.txt": "\n\n".join(map(_shown, later.sheets)) + "\n",
        }
    whole = packet(household)
    return {
        "items.txt": "\n".join(_items(whole.brief)) + "\n",
        "findings.txt": "\n".join(_findings(whole.brief)) + "\n",
        "packet.txt": "\n\n".join(map(_shown, whole.sheets)) + "\n",
    }


def _shown(sheet: Sheet) -> str:
    """The words of a sheet, and those of its pictures after them."""
    pictures = (text_of(chart) for chart in sheet.pictures.values())
    return "\n".join([*blocks(render(sheet.template, sheet.values)), *pictures])


def _items(brief: Brief) -> Iterator[str]:
    for answer in brief.items:
        value = " / ".join(answer.value.splitlines())
        end = f" | {value}" if value else ""
        yield f"{answer.item:10} {answer.action.value:6} {answer.label}{end}"


def _findings(brief: Brief) -> Iterator[str]:
    for one in brief.findings:
        yield f"{one.weight.value} {one.id} {one.outcome.value} ({one.certainty.value})"
        yield from (f"    {line}" for line in (one.says, one.do) if line)
        yield from (f"    {name} = {day}" for name, day in one.dates.items())


class _Words(HTMLParser):
    """The words of a sheet, one block a line."""

    BLOCKS = frozenset({"h1", "h2", "h3", "p", "li", "tr", "br"})

    def __init__(self) -> None:
        super().__init__()
        self.lines = [""]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in self.BLOCKS:
            self.lines.append("# " if tag in ("h1", "h2") else "")
        if tag == "tick":
            self.lines[-1] += "[x] " if ("marked", None) in attrs else "[ ] "
        if tag == "line":
            self.lines[-1] += "______ "

    def handle_data(self, data: str) -> None:
        self.lines[-1] += data


def blocks(markup: str) -> list[str]:
    """The blocks of words of a sheet, each on one line."""
    reader = _Words()
    reader.feed(markup)
    return [line for line in (" ".join(line.split()) for line in reader.lines) if line]


def write() -> None:
    """Write the expected files anew."""
    for household in (*households(), *followed()):
        household.expected.mkdir(parents=True, exist_ok=True)
        for name, text in texts(household).items():
            (household.expected / name).write_text(text, "utf-8")


if __name__ == "__main__":
    write()
