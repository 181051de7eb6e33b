"""What a new process costs a person: medians of processor time, printed, nothing asserted.

    python tests/benchmarks/cold.py [RUNS]

The commands take turns, so that whatever else the computer does falls on all of them alike; what counts is
the ratio to a bare typer command. "bare" lines are the floor: the interpreter alone, and an empty typer
command with the same options. Byte code goes to a folder of its own, and the first round, which writes it, is
left out.
"""

import os
import subprocess
import sys
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from resource import RUSAGE_CHILDREN, getrusage
from statistics import median
from tempfile import TemporaryDirectory

from firstpaper.casefile import CaseFile
from firstpaper.cli.files.households import households
from firstpaper.facts import Case
from firstpaper.intake import facts_from

BARE = """
import typer
from typing import Annotated
from pathlib import Path
app = typer.Typer(rich_markup_mode=None, add_completion=False, pretty_exceptions_enable=False)
@app.callback()
def all_of_it(): pass
@app.command()
def ask(
    case: Path, on: Annotated[str | None, typer.Option("--on")] = None,
    as_json: Annotated[bool, typer.Option("--json")] = False,
): pass
app()
"""
FLOOR = "bare typer command"
ON = "2026-11-30"
HOUSEHOLD = "plain-childless-divorce"
FIRSTPAPER = [sys.executable, "-m", "firstpaper"]
MEASURED: dict[str, tuple[Sequence[str], bytes]] = {
    "bare python": ([sys.executable, "-c", "pass"], b""),
    "bare typer --help": ([sys.executable, "-c", BARE, "--help"], b""),
    FLOOR: ([sys.executable, "-c", BARE, "ask", "home.case"], b""),
    "firstpaper --help": ([*FIRSTPAPER, "--help"], b""),
    "firstpaper why ID": ([*FIRSTPAPER, "why", "residence.state"], b""),
    "firstpaper why ITEM": ([*FIRSTPAPER, "why", "2a"], b""),
    "firstpaper guide": ([*FIRSTPAPER, "guide"], b""),
    "firstpaper packet: one packet": ([*FIRSTPAPER, "packet", "whole.case", "--on", ON], b""),
    "firstpaper demo: the same from a file of facts": ([*FIRSTPAPER, "demo", HOUSEHOLD, "--on", ON], b""),
    "first question": ([*FIRSTPAPER, "ask", "new.case"], b""),
    "next question: open, answer, save, ask the next": ([*FIRSTPAPER, "ask", "home.case"], b"Ana Soto\n"),
    "the same, with a date that is checked": ([*FIRSTPAPER, "ask", "dates.case"], b"6/14/2012\n"),
}


def main(runs: int) -> None:
    with TemporaryDirectory() as folder:
        costs = cold(Path(folder), runs)
    for words, cost in costs.items():
        print(f"{words:50s} {cost:7.1f} ms {cost / costs[FLOOR]:6.2f} of a {FLOOR}")


def cold(folder: Path, runs: int) -> dict[str, float]:
    """The median processor time of each command, in milliseconds."""
    environment = os.environ | {"PYTHONPYCACHEPREFIX": str(folder / "bytecode")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    costs: dict[str, list[float]] = {words: [] for words in MEASURED}
    for _round in range(runs + 1):
        for words, (command, typed) in MEASURED.items():
            costs[words].append(_milliseconds(command, typed, folder, environment))
    return {words: median(each[1:]) for words, each in costs.items()}


def _milliseconds(command: Sequence[str], typed: bytes, folder: Path, environment: dict[str, str]) -> float:
    _case_files(folder)
    before = processor_seconds()
    subprocess.run(command, input=typed, capture_output=True, cwd=folder, env=environment, check=True)
    return (processor_seconds() - before) * 1000


def processor_seconds() -> float:
    """What the processes that have ended so far took of the processor, for themselves and in the system."""
    used = getrusage(RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def _case_files(folder: Path) -> None:
    """Two cases begun, one stopped at the filer's name, the other at the wedding day, and a whole one."""
    answers = {
        "safety.understood": True,
        "safety.here": "safe",
        "safety.dangers": (),
        "safety.typist": "filer",
    }
    answers |= {"matter.unions": ("marriage",), "matter.kind": "dissolution", "matter.amended": False}
    answers |= {"matter.other_case": False, "shortcuts.look_at": ()}
    case = _told(Case(), answers)
    CaseFile(case).save(folder / "home.case")
    more = {
        "petitioner.name": "Ana",
        "petitioner.other_names": (),
        "petitioner.phone": "",
        "petitioner.email": "",
    }
    more |= {"petitioner.mailing": {"street": "1 A St", "city": "Fresno", "zip": "93701"}}
    more |= {"respondent.name": "Ben", "respondent.other_names": (), "respondent.mailing": "don't know"}
    more |= {"people.special": (), "court.county": "Fresno", "court.branch": ""}
    more |= {"court.address": {"street": "1 B St", "city": "Fresno", "zip": "93701"}}
    CaseFile(_told(case, more)).save(folder / "dates.case")
    (folder / "new.case").unlink(missing_ok=True)
    whole, _problems = facts_from(households()[HOUSEHOLD].read_text("utf-8"), date.fromisoformat(ON))
    CaseFile(whole).save(folder / "whole.case")


def _told(case: Case, answers: dict[str, object]) -> Case:
    for key, value in answers.items():
        case = case.with_fact(key, value)
    return case


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 15)
