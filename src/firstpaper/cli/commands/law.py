"""`firstpaper law`: every number, rule and source of law, and when somebody last checked it."""

from datetime import date
from typing import Annotated

import typer

from firstpaper.cli.options import JsonOption, filing_day
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

AboutArgument = Annotated[
    str | None,
    typer.Argument(
        metavar="WORD",
        help=_("Only what has this word in its name or its words, such as residence or 2320."),
        show_default=False,
    ),
]
LawDayOption = Annotated[
    str | None,
    typer.Option("--on", metavar="DATE", help=_("The day to look at, as 2026-11-30. Without it: today.")),
]
StaleOption = Annotated[
    int | None,
    typer.Option(
        "--stale",
        metavar="DAYS",
        min=0,
        help=_("Show only checks more than DAYS days old. If there are any, the exit status is 1."),
    ),
]


class NoSuchLaw(UserError):
    """No number, rule or source of law here has the word {what} in its name or its words.

    Try a shorter word, or one from a finding, such as residence. To see everything, leave the word out.
    """

    code = "no_such_law"


def law(
    about: AboutArgument = None,
    on: LawDayOption = None,
    stale: StaleOption = None,
    as_json: JsonOption = False,
) -> None:
    """List the law, the oldest check first."""
    deliver("law", as_json, lambda _terminal: _law(about, filing_day(on), stale))


def _law(about: str | None, day: date, stale: int | None) -> Result:
    from firstpaper.cli.words.law_list import checked_law, law_data, law_text, to_check_again

    found = [one for one in checked_law(day) if about is None or one.is_about(about)]
    if not found:
        raise NoSuchLaw(what=about)
    shown = found if stale is None else to_check_again(found, stale)
    head = _listed(len(shown), day) if stale is None else _stale(len(shown), stale, day)
    return Result(
        data={"on": day, "oldest_check": found[0].checked_on, "law": [law_data(one) for one in shown]},
        text="\n\n".join(filter(None, (head, law_text(shown, day)))),
        exit=Exit.STOPS if shown and stale is not None else Exit.FINE,
    )


def _listed(count: int, day: date) -> str:
    from firstpaper.counting import spell_date

    return _n(
        "{count} number, rule or source of law, as of {day}. The oldest check comes first.",
        "{count} numbers, rules and sources of law, as of {day}. The oldest check comes first.",
        count,
    ).format(count=count, day=spell_date(day))


def _stale(count: int, days: int, day: date) -> str:
    from firstpaper.counting import spell_date

    if not count:
        return _("Every number and every source was checked within {days} days before {day}.").format(
            days=days, day=spell_date(day)
        )
    return _n(
        "{count} was last checked more than {days} days before {day}.",
        "{count} were last checked more than {days} days before {day}.",
        count,
    ).format(count=count, days=days, day=spell_date(day))
