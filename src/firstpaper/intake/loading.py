"""The bank: its files are read strictly, one topic at a time, and kept for the life of the process."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import cache, cached_property, partial
from importlib import import_module
from pathlib import Path
from typing import Any

from firstpaper.data_files import Place, read_text
from firstpaper.intake.kinds import Place as Fact
from firstpaper.intake.kinds import general, listed_places, places
from firstpaper.intake.predicates import OF_THE_INTERVIEW, OF_THE_LISTING
from firstpaper.intake.question import Choice, Feeds, Predicate, Question, Topic
from firstpaper.prebuilt import Read, prebuilt

FOLDER = Path(__file__).parent / "bank"
LISTING_FOLDER = Path(__file__).parent / "listing"

_NEEDED = ("key", "short", "ask", "why", "feeds")
_ALLOWED = {
    "examples",
    "when",
    "only_if",
    "spared_if",
    "implied",
    "needless_if",
    "no_takes_back",
    "choices",
    "none",
    "hint",
    "same_as",
    "notice",
    "not_after_today",
}


class Bank:
    """The topics in a folder, ordered by file name (``NN-topic.yaml``) and loaded when needed.

    `loaded` holds the topics read so far, by file. `may_ask` gives the facts that it may ask for.
    """

    def __init__(
        self,
        folder: Path = FOLDER,
        predicates: Sequence[str] = OF_THE_INTERVIEW,
        may_ask: Callable[[], Mapping[str, Fact]] = places,
    ) -> None:
        self._paths = sorted(path for path in folder.iterdir() if _is_topic(path.name))
        self._predicates = predicates
        self._may_ask = may_ask
        self.loaded: dict[Path, Topic] = {}

    def each_topic(self) -> Iterator[Topic]:
        """The topics in order, each loaded only when it is reached."""
        for path in self._paths:
            if path not in self.loaded:
                self.loaded[path] = self._topic(path)
            yield self.loaded[path]

    def _topic(self, path: Path) -> Topic:
        content = path.read_bytes()
        topic: Topic | None = prebuilt(path, content, Read.TOPIC)
        if topic is not None:
            return topic
        return _TopicFile(path.name, self._predicates, self._may_ask()).topic(content.decode())

    @cached_property
    def topics(self) -> tuple[Topic, ...]:
        """All topics, in order."""
        return tuple(self.each_topic())

    @cached_property
    def by_file(self) -> Mapping[Path, Topic]:
        """All topics, by the file they were read from."""
        return dict(zip(self._paths, self.topics, strict=True))

    @cached_property
    def _by_key(self) -> dict[str, tuple[Topic, Question]]:
        found: dict[str, tuple[Topic, Question]] = {}
        for topic in self.topics:
            for question in topic.questions:
                if question.key in found:
                    raise Place(topic.name).error(f"{question.key} is asked twice")
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


def _is_topic(name: str) -> bool:
    return name[:2].isdecimal() and name[2:3] == "-" and name.endswith(".yaml")


@cache
def bank() -> Bank:
    """The questions of the interview."""
    return Bank()


@cache
def listing() -> Bank:
    """The questions about what the two own, owe and earn, which the interview does not ask."""
    return Bank(LISTING_FOLDER, OF_THE_LISTING, listed_places)


def bank_for(key: str) -> Bank:
    """The bank that asks for the fact at `key`, if any does."""
    return bank() if general(key) in places() else listing()


class _TopicFile:
    """One bank file, read strictly: anything it should not hold is a DataFileError that says where."""

    def __init__(self, name: str, predicates: Sequence[str], may_ask: Mapping[str, Fact]) -> None:
        self._name = name
        self._predicates = predicates
        self._facts = may_ask

    def topic(self, text: str) -> Topic:
        place = Place(self._name)
        shape = read_text(self._name, text, as_written=True)
        told = place.properties(shape, needed=("topic", "title", "questions"), allowed=("opening",))
        return Topic.of(
            name=place.text(told["topic"], "topic"),
            title=place.text(told["title"], "title"),
            opening=_text_or_none(place, told, "opening"),
            questions=(self._question(*row) for row in place.into("questions").rows(told["questions"])),
        )

    def _question(self, row: Place, shape: object) -> Question:
        key = row.text(row.mapping(shape).get("key"), "key")
        place = Place(self._name, (key,))
        told = place.properties(shape, needed=_NEEDED, allowed=_ALLOWED)
        if key not in self._facts:
            raise place.error("no fact has this key")
        fact = self._facts[key]
        text = partial(_text_or_none, place, told)
        when, spared_if, needless_if = text("when"), text("spared_if"), text("needless_if")
        if bool(when) != bool(text("only_if")):
            raise place.error("`only_if` says in words what `when` names, and stands with it alone")
        return Question(
            key=key,
            ask=place.text(told["ask"], "ask"),
            why=place.text(told["why"], "why"),
            feeds=_feeds(place.into("feeds"), told["feeds"]),
            examples=_texts(place, told, "examples"),
            when=when,
            only_if=text("only_if"),
            choices=_choices(place.into("choices"), fact, told.get("choices")),
            none=text("none"),
            hint=text("hint"),
            short=place.text(told["short"], "short"),
            same_as=self._same_as(place, fact, text("same_as")),
            no_takes_back=text("no_takes_back"),
            notice=_texts(place, told, "notice"),
            not_after_today=_flag(place, told, "not_after_today"),
            applies=self._predicate(place, "when", when),
            spared_if=spared_if,
            spared=self._predicate(place, "spared_if", spared_if),
            needless_if=needless_if,
            needless=self._predicate(place, "needless_if", needless_if),
            implied=text("implied"),
        )

    def _same_as(self, place: Place, fact: Fact, like: str | None) -> str | None:
        if like and (like not in self._facts or self._facts[like].kind != fact.kind):
            raise place.into("same_as").error(f"{like!r} takes no answer of the same kind")
        return like

    def _predicate(self, place: Place, named_by: str, name: str | None) -> Predicate | None:
        if name is None:
            return None
        modules = map(_module, self._predicates)
        found: Any = next((function for each in modules if (function := getattr(each, name, None))), None)
        if not callable(found):
            raise place.into(named_by).error(f"there is no predicate {name!r}")
        predicate: Predicate = found
        return predicate


_module = cache(import_module)


def _choices(place: Place, fact: Fact, shape: object) -> tuple[Choice, ...]:
    if fact.choices is None:
        if shape is not None:
            raise place.error("its fact is not chosen from a list, so it takes no choices")
        return ()
    told = place.properties(shape, needed=[value.value for value in fact.choices])
    return tuple(Choice(fact.choices(name), place.text(told[name], name)) for name in told)


def _feeds(place: Place, shape: object) -> Feeds:
    told = place.properties(shape, needed=(), allowed=Feeds._fields)
    feeds = Feeds(**{name: _texts(place, told, name) for name in told})
    if not any(feeds):
        raise place.error("it feeds nothing, so it must not be asked")
    return feeds


def _flag(place: Place, told: Mapping[str, object], name: str) -> bool:
    if name in told and told[name] != "true":
        raise place.into(name).error("this can only be true")
    return name in told


def _text_or_none(place: Place, told: Mapping[str, object], name: str) -> str | None:
    return place.text(told[name], name) if name in told else None


def _texts(place: Place, told: Mapping[str, object], name: str) -> tuple[str, ...]:
    """The one text under a name, or those in a list there; none where the name is left out."""
    if name not in told:
        return ()
    shape = told[name]
    if isinstance(shape, str):
        return (place.text(shape, name),)
    rows = place.into(name).sequence(shape)
    return tuple(place.text(each, name, number) for number, each in enumerate(rows, 1))
