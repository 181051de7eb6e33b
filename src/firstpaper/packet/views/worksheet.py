"""Worksheets: what to do with every item of a form, page by page."""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby
from shlex import quote
from typing import NamedTuple

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.edition import Edition
from firstpaper.forms.filing import Filing, plan
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.law.finding import Weight
from firstpaper.locale import ENGLISH, _, _c, english, language, printed_and_meaning, with_meaning
from firstpaper.packet.brief import Brief
from firstpaper.packet.piles import Pile
from firstpaper.packet.views import check_sheet
from firstpaper.packet.views.grids import Grid, grids
from firstpaper.packet.views.law_behind import law_behind
from firstpaper.packet.views.sheet import Sheet

MOST_NAMED = 3
MOST_ON_ONE = 2
"""Pages of a form that are told apart by no line."""
AT_THE_TOP = (Action.WRITE, Action.FILL)
REPEATED = "heading"
"""The place, in an edition, of what stands at the top of page 1 and is written again on the later pages."""
SAME_CAPTION = ("caption.filer", "caption.court", "caption.names")
"""The parts of a caption that are the same on every form of a filing."""


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a worksheet: an item that wants the pen, or neighbours that still lack one answer.

    `kind` is the action, or "open" where an answer is missing. `boxes` are further boxes of the same item
    to mark; `lines` is the exact text to write, line by line, and `meaning` what words of ours in it say.
    """

    kind: str
    place: str
    labels: tuple[str, ...]
    boxes: tuple[str, ...]
    lines: tuple[str, ...]
    meaning: str
    because: str
    authority: str
    continues: str
    note: str

    @property
    def named(self) -> str:
        """The items by their labels; a long run by its first and last."""
        if len(self.labels) > MOST_NAMED:
            return _("all from “{first}” to “{last}”").format(first=self.labels[0], last=self.labels[-1])
        return "; ".join(self.labels)

    @property
    def done(self) -> str:
        """What is ticked off when it is copied."""
        return f"{self.place} {self.labels[0]}".strip()[:MOST_DONE]


MOST_DONE = 100


class Section(NamedTuple):
    """The lines under one heading of the form. `page` is named where a new page of a long form begins."""

    part: str
    rows: tuple[Row | Grid, ...]
    empty: str = ""
    page: str = ""

    @property
    def blocks(self) -> tuple[tuple[Row | Grid, ...], ...]:
        """The lines, those that stand in one table together."""
        return tuple(
            tuple(found) for _grid, found in groupby(self.rows, key=lambda one: isinstance(one, Grid) and one)
        )


def sheets(brief: Brief) -> Iterator[Sheet]:
    """The worksheets of every form that is not private."""
    stops, before = _stops(brief), ""
    for form in brief.filled:
        if not form.private:
            yield of_copy(form, brief, () if form.form == before else stops, first=form.form != before)
            before = form.form


def private_sheets(brief: Brief) -> Iterator[Sheet]:
    """The worksheets of the forms that are kept apart from what the other side gets."""
    stops = _stops(brief)
    private = (of_copy(form, brief, stops) for form in brief.filled if form.private)
    yield from (replace(sheet, follows=count > 0) for count, sheet in enumerate(private))


def of_copy(
    form: FilledForm,
    brief: Brief,
    stops: tuple[str, ...] = (),
    on: date | None = None,
    *,
    first: bool = True,
) -> Sheet:
    """The worksheet of one copy of a form; a check sheet where the court's own blank was filled in.

    What to look at before trusting it is said with the first copy of a form alone.
    """
    what = brief.on_blanks.get((form.form, form.use))
    if what is None:
        return of_form(form, on or brief.on, stops, first=first)
    return check_sheet.of_form(form, what, stops)


def _stops(brief: Brief) -> tuple[str, ...]:
    return tuple(dict.fromkeys(one.says for one in brief.of_weight(Weight.STOP)))


def of_form(form: FilledForm, on: date, stops: tuple[str, ...] = (), *, first: bool = True) -> Sheet:
    """The worksheet of one copy of a form. `stops` says why it is not to be filed yet."""
    named = _("{form} ({use})").format(form=form.form, use=form.use) if form.use else form.form
    title = _("Worksheet for {form}").format(form=named)
    return Sheet(
        template="worksheet.html",
        title=title,
        running=title,
        purpose=_purpose(form),
        purpose_of_all=_purpose_of_all(form),
        group=_("Private worksheets") if form.private else _("Worksheets"),
        short=named,
        pile=Pile.PRIVATE if form.private else Pile.COPY,
        follows=form.form != PETITION,
        values={
            "title": title,
            "stops": stops,
            "cautions": tuple(_cautions(form, on)) if first else (),
            "sections": tuple(sections(form.items, form.edition)),
        },
    )


def _purpose(form: FilledForm) -> str:
    if form.private:
        return _("Private: keep apart. Copy it onto the blank form.")
    return _("Copy it onto the blank form.")


def _purpose_of_all(form: FilledForm) -> str:
    if form.private:
        return _("Private: keep apart. Copy each onto its blank form.")
    return _("Copy each onto its blank form.")


def _cautions(form: FilledForm, on: date) -> Iterator[str]:
    """What to look at before trusting the sheet, and how to use it."""
    edition = form.edition
    caution = _(edition.caution) if edition.caution else ""
    if edition.may_be_replaced(on) and edition.watch:
        made_for = _("This sheet is made for the {form} that says “{edition}” in its lower left corner.")
        newest = _("Take the newest one from the court's website. If it has another date, go by the words.")
        if edition.printed:
            yield made_for.format(form=form.form, edition=edition.printed)
        if edition.printed or not edition.caution:
            yield f"{_(edition.watch.why)} {newest}"
        else:
            caution = f"{_(edition.watch.why)} {caution}"
    elif edition.printed:
        look = _("Look at the lower left corner of your blank {form}. It should say “{edition}”.")
        yield f"{look.format(form=form.form, edition=edition.printed)} {_other_date(edition)}"
    if caution:
        yield caution
    if form.private:
        yield _("This form is private. Keep it apart from the papers that the other side gets.")
    yield " ".join(filter(None, (_how_to_copy(edition), _date_order(form), _more(form))))


def _how_to_copy(edition: Edition) -> str:
    if not edition.seen:
        return _(
            "Copy each answer to the line of your form that asks for it. Tick the ring at the right to keep "
            "your place."
        )
    return _(
        "Copy each answer to the same item of your form. Tick the ring at the right to keep your place. "
        "What this sheet does not name stays empty."
    )


def _date_order(form: FilledForm) -> str:
    """In which order the figures of a date stand, for whoever may be used to another one."""
    if language() == ENGLISH or not any(DATE.search(answer.value) for answer in form.items):
        return ""
    return _("Dates go on the form in this order: month/day/year.")


DATE = re.compile(r"\b\d\d/\d\d/\d{4}\b")


def _more(form: FilledForm) -> str:
    """How to read what an item is about."""
    if form.form == PETITION:
        return _("To read more about an item, type its number, as in “firstpaper why 2a”.")
    return _("To read more about its items, type “firstpaper why {form}”.").format(form=quote(form.form))


def _other_date(edition: Edition) -> str:
    if edition.numbered:
        return _("If it shows another date, do not trust the item numbers here. Ask the self-help center.")
    return _("If it shows another date, ask the self-help center.")


def sections(answers: Iterable[ItemAnswer], edition: Edition) -> Iterator[Section]:
    """What wants the pen, under the headings of the form; what is only to be read is left out."""
    page = 1
    for part, found in groupby(answers, key=lambda answer: answer.part):
        group = tuple(found)
        starts = ""
        if edition.pages > MOST_ON_ONE and group[0].page not in (None, page):
            page = group[0].page or page
            starts = _("Page {page} of the form.").format(page=page)
        section = _section(part, group, starts, edition)
        if section.rows or section.empty or section.page:
            yield section


def _section(part: str, answers: tuple[ItemAnswer, ...], page: str, edition: Edition) -> Section:
    if all(answer.item == REPEATED for answer in answers):
        again = "; ".join(answer.label for answer in answers if answer.action in AT_THE_TOP)
        words = _("At the top write again, as on page 1: {labels}.").format(labels=again)
        return Section("", (), page=f"{page} {words}".strip())
    found = tuple(rows(answers, edition))
    return Section(part, found, _empty(answers, edition, some=bool(found)), page)


def _empty(answers: tuple[ItemAnswer, ...], edition: Edition, *, some: bool) -> str:
    """What a section says of the items that stay empty: one line, with the reason where there is one.

    On a form that nobody has seen they are named: it may ask for more than we know of.
    """
    blank = [answer for answer in answers if _kind(answer) == "blank"]
    if not blank:
        return ""
    if some and not edition.seen:
        return _("Leave empty: {labels}.").format(labels="; ".join(answer.label for answer in blank))
    if some:
        number = _number(answers)
        if number:
            return _("Leave everything else in item {number} empty.").format(number=number)
        return _("Leave everything else here empty.")
    reasons = tuple(dict.fromkeys(answer.because for answer in blank))[:MOST_REASONS]
    return " ".join((_("Leave all of it empty."), *reasons))


MOST_REASONS = 2


def _number(answers: Iterable[ItemAnswer]) -> str:
    """The number that all items of a section share."""
    found = {LEADING_NUMBER.match(answer.item) for answer in answers}
    numbers = {match[0] if match else "" for match in found}
    return numbers.pop() if len(numbers) == 1 else ""


LEADING_NUMBER = re.compile(r"\d+")


def rows(answers: Iterable[ItemAnswer], edition: Edition) -> Iterator[Row | Grid]:
    """The lines of a section that want the pen.

    A reason that the line above has just given is not said again.
    """
    said = ""
    for _key, found in groupby(grids(tuple(_once(answers)), edition), key=_together):
        group = tuple(found)
        yield from (one for one in group if isinstance(one, Grid))
        if lines := tuple(one for one in group if not isinstance(one, Grid)):
            row = _row(lines)
            yield replace(row, because="", authority="") if row.because == said else row
            said = row.because


def _together(one: ItemAnswer | Grid) -> tuple[str, ...]:
    """What stands in one line, or in tables one after another, has this in common."""
    return ("in columns",) if isinstance(one, Grid) else _shared(one)


def _once(answers: Iterable[ItemAnswer]) -> Iterator[ItemAnswer]:
    """The answers that want the pen, the same caption in one line."""
    wanted = [answer for answer in answers if _kind(answer) not in ("blank", "printed")]
    same = [answer for answer in wanted if _is_same_caption(answer)]
    for answer in wanted:
        if not _is_same_caption(answer):
            yield answer
        elif answer is same[0]:
            yield replace(
                answer,
                label=_("The boxes at the top"),
                value="",
                because=_(
                    "Copy the top of your FL-100 here: your name and address, the court, and both names."
                ),
                authority="",
            )


def _is_same_caption(answer: ItemAnswer) -> bool:
    """Whether it repeats the caption of FL-100, which is not filled in where the two file together."""
    if answer.form in plan(Filing.JOINT).fills:
        return False
    return answer.concept in SAME_CAPTION and answer.action is Action.WRITE


def _shared(answer: ItemAnswer) -> tuple[str, ...]:
    kind = _kind(answer)
    if kind in ("open", "fill", "others"):
        return (kind, answer.because)
    if kind == "mark" and answer.item:
        return (kind, answer.item, printed_and_meaning(answer.label)[0].partition(": ")[0])
    return (answer.concept,)


def _kind(answer: ItemAnswer) -> str:
    if answer.action is Action.BLANK and answer.kind == "statement":
        return "printed"
    if answer.action is Action.BLANK and answer.open_key:
        return "open"
    return answer.action.value


def _places(group: tuple[ItemAnswer, ...]) -> str:
    found = tuple(dict.fromkeys(filter(None, map(_place, group))))
    if len(found) > MOST_NAMED:
        return _c("items", "{first} to {last}").format(first=found[0], last=found[-1])
    return ", ".join(found)


def _place(answer: ItemAnswer) -> str:
    """The number of the item; in brackets the one it had before, where the number of today is not known.

    A place that is no number, such as the caption, is told by the heading already.
    """
    if answer.item:
        return answer.item if LEADING_NUMBER.match(answer.item) else ""
    return answer.hint


def _row(group: tuple[ItemAnswer, ...]) -> Row:
    first, *others = group
    boxes = tuple(_box(answer, first) for answer in others) if first.action is Action.MARK else ()
    reasons = dict.fromkeys(answer.because for answer in group)
    return Row(
        kind=_kind(first),
        place=_places(group),
        labels=tuple(answer.label for answer in (group[:1] if boxes else group)),
        boxes=boxes,
        lines=_to_copy(first),
        meaning=_sentences(first.meaning),
        because=" ".join(reasons),
        authority="; ".join(dict.fromkeys(filter(None, map(law_behind, group)))),
        continues=_continues(group),
        note=first.note,
    )


def _continues(group: tuple[ItemAnswer, ...]) -> str:
    """The sheet on which it goes on, where the reason has not named it already."""
    sheet = next((answer.continues for answer in group if answer.continues), "")
    return "" if any(sheet in answer.because for answer in group) else sheet


def _to_copy(answer: ItemAnswer) -> tuple[str, ...]:
    """The words to copy, which are English."""
    return tuple(map(english, answer.value.splitlines()))


def _sentences(lines: str) -> str:
    """Lines as sentences in a row."""
    return " ".join(f"{line.removesuffix('.')}." for line in lines.splitlines())


def _box(answer: ItemAnswer, first: ItemAnswer) -> str:
    """A further box of an item by the words that are its own."""
    own, shared = printed_and_meaning(answer.label), printed_and_meaning(first.label)
    heads = (f"{head.partition(': ')[0]}: " for head in shared)
    return with_meaning(*(words.removeprefix(head) for words, head in zip(own, heads, strict=True)))
