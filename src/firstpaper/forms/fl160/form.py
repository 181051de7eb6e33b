"""The two copies of the property declaration, line by line."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.forms.answer import Answer, blank, fill, mark, sign, write
from firstpaper.forms.caption_box import caption
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.fl160 import COMMUNITY, CONTINUATION, FORM, SEPARATE
from firstpaper.forms.fl160.things import (
    ASSET_LINES,
    DEBT_LINES,
    Entry,
    Untold,
    is_used,
    left_to_name,
    listed,
    runs_over,
)
from firstpaper.forms.listed_things import doubts, taken_in
from firstpaper.forms.saying import nothing_to_mark, written
from firstpaper.law.words import spaced
from firstpaper.locale import _


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """A copy for each class of property that the petition sends to this form."""
    edition = edition_for(FORM, on)
    uses = (use for use in (SEPARATE, COMMUNITY) if is_used(case, use))
    return tuple(filled(edition, tuple(_answers(case, use, on)), use=_named(use)) for use in uses)


def _named(use: str) -> str:
    return {SEPARATE: _("separate property"), COMMUNITY: _("community property")}[use]


def _answers(case: Case, use: str, on: date) -> Iterator[Answer]:
    yield from caption(case)
    yield from _headings(case, use, on)
    lines = listed(case, use, on)
    told = left_to_name(case, use)
    for number in (*ASSET_LINES, *DEBT_LINES):
        yield _line(case, number, lines.get(number, ()), told.get(number, Untold.NOTHING))
    yield from _sums()
    yield _continued(runs_over(case, use, on))
    yield from _signing(case)


def _headings(case: Case, use: str, on: date) -> Iterator[Answer]:
    yield mark("whose.petitioner", _("You make this list."))
    yield blank("whose.respondent", _("This is your list."))
    only = _("Use one sheet for each class of property. Never mix them.")
    for box, class_of in (("class.community", COMMUNITY), ("class.separate", SEPARATE)):
        if class_of == use:
            yield mark(box, f"{only} {_columns(use)}", "Fam. Code 2104; common practice")
        else:
            yield blank(box, _("This sheet is for the other class."))
    later = _("The other columns stay empty for now. You need them when you send your disclosure.")
    if use == SEPARATE:
        assets = _("Fill in only column A (what it is) and column F (whom to confirm it to).")
        debts = _("Fill in only column A (what it is) and column D (whom to confirm it to).")
    else:
        assets = debts = _("Fill in only column A (what it is).")
    placed = doubts(case, on) if use == SEPARATE else taken_in(case, on)
    yield blank("columns.assets", spaced((assets, later, placed)), _("common practice"))
    yield blank("columns.debts", f"{debts} {later}", _("common practice"))


def _columns(use: str) -> str:
    """Which columns are filled in behind the petition."""
    if use == SEPARATE:
        return _(
            "Fill in only column A (what it is), and whom to confirm it to: column F for what you own, "
            "column D for debts. The others stay empty for now."
        )
    return _("Fill in only column A (what it is). The others stay empty for now.")


def _line(case: Case, number: int, entries: tuple[Entry, ...], untold: Untold) -> Answer:
    concept = f"line.{number}"
    if entries:
        words = "\n".join(one.words for one in entries)
        cells = tuple((one.what, one.confirm_to) for one in entries)
        last_four = _("As you listed it. Never more than the last four digits of an account.")
        return write(concept, words, last_four, "Cal. Rules of Court, rule 1.201(a)", cells=cells)
    if untold is Untold.ANY:
        return fill(concept, _("If one of you alone owns or owes such a thing: write what it is, and whose."))
    if untold is Untold.SOME:
        return fill(concept, _("You told us that there is some of this. Write what it is, in a few words."))
    if untold is Untold.DEBTS:
        return fill(concept, _("You told us of debts. Write here those of this kind, in a few words."))
    if case.asset or case.debt:
        return blank(concept, _("You listed nothing more of this kind. If there is some, write it."))
    return blank(concept, _("You told us of nothing of this kind. If there is some after all, write it."))


def _sums() -> Iterator[Answer]:
    no_amounts = _("You write no amounts here yet.")
    yield from (blank(f"line.{number}", no_amounts) for number in (17, 18, 25, 26))


def _continued(too_long: bool) -> Answer:
    if too_long:
        more = _("A list of yours is longer than its line. Go on with it on form FL-161.")
        return mark("line.27", more, _("common practice"), continues=CONTINUATION)
    return blank("line.27", _("Your lists fit on the lines, as far as we know the sheet."))


def _signing(case: Case) -> Iterator[Answer]:
    yield blank("signing.perjury", nothing_to_mark(), "Code Civ. Proc. 2015.5")
    yield sign("signing.date", _("Write the day on which you sign."), "Code Civ. Proc. 2015.5")
    yield written(case, "signing.name", "petitioner.name", _("Your full legal name, as at the top."))
    yield sign("signing.signature", _("You sign, and nobody for you."))
    keep_off = _("Read it, and file no bank papers, tax returns or whole account numbers with it.")
    yield blank("instructions", f"{nothing_to_mark()} {keep_off}", "Cal. Rules of Court, rule 1.201(a)")
