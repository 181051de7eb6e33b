"""Every message that a person can see, with where it is shown, for `.ci/messages`.

Words in code and templates are found in their source; words that are data (questions, rule pages, labels of
forms, figures shown to people) are read from the loaded data itself. Each message carries what a translator
must know: the place, what the place does, and for a piece of a sentence a line of a packet that it stands in.
"""

import ast
import re
from collections.abc import Iterator, Mapping
from functools import cache
from importlib import import_module
from inspect import cleandoc
from pathlib import Path
from pkgutil import walk_packages
from typing import NamedTuple

from babel.messages.extract import extract_from_dir

import firstpaper
from firstpaper.cli.files.households import households
from firstpaper.errors import UserError
from firstpaper.forms.clerk import counter
from firstpaper.forms.edition import all_editions
from firstpaper.forms.explained_names import entries, forms_explained
from firstpaper.forms.filing import Filing
from firstpaper.forms.local_forms import all_local_papers
from firstpaper.forms.needed import table
from firstpaper.intake import bank
from firstpaper.intake.events import events
from firstpaper.intake.loading import listing
from firstpaper.intake.question import Topic, worded
from firstpaper.law.deadline_register import all_deadlines
from firstpaper.law.figure import all_figures
from firstpaper.law.register import all_rules
from firstpaper.law.source import all_sources
from firstpaper.locale import paragraphs

ROOT = Path(__file__).resolve().parents[1]
KEYWORDS = {
    "_": None,
    "noted": None,
    "filed": None,
    "_n": (1, 2),
    "_c": ((1, "c"), 2),
    "gettext": None,
    "ngettext": (1, 2),
    "pgettext": ((1, "c"), 2),
}
METHODS = [("src/**.py", "python"), ("templates/**.html", "jinja2")]
DRAFTED = ("tests/households/expected", "tests/packet/money/expected")
"""Folders of agreed texts, in which a piece of a sentence is looked for."""
LONGEST = 240

Words = str | tuple[str, ...]


class Place(NamedTuple):
    """One place that shows a message. `part` is the part of a catalog that it belongs to."""

    part: str
    where: str
    words: Words
    context: str | None = None
    about: str = ""

    @property
    def key(self) -> tuple[str, str]:
        """The context and the words that the program looks up."""
        return self.context or "", self.words if isinstance(self.words, str) else self.words[0]


def collected() -> Iterator[Place]:
    """Every place in its order, but for numbers alone: what belongs together stands together."""
    for place in (*_in_data(), *_in_source()):
        if re.search(r"[^\W\d_]|/", "".join(place.words)):
            yield place


def remarks(place: Place) -> Iterator[str]:
    """What a translator is told of a place."""
    if place.about:
        yield place.about
    if _is_piece(place.key[1]) and (sentence := _sentence_with(place.key[1])):
        yield f"As in: {sentence}"


def _in_source() -> Iterator[Place]:
    options = {"templates/**.html": {"trimmed": "true", "extensions": "jinja2.ext.i18n"}}
    found = extract_from_dir(ROOT, METHODS, options, KEYWORDS, directory_filter=lambda folder: True)
    for name, line, words, _comments, context in sorted(found, key=lambda one: (one[0], one[1])):
        inner, about = _around(ROOT / name, line) if name.endswith(".py") else ("", "")
        yield Place(_part(name), f"{name}{inner and ':'}{inner}", words, context, about)


_PARTS = (
    (r"src/firstpaper/law/rules/(\w+)/", r"rules/\1"),
    (r"src/firstpaper/(law|counting|facts)/", "law"),
    (r"src/firstpaper/intake/", "intake"),
    (r"src/firstpaper/forms/", "forms"),
    (
        r"src/firstpaper/packet/(\w+/)*money|src/firstpaper/packet/reckoning|templates/money|templates/disclosure",
        "money",
    ),
    (r"src/firstpaper/packet/|templates/", "sheets"),
    (r"", "program"),
)


def _part(name: str) -> str:
    for pattern, part in _PARTS:
        if found := re.match(pattern, name):
            return found.expand(part)
    raise LookupError(name)


@cache
def _functions(path: Path) -> list[tuple[int, int, str, str]]:
    nodes = ast.walk(ast.parse(path.read_text("utf-8")))
    kinds = (ast.FunctionDef, ast.ClassDef)
    return [
        (node.lineno, node.end_lineno or node.lineno, node.name, _first_line(ast.get_docstring(node)))
        for node in nodes
        if isinstance(node, kinds)
    ]


def _around(path: Path, line: int) -> tuple[str, str]:
    """The innermost function or class about a line, and what it does."""
    about = [one for one in _functions(path) if one[0] <= line <= one[1]]
    if not about:
        return "", ""
    inner = max(about)
    return inner[2], inner[3]


def _first_line(text: str | None) -> str:
    return next(paragraphs(text), "") if text else ""


def _in_data() -> Iterator[Place]:
    for part, topics in (("questions", bank()), ("listing", listing()), ("events", events())):
        for topic in topics.topics:
            yield from _questions(part, topic)
    yield from _rules()
    yield from _forms()
    yield from _law()
    for path in households().values():
        first = path.read_text("utf-8").partition("\n")[0].removeprefix("#").strip()
        yield Place("program", f"household {path.stem}", first)
    for error in _errors():
        for paragraph in paragraphs(cleandoc(error.__doc__ or "")):
            if not paragraph.startswith("firstpaper "):
                yield Place(
                    _part(_file(error)), f"{_file(error)}:{error.__name__}", paragraph, about="An error."
                )


def _file(kind: type) -> str:
    return f"src/{kind.__module__.replace('.', '/')}.py"


def _questions(part: str, topic: Topic) -> Iterator[Place]:
    where = f"{part}/{topic.name}"
    yield Place(part, where, topic.title, about="Title of a topic.")
    yield Place(part, where, topic.opening or "", about="Said before its questions.")
    for question in topic.questions:
        for what, words in worded(question):
            yield Place(part, f"{where}:{question.key}", words, about=f"{question.key}: {what}")
        for words in question.examples:
            yield Place(part, f"{where}:{question.key}", words, about=_EXAMPLE.format(key=question.key))


_EXAMPLE = "{key}: an answer as one may type it. It must read back as an answer in this language."


def _rules() -> Iterator[Place]:
    for rule in all_rules().values():
        part, where = f"rules/{rule.id.partition('.')[0]}", f"rule {rule.id}"
        yield Place(part, where, rule.title, about="Title of a rule.")
        for paragraph in paragraphs(cleandoc(rule.check.__doc__ or "")):
            yield Place(part, where, paragraph, about="The page of the rule.")
        yield Place(part, where, rule.not_modelled, about="What is not checked.")


def _forms() -> Iterator[Place]:
    for form in forms_explained():
        part = f"explained/{''.join(filter(str.isalnum, form.lower()))}"
        for entry in entries(form):
            yield from (Place(part, f"explained {entry.place}", words) for words in entry.read().words)
    for edition in all_editions():
        for words in edition.words:
            yield Place("forms", f"form {edition.form}", words, about=f"On or about form {edition.form}.")
    for row in (row for filing in Filing for row in table(filing)):
        yield from (Place("forms", f"table first_filing {row.form}", words) for words in row.words)
    yield from (Place("forms", "forms/clerk.yaml", words) for words in counter().words)
    for county, papers in all_local_papers().items():
        for paper in papers:
            yield from (Place("forms", f"court {county}", words) for words in (paper.says, paper.source))


def _law() -> Iterator[Place]:
    for kind in all_deadlines().values():
        yield from (Place("law", f"date {kind.key}", words) for words in kind.words)
    for source in all_sources():
        yield Place("law", f"source {source.cite}", source.about, about="What a section of law is about.")
    for figure in all_figures():
        for value in figure.values:
            for words in (figure.what, value.note, *_sentences(value.value)):
                yield Place("law", f"figure {figure.name}", words)


def _sentences(value: object) -> Iterator[str]:
    """The words in a figure's value: names and sentences, not numbers or codes."""
    if isinstance(value, str) and " " in value:
        yield value
    elif isinstance(value, Mapping):
        yield from (words for inner in value.values() for words in _sentences(inner))
    elif isinstance(value, tuple):
        yield from (words for inner in value for words in _sentences(inner))


def _errors() -> list[type]:
    for module in walk_packages(firstpaper.__path__, "firstpaper."):
        if not module.name.endswith("__main__"):
            import_module(module.name)
    return sorted({UserError, *_narrower(UserError)}, key=lambda kind: (kind.__module__, kind.__name__))


def _narrower(kind: type) -> Iterator[type]:
    for narrower in kind.__subclasses__():
        yield narrower
        yield from _narrower(narrower)


def _is_piece(words: str) -> bool:
    return not (words[:1].isupper() and words.rstrip('”")').endswith((".", "?", "!", ":")))


def _sentence_with(words: str) -> str:
    """A line of an agreed text that shows these words within a longer sentence."""
    fixed = max(re.split(r"\{\w*\}|%\(\w+\)s", words), key=len)
    if len(fixed.strip()) < 4:
        return ""
    start = _drafted().find(fixed)
    while start >= 0:
        begin, end = _drafted().rfind("\n", 0, start) + 1, _drafted().find("\n", start)
        line = " ".join(_drafted()[begin:end].split())
        if len(fixed) + 8 < len(line) < LONGEST:
            return line
        start = _drafted().find(fixed, end)
    return ""


@cache
def _drafted() -> str:
    files = (path for folder in DRAFTED for path in sorted((ROOT / folder).rglob("*.txt")))
    return "\n".join(dict.fromkeys(line for path in files for line in path.read_text("utf-8").splitlines()))
