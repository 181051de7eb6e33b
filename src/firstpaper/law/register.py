"""Every rule of law the project knows, found by walking `law/rules/`.

A rule is one function in one file. The file's path gives the rule's id: `rules/residence/state.py`
holds the rule `residence.state`. The function's docstring is the page that explains it.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from datetime import date
from functools import cache, lru_cache
from importlib import import_module
from inspect import cleandoc
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.facts import Case
from firstpaper.former_names import Named, called_now
from firstpaper.law.authority import Certainty, weakest
from firstpaper.law.finding import Finding, Found, Outcome, Weight, safety_first
from firstpaper.law.measures.record import judged_on
from firstpaper.locale import _, by_paragraph

if TYPE_CHECKING:
    from firstpaper.law.source import Cited

Check = Callable[[Case, date], Found | Sequence[Found] | None]


class Rule(NamedTuple):
    """One rule: a function, and what a reader must know before trusting it.

    `since` and `until` are the first and last day the law was in force as modelled here;
    outside them the rule is silent. `narrowed` makes the rule less sure than its sources, never surer.
    `as_planned` is for a rule about the planned day itself; the others are asked about the open day on
    which a filing really happens.
    """

    id: str
    title: str
    check: Check
    authority: tuple[str, ...]
    narrowed: Certainty
    since: date
    until: date | None
    not_modelled: str
    as_planned: bool = False
    part_of: str = ""

    @property
    def sources(self) -> "tuple[Cited, ...]":
        """What the rule rests on, each section or page as the rule names it."""
        return _sources(self.authority)

    @property
    def certainty(self) -> Certainty:
        """As sure as the least sure of its sources."""
        return _as_sure_as(self.narrowed, self.authority)

    @property
    def checked_on(self) -> date:
        """The day on which the oldest of its sources was last checked."""
        return min(one.source.checked_on for one in self.sources)

    @property
    def page(self) -> str:
        """The rule explained, in plain words: paragraphs, each on one line, with an empty line between."""
        return by_paragraph(cleandoc(self.check.__doc__ or ""))

    @property
    def statement(self) -> str:
        """The rule in one sentence: the first paragraph of its page."""
        return self.page.partition("\n\n")[0]

    def in_force(self, on: date) -> bool:
        """Whether the law was in force, as modelled here, on that day."""
        return self.since <= on and (self.until is None or on <= self.until)

    def apply(self, case: Case, on: date) -> tuple[Finding, ...]:
        """Its findings on a case for a filing on the day `on`."""
        return tuple(self._stamped(one) for one in self.says(case, on))

    def says(self, case: Case, on: date) -> tuple[Found, ...]:
        """What it finds, without what it rests on. A crash is a finding, never silence."""
        if not self.in_force(on):
            return ()
        try:
            found = self.check(case, on)
            return () if found is None else (found,) if isinstance(found, Found) else tuple(found)
        except Exception as error:  # a rule that cannot run must be seen, whatever broke
            return (_not_checked(self, error),)

    def _stamped(self, one: Found) -> Finding:
        return Finding(
            id=self.id,
            title=_(self.title),
            outcome=one.outcome,
            weight=one.weight,
            says=one.says,
            do=one.do,
            facts=one.facts,
            dates=one.dates,
            values=one.values,
            steps=one.steps,
            authority=(*self.authority, *one.cite),
            certainty=self._certainty_of(one),
            not_modelled=_(self.not_modelled),
            part_of=self.part_of,
            own=one.cite,
            mended_by=one.mended_by,
        )

    def _certainty_of(self, one: Found) -> Certainty:
        """A finding may be less sure than its rule, never surer."""
        return weakest((self.certainty, _as_sure_as(one.certainty or self.certainty, one.cite)))


@lru_cache(maxsize=2048)
def _as_sure_as(narrowed: Certainty, cites: tuple[str, ...]) -> Certainty:
    return weakest((narrowed, *(one.source.certainty for one in _sources(cites))))


@lru_cache(maxsize=2048)
def _sources(cites: tuple[str, ...]) -> "tuple[Cited, ...]":
    from firstpaper.law.source import cited  # noqa: PLC0415  (`stops` looks no law up)

    return tuple(one for each in cites for one in cited(each))


def rule(
    title: str,
    *,
    cite: str | Sequence[str],
    since: date,
    until: date | None = None,
    certainty: Certainty = Certainty.STATUTE,
    not_modelled: str = "",
    as_planned: bool = False,
    part_of: str = "",
) -> Callable[[Check], Check]:
    """Declare the rule of a file in `law/rules/`.

    `cite` names the section and paragraph as they stand in `authorities/`; from them come how sure the
    rule is and when it was checked. `certainty` makes it less sure than they are. `since` is the first day
    on which the law stood as written here, and `not_modelled` what the rule leaves out. `as_planned` is set
    for a rule about the planned day itself, open or not. `part_of` is the id of the rule of whose test it
    is a part: what it finds is read with what that rule finds.
    """

    def declare(check: Check) -> Check:
        identity = check.__module__.partition(".rules.")[2]
        _DECLARED[identity] = Rule(
            id=identity,
            title=title,
            check=check,
            authority=(cite,) if isinstance(cite, str) else tuple(cite),
            narrowed=certainty,
            since=since,
            until=until,
            not_modelled=not_modelled,
            as_planned=as_planned,
            part_of=part_of,
        )
        return check

    return declare


_DECLARED: dict[str, Rule] = {}


_ROOT = Path(__file__).parent / "rules"


@cache
def rule_ids() -> tuple[str, ...]:
    """The id of every rule, from where its file lies. No file is loaded for it."""
    files = (path for path in _ROOT.rglob("*.py") if not path.stem.startswith("_"))
    return tuple(sorted(".".join(path.relative_to(_ROOT).with_suffix("").parts) for path in files))


@cache
def all_rules() -> dict[str, Rule]:
    """Every rule by its id, in the order of ids."""
    for identity in rule_ids():
        _load(identity)
    return dict(sorted(_DECLARED.items()))


def findings(
    case: Case, on: date, ids: Sequence[str] | None = None, *, closed_too: bool = False
) -> tuple[Finding, ...]:
    """Every finding on the standing facts of a case, heaviest first, for a filing on the day `on`.

    Where the clerk is closed on that day, the case is judged on the next open day; with `closed_too` on the
    day itself, as if the court were open. With `ids`, only those rules run, and only their files are loaded;
    an id without a rule is passed over.
    """
    chosen = all_rules().values() if ids is None else _called(ids)
    judged = on if closed_too else judged_on(case, on)
    return tuple(sorted(_each(chosen, case, on, judged), key=_heaviest_first))


def stops(case: Case, on: date, ids: Sequence[str] | None = None) -> Iterator[tuple[str, Found]]:
    """What the rules find that stops a filing on the day `on`, each with the id of its rule.

    The law it rests on is not looked up: this is wanted after every answer, and of every case on a shelf.
    """
    judged = judged_on(case, on)
    for one in all_rules().values() if ids is None else _called(ids):
        for found in one.says(case, on if one.as_planned else judged):
            if found.weight is Weight.STOP:
                yield one.id, found


def is_rule(identity: str) -> bool:
    """Whether there is a rule of that id, as it is called now."""
    return identity in _DECLARED or _ROOT.joinpath(*identity.split(".")).with_suffix(".py").is_file()


def named_rule(name: str) -> Rule | None:
    """The rule of that id, or of one that it had before; None where there is none.

    Only its own file is loaded.
    """
    ids = (one for one in (name, called_now(Named.RULE, name)) if one in rule_ids())
    return next(map(rule_called, ids), None)


def rule_called(identity: str) -> Rule:
    """The rule of that id, or of one that it had before; only its own file is loaded.

    Raises ModuleNotFoundError where there is none.
    """
    if not is_rule(identity):
        identity = called_now(Named.RULE, identity)
    if identity not in _DECLARED:
        _load(identity)
    return _DECLARED[identity]


def _called(ids: Iterable[str]) -> Iterator[Rule]:
    now = (one if is_rule(one) else called_now(Named.RULE, one) for one in ids)
    return (rule_called(identity) for identity in now if is_rule(identity))


def _load(identity: str) -> None:
    import_module(f"firstpaper.law.rules.{identity}")


def _heaviest_first(finding: Finding) -> tuple[bool, int]:
    """Safety before everything, also before what stops a filing; then by weight."""
    return not safety_first(finding), finding.weight.order


def _each(rules: Iterable[Rule], case: Case, on: date, judged: date) -> Iterator[Finding]:
    for one in rules:
        yield from one.apply(case, on if one.as_planned else judged)


def _not_checked(broken: Rule, error: Exception) -> Found:
    return Found(
        outcome=Outcome.NOT_CHECKED,
        weight=Weight.GET_ADVICE,
        says=_("This program could not check: {title}.").format(title=_(broken.title)),
        do=_("Ask the court's self-help center to look at this point. Please report it ({code}).").format(
            code=type(error).__name__
        ),
    )
