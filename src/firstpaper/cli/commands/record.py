"""`firstpaper record`: what has happened since the filing, so that the dates can be counted."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli import completing
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.options import JsonOption, case_first, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import InputEnded, Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.intake import Topic
    from firstpaper.law.agenda import Entry
    from firstpaper.law.finding import Finding

SOON_DAYS = 400
"""How far ahead the dates lie that are shown at once; the rest is for `firstpaper dates`."""

WordsArgument = Annotated[
    list[str] | None,
    typer.Argument(
        metavar="[CASE] [EVENT] [DETAIL=VALUE]...",
        autocompletion=completing.events,
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
TodayOption = Annotated[
    str | None,
    typer.Option("--on", metavar="DATE", help=_("Take this day for today, as 2026-11-30.")),
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
    from firstpaper.cli.agenda_words import event_lines
    from firstpaper.cli.opening import case_at

    case = case_at(path, passphrases)
    lines = list(event_lines(case))
    ways = _("To correct one, record it again. To take one out, add --undo and its name.")
    text = "\n\n".join([*lines, ways]) if lines else _("Nothing is recorded yet.")
    return Result(data=_data(case, case, None, on), text=text)


def _take_out(path: Path, name: str, on: date, passphrases: Passphrases) -> Result:
    from firstpaper.cli.recording import named_event
    from firstpaper.intake.events import happened_already, without_event

    topic = named_event(name)
    with passphrases.opening(path) as opened:
        before = opened.case
        if not happened_already(topic, before):
            raise NotRecorded(name=topic.name)
        after = without_event(before, topic)
        opened.keep(opened.file.with_case(after))
    head = _("Taken out of the record: {title}.").format(title=_(topic.title))
    parts = [head, *_gone(before, after, topic), *_notes_text(before, after, topic, on), _all_dates(path)]
    parts.append(next_line(after, path, on))
    return Result(data=_data(before, after, topic, on), text="\n\n".join(parts))


def _record(
    terminal: Terminal, path: Path, name: str | None, given: list[str], on: date, passphrases: Passphrases
) -> Result:
    from firstpaper.cli.recording import EventNeeded, event_names, named_event
    from firstpaper.cli.terminal import Left

    topic = named_event(name) if name else None
    if topic is None and not terminal.interactive:
        raise EventNeeded(what=", ".join(event_names()))
    with passphrases.opening(path) as opened:
        before = opened.case
        try:
            topic, after = _told(terminal, before, topic, given, on)
        except (Left, InputEnded):
            terminal.clear()
            return Result(data=_data(before, before, topic, on), text=_("Nothing was recorded."))
        opened.keep(opened.file.with_case(after))
    return Result(data=_data(before, after, topic, on), text=_text(before, after, topic, on, path))


def _told(
    terminal: Terminal, before: "Case", topic: "Topic | None", given: list[str], on: date
) -> "tuple[Topic, Case]":
    """The event, and the case with it recorded: by the details given, and in a conversation."""
    from firstpaper.cli.recording import Telling, check_fits, check_whole, choose_event, with_details

    chosen = topic or choose_event(terminal, before)
    check_fits(before, chosen)
    after = with_details(before, chosen, given, on)
    if terminal.interactive:
        after = Telling(terminal, before, after, chosen, on).run()
    check_whole(after, chosen)
    return chosen, after


# --- what is said about it ------------------------------------------------------------------------------


def _text(before: "Case", after: "Case", topic: "Topic", on: date, path: Path) -> str:
    head = _("Recorded: {title}.").format(title=_(topic.title))
    parts = [
        "\n".join([head, *_answers(after, topic)]),
        *_gone(before, after, topic),
        *_open(after, topic),
        *_notes_text(before, after, topic, on),
        *_dates_text(before, after, on),
        *_next_part(before, after, path),
        _all_dates(path),
        next_line(after, path, on),
    ]
    return "\n\n".join(parts)


def _answers(case: "Case", topic: "Topic") -> Iterator[str]:
    from firstpaper.intake import echo
    from firstpaper.intake.events import happened_already, told_with

    for part in told_with(topic):
        yield from (f"  - {one.ask} {echo(one, case.fact(one.key))}" for one in happened_already(part, case))


def _gone(before: "Case", after: "Case", topic: "Topic") -> Iterator[str]:
    """Details of other events that were taken out because they hung on this one."""
    from firstpaper.intake.events import event, recorded

    own = {question.key for question in topic.questions}
    lost = [key for key in recorded(before) if key not in recorded(after) and key not in own]
    names = dict.fromkeys(part.name for key in lost for part in _event_of(key))
    titles = [_(found.title) for name in names if (found := event(name))]
    if titles:
        yield "\n".join(
            [_("This was taken out too, because it hung on it:"), *(f"  - {title}" for title in titles)]
        )


def _event_of(key: str) -> "Iterator[Topic]":
    from firstpaper.intake.events import events

    if found := events().find(key):
        yield found[0]


def _open(case: "Case", topic: "Topic") -> Iterator[str]:
    from firstpaper.cli.recording import asked_of

    if missing := [one.ask for one in asked_of(topic, case) if case.fact(one.key) is None]:
        head = _("Not told yet. Record it as soon as you know:")
        yield "\n".join([head, *(f"  - {ask}" for ask in missing)])


def _notes_text(before: "Case", after: "Case", topic: "Topic", on: date) -> Iterator[str]:
    found = _notes(before, after, topic, on)
    if found:
        yield _("Please look at this:")
    yield from ("\n".join(part for part in (one.says, one.do) if part) for one in found)


def _notes(before: "Case", after: "Case", topic: "Topic", on: date) -> "list[Finding]":
    """What the rules that the event feeds say now and did not say before, where it needs a look."""
    from firstpaper.intake import standing
    from firstpaper.intake.events import told_with
    from firstpaper.law.finding import Weight
    from firstpaper.law.register import findings

    fed = {name for part in told_with(topic) for question in part.questions for name in question.feeds.rules}
    rules = ["dates.record_order", *sorted(fed - {"dates.record_order"})]
    old = {(one.id, one.says) for one in findings(standing(before), on, rules)}
    return [
        one
        for one in findings(standing(after), on, rules)
        if one.weight is not Weight.GOOD_TO_KNOW and (one.id, one.says) not in old
    ]


def _dates_text(before: "Case", after: "Case", on: date) -> Iterator[str]:
    from firstpaper.cli.agenda_words import one_line
    from firstpaper.counting import days_after

    new = _new_dates(before, after, on)
    soon = [one for one in new if one.deadline.target <= days_after(on, SOON_DAYS).day]
    if not soon:
        return
    lines = [_("These dates are new, or have moved:"), *(f"  - {one_line(one.deadline)}" for one in soon)]
    if further := len(new) - len(soon):
        lines.append(
            "  "
            + _n("And {count} more, years ahead.", "And {count} more, years ahead.", further).format(
                count=further
            )
        )
    yield "\n".join(lines)


def _new_dates(before: "Case", after: "Case", on: date) -> "list[Entry]":
    """The open dates that were not there before, or on another day."""
    from firstpaper.intake import standing
    from firstpaper.law.agenda import agenda

    old = {
        one.deadline.key: (one.deadline.target, one.deadline.rolled, one.deadline.planned)
        for one in agenda(standing(before), on).ahead
    }
    return [
        one
        for one in agenda(standing(after), on).ahead
        if old.get(one.deadline.key) != (one.deadline.target, one.deadline.rolled, one.deadline.planned)
    ]


def _next_part(before: "Case", after: "Case", path: Path) -> Iterator[str]:
    """Where to find what comes next, at the moment at which the petition is recorded as filed."""
    from firstpaper.intake import standing
    from firstpaper.law.measures.record import is_filed

    if is_filed(standing(after)) and not is_filed(standing(before)):
        yield to_type(_("The packet now says what comes next. To make it, type:"), "packet", path)


def _all_dates(path: Path) -> str:
    return to_type(_("To see all your dates, type:"), "dates", path)


def _data(before: "Case", after: "Case", topic: "Topic | None", on: date) -> dict[str, object]:
    from firstpaper.cli.agenda_words import entry_data, events_data
    from firstpaper.cli.findings import finding_data
    from firstpaper.cli.recording import asked_of
    from firstpaper.intake.events import recorded

    old, new = recorded(before), recorded(after)
    return {
        "on": on,
        "event": topic.name if topic else None,
        "changed": sorted(key for key in {**old, **new} if old.get(key) != new.get(key)),
        "recorded": events_data(after),
        "not_told": [one.key for one in asked_of(topic, after) if after.fact(one.key) is None]
        if topic
        else [],
        "notes": [finding_data(one) for one in _notes(before, after, topic, on)] if topic else [],
        "new_dates": [entry_data(one) for one in _new_dates(before, after, on)],
    }
