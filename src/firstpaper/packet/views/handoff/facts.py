"""The facts that a lawyer asks for first: the case and its course, the union, the children, what there is."""

from collections import Counter
from collections.abc import Iterator
from itertools import islice

from firstpaper.counting import short_date
from firstpaper.facts import Case, Day, DontKnow, known
from firstpaper.facts.choices import FeeState, Union, Who
from firstpaper.intake import echo
from firstpaper.intake.events import as_they_happened, in_short
from firstpaper.law.agenda import agenda
from firstpaper.law.measures.character import (
    Character,
    Code,
    asset_characters,
    debt_characters,
    is_training_loan,
)
from firstpaper.law.measures.marriage import begins_on_an_open_day, length, separation
from firstpaper.law.measures.record import answered_first, case_number, day, filed_on, is_filed, joint
from firstpaper.law.measures.residence import Route, residence_route, who_qualifies
from firstpaper.law.words import spaced
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.brief import Brief, kind_words
from firstpaper.packet.views.handoff.children import of_the_children
from firstpaper.packet.views.handoff.line import Line, a_few, short_day
from firstpaper.packet.views.handoff.people import of_the_people

MOST_DATES_AHEAD = 2


def facts(brief: Brief) -> Iterator[Line]:
    """One line each."""
    yield from _case(brief)
    yield from _unions(brief)
    yield Line(_("Separated"), _separated(brief.case))
    if residents := _residents(brief):
        yield Line(_("Residence met by"), residents)
    yield from of_the_children(brief)
    yield from _estate(brief)
    yield from of_the_people(brief)
    yield from _open(brief)


# --- the case ------------------------------------------------------------------------------------------


def _case(brief: Brief) -> Iterator[Line]:
    case = brief.case
    county = known(case.court.county) or _("county not chosen yet")
    number = case_number(case)
    yield Line(_("Case"), ", ".join(filter(None, (brief.kind, county, number, _stage(brief)))))
    if known(case.matter.amended):
        yield Line(_("First petition"), _first_petition(brief))
    if since := "; ".join(_since_the_filing(case)):
        yield Line(_("Since then"), since)
    if ahead := "; ".join(_dates_ahead(brief)):
        yield Line(_("Next dates"), ahead)


def _stage(brief: Brief) -> str:
    """Of the petition that is drafted now, which may be an amended one."""
    case, amended = brief.case, known(brief.case.matter.amended)
    filed = day(case.record.amended_on) if amended else filed_on(case, brief.on)
    if not is_filed(case):
        words = _("amended petition to file {day}") if amended else _("to file {day}")
        return words.format(day=short_date(brief.begins))
    if filed is None:
        return _("filed on a day not told")
    words = _("filed {day}")
    if amended:
        words = _("amended petition filed {day}")
    elif joint(case):
        words = _("filed together {day}")
    return words.format(day=short_date(filed))


def _first_petition(brief: Brief) -> str:
    matter = brief.case.matter
    first = filed_on(brief.case, brief.on)
    kind = known(matter.first_kind)
    filed = _("filed {day}").format(day=short_date(first)) if first else _("filed on a day not told")
    parts = [", ".join(filter(None, (kind_words(kind) if kind else "", filed)))]
    if matter.first_stated_intent is True:
        parts.append(_("intent to amend stated"))
    answered = answered_first(brief.case, brief.on)
    if answered is not None:
        parts.append(_("a response has come") if answered else _("no response"))
    return "; ".join(filter(None, parts))


def _since_the_filing(case: Case) -> Iterator[str]:
    """What was recorded, without the filings that stand above and a fee that was paid at once."""
    paid_at_once = known(case.record.fee) is FeeState.PAID and case.record.waiver_denied_on is None
    said = {"filed", "amended", *(("fee",) if paid_at_once else ())}
    told = (in_short(topic, case) for topic in as_they_happened(case) if topic.name not in said)
    return filter(None, told)


def _dates_ahead(brief: Brief) -> Iterator[str]:
    """After the filing, the next days to keep."""
    if is_filed(brief.case):
        ahead = (each.deadline for each in agenda(brief.case, brief.on).ahead)
        for one in islice((one for one in ahead if one.ahead(brief.on)), MOST_DATES_AHEAD):
            doubt = "" if one.certainty.confirmed else _("(not confirmed)")
            yield spaced((_("{day}: {what}").format(day=one.days(short_date), what=one.title), doubt))


def _open(brief: Brief) -> Iterator[Line]:
    """What is still to be answered, by name as far as there is room."""
    if asked := a_few([one.short for one in brief.open_questions]):
        yield Line(_("Still open"), asked)
    if brief.unfinished:
        yield Line(_("Items not finished"), brief.unfinished)


# --- the union -----------------------------------------------------------------------------------------


def _unions(brief: Brief) -> Iterator[Line]:
    case, dates = brief.case, brief.case.dates
    for union in known(case.matter.unions) or ():
        married = union is Union.MARRIAGE
        began = (
            _told("dates.married_on", dates.married_on)
            if married
            else _told("dates.registered_on", dates.registered_on)
        )
        place = _place_of(case, union)
        began = _("{day}, {place}").format(day=began, place=place) if place else began
        span = length(case, union)
        told = f"{began} ({span})" if span else began
        if union is Union.PARTNERS_ELSEWHERE and begins_on_an_open_day(case):
            told = _("{told}; open in law: from which day it counts here").format(told=told)
        yield Line(_("Married") if married else _("Registered partners"), told)


def _place_of(case: Case, union: Union) -> str | None:
    return {
        Union.MARRIAGE: known(case.dates.married_place),
        Union.PARTNERS_CALIFORNIA: _("California"),
        Union.PARTNERS_ELSEWHERE: known(case.matter.registration),
    }[union]


def _told(key: str, told: Day | DontKnow | None) -> str:
    if isinstance(told, DontKnow):
        return _("not known")
    return short_day(told) if told else echo(key, told)


def _separated(case: Case) -> str:
    parted, told = separation(case), case.dates
    if parted.day:
        return short_date(parted.day)
    return _("{why} Said: {told}. Acted on: {acted}.").format(
        why=parted.why,
        told=_told("dates.separation_told_on", told.separation_told_on),
        acted=_told("dates.separation_acted_on", told.separation_acted_on),
    )


def _residents(brief: Brief) -> str:
    not_needed = {
        Route.CALIFORNIA_PARTNERSHIP: _("not needed (California partnership, item 2b)"),
        Route.SAME_SEX: _("not needed (item 2c, Fam. Code 2320(b))"),
        Route.NOT_NEEDED: "",
    }
    route = residence_route(brief.case, brief.on)
    if route in not_needed:
        return not_needed[route]
    who = who_qualifies(brief.case, brief.on)
    words = {Who.PETITIONER: _("petitioner"), Who.RESPONDENT: _("respondent")}
    return (
        in_a_row([words[one] for one in who])
        if who
        else _("neither on {day}").format(day=short_date(brief.on))
    )


# --- what there is --------------------------------------------------------------------------------------


def _estate(brief: Brief) -> Iterator[Line]:
    """How much is listed, and how much of it nobody can place yet; no thing by name and no amount."""
    things, debts = asset_characters(brief.case, brief.on), debt_characters(brief.case, brief.on)
    if not things and not debts:
        return
    listed = ", ".join(
        words
        for count, words in (
            (len(things), _n("{count} thing", "{count} things", len(things)).format(count=len(things))),
            (len(debts), _n("{count} debt", "{count} debts", len(debts)).format(count=len(debts))),
        )
        if count
    )
    found = Counter(_place(one) for one in (*things, *debts))
    places = ", ".join(f"{found[place]} {place}" for place in _places() if found[place])
    yield Line(_("Listed"), _("{listed}: {places}").format(listed=listed, places=places))


def _place(one: Character) -> str:
    shared, separate, assigned, mixed, unknown, undivided = _places()
    if is_training_loan(one):
        return assigned
    if one.code.shared:
        return shared
    if one.code.separate:
        return separate
    return {Code.MIXED: mixed, Code.NOT_DIVIDED: undivided}.get(one.code, unknown)


def _places() -> tuple[str, ...]:
    return (
        _("presumed community"),
        _("presumed separate"),
        _("to be assigned"),
        _("mixed"),
        _("not known yet"),
        _("not divided"),
    )
