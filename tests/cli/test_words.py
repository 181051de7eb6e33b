"""What the command line says: plain enough for somebody who is tired, frightened or has just been refused."""

import ast
from collections.abc import Iterator
from importlib import import_module
from inspect import cleandoc
from pathlib import Path
from string import Formatter

import firstpaper
from firstpaper.errors import UserError
from tests.each import for_each
from tests.words.reading import barred_words, grade, longest_sentence, words

HARDEST_MESSAGE = 8.0
LONGEST_SENTENCE = 25
PACKAGE = Path(firstpaper.__file__).parent
SOURCES = [*(PACKAGE / "cli").rglob("*.py"), *(PACKAGE / "casefile").rglob("*.py"), PACKAGE / "errors.py"]
GETTEXT = ("_", "_n")


def messages() -> Iterator[str]:
    """Every string that these parts give to gettext, each once."""
    yield from sorted({text for path in SOURCES for text in _messages_in(path)})


def _messages_in(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in GETTEXT:
            texts = (one.value for one in node.args if isinstance(one, ast.Constant))
            yield from (text for text in texts if isinstance(text, str))


def errors() -> Iterator[type[UserError]]:
    """Every error class that a person can meet."""
    for path in SOURCES:
        import_module(
            ".".join(path.relative_to(PACKAGE.parent).with_suffix("").parts).removesuffix(".__init__")
        )
    waiting = [UserError]
    while waiting:
        kind = waiting.pop()
        waiting += kind.__subclasses__()
        yield kind


ERRORS = sorted(set(errors()), key=lambda kind: (kind.code, kind.__qualname__))


def test_no_two_errors_have_one_code() -> None:
    codes = [kind.code for kind in ERRORS if not kind.__subclasses__()]
    assert len(codes) == len(set(codes))


@for_each(messages())
def test_a_message_reads_easily(message: str) -> None:
    assert_reads_easily(message)


@for_each(ERRORS)
def test_an_error_reads_easily(kind: type[UserError]) -> None:
    assert_reads_easily(cleandoc(kind.__doc__ or ""))


@for_each([kind for kind in ERRORS if not kind.__subclasses__()])
def test_an_error_says_what_happened_and_then_what_to_do(kind: type[UserError]) -> None:
    happened, *advice = cleandoc(kind.__doc__ or "").split("\n\n")
    assert happened
    assert advice


@for_each(ERRORS)
def test_an_error_has_only_details_that_are_never_personal(kind: type[UserError]) -> None:
    names = {name for _text, name, _spec, _conversion in Formatter().parse(kind.__doc__ or "") if name}
    assert names <= {
        "path", "folder", "reason", "version", "saved_by", "process", "host", "lock", "fault",
        "count", "what", "close", "id", "name", "day", "when", "aside", "mine", "first", "last",
        "form", "fields", "known", "only",
    }  # fmt: skip


def test_every_code_is_given_once() -> None:
    codes = [kind.code for kind in ERRORS]
    assert len(codes) > 15
    assert len(set(codes)) == len(codes)


def assert_reads_easily(message: str) -> None:
    plain = message.replace("{", "").replace("}", "")
    assert len(words(plain)) < 8 or grade([plain]) <= HARDEST_MESSAGE
    assert len(words(longest_sentence(plain))) <= LONGEST_SENTENCE
    assert barred_words(plain) == []
