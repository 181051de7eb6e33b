"""The children of the case, whoever they are of, and other cases and orders about them or the two."""

import re
from collections.abc import Iterator

from firstpaper.facts import Case, known
from firstpaper.facts.choices import GrownNeed
from firstpaper.intake import echo
from firstpaper.law.measures.children import (
    PresumedChild,
    concerns_children,
    listed_children,
    presumed_children,
    unborn,
)
from firstpaper.law.measures.other_cases import other_cases
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.handoff.line import Line, a_few, short_day

_CASE_NUMBER = re.compile(r"[\w-]*\d{4,}[\w-]*")


def of_the_children(brief: Brief) -> Iterator[Line]:
    """Those of both, those said to be of one, the grown ones support is asked for, and other cases."""
    case = brief.case
    yield Line(_("Children"), _of_both(brief))
    if said := a_few([_said_of_one(child) for child in presumed_children(case, brief.on)]):
        yield Line(_("Said to be of one of the two only"), said)
    if needs := known(case.support.grown):
        yield Line(_("Support asked for a grown child"), _grown(case, needs))
    if words := _other_cases(case):
        yield Line(_("Other cases"), words)
    if orders := known(case.uccjea.order_words):
        yield Line(_("Protective orders"), a_few(orders))
    if claims := known(case.uccjea.claims):
        yield Line(_("Others who have or claim a child"), a_few(claims))


def _of_both(brief: Brief) -> str:
    listed = [_child(one.name, one.age) for one in listed_children(brief.case, brief.on)]
    if unborn(brief.case):
        listed.append(_("one not yet born"))
    if listed:
        return "; ".join(listed)
    if concerns_children(brief.case, brief.on) is None:
        return _("open; none told of as a child of both")
    return _("none of both under 18")


def _child(name: str | None, age: int | None) -> str:
    name = name or _("(name still open)")
    return name if age is None else _("{name}, {age}").format(name=name, age=age)


def _said_of_one(child: PresumedChild) -> str:
    name = child.name or _("a child not named")
    words = _("{name}, born {day}").format(name=name, day=short_day(child.born)) if child.born else name
    if not child.born_to_one:
        return _("{child} (open: born to one of the two?)").format(child=words)
    return words if child.in_union else _("{child} (open: born in the union?)").format(child=words)


def _grown(case: Case, needs: tuple[GrownNeed, ...]) -> str:
    words = {
        GrownNeed.IN_SCHOOL: _("still in high school"),
        GrownNeed.CANNOT_EARN: _("cannot earn a living"),
    }
    names = known(case.support.grown_who) or (echo("support.grown_who", case.support.grown_who),)
    need = in_a_row([words[one] for one in needs])
    return _("{names} ({need})").format(names=a_few(names), need=need)


def _other_cases(case: Case) -> str:
    """Court, kind and number as told; one that was told twice stands once, with what the second adds."""
    first = known(case.matter.other_case_words) or ""
    told = [first] if first else []
    for words in known(case.uccjea.case_words) or ():
        number = next((found for found in _CASE_NUMBER.finditer(words) if found[0] in first), None)
        if number is None:
            told.append(words)
        elif more := words[number.end() :].strip(" ,"):
            told[0] = _("{case} ({more})").format(case=told[0], more=more)
    if told:
        return a_few(tuple(dict.fromkeys(told)))
    return _("there is one; ask for its court and number") if other_cases(case) else ""
