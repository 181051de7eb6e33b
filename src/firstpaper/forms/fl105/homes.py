"""The homes of one child, newest first, as rows of the sheet.

Each row is one answer: the days, the place, and with whom, line by line in the order of the columns.
"""

import re
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import NamedTuple

from firstpaper.facts import DONT_KNOW, Case, Day, known
from firstpaper.facts.addresses import BOTH, FILER, home_of_the_child, keeps_addresses_off, must_stay_private
from firstpaper.facts.children import Home, first_of_both
from firstpaper.facts.people import Address
from firstpaper.forms.answer import Answer, blank, write
from firstpaper.forms.caption_box import one_line
from firstpaper.forms.edition import edition_for
from firstpaper.forms.fl105 import LAW
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.law.measures.child_homes import history_since, homes, since_birth
from firstpaper.law.measures.children import ListedChild
from firstpaper.locale import _


class Row(NamedTuple):
    """One row: the exact words of its columns, and whether the place and people are kept private."""

    since: str
    until: str
    place: str
    people: str
    private: bool
    relation: str = ""

    @property
    def days(self) -> str:
        """Since when and until when."""
        return f"{self.since} - {self.until}"

    @property
    def cells(self) -> tuple[tuple[str, ...], ...]:
        """The row in the columns of the sheet."""
        return ((self.since, self.until, self.place, self.people, self.relation),)

    @property
    def words(self) -> str:
        """The row as it is written, a line for each column."""
        return "\n".join(filter(None, (self.days, self.place, self.people)))


def longer_ago(case: Case, children: Iterable[ListedChild], on: date) -> tuple[str, ...]:
    """The people named in homes that ended before the years that count, and in none since."""
    counted, all_told = set[str](), set[str]()
    for child in children:
        lived = homes(case, child)
        all_told |= {home.with_whom.casefold() for home in lived}
        counted |= {home.with_whom.casefold() for home in _that_count(child, lived, on)}
    return tuple(
        one.name
        for one in known(case.uccjea.people) or ()
        if _named_in(one.name, all_told) and not _named_in(one.name, counted)
    )


def _named_in(name: str, told: set[str]) -> bool:
    return any(name.casefold() in words for words in told)


def printed_rows(form: str, on: date) -> int:
    """How many rows the sheet has for one child, as far as we know."""
    return edition_for(form, on).rows["homes"]


def rows_of(case: Case, child: ListedChild, on: date) -> tuple[Row, ...]:
    """The rows of one child for the years that count, newest first."""
    return _rows(case, child, homes(case, child), on)


def same_as(case: Case, child: ListedChild, first: ListedChild, on: date) -> bool | None:
    """Whether the child has lived, since birth, just where the first one did; None while not known."""
    mine = rows_of(case, child, on)
    theirs = _rows(case, first, since_birth(homes(case, first), child.born), on)
    return mine == theirs if mine and theirs else None


def answers(case: Case, child: ListedChild, concept: str, rows: int, on: date) -> Iterator[Answer]:
    """The rows of one child under the concepts `concept`.1 and on."""
    told = rows_of(case, child, on)
    for number in range(1, rows + 1):
        name = f"{concept}.{number}"
        if not told:
            yield still_open(case, name, homes_key(case, child))
        elif number > len(told):
            yield blank(name, _("You need no more rows."))
        else:
            yield _written(case, child, name, told[number - 1], newest=number == 1)


def homes_key(case: Case, child: ListedChild) -> str:
    """The fact that is missing where no home is known."""
    told = case.child[child.number - 1]
    first = first_of_both(case.child)
    if first is not None and first is not told and told.same_homes in (None, DONT_KNOW):
        return f"{child.key}.same_homes"
    if known(told.same_homes) is True and first is not None:
        return f"child.{_number(case, first)}.homes"
    return f"{child.key}.homes"


def address_of(case: Case, child: ListedChild) -> Address | None:
    """Where the child lives now, told for itself or shared with the first."""
    return home_of_the_child(case, case.child[_source(case, child) - 1])


def _rows(case: Case, child: ListedChild, lived: Sequence[Home], on: date) -> tuple[Row, ...]:
    counted = _that_count(child, lived, on)
    return tuple(_row(case, child, home) for home in sorted(counted, key=_newness, reverse=True))


def _that_count(child: ListedChild, lived: Sequence[Home], on: date) -> list[Home]:
    """The homes of the years that the sheet asks about (Fam. Code 3429(a))."""
    since = history_since(child.born, on)
    return [home for home in lived if home.end is None or home.end.latest >= since]


def _number(case: Case, told: object) -> int:
    return next(number for number, one in enumerate(case.child, 1) if one is told)


def _source(case: Case, child: ListedChild) -> int:
    """The number of the child whose homes these are."""
    told, first = case.child[child.number - 1], first_of_both(case.child)
    shares = known(told.homes) is None and known(told.same_homes) is True and first is not None
    return _number(case, first) if shares else child.number


def _newness(home: Home) -> tuple[bool, date, date]:
    return home.end is None, home.end.latest if home.end else date.max, home.start.latest


def _row(case: Case, child: ListedChild, home: Home) -> Row:
    private = must_stay_private(case, home)
    until = _day(home.end) if home.end else "present"
    people = _people(case, home.with_whom, private)
    return Row(
        since=_day(home.start),
        until=until,
        place=home.state if private else _place(case, child, home),
        people=people,
        private=private,
        relation=_relation(case, people),
    )


def _relation(case: Case, people: str) -> str:
    """What the people of a home are to the child, as far as told; empty where somebody was not described."""
    spouses = [name for name in (known(case.petitioner.name), known(case.respondent.name)) if name]
    first = {" and ".join(spouses): "parents"} if len(spouses) > 1 else {}
    first |= dict.fromkeys(spouses, "parent")
    told = next((name for name in first if people.startswith(name)), "")
    others = {one.name.casefold(): one.relation for one in known(case.uccjea.people) or ()}
    others |= {name.casefold(): "parent" for name in spouses}
    rest = [others.get(name.casefold(), "") for name in _each_name(people.removeprefix(told))]
    relations = [first[told], *rest] if told else rest
    return ", ".join(relations) if all(relations) else ""


def _each_name(people: str) -> list[str]:
    """The people of a home one by one, as they were joined by "and" or a comma."""
    return [name for name in re.split(r"\s*(?:,|\band\b|&)\s*", people) if name]


def _place(case: Case, child: ListedChild, home: Home) -> str:
    address = None if home.end else address_of(case, child)
    same_town = address is not None and address.city.casefold() == home.place.casefold()
    return one_line(address) if address and same_town else f"{home.place}, {home.state}"


def _people(case: Case, told: str, private: bool) -> str:
    """The names as typed, with those of the two spouses in full. Private: only names the other side knows."""
    petitioner, respondent = known(case.petitioner.name) or "", known(case.respondent.name) or ""
    if petitioner and respondent and (both := re.match(BOTH, told)):
        return f"{petitioner} and {respondent}{told[both.end() :]}"
    if petitioner and (filer := re.match(FILER, told)):
        told = f"{petitioner}{told[filer.end() :]}"
    return told if not private or told.casefold() in (petitioner.casefold(), respondent.casefold()) else ""


def _day(day: Day) -> str:
    """As much of a day as was told, as in "06/14/2016", "06/2016" or "2016"."""
    told = (f"{day.month:02d}" if day.month else "", f"{day.day:02d}" if day.day else "", f"{day.year:04d}")
    return "/".join(part for part in told if part)


def _written(case: Case, child: ListedChild, concept: str, row: Row, *, newest: bool) -> Answer:
    if row.private:
        return write(concept, row.words, _private_words(row), LAW, cells=row.cells)
    answer = write(concept, row.words, _words(newest), LAW if newest else "", cells=row.cells)
    if not row.people:
        return flagged(case, answer, f"child.{_source(case, child)}.homes")
    asks_for_it = newest and row.days.endswith("present") and not keeps_addresses_off(case)
    if asks_for_it and address_of(case, child) is None:
        return flagged(case, answer, f"child.{_source(case, child)}.address")
    return answer


def _words(newest: bool) -> str:
    if newest:
        return _("List the home of today first. The people's addresses have a place of their own on FL-105.")
    return _("Put dates, place and people in their own columns.")


def _private_words(row: Row) -> str:
    only = _(
        "The other side did not live in the home from {since} on. Write only the state, and mark the box "
        "beside it if there is one."
    ).format(since=row.since)
    if row.people:
        return only
    ask = _("A name can show where you live too. Ask the self-help center before you write who lived there.")
    return f"{only} {ask}"
