"""Listing what the two own and owe in a conversation, one thing at a time."""

from collections.abc import Callable, Iterator, Sequence
from datetime import date
from typing import Any

from firstpaper.casefile import OpenCase
from firstpaper.cli.given.things import ListFull, row_to_add
from firstpaper.cli.hints import to_type
from firstpaper.cli.talk.going_back import take_back
from firstpaper.cli.talk.matter import Matter
from firstpaper.cli.talk.menu import pick, read, show, yes
from firstpaper.cli.talk.questions import Read, small_number
from firstpaper.cli.terminal import Terminal
from firstpaper.cli.words.listed import (
    left_out,
    left_out_text,
    line_about,
    list_text,
    name_of,
    still_open,
    taken_out,
)
from firstpaper.facts import Case
from firstpaper.intake import Asked, Command, echo
from firstpaper.intake.kinds import Row
from firstpaper.intake.listing import (
    Part,
    about,
    in_general,
    is_empty,
    notes_on,
    rows,
    with_told,
    without_row,
)
from firstpaper.intake.not_listed import named_not_listed, with_named
from firstpaper.intake.typed import fold
from firstpaper.locale import _, _n

MOST_NAMED = 9
"""Things named before that are offered at once, so that the choices stay on one screen."""


class Listing(Matter):
    """A conversation about one thing or debt, or about what is asked once. Each answer is saved at once."""

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

    def _with(self, one: Asked, value: Any) -> Case:
        before, after = self.case, with_told(self.case, one.key, value)
        self._opened.keep(self._opened.file.with_case(after))
        if gone := left_out_text(left_out(before, after), before):
            self._terminal.say(gone)
        return after

    def _answered(self, one: Asked, text: str, read: Read) -> bool:
        if fold(text).rstrip(" .!") in ("done", fold(_("done"))):
            self.broken_off = True
            return True
        return super()._answered(one, text, read)

    def _begin(self) -> None:
        self._terminal.say(self._title)
        shown = [one for one in self._stops() if one.key not in self._passed]
        if shown and shown[0].topic.opening:
            self._terminal.say(_(shown[0].topic.opening))
        self._terminal.say(
            _("You can also type: back, why, skip, don't know, review, change, undo, help, done or leave.")
        )

    def _told_so_far(self) -> str:
        lines = [f"  {one.short}: {echo(one, self.case.fact(one.key))}" for one in self._part.told(self.case)]
        return "\n".join(lines) or _("Nothing is told about it yet.")

    def _undo(self, one: Asked) -> Asked | None:
        """Take back the last saved change; where it was about something else, go back to the list."""
        here = {each.key for each in self._part.asked(self.case)}
        keys, said = take_back(self._opened)
        self._case = self._opened.case
        self._passed = [key for key in self._passed if key not in keys]
        self._terminal.say(said)
        self.broken_off = not here.issuperset(keys)
        return next((each for each in self._stops() if each.key in keys), None if self.broken_off else one)

    def _words(self) -> dict[str, str]:
        words = super()._words() | {Command.REVIEW: _("review: read what you told about this one")}
        last: dict[str, str] = {name: words.pop(name) for name in (Command.HELP, Command.LEAVE)}
        return {**words, "done": _("done: enough about this one; go back to the list"), **last}


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
            if rows(self._opened.case) or not named_not_listed(self._opened.case):
                self._terminal.say(list_text(self._opened.case))
            self._choose()

    def add(self, group: str, name: str = "") -> None:
        """List one more thing or debt, under a name that was told before where there is one."""
        try:
            row = row_to_add(self._opened.case, group)
        except ListFull as full:
            self._terminal.say(full.message)
            return
        if name:
            self._opened.keep(self._opened.file.with_case(with_named(self._opened.case, row, name)))
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
        if named := named_not_listed(case):
            self._terminal.say(_("In the interview you named: {things}.").format(things="; ".join(named)))
        if not rows(case) and not general.told(case):
            self._talk(general, _("First, what holds for all of it"), again=False)

    def _choose(self) -> None:
        ways = list(self._ways())
        self._terminal.line(_("What do you want to do?"))
        show(self._terminal, [words for words, _do in ways])
        number = small_number(read(self._terminal, _("Type a number, or leave: ")))
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
        for line in named_not_listed(case)[:MOST_NAMED]:
            yield _("Tell about this one: {name}").format(name=line), self._listing(line)
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

    def _listing(self, line: str) -> Callable[[], None]:
        """List what was named before. Whether it is a thing or a debt is asked, never guessed."""

        def add() -> None:
            self._terminal.line(_("Is it something you own, or a debt?"))
            show(self._terminal, [_("Something we own, or one of us owns"), _("A debt")])
            group = {1: "asset", 2: "debt"}.get(small_number(read(self._terminal, _("Type 1 or 2: "))))
            if group:
                self.add(group, line)

        return add

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
        if whole and yes(self._terminal, _("Tell about papers and notes too? Type yes or no: ")):
            self._talk(notes_on(row), name_of(self._opened.case, row), again=again)

    def _change_one(self) -> None:
        if row := self._pick():
            self.tell(row, again=True)

    def _take_one_out(self) -> None:
        case, row = self._opened.case, self._pick()
        if row and yes(self._terminal, _("Take it out, with all you told about it? Type yes or no: ")):
            self._opened.keep(self._opened.file.with_case(without_row(case, row)))
            back = to_type(_("To take this back, leave, and type:"), "undo", self._opened.path)
            self._terminal.say(taken_out(case, row), back)

    def _pick(self) -> Row | None:
        """One of those listed; None where the person picks none."""
        case = self._opened.case
        prompt = _("Which one? Type its number, or just Enter to go back: ")
        return pick(self._terminal, rows(case), lambda row: line_about(case, row), prompt)


def _how_far(case: Case, part: Part) -> str:
    left = len(part.open(case))
    if not left:
        return _("all answered")
    return _n("{count} question open", "{count} questions open", left).format(count=left)
