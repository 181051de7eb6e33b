"""Every command of the page on listing things is run in its order, with the files that the page shows."""

import re
import shlex
import subprocess
import sys
from pathlib import Path

from firstpaper.casefile import CaseFile
from tests.cli.person import written
from tests.docs.test_tutorial import matches

PAGE = Path(__file__).parents[2] / "docs" / "how-to" / "list-what-you-own-and-owe.md"
BLOCK = re.compile(r"```(?P<kind>yaml|console|csv)\n(?P<text>.*?)```", re.DOTALL)


def run(command: str, folder: Path) -> str:
    done = subprocess.run(
        [sys.executable, "-m", *shlex.split(command)],
        cwd=folder,
        capture_output=True,
        text=True,
        check=False,
        stdin=subprocess.DEVNULL,
    )
    assert done.returncode == 0, done.stderr
    return " ".join((done.stdout + done.stderr).split())


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    home = written(tmp_path, "plain-childless-divorce")
    ran = 0
    for block in BLOCK.finditer(PAGE.read_text("utf-8")):
        if block["kind"] != "console":
            name = {"yaml": "facts.yaml", "csv": "debts.csv"}[block["kind"]]
            (tmp_path / name).write_text(block["text"], "utf-8")
            continue
        command, _, shown = block["text"].removeprefix("$ ").partition("\n")
        printed = run(command, tmp_path)
        assert matches(shown, printed), f"{command}\n--- shown\n{shown}\n--- printed\n{printed}"
        ran += 1
    case = CaseFile.load(home).case
    assert ran == 7
    assert [one.words for one in case.asset] == ["House on Elm Street, Fresno", "School district pension"]
    assert [(one.kind, one.owed) for one in case.debt] == [
        ("credit_card", 3200),
        ("student_loan", 18_000),
        ("tax", 900),
    ]
    assert case.asset[0].house.price == 240_000
    assert case.income.petitioner_net == 2450
