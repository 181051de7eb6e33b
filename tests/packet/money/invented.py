"""Invented households with money, and what their private pages say, as text.

python -m tests.packet.money.invented     write the expected pages anew; then read the difference
"""

from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path

import yaml

from firstpaper.facts import Case
from firstpaper.packet.money import MoneyPages, money_pages
from firstpaper.packet.pictures.words import text_of
from firstpaper.packet.templates import render
from firstpaper.packet.views.sheet import Sheet
from tests.households.golden import blocks

HERE = Path(__file__).parent
ON = date(2026, 11, 25)


@dataclass(frozen=True)
class Household:
    """An invented household."""

    name: str

    @property
    def case(self) -> Case:
        """Its facts."""
        facts = (HERE / "households" / f"{self.name}.yaml").read_text("utf-8")
        return Case.model_validate(yaml.safe_load(facts))

    @property
    def expected(self) -> Path:
        """The file of what its pages say."""
        return HERE / "expected" / f"{self.name}.txt"

    def __str__(self) -> str:
        return self.name


ALL = tuple(Household(path.stem) for path in sorted((HERE / "households").glob("*.yaml")))


@cache
def pages(one: Household) -> MoneyPages:
    """Its money pages."""
    return money_pages(one.case, ON)


def text(one: Household) -> str:
    """What its pages say, in words; pictures too."""
    return "\n\n".join(map(_shown, pages(one).sheets)) + "\n"


def _shown(sheet: Sheet) -> str:
    told = (text_of(chart) for chart in sheet.pictures.values())
    return "\n".join([*blocks(render(sheet.template, sheet.values)), *told, f"({sheet.running})"])


if __name__ == "__main__":
    for each in ALL:
        each.expected.parent.mkdir(exist_ok=True)
        each.expected.write_text(text(each), "utf-8")
