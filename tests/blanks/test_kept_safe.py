"""What a filled copy, a map and a proof may hold, and from whom they are kept."""

import shutil
from datetime import date
from pathlib import Path

import pytest
from pypdf import PdfReader

from firstpaper.blanks.checking import values
from firstpaper.cli.shapes import SHAPES
from firstpaper.forms import filled_forms
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm
from firstpaper.intake import standing
from tests.blanks.drawn_blanks import Drawn, Family, drawn
from tests.blanks.worked import worked
from tests.cli.person import ON, run_in, written
from tests.hostile.planted import Place, keys, secret
from tests.hostile.test_planted import DAYS, HIDING, TOP, fled
from tests.packet.drawn import household

PAPER = drawn(edition_for("FL-110", date.fromisoformat(ON)), Family.FULL, seed=4)


FORMS = filled_forms(standing(fled(HIDING[0])), DAYS[0])


@pytest.mark.parametrize("form", FORMS, ids=[form.form for form in FORMS])
def test_an_address_kept_off_is_in_no_field(form: FilledForm) -> None:
    done = worked(form, Family.SHORT)
    held = {done.drawn.truth[key] or "": text for key, text in values(done.pdf, "filled").items() if text}
    assert held
    for hidden in keys(Place.NOWHERE, Place.PRIVATE_PAGES):
        assert not any(secret(hidden) in text for text in held.values())
        assert secret(hidden).encode() not in done.pdf
    for hidden in keys(Place.TOP_OF_THE_FORMS):
        assert all(what.startswith(TOP) for what, text in held.items() if secret(hidden) in text)


def learned(tmp_path: Path, form: str = "FL-110", paper: Drawn = PAPER) -> Path:
    """A folder with a blank that was confirmed in it, beside a case."""
    if not (tmp_path / "home.case").exists():
        written(tmp_path, "plain-childless-divorce")
    blanks = tmp_path / "blanks"
    blanks.mkdir()
    (blanks / f"{form}.pdf").write_bytes(paper.pdf)
    assert run_in(tmp_path, "blank", f"blanks/{form}.pdf").exit == 0
    confirm = ("blank", f"blanks/{form}.map.yaml", "--confirm", "--who", "A.H.", "--json")
    done = run_in(tmp_path, *confirm, typed="yes\n" * 60)
    assert done.exit == 0, done.err
    SHAPES["blank"].model_validate(done.envelope["data"])
    return blanks


def test_maps_and_proofs_hold_nothing_of_a_case(tmp_path: Path) -> None:
    blanks = learned(tmp_path)
    before = {path.name: path.read_bytes() for path in blanks.iterdir()}
    assert run_in(tmp_path, "packet", "home.case", "--blanks", "blanks", "--on", ON).exit in (0, 1)
    assert (tmp_path / "home-FL-110.pdf").exists()
    assert {path.name: path.read_bytes() for path in blanks.iterdir()} == before
    case = household("plain-childless-divorce").case
    names = [str(case.fact("petitioner.name")), str(case.fact("respondent.name"))]
    for data in before.values():
        assert not any(name.encode() in data for name in names)
    text = " ".join(page.extract_text() for page in PdfReader(blanks / "FL-110.proof.pdf").pages)
    assert not any(name in text for name in names)


def test_a_map_that_came_with_its_folder_fills_nothing_before_it_is_confirmed_here(tmp_path: Path) -> None:
    blanks = learned(tmp_path)
    shutil.copytree(blanks, tmp_path / "brought")
    shutil.rmtree(blanks)
    done = run_in(tmp_path, "packet", "home.case", "--blanks", "brought", "--on", ON)
    assert not (tmp_path / "home-FL-110.pdf").exists()
    assert "Not filled in" in done.out
    assert "firstpaper blank brought/FL-110.map.yaml --confirm" in done.out


def test_one_byte_changed_in_a_confirmed_map_fills_nothing(tmp_path: Path) -> None:
    blanks = learned(tmp_path)
    path = blanks / "FL-110.map.yaml"
    path.write_text(path.read_text("utf-8") + "\n# seen\n", "utf-8")
    run_in(tmp_path, "packet", "home.case", "--blanks", "blanks", "--on", ON)
    assert not (tmp_path / "home-FL-110.pdf").exists()


def test_a_filled_copy_is_locked_and_erased_as_the_packet_is(tmp_path: Path) -> None:
    learned(tmp_path)
    (tmp_path / "words").write_text("correct horse battery staple and more\n")
    done = run_in(
        tmp_path,
        "packet",
        "home.case",
        "--blanks",
        "blanks",
        "--seal",
        "--passphrase-from",
        "words",
        "--on",
        ON,
    )
    copy = tmp_path / "home-FL-110.pdf"
    assert copy.exists(), done.err
    assert PdfReader(copy).is_encrypted
    assert not PdfReader(copy).decrypt("")
    assert run_in(tmp_path, "erase", "home.case", "--yes").exit == 0
    assert not copy.exists()


def test_the_petition_for_both_is_filled_in_where_it_is_open_to_the_two(tmp_path: Path) -> None:
    written(tmp_path, "both-file-together")
    paper = drawn(edition_for("FL-700", date.fromisoformat(ON)), Family.FULL, seed=4)
    learned(tmp_path, "FL-700", paper)
    assert run_in(tmp_path, "packet", "home.case", "--blanks", "blanks", "--on", ON).exit == 0
    assert household("both-file-together").case.fact("petitioner.name") in " ".join(
        values((tmp_path / "home-FL-700.pdf").read_bytes(), "filled").values()
    )
