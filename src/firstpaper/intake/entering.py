"""A file of facts, read whole: every line that cannot be used is named, and then nothing is taken.

The file is YAML. Keys may be nested or dotted (``petitioner: {name: ...}`` or ``petitioner.name:``),
children, things and debts may be a list or numbered, and every value is read just as if it had been
typed at its question. ``null`` is "not asked"; a quoted empty text is the answer "nothing".
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from pydantic import ValidationError

from firstpaper.facts import Case, known
from firstpaper.facts.children import Home
from firstpaper.facts.matter import Period
from firstpaper.facts.people import Address
from firstpaper.facts.schedule import Contribution
from firstpaper.facts.uccjea import Person
from firstpaper.intake.engine import Asked, asking, put
from firstpaper.intake.entering_words import (
    gap,
    given_twice,
    no_room,
    nothing_stands,
    one_plain_value,
    unknown,
    what_to_write,
    yaml_message,
)
from firstpaper.intake.kinds import ROWS, AnswerKind, general, is_key, key_now, told_places
from firstpaper.intake.listing import is_empty, not_standing
from firstpaper.intake.plain_yaml import Listed, Named, Node, Scalar, YamlRefused, read_yaml
from firstpaper.intake.reading import read_answer
from firstpaper.intake.reading.addresses import state_or_country
from firstpaper.intake.reading.choices import written_choice
from firstpaper.intake.reading.contributions import in_pieces
from firstpaper.intake.reading.dates import read_day
from firstpaper.intake.reading.day_order import DATED, DayOrder, both_readings, order_shown, with_month_first
from firstpaper.intake.reading.homes import home
from firstpaper.intake.reading.people import person
from firstpaper.intake.reading.periods import period
from firstpaper.intake.refusals import AnswerRefused, refusal
from firstpaper.intake.row_names import same_row, told_names
from firstpaper.locale import _

ORDER = "day_order"
"""The name of the line that says once whether the month or the day comes first in the dates of a file."""

HOW_MANY = "children.how_many"

MOST_BYTES = 1_000_000
MOST_LINES = 300
"""How much may stand in one list: more homes, people or papers than anybody has."""
_TEXT = (AnswerKind.TEXT, AnswerKind.PARAGRAPH)
_ONE_A_LINE = (AnswerKind.PERIODS, AnswerKind.HOMES, AnswerKind.PEOPLE, AnswerKind.CONTRIBUTIONS)


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing in a file of facts that could not be used. `line` counts from 1, where there are lines."""

    line: int | None
    key: str
    message: str


def facts_from(
    source: str | Mapping[str, Any], today: date, onto: Case | None = None
) -> tuple[Case, tuple[Problem, ...]]:
    """The facts in `source` put into the case `onto` (a new one without it), and every problem found.

    With any problem the case comes back as it was: nothing is half taken.
    """
    start = Case.nothing() if onto is None else onto
    reader = _FactFile(start, today)
    try:
        root = _tree(source)
    except AnswerRefused as refused:
        return start, (Problem(None, "", refused.message),)
    except YamlRefused as refused:
        return start, (Problem(refused.line, "", yaml_message(refused.code)),)
    reader.read(root)
    reader.look_for_gaps()
    if reader.problems:
        return start, tuple(sorted(reader.problems, key=lambda problem: problem.line or 0))
    return reader.case, ()


def _tree(source: str | Mapping[str, Any]) -> Node:
    if isinstance(source, Mapping):
        return _node(source)
    if len(source.encode("utf-8", "replace")) > MOST_BYTES:
        raise AnswerRefused(
            _("The file is too large to be a file of facts. Please check that it is the right one.")
        )
    return read_yaml(source)


def _node(value: Any) -> Node:
    """Plain data as the tree that a file would give. RecursionError cannot come: depth is bounded."""
    return _data(value, 12)


def _data(value: Any, deeper: int) -> Node:
    if deeper < 0:
        raise YamlRefused("too_deep", None)
    if isinstance(value, Mapping):
        return Named(None, [(Scalar(str(name)), _data(inner, deeper - 1)) for name, inner in value.items()])
    if isinstance(value, list | tuple):
        return Listed(None, [_data(inner, deeper - 1) for inner in value])
    if value is None:
        return Scalar("")
    if isinstance(value, datetime | date):
        return Scalar(value.isoformat()[:10])
    if isinstance(value, bool):
        return Scalar("yes" if value else "no")
    return Scalar(str(value), quoted=isinstance(value, str))


class _FactFile:
    """Reads a tree of facts into a case, and keeps every problem met on the way."""

    def __init__(self, case: Case, today: date) -> None:
        self.case = case
        self.problems: list[Problem] = []
        self._start = case
        self._today = today
        self._tells_how_many = False
        self._seen: dict[str, int | None] = {}
        self._order: DayOrder | None = None
        self._some_put_the_day_first = False

    def read(self, root: Node) -> None:
        self._some_put_the_day_first = any(
            order_shown(text) is DayOrder.DAY_FIRST for text in _all_texts(root)
        )
        if isinstance(root, Named):
            self._take_the_order(root)
            self._tells_how_many = HOW_MANY in _keys_in(root)
            self._named("", root)
            self._count_the_children()
        elif not (isinstance(root, Scalar) and root.absent):
            self._problem(root, "", _("A file of facts is made of lines like: petitioner.name: Maria Soto"))

    def _take_the_order(self, root: Named) -> None:
        """Take the line that says once how the days of this file are written out of the tree."""
        told = [(name, node) for name, node in root.pairs if name.text.strip() == ORDER]
        root.pairs[:] = [pair for pair in root.pairs if pair not in told]
        for name, node in told:
            word = node.text.strip() if isinstance(node, Scalar) else ""
            if word in list(DayOrder):
                self._order = DayOrder(word)
            else:
                self._problem(name, ORDER, _("Write month_first or day_first after it."))

    def _day(self, text: str) -> str:
        """The text with its days in an order that cannot be mistaken; refused where they can."""
        doubted = self._order is DayOrder.MONTH_FIRST and self._some_put_the_day_first
        if (self._order is None or doubted) and (both := both_readings(text)):
            raise AnswerRefused(" ".join([both, *what_to_write(self._some_put_the_day_first)]))
        return with_month_first(text, self._order)

    def _named(self, prefix: str, group: Named) -> None:
        for name, node in group.pairs:
            self._at(prefix + name.text.strip(), name, node)

    def look_for_gaps(self) -> None:
        """Name the rows of which nothing stands: a number was left out, or everything was taken back."""
        for row in not_standing(self.case):
            message = gap() if is_empty(self.case, row) else nothing_stands()
            self.problems.append(Problem(None, f"{row.group}.{row.number}", message))

    def _count_the_children(self) -> None:
        """Where a child was added, there is one more; a file that says how many is believed."""
        told, listed = known(self._start.children.how_many), len(self.case.child)
        if told and not self._tells_how_many and listed > max(told, len(self._start.child)):
            self.case = put(self.case, HOW_MANY, listed)

    def _at(self, key: str, name: Scalar, node: Node) -> None:
        key = key_now(key)
        if is_key(key):
            self._fact(key, name, node)
        elif key in ROWS and isinstance(node, Listed):
            self._rows(key, name, node)
        elif _is_group(key):
            self._group(key, name, node)
        else:
            self._problem(name, key, unknown(key))

    def _rows(self, group: str, name: Scalar, node: Listed) -> None:
        if len(node.items) > ROWS[group]:
            self._problem(name, group, no_room(group))
            return
        for number, row in zip(self._row_numbers(group, node), node.items, strict=True):
            if number > ROWS[group]:
                self._problem(row, group, no_room(group))
            else:
                self._group(f"{group}.{number}", row, row)

    def _row_numbers(self, group: str, node: Listed) -> list[int]:
        """The number of each row of a list: the one called the same, or the next free one.

        In a case without such rows, and where the file says how many children there are, the list is the
        whole list and counts from 1.
        """
        there = len(self._start.fact(group))
        if not there or (group == "child" and self._tells_how_many):
            return list(range(1, len(node.items) + 1))
        numbers: list[int] = []
        for place, row in enumerate(node.items, 1):
            names = told_names(_texts(row), group, self._today)
            one = same_row(self._start, group, names, numbers) if names else min(place, there + 1)
            following = max([there, *numbers]) + 1
            numbers.append(following if one is None or one in numbers else one)
        return numbers

    def _group(self, key: str, where: Node, node: Node) -> None:
        if isinstance(node, Named):
            self._named(f"{key}.", node)
        elif not (isinstance(node, Scalar) and node.absent):
            self._problem(
                where,
                key,
                _("This is a group of facts. Write its facts below it, each on its own line, indented."),
            )

    def _fact(self, key: str, name: Scalar, node: Node) -> None:
        if key in self._seen:
            self._problem(name, key, given_twice(self._seen[key]))
            return
        self._seen[key] = name.line
        asked = asking(key, self.case)
        if asked is None:
            self._problem(name, key, unknown(key))
            return
        try:
            self.case = put(self.case, key, self._value(asked, node))
        except AnswerRefused as refused:
            self._problem(node if node.line is not None else name, key, refused.message)

    def _value(self, asked: Asked, node: Node) -> Any:
        if isinstance(node, Scalar):
            return self._scalar(asked, node)
        if isinstance(node, Listed) and len(node.items) > MOST_LINES:
            raise AnswerRefused(_("There is room for {most} here.").format(most=MOST_LINES))
        if isinstance(node, Listed):
            return tuple(self._one_of_many(asked, item) for item in node.items)
        if asked.kind is AnswerKind.ADDRESS:
            return self._address(node)
        raise AnswerRefused(
            _("This fact takes one value, not a group of names. Write the value after the colon.")
        )

    def _scalar(self, asked: Asked, node: Scalar) -> Any:
        if node.absent:
            return None
        if not node.text.strip() and asked.kind in _TEXT:
            return ""
        text = self._day(node.text) if asked.kind in DATED else node.text
        return read_answer(asked, text, self._today, written=True)

    def _one_of_many(self, asked: Asked, node: Node) -> Any:
        if isinstance(node, Named):
            return self._in_pieces(asked, node)
        if not isinstance(node, Scalar):
            raise AnswerRefused(one_plain_value())
        match asked.kind:
            case AnswerKind.SEVERAL:
                return written_choice(asked.choices, node.text)
            case AnswerKind.LINES:
                return node.text
            case kind if kind in _ONE_A_LINE:
                text = self._day(node.text) if asked.kind in DATED else node.text
                return _the_one(read_answer(asked, text, self._today))
            case _:
                raise AnswerRefused(
                    _("This fact takes one value, not a list. Write the value after the colon.")
                )

    def _in_pieces(self, asked: Asked, node: Named) -> Any:
        """One of many that is written with a name for each of its pieces."""
        match asked.kind:
            case AnswerKind.PERIODS:
                return self._period(asked, node)
            case AnswerKind.HOMES:
                return self._home(asked, node)
            case AnswerKind.PEOPLE:
                return self._person(node)
            case AnswerKind.CONTRIBUTIONS:
                return self._contribution(asked, node)
            case _:
                raise AnswerRefused(one_plain_value())

    def _period(self, asked: Asked, node: Named) -> Period:
        parts = self._parts(node, ("start", "end", "why"))
        return self._span(asked, parts)

    def _home(self, asked: Asked, node: Named) -> Home:
        parts = self._parts(node, ("start", "end", "place", "state", "with_whom"))
        for name in ("place", "state"):
            if not parts.get(name):
                raise AnswerRefused(_("This home has no {name}. Please add it.").format(name=name))
        lived = self._span(asked, parts)
        before, state = state_or_country(parts["state"])
        there = state if state and not before else parts["state"]
        return home(lived.start, lived.end, parts["place"], there, parts.get("with_whom", ""))

    def _person(self, node: Named) -> Person:
        parts = self._parts(node, ("name", "relation", "address"))
        return person(parts.get("name", ""), parts.get("relation", ""), parts.get("address", ""))

    def _contribution(self, asked: Asked, node: Named) -> Contribution:
        parts = self._parts(node, ("by", "amount", "toward", "traced"))
        return in_pieces(
            parts.get("by", ""),
            parts.get("amount", ""),
            parts.get("toward", ""),
            parts.get("traced", ""),
            asked.case,
        )

    def _span(self, asked: Asked, parts: Mapping[str, str]) -> Period:
        if not parts.get("start"):
            raise AnswerRefused(_("The start of this period is missing. Write it like: start: 2026-03-01"))
        end = parts.get("end")
        past = asked.question.not_after_today
        return period(
            read_day(self._day(parts["start"]), self._today, not_after_today=past),
            read_day(self._day(end), self._today) if end else None,
            parts.get("why", ""),
        )

    def _address(self, node: Named) -> Any:
        parts = self._parts(node, ("street", "city", "state", "zip"))
        for name in ("street", "city"):
            if not parts.get(name):
                raise AnswerRefused(_("The address has no {name}. Please add it.").format(name=name))
        try:
            return Address(**parts)
        except ValidationError as error:
            raise refusal(error) from None

    def _parts(self, node: Named, allowed: tuple[str, ...]) -> dict[str, str]:
        parts: dict[str, str] = {}
        for name, value in node.pairs:
            if name.text not in allowed or name.text in parts or not isinstance(value, Scalar):
                raise AnswerRefused(
                    _("Only these names can stand here, each once, with one value: {names}.").format(
                        names=", ".join(allowed)
                    )
                )
            if not value.absent:
                parts[name.text] = value.text
        return parts

    def _problem(self, where: Node, key: str, message: str) -> None:
        self.problems.append(Problem(where.line, key, message))


def _texts(node: Node) -> dict[str, str]:
    """The plain values of a row, by name."""
    pairs = node.pairs if isinstance(node, Named) else ()
    plain = ((name.text.strip(), value) for name, value in pairs if isinstance(value, Scalar))
    return {name: value.text for name, value in plain if not value.absent}


def _keys_in(root: Named, prefix: str = "") -> Iterator[str]:
    """The keys of the facts in a tree, not those in lists."""
    for name, node in root.pairs:
        key = prefix + name.text.strip()
        yield key
        if isinstance(node, Named):
            yield from _keys_in(node, f"{key}.")


def _all_texts(node: Node) -> Iterator[str]:
    """Every plain value in the tree."""
    if isinstance(node, Named):
        for _name, inner in node.pairs:
            yield from _all_texts(inner)
    elif isinstance(node, Listed):
        for item in node.items:
            yield from _all_texts(item)
    else:
        yield node.text


def _the_one(found: Any) -> Any:
    """The one thing on a line of a list; a line may not hold several."""
    if not isinstance(found, tuple) or len(found) != 1:
        raise AnswerRefused(one_plain_value())
    return found[0]


def _is_group(key: str) -> bool:
    prefix = general(f"{key}.")
    return any(place.startswith(prefix) for place in told_places())
