"""The figures: read strictly, in force without gap or overlap, and refused where unknown."""

import re
from datetime import date, timedelta
from functools import cache
from itertools import pairwise
from pathlib import Path

import pytest
import yaml

import firstpaper
from firstpaper import strict_yaml
from firstpaper.data_files import DataFileError
from firstpaper.law import figure as figures
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import (
    Figure,
    FigureNotInForce,
    NoValue,
    UnknownFigureError,
    all_figures,
    court_calendar,
    figure,
    oldest_check,
)
from firstpaper.law.figure_file import load_figures
from tests.each import for_each

ONE_DAY = timedelta(days=1)
TODAY = date(2026, 11, 25)
NEW_YEAR = date(2027, 1, 1)
BAD_FILES = yaml.safe_load((Path(__file__).parent / "cases/bad_figure_files.yaml").read_text("utf-8"))
every_figure = for_each(all_figures(), lambda each: each.name)


@pytest.fixture
def other_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder of figures of the test's own, with nothing kept from before or for later."""
    monkeypatch.setattr(figures, "FIGURES", tmp_path)
    for kept in ("_topic", "_court_calendar"):
        monkeypatch.setattr(figures, kept, cache(getattr(figures, kept).__wrapped__))
    return tmp_path


# Reading a file


@pytest.mark.parametrize("bad", BAD_FILES.values(), ids=BAD_FILES)
def test_a_bad_file_is_refused_by_name_and_place(tmp_path: Path, bad: dict[str, str]) -> None:
    path = tmp_path / "rent.yaml"
    path.write_text(bad["text"], encoding="utf-8")
    with pytest.raises(DataFileError) as refused:
        load_figures(path)
    assert str(refused.value).startswith(bad["says"])


def test_a_good_file_is_read_whole(tmp_path: Path) -> None:
    path = tmp_path / "rent.yaml"
    path.write_text(
        """
rent.limit:
  what: Most that may be asked
    for a room
  unit: dollars
  note: Invented.
  values:
    2020-01-01: {value: 900, authority: Act 1, certainty: court, checked_on: 2026-11-25, note: Low.}
    2021-01-01: {value: null, why: repealed.}
    2023-05-01: {value: {1: [yes, 2024-02-29]}, authority: B, certainty: secondary, checked_on: 2026-11-24}
""",
        encoding="utf-8",
    )
    (limit,) = load_figures(path)
    low, gap, high = limit.spans
    assert (limit.name, limit.what, limit.unit, limit.note) == (
        "rent.limit",
        "Most that may be asked for a room",
        "dollars",
        "Invented.",
    )
    assert (low.since, low.until, gap.since, gap.until, high.since, high.until) == (
        date(2020, 1, 1),
        date(2020, 12, 31),
        date(2021, 1, 1),
        date(2023, 4, 30),
        date(2023, 5, 1),
        None,
    )
    assert gap == NoValue("repealed.", date(2021, 1, 1), date(2023, 4, 30))
    assert limit.values == (low, high)
    assert limit.on(date(2020, 12, 31)).value == 900
    assert limit.on(date(2020, 12, 31)).note == "Low."
    assert limit.on(date(2023, 5, 1)).value == {1: (True, date(2024, 2, 29))}
    assert limit.on(date(2023, 5, 1)).certainty is Certainty.SECONDARY
    with pytest.raises(FigureNotInForce, match=r"on Thu, Jan 6, 2022 .* From Fri, Jan 1, 2021, repealed\."):
        limit.on(date(2022, 1, 6))


def test_the_slower_reader_reads_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where PyYAML was built without its C part."""
    monkeypatch.setattr(strict_yaml, "_TYPED", yaml.SafeLoader)
    assert (
        tuple(each for path in sorted(figures.FIGURES.glob("*.yaml")) for each in load_figures(path))
        == all_figures()
    )


def test_what_was_read_cannot_be_changed() -> None:
    guideline = figure("fee_waiver.poverty_guideline", TODAY).value
    with pytest.raises(TypeError):
        guideline[1] = 0
    assert isinstance(figure("fee_waiver.benefits", TODAY).value, tuple)
    with pytest.raises(TypeError):
        figure("fee_waiver.benefits", TODAY).value[0]["name"] = "none"


def test_only_the_file_asked_for_is_read_and_only_once(
    other_files: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    value = "{value: 1, authority: Act 1, certainty: court, checked_on: 2026-01-02}"
    for topic in ("rent", "food"):
        (other_files / f"{topic}.yaml").write_text(
            f"{topic}.limit: {{what: Limit, unit: days, values: {{2026-01-01: {value}}}}}", encoding="utf-8"
        )
    read: list[str] = []

    def load(path: Path) -> tuple[Figure, ...]:
        read.append(path.name)
        return load_figures(path)

    monkeypatch.setattr(figures, "load_figures", load)
    assert figure("rent.limit", TODAY).value == figure("rent.limit", NEW_YEAR).value == 1
    assert read == ["rent.yaml"]
    assert [each.name for each in all_figures()] == ["food.limit", "rent.limit"]
    assert read == ["rent.yaml", "food.yaml"]


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("residence.state_months", "6"),
        ("nullity.force_late_permission", "no"),
        ("fees.first_paper", "low: 435, high: 450"),
        ("form_edition.FL-100", "edition: Wednesday, January 1, 2020, verified_against_pdf: no"),
        ("form_edition.FL-311", "edition: not known, verified_against_pdf: no"),
        ("help.domestic_violence_hotline", "1-800-799-7233"),
        (
            "court_holidays.excluded",
            "Lunar New Year; Diwali; Genocide Remembrance Day; Admission Day; Columbus Day",
        ),
    ],
)
def test_a_value_in_words(name: str, words: str) -> None:
    assert figure(name, TODAY).in_words == words


def test_a_yes_in_words() -> None:
    assert figure("service.photographs", NEW_YEAR).in_words == "yes"


# Asking for a figure


@every_figure
def test_a_figure_has_one_answer_for_every_day(each: Figure) -> None:
    """No gap, no overlap, from its first value (or 2022) to the end of 2030."""
    assert all(earlier.until == later.since - ONE_DAY for earlier, later in pairwise(each.spans))
    assert each.spans[-1].until is None
    day = max(each.spans[0].since, date(2022, 1, 1))
    while day < date(2031, 1, 1):
        (span,) = [span for span in each.spans if span.since <= day <= (span.until or date.max)]
        if isinstance(span, NoValue):
            with pytest.raises(FigureNotInForce):
                figure(each.name, day)
        else:
            assert figure(each.name, day) == span
        day += ONE_DAY


@every_figure
def test_a_figure_is_refused_before_its_first_value(each: Figure) -> None:
    floor = each.spans[0].since
    assert figure(each.name, floor).since == floor
    with pytest.raises(FigureNotInForce, match=r"^We have no value before ") as refused:
        figure(each.name, floor - ONE_DAY)
    assert refused.value.name == each.name
    assert each.what in str(refused.value)


@every_figure
def test_a_value_says_what_it_does_not_know(each: Figure) -> None:
    """A value that nobody confirmed says so to the reader, not only in its tag."""
    doubts = ("memory", "not read", "not known", "not official", "presumed", "own limit")
    for value in each.values:
        words = " ".join((each.note, value.note, value.authority)).lower()
        assert value.certainty is not Certainty.UNCONFIRMED or any(doubt in words for doubt in doubts)


def test_the_floor_is_named_in_plain_words() -> None:
    with pytest.raises(FigureNotInForce) as refused:
        figure("marriage.long_years", date(1993, 12, 31))
    assert str(refused.value) == (
        "We have no value before Sat, Jan 1, 1994 for this figure: Years from marriage to separation after "
        "which a marriage is presumed to be long (marriage.long_years)."
    )


def test_a_known_end_is_named_in_plain_words() -> None:
    with pytest.raises(FigureNotInForce) as refused:
        figure("summary_dissolution.debt_limit", date(2027, 1, 4))
    assert str(refused.value) == (
        "There is no value on Mon, Jan 4, 2027 for this figure: Most the couple may owe from the marriage, "
        "cars left out, for a summary dissolution (summary_dissolution.debt_limit). From Fri, Jan 1, 2027, "
        "the amounts are set anew on this day, and were not published when we last looked."
    )


@pytest.mark.parametrize(
    "name", ["residence.nothing", "nothing.at_all", "residence", "", "../figures/residence.x"]
)
def test_an_unknown_name_is_refused(name: str) -> None:
    with pytest.raises(UnknownFigureError, match=r"^No figure is called "):
        figure(name, TODAY)


def test_the_oldest_check_is_the_day_we_can_vouch_for(other_files: Path) -> None:
    text = "{0}.limit: {{what: A, unit: days, values: {{2026-01-01: {{{1}, checked_on: {2}}}}}}}"
    for topic, checked_on in (("rent", "2026-11-02"), ("food", "2026-11-01"), ("water", "2026-11-03")):
        filled = text.format(topic, "value: 1, authority: Act 1, certainty: court", checked_on)
        (other_files / f"{topic}.yaml").write_text(filled, encoding="utf-8")
    assert oldest_check() == date(2026, 11, 1)


# What the law says


@pytest.mark.parametrize(
    ("name", "value", "authority"),
    [
        ("residence.state_months", 6, "Fam. Code 2320(a)"),
        ("residence.county_months", 3, "Fam. Code 2320(a); Code Civ. Proc. 395(a)"),
        ("residence.half_year_days", 182, "Gov. Code 6803"),
        ("residence.quarter_days", 91, "Gov. Code 6803"),
        ("marriage.long_years", 10, "Fam. Code 4336(b)"),
        ("nullity.age_of_consent", 18, "Fam. Code 2210(a)"),
        ("children.majority", 18, "Fam. Code 3402(b)"),
        ("response.days", 30, "Fam. Code 2020; Code Civ. Proc. 412.20(a)(3)"),
        ("disclosure.days", 60, "Fam. Code 2104(f)"),
        ("waiting.months", 6, "Fam. Code 2339(a)"),
        ("dismissal.serve_months", 36, "Code Civ. Proc. 583.210(a)"),
        ("dismissal.prove_service_days", 60, "Code Civ. Proc. 583.210(b)"),
        ("dismissal.finish_months", 60, "Code Civ. Proc. 583.310, 583.360"),
        ("service.complete_days.substituted", 10, "Code Civ. Proc. 415.20(b)"),
        ("service.complete_days.out_of_state_mail", 10, "Code Civ. Proc. 415.40"),
        ("service.complete_days.publication", 27, "Code Civ. Proc. 415.50(c); Gov. Code 6064"),
        ("paper.font_points", 12, "Cal. Rules of Court, rule 2.104"),
        ("fees.first_paper", {"low": 355 + 40 + 40, "high": 450}, None),
    ],
)
def test_a_figure_against_its_statute(name: str, value: object, authority: str | None) -> None:
    found = figure(name, TODAY)
    assert found.value == value
    assert authority in (found.authority, None)


def test_four_years_for_each_ground_that_has_a_count() -> None:
    """Fam. Code 2211(a)(1), (d), (e), (f)."""
    assert set(figure("nullity.limit_years", TODAY).value.values()) == {4}
    assert set(figure("nullity.limit_years", TODAY).value) == {
        "under_age",
        "fraud",
        "force",
        "physical_incapacity",
    }


@pytest.mark.parametrize(
    ("name", "before", "after"),
    [
        ("nullity.force_late_permission", False, True),  # Fam. Code 2211(g)(1), Stats. 2025, ch. 633
        ("service.photographs", False, True),  # Code Civ. Proc. 417.10, Stats. 2025, ch. 563
        ("service.attempts_before_substituted", 0, 3),  # Code Civ. Proc. 415.20(b)(2), the same act
    ],
)
def test_what_changes_on_january_1_2027(name: str, before: object, after: object) -> None:
    assert figure(name, NEW_YEAR - ONE_DAY).value == before
    assert figure(name, NEW_YEAR).value == after
    assert figure(name, NEW_YEAR - ONE_DAY).until == NEW_YEAR - ONE_DAY


def test_only_the_insurance_order_changes_on_january_1_2027() -> None:
    """Fam. Code 2040(a)(3), Stats. 2025, ch. 48: no lapse, no failure to renew."""
    old = figure("restraining_orders.text", NEW_YEAR - ONE_DAY).value
    new = figure("restraining_orders.text", NEW_YEAR).value
    (changed,) = [order for order in new if order not in old]
    assert len(old) == len(new) == 4
    assert "lapse" in changed
    assert "renew" in changed
    assert not any("lapse" in order for order in old)


@pytest.mark.parametrize("year", [2023, 2024, 2025, 2026])
def test_the_poverty_guideline_rises_by_one_step(year: int) -> None:
    """The federal notices use one step for every further person."""
    table = dict(figure("fee_waiver.poverty_guideline", date(year, 2, 1)).value)
    step = table.pop("each_more")
    assert list(table) == list(range(1, figure("fee_waiver.guideline_sizes", TODAY).value + 1))
    assert [more - fewer for fewer, more in pairwise(table.values())] == [step] * 7


def test_the_waiver_limits_printed_on_the_form_of_2023() -> None:
    """The form printed these monthly limits, rounded up to the next cent (request form, 2023)."""
    on = date(2023, 4, 1)
    table, percent = figure("fee_waiver.poverty_guideline", on).value, figure("fee_waiver.percent", on).value
    cents = [-(-table[size] * percent // 12) for size in (1, 2, 3, 4, 5, 6, "each_more")]
    assert cents == [243000, 328667, 414334, 500000, 585667, 671334, 85667]


def test_a_guideline_is_in_force_until_the_next() -> None:
    """91 Fed. Reg. 1797: effective January 13, 2026."""
    assert figure("fee_waiver.poverty_guideline", date(2026, 1, 12)).value[1] == 15650
    assert figure("fee_waiver.poverty_guideline", date(2026, 1, 13)).value[1] == 15960


@pytest.mark.parametrize("form", ["FL-100", "FL-105", "FL-110", "FL-160", "FW-001"])
def test_an_edition_is_a_day_and_was_not_laid_beside_the_form(form: str) -> None:
    edition = figure(f"form_edition.{form}", TODAY)
    assert edition.value["edition"] == edition.since
    assert edition.value["verified_against_pdf"] is False


def test_an_edition_not_known_is_left_empty() -> None:
    assert figure("form_edition.FL-110", NEW_YEAR).value["edition"] is None
    assert figure("form_edition.FL-115", TODAY).value["seen"] == (date(2015, 1, 1), date(2021, 1, 1))


# The court calendar


def test_no_court_closes_on_an_excluded_holiday() -> None:
    for year in range(2022, 2041):
        excluded = set(figure("court_holidays.excluded", date(year, 12, 31)).value)
        assert not excluded & {
            name.removesuffix(" (observed)") for name in court_calendar().holidays(year).values()
        }


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ("{name: New Year's Day, moon: 1}", "no day of the year can be read from this"),
        ("{name: New Year's Day, month: 2, day: 30}", "not every year has a day 30 of month 2"),
        (
            "{name: New Year's Day, month: 1, weekday: moonday, nth: 1}",
            "no day of the year can be read from this",
        ),
        ("{name: New Year's Day, month: 1, weekday: monday, nth: 5}", "not every month has weekday number 5"),
    ],
)
def test_a_holiday_that_cannot_be_read_is_refused_by_name(other_files: Path, value: str, says: str) -> None:
    checked = "authority: Act 1, certainty: statute, checked_on: 2026-11-25"
    (other_files / "court_holidays.yaml").write_text(
        f"court_holidays.new_year:\n  what: January 1\n  unit: yearly day\n"
        f"  values:\n    2015-01-01: {{value: {value}, {checked}}}\n",
        encoding="utf-8",
    )
    with pytest.raises(DataFileError, match=r"^court_holidays.yaml > court_holidays.new_year: ") as refused:
        court_calendar()
    assert says in str(refused.value)


@pytest.mark.parametrize(
    ("day", "known"),
    [
        (date(2014, 12, 31), False),
        (date(2015, 1, 1), True),
        (date(2040, 12, 31), True),
        (date(2041, 1, 1), False),
    ],
)
def test_the_court_calendar_knows_from_which_to_which_year_it_was_worked_out(day: date, known: bool) -> None:
    assert court_calendar().covers(day) is known


def test_the_hotline_has_one_number_wherever_it_is_written() -> None:
    """Help is shown before any law is loaded, so the number stands in words too. All must agree."""
    number = figure("help.domestic_violence_hotline", TODAY).value
    top = Path(firstpaper.__file__).parents[2]
    written = [path for name in ("src", "docs", "templates") for path in (top / name).rglob("*.*")]
    free_calls = {
        found
        for path in (top / "README.md", *written)
        if path.suffix in (".py", ".yaml", ".html", ".md")
        for found in re.findall(r"\b1-8\d\d-\d{3}-\d{4}\b", path.read_text("utf-8"))
    }

    assert free_calls == {number}
