"""Item 3: the dates of the union and of its end, and the time between them."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date
from functools import partial
from typing import NamedTuple

from firstpaper.counting import years_and_months
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Union
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.saying import PARTNERSHIPS, nearly_written, on_the_sheet, unions_of
from firstpaper.law.measures.marriage import length, separation, told_each_other
from firstpaper.locale import _, english


class _Half(NamedTuple):
    """The concepts of 3a or of 3b, and the fact each begins with."""

    unions: tuple[Union, ...]
    box: str
    began: str
    began_key: str
    separated: str
    years: str
    months: str


MARRIAGE = _Half(
    (Union.MARRIAGE,),
    "facts.marriage",
    "facts.married_on",
    "dates.married_on",
    "facts.separated_on",
    "facts.years",
    "facts.months",
)
PARTNERSHIP = _Half(
    PARTNERSHIPS,
    "facts.partnership",
    "facts.registered_on",
    "dates.registered_on",
    "facts.partners_separated_on",
    "facts.partners_years",
    "facts.partners_months",
)


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 3a and 3b."""
    del on
    for half in (MARRIAGE, PARTNERSHIP):
        union = next((union for union in half.unions if union in unions_of(case)), None)
        yield from _filled(case, half, union) if union else _empty(case, half)


def _empty(case: Case, half: _Half) -> Iterator[Answer]:
    otherwise = (
        _("This is for a marriage. You did not say that you are married.")
        if half is MARRIAGE
        else _("This is for a registered partnership. You did not say that you have one.")
    )
    for concept in (half.box, half.began, half.separated, half.years, half.months):
        told = known(case.matter.unions) is not None
        yield blank(concept, otherwise) if told else still_open(case, concept, "matter.unions")


def _filled(case: Case, half: _Half, union: Union) -> Iterator[Answer]:
    yield mark(half.box, _("The dates below belong to this line."), "Fam. Code 2330(b)")
    began = (
        _("Use the day of the wedding that the certificate shows.")
        if half is MARRIAGE
        else _("Use the day that the certificate shows. Not the day you moved in together.")
    )
    yield nearly_written(case, half.began, half.began_key, began, "Fam. Code 2330(b)")
    broke = separation(case)
    if broke.day is None:
        yield _no_separation(case, half.separated)
    else:
        yield write(half.separated, on_the_sheet(broke.day), broke.why, "Fam. Code 70")
    yield from _length(case, half, union)


def _length(case: Case, half: _Half, union: Union) -> Iterator[Answer]:
    span = length(case, union)
    if span is not None:
        whole = _("We counted full years, then full months. Extra days do not count.")
        yield write(half.years, str(span.years), whole, "Fam. Code 2330(b)")
        yield write(half.months, str(span.months), whole, "Fam. Code 2330(b)")
        return
    if near := about_length(case, union):
        told = _("By what you told us it is “{words}”. Count it again when you know the whole day.")
        for concept, numbers in zip((half.years, half.months), near, strict=True):
            says, words = meaning(partial(_about, numbers)), _about(numbers)
            answer = write(
                concept, words, told.format(words=english(words)), "Fam. Code 2330(b)", meaning=says
            )
            yield replace(answer, open_key=half.began_key)
        return
    yield from (_no_length(case, half, concept) for concept in (half.years, half.months))


def _about(numbers: Iterable[int]) -> str:
    """The numbers that it can be, as they are filed: "about 2 or 3"."""
    either = filed(" or ").join(str(one) for one in dict.fromkeys(numbers))
    return filed("about {number}").format(number=either)


def about_length(case: Case, union: Union) -> tuple[tuple[int, ...], tuple[int, ...]] | None:
    """Years and months where the first day is known in part, and leaves only one count of years."""
    told = known(case.dates.married_on if union is Union.MARRIAGE else case.dates.registered_on)
    broke = separation(case).day
    if told is None or told.sure or told.unsure or broke is None or told.latest > broke:
        return None
    longest, shortest = years_and_months(told.earliest, broke), years_and_months(told.latest, broke)
    if longest.years != shortest.years:
        return None
    return (longest.years,), (shortest.months, longest.months)


def _no_length(case: Case, half: _Half, concept: str) -> Answer:
    began = known(case.fact(half.began_key))
    if began is None or began.sure is None:
        return still_open(case, concept, half.began_key)
    if separation(case).day is None:
        return _no_separation(case, concept)
    out_of_order = _("The date of separation comes before the beginning. One of the two dates is wrong.")
    return replace(blank(concept, out_of_order), open_key=half.began_key)


def _no_separation(case: Case, concept: str) -> Answer:
    why, told_on = separation(case).why, "dates.separation_told_on"
    if not told_each_other(case):
        alone = _(
            "You need not get in touch with the other side for this. A lawyer can say which day counts."
        )
        return replace(blank(concept, f"{why} {alone}", "Fam. Code 70"), open_key=told_on)
    for key in (told_on, "dates.separation_acted_on"):
        told = known(case.fact(key))
        if told is None or told.sure is None:
            return still_open(case, concept, key)
    later = _("On which later day did one of you say, and show, that it was over for good?")
    return replace(blank(concept, f"{why} {later}", "Fam. Code 70"), open_key=told_on)
