"""How many questions and words a person meets in the interview: the plain case, and two children.

Run it from the top of the tree: ``PYTHONPATH=. python tests/benchmarks/sitting.py``. A test holds the counts.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from firstpaper.facts import Case
from firstpaper.intake import Asked, echo, next_question, put
from firstpaper.intake.reading import read_answer
from tests.intake.test_interview import PLAIN, TODAY, TWO_CHILDREN, Typed, typed

TWO_CHILDREN_SUPPORT_AND_FEES: Typed = TWO_CHILDREN | {
    "support.petitioner": "ask",
    "shortcuts.look_at": "fee_waiver",
    "waiver.benefits": "medi_cal",
}


@dataclass(frozen=True, slots=True)
class Sitting:
    """What one sitting takes."""

    questions: int
    words: int


def sitting(answers: Typed, today: date = TODAY) -> Sitting:
    """Answer question after question as the household would, and count what is shown."""
    case, questions, words, topics = Case(), 0, 0, set[str]()
    while one := next_question(case):
        questions += 1
        words += sum(len(text.split()) for text in _shown(one, one.topic.name not in topics))
        topics.add(one.topic.name)
        value = read_answer(one, typed(one, answers), today)
        words += len(echo(one, value).split())
        case = put(case, one.key, value)
    return Sitting(questions, words)


def _shown(one: Asked, new_topic: bool) -> Iterator[str]:
    if new_topic:
        yield from filter(None, (one.topic.title, one.topic.opening))
    yield from (*one.notice, one.ask, *(choice.words for choice in one.choices))
    yield from filter(None, (one.hint, one.none, "; ".join(one.question.examples)))


if __name__ == "__main__":
    for name, answers in (("plain", PLAIN), ("two children, support, fees", TWO_CHILDREN_SUPPORT_AND_FEES)):
        print(name, sitting(answers))
