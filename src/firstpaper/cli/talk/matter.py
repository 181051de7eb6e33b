"""A conversation about one matter, such as an event or a thing that is owned."""

from collections.abc import Sequence
from datetime import date
from typing import Any

from firstpaper.cli.talk.conversation import Conversation
from firstpaper.cli.talk.review import pick_one
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
        self._history: list[tuple[Case, list[str], Asked]] = []
        """Each answer that was taken, with the case and what was passed before it."""

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
        self._history.append((before, list(self._passed), one))
        undone = {key for key in self._passed if before.fact(key) is not None and self.case.fact(key) is None}
        self._passed = [key for key in self._passed if key not in {*undone, one.key}]
        self._passed.append(one.key)
        self._say_back(one, value)

    def _kept(self, one: Asked) -> None:
        self._passed.append(one.key)

    def _question_before(self, one: Asked) -> Asked | None:
        stops = {each.key: each for each in self._stops()}
        while self._passed:
            if found := stops.get(self._passed.pop()):
                return found
        return None

    def _picked(self) -> Asked | None:
        told = [one for one in self._stops() if self.case.fact(one.key) is not None]
        if not told:
            self._terminal.say(_("Nothing is answered yet."))
        return pick_one(self._terminal, self.case, told) if told else None

    def _undo(self, one: Asked) -> Asked | None:
        if not self._history:
            self._terminal.say(_("There is nothing to take back yet."))
            return one
        self._case, self._passed, asked = self._history.pop()
        self._terminal.say(_("Taken back. This is asked again:"))
        return asked

    def _skip(self, one: Asked) -> Asked | None:
        self._passed.append(one.key)
        return None
