"""How long the packets are: pages of each demo household, of the FL-100 worksheet, and pages nearly empty.

python tests/benchmarks/pages.py [ON]      ON is the filing day, as 2026-11-30
"""

import sys
from collections.abc import Iterator
from datetime import date
from io import BytesIO
from pathlib import Path
from statistics import mean

import pdfplumber

from firstpaper.facts import Case
from firstpaper.intake import facts_from
from firstpaper.packet import Stage, build

HOUSEHOLDS = Path(__file__).parents[2] / "demo" / "households"
ON = date(2026, 11, 30)
TOP, FOOT = 40.0, 720.0
"""Points from the top of a page between which its text stands; the foot is left out."""
NEARLY_EMPTY = 0.25


def households(on: date) -> Iterator[tuple[str, Case]]:
    """Each demo household whose facts can be read as of that day."""
    for path in sorted(HOUSEHOLDS.glob("*.yaml")):
        case, problems = facts_from(path.read_text("utf-8"), on)
        if case is not None and not problems:
            yield path.stem, case


def pages(case: Case, on: date, stage: Stage) -> list[tuple[str, float]]:
    """The words and the share of the height that each page of a part of the packet uses."""
    with pdfplumber.open(BytesIO(build(case, on, stages=[stage]).pdf())) as drawn:
        return [(page.extract_text(), _used(page.chars)) for page in drawn.pages]


def _used(chars: list[dict[str, float]]) -> float:
    lowest = max((char["bottom"] for char in chars if char["bottom"] < FOOT), default=TOP)
    return (lowest - TOP) / (FOOT - TOP)


def main() -> None:
    """Print a line a household and the means."""
    on = date.fromisoformat(sys.argv[1]) if len(sys.argv) > 1 else ON
    rows = []
    print(f"{'household':40}{'first':>7}{'later':>7}{'FL-100':>8}{'nearly empty':>14}")
    for name, case in households(on):
        first, later = (pages(case, on, stage) for stage in Stage)
        petition = sum("Worksheet for FL-100" in words[-120:] for words, _ in first)
        empty = sum(used < NEARLY_EMPTY and "TITLE" not in words for words, used in (*first, *later))
        rows.append((len(first), len(later), petition, empty))
        print(f"{name:40}{len(first):7}{len(later):7}{petition:8}{empty:14}")
    print(
        f"{'mean':40}"
        + "".join(
            f"{mean(column):{width}.1f}"
            for column, width in zip(zip(*rows, strict=True), (7, 7, 8, 14), strict=True)
        )
    )


if __name__ == "__main__":
    main()
