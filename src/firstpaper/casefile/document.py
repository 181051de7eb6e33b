"""What is in a case file: one JSON document, read strictly and written the same way every time."""

import json
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass, field, replace
from pathlib import Path
from secrets import token_hex
from typing import Any, NamedTuple, Self

from pydantic import ValidationError

from firstpaper import __version__
from firstpaper.casefile.errors import CaseFileDamaged, CaseFileTooNew
from firstpaper.casefile.reading import MARK, content_of
from firstpaper.casefile.saving import save
from firstpaper.casefile.upgrades import SCHEMA, renamed, upgraded
from firstpaper.facts import Case
from firstpaper.intake.kinds import key_now
from firstpaper.locale import _

DEEPEST = 12
LONGEST_LIST = 2000
MOST_VALUES = 50_000
"""How deep a case file may be, and how much may stand in one list and in all: a stranger may have made it."""

_LONGEST_WORD, _MOST_SAVES = 64, 10**12
_PARTS = frozenset({MARK, "facts", "passed", "last", "language"})
_LONGEST_STEP = 300
_LONGEST_LANGUAGE = 3


class Mark(NamedTuple):
    """What a sealed file says of itself, inside the seal: a random word for the case, and which save it is.

    By the two, another household's file and an older save are known for what they are.
    """

    word: str
    save: int

    @classmethod
    def new(cls) -> Self:
        """The mark of a case that is sealed for the first time."""
        return cls(token_hex(8), 0)

    @property
    def next(self) -> Self:
        """The mark of the save after this one."""
        return self._replace(save=self.save + 1)


@dataclass(frozen=True, slots=True)
class CaseFile:
    """The saved facts of one household, and the questions put off for later. `mark` is told in a sealed file.

    `last` says in words what the save was, where that was more than one answer. `language` is the one that
    the household reads, by the name of its catalog; empty where nobody chose.

    Every answer is kept, also those whose question no longer applies: changing back brings them back.
    """

    case: Case = field(default_factory=Case.nothing)
    passed: tuple[str, ...] = ()
    language: str = ""
    mark: Mark | None = field(default=None, compare=False)
    last: str = field(default="", compare=False)

    @classmethod
    def load(cls, path: Path, passphrases: Iterable[str] = ()) -> Self:
        """Read the case file at `path`. Raises a UserError, and changes nothing, where it cannot.

        `passphrases` are tried in turn where the file is sealed.
        """
        return cls.parsed(path, content_of(path, passphrases)[0])

    @classmethod
    def parsed(cls, path: Path, content: bytes) -> Self:
        """Read the document in the case file at `path`."""
        document = _document(path, content)
        schema = _schema(path, document)
        try:
            document = upgraded(document, schema)
            return cls(
                _case(document["facts"]),
                _passed(document),
                _language(document),
                _mark(document),
                _last(document),
            )
        except ValidationError as error:
            keys = sorted({_key(one["loc"]) for one in error.errors(include_input=False)} - {""})
            reason = _("some answers in it cannot be read ({keys})").format(keys=", ".join(keys) or "?")
        except (KeyError, TypeError):
            reason = _("a part of it is missing")
        raise CaseFileDamaged(path=path, reason=reason)

    def save(self, path: Path) -> None:
        """Write this case file to `path`, whole or not at all, readable by its owner alone."""
        save(path, self.to_json().encode())

    def to_json(self) -> str:
        """The document as it is written: same facts, same text."""
        mark = self.mark._asdict() if self.mark else {}
        document = {
            MARK: {"schema": SCHEMA, "saved_by": __version__, **mark},
            "facts": self.case.plain(),
            "passed": list(self.passed),
            **({"last": self.last} if self.last else {}),
            **({"language": self.language} if self.language else {}),
        }
        return json.dumps(document, ensure_ascii=False, indent=1) + "\n"

    def with_case(self, case: Case) -> Self:
        """The same case file with these facts."""
        return replace(self, case=case, last="")

    def after(self, step: str) -> Self:
        """The same case file with words for what the save was, such as "entered from things.csv"."""
        return replace(self, last=step[:_LONGEST_STEP])


def _document(path: Path, data: bytes) -> dict[str, Any]:
    try:
        document = json.loads(data)
    except UnicodeDecodeError:
        reason = _("some of its letters cannot be read")
    except json.JSONDecodeError as error:
        reason = _("it breaks off or has a mistake at line {line}").format(line=error.lineno)
    except (RecursionError, ValueError):  # too deep, or a number of thousands of digits
        reason = _("it is not built like a case file")
    else:
        if isinstance(document, dict) and _is_bounded(document):
            return document
        reason = _("it is not built like a case file")
    raise CaseFileDamaged(path=path, reason=reason)


def _is_bounded(document: dict[str, Any]) -> bool:
    """Whether a document is no deeper, longer or fuller than any that this program writes."""
    level: list[Any] = [document]
    values = 0
    for _depth in range(DEEPEST):
        groups = [one for one in level if isinstance(one, dict | list)]
        inner = [one.values() if isinstance(one, dict) else one for one in groups]
        if any(len(group) > LONGEST_LIST for group in inner):
            return False
        level = [value for group in inner for value in group]
        values += len(level)
        if not level or values > MOST_VALUES:
            break
    return not level and values <= MOST_VALUES


def _case(told: dict[str, Any]) -> Case:
    try:
        return Case.told(told)
    except ValidationError:
        if not renamed(told):
            raise
        return Case.told(told)


def _schema(path: Path, document: dict[str, Any]) -> int:
    mark = document.get(MARK)
    mark = mark if isinstance(mark, dict) else {}
    schema = mark.get("schema")
    if not isinstance(schema, int) or isinstance(schema, bool) or schema < 1:
        raise CaseFileDamaged(path=path, reason=_("it does not say how it was saved"))
    if schema > SCHEMA or (schema == SCHEMA and document.keys() - _PARTS):
        raise CaseFileTooNew(path=path, saved_by=str(mark.get("saved_by", "?"))[:20], version=__version__)
    return schema


def _passed(document: dict[str, Any]) -> tuple[str, ...]:
    passed = document.get("passed", [])
    if not isinstance(passed, list):
        raise TypeError
    now = (key if _known(key) else key_now(key) for key in passed if isinstance(key, str))
    return tuple(key for key in now if _known(key))


def _last(document: dict[str, Any]) -> str:
    told = document.get("last", "")
    return told[:_LONGEST_STEP] if isinstance(told, str) else ""


def _language(document: dict[str, Any]) -> str:
    told = document.get("language", "")
    is_name = isinstance(told, str) and told.isascii() and told.isalpha() and told.islower()
    return told if is_name and 2 <= len(told) <= _LONGEST_LANGUAGE else ""


def _mark(document: dict[str, Any]) -> Mark | None:
    told = document[MARK]
    word, save = told.get("word"), told.get("save")
    if not isinstance(word, str) or not isinstance(save, int) or not 0 <= save < _MOST_SAVES:
        return None
    return Mark(word[:_LONGEST_WORD], save)


def mark_of(content: bytes) -> Mark | None:
    """What the document of a sealed file says of itself; None where it says nothing, or is none."""
    with suppress(ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return _mark(json.loads(content))
    return None


def _known(key: str) -> bool:
    try:
        Case.nothing().fact(key)
    except KeyError:
        return False
    return True


def _key(place: tuple[int | str, ...]) -> str:
    """The key of the fact at a place that the models name; never a word that only the file has."""
    parts = [str(part + 1) if isinstance(part, int) else part for part in place]
    while parts and not _known(".".join(parts)):
        parts.pop()
    return ".".join(parts)
