"""Whether a judge here can decide about a child."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Any

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Family, OtherCase
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures import child_homes
from firstpaper.law.measures.child_homes import Basis, HomeState, homes, parent_lives_here
from firstpaper.law.measures.children import ListedChild, has_minor_children, listed_children
from firstpaper.law.measures.other_cases import (
    another_court_may_decide,
    another_court_told,
    decides_on_custody_instead,
)
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, help_first, spaced
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

FAMILY = "children.family"
Stands = tuple[ListedChild, HomeState]
"""A child, and how it stands to California as its home state."""

LIVES = ("residence.petitioner.lives", "residence.respondent.lives")


@rule(
    "Whether a judge here can decide about a child",
    cite=(
        "Fam. Code 3402(g)",
        "Fam. Code 3421(a)-(c)",
        "Fam. Code 3424",
        "Ocegueda v. Perreira (2015) 232 Cal.App.4th 1079",
        "Schneer v. Llaurado (2015) 242 Cal.App.4th 1276",
    ),
    since=date(2023, 1, 1),
    not_modelled=(
        "Orders from other states, trips that were more than trips, and the other ways in (3421(a)(2)-(4))."
    ),
)
def home_state(case: Case, on: date) -> list[Found]:
    """A judge here can make a first custody order where California is the home state of the child.

    What the law says. The home state is the one where the child lived with a parent for at least six months
    in a row just before the case began. For a baby under six months, it is the state where the baby has
    lived since birth. A trip counts as time at home. A child who left within the last six months still
    counts, if a parent lives here. Presence of the child is not needed otherwise, and it is not enough.

    This is not the same as your own six months for a divorce. For a child it counts where the child *was*,
    not where anybody meant to stay. So a child can be too new here while you are not. The divorce can go
    on all the same. Only the orders on custody and visits may have to come from another state.

    How we count, for a filing on November 25, 2026. Here since May 25: six months to the day, so it is met,
    but look again. Here since May 26: not yet. Born here on September 1 and always here: met. Left on July 1
    after five years, and a parent stayed: met, until January 1, 2027. Left on May 20: no longer.

    The home state is one condition, not all. If a court elsewhere has made a custody order, or a case about
    the child is open there, that court most often goes first. A juvenile court here decides alone while its
    case is open. See matter.other_case.

    If a child or a parent is in danger, a judge here can act for a while, whatever the home state is.

    What to do. If another state may come first, talk to a lawyer before you file. Do not move a child to
    make the count fit.
    """
    return list(_each(case, on)) if has_minor_children(case, on) else []


def _each(case: Case, on: date) -> Iterator[Found]:
    family = known(case.children.family)
    children = listed_children(case, on)
    told = [child for child in children if homes(case, child)]
    yield from (_about(case, alike, on) for alike in _alike(case, told, on))
    if family is None or len(told) == len(children):
        return
    if Family.NOT_ALWAYS_HERE not in family:
        if not told:
            yield _all_here(case, on)
        return
    yield from (_not_told(child) for child in children if child not in told)


def _another_court(case: Case) -> str:
    """Whether another court may be the one that decides; empty where nothing told points to one."""
    if not another_court_may_decide(case):
        return ""
    if decides_on_custody_instead(case):
        return _("There is another case, so another court may have to decide on custody.")
    if another_court_told(case):
        return _("There is another case. Ask in which of the two cases custody is decided.")
    return _("There may be another case, so another court may have to decide on custody.")


def _on_another_court(case: Case) -> tuple[str, ...]:
    """What the doubt rests on, by the kind of the other case; of any the court must be told."""
    instead = decides_on_custody_instead(case)
    return _INSTEAD.get(instead, _TOLD_TO_THE_COURT) if instead else _TOLD_TO_THE_COURT


_TOLD_TO_THE_COURT = ("Fam. Code 3429(a)(1)-(2)",)
_INSTEAD = {
    OtherCase.ELSEWHERE: ("Fam. Code 3426", "Fam. Code 3423"),
    OtherCase.JUVENILE: ("Welf. & Inst. Code 302(c)", "Welf. & Inst. Code 304"),
}


def _all_here(case: Case, on: date) -> Found:
    doubt = _another_court(case)
    months = figure("children.home_state_months", on).value
    told = _("You told of no child who lived outside California in the last {months} months.")
    here, decide = told.format(months=months), _("Then by this count a judge here can decide about custody.")
    return Found(
        Outcome.MET,
        Weight.GET_ADVICE if doubt else Weight.GOOD_TO_KNOW,
        spaced([doubt, here] if doubt else [here, decide]),
        _("If a child did live elsewhere in that time, even for a while, change that answer."),
        facts=(FAMILY,),
        cite=_on_another_court(case) if doubt else (),
    )


def _not_told(child: ListedChild) -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We need to know where {name} has lived, to tell whether a judge here can decide.").format(
            name=child_words(child.number, child.name)
        ),
        _("List the homes of the last five years, with the days as near as you know."),
        facts=(FAMILY, f"{child.key}.homes"),
    )


def _alike(case: Case, told: Sequence[ListedChild], on: date) -> Iterable[Sequence[Stands]]:
    """The children of whom the same is to be said, together."""
    found: dict[tuple[Any, ...], list[Stands]] = {}
    for child in told:
        state = _state(case, child, on)
        found.setdefault((state.basis, _words(state, "", on)), []).append((child, state))
    return found.values()


def _about(case: Case, alike: Sequence[Stands], on: date) -> Found:
    names = [child_words(child.number, child.name) for child, _state in alike]
    states = [state for _child, state in alike]
    line = states[0].line if len({state.line for state in states}) == 1 else None
    doubt = _another_court(case)
    says, outcome, do = _words(states[0], names[0], on, doubt)
    too = _("The same is true of {names}.").format(names=in_a_row(names[1:])) if names[1:] else ""
    surely = outcome is Outcome.MET and not doubt
    return Found(
        outcome,
        Weight.GOOD_TO_KNOW if surely else Weight.GET_ADVICE,
        spaced([says, too]),
        do,
        facts=(*(f"{child.key}.{fact}" for child, _state in alike for fact in ("homes", "born_on")), *LIVES),
        dates={"line_on": line} if line else {},
        values={f"{child.key}.home_state": state.basis.value for child, state in alike},
        steps=tuple(_steps(names, states)),
        cite=_on_another_court(case) if doubt and outcome is Outcome.MET else (),
    )


def _steps(names: Sequence[str], states: Sequence[HomeState]) -> Iterator[str]:
    """Each count once; where there are several children, with those whose count it is."""
    for steps in dict.fromkeys(state.steps for state in states if state.steps):
        of = [name for name, state in zip(names, states, strict=True) if state.steps == steps]
        whose = _("{step} ({names})").format(step=steps[0], names=in_a_row(of))
        yield from (whose if names[1:] else steps[0], *steps[1:])


def _state(case: Case, child: ListedChild, on: date) -> HomeState:
    return child_homes.home_state(homes(case, child), child.born, on, parent_here=parent_lives_here(case))


def _words(state: HomeState, name: str, on: date, doubt: str = "") -> tuple[str, Outcome, str]:
    """What is said, how it stands, and what to do."""
    if state.on_the_line:
        line = _("For {name}, the {months} months are full, or end, on the very day you plan to file: {on}.")
        says, outcome, do = line, Outcome.CLOSE, help_first()
    else:
        says, outcome, do = _by_basis(doubt)[state.basis]
    words = {
        "name": name,
        "on": spell_date(on),
        "line": spell_date(state.line) if state.line else "",
        "months": figure("children.home_state_months", on).value,
    }
    return says.format(**words), outcome, do


def _by_basis(doubt: str) -> dict[Basis, tuple[str, Outcome, str]]:
    goes_on = _("The case about the marriage can go on. {help}").format(help=help_first())
    decide = _("So by this count a judge here can decide about custody.")
    lived = _("{name} has lived in California for at least {months} months.")
    born = _("{name} has lived in California since birth.")
    left = _("{name} left California less than {months} months ago, and a parent lives here.")
    not_yet = _("{name} will have lived in California for {months} months on {line}.")
    other_first = _("Before that, another state may have to decide about custody.")
    elsewhere = _("By the homes you told, another state may have to decide about custody of {name}.")
    unclear = _("By the homes you told, we cannot tell which state may decide about custody of {name}.")
    by_then = _("That holds only if you file by {line}.")

    def settled(here: str, until: str = "") -> str:
        return spaced([doubt, here, until] if doubt else [here, decide, until])

    return {
        Basis.HERE: (settled(lived), Outcome.MET, help_first() if doubt else ""),
        Basis.SINCE_BIRTH: (settled(born), Outcome.MET, help_first() if doubt else ""),
        Basis.LEFT_LATELY: (settled(left, by_then), Outcome.MET, _("File by that day if you can.")),
        Basis.NOT_YET: (spaced([not_yet, other_first]), Outcome.NOT_MET, goes_on),
        Basis.ELSEWHERE: (elsewhere, Outcome.NOT_MET, goes_on),
        Basis.UNCLEAR: (unclear, Outcome.FOR_A_LAWYER, goes_on),
    }
