"""The case on one line of time: the union, the break, the filing, and what follows it."""

from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from firstpaper.counting import short_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.authority import Certainty
from firstpaper.law.deadline_register import deadlines
from firstpaper.law.measures import service, waiting
from firstpaper.law.measures.marriage import separation
from firstpaper.law.measures.record import appeared_on, begins_on, day, filed_on, happened, joint, took_part
from firstpaper.law.measures.residence import SPOUSES, Route, residence_route, spouse_residence
from firstpaper.law.words import moved_to, of_union, spell_day
from firstpaper.locale import _
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Mark, Row, Span, days_of, gone_and_ahead
from firstpaper.packet.pictures.window import around, in_reach


def timeline(case: Case, on: date) -> Chart:
    """The days of the case as it stands on the day `on`, which is the filing day of one not yet filed."""
    filed, begins = filed_on(case, on), begins_on(case, on) or on
    found = sorted(_each(case, on, filed), key=lambda one: (one.day, one.row.title))
    rows = tuple(one.row for one in found)
    first, last = around(days_of(rows), filed or begins)
    filing = Line(filed or begins, _filing_words(filed or begins))
    return Chart(_says(on, filed, begins), first, last, rows, filing, _today(on, filed, first, last))


def _today(on: date, filed: date | None, first: date, last: date) -> Line | None:
    """The line where black turns to white, once the case is filed; none where it is outside the picture."""
    if filed is None or filed == on or not first <= on <= last:
        return None
    return Line(on, _("Today: {day}").format(day=short_date(on)), heavy=False)


class _Dated(NamedTuple):
    """A row with the day that gives its place."""

    day: date
    row: Row


def _says(on: date, filed: date | None, begins: date) -> str:
    if filed is None:
        return _("This picture shows the days of your case, for a filing on {day}.").format(
            day=short_date(begins)
        )
    return _("This picture shows the days of your case, as it stands on {day}.").format(day=short_date(on))


def _filing_words(filing: date) -> str:
    return _("Filing: {day}").format(day=short_date(filing))


def _each(case: Case, on: date, filed: date | None) -> Iterator[_Dated]:
    yield from _union(case)
    yield from _break(case)
    if filed is None:
        yield from _residence_met(case, on)
    yield _filing(begins_on(case, on) or on, filed, on)
    yield from _happened(case, on)
    yield from _to_come(case, on)
    yield from _supposed_end(case, on)


def _union(case: Case) -> Iterator[_Dated]:
    unions = known(case.matter.unions) or ()
    began = {Union.MARRIAGE: known(case.dates.married_on)} if Union.MARRIAGE in unions else {}
    if set(unions) - {Union.MARRIAGE}:
        began[Union.PARTNERS_CALIFORNIA] = known(case.dates.registered_on)
    for union, told in began.items():
        if told is None:
            continue
        if union is Union.MARRIAGE:
            title, says = _("Wedding"), _("You married on {day}.")
        else:
            title, says = _("Partnership registered"), _("Your partnership was registered on {day}.")
        if told.whole is None:
            says = _("You married in {day}.") if union is Union.MARRIAGE else _("It was registered in {day}.")
        yield _told(told, title, says)


def _told(told: Day, title: str, says: str) -> _Dated:
    """A day as it was told; striped over all the days it can be where a part is missing or not sure."""
    words = short_date(told.whole) if told.whole else spell_day(told)
    if told.unsure:
        words = _("about {day}").format(day=words)
    sure = told.sure
    marks = (Mark(sure),) if sure else ()
    spans = () if sure else (Span(told.earliest, told.latest, Fill.STRIPED),)
    return _Dated(told.earliest, Row(title, (words,), says.format(day=words), spans, marks))


def _break(case: Case) -> Iterator[_Dated]:
    broke = separation(case).day
    if broke:
        yield _mark(broke, _("Separation"), _("You separated on {day}."), broke)


def _residence_met(case: Case, on: date) -> Iterator[_Dated]:
    """The first day on which somebody has lived here long enough, where it is near or ahead."""
    if kind_of(case) is not Kind.DISSOLUTION or residence_route(case, on) not in (
        Route.SPOUSE,
        Route.NONE,
    ):
        return
    safe = [found for who in SPOUSES if (found := spouse_residence(case, who, on).safe_day)]
    if safe and in_reach(min(safe), on):
        says = _("From {day} on, one of you has lived here long enough for a divorce.")
        yield _mark(min(safe), _("Time lived here is long enough"), says, on)


def _filing(begins: date, filed: date | None, on: date) -> _Dated:
    if filed:
        return _mark(filed, _("Petition filed"), _("The petition was filed on {day}."), on)
    words = short_date(begins)
    says = _("You plan to file on {day}.").format(day=words)
    return _Dated(begins, Row(_("Filing, as planned"), (words,), says, (), (Mark(begins, Fill.WHITE),)))


def _happened(case: Case, on: date) -> Iterator[_Dated]:
    """What was recorded since the filing."""
    record, complete = happened(case, on), service.service_complete(case, on)
    if complete:
        yield _mark(complete.day, *_as_sure(*_complete(case, on), service.certainty(case, on)), on)
    if not joint(case) and (appeared := appeared_on(case, on)):
        yield _mark(appeared, _("The other side took part"), _("The other side took part on {day}."), on)
    for fact, title, says in (
        (record.amended_on, _("Petition amended"), _("An amended petition was filed on {day}.")),
        (record.amended_served_on, _("Amended paper served"), _("The amended paper was served on {day}.")),
        (record.revoked_on, _("Joint petition revoked"), _("The joint petition was revoked on {day}.")),
        (record.default_asked_on, _("Default asked for"), _("You asked for a default on {day}.")),
        (record.disclosure_served_on, _("Your disclosure served"), _("You served your disclosure on {day}.")),
        (
            record.other_disclosure_served_on,
            _("Their disclosure served"),
            _("The other side served its disclosure on {day}."),
        ),
    ):
        if happened_on := day(fact):
            yield _mark(happened_on, title, says, on)


def _complete(case: Case, on: date) -> tuple[str, str]:
    if service.waits_for_receipt(case, on):
        return (
            _("Service complete, if the receipt comes"),
            _("Service is complete on {day}, if the signed receipt comes back."),
        )
    return _("Service complete"), _("Service is complete on {day}.")


def _to_come(case: Case, on: date) -> Iterator[_Dated]:
    """The dates still open, each with the time that runs until it."""
    for one in deadlines(case, on):
        if chart := one.chart:
            since = one.dated.since
            stands = one.day_ahead(on)
            spans = tuple(gone_and_ahead(since, stands, on)) if since else ()
            words = _as_sure(chart.title, chart.says, one.certainty)
            fill = Fill.WHITE if one.ahead(on) else Fill.BLACK
            moved = moved_to(one.dated.due, short_date)
            yield _mark(one.target, *words, on, moved=moved, spans=spans, mark=Mark(stands, fill))


def _as_sure(title: str, says: str, certainty: Certainty) -> tuple[str, str]:
    """The title and the sentence about a day, with a word where the law behind it is not confirmed."""
    if certainty.confirmed:
        return title, says
    return _("{title} (not confirmed)").format(title=title), " ".join((says, _("That is not confirmed.")))


def _supposed_end(case: Case, on: date) -> Iterator[_Dated]:
    """When a marriage could end if the papers were served on that very day, or that of the filing."""
    if not waiting.has_waiting(case) or waiting.clock(case, on) is not None:
        return
    if service.lacks_its_day(case, on) or took_part(case, on):  # it runs since a day that is not known
        return
    on = max(on, begins_on(case, on) or on)
    end = waiting.earliest_end(on)
    says = of_union(
        case,
        _("If the papers are served on {on}, the marriage cannot end before {day}."),
        _("If the papers are served on {on}, the partnership cannot end before {day}."),
        _("If the papers are served on {on}, the marriage or partnership cannot end before {day}."),
    )
    words = says.format(on=short_date(on), day=short_date(end.day))
    notes = (_("if served {day}").format(day=short_date(on)), short_date(end.day))
    spans = tuple(gone_and_ahead(on, end.expires, on))
    yield _Dated(end.day, Row(_("Earliest end"), notes, words, spans, (Mark(end.day, Fill.WHITE),)))


def _mark(
    when: date,
    title: str,
    says: str,
    today: date,
    *,
    moved: str = "",
    spans: tuple[Span, ...] = (),
    mark: Mark | None = None,
) -> _Dated:
    """One day with its words; `moved` says what a closed court makes of it.

    The mark is black from its day on, unless another one is given.
    """
    words = short_date(when)
    notes = (words, f"({moved})") if moved else (words,)
    mark = mark or Mark(when, Fill.BLACK if when <= today else Fill.WHITE)
    return _Dated(mark.day, Row(title, notes, says.format(day=" ".join(notes)), spans, (mark,)))
