"""Questions put one at a time, with the words that work at each of them.

What the questions are about says a subclass: which comes next, what an answer changes, what is said.
"""

from collections.abc import Callable, Sequence
from datetime import date
from typing import Any

from firstpaper.casefile.errors import NotSaved
from firstpaper.cli.talk.day_habit import DayHabit
from firstpaper.cli.talk.menu import read as read_aside
from firstpaper.cli.talk.questions import Offers, Read, Typed, gather, put_question
from firstpaper.cli.terminal import Left, Terminal
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.intake import AnswerKind, AnswerRefused, Asked, Command, command_of, echo, read_answer
from firstpaper.intake.reading.choices import is_no, is_yes
from firstpaper.intake.second_look import doubt
from firstpaper.locale import _

SAID_BACK = frozenset(
    {
        AnswerKind.YES_NO,
        AnswerKind.DATE,
        AnswerKind.PERIODS,
        AnswerKind.HOMES,
        AnswerKind.ADDRESS,
        AnswerKind.MONEY,
        AnswerKind.PERCENT,
        AnswerKind.ATTEMPTS,
        AnswerKind.CLOSURES,
        AnswerKind.CONTRIBUTIONS,
    }
)
"""Kinds whose words can be read in more than one way, so that what was understood is said back."""


class Conversation:
    """Puts questions until nothing is left to ask, or until `Left` is raised."""

    def __init__(self, terminal: Terminal, today: date) -> None:
        self._terminal = terminal
        self._today = today
        self._habit = DayHabit(terminal)
        self._whys = "", 0
        """The question at which "why" was typed last, and how often."""
        self._does: dict[Command, Callable[[Asked], Asked | None]] = {
            Command.BACK: self._back,
            Command.WHY: self._why,
            Command.SKIP: self._skip,
            Command.REVIEW: self._review,
            Command.CHANGE: self._change,
            Command.UNDO: self._undo,
            Command.HELP: self._help,
            Command.LEAVE: self._leave,
        }

    # --- what it is about -----------------------------------------------------------------------------

    @property
    def case(self) -> Case:
        """The facts as they are now."""
        raise NotImplementedError

    def _take(self, one: Asked, value: Any) -> None:
        """Go on with an answer. Raises AnswerRefused or NotSaved."""
        raise NotImplementedError

    def _kept(self, one: Asked) -> None:
        """Go on with the answer that is there already."""

    def _question_before(self, one: Asked) -> Asked | None:
        """The question to see when going back from this one; None where it is the first."""
        raise NotImplementedError

    def _skip(self, one: Asked) -> Asked | None:
        """Leave the question out for now."""
        raise NotImplementedError

    def _picked(self) -> Asked | None:
        """The question whose answer the person picks to change; None where they pick none."""
        raise NotImplementedError

    def _undo(self, one: Asked) -> Asked | None:
        """Take back the last answer, and see its question again."""
        raise NotImplementedError

    def _told_so_far(self) -> str:
        """Everything that was told."""
        raise NotImplementedError

    def _words(self) -> dict[str, str]:
        """What each word does that works at every question, in the order in which they are listed."""
        return {
            Command.BACK: _("back: see the question before this one"),
            Command.WHY: _("why: why we ask, and where your answer goes"),
            Command.SKIP: _("skip: leave this question out"),
            Command.DONT_KNOW: _("don't know: say so; it is a good answer"),
            Command.REVIEW: _("review: read all your answers so far"),
            Command.CHANGE: _("change: pick an answer and change it"),
            Command.UNDO: _("undo: take back the last answer that was saved"),
            Command.HELP: _("help: read this list again"),
            Command.LEAVE: _("leave: stop now; every answer is saved already"),
        }

    def _lead(self, one: Asked) -> Sequence[str]:
        """What stands over the question."""
        return ()

    def _offers(self, one: Asked) -> Offers:
        """Answers that can be given by number."""
        return Offers()

    # --- one turn ---------------------------------------------------------------------------------------

    def _ask_while(self, following: Callable[[], Asked | None]) -> None:
        current = following()
        while current:
            current = self._turn(current) or following()

    def _turn(self, one: Asked) -> Asked | None:
        """Put one question and do what was typed. Returns the question to show next, None to go on."""
        now = self.case.fact(one.key)
        offers = self._offers(one)

        def read(text: str) -> Any:
            return offers.chosen(text) or read_answer(one, text, self._today)

        put_question(self._terminal, one, now, offers, self._lead(one))
        while True:
            typed = gather(self._terminal, one, read)
            self._terminal.line()
            if self._took(one, typed, now, read):
                return self._does.get(typed.command, self._no_use)(one) if typed.command else None

    def _took(self, one: Asked, typed: Typed, now: object, read: Read) -> bool:
        """Whether the turn is over: an answer was taken or kept, or only a command was given."""
        if typed.text is None:
            return True
        if now is not None and not typed.text.strip():
            self._kept(one)
            return True
        return self._answered(one, typed.text, read) or typed.command is not None

    def _answered(self, one: Asked, text: str, read: Read) -> bool:
        """Whether an answer could be taken; if not, it was said why."""
        try:
            value = read(self._habit.in_order(one, text))
            if (instead := self._instead(one, text, value)) is not None:
                return instead != "" and self._answered(one, instead, read)
            self._take(one, value)
        except AnswerRefused as refused:
            self._terminal.say(refused.message)
            return False
        except NotSaved as not_saved:
            if not self._terminal.interactive:
                raise
            self._terminal.say(not_saved.message)
            return False
        return True

    def _instead(self, one: Asked, text: str, value: Any) -> str | None:
        """What is typed instead of an answer that looks like a slip; None where it is meant so.

        It is asked about once, and never refused: the same words once more are meant. Empty where nothing
        was typed that is an answer.
        """
        words = doubt(one, text, value) if self._terminal.interactive else None
        if words is None:
            return None
        self._terminal.say(words)
        typed = read_aside(self._terminal, _("Keep it? Type yes, or else type the answer again: ")).strip()
        if typed == text.strip() or is_yes(typed):
            return None
        return "" if is_no(typed) or command_of(typed) else typed

    def _say_back(self, one: Asked, value: Any) -> None:
        if value is DONT_KNOW:
            self._terminal.say(_("Noted: you do not know. It stays on the list of open questions."))
        elif one.kind in SAID_BACK and value != ():
            self._terminal.say(_("I understood: {answer}.").format(answer=echo(one, value)))

    # --- the words known at every question --------------------------------------------------------------

    def _back(self, one: Asked) -> Asked | None:
        if found := self._question_before(one):
            return found
        self._terminal.say(_("This is the first question, so there is nothing to go back to."))
        return one

    def _change(self, one: Asked) -> Asked | None:
        return self._picked() or one

    def _why(self, one: Asked) -> Asked | None:
        """Why it is asked; asked again, what the items say that the answer feeds, one after the other."""
        from firstpaper.cli.words.why import why_pages

        pages = why_pages(one, self._today)
        times = self._whys[1] if self._whys[0] == one.key else 0
        self._whys = one.key, (times + 1) % len(pages)
        self._terminal.say(pages[times])
        return one

    def _review(self, one: Asked) -> Asked | None:
        self._terminal.say(self._told_so_far())
        return one

    def _help(self, one: Asked) -> Asked | None:
        words = (f"  {line}" for line in self._words().values())
        self._terminal.say(
            one.why, "\n".join([_("At every question you can type one of these words:"), *words])
        )
        return one

    def _no_use(self, one: Asked) -> Asked | None:
        self._terminal.say(_("That word does nothing here. Type help to see which words do."))
        return one

    def _leave(self, _one: Asked) -> Asked | None:
        raise Left
