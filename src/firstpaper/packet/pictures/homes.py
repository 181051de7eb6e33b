"""Where each child has lived in the years that the custody declaration covers: homes, gaps, two at once."""

import re
from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.counting import short_date
from firstpaper.facts import Case, Day
from firstpaper.facts.addresses import BOTH, FILER, must_stay_private
from firstpaper.facts.children import Home
from firstpaper.law.measures.child_homes import History, Stretch, history, homes
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.law.words import child_words, spell_day
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.pictures.chart import Chart, Fill, Line, Row, Span


def strips(case: Case, on: date) -> tuple[tuple[str, Chart], ...]:
    """The children of whom a home was told, by name, with the homes for a filing on the day `on`.

    Children who have lived in the same places all the time share a picture.
    """
    alike: dict[tuple[tuple[Home, ...], date], list[ListedChild]] = {}
    for child in listed_children(case, on):
        if lived := homes(case, child):
            alike.setdefault((tuple(lived), history(lived, child.born, on).since), []).append(child)
    return tuple(_shared(case, group, lived, on) for (lived, _since), group in alike.items())


def _shared(
    case: Case, children: Sequence[ListedChild], lived: Sequence[Home], on: date
) -> tuple[str, Chart]:
    names = in_a_row([child_words(child.number, child.name) for child in children])
    return names, _strip(case, names, history(lived, children[0].born, on), lived, on)


def _strip(case: Case, names: str, told: History, lived: Sequence[Home], on: date) -> Chart:
    """The homes newest first, as the form asks for them, with what is missing in its place."""
    dated = [*_homes(case, lived, told), *_gaps(told), *_overlaps(told)]
    rows = tuple(row for _day, row in sorted(dated, key=lambda one: one[0], reverse=True))
    says = _("This picture shows the homes of {name} from {since} to {until}.").format(
        name=names, since=short_date(told.since), until=short_date(on)
    )
    filing = _("Filing: {day}").format(day=short_date(on))
    return Chart(says, told.since, max(on, told.since), rows, Line(on, filing))


def _homes(case: Case, lived: Sequence[Home], told: History) -> Iterator[tuple[date, Row]]:
    for home in lived:
        if home.end is None or home.end.latest >= told.since:
            yield home.start.earliest, _home(case, home, told.until)


def _home(case: Case, home: Home, until: date) -> Row:
    """A home that must stay private shows its state alone, as the declaration does."""
    private = must_stay_private(case, home)
    place = home.state if private else _("{place}, {state}").format(place=home.place, state=home.state)
    start = _day(home.start)
    if home.end is None:
        days = _("{start} to now").format(start=start)
        says = _("{place}: from {start} until now.").format(place=place, start=start)
    else:
        end = _day(home.end)
        days = _("{start} to {end}").format(start=start, end=end)
        says = _("{place}: from {start} to {end}.").format(place=place, start=start, end=end)
    people = () if private or not home.with_whom else (_("with {people}").format(people=_who(home)),)
    return Row(place, (days, *people), says, tuple(_bars(home, until)))


def _who(home: Home) -> str:
    """With whom, as typed; but whoever typed is spoken to."""
    told = home.with_whom
    for typed, said in ((BOTH, _("the two of you")), (FILER, _("you"))):
        if found := re.match(typed, told):
            others = told[found.end() :].removeprefix(" and ").strip(" ,")
            return in_a_row([said, others] if others else [said])
    return told


def _bars(home: Home, until: date) -> Iterator[Span]:
    """Black where the child surely lived there, striped where a date told in part leaves it open."""
    last = home.end.latest if home.end else until
    sure_from, sure_to = home.start.latest, home.end.earliest if home.end else until
    if sure_from > sure_to:
        yield Span(home.start.earliest, last, Fill.STRIPED)
        return
    if home.start.earliest < sure_from:
        yield Span(home.start.earliest, sure_from, Fill.STRIPED)
    yield Span(sure_from, sure_to)
    if sure_to < last:
        yield Span(sure_to, last, Fill.STRIPED)


def _gaps(told: History) -> Iterator[tuple[date, Row]]:
    for gap in told.gaps:
        says = _("No home was told for {days}.").format(days=_stretch(gap))
        row = Row(_("No home told"), (_stretch(gap), _count(gap)), says, (_white(gap),))
        yield gap.first, row


def _overlaps(told: History) -> Iterator[tuple[date, Row]]:
    for both in told.overlaps:
        says = _("Two homes at once for {days}. That is right for a child who lives in both.")
        row = Row(
            _("Two homes at once"), (_stretch(both),), says.format(days=_stretch(both)), (_white(both),)
        )
        yield both.first, row


def _white(stretch: Stretch) -> Span:
    return Span(stretch.first, stretch.last, Fill.WHITE)


def _stretch(stretch: Stretch) -> str:
    return _("{start} to {end}").format(start=short_date(stretch.first), end=short_date(stretch.last))


def _count(stretch: Stretch) -> str:
    days = (stretch.last - stretch.first).days + 1
    return _n("{count} day", "{count} days", days).format(count=days)


def _day(day: Day) -> str:
    words = short_date(day.whole) if day.whole else spell_day(day)
    return _("about {day}").format(day=words) if day.unsure else words
