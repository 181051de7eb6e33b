"""The answers so far, in plain words, by topic and under the numbers the questions have now."""

from collections.abc import Collection, Iterable, Iterator, Sequence
from itertools import groupby

from firstpaper.cli.talk import menu
from firstpaper.cli.terminal import Terminal
from firstpaper.facts import Case
from firstpaper.intake import Asked, asked, echo
from firstpaper.locale import _


def answered(case: Case) -> tuple[Asked, ...]:
    """The questions that apply and have an answer, in order."""
    return tuple(one for one in asked(case) if case.fact(one.key) is not None)


def still_open(case: Case) -> tuple[Asked, ...]:
    """The questions that apply and have no answer yet."""
    return tuple(one for one in asked(case) if case.fact(one.key) is None)


def seen(case: Case, passed: Collection[str]) -> dict[int, Asked]:
    """The questions that were answered or skipped, by number."""
    return {
        number: one
        for number, one in enumerate(asked(case), 1)
        if one.key in passed or case.fact(one.key) is not None
    }


def review(case: Case, passed: Collection[str]) -> str:
    """Every question that was answered or skipped, under its topic, with the answer."""
    groups = groupby(seen(case, passed).items(), key=lambda pair: pair[1].topic)
    return "\n\n".join("\n".join(_topic(case, topic.title, group)) for topic, group in groups)


def _topic(case: Case, title: str, group: Iterable[tuple[int, Asked]]) -> Iterator[str]:
    yield _(title)
    for number, one in group:
        yield f"  {number}. {one.ask}"
        yield from (f"     {line}" for line in echo(one, case.fact(one.key)).splitlines())


def pick(terminal: Terminal, case: Case, passed: Collection[str]) -> Asked | None:
    """The answer that a person picks: first the topic, then the answer in it. None where they pick none.

    Raises Left.
    """
    topics = [
        list(group) for _title, group in groupby(seen(case, passed).values(), key=lambda one: one.topic)
    ]
    terminal.line(_("Your answers, by topic:"))
    found = menu.pick(terminal, topics, lambda group: _(group[0].topic.title), _which_topic())
    if not found:
        return None
    terminal.line(_(found[0].topic.title))
    return pick_one(terminal, case, found)


def pick_one(terminal: Terminal, case: Case, told: Sequence[Asked]) -> Asked | None:
    """The one of these answers that a person picks; None where they pick none. Raises Left."""
    return menu.pick(terminal, told, lambda one: f"{one.ask} {_answer(case, one)}", _which_answer())


def _answer(case: Case, one: Asked) -> str:
    return " / ".join(echo(one, case.fact(one.key)).splitlines())


def _which_topic() -> str:
    return _("Which topic? Type its number, or just Enter to go on: ")


def _which_answer() -> str:
    return _("Which answer? Type its number, or just Enter to go on: ")
