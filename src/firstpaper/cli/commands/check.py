"""`firstpaper check`: what stands in the way of a filing, and what to do about it."""

from pathlib import Path

from firstpaper.cli.opening import case_at
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.picturing import PicturesOption, before_filing
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _, _n


def check(
    case: HomeArgument = HOME,
    on: OnOption = None,
    pictures: PicturesOption = False,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Check the case against every rule."""

    def work(terminal: Terminal) -> Result:
        return _check(case, on, Passphrases(terminal, passphrase_from), pictures=pictures)

    deliver("check", as_json, work)


def _check(path: Path, on: str | None, passphrases: Passphrases, *, pictures: bool) -> Result:
    from firstpaper.cli.changing import change_data, changes_text
    from firstpaper.cli.findings import computed_values, finding_data, findings_text, stops
    from firstpaper.counting import spell_date
    from firstpaper.forms.fl100.form import form as petition
    from firstpaper.forms.open_answers import item_numbers, open_items
    from firstpaper.intake import asked, standing
    from firstpaper.law.changes import changes
    from firstpaper.law.finding import waits
    from firstpaper.law.measures.residence import needless_keys
    from firstpaper.law.register import findings

    day = filing_day(on)
    case = standing(case_at(path, passphrases))
    found = findings(case, day)
    soon = changes(case, day)
    stopping = stops(found)
    needless = needless_keys(case, day)
    still_open = [one.key for one in asked(case) if case.fact(one.key) is None and one.key not in needless]
    unfinished = open_items(petition(case, day)[0].items, needless)
    shown = before_filing(case, day) if pictures else []
    head = _("Checked for a filing on {date}.").format(date=spell_date(day))
    return Result(
        data={
            "on": day,
            "findings": [finding_data(one) for one in found],
            "changes": [change_data(one) for one in soon],
            "values": computed_values(found),
            "open_questions": still_open,
            "open_items": [one.item or one.label for one in unfinished],
            "pictures": shown[1:],
        },
        text="\n\n".join(
            [
                head,
                _stop_line(len(stopping), waiting=any(map(waits, found))),
                *_open_line(len(still_open)),
                *_items_line(item_numbers(unfinished)),
                findings_text(found),
                *changes_text(soon),
                *shown,
            ]
        ),
        exit=Exit.STOPS if stopping else Exit.FINE,
    )


def _stop_line(count: int, *, waiting: bool) -> str:
    if not count and waiting:
        return _("Nothing here stops a filing flatly, but you should wait a little. See below until when.")
    if not count:
        return _("Nothing here stops a filing. Still read every point below.")
    return _n(
        "{count} thing stops a filing for now. It stands under STOP below.",
        "{count} things stop a filing for now. They stand under STOP below.",
        count,
    ).format(count=count)


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
