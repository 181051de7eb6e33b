"""`firstpaper check`: what stands in the way of a filing, and what to do about it."""

from collections.abc import Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NamedTuple

import typer

from firstpaper.cli.batch import for_each
from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import (
    HOME,
    CasesArgument,
    JsonOption,
    OnOption,
    RequireCompleteOption,
    filing_day,
)
from firstpaper.cli.result import Result, deliver, exit_for, state_of
from firstpaper.cli.terminal import Terminal
from firstpaper.cli.words.pictures import PicturesOption, before_filing
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.intake import Asked
    from firstpaper.law.changes import Change
    from firstpaper.law.finding import Finding

MOST_OPEN = 10
"""Open questions that are named one by one."""

AllOption = Annotated[
    bool, typer.Option("--all", help=_("Show every point, also what is only good to know."))
]
StepsOption = Annotated[
    bool, typer.Option("--steps", help=_("Show every point, and how each date and number is counted."))
]


class Shown(NamedTuple):
    """How much of a check is wanted."""

    everything: bool
    steps: bool
    pictures: bool


def check(
    cases: CasesArgument = None,
    on: OnOption = None,
    show_all: AllOption = False,
    steps: StepsOption = False,
    pictures: PicturesOption = False,
    require_complete: RequireCompleteOption = False,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Check the case against every rule."""

    def work(terminal: Terminal) -> Result:
        shown = Shown(everything=show_all or steps, steps=steps, pictures=pictures)
        paths, passphrases = cases or [HOME], Passphrases(terminal, passphrase_from)
        if len(paths) > 1:
            passphrases.shared()
        day = filing_day(on)
        return for_each(paths, lambda path: _check(path, day, passphrases, shown, require_complete))

    deliver("check", as_json, work)


def _check(path: Path, day: date, passphrases: Passphrases, shown: Shown, require_complete: bool) -> Result:
    from firstpaper.cli.words.findings import computed_values, finding_data, stops
    from firstpaper.cli.words.law_changes import change_data
    from firstpaper.forms.open_answers import item_numbers
    from firstpaper.forms.open_points import open_points
    from firstpaper.intake import standing
    from firstpaper.law.changes import changes
    from firstpaper.law.finding import waits
    from firstpaper.law.measures.record import judged_on
    from firstpaper.law.register import findings

    told = case_at(path, passphrases)
    case = standing(told)
    found = findings(case, day)
    soon = changes(case, day)
    stopping = stops(found)
    still_open, unfinished = open_points(case, day)
    pictures = before_filing(case, day) if shown.pictures else []
    verdict = " ".join(
        [
            _checked(day, judged_on(case, day)),
            _stop_line(len(stopping), waiting=any(map(waits, found))),
            *_open_line(len(still_open)),
            *_items_line(item_numbers(unfinished)),
        ]
    )
    return Result(
        data={
            "on": day,
            "state": state_of(bool(stopping), bool(still_open or unfinished)),
            "findings": [finding_data(one) for one in found],
            "changes": [change_data(one) for one in soon],
            "values": computed_values(found),
            "open_questions": [one.key for one in still_open],
            "open_items": [one.item or one.label for one in unfinished],
            "pictures": pictures[1:],
        },
        text="\n\n".join(
            [
                verdict,
                *_points(found, soon, shown),
                *_open(still_open),
                *pictures,
                *_counted(found, soon, path, shown),
                verdict,
                next_line(told, path, day),
            ]
        ),
        exit=exit_for(state_of(bool(stopping), bool(still_open or unfinished)), require_complete),
        line=_line(stopping, len(still_open), item_numbers(unfinished)),
    )


def _line(stopping: "Sequence[Finding]", still_open: int, items: str) -> str:
    """How the case stands, in one line."""
    parts = [
        *([_("stopped by {rules}").format(rules=", ".join(one.id for one in stopping))] if stopping else []),
        *(
            [_n("{count} open question", "{count} open questions", still_open).format(count=still_open)]
            if still_open
            else []
        ),
        *([_("not finished: {items}").format(items=items)] if items else []),
    ]
    return "; ".join(parts) or _("complete, and nothing stops a filing")


def _checked(day: date, judged: date) -> str:
    from firstpaper.counting import spell_date

    checked = _("Checked for a filing on {date}.").format(date=spell_date(judged))
    if judged == day:
        return checked
    return checked + " " + _("The court is closed on {date}.").format(date=spell_date(day))


def _stop_line(count: int, *, waiting: bool) -> str:
    if not count and waiting:
        return _("Nothing here stops a filing flatly, but you should wait a little.")
    if not count:
        return _("Nothing here stops a filing.")
    return _n("{count} thing stops a filing for now.", "{count} things stop a filing for now.", count).format(
        count=count
    )


def _items_line(numbers: str) -> list[str]:
    words = _("These items of FL-100 are not finished, so do not file yet: {items}.")
    return [words.format(items=numbers)] if numbers else []


def _open_line(count: int) -> list[str]:
    if not count:
        return []
    return [
        _n(
            "{count} question is not answered yet, so this check is not complete.",
            "{count} questions are not answered yet, so this check is not complete.",
            count,
        ).format(count=count)
    ]


def _points(found: Sequence["Finding"], soon: Sequence["Change"], shown: Shown) -> Iterator[str]:
    """What was found: all of it, or all but what is only good to know."""
    from firstpaper.cli.words.findings import findings_text
    from firstpaper.cli.words.law_changes import changes_text

    points = _to_show(found, shown)
    if points:
        yield findings_text(points, steps=shown.steps)
    yield from changes_text(_changes(soon, shown))


def _to_show(found: Sequence["Finding"], shown: Shown) -> "list[Finding]":
    """The points that are shown, each with those that are read with it."""
    from firstpaper.cli.words.findings import parts_of

    first = [one for one in found if shown.everything or _shown_first(one)]
    parts = [part for one in first for part in parts_of(one, found)]
    return [one for one in found if one in first or one in parts]


def _changes(soon: Sequence["Change"], shown: Shown) -> "list[Change]":
    """The changes that are shown. One in which nothing that we say changes is for programs only."""
    return [one for one in soon if one.heavier or one.lighter or (shown.everything and one.says_something)]


def _shown_first(one: "Finding") -> bool:
    """Whether a point is shown without being asked for: it is about safety, or more than good to know."""
    from firstpaper.law.finding import Weight, safety_first

    return safety_first(one) or one.weight is not Weight.GOOD_TO_KNOW


def _open(left: Sequence["Asked"]) -> Iterator[str]:
    if left:
        shown = [f"  - {one.ask}" for one in left[:MOST_OPEN]]
        if more := len(left) - len(shown):
            shown.append("  " + _n("And {count} more.", "And {count} more.", more).format(count=more))
        yield "\n".join([_("NOT ANSWERED YET"), *shown])


def _counted(found: Sequence["Finding"], soon: Sequence["Change"], path: Path, shown: Shown) -> Iterator[str]:
    """How much was left out, in one line, and how to read it."""
    from firstpaper.cli.words.findings import is_part

    points = _to_show(found, shown)
    left = sum(one not in points and not is_part(one, found) for one in found)
    left += sum(one.says_something for one in soon) - len(_changes(soon, shown))
    if left > 0 and not shown.everything:
        words = _n(
            "{count} more point is good to know. To read it too, type:",
            "{count} more points are good to know. To read them too, type:",
            left,
        )
        yield to_type(words.format(count=left), "check", path, "--all")
