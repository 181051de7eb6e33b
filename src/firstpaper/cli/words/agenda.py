"""The dates of a case and the events behind them, in words for a terminal and as plain data."""

from collections.abc import Iterator
from datetime import date

from firstpaper.cli.hints import command
from firstpaper.counting import day_after, short_date, spell_date
from firstpaper.facts import Case, Day
from firstpaper.former_names import Named, formerly
from firstpaper.intake import Asked, Topic, echo
from firstpaper.intake.events import as_they_happened, event, events, happened_already, in_short, recorded
from firstpaper.law.agenda import Agenda, Entry, Later, State
from firstpaper.law.deadline import Actor, Deadline, Meaning
from firstpaper.law.measures.ending import Ended
from firstpaper.law.measures.record import case_number
from firstpaper.law.words import not_confirmed, spaced
from firstpaper.locale import _, _n

OPEN, TICKED = "[ ]", "[x]"
SOON_DAYS = 365
"""How far ahead the dates lie that are shown at once."""


# --- words -----------------------------------------------------------------------------------------


def agenda_text(case: Case, found: Agenda, now: str = "", *, everything: bool) -> str:
    """What has happened and what lies ahead: of the coming year, or everything with its counting.

    `now` is what is to be done before any of the days, where something is.
    """
    soon = [one for one in found.ahead if everything or one.deadline.target <= _a_year_from(found.on)]
    ahead = [*([f"  {OPEN} {now}"] if now else []), *(_entry(one, working=everything) for one in soon)]
    further = len(found.ahead) - len(soon)
    parts = [
        _head(case, found),
        _group(_("WHAT HAS HAPPENED"), _events(case), "\n"),
        _group(_("AHEAD"), iter(ahead)),
    ]
    if everything:
        from_day = max(found.on, found.begins or found.on)
        parts += [
            _group(_("NOT RUNNING YET"), (_later(one, from_day) for one in found.later)),
            _group(_("DONE, PAST OR NOT NEEDED ANY MORE"), (_ended(one) for one in found.ended), "\n"),
        ]
    elif further or found.later or found.ended:
        parts.append(_left_out(further, len(found.later), len(found.ended)))
    return "\n\n".join(part for part in parts if part)


def _a_year_from(on: date) -> date:
    return day_after(on, SOON_DAYS)


def _left_out(further: int, later: int, ended: int) -> str:
    """How much is not shown, in one line."""
    parts = [
        _n("{count} date years ahead", "{count} dates years ahead", further).format(count=further),
        _n("{count} not running yet", "{count} not running yet", later).format(count=later),
        _n("{count} done or past", "{count} done or past", ended).format(count=ended),
    ]
    counts = (further, later, ended)
    shown = "; ".join(words for count, words in zip(counts, parts, strict=True) if count)
    return _("Not shown: {what}. To see them and how each day is counted, add --all").format(what=shown)


def one_line(deadline: Deadline) -> str:
    """A date on one line, with who has to act, and a word where the law behind it is not confirmed."""
    line = _("{days}: {title} ({who})").format(
        days=deadline.days(short_date), title=deadline.title, who=who_words(deadline.who)
    )
    return spaced((line, not_confirmed(deadline.certainty)))


def who_words(who: Actor) -> str:
    """Who has to act, seen from the filer."""
    return {
        Actor.PETITIONER: _("you"),
        Actor.RESPONDENT: _("the other side"),
        Actor.EITHER: _("the one who has to answer"),
        Actor.BOTH: _("both of you"),
        Actor.COURT: _("the court"),
    }[who]


def event_lines(case: Case) -> Iterator[str]:
    """Each event that was recorded, with all that was told about it."""
    for topic in events().topics:
        if told := happened_already(topic, case):
            yield "\n".join([f"{topic.name}: {_(topic.title)}", *_told(case, told)])


def _told(case: Case, told: tuple[Asked, ...]) -> Iterator[str]:
    return (f"  - {one.ask} {echo(one, case.fact(one.key))}" for one in told)


def _head(case: Case, found: Agenda) -> str:
    lines = [_("These are your dates as of {day}.").format(day=spell_date(found.on))]
    if found.planned:
        lines = [
            _("Nothing is filed yet. These dates are worked out as if you file on {day}.").format(
                day=spell_date(found.begins or found.on)
            ),
            _("If you file on another day, they move. Try a day with --on, such as: --on 2026-12-15"),
        ]
    elif found.filed_on is None:
        lines = [_("We cannot count yet. We need the whole day on which the petition was filed.")]
    lines.append(
        _(
            "Where two days stand, be done by the first. The law moves it to the other, because the court is "
            "closed. Do not count on that."
        )
    )
    if number := case_number(case):
        lines.append(_("Case number: {number}").format(number=number))
    return "\n".join(lines)


def _group(title: str, blocks: Iterator[str], separator: str = "\n\n") -> str:
    found = list(blocks)
    return "\n".join([title, separator.join(found)]) if found else ""


def _events(case: Case) -> Iterator[str]:
    for topic in as_they_happened(case):
        if words := in_short(topic, case):
            yield f"  {TICKED} {words}"


def event_day(topic: Topic, case: Case) -> str:
    """The day of an event in words, or what was told of it first; empty where it was not recorded."""
    told = happened_already(topic, case)
    days = [one for one in told if isinstance(case.fact(one.key), Day)]
    return next((echo(one, case.fact(one.key)) for one in (*days, *told)), "")


def _entry(one: Entry, *, working: bool) -> str:
    deadline = one.deadline
    lines = [
        f"  {OPEN} {deadline.days(short_date)}",
        f"      {_stands(one)}{deadline.title}",
        "      " + _("Who: {who}").format(who=who_words(deadline.who)),
        "      " + _if_nothing(deadline),
        *(_working(deadline) if working else ()),
    ]
    return "\n".join(lines)


def _stands(one: Entry) -> str:
    if one.state is State.MISSED:
        return _("This day has passed.") + " "
    if one.state is State.POSSIBLE:
        return _("This day has come.") + " "
    return ""


def _if_nothing(deadline: Deadline) -> str:
    if deadline.meaning is Meaning.LAST_DAY:
        return _("If it is missed: {words}").format(words=deadline.if_missed)
    return deadline.if_missed


def _later(one: Later, on: date) -> str:
    example = _("If that were {day}: {days}").format(day=short_date(on), days=one.example.days(short_date))
    lines = [
        f"  {OPEN} {one.example.title}",
        "      " + _("Starts: {when}.").format(when=one.starts),
        f"      {example}",
        "      " + _("Who: {who}").format(who=who_words(one.example.who)),
        "      " + _if_nothing(one.example),
        "      " + _source(one.example),
    ]
    return "\n".join(lines)


def _ended(one: Entry) -> str:
    words = {
        State.DONE: _("Done on {day}.").format(day=short_date(one.done_on)) if one.done_on else _("Done."),
        State.NOT_NEEDED: _("Not needed any more."),
        State.PASSED: one.deadline.if_missed,
    }[one.state]
    line = _("{title}: {days}").format(title=one.deadline.title, days=one.deadline.days(short_date))
    return f"  {TICKED} {line}\n      {words}"


def _working(deadline: Deadline) -> Iterator[str]:
    yield "      " + _("How it is counted:")
    yield from (f"        {number}. {step}" for number, step in enumerate(deadline.steps, 1))
    if not deadline.certainty.confirmed:
        yield "      " + _("We have not confirmed this in the law itself. Ask the self-help center.")
    yield "      " + _source(deadline)


def _source(deadline: Deadline) -> str:
    return _("Source: {sources}. More: {command}").format(
        sources="; ".join(deadline.authority), command=command("why", deadline.rule)
    )


# --- data --------------------------------------------------------------------------------------------


def events_data(case: Case) -> list[dict[str, object]]:
    """Each event that was recorded, with its details by key."""
    told = recorded(case)
    found: list[dict[str, object]] = []
    for topic in events().topics:
        facts = {one.key: _plain(told[one.key]) for one in happened_already(topic, case)}
        if facts:
            before = list(formerly(Named.EVENT, topic.name))
            found.append({"event": topic.name, "formerly": before, "title": _(topic.title), "facts": facts})
    return found


def entry_data(one: Entry) -> dict[str, object]:
    """One date for programs."""
    return {**deadline_data(one.deadline), "state": one.state, "done_on": one.done_on}


def later_data(one: Later) -> dict[str, object]:
    """One date that does not run yet. Its days are those of the example."""
    return {**deadline_data(one.example), "starts": one.starts}


def deadline_data(deadline: Deadline) -> dict[str, object]:
    """The days, the counting and the authority of one date."""
    return {
        "key": deadline.key,
        "formerly": list(deadline.formerly),
        "part": deadline.dated.part or None,
        "title": deadline.title,
        "meaning": deadline.meaning,
        "target": deadline.target,
        "rolled": deadline.rolled,
        "who": deadline.who,
        "if_missed": deadline.if_missed,
        "steps": list(deadline.steps),
        "rule": deadline.rule,
        "authority": list(deadline.authority),
        "certainty": deadline.certainty,
        "planned": deadline.planned,
    }


def _plain(value: object) -> object:
    if isinstance(value, tuple):
        return [one.model_dump(mode="json", exclude_none=True) for one in value]
    return value if isinstance(value, bool) else str(getattr(value, "value", value))


def ended_words(over: Ended) -> str:
    """That the case file is done with, and since when."""
    day = f" ({spell_date(over.day)})" if over.day else ""
    words = _(
        "An end of this case is recorded: {event}{day}. The dates below count only as far as it goes on."
    )
    found = event(over.how)
    return words.format(event=_(found.title) if found else over.how, day=day)
