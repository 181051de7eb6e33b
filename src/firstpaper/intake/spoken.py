"""An answer said back in plain words, so that a person can see what was understood.

A date, a period and an address are said in words that read back as the same fact.
"""

from decimal import Decimal
from enum import StrEnum
from typing import Any

from firstpaper.facts import Case, Day, DontKnow
from firstpaper.facts.children import Home
from firstpaper.facts.matter import Period
from firstpaper.facts.money import in_dollars
from firstpaper.facts.people import Address
from firstpaper.facts.record import Attempt, Closure
from firstpaper.facts.schedule import Contribution
from firstpaper.facts.uccjea import Person
from firstpaper.intake.engine import Asked, asking
from firstpaper.intake.kinds import AnswerKind
from firstpaper.intake.reading.dates import spell
from firstpaper.locale import _


def echo(asked: Asked | str, value: Any) -> str:
    """The answer `value` in plain words. A key may stand for the question."""
    if isinstance(asked, str):
        found = asking(asked, Case.nothing())
        if found is None:
            raise KeyError(asked)
        asked = found
    return _said(asked, value)


def _said(asked: Asked, value: Any) -> str:
    if value is None:
        return _("not answered yet")
    if isinstance(value, DontKnow):
        return _("I don't know")
    if value in ("", ()):
        return asked.none or _("none")
    if isinstance(value, tuple):
        return "; ".join(_one(asked, part) for part in value)
    return _one(asked, value)


def _one(asked: Asked, value: Any) -> str:
    if isinstance(value, bool):
        return _("Yes") if value else _("No")
    if isinstance(value, Day):
        return _day(value)
    if isinstance(value, StrEnum):
        return next((choice.words for choice in asked.choices if choice.value == value), str(value)).rstrip(
            "."
        )
    if isinstance(value, Decimal):
        return f"{value.normalize():f}%" if asked.kind is AnswerKind.PERCENT else in_dollars(value)
    if isinstance(value, Contribution):
        from firstpaper.intake.reading.contributions import spell_contribution  # noqa: PLC0415  (rarely told)

        return spell_contribution(value, asked.case)
    return _in_pieces(value)


def _in_pieces(value: Any) -> str:
    if isinstance(value, Period):
        return _period(value)
    if isinstance(value, Home):
        return _home(value)
    if isinstance(value, Attempt | Closure):
        return _recorded(value)
    if isinstance(value, Person):
        return ", ".join(filter(None, (value.name, value.relation, value.address)))
    if isinstance(value, Address):
        return _address(value)
    return str(value)


def _day(day: Day) -> str:
    return _("about {date}").format(date=spell(day)) if day.unsure else spell(day)


def _period(period: Period) -> str:
    span = _span(period)
    return f"{span}, {period.why}" if period.why else span


def _recorded(value: Attempt | Closure) -> str:
    from firstpaper.intake.reading.attempts import spell_time  # noqa: PLC0415  (rarely told)

    if isinstance(value, Closure):
        return _closure(value)
    return f"{_day(value.on)}, {spell_time(value.at)}" if value.at else _day(value.on)


def _closure(closure: Closure) -> str:
    days = _day(closure.first)
    if closure.last:
        days = _("{start} to {end}").format(start=days, end=_day(closure.last))
    return f"{days}, {closure.why}" if closure.why else days


def _home(home: Home) -> str:
    where = f"{_span(home)}, {home.place}, {home.state}"
    return _("{where}, with {who}").format(where=where, who=home.with_whom) if home.with_whom else where


def _span(span: Period | Home) -> str:
    if span.end is None:
        return _("since {start}").format(start=_day(span.start))
    return _("{start} to {end}").format(start=_day(span.start), end=_day(span.end))


def _address(address: Address) -> str:
    from firstpaper.intake.reading.addresses import is_state  # noqa: PLC0415  (few answers are addresses)

    code = address.zip or (_("no ZIP") if is_state(address.state) else "")
    return ", ".join((address.street, address.city, f"{address.state} {code}".strip()))
