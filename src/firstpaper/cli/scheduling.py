"""Listing what the two own and owe: in a conversation, or as details on the command line."""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from datetime import date
from typing import Any

from firstpaper.casefile import OpenCase
from firstpaper.casefile.errors import NotSaved
from firstpaper.cli.interview import Left
from firstpaper.cli.questions import small_number
from firstpaper.cli.suggesting import closest
from firstpaper.cli.telling import Conversation
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, DebtKind
from firstpaper.facts.money import in_dollars
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.intake import AnswerKind, AnswerRefused, Asked, Command, command_of, echo, read_answer
from firstpaper.intake.engine import asking, row_at
from firstpaper.intake.kinds import ROWS, Row, in_row
from firstpaper.intake.listing import (
    GROUPS,
    Part,
    about,
    all_about,
    in_general,
    is_empty,
    listed,
    new_row,
    notes_on,
    rows,
    with_told,
    without_row,
)
from firstpaper.intake.only_if import only_if
from firstpaper.intake.typed import fold
from firstpaper.law.property_words import kind_words
from firstpaper.locale import _, _n

MOST_NAMED = 3
"""How many open questions are named at once, so that nobody is buried in them."""
MOST_SHOWN = 12
"""Where there are no more names than this, all of them are shown to somebody who mistypes one."""


class NoSuchRow(UserError):
    """There is no {what} on the list, so nothing was changed.

    To see the list with its numbers, add --list to the command. A thing is named like this: asset 2. A
    debt is named like this: debt 1.
    """

    code = "no_such_row"


class ListFull(UserError):
    """There is room for {count} on the list, and it is full. Nothing was changed.

    Put small things together as one, such as: furniture and things at home.
    """

    code = "list_full"


class NoSuchFact(UserError):
    """Nothing called {what} can be told here, so nothing was changed.

    Write it like this: value=1200. Close to it: {close}.
    """

    code = "no_such_fact"


class FactNotAsked(UserError):
    """The fact {what} does not go with this one, so nothing was changed.

    It is told only if {reason}. Leave it out, or tell the others first.
    """

    code = "fact_not_asked"


class FactRefused(UserError):
    """The fact {what} could not be read, so nothing was changed. {reason}

    Correct it and type the command again.
    """

    code = "fact_refused"


class NothingToList(UserError):
    """Nothing was told about it, so nothing was changed.

    Say at least what it is, like this: {close}
    """

    code = "nothing_to_list"


# --- what is listed, in words ------------------------------------------------------------------------


def list_text(case: Case) -> str:
    """Everything that is listed, numbered."""
    parts = [
        "\n".join([_heading(group), *(f"  {row.number}. {line_about(case, row)}" for row in found)])
        for group in GROUPS
        if (found := [row for row in rows(case) if row.group == group])
    ]
    return "\n\n".join(parts) or _("Nothing is listed yet.")


def line_about(case: Case, row: Row) -> str:
    """One thing or debt with its kind, its worth and what is owed, as far as they are told."""
    told = row_at(case, row.group, row.number)
    assert isinstance(told, Asset | Debt)
    words, kind_said = known(told.words), _kind_said(told)
    name = words or kind_said or _("not named yet")
    head = f"{name} ({kind_said})" if words and kind_said else name
    amounts = ", ".join(_amounts(told))
    return f"{head}: {amounts}" if amounts else head


def _kind_said(told: Asset | Debt) -> str:
    kind = known(told.kind)
    return kind_words(kind) if isinstance(kind, AssetKind | DebtKind) else ""


def name_of(case: Case, row: Row) -> str:
    """A thing or debt by its number and its name."""
    words = {"asset": _("Thing {number}: {name}"), "debt": _("Debt {number}: {name}")}
    return words[row.group].format(number=row.number, name=line_about(case, row))


def taken_out(case: Case, row: Row) -> str:
    """That a thing or debt is off the list, and that others have another number now."""
    gone = _("Taken out: {name}.").format(name=line_about(case, row))
    return (
        f"{gone} {_('Those after it have moved up by one.')}"
        if row.number < len(case.fact(row.group))
        else gone
    )


def still_open(case: Case, part: Part) -> str:
    """One sentence on what is not told yet, the first few by name; empty where all is told."""
    left = [one.short for one in part.open(case)]
    if not left:
        return ""
    named = "; ".join(left[:MOST_NAMED])
    more = len(left) - MOST_NAMED
    if more <= 0:
        return _("Not told yet: {named}.").format(named=named)
    words = _n("Not told yet: {named}; and {count} more.", "Not told yet: {named}; and {count} more.", more)
    return words.format(named=named, count=more)


def left_out(before: Case, after: Case, taken_back: Collection[str] = ()) -> list[Asked]:
    """Facts that did not go with the rest any more, and went with it; not those that were taken back."""
    kept = listed(after)
    gone = (key for key in listed(before) if key not in kept and key not in taken_back)
    return [one for key in gone if (one := asking(key, before))]


def left_out_text(gone: Sequence[Asked], case: Case) -> str:
    """Those facts, with what was told; empty where there are none."""
    if not gone:
        return ""
    lines = (f"  - {one.short}: {echo(one, case.fact(one.key))}" for one in gone)
    return "\n".join([_("This does not go with it any more, and was taken out:"), *lines])


def list_data(case: Case) -> dict[str, object]:
    """Everything that is listed, for programs."""
    general, income = in_general()
    return {
        **{group: [_row_data(case, row) for row in rows(case) if row.group == group] for group in GROUPS},
        "schedule": case.schedule.model_dump(mode="json", exclude_none=True),
        "income": case.income.model_dump(mode="json", exclude_none=True),
        "open": [one.key for part in (general, income) for one in part.open(case)],
    }


def _row_data(case: Case, row: Row) -> dict[str, object]:
    told = row_at(case, row.group, row.number).model_dump(mode="json", exclude_none=True)
    facts = {name: value for name, value in told.items() if value != {}}
    return {
        "number": row.number,
        "facts": facts,
        "open": [one.key for one in about(row).open(case)],
    }


def _heading(group: str) -> str:
    return {"asset": _("What you own"), "debt": _("What you owe")}[group]


def _amounts(told: Asset | Debt) -> Iterator[str]:
    value, owed = known(told.value) if isinstance(told, Asset) else None, known(told.owed)
    if value is not None:
        yield in_dollars(value)
    if owed and isinstance(told, Asset):
        yield _("{amount} owed on it").format(amount=in_dollars(owed))
    elif owed is not None and isinstance(told, Debt):
        yield _("{amount} owed").format(amount=in_dollars(owed))


# --- details on the command line ---------------------------------------------------------------------


def row_named(case: Case, words: Sequence[str]) -> Row:
    """The thing or debt named by two words such as "asset 2". Raises NoSuchRow."""
    group = group_named(words[0]) if words else ""
    number = small_number(words[1]) if len(words) > 1 else 0
    if not group or not 1 <= number <= len(case.fact(group)):
        raise NoSuchRow(what=" ".join(words[:2]) or "-")
    return Row(group, number)


def group_named(word: str) -> str:
    """The group that a word names; empty where it names none."""
    known_words = {"asset": "asset", "assets": "asset", "thing": "asset", "debt": "debt", "debts": "debt"}
    return known_words.get(word.strip().lower(), "")


def row_to_add(case: Case, group: str) -> Row:
    """The next free row. Raises ListFull."""
    row = new_row(case, group)
    if row is None:
        raise ListFull(count=ROWS[group])
    return row


def with_details(case: Case, parts: Sequence[Part], given: Sequence[str], today: date) -> Case:
    """The case with the details told that were given as `name=value`. Raises a UserError."""
    names = _names(parts)
    left = dict(_pair(text, names) for text in given)
    while key := next((one.key for part in parts for one in part.asked(case) if one.key in left), None):
        case = _with_value(case, key, left.pop(key), today)
    for key in left:
        asked = asking(key, case)
        raise FactNotAsked(what=_short_key(key), reason=only_if(asked.question.when or "") if asked else "")
    return case


def taken_back(row: Row | None, given: Sequence[str]) -> list[str]:
    """The keys of details that were given as nothing, as in ``value=``."""
    pairs = [_pair(text, _names(all_parts(row))) for text in given]
    return [key for key, value in pairs if not value]


def _names(parts: Sequence[Part]) -> Mapping[str, str]:
    """Every name that a detail can have, with the key it means: the key, its end, or its last word."""
    keys = [
        in_row(question.key, part.number)
        for part in parts
        for topic in part.topics
        for question in topic.questions
    ]
    last = [key.rpartition(".")[2] for key in keys]
    alone = {word: key for word, key in zip(last, keys, strict=True) if last.count(word) == 1}
    return {**alone, **{_short_key(key): key for key in keys}, **{key: key for key in keys}}


def _short_key(key: str) -> str:
    """The key without its group and number: ``house.price`` for ``asset.2.house.price``."""
    first, *rest = key.split(".")
    return ".".join(rest[1:] if first in ROWS else rest)


def _pair(text: str, names: Mapping[str, str]) -> tuple[str, str]:
    name, _is, value = text.partition("=")
    key = names.get(name.strip().lower()) if _is else None
    if key is None:
        short = list(dict.fromkeys(map(_short_key, names.values())))
        close = ", ".join(short) if len(short) <= MOST_SHOWN else closest(name, short)
        raise NoSuchFact(what=name.strip() or "-", close=close)
    return key, value.strip()


def _with_value(case: Case, key: str, text: str, today: date) -> Case:
    asked = asking(key, case)
    assert asked is not None
    try:
        return with_told(case, key, read_answer(asked, text, today) if text else None)
    except AnswerRefused as refused:
        raise FactRefused(what=_short_key(key), reason=refused.message) from None


# --- the conversation ----------------------------------------------------------------------------------


class Listing(Conversation):
    """A conversation about one thing or debt, or about what is asked once. Each answer is saved at once."""

    said_back = (AnswerKind.DATE, AnswerKind.MONEY, AnswerKind.PERCENT, AnswerKind.CONTRIBUTIONS)

    def __init__(
        self,
        terminal: Terminal,
        opened: OpenCase,
        part: Part,
        today: date,
        title: str,
        *,
        again: bool = False,
    ) -> None:
        passed = [] if again else [one.key for one in part.told(opened.case)]
        super().__init__(terminal, opened.case, today, passed)
        self._opened = opened
        self._part = part
        self._title = title
        self.broken_off = False

    def _stops(self) -> Sequence[Asked]:
        return () if self.broken_off else self._part.asked(self.case)

    def _told(self, one: Asked, value: Any) -> Case:
        return with_told(self.case, one.key, value)

    def _take(self, after: Case) -> None:
        before = self.case
        try:
            self._opened.keep(self._opened.file.with_case(after))
        except NotSaved as not_saved:
            raise AnswerRefused(not_saved.message) from None
        self.case = after
        if gone := left_out_text(left_out(before, after), before):
            self._terminal.say(gone)

    def _answered(self, one: Asked, text: str) -> bool:
        if fold(text).rstrip(" .!") in ("done", fold(_("done"))):
            self.broken_off = True
            return True
        return super()._answered(one, text)

    def _begin(self) -> None:
        self._terminal.say(self._title)
        shown = [one for one in self._stops() if one.key not in self._passed]
        if shown and shown[0].topic.opening:
            self._terminal.say(_(shown[0].topic.opening))
        self._terminal.say(_("You can also type: back, why, skip, don't know, review, help, done or leave."))

    def _told_so_far(self) -> Iterator[str]:
        lines = [f"  {one.short}: {echo(one, self.case.fact(one.key))}" for one in self._part.told(self.case)]
        yield from lines or [_("Nothing is told about it yet.")]

    def _words(self) -> Iterator[str]:
        yield from super()._words()
        yield _("don't know: say so; it is a good answer")
        yield _("review: read what you told about this one")
        yield _("done: enough about this one; go back to the list")
        yield _("help: read this list again")
        yield _("leave: stop now; every answer is saved already")


class Sitting:
    """One sitting at the list: shows it, and does what the person picks, until they leave."""

    def __init__(self, terminal: Terminal, opened: OpenCase, today: date) -> None:
        self._terminal = terminal
        self._opened = opened
        self._today = today

    def run(self) -> None:
        """Raises Left when the person leaves."""
        self._welcome()
        while True:
            self._terminal.say(list_text(self._opened.case))
            self._choose()

    def add(self, group: str) -> None:
        """List one more thing or debt."""
        try:
            row = row_to_add(self._opened.case, group)
        except ListFull as full:
            self._terminal.say(full.message)
            return
        self.tell(row, again=False)

    def _welcome(self) -> None:
        case = self._opened.case
        self._terminal.say(
            _("What you own and owe"),
            _(
                "Say what you know, in any order, and come back when you like. Nothing of it goes to anyone "
                "by itself."
            ),
        )
        general = in_general()[0]
        if not rows(case) and not general.told(case):
            self._talk(general, _("First, what holds for all of it"), again=False)

    def _choose(self) -> None:
        ways = list(self._ways())
        self._terminal.line(_("What do you want to do?"))
        for number, (words, _do) in enumerate(ways, 1):
            self._terminal.line(f"  {number}. {words}")
        typed = self._terminal.read(_("Type a number, or leave: "))
        self._terminal.line()
        if command_of(typed) is Command.LEAVE:
            raise Left
        number = small_number(typed)
        if 1 <= number <= len(ways):
            ways[number - 1][1]()
        else:
            most = len(ways)
            self._terminal.say(
                _("Please type a number from 1 to {most}, or the word leave.").format(most=most)
            )

    def _ways(self) -> Iterator[tuple[str, Callable[[], None]]]:
        case = self._opened.case
        general, income = in_general()
        yield _("Add a thing you own"), lambda: self.add("asset")
        yield _("Add a debt"), lambda: self.add("debt")
        if rows(case):
            yield _("Change one, or tell more about it"), self._change_one
            yield _("Take one out"), self._take_one_out
        for part, title in (
            (general, _("What holds for all of it")),
            (income, _("Income, for a picture of support")),
        ):
            yield f"{title} ({_how_far(case, part)})", self._talking(part, title)

    def _talking(self, part: Part, title: str) -> Callable[[], None]:
        def talk() -> None:
            self._talk(part, title, again=not part.open(self._opened.case))

        return talk

    def _talk(self, part: Part, title: str, *, again: bool) -> bool:
        """Ask about a matter; whether all of it was asked, and the person did not break off."""
        talk = Listing(self._terminal, self._opened, part, self._today, title, again=again)
        talk.run()
        return not talk.broken_off

    def tell(self, row: Row, *, again: bool) -> None:
        """Ask about one thing or debt: what is open, or where `again` all of it."""
        case = self._opened.case
        new = is_empty(case, row)
        titles = {"asset": _("A thing you own"), "debt": _("A debt")}
        whole = self._talk(about(row), titles[row.group] if new else name_of(case, row), again=again)
        if is_empty(self._opened.case, row):
            return
        self._terminal.say(
            _("Saved. {name}").format(name=name_of(self._opened.case, row)),
            *filter(None, [still_open(self._opened.case, about(row))]),
        )
        if whole and self._yes(_("Tell about papers and notes too? Type yes or no: ")):
            self._talk(notes_on(row), name_of(self._opened.case, row), again=again)

    def _change_one(self) -> None:
        if row := self._pick():
            self.tell(row, again=True)

    def _take_one_out(self) -> None:
        case, row = self._opened.case, self._pick()
        if row and self._yes(_("Take it out, with all you told about it? Type yes or no: ")):
            self._opened.keep(self._opened.file.with_case(without_row(case, row)))
            self._terminal.say(
                taken_out(case, row), _("To take this back, leave, and type: firstpaper undo home.case")
            )

    def _pick(self) -> Row | None:
        """One of those listed; None where the person picks none."""
        case = self._opened.case
        choices = rows(case)
        for number, row in enumerate(choices, 1):
            self._terminal.line(f"  {number}. {line_about(case, row)}")
        typed = self._terminal.read(_("Which one? Type its number, or just Enter to go back: "))
        self._terminal.line()
        if command_of(typed) is Command.LEAVE:
            raise Left
        number = small_number(typed)
        return choices[number - 1] if 1 <= number <= len(choices) else None

    def _yes(self, prompt: str) -> bool:
        typed = self._terminal.read(prompt)
        self._terminal.line()
        if command_of(typed) is Command.LEAVE:
            raise Left
        return fold(typed).rstrip(" .!") in ("y", "yes", "si", "sí", fold(_("yes")))


def _how_far(case: Case, part: Part) -> str:
    left = len(part.open(case))
    if not left:
        return _("all answered")
    return _n("{count} question open", "{count} questions open", left).format(count=left)


def changed(before: Case, after: Case) -> list[str]:
    """The keys of listed facts that are not as they were."""
    old, new = listed(before), listed(after)
    return sorted(key for key in {**old, **new} if old.get(key) != new.get(key))


def all_parts(row: Row | None) -> tuple[Part, ...]:
    """What details can be told about a row, or where there is none what is told once."""
    return (all_about(row),) if row else in_general()
