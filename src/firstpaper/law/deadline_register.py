"""Every date that a case can have, found by walking `law/deadlines/`.

A date is one function in one file. The file's path gives its key: `deadlines/response/petition.py` holds
`response.petition`. Everything that shows dates reads them here.
"""

from collections.abc import Callable, Iterator, Sequence
from datetime import date
from functools import cache
from importlib import import_module
from pathlib import Path

from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.deadline import Actor, Chart, Count, Deadline, DeadlineKind, Event, Meaning
from firstpaper.law.measures.once import once_a_case
from firstpaper.law.register import is_rule

_ROOT = Path(__file__).parent / "deadlines"
_DECLARED: dict[str, DeadlineKind] = {}


def deadline(
    title: str,
    *,
    rule: str,
    if_missed: str,
    neutral: str,
    who: Actor = Actor.PETITIONER,
    meaning: Meaning = Meaning.LAST_DAY,
    chart: Chart | None = None,
    done_by: str = "",
    needless_by: Sequence[str] = (),
    waits_for: Event | None = None,
    hangs_on_filing: bool = False,
    cite: str | Sequence[str] = (),
    certainty: Certainty | None = None,
) -> Callable[[Count], Count]:
    """Declare the date of a file in `law/deadlines/`. The words are those of `DeadlineKind`.

    Raises ValueError where a word is missing, a rule or a fact does not exist, or a file holds two dates.
    """

    def declare(count: Count) -> Count:
        key = count.__module__.partition(".deadlines.")[2]
        if key in _DECLARED:
            raise ValueError(f"{key}: a file holds one date")
        kind = DeadlineKind(
            key=key,
            count=count,
            rule=rule,
            title=title,
            if_missed=if_missed,
            neutral=neutral,
            who=who,
            meaning=meaning,
            chart=chart,
            done_by=done_by,
            needless_by=tuple(needless_by),
            waits_for=waits_for,
            hangs_on_filing=hangs_on_filing,
            cite=(cite,) if isinstance(cite, str) else tuple(cite),
            certainty=certainty,
        )
        for fault in _faults(kind):
            raise ValueError(f"{key}: {fault}")
        _DECLARED[key] = kind
        return count

    return declare


def _faults(kind: DeadlineKind) -> Iterator[str]:
    if not all(words.strip() for words in kind.words):
        yield "a word is missing"
    if kind.chart and "{day}" not in kind.chart.says:
        yield "the sentence of the picture names no day"
    if not is_rule(kind.rule):
        yield f"there is no rule {kind.rule}"
    for fact in filter(None, (kind.done_by, *kind.needless_by)):
        try:
            Case().fact(fact)
        except KeyError:
            yield f"there is no fact {fact}"


@cache
def all_deadlines() -> dict[str, DeadlineKind]:
    """Every date by its key, in the order of keys.

    Raises ValueError for a file that declares none.
    """
    for path in sorted(_ROOT.rglob("*.py")):
        if not path.stem.startswith("_"):
            key = ".".join(path.relative_to(_ROOT).with_suffix("").parts)
            import_module(f"firstpaper.law.deadlines.{key}")
            if key not in _DECLARED:
                raise ValueError(f"{key}: the file declares no date")
    return dict(sorted(_DECLARED.items()))


@once_a_case
def deadlines(case: Case, on: date) -> tuple[Deadline, ...]:
    """The dates still open on the day `on`, in their order.

    Before the filing is recorded, days that hang on it are counted from the day `on` and marked as planned.
    What has been done is left out; what has been missed stays in, with its day.
    """
    found = (one for kind in all_deadlines().values() for one in kind.counted(case, on))
    return tuple(sorted(found, key=lambda each: (each.target, each.id)))
