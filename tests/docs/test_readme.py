"""What the README shows of the program is what the program says."""

import re
import subprocess
import sys
from pathlib import Path

from tests.cli.person import ON, answers_of, environment, flat, run_in, written

README = (Path(__file__).parents[2] / "README.md").read_text("utf-8")


def _shown(begins: str) -> list[str]:
    """The words of the block that begins so, in the pieces that "..." cuts it into."""
    block = README.partition(f"```text\n{begins}")[2].partition("```")[0]
    assert block
    return [flat(piece) for piece in (begins + block).split("...") if piece.strip()]


def test_the_question_it_shows_is_asked_in_those_words(tmp_path: Path) -> None:
    answers = answers_of("plain-childless-divorce")
    before = ["safety.understood", "safety.here", "safety.dangers", "safety.typist", "matter.unions"]
    typed = "".join(f"{answers[key]}\n" for key in before)
    asked = run_in(tmp_path, "ask", "home.case", "--on", ON, typed=typed)
    first, *_ = _shown("Question 6")
    assert first.removesuffix(" why") in asked.said


def test_the_finding_it_shows_is_said_in_those_words(tmp_path: Path) -> None:
    written(tmp_path, "two-children-moved-county")
    checked = run_in(tmp_path, "check", "home.case", "--on", "2026-11-25")
    for piece in _shown("STOP: do not file like this"):
        assert piece in flat(checked.out)


# --- its commands, copied line by line into a fresh shell --------------------------------------------

SET_UP = re.compile(r"python3 -m venv \.venv && \.venv/bin/pip install -e \S+ && ")
"""What makes the environment. It needs the package index, so the test lays one out by hand instead."""


def _commands() -> list[str]:
    blocks = re.findall(r"```sh\n(.*?)```", README, re.DOTALL)
    return [SET_UP.sub("", line) for block in blocks for line in block.splitlines()]


def _set_up(folder: Path) -> None:
    """An environment in which the command is installed, as pip lays it out."""
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", folder / ".venv"], check=True)
    command = folder / ".venv" / "bin" / "firstpaper"
    command.write_text(f"#!{sys.executable}\nfrom firstpaper.cli import main\nmain()\n", "utf-8")
    command.chmod(0o755)


def test_its_commands_run_in_order_in_a_fresh_shell(tmp_path: Path) -> None:
    commands = [one for one in _commands() if not one.endswith("-m pytest")]
    assert commands[:3] == [".venv/bin/firstpaper demo", ". .venv/bin/activate", "firstpaper ask mine.case"]
    assert len(commands) == 5
    _set_up(tmp_path)
    typed = tmp_path / "typed"
    typed.write_text("\n".join(answers_of("plain-childless-divorce").values()), "utf-8")
    commands[2] += f" < {typed}"
    done = subprocess.run(
        ["bash", "--noprofile", "--norc", "-c", "set -e\n" + "\n".join(commands)],
        cwd=tmp_path,
        env=environment(PATH="/usr/bin:/bin"),
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    assert (tmp_path / "mine.pdf").is_file()
