"""How well fields are matched on drawn blanks, and how long it takes.

python tests/benchmarks/blanks.py [DRAWS] [SEED]     draws of each form in each family, from that seed on
"""

import sys
from collections import Counter
from dataclasses import replace
from datetime import date
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).parents[2]))

from firstpaper.blanks.checking import differences, values
from firstpaper.blanks.filling import filled_copy, filling
from firstpaper.blanks.mapping import confirmed, map_of, recognised
from firstpaper.blanks.matching import Sure, matched
from firstpaper.blanks.reading import read_blank
from firstpaper.blanks.wanted import wanted
from firstpaper.forms import filled_forms
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm
from firstpaper.intake import standing
from tests.blanks.drawn_blanks import Drawn, Family, drawn
from tests.households.golden import households

ON = date(2026, 12, 1)
FORMS = ("FL-100", "FL-105", "FL-110", "FL-115", "FL-117", "FL-160", "FL-311", "FL-700", "FW-001")


def measure(family: Family, draws: int, seed: int) -> Counter[str]:
    """Counts for one family, and the longest times in milliseconds."""
    count: Counter[str] = Counter()
    for form in FORMS:
        edition = edition_for(form, ON)
        for number in range(seed, seed + draws):
            one = drawn(edition, family, number)
            start = perf_counter()
            pairs = matched(read_blank(one.pdf, "blank"), wanted(edition))
            count["slowest"] = max(count["slowest"], round(1000 * (perf_counter() - start)))
            right = [pair for pair in pairs if one.truth[pair.spot.key] == pair.wanted.key]
            count["fields"] += sum(key is not None for key in one.truth.values())
            count["right"] += len(right)
            count["sure"] += sum(pair.sure is Sure.SURE for pair in pairs)
            count["sure and right"] += sum(pair.sure is Sure.SURE for pair in right)
            count["blanks"] += 1
    return count


def fills(draws: int, seed: int) -> tuple[int, int, list[float]]:
    """Copies filled in on confirmed blanks, wrong fills among them, and the time of each in milliseconds."""
    copies = wrong = 0
    times: list[float] = []
    forms = [form for one in list(households())[:6] for form in filled_forms(standing(one.case), one.on)]
    for number in range(draws):
        form = forms[number % len(forms)]
        paper = drawn(form.edition, list(Family)[number % len(Family)], seed + number)
        bad, took = fill(form, paper)
        copies, wrong = copies + 1, wrong + bad
        times.append(took)
    return copies, wrong, times


def fill(form: FilledForm, paper: Drawn) -> tuple[int, float]:
    """Wrong fields of one copy, by what each field really is, and the milliseconds it took to fill."""
    blank = read_blank(paper.pdf, "blank")
    found = map_of(blank, *recognised(blank))
    lines = tuple(replace(line, takes=paper.truth[line.key] or "") for line in found.lines)
    one = confirmed(replace(found, lines=lines), [], "benchmark", ON)
    start = perf_counter()
    pdf, what = filled_copy(paper.pdf, "blank", filling(form, one, blank))
    took = 1000 * (perf_counter() - start)
    should = {entry.key: "marked" if entry.marked else entry.text for entry in what.entries}
    held = {key: text for key, text in values(pdf, "filled").items() if text}
    return (held != should) + len(differences(paper.pdf, pdf, what, blank)), took


if __name__ == "__main__":
    told = [int(word) for word in sys.argv[1:]]
    draws, seed = told if len(told) == 2 else (2, 1000)
    print("| family | blanks | fields | sure | of these right | sure of all | right of all | slowest ms |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    for family in Family:
        c = measure(family, draws, seed)
        print(
            f"| {family} | {c['blanks']} | {c['fields']} | {c['sure']} | "
            f"{c['sure and right'] / max(1, c['sure']):.2%} | {c['sure and right'] / c['fields']:.1%} | "
            f"{c['right'] / c['fields']:.1%} | {c['slowest']} |"
        )
    copies, wrong, times = fills(draws * 10, seed)
    print(
        f"\n{copies} copies filled in, {wrong} wrong; "
        f"median {median(times):.0f} ms, slowest {max(times):.0f} ms."
    )
