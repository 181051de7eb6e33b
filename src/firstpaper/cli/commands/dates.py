"""`firstpaper dates`: every date of the case, how it is counted, who has to act and what follows."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NamedTuple

import typer

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, filing_day, titles_option
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.cli.words.pictures import PicturesOption, days_of_the_case
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.law.agenda import Agenda
    from firstpaper.law.finding import Finding


CALENDAR_ID_LETTERS = 20

IcsOption = Annotated[
    Path | None,
    typer.Option("--ics", metavar="FILE.ics", help=_("Also make a calendar file, to import or to print.")),
]
PlainTitlesOption = Annotated[
    bool | None,
    titles_option(
        _(
            'In the calendar file, call every date just "Reminder", or by its name. Without either: Reminder '
            "where you told of danger or of a shared computer."
        )
    ),
]
AllOption = Annotated[
    bool, typer.Option("--all", help=_("Show the years ahead too, and how every date is counted."))
]
DayOption = Annotated[
    str | None,
    typer.Option(
        "--on",
        metavar="DATE",
        help=_("Before the filing: the day you plan to file. After it: the day to look from. Or today."),
    ),
]


class NothingForCalendar(UserError):
    """There is no date to put into a calendar yet, so no calendar file was made.

    Most dates count from the filing. Record it with the command record, or answer the open questions first.
    """

    code = "nothing_for_calendar"


def dates(
    case: HomeArgument = HOME,
    ics: IcsOption = None,
    plain_titles: PlainTitlesOption = None,
    show_all: AllOption = False,
    pictures: PicturesOption = False,
    on: DayOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show every date of the case, with how it is counted."""

    def work(terminal: Terminal) -> Result:
        from firstpaper.cli.talk.lock_offer import risky

        passphrases = Passphrases(terminal, passphrase_from)
        day = filing_day(on)
        facts = _tied_to_calendar(case, passphrases) if ics else case_at(case, passphrases)
        plain = risky(facts) if plain_titles is None else plain_titles
        return _dates(case, facts, day, Wanted(ics, plain, show_all, pictures))

    deliver("dates", as_json, work)


class Wanted(NamedTuple):
    """What is wanted beside the dates: a calendar file, and the picture of the days in words."""

    ics: Path | None
    plain_titles: bool
    everything: bool
    pictures: bool


def _dates(path: Path, told: "Case", day: date, wanted: Wanted) -> Result:
    from firstpaper.cli.words.agenda import agenda_text, ended_words
    from firstpaper.intake import standing
    from firstpaper.law.agenda import agenda
    from firstpaper.law.measures.ending import ended

    case = standing(told)
    found = agenda(case, day)
    notes = _notes(case, day)
    said = ["\n".join(part for part in (one.says, one.do) if part) for one in notes]
    shown = days_of_the_case(case, day) if wanted.pictures else []
    ics = wanted.ics
    made = [_make_calendar(case, found, ics, plain_titles=wanted.plain_titles)] if ics else []
    if over := ended(case, day):
        said.insert(0, ended_words(over))
    return Result(
        data={**_data(case, found, notes), "pictures": shown[1:], "ics": str(ics) if ics else None},
        text="\n\n".join(
            [
                *said,
                agenda_text(case, found, _now(told, day), everything=wanted.everything),
                *shown,
                *made,
                next_line(told, path, day),
            ]
        ),
    )


def _now(case: "Case", day: date) -> str:
    """What is to be done before any of the days, once the petition is filed; empty where nothing is."""
    from firstpaper.packet.next_step import next_step

    step = next_step(case, day)
    return _("Now: {words}").format(words=step.words) if step.command == "record" else ""


def _tied_to_calendar(path: Path, passphrases: Passphrases) -> "Case":
    """The facts, with the random word that a calendar knows the case by; drawn and saved the first time."""

    with passphrases.opening(path) as opened:
        if opened.case.record.calendar_id is None:
            tied = opened.case.with_fact("record.calendar_id", _random_word())
            opened.keep(opened.file.with_case(tied))
        return opened.case


def _random_word() -> str:
    from secrets import choice
    from string import ascii_lowercase

    return "".join(choice(ascii_lowercase) for _letter in range(CALENDAR_ID_LETTERS))


def _make_calendar(case: "Case", found: "Agenda", path: Path, *, plain_titles: bool) -> str:
    from firstpaper.cli.files.output import CALENDAR, write_output
    from firstpaper.cli.talk.lock_offer import risky
    from firstpaper.facts import known
    from firstpaper.packet.calendar import calendar

    if not found.entries:
        raise NothingForCalendar
    tied_to = known(case.record.calendar_id) or ""
    write_output(path, calendar(found, tied_to, plain_titles=plain_titles), CALENDAR)
    lines = [
        _("The calendar file is {path}.").format(path=path),
        _(
            "Whoever sees the calendar you put it in sees these dates. Many calendars are shared, or show up "
            "on a phone or a computer that others use."
        ),
    ]
    lines.append(_titles_note(plain=plain_titles, careful=risky(case)))
    lines.append(
        _("Put it in a calendar of its own. If dates change, make it anew and import it there again.")
    )
    return " ".join(lines)


def _titles_note(*, plain: bool, careful: bool) -> str:
    if plain:
        return _("Each date in it is just called Reminder.")
    if careful:
        return _(
            "You told us that somebody must not find out. Add --plain-titles: then each date is called "
            "Reminder. Or use no calendar at all."
        )
    return _("The titles name nobody. With --plain-titles each date is just called Reminder.")


def _notes(case: "Case", on: date) -> "list[Finding]":
    """What in the record cannot be, or cannot be counted from."""
    from firstpaper.law.register import findings

    return list(findings(case, on, ["dates.filing_day", "dates.record_order"]))


def _data(case: "Case", found: "Agenda", notes: "list[Finding]") -> dict[str, object]:
    from firstpaper.cli.words.agenda import entry_data, events_data, later_data
    from firstpaper.cli.words.findings import finding_data
    from firstpaper.law.measures.record import case_number

    return {
        "on": found.on,
        "filed_on": found.filed_on,
        "planned": found.planned,
        "case_number": case_number(case),
        "recorded": events_data(case),
        "dates": [entry_data(one) for one in found.entries],
        "not_running_yet": [later_data(one) for one in found.later],
        "notes": [finding_data(one) for one in notes],
    }
