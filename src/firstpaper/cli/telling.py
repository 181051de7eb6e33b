"""A conversation about one matter: its questions one at a time, with the words that work at each of them."""

from collections.abc import Callable, Collection, Iterator, Sequence
from datetime import date
from typing import Any

from firstpaper.cli.interview import Left
from firstpaper.cli.questions import gather, put_question
from firstpaper.cli.terminal import Terminal
from firstpaper.facts import DONT_KNOW, Case
from firstpaper.intake import AnswerKind, AnswerRefused, Asked, Command, echo, read_answer
from firstpaper.locale import _


class Conversation:
    """Asks what a matter needs, in order; `case` is what was told so far.

    What kind of matter it is says a subclass: what is asked, what an answer changes, and what is said.
    Questions in `passed` are not asked again.
    """

    said_back: Collection[AnswerKind] = (AnswerKind.DATE,)
    """Kinds whose words can be read in more than one way, so that what was understood is said back."""

    def __init__(self, terminal: Terminal, case: Case, today: date, passed: Sequence[str] = ()) -> None:
        self.case = case
        self._terminal = terminal
        self._today = today
        self._passed = list(passed)
        self._does: dict[Command, Callable[[Asked], None]] = {
            Command.BACK: self._back,
            Command.SKIP: self._skip,
            Command.WHY: self._why,
            Command.REVIEW: self._review,
            Command.HELP: self._help,
            Command.LEAVE: self._leave,
        }

    def run(self) -> Case:
        """Ask until everything was asked. Raises Left."""
        self._begin()
        while one := self._next():
            self._turn(one)
        return self.case

    # --- what the matter is ---------------------------------------------------------------------------

    def _stops(self) -> Sequence[Asked]:
        """What is asked now, in order."""
        raise NotImplementedError

    def _told(self, one: Asked, value: Any) -> Case:
        """The case with that answer. Raises AnswerRefused where it cannot be."""
        raise NotImplementedError

    def _take(self, after: Case) -> None:
        """Go on with what was told."""
        self.case = after

    def _begin(self) -> None:
        """What is said before the first question."""
        raise NotImplementedError

    def _told_so_far(self) -> Iterator[str]:
        """What was told, a line each."""
        raise NotImplementedError

    def _words(self) -> Iterator[str]:
        """The words that work at every question, with what each does."""
        yield _("back: see the question before this one")
        yield _("why: why we ask")
        yield _("skip: leave this question out")

    # --- one turn ---------------------------------------------------------------------------------------

    def _next(self) -> Asked | None:
        return next((one for one in self._stops() if one.key not in self._passed), None)

    def _turn(self, one: Asked) -> None:
        now = self.case.fact(one.key)
        put_question(self._terminal, one, now)
        typed = gather(self._terminal, one, lambda text: read_answer(one, text, self._today))
        self._terminal.line()
        if typed.text is not None:
            if now is not None and not typed.text.strip():
                self._passed.append(one.key)
            elif not self._answered(one, typed.text):
                return
        if typed.command:
            self._does.get(typed.command, self._no_use)(one)

    def _answered(self, one: Asked, text: str) -> bool:
        """Take an answer, or say why not. Answers that it did away with are asked for again."""
        before = self.case
        try:
            value = read_answer(one, text, self._today)
            self._take(self._told(one, value))
        except AnswerRefused as refused:
            self._terminal.say(refused.message)
            return False
        undone = {key for key in self._passed if before.fact(key) is not None and self.case.fact(key) is None}
        self._passed = [key for key in self._passed if key not in undone] + [one.key]
        if one.kind in self.said_back and value not in (DONT_KNOW, ()):
            self._terminal.say(_("I understood: {answer}.").format(answer=echo(one, value)))
        return True

    # --- the words known at every question --------------------------------------------------------------

    def _back(self, _one: Asked) -> None:
        """Ask the question before once more."""
        if self._passed:
            self._passed.pop()
        else:
            self._terminal.say(_("This is the first question, so there is nothing to go back to."))

    def _skip(self, one: Asked) -> None:
        self._passed.append(one.key)

    def _no_use(self, _one: Asked) -> None:
        self._terminal.say(_("That word does nothing here. Type help to see which words do."))

    def _why(self, one: Asked) -> None:
        from firstpaper.cli.explaining import question_page

        self._terminal.say(question_page(one, self._today))

    def _review(self, _one: Asked) -> None:
        self._terminal.say("\n".join(self._told_so_far()))

    def _help(self, _one: Asked) -> None:
        words = (f"  {line}" for line in self._words())
        self._terminal.say("\n".join([_("At every question you can type one of these words:"), *words]))

    def _leave(self, _one: Asked) -> None:
        raise Left
