"""The bank: its files are read strictly, one topic at a time, and kept for the life of the process."""

from collections.abc import Callable, Iterator, Mapping
from functools import cache, cached_property
from importlib import import_module
from pathlib import Path
from typing import Any

from firstpaper.intake.kinds import Place, general, listed_places, places
from firstpaper.intake.plain_yaml import Listed, Named, Node, Scalar, YamlRefused, read_yaml
from firstpaper.intake.question import Choice, Feeds, Predicate, Question, Topic

FOLDER = Path(__file__).parent / "bank"
PREDICATES = "firstpaper.intake.predicates"
LISTING_FOLDER = Path(__file__).parent / "listing"
LISTING_PREDICATES = "firstpaper.intake.listing_predicates"

_TOPIC = {"topic", "title", "opening", "questions"}
_QUESTION = {
    "key",
    "ask",
    "why",
    "examples",
    "when",
    "spared_if",
    "implied",
    "needless_if",
    "no_takes_back",
    "feeds",
    "choices",
    "none",
    "hint",
    "short",
    "same_as",
    "notice",
    "not_after_today",
}


class BankBroken(Exception):
    """A bank file that cannot be used: names the file, the question and what is wrong with it."""


class Bank:
    """The topics in a folder, ordered by file name (``NN-topic.yaml``) and loaded when needed.

    `loaded` holds the topics read so far, by file. `may_ask` gives the facts that it may ask for.
    """

    def __init__(
        self,
        folder: Path = FOLDER,
        predicates: str = PREDICATES,
        may_ask: Callable[[], Mapping[str, Place]] = places,
    ) -> None:
        self._paths = sorted(folder.glob("[0-9][0-9]-*.yaml"))
        self._predicates = predicates
        self._may_ask = may_ask
        self.loaded: dict[Path, Topic] = {}

    def each_topic(self) -> Iterator[Topic]:
        """The topics in order, each loaded only when it is reached."""
        for path in self._paths:
            if path not in self.loaded:
                self.loaded[path] = _TopicFile(path, self._predicates, self._may_ask()).topic()
            yield self.loaded[path]

    @cached_property
    def topics(self) -> tuple[Topic, ...]:
        """All topics, in order."""
        return tuple(self.each_topic())

    @cached_property
    def _by_key(self) -> dict[str, tuple[Topic, Question]]:
        found: dict[str, tuple[Topic, Question]] = {}
        for topic in self.topics:
            for question in topic.questions:
                if question.key in found:
                    raise BankBroken(f"{topic.name}: {question.key} is asked twice")
                found[question.key] = topic, question
        return found

    @cached_property
    def unasked(self) -> tuple[str, ...]:
        """The keys of facts, outside the numbered rows, that no question asks for."""
        return tuple(key for key in self._may_ask() if "*" not in key and key not in self._by_key)

    def question(self, key: str) -> Question | None:
        """The question that asks for the fact at `key` (``child.2.name`` finds ``child.*.name``)."""
        found = self.find(key)
        return found[1] if found else None

    def find(self, key: str) -> tuple[Topic, Question] | None:
        """The topic and the question that ask for the fact at `key`."""
        return self._by_key.get(general(key))


@cache
def bank() -> Bank:
    """The questions of the interview."""
    return Bank()


@cache
def listing() -> Bank:
    """The questions about what the two own, owe and earn, which the interview does not ask."""
    return Bank(LISTING_FOLDER, LISTING_PREDICATES, listed_places)


def bank_for(key: str) -> Bank:
    """The bank that asks for the fact at `key`, if any does."""
    return bank() if general(key) in places() else listing()


class _TopicFile:
    """One bank file, read strictly: anything it should not hold is an error that says where."""

    def __init__(self, path: Path, predicates: str, may_ask: Mapping[str, Place]) -> None:
        self._path = path
        self._predicates = predicates
        self._places = may_ask

    def topic(self) -> Topic:
        try:
            root = read_yaml(self._path.read_text("utf-8"))
        except YamlRefused as refused:
            raise self._broken("", f"{refused.code} in line {refused.line}") from None
        fields = self._fields(root, _TOPIC, "")
        return Topic(
            name=self._text(fields, "topic", ""),
            title=self._text(fields, "title", ""),
            opening=self._text_or_none(fields, "opening", ""),
            questions=tuple(self._question(node) for node in self._list(fields.get("questions"), "")),
        )

    def _question(self, node: Node) -> Question:
        fields = self._fields(node, _QUESTION, "a question")
        key = self._text(fields, "key", "a question")
        if key not in self._places:
            raise self._broken(key, "no fact has this key")
        when, spared_if, needless_if = (
            self._text_or_none(fields, name, key) for name in ("when", "spared_if", "needless_if")
        )
        return Question(
            key=key,
            ask=self._text(fields, "ask", key),
            why=self._text(fields, "why", key),
            feeds=self._feeds(fields.get("feeds"), key),
            examples=self._texts(fields.get("examples"), key),
            when=when,
            choices=self._choices(fields.get("choices"), key),
            none=self._text_or_none(fields, "none", key),
            hint=self._text_or_none(fields, "hint", key),
            short=self._text_or_none(fields, "short", key),
            same_as=self._same_as(fields, key),
            no_takes_back=self._text_or_none(fields, "no_takes_back", key),
            notice=self._texts(fields.get("notice"), key),
            not_after_today=self._flag(fields, "not_after_today", key),
            applies=self._predicate(when, key),
            spared_if=spared_if,
            spared=self._predicate(spared_if, key),
            needless_if=needless_if,
            needless=self._predicate(needless_if, key),
            implied=self._text_or_none(fields, "implied", key),
        )

    def _same_as(self, fields: dict[str, Node], key: str) -> str | None:
        like = self._text_or_none(fields, "same_as", key)
        if like and (like not in self._places or self._places[like].kind != self._places[key].kind):
            raise self._broken(key, f"{like!r} takes no answer of the same kind")
        return like

    def _choices(self, node: Node | None, key: str) -> tuple[Choice, ...]:
        values = self._places[key].choices
        if values is None:
            if node is not None:
                raise self._broken(key, "its fact is not chosen from a list, so it takes no choices")
            return ()
        fields = self._fields(node, {value.value for value in values}, key)
        missing = [value.value for value in values if value.value not in fields]
        if missing:
            raise self._broken(key, f"choices without words: {', '.join(missing)}")
        return tuple(Choice(values(name), self._text(fields, name, key)) for name in fields)

    def _feeds(self, node: Node | None, key: str) -> Feeds:
        fields = self._fields(node, set(Feeds._fields), key)
        feeds = Feeds(*(self._texts(fields.get(name), key) for name in Feeds._fields))
        if not any(feeds):
            raise self._broken(key, "it feeds nothing, so it must not be asked")
        return feeds

    def _predicate(self, when: str | None, key: str) -> Predicate | None:
        if when is None:
            return None
        found: Any = getattr(import_module(self._predicates), when, None)
        if not callable(found):
            raise self._broken(key, f"there is no predicate {when!r}")
        predicate: Predicate = found
        return predicate

    def _fields(self, node: Node | None, allowed: set[str], where: str) -> dict[str, Node]:
        if not isinstance(node, Named):
            raise self._broken(where, f"expected names ({', '.join(sorted(allowed))})")
        fields: dict[str, Node] = {}
        for name, value in node.pairs:
            if name.text not in allowed:
                raise self._broken(where, f"unknown property {name.text!r} in line {name.line}")
            if name.text in fields:
                raise self._broken(where, f"property {name.text!r} given twice, in line {name.line}")
            fields[name.text] = value
        return fields

    def _text(self, fields: dict[str, Node], name: str, where: str) -> str:
        node = fields.get(name)
        if not isinstance(node, Scalar) or not node.text.strip():
            raise self._broken(where, f"property {name!r} must be text")
        return node.text.strip()

    def _text_or_none(self, fields: dict[str, Node], name: str, where: str) -> str | None:
        return self._text(fields, name, where) if name in fields else None

    def _flag(self, fields: dict[str, Node], name: str, where: str) -> bool:
        if name not in fields:
            return False
        if self._text(fields, name, where) != "true":
            raise self._broken(where, f"property {name!r} can only be true")
        return True

    def _list(self, node: Node | None, where: str) -> list[Node]:
        if not isinstance(node, Listed):
            raise self._broken(where, "expected a list")
        return node.items

    def _texts(self, node: Node | None, where: str) -> tuple[str, ...]:
        if node is None:
            return ()
        if isinstance(node, Scalar):
            return (node.text.strip(),)
        items = self._list(node, where)
        return tuple(self._text({"item": item}, "item", where) for item in items)

    def _broken(self, where: str, what: str) -> BankBroken:
        return BankBroken(f"{self._path.name}: {where or 'the topic'}: {what}")
