"""`firstpaper record`: what has happened since the filing, so that the dates can be counted."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.options import JsonOption, TodayOption, case_first, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import InputEnded, Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.intake import Topic

WordsArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="[CASE] [EVENT] [DETAIL=VALUE]...",
        autocompletion=tab_key.events,
        help=_(
            "The case file; what happened, such as filed, served, response or judgment; and what you know "
            "about it, such as day=2026-03-02. What is missing you are asked. Without a case file: "
            "home.case in this folder."
        ),
        show_default=False,
    ),
]
ListOption = Annotated[bool, typer.Option("--list", help=_("Show what is recorded, and change nothing."))]
UndoOption = Annotated[
    str | None, typer.Option("--undo", metavar="EVENT", help=_("Take an event out of the record."))
]


class NotRecorded(UserError):
    """The event {name} is not recorded, so there is nothing to take out.

    To see what is recorded, add --list to the command instead.
    """

    code = "not_recorded"


def record(
    words: WordsArgument = None,
    show: ListOption = False,
    undo: UndoOption = None,
    on: TodayOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Record what has happened since the filing, or correct it."""

    def work(terminal: Terminal) -> Result:
        day, passphrases = filing_day(on), Passphrases(terminal, passphrase_from)
        case, more = case_first(words or [], _is_event)
        if show:
            return _list(case, day, passphrases)
        if undo:
            return _take_out(case, undo, day, passphrases)
        return _record(terminal, case, more[0] if more else None, more[1:], day, passphrases)

    deliver("record", as_json, work)


def _is_event(word: str) -> bool:
    from firstpaper.intake.events import event

    return event(word.strip().lower()) is not None


def _list(path: Path, on: date, passphrases: Passphrases) -> Result:
    from firstpaper.cli.files.case import case_at
    from firstpaper.cli.words.agenda import event_lines
    from firstpaper.cli.words.recorded import recorded_data

    case = case_at(path, passphrases)
    lines = list(event_lines(case))
    ways = _("To correct one, record it again. To take one out, add --undo and its name.")
    text = "\n\n".join([*lines, ways]) if lines else _("Nothing is recorded yet.")
    return Result(data=recorded_data(case, case, None, on), text=text)


def _take_out(path: Path, name: str, on: date, passphrases: Passphrases) -> Result:
    from firstpaper.cli.given.events import named_event
    from firstpaper.cli.words.recorded import recorded_data, taken_out_text
    from firstpaper.intake.events import happened_already, without_event

    topic = named_event(name)
    with passphrases.opening(path) as opened:
        before = opened.case
        if not happened_already(topic, before):
            raise NotRecorded(name=topic.name)
        after = without_event(before, topic)
        step = _("taken out of the record ({event})").format(event=_(topic.title))
        opened.keep(opened.file.with_case(after).after(step))
    data = recorded_data(before, after, topic, on)
    return Result(data=data, text=taken_out_text(before, after, topic, on, path))


def _record(
    terminal: Terminal, path: Path, name: str | None, given: list[str], on: date, passphrases: Passphrases
) -> Result:
    from firstpaper.cli.given.events import EventNeeded, event_names, named_event
    from firstpaper.cli.terminal import Left
    from firstpaper.cli.words.recorded import recorded_data, recorded_text

    topic = named_event(name) if name else None
    if topic is None and not terminal.interactive:
        raise EventNeeded(what=", ".join(event_names()))
    with passphrases.opening(path) as opened:
        before = opened.case
        try:
            topic, after = _told(terminal, before, topic, given, on)
        except (Left, InputEnded):
            terminal.clear()
            return Result(data=recorded_data(before, before, topic, on), text=_("Nothing was recorded."))
        step = _("recorded ({event})").format(event=_(topic.title))
        opened.keep(opened.file.with_case(after).after(step))
    data = recorded_data(before, after, topic, on)
    return Result(data=data, text=recorded_text(before, after, topic, on, path))


def _told(
    terminal: Terminal, before: "Case", topic: "Topic | None", given: list[str], on: date
) -> "tuple[Topic, Case]":
    """The event, and the case with it recorded: by the details given, and in a conversation."""
    from firstpaper.cli.given.events import check_fits, check_whole, with_details
    from firstpaper.cli.talk.event import Telling, choose_event

    chosen = topic or choose_event(terminal, before)
    check_fits(before, chosen)
    after = with_details(before, chosen, given, on)
    if terminal.interactive:
        after = Telling(terminal, before, after, chosen, on).run()
    check_whole(after, chosen)
    return chosen, after
