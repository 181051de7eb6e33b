"""The page of one item of a form, or a list of them, with how the item stands in a case."""

from collections.abc import Iterable, Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.hints import command, to_type
from firstpaper.cli.words.sources import law_words, source_data
from firstpaper.counting import spell_date
from firstpaper.forms.explained_names import Entry, parts_of
from firstpaper.forms.explanation import Explanation, Side, Trap
from firstpaper.law.source import cited
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.forms.explained_case import InCase


def item_page(entry: Entry, on: date, case_words: str = "") -> str:
    """An item explained as the law stands on the day `on`, then how it stands in a case, then the law."""
    one = entry.read().on(on)
    law = law_words(one.sources) if one.sources else ()
    return "\n\n".join([*_page(entry, one), *filter(None, [case_words]), *_behind(one), *law])


def item_paragraphs(entry: Entry, on: date) -> Iterator[str]:
    """The explanation alone, without the commands behind it and without the words of the law."""
    return _page(entry, entry.read().on(on))


def place_words(entry: Entry) -> str:
    """An item by its form and number, with what it is about."""
    place = _("{form}, {item}: {title}")
    return place.format(form=entry.form, item=_numbered(entry.item), title=_(entry.title))


def item_page_data(entry: Entry, on: date) -> dict[str, object]:
    """The same for programs."""
    one = entry.read().on(on)
    return {
        "kind": "item",
        "form": one.form,
        "item": one.item,
        "title": one.title,
        "topic": one.topic,
        "asks": one.asks,
        "means": one.means,
        "marked": one.marked,
        "left": one.left,
        "sides": [
            {"choice": side.choice, "for": side.speaks_for, "against": side.speaks_against}
            for side in one.sides
        ],
        "traps": [
            {"says": trap.says, "common_practice": trap.common, "cite": trap.cite, "but": trap.but}
            for trap in one.traps
        ],
        "help": one.help,
        "not_confirmed": list(one.not_confirmed),
        "changes": [{"from": each.since, "says": each.says, "cite": each.cite} for each in one.changes],
        "sources": [source_data(each) for source in one.sources for each in cited(source)],
        "rules": list(one.rules),
        "questions": list(one.questions),
        "parts": [part.place for part in parts_of(entry)],
    }


def item_list(entries: Iterable[Entry]) -> str:
    """Several items by name, and how to read one."""
    many = list(entries)
    return "\n\n".join(
        [
            _("There are pages on these items:"),
            "\n".join(f"  - {one.place}: {_(one.title)}" for one in many),
            to_type(_("To read one, type its name, like this:"), "why", many[0].short),
        ]
    )


def item_list_data(entries: Iterable[Entry]) -> dict[str, object]:
    """The same for programs."""
    items = [
        {"form": one.form, "item": one.item, "title": _(one.title), "topic": one.topic} for one in entries
    ]
    return {"kind": "items", "items": items}


def in_this_case(stands: "InCase", case: "Case", on: date, path: Path) -> str:
    """How the item stands in a case: what was told, what goes there, what the rules say, what changes it."""
    head = _("IN THIS CASE, worked out for {date}").format(date=spell_date(on))
    return "\n\n".join(
        [
            head,
            *_told(stands, case),
            *_goes_there(stands),
            *_rules_say(stands),
            *_later(stands),
            *_to_change(stands, path),
        ]
    )


def in_this_case_data(stands: "InCase", case: "Case", on: date) -> dict[str, object]:
    """The same for programs."""
    from firstpaper.cli.words.findings import finding_data
    from firstpaper.cli.words.items import item_data
    from firstpaper.intake import echo

    return {
        "on": on,
        "told": [
            {"key": each.key, "ask": each.ask, "answer": echo(each, case.fact(each.key))}
            for each in stands.told
        ],
        "unanswered": [each.key for each in stands.unanswered],
        "answers": [item_data(form, each) for form, items in stands.copies for each in items],
        "findings": [finding_data(each) for each in stands.findings],
        "later": [
            {"on": later.on, "items": [[each.concept, each.action, each.value] for each in later.items]}
            for later in stands.later
        ],
    }


def _page(entry: Entry, one: Explanation) -> Iterator[str]:
    yield place_words(entry)
    yield one.asks
    yield one.means
    if one.marked:
        yield _("If you mark it or write here: {words}").format(words=one.marked)
    if one.left:
        yield _("If you leave it empty: {words}").format(words=one.left)
    yield from _sides(one)
    yield from _traps(one)
    yield from _changes(one)
    if one.not_confirmed:
        words = _("We have not confirmed this in the law itself: {sources}. Ask the self-help center.")
        yield words.format(sources="; ".join(one.not_confirmed))
    if one.help:
        yield _("Who can help: {words}").format(words=one.help)
    yield from _parts(entry)


def _numbered(item: str) -> str:
    return _("item {item}").format(item=item) if item[:1].isdigit() else item


def _sides(one: Explanation) -> Iterator[str]:
    if one.sides:
        yield "\n".join([_("The choice is yours:"), *(line for side in one.sides for line in _side(side))])


def _side(side: Side) -> Iterator[str]:
    yield f"  - {side.choice}"
    yield "    " + _("For it: {words}").format(words=side.speaks_for)
    yield "    " + _("Against it: {words}").format(words=side.speaks_against)


def _traps(one: Explanation) -> Iterator[str]:
    if one.traps:
        yield "\n".join([_("Watch out:"), *(line for trap in one.traps for line in _trap(trap))])


def _trap(trap: Trap) -> Iterator[str]:
    yield f"  - {trap.says}"
    yield f"    ({trap_source(trap)})"
    if trap.but:
        yield "    " + _("The other side of it: {words}").format(words=trap.but)


def trap_source(trap: Trap) -> str:
    """Where a trap is known from, in a few words."""
    return _("common practice, no published source") if trap.common else trap.cite


def _changes(one: Explanation) -> Iterator[str]:
    for each in one.changes:
        words = _("From {day}: {words} ({cite})")
        yield words.format(day=spell_date(each.since), words=each.says, cite=each.cite)


def _parts(entry: Entry) -> Iterator[str]:
    if parts := parts_of(entry):
        yield "\n".join([_("Its parts:"), *(f"  - {one.place}: {_(one.title)}" for one in parts)])


def _behind(one: Explanation) -> Iterator[str]:
    if one.rules:
        commands = (f"  {command('why', rule)}" for rule in one.rules)
        yield "\n".join([_("The rules behind it:"), *commands])


def _told(stands: "InCase", case: "Case") -> Iterator[str]:
    from firstpaper.intake import echo

    if stands.told:
        lines = (f"  - {each.ask} {echo(each, case.fact(each.key))}" for each in stands.told)
        yield "\n".join([_("What you told:"), *lines])
    if stands.unanswered:
        yield "\n".join([_("Not answered yet:"), *(f"  - {each.ask}" for each in stands.unanswered)])


def _goes_there(stands: "InCase") -> Iterator[str]:
    from firstpaper.cli.words.items import form_words, item_lines

    if not stands.copies:
        yield _("This case does not use the form, as far as it has been told. So nothing goes there.")
    for form, items in stands.copies:
        head = _("What goes there, on {form}:").format(form=form_words(form))
        yield "\n".join([head, *(line for each in items for line in item_lines(each))])


def _rules_say(stands: "InCase") -> Iterator[str]:
    from firstpaper.cli.words.findings import finding_words

    if stands.findings:
        yield "\n".join([_("What the rules say:"), *(finding_words(each) for each in stands.findings)])


def _later(stands: "InCase") -> Iterator[str]:
    from firstpaper.cli.words.items import item_lines

    for later in stands.later:
        head = _("If you file on {day} or later:").format(day=spell_date(later.on))
        yield "\n".join([head, *(line for each in later.items for line in item_lines(each))])


def _to_change(stands: "InCase", path: Path) -> Iterator[str]:
    keys = [each.key for each in (*stands.unanswered, *stands.told)]
    if keys:
        yield to_type(_("To change an answer, type its name, like this:"), "change", path, keys[0])
