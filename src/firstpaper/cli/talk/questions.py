"""How one question is put to a person, and how the lines of their answer are gathered."""

from collections.abc import Callable, Iterator, Sequence
from typing import Any, NamedTuple

from firstpaper.cli.terminal import Terminal
from firstpaper.intake import AnswerKind, AnswerRefused, Asked, Command, command_of, echo
from firstpaper.intake.kinds import ONE_A_LINE
from firstpaper.intake.reading.choices import is_no, is_yes
from firstpaper.intake.second_look import in_own_words
from firstpaper.locale import ENGLISH, _, language

SEVERAL_LINES = ONE_A_LINE | {AnswerKind.PARAGRAPH, AnswerKind.ADDRESS}
Read = Callable[[str], Any]

_ENDS_A_LONG_ANSWER = frozenset({Command.BACK, Command.SKIP, Command.CHANGE, Command.UNDO, Command.LEAVE})


class Typed(NamedTuple):
    """What a person typed at a question: an answer, a command, or an answer ended by a command."""

    text: str | None
    command: Command | None = None


class Offers(NamedTuple):
    """Answers that can be given by number, with the words that lead to them."""

    words: str = ""
    answers: tuple[Any, ...] = ()

    def chosen(self, text: str) -> Any:
        """The answer with the number typed, or the only one by yes; None where neither was.

        Raises AnswerRefused where the only one is turned down with a bare no.
        """
        if len(self.answers) == 1 and is_yes(text):
            return self.answers[0]
        if len(self.answers) == 1 and is_no(text):
            raise AnswerRefused(_("Then please type the answer itself."))
        number = small_number(text)
        return self.answers[number - 1] if 1 <= number <= len(self.answers) else None


NO_OFFERS = Offers()


def put_question(
    terminal: Terminal, asked: Asked, now: object, offers: Offers = NO_OFFERS, lead: Sequence[str] = ()
) -> None:
    """Show a question, its choices, and how to answer, together on one screen.

    `now` is the answer it has already, or None; `lead` stands over the question.
    """
    offered = _offered(asked, offers)
    below = (*_choices(asked), *_hints(asked), *_how_to_answer(asked), *offered, *_now(asked, now))
    terminal.together([*lead, asked.ask, *(f"  {line}" for line in below)])


def gather(terminal: Terminal, asked: Asked, read: Read) -> Typed:
    """The lines of one answer, or a command. A single line for most kinds of question.

    `read` turns text into an answer, or refuses it; it tells when a long answer is complete.
    """
    first = terminal.read(_("Your answer: "))
    command = command_of(first)
    if command and command is not Command.DONT_KNOW:
        return Typed(None, command)
    if command or not first.strip() or asked.kind not in SEVERAL_LINES:
        return Typed(first)
    return _more_lines(terminal, asked, first, read)


def _more_lines(terminal: Terminal, asked: Asked, text: str, read: Read) -> Typed:
    """The rest of a long answer, until an empty line. What was typed before a command is kept."""
    while not _complete(asked, text, read):
        line = terminal.read(_("Next line, or just Enter: "))
        command = command_of(line)
        if command in _ENDS_A_LONG_ANSWER or not line.strip():
            return Typed(text, command)
        text = f"{text}\n{line}"
    return Typed(text)


def small_number(text: str) -> int:
    """The number of a line in a list, as typed; 0 where it is none."""
    digits = text.strip().rstrip(".")
    return int(digits) if digits.isdecimal() and len(digits) <= 3 else 0


def _complete(asked: Asked, text: str, read: Read) -> bool:
    """Whether the lines so far say it all: an address with its ZIP code, or "none"."""
    try:
        value = read(text)
    except AnswerRefused:
        return False
    return asked.kind is AnswerKind.ADDRESS or value in ("", ())


def _now(asked: Asked, now: object) -> Iterator[str]:
    if now is not None:
        yield _("Your answer now: {answer}. Press Enter to keep it.").format(answer=echo(asked, now))


def _choices(asked: Asked) -> Iterator[str]:
    yield from (f"{number}. {choice.words}" for number, choice in enumerate(asked.choices, 1))
    if asked.choices and asked.none:
        yield f"0. {asked.none}"


def _hints(asked: Asked) -> Iterator[str]:
    if asked.hint:
        yield asked.hint
    if asked.examples:
        yield _("For example: {examples}").format(examples="; ".join(asked.examples))


def _how_to_answer(asked: Asked) -> Iterator[str]:
    if in_own_words(asked) and language() != ENGLISH:
        yield _(
            "The court reads English. Type this answer in English, or ask the self-help center for help with "
            "these words. It goes on the form as you type it."
        )
    if instruction := _instruction(asked.kind):
        yield instruction
    if asked.none and not asked.choices:
        yield _('If the answer is "{none}", type: none').format(none=asked.none)


def _instruction(kind: AnswerKind) -> str:
    if kind in ONE_A_LINE:
        return _("Type one on each line. When done, press Enter on an empty line.")
    return {
        AnswerKind.YES_NO: _("Type yes or no."),
        AnswerKind.CHOICE: _("Type the number of your answer."),
        AnswerKind.SEVERAL: _("Type the numbers of all that fit, such as: 1,3"),
        AnswerKind.PARAGRAPH: _("Type as many lines as you need. When done, press Enter on an empty line."),
        AnswerKind.ADDRESS: _("Type it on one line or several."),
        AnswerKind.MONEY: _("Type the dollars, such as: 2450"),
    }.get(kind, "")


def _offered(asked: Asked, offers: Offers) -> Iterator[str]:
    if offers.answers:
        yield offers.words
        yield from (f"{number}. {echo(asked, answer)}" for number, answer in enumerate(offers.answers, 1))
