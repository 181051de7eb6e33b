"""From what is recorded to the dates, through the commands: worked tables with their authority.

The commands run in this process, as the tables are long; that they run as programs is tested elsewhere.
"""

import json
from collections.abc import Callable, Iterator, Mapping
from datetime import date
from itertools import chain
from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from typer.testing import CliRunner, Result

from firstpaper.casefile import CaseFile
from firstpaper.cli.app import app
from firstpaper.intake.events import events
from firstpaper.law.agenda import agenda
from tests.cli.person import written

LATE = "2031-12-31"
TABLES = yaml.load(
    (Path(__file__).parent / "cases" / "what_follows.yaml").read_text("utf-8"), yaml.BaseLoader
)
Firstpaper = Callable[..., dict[str, Any]]


@pytest.fixture
def firstpaper(home: Path, monkeypatch: pytest.MonkeyPatch) -> Firstpaper:
    """Run a command on the case in this process; what it gives as data."""
    monkeypatch.chdir(home.parent)

    def run(command: str, *arguments: str, on: str = LATE) -> dict[str, Any]:
        done = invoke(command, "home.case", *arguments, "--on", on, "--json")
        assert done.exit_code == 0, done.output
        data: dict[str, Any] = json.loads(done.stdout)["data"]
        return data

    return run


def invoke(*arguments: str) -> Result:
    return CliRunner().invoke(app, list(arguments))


def rows() -> Iterator[Any]:
    for table in TABLES:
        for name, one in table["cases"].items():
            yield pytest.param(table, one, id=f"{table['table']}: {name}")


def steps(table: Mapping[str, Any], one: Mapping[str, Any]) -> Iterator[list[str]]:
    """The commands of `record`, in order."""
    served = one.get("served", [])
    filed = one.get("filed") or table["filed"][_year(one)]
    yield ["filed", f"day={filed}", *(["joint=yes"] if table.get("joint") else [])]
    if "fee" in one:
        yield ["fee", *one["fee"]]
    if "summary" in one:
        yield ["summary", *one["summary"]]
    if "amended" in one:
        yield ["revoked", f"day={one['amended']}", "by=petitioner"]
        yield ["amended-served", f"day={one['amended']}", *served]
    elif served:
        yield ["served", *served]
    if "then" in one:
        yield one["then"]


def _year(one: Mapping[str, Any]) -> str:
    told = one.get("amended") or next(detail for detail in one["served"] if detail.startswith("day="))
    year = str(told).removeprefix("day=")[:4]
    return "2026" if year == "2027" else year


@pytest.mark.parametrize(("table", "one"), list(rows()))
def test_what_is_recorded_gives_the_dates_of_the_table(
    firstpaper: Firstpaper, table: Mapping[str, Any], one: Mapping[str, Any]
) -> None:
    assert table["authority"].strip()
    for event, *details in steps(table, one):
        firstpaper("record", event, *details)
    data = firstpaper("dates")
    assert data["planned"] is False
    (found,) = [each for each in data["dates"] if each["key"] == table["key"]]
    assert found["target"] == one["target"]
    assert found["rolled"] == one.get("rolled", one["target"])
    assert one.get("says", "") in found["if_missed"]
    assert found["authority"] == table["names"]
    assert found["steps"]
    assert not {each["key"] for each in (*data["dates"], *data["not_running_yet"])} & set(
        table.get("gives_none", ())
    )
    assert [each["target"] for each in data["dates"]] == sorted(each["target"] for each in data["dates"])


def test_an_event_is_recorded_with_what_follows_from_it(firstpaper: Firstpaper) -> None:
    filed = firstpaper("record", "filed", "day=2026-11-25", "number=26FL001234", "fee=paid", on="2026-11-30")
    assert filed["changed"] == ["record.case_number", "record.fee", "record.filed_on"]
    assert filed["not_told"] == ["record.joint"]
    served = firstpaper("record", "served", "method=personal", "day=2026-11-26", on="2026-11-30")
    new = {each["key"]: (each["target"], each["rolled"]) for each in served["new_dates"]}
    assert new["response.petition"] == ("2026-12-26", "2026-12-28")
    assert new["waiting.earliest_end"] == ("2027-05-27", "2027-05-27")
    data = firstpaper("dates", on="2026-11-30")
    assert data["case_number"] == "26FL001234"
    assert [each["event"] for each in data["recorded"]] == ["filed", "fee", "served"]


def test_a_day_the_court_was_closed_moves_the_dates_that_fall_on_it(firstpaper: Firstpaper) -> None:
    """Code Civ. Proc. 12b, over the court holidays published for November 2026."""
    firstpaper("record", "filed", "day=2026-10-20")
    firstpaper("record", "served", "method=personal", "day=2026-10-26")
    closed = firstpaper("record", "closed", "closed=2026-11-25, power cut", on="2026-11-25")
    moved = {each["key"]: (each["target"], each["rolled"]) for each in closed["new_dates"]}
    assert moved["response.petition"] == ("2026-11-25", "2026-11-30")
    assert moved["response.default_from"] == ("2026-12-01", "2026-12-01")
    (due,) = [each for each in firstpaper("dates")["dates"] if each["key"] == "response.petition"]
    assert "Wed, Nov 25, 2026: court closed: power cut" in due["steps"]
    undone = firstpaper("record", "--undo", "closed")
    assert undone["changed"] == ["record.court_closed"]


def test_recording_again_corrects_and_keeps_the_rest(firstpaper: Firstpaper) -> None:
    firstpaper("record", "filed", "day=2026-11-25", "number=26FL001234")
    again = firstpaper("record", "filed", "day=2026-11-24")
    assert again["changed"] == ["record.filed_on"]
    assert again["recorded"][0]["facts"] == {
        "record.filed_on": "2026-11-24",
        "record.case_number": "26FL001234",
    }
    without = firstpaper("record", "filed", "number=none")
    assert "record.case_number" not in without["recorded"][0]["facts"]


def test_an_event_is_taken_out_with_what_hung_on_it(firstpaper: Firstpaper) -> None:
    firstpaper("record", "filed", "day=2026-11-02")
    firstpaper("record", "served", "method=acknowledgment", "mailed=2026-11-03")
    firstpaper("record", "acknowledged", "day=2026-11-16", "back=2026-11-20")
    data = firstpaper("record", "--undo", "served")
    assert data["changed"] == [
        "record.service.acknowledged_on",
        "record.service.acknowledgment_back_on",
        "record.service.mailed_on",
        "record.service.method",
    ]
    assert [each["event"] for each in data["recorded"]] == ["filed"]


def test_before_the_filing_every_date_is_planned_for_the_day_given(firstpaper: Firstpaper) -> None:
    data = firstpaper("dates", on="2026-11-25")
    assert data["planned"] is True
    assert data["filed_on"] is None
    assert data["dates"]
    assert {each["state"] for each in data["dates"]} == {"ahead"}
    assert all(each["planned"] for each in data["dates"])
    waiting = {each["key"]: each for each in data["not_running_yet"]}
    assert waiting["response.petition"]["starts"] == "once the papers are served"
    assert (
        waiting["response.petition"]["rolled"] == "2026-12-28"
    )  # as if served on November 25 (Fam. Code 2020)
    assert waiting["waiting.earliest_end"]["target"] == "2027-05-26"  # Fam. Code 2339(a)
    moved = firstpaper("dates", on="2026-12-02")
    assert {each["key"]: each["target"] for each in moved["dates"]}["disclosure.petitioner"] == "2027-01-31"


def test_three_tries_are_asked_for_only_from_2027_on(firstpaper: Firstpaper) -> None:
    """Code Civ. Proc. 415.20(b)(2) as operative January 1, 2027 (Stats. 2025, ch. 563)."""
    firstpaper("record", "filed", "day=2026-12-01")

    def ids(day: str) -> list[str]:
        left = f"day={day}", f"mailed={day}", "attempts=2026-12-02 8 am"
        notes = firstpaper("record", "served", "method=substituted", *left)["notes"]
        firstpaper("record", "--undo", "served")
        return [one["id"] for one in notes if one["weight"] == "get_advice"]

    assert ids("12/31/2026") == []
    assert ids("1/1/2027") == ["service.substituted"]


# --- what is refused ------------------------------------------------------------------------------------

FILED = ["filed", "day=2026-12-01"]
SERVED = ["served", "method=personal", "day=2026-12-05"]
REFUSED = {
    "served before it was filed": ([FILED], ["served", "method=personal", "day=2026-11-05"], "not_possible"),
    "filed after it was served": ([FILED, SERVED], ["filed", "day=2026-12-06"], "not_possible"),
    "answered before it was filed": ([FILED], ["response", "day=2026-11-30"], "not_possible"),
    "proved before it was served": ([FILED, SERVED], ["proof", "day=2026-12-04"], "not_possible"),
    "a default before the service": ([FILED, SERVED], ["default", "day=2026-12-04"], "not_possible"),
    "signed before it was mailed": (
        [FILED, ["served", "method=acknowledgment", "day=2026-12-05"]],
        ["acknowledged", "day=2026-12-04"],
        "not_possible",
    ),
    "a joint petition before the law had them": (
        [],
        ["filed", "day=2025-12-31", "joint=yes"],
        "not_possible",
    ),
    "a day to come": ([], ["filed", "day=2027-12-31"], "detail_refused"),
    "a day that can be read two ways": ([], ["filed", "day=12/1/2026"], "detail_refused"),
    "no such day": ([], ["filed", "day=2026-02-30"], "detail_refused"),
    "a social security number": ([], ["filed", "day=2026-12-01", "number=123-45-6789"], "detail_refused"),
    "a way that is none": ([FILED], ["served", "method=pigeon"], "detail_refused"),
    "a detail of another way": (
        [FILED],
        ["served", "method=personal", "mailed=2026-12-05"],
        "detail_does_not_fit",
    ),
    "a detail nobody knows": ([FILED], ["served", "method=personal", "shoe=44"], "no_such_detail"),
    "no detail at all": ([], ["filed", "yesterday"], "no_such_detail"),
    "nothing told": ([], ["filed"], "not_told"),
    "only the number": ([], ["filed", "number=26FL001234"], "not_told"),
    "a form back that never went out": (
        [FILED, SERVED],
        ["acknowledged", "day=2026-12-06"],
        "event_does_not_fit",
    ),
    "ended together though filed alone": ([FILED], ["revoked", "day=2026-12-06"], "event_does_not_fit"),
    "an event nobody knows": ([], ["married", "day=2026-12-01"], "no_such_event"),
    "no event": ([], [], "event_needed"),
    "taking out what is not there": ([], ["--undo", "served"], "not_recorded"),
}


@pytest.mark.parametrize(("before", "refused", "code"), REFUSED.values(), ids=REFUSED)
def test_what_cannot_be_is_refused_and_nothing_changes(
    firstpaper: Firstpaper, home: Path, before: list[list[str]], refused: list[str], code: str
) -> None:
    for event, *details in before:
        firstpaper("record", event, *details, on="2027-06-01")
    saved = home.read_bytes()
    done = invoke("record", "home.case", *refused, "--on", "2027-06-01", "--json")
    envelope = json.loads(done.stdout)
    assert (done.exit_code, [each["code"] for each in envelope["errors"]]) == (2, [code])
    assert "123-45-6789" not in done.output
    assert home.read_bytes() == saved


# --- whatever is recorded -----------------------------------------------------------------------------------

DAYS = st.dates(date(2026, 10, 1), date(2027, 4, 30)).map(lambda day: f"{day:%m/%d/%Y}")
VALUES = {
    "date": DAYS,
    "yes_no": st.sampled_from(["yes", "no"]),
    "text": st.just("26FL001234"),
    "attempts": DAYS.map(lambda day: f"{day} 8 am"),
    "closures": DAYS.map(lambda day: f"{day}, power cut"),
    "periods": DAYS.map(lambda day: f"since {day}, a stay"),
    "quantity": st.integers(1, 99).map(str),
}
TOPICS = {topic.name: topic for topic in events().topics}
DETAILS = {(name, question.key): question for name, topic in TOPICS.items() for question in topic.questions}


def detail(question: Any) -> st.SearchStrategy[str]:
    values = [choice.value for choice in question.choices]
    told = st.sampled_from(values) if values else VALUES[question.kind.value]
    return st.one_of(told, st.just("don't know"), st.just("none")).map(
        lambda value: f"{question.key}={value}"
    )


@st.composite
def commands(draw: st.DrawFn) -> list[list[str]]:
    """An event with each of its details in turn, with one of them, or taken out."""
    name = draw(st.sampled_from(sorted(TOPICS)))
    how = draw(st.sampled_from(["all", "all", "one", "undo"]))
    if how == "undo":
        return [["--undo", name]]
    if how == "one":
        event, key = draw(st.sampled_from(sorted(DETAILS)))
        return [[event, draw(detail(DETAILS[event, key]))]]
    return [[name, draw(detail(question))] for question in TOPICS[name].questions]


@settings(max_examples=15, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(told=st.lists(commands(), max_size=6), on=st.dates(date(2026, 11, 1), date(2031, 12, 31)))
def test_no_sequence_of_records_breaks_anything(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, told: list[list[list[str]]], on: date
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "home.case").unlink(missing_ok=True)
    written(tmp_path, "plain-childless-divorce")
    for command in chain.from_iterable(told):
        done = invoke("record", "home.case", *command, "--on", "2027-05-01", "--json")
        envelope = json.loads(done.stdout)
        assert done.exit_code in (0, 2), done.output
        assert [each["code"] for each in envelope["errors"] if each["code"] == "program_fault"] == []
    data = json.loads(invoke("dates", "home.case", "--on", on.isoformat(), "--json").stdout)["data"]
    targets = [each["target"] for each in data["dates"]]
    assert targets == sorted(targets)
    assert all(each["target"] <= each["rolled"] for each in (*data["dates"], *data["not_running_yet"]))
    shown = {each["key"] for each in (*data["dates"], *data["not_running_yet"])}
    case = CaseFile.load(tmp_path / "home.case").case
    assert shown == {one.deadline.key for one in agenda(case, on).entries} | {
        one.example.key for one in agenda(case, on).later
    }
