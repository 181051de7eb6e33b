"""What `record` says: what was recorded or taken out, what hangs on it, and which days are new."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path

from firstpaper.cli.given.events import asked_of
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.words.agenda import entry_data, events_data, one_line
from firstpaper.cli.words.findings import finding_data
from firstpaper.counting import day_after
from firstpaper.facts import Case
from firstpaper.intake import Topic, echo, standing
from firstpaper.intake.events import event, events, happened_already, recorded, told_with
from firstpaper.law.agenda import Entry, agenda
from firstpaper.law.finding import Finding, Weight
from firstpaper.law.measures.record import is_filed
from firstpaper.law.register import findings
from firstpaper.locale import _, _n

SOON_DAYS = 400
"""How far ahead the dates lie that are shown at once; the rest is for `firstpaper dates`."""


def recorded_text(before: Case, after: Case, topic: Topic, on: date, path: Path) -> str:
    """What was recorded, what hangs on it, and which days are new."""
    head = _("Recorded: {title}.").format(title=_(topic.title))
    parts = [
        "\n".join([head, *_answers(after, topic)]),
        *_taken_out_too(before, after, topic),
        *_open(after, topic),
        *_notes_text(before, after, topic, on),
        *_dates_text(before, after, on),
        *_next_part(before, after, path),
        _all_dates(path),
        next_line(after, path, on),
    ]
    return "\n\n".join(parts)


def taken_out_text(before: Case, after: Case, topic: Topic, on: date, path: Path) -> str:
    """What was taken out of the record, and what hangs on it."""
    parts = [
        _("Taken out of the record: {title}.").format(title=_(topic.title)),
        *_taken_out_too(before, after, topic),
        *_notes_text(before, after, topic, on),
        _all_dates(path),
        next_line(after, path, on),
    ]
    return "\n\n".join(parts)


def recorded_data(before: Case, after: Case, topic: Topic | None, on: date) -> dict[str, object]:
    """What was recorded, for programs."""
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


def _answers(case: Case, topic: Topic) -> Iterator[str]:
    for part in told_with(topic):
        yield from (f"  - {one.ask} {echo(one, case.fact(one.key))}" for one in happened_already(part, case))


def _taken_out_too(before: Case, after: Case, topic: Topic) -> Iterator[str]:
    """Details of other events that were taken out because they hung on this one."""
    own = {question.key for question in topic.questions}
    lost = [key for key in recorded(before) if key not in recorded(after) and key not in own]
    names = dict.fromkeys(part.name for key in lost for part in _event_of(key))
    titles = [_(found.title) for name in names if (found := event(name))]
    if titles:
        yield "\n".join(
            [_("This was taken out too, because it hung on it:"), *(f"  - {title}" for title in titles)]
        )


def _event_of(key: str) -> Iterator[Topic]:
    if found := events().find(key):
        yield found[0]


def _open(case: Case, topic: Topic) -> Iterator[str]:
    if missing := [one.ask for one in asked_of(topic, case) if case.fact(one.key) is None]:
        head = _("Not told yet. Record it as soon as you know:")
        yield "\n".join([head, *(f"  - {ask}" for ask in missing)])


def _notes_text(before: Case, after: Case, topic: Topic, on: date) -> Iterator[str]:
    found = _notes(before, after, topic, on)
    if found:
        yield _("Please look at this:")
    yield from ("\n".join(part for part in (one.says, one.do) if part) for one in found)


def _notes(before: Case, after: Case, topic: Topic, on: date) -> list[Finding]:
    """What the rules that the event feeds say now and did not say before, where it needs a look."""
    fed = {name for part in told_with(topic) for question in part.questions for name in question.feeds.rules}
    rules = ["dates.record_order", *sorted(fed - {"dates.record_order"})]
    old = {(one.id, one.says) for one in findings(standing(before), on, rules)}
    return [
        one
        for one in findings(standing(after), on, rules)
        if one.weight is not Weight.GOOD_TO_KNOW and (one.id, one.says) not in old
    ]


def _dates_text(before: Case, after: Case, on: date) -> Iterator[str]:
    new = _new_dates(before, after, on)
    soon = [one for one in new if one.deadline.target <= day_after(on, SOON_DAYS)]
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


def _new_dates(before: Case, after: Case, on: date) -> list[Entry]:
    """The open dates that were not there before, or on another day."""
    old = {
        one.deadline.key: (one.deadline.target, one.deadline.rolled, one.deadline.planned)
        for one in agenda(standing(before), on).ahead
    }
    return [
        one
        for one in agenda(standing(after), on).ahead
        if old.get(one.deadline.key) != (one.deadline.target, one.deadline.rolled, one.deadline.planned)
    ]


def _next_part(before: Case, after: Case, path: Path) -> Iterator[str]:
    """Where to find what comes next, at the moment at which the petition is recorded as filed."""
    if is_filed(standing(after)) and not is_filed(standing(before)):
        yield to_type(_("The packet now says what comes next. To make it, type:"), "packet", path)


def _all_dates(path: Path) -> str:
    return to_type(_("To see all your dates, type:"), "dates", path)
