"""`firstpaper money`: where the private pages go, what programs are told, and what it never touches."""

import stat
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

from firstpaper.casefile import CaseFile
from tests.cli.person import ON, Ran, flat
from tests.packet.money.invented import ALL
from tests.packet.reading_pdf import page_words

Run = Callable[..., Ran]


@pytest.fixture(params=[one.name for one in ALL])
def any_household(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """A case file with money in it."""
    return saved(tmp_path, request.param)


@pytest.fixture
def old_house(tmp_path: Path) -> Path:
    return saved(tmp_path, "old-house-and-pension")


def saved(folder: Path, name: str) -> Path:
    (one,) = (one for one in ALL if one.name == name)
    CaseFile(one.case).save(folder / "home.case")
    return folder / "home.case"


def words_of(pdf: bytes, passphrase: str | None = None) -> str:
    return flat(" ".join(page_words(pdf, passphrase)))


def test_the_pages_lie_beside_the_case_file_for_its_owner_alone(run: Run, any_household: Path) -> None:
    before = any_household.read_bytes()
    ran = run("money", "home.case", "--on", ON)
    assert ran.exit == 0
    assert "The money pages are in home-private.pdf." in flat(ran.out)
    assert "Do not file them" in flat(ran.out)
    made = any_household.with_name("home-private.pdf")
    assert stat.S_IMODE(made.stat().st_mode) == 0o600
    assert words_of(made.read_bytes()).count("Private: not for the court.") >= 5
    assert sorted(path.name for path in any_household.parent.iterdir()) == ["home-private.pdf", "home.case"]
    assert any_household.read_bytes() == before
    assert PdfReader(made).metadata["/Title"] == "Private pages"  # type: ignore[index]


def test_the_pictures_are_told_in_words(run: Run, old_house: Path) -> None:
    said = flat(run("money", "home.case", "--on", ON).out)
    assert "This picture shows what is left after debts, by what it is taken to be." in said
    assert "The other side's alone: $40,000, 17%." in said
    assert "Now: $169,355: separate $131,930.46, community $37,424.54." in said


def test_programs_get_the_same_figures_as_exact_text(run: Run, old_house: Path) -> None:
    data: dict[str, Any] = run("money", "home.case", "--on", ON, "--json").envelope["data"]
    assert (data["on"], data["pdf"], data["html"], data["warnings"]) == (ON, "home-private.pdf", None, [])
    assert [one["character"] for one in data["things"]][:4] == ["mixed", "mixed", "mixed", "community"]
    assert data["sums"]["community_estate"] == {"value": "36500.55", "owed": "7500.24", "net": "29000.31"}
    assert data["sums"]["left_out"] == ["asset.2", "asset.3"]
    assert data["proposal"]["payer"] == "respondent"
    house = data["estimates"]["house"]["asset.1"]
    assert (house["community"], house["separate"], house["equity"]) == ("37424.54", "131930.46", "169355")
    assert house["community_fraction"] == "92/383"
    assert data["estimates"]["pension"]["asset.2"]["months_in_marriage"] == 168
    assert data["estimates"]["stock_options"]["asset.3"]["hug"]["community"] == "750.00"
    assert data["estimates"]["after_separation"]["owed_to_petitioner"] == "-2100.00"
    assert data["support"]["certified"] is False
    assert data["support"]["child_support"] is None
    assert "presumed long" in data["support"]["half_length"]["refused"][0]


def test_support_is_told_with_its_range_and_what_is_refused(run: Run, tmp_path: Path) -> None:
    saved(tmp_path, "two-children-and-little-money")
    support = run("money", "home.case", "--on", ON, "--json").envelope["data"]["support"]
    assert support["child_support"]["payer"] == "petitioner"
    low = support["child_support"]["low_income"]
    assert (low["low"], low["high"], low["above_half"]) == ("418.02", "556.60", "no")
    assert support["added_costs"]["refused"]
    assert support["temporary_spousal"] is None


def test_no_share_below_minimum_wage_is_said_for_a_day_without_a_known_wage(run: Run, tmp_path: Path) -> None:
    saved(tmp_path, "two-children-and-little-money")
    ran = run("money", "home.case", "--on", "2027-01-04", "--json")
    assert ran.exit == 0
    assert "minimum wage" in ran.envelope["data"]["support"]["child_support"]["low_income"]["refused"][0]
    assert "up to $556.60" in words_of((tmp_path / "home-private.pdf").read_bytes())


def test_nothing_told_is_said_with_what_to_do(run: Run, tmp_path: Path) -> None:
    CaseFile().save(tmp_path / "home.case")
    ran = run("money", "home.case", "--on", ON)
    assert ran.exit == 2
    assert "Nothing about money has been told" in ran.said
    assert "with the command schedule" in ran.said
    assert not (tmp_path / "home-private.pdf").exists()
    assert run("money", "home.case", "--json").envelope["errors"][0]["code"] == "no_money_told"


def test_a_screen_version_and_another_place_can_be_chosen(run: Run, old_house: Path) -> None:
    ran = run("money", "home.case", "-o", "mine.pdf", "--html", "mine.html", "--on", ON)
    assert ran.exit == 0
    html = old_house.with_name("mine.html").read_text("utf-8")
    assert "Private: not for the court." in html
    assert html.count("<svg") == 2
    assert old_house.with_name("mine.pdf").exists()
    assert not old_house.with_name("home-private.pdf").exists()


def test_the_pages_can_be_locked_and_then_only_the_pdf(run: Run, old_house: Path) -> None:
    old_house.with_name("words").write_text("copper ladder moss evening\n")
    sealing = ("--seal", "--passphrase-from", "words", "--on", ON)
    assert "locked with their passphrase" in flat(run("money", "home.case", *sealing).out)
    made = old_house.with_name("home-private.pdf").read_bytes()
    assert PdfReader(BytesIO(made)).is_encrypted
    assert "City pension" in words_of(made, "copper ladder moss evening")
    ran = run("money", "home.case", *sealing, "--html", "mine.html")
    assert ran.exit == 2
    assert "cannot be locked" in ran.said


def test_a_file_that_is_no_draft_of_ours_is_left_alone(run: Run, old_house: Path) -> None:
    letter = old_house.with_name("home-private.pdf")
    letter.write_text("Dear court,")
    ran = run("money", "home.case", "--on", ON)
    assert ran.exit == 2
    assert letter.read_text() == "Dear court,"


def test_erasing_takes_the_private_pages_too(run: Run, old_house: Path) -> None:
    assert run("money", "home.case", "--on", ON, "--html", "home-private.html").exit == 0
    letter = old_house.with_name("other-private.pdf")
    letter.write_bytes(b"%PDF- not of this case")
    ran = run("erase", "home.case", "--yes")
    assert ran.exit == 0
    assert "home-private.pdf" in ran.out
    assert [path.name for path in old_house.parent.iterdir()] == ["other-private.pdf"]


def test_the_packet_command_makes_no_private_page(run: Run, old_house: Path) -> None:
    run("packet", "home.case", "--on", ON)
    assert "Private: not for the court." not in words_of(old_house.with_name("home.pdf").read_bytes())
    assert not old_house.with_name("home-private.pdf").exists()
