"""A conversation about one event: what happened, and what is asked about it."""

from collections.abc import Sequence
from datetime import date
from typing import Any

from firstpaper.cli.given.events import asked_of, impossible
from firstpaper.cli.talk.matter import Matter
from firstpaper.cli.talk.menu import read, show
from firstpaper.cli.talk.questions import small_number
from firstpaper.cli.terminal import Terminal
from firstpaper.cli.words.agenda import event_day, event_lines
from firstpaper.facts import Case
from firstpaper.intake import (
    AnswerRefused,
    Asked,
    Command,
    Topic,
)
from firstpaper.intake.events import event, events, with_detail
from firstpaper.locale import _


def choose_event(terminal: Terminal, case: Case) -> Topic:
    """Ask what happened, until an event is chosen. Raises Left."""
    topics = events().topics
    while True:
        terminal.line(_("What has happened?"))
        show(terminal, [_title(topic, case) for topic in topics])
        typed = read(terminal, _("Type a number, or leave: "))
        number = small_number(typed)
        chosen = topics[number - 1] if 1 <= number <= len(topics) else event(typed.strip().lower())
        if chosen:
            return chosen
        terminal.say(_("Please type a number from 1 to {most}, or the word leave.").format(most=len(topics)))


def _title(topic: Topic, case: Case) -> str:
    day = event_day(topic, case)
    there = " " + _("(recorded: {day})").format(day=day) if day else ""
    return f"{_(topic.title)}{there}"


class Telling(Matter):
    """A conversation about one event. Nothing is saved here; `case` is what was told.

    `given` is what the command line told already: it is not asked again.
    """

    def __init__(self, terminal: Terminal, before: Case, given: Case, topic: Topic, today: date) -> None:
        told = [] if given == before else [one.key for one in asked_of(topic, given)]
        super().__init__(terminal, given, today, [key for key in told if given.fact(key) is not None])
        self._before = before
        self._topic = topic

    def _stops(self) -> Sequence[Asked]:
        return asked_of(self._topic, self.case)

    def _with(self, one: Asked, value: Any) -> Case:
        after = with_detail(self.case, one.key, value)
        if found := impossible(self._before, after, self._today):
            raise AnswerRefused("\n".join(f"{each.says} {each.do}" for each in found))
        return after

    def _begin(self) -> None:
        self._terminal.say(
            _(self._topic.title),
            _("You can also type: back, why, skip, don't know, review, change, undo, help or leave."),
        )
        if self._topic.opening:
            self._terminal.say(_(self._topic.opening))

    def _told_so_far(self) -> str:
        return "\n".join(event_lines(self.case)) or _("Nothing is recorded yet.")

    def _words(self) -> dict[str, str]:
        return super()._words() | {
            Command.DONT_KNOW: _("don't know: say so; you can record it later"),
            Command.REVIEW: _("review: read everything that is recorded"),
            Command.UNDO: _("undo: take back the last answer"),
            Command.LEAVE: _("leave: stop now, and record nothing"),
        }
