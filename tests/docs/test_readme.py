"""What the README shows of the program is what the program says."""

from pathlib import Path

from tests.cli.person import ON, answers_of, flat, run_in, written

README = (Path(__file__).parents[2] / "README.md").read_text("utf-8")


def _shown(begins: str) -> str:
    """The words of the block that begins so, up to where it is cut."""
    block = README.partition(f"```text\n{begins}")[2].partition("```")[0]
    assert block
    return flat((begins + block).partition("...")[0])


def test_the_question_it_shows_is_asked_in_those_words(tmp_path: Path) -> None:
    answers = answers_of("plain-childless-divorce")
    before = ["safety.understood", "safety.here", "safety.dangers", "safety.typist", "matter.unions"]
    typed = "".join(f"{answers[key]}\n" for key in before)
    asked = run_in(tmp_path, "ask", "home.case", "--on", ON, typed=typed)
    assert _shown("Question 6").removesuffix(" why") in asked.said


def test_the_finding_it_shows_is_said_in_those_words(tmp_path: Path) -> None:
    written(tmp_path, "two-children-moved-county")
    checked = run_in(tmp_path, "check", "home.case", "--on", "2026-11-25")
    assert _shown("STOP: do not file like this") in flat(checked.out)
