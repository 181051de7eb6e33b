"""A conversation about one matter, such as an event or a thing that is owned."""

from collections.abc import Iterator, Sequence
from datetime import date
from typing import Any

from firstpaper.cli.talk.conversation import Conversation
from firstpaper.cli.terminal import Terminal
from firstpaper.facts import Case
from firstpaper.intake import Asked
from firstpaper.locale import _


class Matter(Conversation):
    """Asks what a matter needs, in order; `case` is what was told so far.

    Questions in `passed` are not asked again.
    """

    def __init__(self, terminal: Terminal, case: Case, today: date, passed: Sequence[str] = ()) -> None:
        super().__init__(terminal, today)
        self._case = case
        self._passed = list(passed)

    @property
    def case(self) -> Case:
        """The facts as they are now."""
        return self._case

    def run(self) -> Case:
        """Ask until everything was asked. Raises Left."""
        self._begin()
        self._ask_while(self._next)
        return self.case

    # --- what the matter is ---------------------------------------------------------------------------

    def _stops(self) -> Sequence[Asked]:
        """What is asked now, in order."""
        raise NotImplementedError

    def _with(self, one: Asked, value: Any) -> Case:
        """The case with that answer, saved where each answer is. Raises AnswerRefused or NotSaved."""
        raise NotImplementedError

    def _begin(self) -> None:
        """What is said before the first question."""
        raise NotImplementedError

    # --- one turn ---------------------------------------------------------------------------------------

    def _next(self) -> Asked | None:
        return next((one for one in self._stops() if one.key not in self._passed), None)

    def _take(self, one: Asked, value: Any) -> None:
        """Go on with an answer. What it did away with is asked for again."""
        before = self._case
        self._case = self._with(one, value)
        undone = {key for key in self._passed if before.fact(key) is not None and self.case.fact(key) is None}
        self._passed = [key for key in self._passed if key not in undone] + [one.key]
        self._say_back(one, value)

    def _kept(self, one: Asked) -> None:
        self._passed.append(one.key)

    def _back(self, one: Asked) -> Asked | None:
        if not self._passed:
            self._terminal.say(_("This is the first question, so there is nothing to go back to."))
            return one
        self._passed.pop()
        return None

    def _skip(self, one: Asked) -> Asked | None:
        self._passed.append(one.key)
        return None

    def _words(self) -> Iterator[str]:
        yield from super()._words()
        yield _("skip: leave this question out")
