"""The interview: one question after another, each answer saved as it is given.

The engine says which question comes next; this module puts it, keeps what is answered and does what a
word such as "back" asks for. `Left` ends it at any point, with everything kept.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from typing import Any

from firstpaper.casefile import OpenCase
from firstpaper.cli.talk.conversation import Conversation
from firstpaper.cli.talk.lock_offer import offer_to_seal
from firstpaper.cli.talk.menu import show, yes
from firstpaper.cli.talk.questions import Offers, small_number
from firstpaper.cli.terminal import Terminal
from firstpaper.facts import Case, known
from firstpaper.facts.choices import SafeHere
from firstpaper.intake import Asked, Command, asked, next_question, put, standing, switched
from firstpaper.locale import _, _n

WORDS_SHOWN_FIRST = 2
"""Questions under which the words that can be typed are shown, so that a newcomer learns them."""


class NothingKept(Exception):
    """The person should not go on here: the reasons are said, and this session leaves nothing behind."""


class Interview(Conversation):
    """One sitting: asks what is open, in order, until nothing is or the person leaves."""

    def __init__(self, terminal: Terminal, opened: OpenCase, today: date) -> None:
        super().__init__(terminal, today)
        self._opened = opened
        self._put_off = set(opened.file.passed)
        self._second_round = False
        self._seen: list[str] = []
        self._topic = ""
        self._shown: set[str] = set()
        self._numbers: dict[str, int] = {}
        self._reached = 0
        """The number of the last question that was put for the first time."""

    @property
    def case(self) -> Case:
        """The facts as they are now."""
        return self._opened.case

    def run(self) -> None:
        """Ask until every question that applies was asked, and offer to look the answers over."""
        self._ask_while(self._next)
        prompt = _("Look over your answers? Type yes, or just Enter: ")
        if self._terminal.interactive and yes(self._terminal, prompt):
            self.run_picked()

    def run_finished(self) -> None:
        """What can still be done in a case in which nothing is left to ask."""
        ways: dict[int, tuple[str, Callable[[], None]]] = {
            1: (_("Look over my answers"), self._look_over),
            2: (_("Change an answer"), self.run_picked),
        }
        while True:
            self._terminal.line(_("Every question is answered. What do you want to do?"))
            show(self._terminal, [words for words, _do in ways.values()])
            typed = self._terminal.read(_("Type a number, or just Enter to leave: "))
            self._terminal.line()
            if small_number(typed) not in ways:
                return
            ways[small_number(typed)][1]()

    def run_through(self, keys: Sequence[str]) -> None:
        """Ask these questions again, as far as they apply, and then whatever they have opened."""
        left = list(keys)
        before = {one.key for one in asked(self.case)}

        def following() -> Asked | None:
            while left:
                if one := self._applying(left.pop(0)):
                    return one
            return next_question(self.case, self._put_off | before)

        self._ask_while(following)

    def run_picked(self) -> None:
        """Ask again, one by one, the answers that the person picks from a list, until they pick none."""
        while one := self._picked():
            self.run_through([one.key])

    def _picked(self) -> Asked | None:
        from firstpaper.cli.talk.review import pick

        return pick(self._terminal, self.case, self._opened.file.passed)

    def _next(self) -> Asked | None:
        found = next_question(self.case, self._put_off)
        if found or self._second_round or not self._put_off:
            return found
        self._second_round = True
        self._put_off = set()
        again = next_question(self.case)
        if again:
            self._terminal.say(_("You skipped some questions. Here they are once more."))
        return again

    # --- one turn -----------------------------------------------------------------------------------

    def _lead(self, one: Asked) -> Sequence[str]:
        """The topic where it is new, what is to be read before the question, and the question's number."""
        if one.topic.name != self._topic:
            self._topic = one.topic.name
            self._say_topic(one)
        if one.key not in self._shown:
            self._terminal.say(*one.notice)
        words = [_words_in_short()] if len(self._shown) < WORDS_SHOWN_FIRST else []
        self._shown.add(one.key)
        return [*words, _("Question {number}").format(number=self._number(one))]

    def _say_topic(self, one: Asked) -> None:
        self._terminal.say(f"{_(one.topic.title)} ({_how_many(self.case)})")
        if one.topic.opening and not self._was_in(one.topic.name):
            self._terminal.say(_(one.topic.opening))

    def _was_in(self, topic: str) -> bool:
        return any(one.topic.name == topic for one in asked(self.case) if one.key in self._shown)

    def _number(self, one: Asked) -> int:
        """Its place in the order of asking, kept for this sitting.

        An answer can make an earlier question needless; a new question still has a higher number than the
        last one.
        """
        if one.key not in self._numbers:
            place = next(number for number, each in enumerate(asked(self.case), 1) if each.key == one.key)
            if self.case.fact(one.key) is None:
                place = self._reached = max(place, self._reached + 1)
            self._numbers[one.key] = place
        return self._numbers[one.key]

    def _take(self, one: Asked, value: Any) -> None:
        before, after = self.case, put(self.case, one.key, value)
        if value is False and one.question.no_takes_back:
            self._ask_again(one, one.question.no_takes_back)
            return
        self._refuse_to_go_on(after)
        offer_to_seal(self._terminal, self._opened, after)
        self._put_off.discard(one.key)
        passed = tuple(key for key in self._opened.file.passed if key != one.key)
        self._opened.keep(replace(self._opened.file.with_case(after), passed=passed))
        self._remember(one.key)
        self._say_back(one, value)
        self._say_what_changed(before, after)
        self._say_what_stops(one, before, after)

    def _ask_again(self, one: Asked, key: str) -> None:
        """Take back the answer that is not meant after all; the question comes once more."""
        self._opened.keep(self._opened.file.with_case(put(put(self.case, one.key, None), key, None)))
        self._put_off.discard(key)
        self._terminal.say(
            _("Good that you looked again. That answer is taken back. Please choose once more.")
        )

    def _refuse_to_go_on(self, case: Case) -> None:
        if known(case.safety.here) is SafeHere.NOT_SAFE:
            self._opened.forget()
            self._terminal.clear()
            self._terminal.say(*_not_safe_words(self._today))
            if not self._opened.new:
                self._terminal.say(_("The answers you saved before are still in the case file."))
            raise NothingKept
        if known(case.safety.understood) is False:
            self._opened.forget()
            self._terminal.say(
                _(
                    "All right, we stop here. The court's self-help center is free, and its people can "
                    "answer your questions. You can come back at any time."
                )
            )
            raise NothingKept

    # --- what is said around a question -------------------------------------------------------------

    def _say_what_changed(self, before: Case, after: Case) -> None:
        """Topics that an answer opened or closed, and answers that it has set aside."""
        old, new = asked(before), asked(after)
        had, has = _topics(old), _topics(new)
        if opened := [title for title in has if title not in had]:
            self._terminal.say(_("I will also ask you about: {topics}.").format(topics="; ".join(opened)))
        if closed := [title for title in had if title not in has]:
            self._terminal.say(_("I will not ask you about: {topics}.").format(topics="; ".join(closed)))
        _on, off = switched(old, new)
        if aside := [f"  - {one.ask}" for one in off if before.fact(one.key) is not None]:
            words = _("These answers are set aside now. They come back if you change this one back:")
            self._terminal.say("\n".join([words, *aside]))

    def _say_what_stops(self, one: Asked, before: Case, after: Case) -> None:
        """New findings that stop a filing, among the rules that this question feeds."""
        for words in _new_stops(one.question.feeds.rules, before, after, self._today):
            self._terminal.say(
                _("Please look at this. As it stands, it stops a filing:"),
                words,
                _("You can type back to change your answer, or go on and come back later."),
            )

    def _offers(self, one: Asked) -> Offers:
        """Answers that can be given by number: the county of one's home, and courthouses typed before."""
        home, county = known(self.case.residence.petitioner.own_county), known(self.case.court.county)
        if one.key == "court.county" and home:
            words = _("You live in {county} County. Type yes to file there, or type another county:")
            return Offers(words.format(county=home), (home,))
        if one.key != "court.address" or not county:
            return Offers()
        from firstpaper.cli.files.courthouses import courthouses_nearby

        words = _(
            "Courthouses in your other case files. Type the number to use one, or type another address:"
        )
        return Offers(words, courthouses_nearby(self._opened.path, county))

    # --- the words known at every question ----------------------------------------------------------

    def _question_before(self, one: Asked) -> Asked | None:
        """The question seen before this one, in this sitting or, before that, in the order of asking."""
        earlier = self._seen[: self._seen.index(one.key)] if one.key in self._seen else list(self._seen)
        in_order = [each.key for each in asked(self.case)]
        first = next(key for key in (*earlier, one.key) if key in in_order)
        before_sitting = in_order[: in_order.index(first)]
        return next(filter(None, map(self._applying, reversed([*before_sitting, *earlier]))), None)

    def _skip(self, one: Asked) -> None:
        self._remember(one.key)
        if self.case.fact(one.key) is not None:
            return
        self._put_off.add(one.key)
        passed = tuple(dict.fromkeys([*self._opened.file.passed, one.key]))
        self._opened.keep(replace(self._opened.file, passed=passed))

    def _told_so_far(self) -> str:
        from firstpaper.cli.talk.review import review

        return review(self.case, self._opened.file.passed) or _("Nothing is answered yet.")

    def _look_over(self) -> None:
        self._terminal.say(self._told_so_far())

    def _undo(self, one: Asked) -> Asked:
        """Take back the last saved change, and show the question that it was about."""
        from firstpaper.cli.talk.going_back import take_back

        keys, said = take_back(self._opened)
        self._put_off = set(self._opened.file.passed)
        self._terminal.say(said)
        return next(filter(None, map(self._applying, keys)), one)

    def _words(self) -> dict[str, str]:
        return super()._words() | {Command.SKIP: _("skip: leave this question for later")}

    # --- small helpers ------------------------------------------------------------------------------

    def _remember(self, key: str) -> None:
        if key not in self._seen:
            self._seen.append(key)

    def _applying(self, key: str) -> Asked | None:
        return next((one for one in asked(self.case) if one.key == key), None)


def _how_many(case: Case) -> str:
    from firstpaper.intake.to_come import ahead

    left = ahead(case)
    if left.fewest < left.most:
        return _("{fewest} to {most} questions left").format(fewest=left.fewest, most=left.most)
    return _n("{count} question left", "{count} questions left", left.most).format(count=left.most)


def _words_in_short() -> str:
    return _("(You can also type: back, why, skip, don't know, review, change, help or leave.)")


def _topics(stops: Sequence[Asked]) -> list[str]:
    """The titles of the topics of these questions, in order."""
    return list(dict.fromkeys(_(one.topic.title) for one in stops))


def _new_stops(rules: Sequence[str], before: Case, after: Case, on: date) -> list[str]:
    if not rules:
        return []
    from firstpaper.law.finding import Outcome
    from firstpaper.law.register import stops

    def stopping(case: Case) -> dict[tuple[str, str], str]:
        return {
            (rule, one.says): "\n".join(part for part in (one.says, one.do) if part)
            for rule, one in stops(standing(case), on, rules)
            if one.outcome is not Outcome.NEED_TO_KNOW
        }

    new = stopping(after)
    old = stopping(before) if new else {}
    return [words for name, words in new.items() if name not in old]


def _not_safe_words(today: date) -> list[str]:
    from firstpaper.law.figure import figure

    hotline = figure("help.domestic_violence_hotline", today).value
    emergency = figure("help.emergency", today).value
    return [
        _("Thank you for saying so. We stop here, and nothing from this sitting was saved."),
        _("In danger now? Call {emergency}.").format(emergency=emergency),
        _(
            "To talk to someone who knows, call the National Domestic Violence Hotline: {hotline}. It is "
            "free, day and night. Use a phone that the other person cannot check."
        ).format(hotline=hotline),
        _(
            "Close this window now, so that nobody can scroll back and read it. A library, a legal aid "
            "office or the court's self-help center is a safer place to go on."
        ),
    ]
