"""`firstpaper items`: what goes in each item of the petition, form FL-100."""

from collections.abc import Iterator, Sequence
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.options import CaseArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.forms import ItemAnswer


def items(case: CaseArgument, on: OnOption = None, as_json: JsonOption = False) -> None:
    """Show what to mark and write in each item of the petition (FL-100)."""
    deliver("items", as_json, lambda _terminal: _items(case, on))


def _items(path: Path, on: str | None) -> Result:
    from firstpaper.casefile import CaseFile
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.forms import petition
    from firstpaper.intake import standing

    day = filing_day(on)
    case = standing(CaseFile.load(path).case)
    with law_as_of(day):
        answers = petition(case, day)
    return Result(data={"on": day, "items": [_data(one) for one in answers]}, text=_text(answers))


def _data(one: "ItemAnswer") -> dict[str, object]:
    return {
        "form": one.form,
        "edition": one.edition,
        "page": one.page,
        "item": one.item,
        "concept": one.concept,
        "label": one.label,
        "action": one.action,
        "value": one.value,
        "because": one.because,
        "authority": one.authority,
        "continues": one.continues,
    }


def _text(answers: Sequence["ItemAnswer"]) -> str:
    first = answers[0]
    head = _("Form {form}, edition {edition}. Check that your blank form shows this edition.").format(
        form=first.form, edition=first.edition
    )
    pages = groupby(answers, key=lambda one: one.page)
    return "\n\n".join([head, *("\n".join(_page(page, list(group))) for page, group in pages)])


def _page(page: int, answers: Sequence["ItemAnswer"]) -> Iterator[str]:
    """The items of one page that need something done, or whose emptiness needs a word."""
    yield _("Page {page}").format(page=page)
    for one in answers:
        if one.action != "blank" or one.because:
            yield "  " + _("{item}: {label}").format(item=one.item, label=one.label)
            yield f"    {_to_do(one)}"
            if one.because:
                yield f"    {one.because}"
    yield "  " + _("Leave everything else on this page empty.")


def _to_do(one: "ItemAnswer") -> str:
    words = {
        "mark": _("MARK this box."),
        "write": _("WRITE: {value}").format(value=one.value),
        "blank": _("Leave EMPTY."),
        "sign": _("SIGN or date by hand, on the day you sign."),
    }[one.action]
    return words + (" " + _("Goes on in {sheet}.").format(sheet=one.continues) if one.continues else "")
