"""How like two texts are: a label of ours, and what a file calls a field."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterable, Mapping, Sequence
from math import log, sqrt
from typing import NamedTuple

PIECES = re.compile(r"[A-Z]+(?![a-z])|[A-Z]?[a-z]+|\d+")
FORM = re.compile(r"[Ff]([LWlw])[-_ ]?(\d{3})")
NUMBER = re.compile(r"\b(\d{1,2})\s*\.?\s*([a-z])?\s*\.?\s*(?:\((\d)\))?(?![a-z0-9])", re.IGNORECASE)
STOP = frozenset(
    [
        "the",
        "a",
        "an",
        "of",
        "to",
        "in",
        "for",
        "and",
        "or",
        "is",
        "are",
        "that",
        "this",
        "it",
        "its",
        "on",
        "at",
        "by",
        "with",
        "if",
        "any",
        "be",
        "as",
        "not",
    ]
)
SAME = {
    "tel": "telephone", "phone": "telephone", "telno": "telephone", "mail": "email", "postal": "zip",
    "addr": "address", "dob": "birth", "birthdate": "birth", "born": "birth", "num": "number", "no": "number",
    "atty": "attorney", "resp": "respondent", "pet": "petitioner", "yrs": "years", "mos": "months",
    "dissolution": "dissolution", "divorce": "dissolution", "sig": "signature", "ct": "court",
}  # fmt: skip

Weighed = Mapping[str, float]


def pieces(text: str) -> list[str]:
    """The stems of the words of a text, or of a name in camel case; the number of a form is one word."""
    forms = [f"f{letter}{digits}".lower() for letter, digits in FORM.findall(text)]
    plain = FORM.sub(" ", text).replace("e-mail", "email").replace("E-mail", "email")
    words = (word.lower() for word in PIECES.findall(plain))
    return [
        *forms,
        *(_stem(SAME.get(word, word)) for word in words if word not in STOP and not word.isdigit()),
    ]


def numbers(text: str) -> list[str]:
    """The item numbers in a text, as in "#3", "#3a" and "#3a1" for "3.a.(1)"."""
    found: list[str] = []
    for digits, letter, inner in NUMBER.findall(text):
        one = f"#{int(digits)}"
        found += [one, one + letter.lower()] if letter else [one]
        found += [f"{one}{letter.lower()}{inner}"] if inner and letter else []
    return found


def item_number(text: str) -> list[str]:
    """The number with which a text begins, as deep as it goes: "#3a1" for "3.a.(1) Born to ..."."""
    start = NUMBER.match(text.strip().removeprefix("Item "))
    return numbers(start[0])[-1:] if start else []


class Texts(NamedTuple):
    """Texts of one kind by their words, each word with how much of the text it carries."""

    bags: tuple[Weighed, ...]

    @staticmethod
    def of(parts: Iterable[Sequence[tuple[Iterable[str], float]]]) -> "Texts":
        """From the words of each text, in groups with a weight."""
        bags: list[dict[str, float]] = []
        for groups in parts:
            bag: dict[str, float] = {}
            for words, weight in groups:
                for word in words:
                    bag[word] = max(bag.get(word, 0.0), weight)
            bags.append(bag)
        return Texts(tuple(bags))


def likeness(ours: Texts, theirs: Texts) -> list[list[float]]:
    """For each of ours a row: how like each of theirs is, from 0 to 1. A rare word counts for more.

    It is the cosine of the two texts, each a vector of its words.
    """
    known = Counter(word for bag in ours.bags for word in bag)
    theirs = Texts(tuple(_in_our_words(bag, known) for bag in theirs.bags))
    used = Counter(word for bag in theirs.bags for word in bag)
    many, more = max(1, len(ours.bags)), max(1, len(theirs.bags))
    weight = {
        word: log(1 + many / count) * log(1 + more / used.get(word, 1)) for word, count in known.items()
    }
    strange = log(1 + many)
    columns = _by_word(_unit(bag, weight, strange) for bag in theirs.bags)
    table = []
    for bag in ours.bags:
        row = [0.0] * len(theirs.bags)
        for word, share in _unit(bag, weight, strange).items():
            for at, other in columns.get(word, ()):
                row[at] += share * other
        table.append(row)
    return table


def _unit(bag: Weighed, weight: Weighed, strange: float) -> Weighed:
    """The vector of a text, of length 1; `strange` is the weight of a word that is none of ours."""
    scaled = {word: share * weight.get(word, strange) for word, share in bag.items()}
    length = sqrt(sum(value * value for value in scaled.values()))
    return {word: value / length for word, value in scaled.items()} if length else {}


def _by_word(bags: Iterable[Weighed]) -> Mapping[str, Sequence[tuple[int, float]]]:
    found: dict[str, list[tuple[int, float]]] = defaultdict(list)
    for at, bag in enumerate(bags):
        for word, value in bag.items():
            found[word].append((at, value))
    return found


def _in_our_words(bag: Weighed, known: Mapping[str, int]) -> Weighed:
    found: dict[str, float] = {}
    for word, share in bag.items():
        for name in _ours_for(word, known):
            found[name] = max(found.get(name, 0.0), share if name == word else share * 0.8)
    return found


def _ours_for(word: str, known: Mapping[str, int]) -> Sequence[str]:
    if word in known or word.startswith("#") or len(word) < 3:
        return (word,)
    longer = [name for name in known if name.startswith(word) and not name.startswith("#")]
    return longer if 0 < len(longer) <= 2 else (word,)


def _stem(word: str) -> str:
    for ending in ("ies", "es", "s"):
        if word.endswith(ending) and len(word) - len(ending) >= 4:
            return word[: -len(ending)] + ("y" if ending == "ies" else "")
    return word
