"""Try the self-contained program where there is no Python: trial.py PROGRAM ORDINARY

PROGRAM runs in an empty environment, with a PATH that holds nothing. ORDINARY is the command as it is
installed with Python; the first question of PROGRAM must come within 1.5 times its time. Whatever is not as
it should be ends this with an error.
"""

import os
import subprocess
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

import pexpect

HERE = Path(__file__).resolve()
HOUSEHOLDS = HERE.parents[2] / "demo" / "households"
TESTS = HERE.parents[2]
DAY = "2026-11-30"
MOST_TIMES = 1.5
TURNS = 7
FIRST_QUESTION = "Your answer: "
PASSPHRASE = "seven wooden ladders near the harbor\n"


class Trial:
    """A folder of its own, and the program run in it."""

    def __init__(self, program: Path, folder: Path) -> None:
        self.program, self.folder = program, folder
        (folder / "nothing").mkdir()
        (folder / "words").write_text(PASSPHRASE, "utf-8")
        self.environment = {"PATH": str(folder / "nothing"), "HOME": str(folder), "LC_ALL": "C.UTF-8"}

    def run(self, *words: str, exits: tuple[int, ...] = (0,), typed: str = "") -> str:
        """Run a command and give what it said. Its exit status must be one of `exits`."""
        done = subprocess.run(
            [self.program, *words],
            cwd=self.folder,
            env=self.environment,
            input=typed,
            capture_output=True,
            text=True,
            timeout=180,
            check=False,
        )
        said = done.stdout + done.stderr
        must(done.returncode in exits, f"{' '.join(words)} ended with {done.returncode}:\n{said}")
        must("fault of its own" not in said, f"{' '.join(words)} met a fault:\n{said}")
        print(f"  {' '.join(words)}")
        return said

    def made(self, name: str, begins: bytes) -> None:
        """That a command made a file of that name, and that it begins so."""
        must((self.folder / name).read_bytes().startswith(begins), f"{name} is not as it should be")

    def asked(self) -> None:
        """An interview through a terminal: the language, two answers, then away, then on from there."""
        child = self._sitting()
        child.expect_exact("2. Español")
        child.sendline("1")
        child.expect_exact(FIRST_QUESTION)
        child.sendline("why")
        child.expect_exact(FIRST_QUESTION)
        child.sendline("yes")
        child.expect_exact(FIRST_QUESTION)
        child.sendline("leave")
        child.expect(pexpect.EOF)
        must((self.folder / "home.case").exists(), "no case file was begun")
        child = self._sitting()
        child.expect_exact("Question 2")
        child.sendline("leave")
        child.expect(pexpect.EOF)
        print("  ask, through a terminal")

    def _sitting(self) -> "pexpect.spawn[str]":
        words = ["ask", "home.case", "--on", DAY]
        environment = {**self.environment, "TERM": "xterm"}
        return pexpect.spawn(
            str(self.program), words, cwd=self.folder, env=environment, encoding="utf-8", timeout=60
        )


def must(right: bool, otherwise: str) -> None:
    """End with an error where something is not right."""
    if not right:
        sys.exit(f"FAILED: {otherwise}")


def everything(trial: Trial) -> None:
    """One command after another, as a clinic would use them."""
    trial.run("--version")
    trial.asked()
    for name in ("two-children-moved-county", "things-and-debts-listed"):
        trial.run("enter", f"{name}.case", str(HOUSEHOLDS / f"{name}.yaml"), "--on", DAY)
    must(
        "residence.same_spouse"
        in trial.run("check", "two-children-moved-county.case", "--on", DAY, exits=(1,)),
        "check",
    )
    trial.run("packet", "two-children-moved-county.case", "--html", "screen.html", "--on", DAY, exits=(1,))
    trial.made("two-children-moved-county.pdf", b"%PDF-")
    trial.run("packet", "--all", ".", "--on", DAY, exits=(0, 1, 2))
    trial.made("things-and-debts-listed.pdf", b"%PDF-")
    trial.run("money", "things-and-debts-listed.case", "--on", DAY)
    trial.run("schedule", "things-and-debts-listed.case", "--csv-things", "things.xlsx")
    trial.made("things.xlsx", b"PK")
    must("Nothing" in trial.run("enter", "things-and-debts-listed.case", "things.xlsx"), "the workbook")
    english = trial.run("why", "2a", "--on", DAY)
    must("Fam. Code" in english, "why")
    must(trial.run("--language", "es", "why", "2a", "--on", DAY) != english, "Spanish")
    trial.run("guide", "FL-110", "-o", "guide.pdf", "--on", DAY)
    trial.made("guide.pdf", b"%PDF-")
    drawn_blank(trial.folder / "FL-110.pdf")
    must("form FL-110" in trial.run("blank", "FL-110.pdf"), "blank")
    trial.run("blank", "FL-110.map.yaml", "--confirm", "--who", "A.H.", typed="yes\n" * 60)
    trial.run("packet", "things-and-debts-listed.case", "--blanks", ".", "--on", DAY, exits=(0, 1))
    trial.made("things-and-debts-listed-FL-110.pdf", b"%PDF-")
    trial.run("seal", "two-children-moved-county.case", "--passphrase-from", "words")
    must(b"Marisol" not in (trial.folder / "two-children-moved-county.case").read_bytes(), "seal")
    trial.run("show", "two-children-moved-county.case", "--passphrase-from", "words")
    trial.run("shelf", ".", "--passphrase-from", "words", exits=(0, 1))
    trial.run("uninstall")


def drawn_blank(path: Path) -> None:
    """A stand-in for a court's blank, drawn as the tests draw theirs."""
    sys.path.insert(0, str(TESTS))
    from datetime import date

    from firstpaper.forms.edition import edition_for
    from tests.blanks.drawn_blanks import Family, drawn

    path.write_bytes(drawn(edition_for("FL-110", date.fromisoformat(DAY)), Family.FULL, seed=4).pdf)


def first_question(program: Path) -> float:
    """How long the first question takes to come, in seconds."""
    with TemporaryDirectory() as folder:
        began = time.monotonic()
        child = pexpect.spawn(
            str(program),
            ["--language", "en", "ask", "home.case", "--on", DAY],
            cwd=folder,
            env={**os.environ, "TERM": "xterm"},
            encoding="utf-8",
            timeout=60,
        )
        child.expect_exact(FIRST_QUESTION)
        took = time.monotonic() - began
        child.close(force=True)
    return took


def size(folder: Path) -> int:
    """The size of a folder in bytes."""
    return sum(path.stat().st_size for path in folder.rglob("*") if path.is_file() and not path.is_symlink())


def main() -> None:
    """Try everything, then hold the first question against the ordinary one, in turns."""
    program, ordinary = (Path(word).resolve() for word in sys.argv[1:])
    with TemporaryDirectory() as folder:
        everything(Trial(program, Path(folder)))
    turns = [(first_question(program), first_question(ordinary)) for _turn in range(TURNS)]
    here, there = (min(times) for times in zip(*turns, strict=True))
    print(
        f"\nFirst question after {here:.2f} s, installed with Python after {there:.2f} s: "
        f"{here / there:.2f} times."
    )
    print(f"{size(program.parent) / 1e6:.0f} MB in the folder.")
    must(here <= MOST_TIMES * there, f"the first question took more than {MOST_TIMES} times as long")


if __name__ == "__main__":
    main()
