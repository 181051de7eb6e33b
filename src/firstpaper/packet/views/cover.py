"""The cover checklist: what is in the packet, what to get, sign, stack, copy, pay and ask."""

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from itertools import takewhile

from firstpaper.facts import known
from firstpaper.forms.edition import as_printed
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.fl105 import FORM as DECLARATION
from firstpaper.forms.needed import FormNeeded, Goes
from firstpaper.forms.stack import apart, stack
from firstpaper.forms.when import is_amended_petition, may_yet_list_a_child
from firstpaper.law.figure import figure, oldest_check
from firstpaper.law.finding import Weight
from firstpaper.law.measures.child_homes import history_since
from firstpaper.law.measures.children import listed_children
from firstpaper.law.measures.other_cases import other_cases
from firstpaper.law.measures.record import case_number
from firstpaper.law.words import child_words
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views import before
from firstpaper.packet.views.contents import named
from firstpaper.packet.views.either_way import marked, may_yet_file_together, of_both
from firstpaper.packet.views.headed import headed
from firstpaper.packet.views.sheet import Sheet
from firstpaper.packet.views.ways import ways


def sheet(brief: Brief, others: Sequence[Sheet], *, with_later: bool) -> Sheet:
    """The first sheet of the packet. It names the others, up to the filing.

    `with_later` tells that what comes after the filing lies behind them. Else it says how to ask for that.
    """
    needed = (*marked(brief, brief.forms), *of_both(brief))
    to_get = [form for form in needed if form.form]
    return Sheet(
        template="cover.html",
        title=_("Start here: cover checklist"),
        running=_("Cover checklist"),
        values={
            "brief": brief,
            "county": known(brief.case.court.county),
            "amended": is_amended_petition(brief.case, brief.on),
            "case_number": case_number(brief.case),
            "contents": tuple(named(others)),
            "stops": brief.of_weight(Weight.STOP),
            "safety": headed(brief.safety),
            "advice": tuple(
                one.title for one in headed(one for one in brief.advice if one not in brief.safety)
            ),
            "before": _(before.TITLE),
            "first_forms": tuple(_blanks(brief, [form for form in to_get if not form.later])),
            "with_later": with_later,
            "edition_days": {one.form: as_printed(one.edition_on) for one in to_get if one.edition_on},
            "titles": _titles(form for form in to_get if form.goes is Goes.FILE),
            "on_your_own": tuple(_on_your_own(brief)),
            "with_why": set(_with_why(brief, to_get)),
            "both_ways": may_yet_file_together(brief),
            "left_blank": {form.form for form in to_get if form.goes is Goes.SERVE},
            "homes_since": tuple(_homes_since(brief)),
            "child_undecided": may_yet_list_a_child(brief.case, brief.on),
            "other_case": bool(other_cases(brief.case)),
            "signed": [
                form for form in brief.forms if form.signed and not form.later and form.form != PETITION
            ],
            "stack": stack(brief.forms, brief.ledger),
            "apart": apart(brief.forms),
            "hotline": figure("help.domestic_violence_hotline", brief.on).value,
            "ways": ways(brief, others),
            "checked_on": oldest_check(),
        },
    )


def _homes_since(brief: Brief) -> Iterator[tuple[str, date]]:
    """Each child with the first day of its homes on FL-105, where the filer fills in that form alone."""
    if any(form.form == DECLARATION for form in brief.filled):
        return
    for child in listed_children(brief.case, brief.on):
        yield child_words(child.number, child.name), history_since(child.born, brief.on)


def _titles(forms: Iterable[FormNeeded]) -> dict[str, str]:
    """What each form is for; of one that is filled in for more than one thing, all of them."""
    titles: dict[str, dict[str, None]] = {}
    for form in forms:
        titles.setdefault(form.form, {})[form.title] = None
    return {number: _in_one(tuple(each)) for number, each in titles.items() if number}


def _in_one(titles: tuple[str, ...]) -> str:
    """Titles in one, without saying again the words with which all of them begin."""
    first, *others = (title.split(" ") for title in titles)
    alike = sum(1 for _each in takewhile(lambda each: len(set(each)) == 1, zip(first, *others, strict=False)))
    return "; ".join((titles[0], *(" ".join(words[alike:]) for words in others)))


def _with_why(brief: Brief, forms: Iterable[FormNeeded]) -> Iterator[FormNeeded]:
    """The forms whose use is not told further down: no worksheet and no place in the stack tells of them."""
    filled = {form.form for form in brief.filled}
    for form in forms:
        stands_in = form.goes is Goes.FILE and form.stack is None and form in brief.forms
        if form.goes is Goes.KEEP or stands_in or (form.goes is Goes.SERVE and form.form not in filled):
            yield form


def _on_your_own(brief: Brief) -> Iterator[str]:
    """The forms that the filer surely files and that no worksheet stands for, but for FL-105."""
    filled = {form.form for form in brief.filled} | {DECLARATION}
    for form in brief.forms:
        files = form.form and form.goes is Goes.FILE and not form.later and not form.only_if
        if files and form.form not in filled:
            yield form.label


def _blanks(brief: Brief, forms: Sequence[FormNeeded]) -> Iterator[tuple[FormNeeded, int]]:
    """Each form to get; the first of a number with how many of it to get in all, the others with 0."""
    filled = Counter(form.form for form in brief.filled)
    blank = Counter(form.form for form in forms if form.goes is Goes.SERVE)
    rows = Counter(form.form for form in forms)
    seen: set[str] = set()
    for form in forms:
        number = form.form
        yield form, 0 if number in seen else max(rows[number], filled[number] + blank[number])
        seen.add(number)
