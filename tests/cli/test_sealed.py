"""A case file that is locked: at a real terminal, from a script, and in every command."""

import json
import os
import sys
import termios
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TextIO

import pexpect
import pypdfium2
import pytest

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.reading import SEALED, is_sealed
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.cli import early
from firstpaper.cli.early import hide_what_is_typed, show_again
from firstpaper.facts import Case
from firstpaper.facts.choices import Danger, SafeHere
from tests.cli.every_command import WITHOUT_PASSPHRASE, names, opening, options, set_out
from tests.cli.person import ON, PROMPT, Ran, Sitting, facts_of, flat, run_in

Run = Callable[..., Ran]
Begin = Callable[..., Sitting]

PASSPHRASE = "marble otter seven violins"
NEW = "New passphrase, or just Enter for none: "
AGAIN = "The same once more: "
OPEN = "(it does not show while you type): "
QUICK = Cost(memory_kib=8 * 1024, passes=1, lanes=1)


@pytest.fixture
def sealed(home: Path) -> Path:
    """The case file of the plain childless household, locked."""
    with OpenCase(home) as opened:
        opened.seal_with(Seal.new(PASSPHRASE, QUICK))
    (home.parent / "words").write_text(f"{PASSPHRASE}\nanother lantern over water\n", "utf-8")
    return home


@pytest.fixture
def at(tmp_path: Path) -> Iterator[Callable[..., Sitting]]:
    """Begin a sitting of any command."""
    begun: list[Sitting] = []

    def begin(*arguments: str, **more: str) -> Sitting:
        begun.append(Sitting(tmp_path / "home.case", *arguments, **more))
        return begun[-1]

    yield begin
    for sitting in begun:
        sitting.stop()


def words_in(pdf: Path, passphrase: str) -> str:
    """The text of a locked PDF."""
    with pypdfium2.PdfDocument(pdf, password=passphrase) as document:
        return " ".join(page.get_textpage().get_text_range() for page in document)


def answers_on_disk(folder: Path) -> bytes:
    """Every byte of every file in a folder and below."""
    return b"".join(one.read_bytes() for one in folder.rglob("*") if one.is_file())


# --- locking at the terminal ------------------------------------------------------------------------


def test_the_offer_comes_before_the_answer_that_gives_the_reason_is_on_the_disk(
    sit: Begin, tmp_path: Path
) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    offer = sitting.type("2", then=NEW)
    assert "lock it with a passphrase now, before this answer is saved" in offer
    assert "If you forget the passphrase, nobody can open the file any more" in offer
    assert sitting.file.case.safety.here is None

    assert sitting.type("violin", then=AGAIN) == ""
    assert "not the same" in sitting.type("violins", then=NEW)
    sitting.type("violin", then=AGAIN)
    weak = sitting.type("violin", then="choose another: ")
    assert "This passphrase is weak" in weak
    sitting.type("", then=NEW)
    sitting.type(PASSPHRASE, then=AGAIN)
    assert "This passphrase is strong" in sitting.type(PASSPHRASE)

    sitting.type("1,5")
    sitting.child.sendline("leave")
    assert sitting.end() == 0
    assert PASSPHRASE not in sitting.heard
    assert "shared_computer" not in answers_on_disk(tmp_path).decode("latin-1")
    case = CaseFile.load(sitting.path, [PASSPHRASE]).case
    assert case.safety.here is SafeHere.SHARED_COMPUTER
    assert case.safety.dangers == (Danger.AFRAID, Danger.HIDE_ADDRESS)


def test_nobody_is_made_to_lock_and_a_new_danger_is_a_new_offer(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    sitting.type("yes")
    sitting.type("2", then=NEW)
    declined = sitting.type("")
    assert "the file stays as it is" in declined
    assert "firstpaper seal home.case" in declined
    sitting.type("5", then=NEW)
    sitting.type("")
    assert sitting.file.case.safety.dangers == (Danger.HIDE_ADDRESS,)
    sitting.type("back")
    assert NEW not in sitting.type("5")


def test_a_safe_place_without_danger_brings_no_offer(sit: Begin) -> None:
    sitting = sit()
    sitting.wait()
    for line in ("yes", "1", "none"):
        assert "passphrase" not in sitting.type(line)


def test_sealing_asks_twice_and_shows_nothing_of_it(at: Begin, home: Path) -> None:
    sitting = at("seal", "home.case")
    sitting.wait(NEW)
    sitting.type(PASSPHRASE, then=AGAIN)
    sitting.child.sendline(PASSPHRASE)
    assert sitting.end() == 0
    said = flat(sitting.heard)
    assert "home.case is locked now." in said
    assert "Its copies are locked too." in said
    assert PASSPHRASE not in said
    assert CaseFile.load(home, [PASSPHRASE]).case.petitioner.name == "Dana Marie Okafor"
    assert b"Okafor" not in answers_on_disk(home.parent)


def test_what_lies_open_beside_a_locked_file_is_named_and_erased_if_wanted(at: Begin, home: Path) -> None:
    damaged, draft = home.with_name("home.case.damaged"), home.with_name("home.pdf")
    damaged.write_text("half of it, with every answer")
    draft.write_bytes(b"%PDF-1.7 Okafor")
    sitting = at("seal", "home.case")
    sitting.wait(NEW)
    sitting.type(PASSPHRASE, then=AGAIN)
    said = sitting.type(PASSPHRASE, then="just Enter to keep them: ")
    assert "home.case.damaged" in said
    assert "home.pdf" in said
    sitting.child.sendline("erase")
    assert sitting.end() == 0
    assert "What lay open beside it was removed." in flat(sitting.heard)
    assert not damaged.exists()
    assert not draft.exists()


def test_a_name_from_the_case_makes_a_weak_passphrase(at: Begin, home: Path) -> None:
    sitting = at("seal", "home.case")
    sitting.wait(NEW)
    sitting.type("dana okafor fresno 2022", then=AGAIN)
    assert "weak" in sitting.type("dana okafor fresno 2022", then="choose another: ")
    sitting.type("", then=NEW)
    sitting.child.sendline("")
    assert sitting.end() == 0
    assert "Nothing was changed." in flat(sitting.heard)
    assert not is_sealed(home.read_bytes())


def test_a_weak_passphrase_is_taken_from_somebody_who_insists(at: Begin, home: Path) -> None:
    sitting = at("seal", "home.case")
    sitting.wait(NEW)
    sitting.type("violin", then=AGAIN)
    sitting.type("violin", then="choose another: ")
    sitting.child.sendline("use")
    assert sitting.end() == 0
    assert CaseFile.load(home, ["violin"]).case.petitioner.name


def test_ctrl_c_at_a_passphrase_changes_nothing_and_gives_the_terminal_back(at: Begin, home: Path) -> None:
    before = home.read_bytes()
    for stop in ("sendintr", "sendeof"):
        sitting = at("seal", "home.case")
        sitting.wait(NEW)
        getattr(sitting.child, stop)()
        assert sitting.end() == 130
        assert home.read_bytes() == before
        assert [one.name for one in home.parent.iterdir()] == ["home.case"]


def test_the_terminal_shows_what_is_typed_again_after_a_passphrase(tmp_path: Path, home: Path) -> None:
    shell = pexpect.spawn(
        "/bin/sh", cwd=str(tmp_path), encoding="utf-8", timeout=20, env={**os.environ, "PS1": "$ "}
    )
    shell.setecho(True)
    shell.sendline(f"{sys.executable} -m firstpaper seal home.case")
    shell.expect_exact(NEW)
    assert not shell.getecho()
    shell.sendintr()
    shell.expect_exact("Stopped.")
    shell.expect_exact("$ ")
    assert shell.getecho()
    shell.close(force=True)


# --- opening at the terminal ------------------------------------------------------------------------


def test_three_tries_and_then_an_honest_word(at: Begin, sealed: Path) -> None:
    sitting = at("check", "home.case", "--on", ON)
    sitting.wait(OPEN)
    for _try in range(2):
        assert "That is not the passphrase." in sitting.type("wrong", then=OPEN)
    sitting.child.sendline("wrong")
    assert sitting.end() == 2
    assert "Without the passphrase nobody can open the file" in flat(sitting.heard)


def test_a_wrong_one_and_then_the_right_one_goes_on(sit: Begin, sealed: Path) -> None:
    sitting = sit("change", "court.branch")
    sitting.wait(OPEN)
    sitting.type("wrong", then=OPEN)
    assert "Your answer now: Family Courthouse" in sitting.type(PASSPHRASE)
    sitting.child.sendline("Annex")
    assert sitting.end() == 0
    assert CaseFile.load(sealed, [PASSPHRASE]).case.court.branch == "Annex"
    assert PASSPHRASE not in sitting.heard


def test_damage_is_told_before_a_passphrase_is_asked(at: Begin, sealed: Path) -> None:
    sealed.write_bytes(sealed.read_bytes()[:-1])
    sitting = at("check", "home.case")
    assert sitting.end() == 2
    assert OPEN not in sitting.heard
    assert "firstpaper undo home.case" in flat(sitting.heard)


# --- scripts ----------------------------------------------------------------------------------------


def test_every_command_that_opens_a_case_takes_a_passphrase_from_a_script() -> None:
    assert {words[0] for words in opening().values()} == names() - set(WITHOUT_PASSPHRASE)
    for command in names() - set(WITHOUT_PASSPHRASE):
        assert "--passphrase-from" in options(command)
    for command in WITHOUT_PASSPHRASE:
        assert "--passphrase-from" not in options(command)


@pytest.mark.parametrize("way", opening())
def test_every_command_that_opens_a_case_opens_a_locked_one(tmp_path: Path, way: str) -> None:
    words = [word for word in opening()[way] if word not in ("--passphrase-from", "words")]
    lines = f"{PASSPHRASE}\n" * 2 + "Annex\n"
    for folder, more, typed in (("file", ["words"], ""), ("pipe", ["-"], lines), ("none", [], "")):
        here = tmp_path / folder
        here.mkdir()
        set_out(here, CaseFile(facts_of("plain-childless-divorce")))
        (here / "words").write_text(lines, "utf-8")
        for path in here.glob("*.case"):
            with OpenCase(path) as opened:
                opened.seal_with(Seal.new(PASSPHRASE, QUICK))
        ran = run_in(here, *words, *(["--passphrase-from", *more] if more else []), typed=typed)
        said = flat(ran.out + ran.err)
        assert PASSPHRASE not in said
        assert ("locked with a passphrase" in said) == (not more)
        assert ran.exit in ((0, 1) if more or words[0] == "shelf" else (2,))
        assert more or "Okafor" not in said


def test_an_amended_petition_is_locked_with_the_passphrase_of_the_earlier_one(run: Run, sealed: Path) -> None:
    ran = run("amend", "home.case", "new.case", "--passphrase-from", "words")
    assert ran.exit == 0
    assert "It is locked with the same passphrase." in flat(ran.out)
    assert CaseFile.load(sealed.with_name("new.case"), [PASSPHRASE]).case.matter.amended is True
    assert b"Okafor" not in answers_on_disk(sealed.parent)


def test_the_shelf_tries_each_line_of_a_file_on_every_locked_case(run: Run, sealed: Path) -> None:
    for name, words in (("other", "another lantern over water"), ("third", "seventy silent paper boats")):
        with OpenCase(sealed.with_name(f"{name}.case"), begin=True) as opened:
            opened.keep(CaseFile())
            opened.seal_with(Seal.new(words, QUICK))
    ran = run("shelf", "--names", "--paragraphs", "--on", ON, "--passphrase-from", "words")
    assert ran.exit == 0
    assert "1. home.case" in ran.out
    assert "2. other.case" in ran.out
    assert "Dana Marie Okafor" in ran.out
    assert "- third.case It is locked with another passphrase." in flat(ran.out)
    assert "firstpaper check third.case" in ran.out


def test_the_shelf_asks_once_at_a_terminal_and_never_shows_what_is_typed(at: Begin, sealed: Path) -> None:
    sitting = at("shelf", "--on", ON, "--names")
    sitting.wait("Passphrase for 1 locked file, or just Enter to leave it locked: ")
    told = sitting.type("not the one", then="leave it locked: ")
    assert "opens none of them" in told
    sitting.child.sendline(PASSPHRASE)
    assert sitting.end() == 0
    assert "Dana Marie Okafor" in sitting.heard
    assert PASSPHRASE not in sitting.heard


@pytest.mark.parametrize("command", ["ask", "enter", "amend", "packet"])
def test_who_asks_to_lock_and_then_chooses_nothing_saves_nothing(at: Begin, home: Path, command: str) -> None:
    (home.parent / "facts.yaml").write_text("court.branch: Annex\n", "utf-8")
    more = {
        "ask": ("new.case",),
        "enter": ("new.case", "facts.yaml"),
        "amend": ("home.case", "new.case"),
        "packet": ("home.case",),
    }
    sitting = at(command, *more[command], "--seal")
    sitting.wait(NEW)
    sitting.child.sendline("")
    assert sitting.end() == 2
    assert "type the command again without --seal" in flat(sitting.heard)
    assert sorted(one.name for one in home.parent.iterdir()) == ["facts.yaml", "home.case"]


def test_ask_and_enter_go_on_with_a_locked_case(run: Run, sealed: Path, tmp_path: Path) -> None:
    (tmp_path / "facts.yaml").write_text("court.branch: Annex\n", "utf-8")
    assert run("enter", "home.case", "facts.yaml", "--passphrase-from", "words").exit == 0
    assert run("ask", "home.case", "--passphrase-from", "-", typed=PASSPHRASE + "\n").exit == 0
    assert is_sealed(sealed.read_bytes())
    assert CaseFile.load(sealed, [PASSPHRASE]).case.court.branch == "Annex"


def test_a_script_can_begin_a_case_that_is_locked_from_its_first_save(run: Run, tmp_path: Path) -> None:
    ran = run("ask", "home.case", "--seal", "--passphrase-from", "-", typed=f"{PASSPHRASE}\nyes\n2\n5\n")
    assert ran.exit == 0
    file = CaseFile.load(tmp_path / "home.case", [PASSPHRASE])
    assert file.case.safety.dangers == (Danger.HIDE_ADDRESS,)
    assert b"hide_address" not in answers_on_disk(tmp_path)
    ran = run("ask", "new.case", "--seal", typed="yes\n")
    assert "A new passphrase is needed" in ran.said
    assert not (tmp_path / "new.case").exists()


def test_entered_facts_that_tell_of_danger_point_to_locking(run: Run, tmp_path: Path) -> None:
    (tmp_path / "facts.yaml").write_text("safety.dangers: [hide_address]\n", "utf-8")
    assert "firstpaper seal" in flat(run("enter", "home.case", "facts.yaml").out)
    (tmp_path / "words").write_text(PASSPHRASE)
    sealing = ("--seal", "--passphrase-from", "words")
    assert "firstpaper seal" not in flat(run("enter", "two.case", "facts.yaml", *sealing).out)
    assert b"hide_address" not in (tmp_path / "two.case").read_bytes()


def test_the_passphrase_can_be_changed_by_a_script(run: Run, sealed: Path) -> None:
    assert run("seal", "home.case", "--passphrase-from", "words").exit == 0
    assert CaseFile.load(sealed, ["another lantern over water"]).case.petitioner.name


def test_a_lock_costs_whoever_guesses_what_is_promised(run: Run, home: Path) -> None:
    """By a command that is started anew: those that are forked ready lock lightly."""
    assert run("seal", "home.case", "--passphrase-from", "-", typed=PASSPHRASE, LANG="C").exit == 0
    head = json.loads(home.read_bytes().partition(b"\n")[0])
    assert (head["memory_kib"], head["passes"], head["lanes"]) == (2**16, 3, 4)


@pytest.mark.parametrize("content", [b"", b"\n", b"\nnot on the first line", b"\xff\xfe\x00"])
def test_a_file_without_a_passphrase_in_it_is_told(run: Run, home: Path, content: bytes) -> None:
    (home.parent / "words").write_bytes(content)
    before = home.read_bytes()
    ran = run("seal", "home.case", "--passphrase-from", "words")
    assert ran.exit == 2
    assert "No passphrase could be read from words" in ran.said
    assert home.read_bytes() == before
    assert run("seal", "home.case", "--passphrase-from", "gone").exit == 2
    assert run("seal", "home.case", "--passphrase-from", "-").exit == 2


def test_windows_line_ends_are_no_part_of_a_passphrase(run: Run, sealed: Path) -> None:
    (sealed.parent / "words").write_bytes(PASSPHRASE.encode() + b"\r\n")
    assert run("check", "home.case", "--on", ON, "--passphrase-from", "words").exit == 0
    typed = PASSPHRASE.encode() + b"\r\n"
    assert run("check", "home.case", "--on", ON, "--passphrase-from", "-", typed=typed).exit == 0


def test_no_environment_variable_is_read_for_a_passphrase(run: Run, sealed: Path) -> None:
    names = ("FIRSTPAPER_PASSPHRASE", "FIRSTPAPER_PASSPHRASE_FROM", "PASSPHRASE", "CHECK_PASSPHRASE_FROM")
    ran = run("check", "home.case", **dict.fromkeys(names, PASSPHRASE))
    assert "nobody here to ask" in ran.said


def test_the_process_list_shows_no_passphrase_and_no_answer(at: Begin, sealed: Path) -> None:
    sitting = at("ask", "home.case", "--on", ON)
    sitting.wait(OPEN)
    process = Path(f"/proc/{sitting.child.pid}")
    sitting.child.sendline(PASSPHRASE)
    sitting.child.expect_exact([PROMPT, "Enter to leave: ", pexpect.EOF])
    shown = process.joinpath("cmdline").read_bytes() if process.exists() else b""
    assert PASSPHRASE.encode() not in shown
    assert b"Okafor" not in shown


# --- a locked packet --------------------------------------------------------------------------------


def test_a_packet_can_be_locked_and_another_reader_opens_it(run: Run, home: Path) -> None:
    """Read back with a library that has nothing to do with the one that locked it."""
    (home.parent / "words").write_text("copper ladder moss evening", "utf-8")
    ran = run("packet", "home.case", "--seal", "--passphrase-from", "words", "--on", ON)
    assert ran.exit == 0
    assert "locked with its passphrase" in flat(ran.out)
    pdf = home.with_name("home.pdf")
    assert b"Okafor" not in pdf.read_bytes()
    with pytest.raises(pypdfium2.PdfiumError):
        pypdfium2.PdfDocument(pdf)
    assert "Okafor" in words_in(pdf, "copper ladder moss evening")


def test_a_locked_packet_of_a_locked_case_takes_two_passphrases(run: Run, sealed: Path) -> None:
    ran = run("packet", "home.case", "--seal", "--passphrase-from", "words", "--on", ON)
    assert ran.exit == 0
    assert "Okafor" in words_in(sealed.with_name("home.pdf"), "another lantern over water")


def test_a_screen_version_is_not_claimed_to_be_locked(run: Run, home: Path) -> None:
    ran = run("packet", "home.case", "--seal", "--html", "home.html", "--on", ON)
    assert ran.exit == 2
    assert "cannot be locked" in ran.said
    assert not home.with_name("home.html").exists()
    assert not home.with_name("home.pdf").exists()


def test_the_json_of_a_locked_case_says_no_passphrase(run: Run, sealed: Path) -> None:
    ran = run("items", "home.case", "--json", "--on", ON, "--passphrase-from", "words")
    assert PASSPHRASE not in json.dumps(ran.envelope)
    assert "Dana Marie Okafor" in ran.out


def test_an_empty_case_can_be_sealed(run: Run, tmp_path: Path) -> None:
    CaseFile(Case()).save(tmp_path / "home.case")
    (tmp_path / "words").write_text(PASSPHRASE)
    assert run("seal", "home.case", "--passphrase-from", "words").exit == 0


def test_what_is_typed_before_the_prompt_of_a_locked_file_does_not_show(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert early.SEALED == SEALED
    ours, theirs = os.openpty()
    plain = home.read_bytes()
    with os.fdopen(ours, "rb"), os.fdopen(theirs, "r") as terminal:
        monkeypatch.setattr("sys.stdin", terminal)
        monkeypatch.chdir(home.parent.parent)
        hide_what_is_typed(["check", str(home)])
        assert shows(terminal), "an open file asks for nothing"
        home.write_bytes(Seal.new(PASSPHRASE, Cost(8 * 1024, 1, 1)).close(plain))
        hide_what_is_typed(["check", str(home)])
        assert not shows(terminal)
        show_again()
        assert shows(terminal)


@pytest.mark.parametrize(
    "words", [["seal", "home.case"], ["ask", "--seal"], ["packet", "home.case", "--seal"]]
)
def test_nor_does_what_is_typed_before_a_new_passphrase_is_asked_for(
    words: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    ours, theirs = os.openpty()
    with os.fdopen(ours, "rb"), os.fdopen(theirs, "r") as terminal:
        monkeypatch.setattr("sys.stdin", terminal)
        monkeypatch.chdir(tmp_path)
        hide_what_is_typed(words)
        assert not shows(terminal)
        show_again()


def shows(terminal: TextIO) -> bool:
    return bool(termios.tcgetattr(terminal.fileno())[3] & termios.ECHO)
