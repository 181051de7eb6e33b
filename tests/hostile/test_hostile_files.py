"""Files from strangers: too large, too deep, too full, or not what they seem."""

import json
import os
import stat
from collections.abc import Callable
from html import escape
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from firstpaper.casefile import CaseFile
from firstpaper.casefile.document import DEEPEST, LONGEST_LIST, MOST_VALUES
from firstpaper.casefile.errors import CaseFileDamaged, NotACaseFile
from firstpaper.casefile.reading import LARGEST
from tests.cli.person import ON, Ran, facts_of, flat

Run = Callable[..., Ran]
HEAD = {"firstpaper": {"schema": 1, "saved_by": "x"}}


def worked() -> float:
    """Seconds of work of this process and of those it ran; waiting on a busy machine is not counted."""
    return sum(os.times()[:4])


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


def nested(depth: int) -> Any:
    value: Any = "deep"
    for _level in range(depth):
        value = [value]
    return value


@pytest.mark.parametrize(
    "facts",
    [
        {"petitioner": {"other_names": nested(DEEPEST)}},
        {"petitioner": {"other_names": ["x"] * (LONGEST_LIST + 1)}},
        {
            "petitioner": {
                str(number): ["x"] * LONGEST_LIST for number in range(MOST_VALUES // LONGEST_LIST + 1)
            }
        },
        {"petitioner": {"name": "N" * 1_000_000}},
        {"support": {"other": "N" * 1_000_000}},
        {"petitioner": {"name": 10**4000}},
        {"children": {"how_many": 1e308}},
        {"child": [{"name": "x"}] * 5000},
        {"dates": {"married_on": "9999-12-31"}},
        {"dates": {"married_on": 20160614}},
        {"petitioner": {"name": "123-45-6789"}},
        {"__class__": "os"},
    ],
    ids=lambda facts: json.dumps(facts)[:40],
)
def test_a_case_file_beyond_what_we_write_is_refused_at_once(path: Path, facts: object) -> None:
    path.write_text(json.dumps({**HEAD, "facts": facts}))
    before = worked()
    with pytest.raises(CaseFileDamaged):
        CaseFile.load(path)
    assert worked() - before < 1.0


def test_numbers_of_thousands_of_digits_and_brackets_without_end_are_refused(path: Path) -> None:
    for text in ("9" * 100_000, "[" * 100_000, '{"a":' * 100_000, "NaN", "Infinity", '"\\ud800"'):
        path.write_text(json.dumps(HEAD)[:-1] + f', "facts": {text}}}')
        with pytest.raises(CaseFileDamaged):
            CaseFile.load(path)


def test_a_huge_file_is_not_read_to_its_end(path: Path) -> None:
    with path.open("wb") as file:
        file.write(json.dumps({**HEAD, "facts": {}}).encode())
        file.truncate(LARGEST * 1000)
    before = worked()
    with pytest.raises(NotACaseFile):
        CaseFile.load(path)
    assert worked() - before < 1.0


def test_five_hundred_children_are_counted_and_not_drafted_one_by_one(path: Path, run: Run) -> None:
    document = json.loads(CaseFile(facts_of("two-children-moved-county")).to_json())
    document["facts"]["child"] *= 250
    path.write_text(json.dumps(document))
    before = worked()
    assert run("check", "home.case", "--on", ON).exit in (0, 1, 2)
    assert run("items", "home.case", "--on", ON).exit in (0, 1, 2)
    assert worked() - before < 10


@pytest.mark.parametrize("size", [1_000_000, 30_000_000])
def test_a_line_of_a_megabyte_is_refused_and_the_next_one_is_read(run: Run, home: Path, size: int) -> None:
    ran = run("change", "home.case", "court.branch", "--on", ON, typed=b"N" * size + b"\nAnnex\n")
    assert ran.exit == 0
    assert "too long" in ran.said
    assert CaseFile.load(home).case.court.branch == "Annex"


@pytest.mark.parametrize(
    "text",
    [
        "a: &a [x, x]\nb: *a\n",
        "a: &a [x]\nb: &b [*a, *a]\nc: [*b, *b]\n",
        "petitioner: !!python/object/apply:os.system [touch owned]\n",
        "<<: {petitioner.name: x}\n",
        "{" * 500,
        "- " * 5000,
        "petitioner.name: x\n" * 30_000,
        "petitioner.name: " + "N" * 900_000,
        "# " + "N" * 3_000_000,
        "\ufeff%TAG ! tag:x:\n--- !x\n",
        "a: \x00\n",
    ],
    ids=lambda text: text[:20],
)
def test_a_file_of_facts_that_is_a_trap_is_refused_at_once(run: Run, tmp_path: Path, text: str) -> None:
    (tmp_path / "facts.yaml").write_text(text, "utf-8")
    before = worked()
    ran = run("enter", "home.case", "facts.yaml", "--on", ON)
    assert ran.exit == 2
    assert worked() - before < 10
    assert [one.name for one in tmp_path.iterdir()] == ["facts.yaml"]


def test_a_file_of_facts_without_end_is_not_read_to_its_end(run: Run, tmp_path: Path) -> None:
    with (tmp_path / "facts.yaml").open("wb") as file:
        file.write(b"petitioner.name: Ana\n#")
        file.truncate(20_000_000_000)
    ran = run("enter", "home.case", "facts.yaml", "--on", ON)
    assert ran.exit == 2
    assert "too large" in ran.said


def test_windows_line_ends_are_read_like_others(run: Run, tmp_path: Path, home: Path) -> None:
    (tmp_path / "facts.yaml").write_bytes(
        b"\xef\xbb\xbfcourt.branch: Annex\r\npetitioner:\r\n  phone: none\r\n"
    )
    assert run("enter", "home.case", "facts.yaml", "--on", ON).exit == 0
    assert CaseFile.load(home).case.court.branch == "Annex"
    home.write_bytes(home.read_bytes().replace(b"\n", b"\r\n"))
    assert CaseFile.load(home).case.court.branch == "Annex"
    typed = b"North\r\n"
    assert run("change", "home.case", "court.branch", "--on", ON, typed=typed).exit == 0
    assert CaseFile.load(home).case.court.branch == "North"


OBEYED = (
    "=HYPERLINK(1)",
    "(\\) Tj /JS (x)",
    "<b onclick=x>&lt;",
    "{{ 7*7 }}{% x %}",
    "{0.__class__}",
    "%(x)s",
)


def test_what_a_program_would_obey_is_words_in_every_paper(run: Run, home: Path) -> None:
    file = CaseFile.load(home)
    text = " ".join(OBEYED)
    file.with_case(file.case.with_fact("petitioner.name", text)).save(home)
    assert run("packet", "home.case", "--html", "home.html", "--on", ON).exit in (0, 1)
    assert text in flat(run("items", "home.case", "--on", ON).out)
    html = home.with_name("home.html").read_text("utf-8")
    assert "<b onclick" not in html
    assert escape(text) in html
    pdf = PdfReader(home.with_name("home.pdf"))
    assert flat(text) in flat(" ".join(page.extract_text() for page in pdf.pages))
    assert not {"/OpenAction", "/AA", "/JavaScript"} & set(pdf.trailer["/Root"])


@pytest.mark.parametrize(
    "name", ["../../../etc/passwd", "/dev/zero", "/dev/full", "/proc/self/mem", "\n", "-", "con.case"]
)
def test_a_file_that_is_no_file_of_ours_is_left_alone(run: Run, tmp_path: Path, name: str) -> None:
    for command in ("check",) if name.startswith("/") else ("check", "undo"):
        assert run(command, "--", name).exit == 2
    assert [one for one in tmp_path.iterdir() if one.suffix != ".lock"] == []


def test_an_output_goes_through_no_link_onto_another_file(run: Run, home: Path, tmp_path: Path) -> None:
    victim = tmp_path / "letter.txt"
    victim.write_text("Dear court,")
    home.with_name("home.pdf").symlink_to(victim)
    ran = run("packet", "home.case", "--on", ON)
    assert ran.exit == 2
    assert victim.read_text() == "Dear court,"


def test_what_is_made_is_for_the_owner_alone_whatever_the_umask(run: Run, home: Path) -> None:
    assert run("packet", "home.case", "--on", ON).exit == 0
    assert run("undo", "home.case").exit == 0
    for one in home.parent.rglob("*"):
        allowed = 0o700 if one.is_dir() else 0o600
        assert stat.S_IMODE(one.stat().st_mode) & ~allowed == 0


# --- a sheet of one's own -------------------------------------------------------------------------------


def test_a_sheet_of_a_clinic_is_put_into_the_packet(run: Run, home: Path) -> None:
    (home.parent / "letter.html").write_bytes(b"<h1>Ours</h1>\r\n<p>Dear {{ petitioner }},</p>\r\n")
    ran = run("packet", "home.case", "--sheet", "letter.html", "--html", "home.html", "--on", ON)
    assert ran.exit == 0
    assert "Dear Dana Marie Okafor," in home.with_name("home.html").read_text("utf-8")


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"<h1>x</h1>\n<p>{{ case.petitioner }}</p>", "Line 2: a sheet can only put in words"),
        (b"<h1>x</h1>\n<script>", "<script> is not part of the sheet markup"),
        (b"\xff\xfe\x00", "it is not plain text"),
        (b"x" * 3_000_000, "longer than"),
        (None, "No such file"),
    ],
)
def test_a_sheet_that_cannot_be_used_is_told_and_nothing_is_drafted(
    run: Run, home: Path, content: bytes | None, said: str
) -> None:
    if content is not None:
        (home.parent / "letter.html").write_bytes(content)
    ran = run("packet", "home.case", "--sheet", "letter.html", "--on", ON)
    assert ran.exit == 2
    assert said in ran.said
    assert "letter.html" in ran.said
    assert not home.with_name("home.pdf").exists()
