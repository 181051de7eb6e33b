"""The arguments and options that several commands share, and how they are read."""

import re
from collections.abc import Callable, Sequence
from datetime import date, timedelta
from pathlib import Path
from typing import Annotated, Any

import typer

from firstpaper.cli.clock import today
from firstpaper.errors import UserError
from firstpaper.locale import _

HOME = Path("home.case")
"""The case file where none is named. The name says nothing to somebody who sees it."""

CASE_ENDING = ".case"
"""How the name of a case file ends: by this a command tells it from the words after it."""

CaseArgument = Annotated[
    Path, typer.Argument(metavar="CASE", help=_("The case file, such as home.case."), show_default=False)
]
HomeArgument = Annotated[
    Path,
    typer.Argument(
        metavar="CASE",
        help=_("The case file. Without it: home.case in this folder. Choose a name that tells nothing."),
        show_default=False,
    ),
]
CasesArgument = Annotated[
    list[Path] | None,
    typer.Argument(
        metavar="[CASE]...",
        help=_("The case files, one or many. Without one: home.case in this folder."),
        show_default=False,
    ),
]


def case_to_read(help_text: str) -> Any:
    """A case file that a command can do without, with what it is good for."""
    return typer.Argument(metavar="CASE", help=help_text, show_default=False)


def pdf_option(help_text: str) -> Any:
    """`--output FILE.pdf`, with where the PDF goes without it."""
    return typer.Option("--output", "-o", metavar="FILE.pdf", help=help_text)


def titles_option(help_text: str) -> Any:
    """`--plain-titles`, with what stands in a calendar without it."""
    return typer.Option("--plain-titles/--full-titles", help=help_text, show_default=False)


HtmlOption = Annotated[
    Path | None, typer.Option("--html", metavar="FILE.html", help=_("Also make a version for the screen."))
]
SealPdfOption = Annotated[
    bool, typer.Option("--seal", help=_("Lock the PDF with a passphrase, to hand it over safely."))
]
RequireCompleteOption = Annotated[
    bool,
    typer.Option(
        "--require-complete", help=_("For scripts: end with exit status 3 where a question is still open.")
    ),
]
OnOption = Annotated[
    str | None,
    typer.Option(
        "--on",
        metavar="DATE",
        help=_(
            "The day you plan to file, as 2026-11-30 or 11/30/2026, or +7 for in a week. Without it: today."
        ),
    ),
]
TodayOption = Annotated[
    str | None,
    typer.Option("--on", metavar="DATE", help=_("Take this day for today, as 2026-11-30.")),
]
TopicOption = Annotated[
    list[str] | None,
    typer.Option("--topic", metavar="NAME", help=_("Only this topic, such as court. May be given again.")),
]
JsonOption = Annotated[bool, typer.Option("--json", help=_("Give the result as JSON, for other programs."))]
DefaultsOption = Annotated[
    Path | None,
    typer.Option(
        "--defaults",
        envvar="FIRSTPAPER_DEFAULTS",
        metavar="FACTS.yaml",
        help=_(
            "A file of facts that every new case begins with, such as the county and the courthouse of a "
            "clinic. Without it: the one that FIRSTPAPER_DEFAULTS names."
        ),
        show_envvar=False,
    ),
]


TODAY = "today"
_DAYS_ON = r"\+\d{1,4}"
_YEAR_FIRST = r"(?P<year>\d{4})-(?P<month>\d{1,2})-(?P<day>\d{1,2})"
_MONTH_FIRST = r"(?P<month>\d{1,2})/(?P<day>\d{1,2})/(?P<year>\d{4})"

FIRST_DAY, LAST_DAY = date(2000, 1, 1), date(2075, 12, 31)
"""The days for which a filing can be planned. Nothing is counted beyond what a lifetime may need."""


class ClockOutOfReach(UserError):
    """This computer's clock says {day}, so the day to count from is not known.

    The days of a case are counted from today, and a wrong day gives wrong papers. Nothing was changed. Set
    the clock right and try again, or say the day yourself, like this: --on 2026-11-30
    """

    code = "clock_out_of_reach"


class DayOutOfReach(UserError):
    """The day after --on is too far away: {day}.

    Nothing can be worked out for a filing on that day. Give the day you plan to file, between {first} and
    {last}, like this: --on 2026-11-30
    """

    code = "day_out_of_reach"


class NotADay(UserError):
    """The day after --on could not be read.

    The law is looked up for the day you plan to file, so it must be a whole date. Write the year, the
    month and the day, like this: --on 2026-11-30 (or 11/30/2026, or today, or +7 for in a week).
    """

    code = "not_a_day"


class TwoReadings(NotADay):
    """The day after --on can be read two ways: with the month first, or with the day first.

    The law is looked up for the day you plan to file. Write the year first, like this: --on 2026-11-30
    """

    code = "day_read_two_ways"


class NoSuchDay(NotADay):
    """The day after --on is in no calendar.

    The law is looked up for the day you plan to file. Look at the month and the day again, and write it like
    this: --on 2026-11-30
    """

    code = "no_such_day"


def cases_first(words: Sequence[str], is_word: Callable[[str], bool]) -> tuple[list[Path], list[str]]:
    """The case files that stand before the other words of a command; home.case where there are none.

    A word names a case file where it ends as one or where there is such a file. The first word does too,
    unless `is_word` knows it.
    """
    cases: list[Path] = []
    for word in words:
        if not _names_a_case(word) and (cases or is_word(word)):
            break
        cases.append(Path(word))
    return cases or [HOME], list(words[len(cases) :])


def case_first(words: Sequence[str], is_word: Callable[[str], bool]) -> tuple[Path, list[str]]:
    """The one case file that may stand before the other words of a command; home.case where there is none."""
    if words and (_names_a_case(words[0]) or not is_word(words[0])):
        return Path(words[0]), list(words[1:])
    return HOME, list(words)


def _names_a_case(word: str) -> bool:
    try:
        return word.endswith(CASE_ENDING) or Path(word).is_file()
    except (OSError, ValueError):  # longer than any name, or with a letter that no name has
        return False


def filing_day(text: str | None) -> date:
    """The day a command works for: the one given, or today. "today" and "+7" count from today."""
    if text is None:
        return _in_reach(today())
    day = _day(text.strip().lower())
    if not FIRST_DAY <= day <= LAST_DAY:
        raise DayOutOfReach(day=day, first=FIRST_DAY, last=LAST_DAY)
    return day


def _day(text: str) -> date:
    from firstpaper.intake.reading.day_order import two_readings

    if text == TODAY:
        return _in_reach(today())
    if re.fullmatch(_DAYS_ON, text):
        return _in_reach(today()) + timedelta(days=int(text))
    match = re.fullmatch(_YEAR_FIRST, text) or re.fullmatch(_MONTH_FIRST, text)
    if match is None:
        raise NotADay
    if "/" in text and two_readings(text):
        raise TwoReadings
    try:
        return date(int(match["year"]), int(match["month"]), int(match["day"]))
    except ValueError as error:
        raise NoSuchDay from error


def _in_reach(day: date) -> date:
    if not FIRST_DAY <= day <= LAST_DAY:
        raise ClockOutOfReach(day=day)
    return day
