"""Details of an event given as `name=value`.

An event is recorded as a whole or not at all. What cannot be, such as papers served before they were
filed, is not taken.
"""

from collections.abc import Collection, Iterator, Sequence
from datetime import date

from firstpaper.cli.close_names import closest
from firstpaper.errors import UserError
from firstpaper.facts import Case
from firstpaper.former_names import Named, formerly
from firstpaper.intake import (
    AnswerKind,
    AnswerRefused,
    Asked,
    Topic,
    read_answer,
    standing,
)
from firstpaper.intake.events import details, event, events, told_with, with_detail
from firstpaper.intake.reading.day_order import one_reading
from firstpaper.law.finding import Finding, Weight
from firstpaper.law.register import findings
from firstpaper.locale import _

THE_DAY = "day"
NOTHING = ("", "none")


class NoSuchEvent(UserError):
    """There is no event called {name}, so nothing was recorded.

    Close to it: {close}. To see all events, type the command without an event.
    """

    code = "no_such_event"


class EventNeeded(UserError):
    """Nothing was recorded, because the command does not say what happened.

    Name one of these events after the case file: {what}.
    """

    code = "event_needed"


class NoSuchDetail(UserError):
    """There is no detail called {what} in the event {name}, so nothing was recorded.

    Details look like this: day=2026-03-02. In this event you can tell: {close}.
    """

    code = "no_such_detail"


class DetailDoesNotFit(UserError):
    """The detail {what} does not go with what is recorded, so nothing was recorded.

    In the event {name} you can tell now: {close}.
    """

    code = "detail_does_not_fit"


class DetailRefused(UserError):
    """The detail {what} could not be read, so nothing was recorded. {reason}

    Correct it and type the command again.
    """

    code = "detail_refused"


class NotTold(UserError):
    """The event {name} needs one more thing, so nothing was recorded: {what}

    Add it to the command, like this: {close}=... To be asked instead, type the command in a terminal window
    without any details.
    """

    code = "not_told"


class DoesNotFit(UserError):
    """The event {name} does not fit what is recorded so far, so nothing was recorded.

    {what} To see what is recorded, add --list to the command.
    """

    code = "event_does_not_fit"


class NotPossible(UserError):
    """That cannot have happened in this order, so nothing was recorded.

    Every date depends on it. Look at the stamps on your papers, and type the command again:
    """

    code = "not_possible"

    def __init__(self, found: Sequence[Finding]) -> None:
        super().__init__()
        self.found = found

    @property
    def message(self) -> str:
        """The message, and each thing that cannot be."""
        return "\n".join([super().message, *(f"  - {one.says}" for one in self.found)])


def named_event(name: str) -> Topic:
    """The event of that name. Raises NoSuchEvent."""
    found = event(name.strip().lower())
    if found is None:
        raise NoSuchEvent(name=name, close=closest(name, event_names()))
    return found


def event_names() -> list[str]:
    """The names of all events."""
    return [topic.name for topic in events().topics]


def impossible(before: Case, after: Case, on: date) -> tuple[Finding, ...]:
    """What cannot have happened in the order that `after` tells, and was not told already."""
    known = {one.says for one in _stops(before, on)}
    return tuple(one for one in _stops(after, on) if one.says not in known)


def _stops(case: Case, on: date) -> tuple[Finding, ...]:
    found = findings(standing(case), on, ["dates.record_order"])
    return tuple(one for one in found if one.weight is Weight.STOP)


def with_details(case: Case, topic: Topic, given: Sequence[str], today: date) -> Case:
    """The case with the details recorded that were given as `name=value`. Raises a UserError."""
    left = dict(_pair(topic, case, text) for text in given)
    after = case
    while one := next((one for one in asked_of(topic, after) if name_in(left, one, topic, after)), None):
        name = name_in(left, one, topic, after)
        after = _with_value(after, one, name, left.pop(name), today)
    if left:
        raise _left_over(topic, after, next(iter(left)))
    if found := impossible(case, after, today):
        raise NotPossible(found)
    return after


def _pair(topic: Topic, case: Case, text: str) -> tuple[str, str]:
    name, is_pair, value = text.partition("=")
    if not is_pair:
        raise NoSuchDetail(what=text, name=topic.name, close=_can_tell(topic, case))
    return name.strip().lower(), value.strip()


def _with_value(case: Case, one: Asked, name: str, text: str, today: date) -> Case:
    if text.lower() in NOTHING:
        return with_detail(case, one.key, None)
    try:
        return with_detail(case, one.key, read_answer(one, one_reading(one.kind, text), today, written=True))
    except AnswerRefused as refused:
        raise DetailRefused(what=name, reason=refused.message) from None


def asked_of(topic: Topic, case: Case) -> tuple[Asked, ...]:
    """What is asked about an event in this case, and about what is told with it."""
    return tuple(one for each in told_with(topic) for one in details(each, case))


def name_in(given: Collection[str], one: Asked, topic: Topic, case: Case) -> str:
    """The name among those given that means this detail of the event; empty where none does."""
    keys = (one.key, *formerly(Named.FACT, one.key))
    names = [name for key in keys for name in (key, *detail_names(key, topic))]
    meant = [*names, *([THE_DAY] if _is_the_day(one, case) else [])]
    return next((name for name in meant if name in given), "")


def detail_names(key: str, topic: Topic) -> tuple[str, ...]:
    """What a detail is called: its last word where no other ends so, then the name of the fact."""
    last = key.rpartition(".")[2]
    word = _last_word(key)
    alike = [each for each in _keys(topic) if _last_word(each) == word]
    return (*([word] if len(alike) == 1 else []), last.removesuffix("_on"), last)


def _last_word(key: str) -> str:
    return key.rpartition(".")[2].removesuffix("_on").rpartition("_")[2]


def _keys(topic: Topic) -> Iterator[str]:
    """The details of an event and of what is told with it, asked in this case or not."""
    return (question.key for part in told_with(topic) for question in part.questions)


def _is_the_day(one: Asked, case: Case) -> bool:
    """Whether it is the first day that is asked for in its event."""
    days = (other for other in details(one.topic, case) if other.kind is AnswerKind.DATE)
    return next((day.key == one.key for day in days), False)


def _left_over(topic: Topic, case: Case, name: str) -> UserError:
    every = {each for key in _keys(topic) for each in (key, *detail_names(key, topic))}
    error = DetailDoesNotFit if name in every else NoSuchDetail
    return error(what=name, name=topic.name, close=_can_tell(topic, case))


def _can_tell(topic: Topic, case: Case) -> str:
    return ", ".join(
        THE_DAY if _is_the_day(one, case) else detail_names(one.key, topic)[0]
        for one in asked_of(topic, case)
    )


def check_fits(case: Case, topic: Topic) -> None:
    """Raise DoesNotFit where nothing about the event can be told in this case."""
    if not details(topic, case):
        raise DoesNotFit(name=topic.name, what=_(topic.opening or topic.title))


def check_whole(case: Case, topic: Topic) -> None:
    """Raise NotTold where the first thing about the event was not told, without which it is none."""
    first = details(topic, case)[0]
    if case.fact(first.key) is None:
        raise NotTold(name=topic.name, what=first.ask, close=detail_names(first.key, topic)[0])
