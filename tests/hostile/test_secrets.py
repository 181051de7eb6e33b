"""Hidden addresses, planted in a case and looked for in everything that any command leaves behind.

Looked through are the words and the JSON on stdout, everything on stderr, every file made (PDFs object by
object, and as another program reads them), the names of files, and every place opened for writing.
"""

import re
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from pypdf import PdfReader
from pypdf.generic import IndirectObject

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.reading import is_sealed
from firstpaper.casefile.sealing import Cost, Seal
from firstpaper.facts import Case
from tests.cli import ready
from tests.cli.every_command import COMMANDS, names, opening, options, set_out
from tests.cli.person import ON, environment, facts_of
from tests.hostile.planted import Place, keys, planted, secret

STREET, TOWN, HELPER, RELATIVE = "Quillfeather", "Zzyzxburg", "Plantina", "Underhillock"
SECRETS = (STREET, TOWN, HELPER, RELATIVE, *map(secret, keys(Place.NOWHERE)))
NOTES = tuple(map(secret, keys(Place.PRIVATE_PAGES)))
FOR_THE_FILER_ALONE = ("money", "schedule")
PASSPHRASE = "marble otter seven violins"
NAMES = ("Elena Markova", "Viktor Markov", "Sofia Markova", "Box 1846", "Mill Street")
"""What the papers must show, and no error, log, file name or metadata may."""

FAILING = [
    ["check", "damaged.case"],
    ["enter", "home.case", "wrong.yaml", "--on", ON],
    ["enter", "home.case", "home.case", "--on", ON],
    ["change", "home.case", TOWN.lower()[:3]],
    ["packet", "home.case", "-o", "home.case", "--on", ON],
    ["ask", "damaged.case"],
    ["seal", "home.case"],
]
WATCHING = "tests.hostile.watching"
TESTS = Path(__file__).parents[2]
SET_OUT = frozenset(
    {"FL-110.pdf", "FL-110.map.yaml", "confirmed-here.json", "filled.pdf", "letter", "more.yaml", "words"}
)
"""What lies in the folder before any command is run, beside the cases."""
RANDOM = r"\.case-([0-9a-f]{8}-)?[0-9a-f]{16}"
KNOWN_NAMES = re.compile(
    rf"((home|newer?|listed)\.case(\.lock|\.erasing|\.copies(/(\d{{6}}|unfinished|{RANDOM}))?)?|{RANDOM})"
    r"|(home|new|listed)\.(pdf|html)|(home-FL-110|FL-110\.proof)\.pdf|FL-110\.map\.yaml|listed-private\.pdf"
    r"|home-guide-(FL-100|after)\.pdf|guide\.html|(home|shelf)\.ics|shelf\.csv|demo\.pdf|question-sheets\.pdf"
)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a case in which nobody may learn where the filer lives."""
    (tmp_path / "work").mkdir()
    (tmp_path / "tmp").mkdir()
    here = tmp_path / "work"
    set_out(here, CaseFile(hiding()))
    damaged = CaseFile(hiding()).to_json()
    (here / "damaged.case").write_text(damaged.replace('"2020-01-15"', f'"{STREET}"'), "utf-8")
    (here / "wrong.yaml").write_text(f"dates.married_on: {STREET}\nchild.1.homes: {TOWN}\n", "utf-8")
    (here / "words").write_text(PASSPHRASE)
    return here


@cache
def hiding() -> Case:
    """The household that must stay hidden, with an address typed before anybody spoke of danger."""
    case = facts_of("address-must-stay-hidden")
    homes: list[dict[str, Any]] = [
        {
            "start": "2020-01-15",
            "end": "2026-05-31",
            "place": "Visalia",
            "state": "CA",
            "with_whom": "both of us",
        },
        {"start": "2026-06-01", "place": TOWN, "state": "CA", "with_whom": f"Elena Markova and {HELPER} Doe"},
    ]
    for key, value in {
        "child.1.homes": homes,
        "child.1.address": {"street": f"12 {STREET} Lane", "city": TOWN, "state": "CA", "zip": "95812"},
        "uccjea.people": [
            {"name": "Ruth Doe", "relation": "aunt", "address": f"9 {RELATIVE} Road, {TOWN}, CA 95812"}
        ],
    }.items():
        case = case.with_fact(key, value)
    case = case.with_fact("asset.1.kind", "vehicle").with_fact("debt.1.kind", "credit_card")
    planted_in = [key for key in keys(Place.NOWHERE, Place.PRIVATE_PAGES) if "homes" not in key]
    return planted(case, planted_in)


def hidden_from(command: str) -> tuple[str, ...]:
    """What a command may not let out: addresses, and the filer's notes where others may read it."""
    return SECRETS if command.split(maxsplit=1)[0] in FOR_THE_FILER_ALONE else (*SECRETS, *NOTES)


def test_every_command_is_looked_through() -> None:
    assert {arguments[0] for arguments in COMMANDS.values()} == names()


@pytest.mark.parametrize("command", COMMANDS)
def test_a_hidden_address_is_in_nothing_that_a_command_leaves(folder: Path, command: str) -> None:
    done = watched(folder, *COMMANDS[command])
    assert done.returncode in (0, 1)
    said = done.stdout if command == "ask" else done.stdout + done.stderr  # who answers sees the answers
    for word in hidden_from(command):
        assert word not in said.decode()
        assert word not in " ".join(one.name for one in folder.rglob("*"))
    for path in made(folder):
        content = everything_in(path)
        found = [word for word in hidden_from(command) if word.casefold() in content.casefold()]
        assert (path.name, found) == (path.name, [])
        if command.startswith("packet"):  # so that a scan that finds nothing means something
            assert [name for name in NAMES[:3] if name not in content] == []
    assert {path.name for path in made(folder)} <= set(check_where_it_wrote(folder))


def test_the_start_of_the_program_writes_nowhere_either(folder: Path) -> None:
    began = f"import {WATCHING}; from firstpaper.cli import main; main()"
    subprocess.run(
        [sys.executable, "-Bc", began, *COMMANDS["packet"]],
        cwd=folder,
        env=_watched_in(folder) | {"PYTHONPATH": str(TESTS)},
        check=True,
        capture_output=True,
    )
    assert "home.pdf" in check_where_it_wrote(folder)


@pytest.mark.parametrize("command", COMMANDS)
def test_a_hidden_address_is_in_no_result_for_programs(folder: Path, command: str) -> None:
    assert "--json" in options(COMMANDS[command][0])
    done = watched(folder, *COMMANDS[command], "--json")
    assert done.returncode in (0, 1)
    for word in hidden_from(command):
        assert word not in done.stdout.decode()


def test_what_describes_a_file_names_nobody_and_one_replaced_address_is_gone(folder: Path) -> None:
    (folder / "more.yaml").write_text("petitioner.mailing: PO Box 7, Fresno, CA 93701\n", "utf-8")
    watched(folder, *COMMANDS["enter"])
    watched(folder, *COMMANDS["packet"])
    pdf = PdfReader(folder / "home.pdf")
    html = (folder / "home.html").read_text("utf-8")
    described = (
        f"{pdf.metadata} {pdf.trailer['/Root']['/Metadata'].get_data()!r} {html[: html.index('</head>')]}"
    )
    for name in NAMES:
        assert name not in described
    assert NAMES[3] not in everything_in(folder / "home.pdf") + html
    watched(folder, *COMMANDS["dates"])
    assert (folder / "home.ics").exists()
    watched(folder, *COMMANDS["erase"])
    left = {one.name for one in folder.iterdir()}
    assert left == SET_OUT | {"damaged.case", "listed.case", "new.case", "wrong.yaml"}


@pytest.mark.parametrize("arguments", FAILING)
def test_a_command_that_fails_repeats_nothing_of_the_case(folder: Path, arguments: list[str]) -> None:
    done = watched(folder, *arguments)
    assert done.returncode == 2
    for words in (*SECRETS, *NAMES):
        assert words not in (done.stdout + done.stderr).decode()


def test_a_locked_case_leaves_no_answer_on_the_disk(folder: Path) -> None:
    for name in ("home.case", "new.case", "listed.case"):
        with OpenCase(folder / name) as opened:
            opened.seal_with(Seal.new(PASSPHRASE, Cost(8 * 1024, 1, 1)))
    for name in ("damaged.case", "wrong.yaml", "filled.pdf"):
        (folder / name).unlink()
    (folder / "words").write_text(f"{PASSPHRASE}\n" * 3)
    for command, arguments in opening().items():
        if arguments[0] in ("packet", "guide", "money", "dates", "seal", "unseal"):
            continue  # these leave papers, or change the lock
        if arguments[0] == "compare":
            continue  # reads a filled form, which lies open
        done = watched(folder, *arguments, "--passphrase-from", "words")
        assert (command, done.returncode) in ((command, 0), (command, 1))
    names = {one.name for one in folder.glob("*.case")}
    assert names == {"home.case", "listed.case", "new.case", "newer.case"}
    for path in folder.glob("*.case"):
        assert is_sealed(path.read_bytes())
    for one in folder.rglob("*"):
        if one.is_file():
            for words in (*SECRETS, *NAMES):
                assert words.encode() not in one.read_bytes()


# --- looking --------------------------------------------------------------------------------------------


def watched(folder: Path, *arguments: str) -> "subprocess.CompletedProcess[bytes]":
    """Run a command, with a note of every place that it opens for writing."""
    done = ready.ran(arguments, folder, _watched_in(folder), b"\n", first=WATCHING)
    return subprocess.CompletedProcess(arguments, *done)


def _watched_in(folder: Path) -> dict[str, str]:
    home = folder.parent / "home"
    home.mkdir(exist_ok=True)
    own = {"NOTES": str(folder.parent / "notes"), "TMPDIR": str(folder.parent / "tmp"), "HOME": str(home)}
    return environment(**own)


def check_where_it_wrote(folder: Path) -> list[str]:
    """Only in the folder of the case, under names that are known and say nothing."""
    notes = (folder.parent / "notes").read_text("utf-8").splitlines()
    inside = [one.removeprefix(f"{folder}/") for one in notes if one not in ("/dev/tty", "/dev/null")]
    assert [one for one in inside if not KNOWN_NAMES.fullmatch(one)] == []
    assert list((folder.parent / "tmp").iterdir()) == list((folder.parent / "home").iterdir()) == []
    return inside


def made(folder: Path) -> list[Path]:
    """The files for people: what was drafted, and not the case itself, nor what was there before."""
    return [
        one
        for one in sorted(folder.iterdir())
        if one.suffix in (".pdf", ".html", ".ics", ".json", ".csv", ".txt") and one.name not in SET_OUT
    ]


def everything_in(path: Path) -> str:
    """The text of a file in every way that it can be read."""
    data = path.read_bytes()
    encodings = ("utf-8", "utf-16-be", "utf-16-le", "latin-1")
    texts = [data.decode(encoding, "replace") for encoding in encodings]
    if path.suffix == ".pdf":
        texts += list(_inside_pdf(data))
        with pypdfium2.PdfDocument(path) as document:
            texts += [page.get_textpage().get_text_range() for page in document]
    return " ".join(" ".join(texts).split())


def _inside_pdf(data: bytes) -> Iterator[str]:
    reader = PdfReader(BytesIO(data))
    for page in reader.pages:
        yield page.extract_text()
    for number in range(1, int(reader.trailer["/Size"])):
        one = reader.get_object(IndirectObject(number, 0, reader))
        yield str(one)
        if one is not None and hasattr(one, "get_data"):
            content = one.get_data()
            yield content.decode("latin-1")
            yield content.decode("utf-16-be", "replace")
