"""What an item says while the answer it needs is missing: which answer, and never a guess."""

from collections.abc import Collection, Iterable
from dataclasses import replace

from firstpaper.facts import DONT_KNOW, Case, Day
from firstpaper.forms.answer import Action, Answer, ItemAnswer, blank
from firstpaper.intake.fact_names import named
from firstpaper.locale import _


def still_open(case: Case, concept: str, key: str) -> Answer:
    """Left empty, because the fact at `key` is missing, in part, or not sure."""
    return replace(blank(concept, why_open(case, key)), open_key=key)


def flagged(case: Case, answer: Answer, key: str) -> Answer:
    """The answer as far as it goes, with the fact that is still missing named."""
    marked = answer.action is Action.MARK and isinstance(case.fact(key), Day)
    why = _mark_if_sure(case, key) if marked else why_open(case, key)
    return replace(answer, because=f"{answer.because} {why}".strip(), open_key=key)


def open_items(items: Iterable[ItemAnswer], asked_still: Collection[str] = ()) -> tuple[ItemAnswer, ...]:
    """The items that wait for a fact, but for those that wait for a question in `asked_still`."""
    return tuple(one for one in items if one.open_key and one.open_key not in asked_still)


def item_numbers(items: Iterable[ItemAnswer]) -> str:
    """The items in a row, as in "3a(1), 3a(2)".

    One without a number goes by its label, and more of them under one heading by that heading.
    """
    alike: dict[str, list[ItemAnswer]] = {}
    for one in items:
        alike.setdefault(one.number or one.part, []).append(one)
    return ", ".join(dict.fromkeys(_called(place, found) for place, found in alike.items()))


def _called(place: str, found: list[ItemAnswer]) -> str:
    return place if found[0].number or found[1:] else found[0].label


def _mark_if_sure(case: Case, key: str) -> str:
    return _(
        "Mark it only if you are sure that the time is long enough. Find out to the day: {what}."
    ).format(what=named(key, case))


def not_before_advice(concept: str, because: str, key: str) -> Answer:
    """Left empty although the fact at `key` was told: a person has to look at that answer first."""
    return replace(blank(concept, because), open_key=key)


def why_open(case: Case, key: str) -> str:
    """One or two sentences on the missing fact."""
    told = case.fact(key)
    if told is DONT_KNOW:
        words = _("You do not know this yet: {what}. Do not guess.")
    elif isinstance(told, Day) and told.whole is None:
        words = _("A part of the date is missing: {what}. Do not guess.")
    elif isinstance(told, Day):
        words = _("You are not sure of this yet: {what}. Find out before you write it here.")
    elif told is None:
        words = _("Not answered yet: {what}.")
    else:
        words = _("Still open: {what}.")
    return words.format(what=named(key, case))
