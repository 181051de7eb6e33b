"""The messages of the interview: plain enough to be read by somebody who has just been refused."""

import ast
from collections.abc import Iterator
from inspect import getfile
from pathlib import Path

from firstpaper.intake import Bank
from tests.each import for_each
from tests.words.reading import barred_words, grade, longest_sentence, words

HARDEST_MESSAGE = 8.0
LONGEST_SENTENCE = 25
FOLDER = Path(getfile(Bank)).parent


def messages() -> Iterator[str]:
    """Every string that the code of the interview gives to gettext."""
    for path in sorted(FOLDER.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "_":
                yield from (argument.value for argument in node.args if isinstance(argument, ast.Constant))


ALL = sorted(set(messages()))


def test_the_messages_are_found() -> None:
    assert len(ALL) > 60


@for_each(ALL)
def test_a_message_reads_easily(message: str) -> None:
    long_enough_to_grade = len(words(message)) >= 8
    assert not long_enough_to_grade or grade([message]) <= HARDEST_MESSAGE
    assert len(words(longest_sentence(message))) <= LONGEST_SENTENCE
    assert barred_words(message) == []
