"""The language of a command and of a case: chosen, asked for at the very beginning, and kept."""

import os
import sys
from pathlib import Path

import pexpect
import pytest

from firstpaper.casefile import CaseFile
from firstpaper.cli import language as spoken
from firstpaper.cli.language import Chosen, ask_for_language, keep_chosen, speak_as_chosen, speak_for
from firstpaper.cli.long_help import in_front
from firstpaper.locale import language, speaking


class Person:
    """A terminal at which somebody types these lines."""

    interactive = True

    def __init__(self, *lines: str) -> None:
        self.lines, self.shown = list(lines), list[str]()

    def say(self, *paragraphs: str) -> None:
        self.shown += paragraphs

    def line(self, text: str = "") -> None:
        self.shown.append(text)

    def read(self, prompt: str) -> str:
        return self.lines.pop(0)


@pytest.fixture(autouse=True)
def nobody_chose(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.delenv("FIRSTPAPER_LANG", raising=False)
    monkeypatch.setattr(Chosen, "language", "")
    monkeypatch.setattr(spoken, "offered", lambda: ("en", "es"))
    with speaking("en"):
        yield


@pytest.mark.parametrize("typed", ["2", "2.", "Español"])
def test_a_new_case_asks_in_both_languages_and_keeps_the_answer(typed: str) -> None:
    person = Person("what?", typed)
    file = ask_for_language(person, CaseFile())  # type: ignore[arg-type]
    assert (file.language, language()) == ("es", "es")
    assert "Which language? Type its number. / ¿En qué idioma? Escriba su número." in person.shown
    assert any("1. English\n  2. Español" in shown for shown in person.shown)


def test_nobody_is_asked_where_it_is_known_or_nothing_else_is_there(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    person = Person()
    assert ask_for_language(person, CaseFile(language="es")).language == "es"  # type: ignore[arg-type]
    monkeypatch.setenv("FIRSTPAPER_LANG", "en")
    assert ask_for_language(person, CaseFile()).language == ""  # type: ignore[arg-type]
    monkeypatch.delenv("FIRSTPAPER_LANG")
    monkeypatch.setattr(spoken, "offered", lambda: ("en",))
    assert ask_for_language(person, CaseFile()).language == ""  # type: ignore[arg-type]
    assert person.shown == []


def test_the_language_stays_in_the_case_file(tmp_path: Path) -> None:
    path = tmp_path / "home.case"
    CaseFile(language="es").save(path)
    assert CaseFile.load(path).language == "es"
    CaseFile().save(path)
    assert '"language"' not in path.read_text("utf-8")


@pytest.mark.parametrize("told", ['"../es"', "3", '"ESPAÑOL"', "null"])
def test_a_language_that_is_none_is_passed_over(tmp_path: Path, told: str) -> None:
    path = tmp_path / "home.case"
    CaseFile(language="es").save(path)
    path.write_text(path.read_text("utf-8").replace('"language": "es"', f'"language": {told}'), "utf-8")
    assert CaseFile.load(path).language == ""


def test_the_case_decides_unless_the_command_says_otherwise() -> None:
    speak_for(CaseFile(language="es"))
    assert language() == "es"
    speak_as_chosen(["check", "home.case", "--language=en"])
    speak_for(CaseFile(language="es"))
    assert language() == "en"
    assert keep_chosen(CaseFile(language="es")).language == "en"
    assert speak_for(CaseFile()).language == "en"


def test_the_option_may_stand_anywhere() -> None:
    assert in_front(["ask", "home.case", "--language", "es"]) == ["--language", "es", "ask", "home.case"]
    assert in_front(["ask", "--language=es", "a.case", "--no-pause"]) == [
        "--language=es",
        "--no-pause",
        "ask",
        "a.case",
    ]


def test_a_case_begun_in_spanish_goes_on_in_spanish(tmp_path: Path) -> None:
    environment = {name: value for name, value in os.environ.items() if name != "FIRSTPAPER_LANG"}
    program = "import sys; from firstpaper.cli import main; sys.argv[0] = 'firstpaper'; main()"
    words = ["-c", program, "ask", "home.case", "--no-pause"]
    sitting = pexpect.spawn(
        sys.executable, words, encoding="utf-8", cwd=str(tmp_path), env=environment, timeout=120
    )
    sitting.expect("> ")
    sitting.sendline("2")
    sitting.expect("Su respuesta: ")
    sitting.sendline("claro que sí")
    sitting.expect("Su respuesta: ")
    sitting.sendline("salir")
    sitting.expect(pexpect.EOF)
    assert CaseFile.load(tmp_path / "home.case").language == "es"
