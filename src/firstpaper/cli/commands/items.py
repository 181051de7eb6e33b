"""`firstpaper items`: what goes in each item of the petition, form FL-100."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.opening import case_at
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.forms import ItemAnswer


def items(
    case: HomeArgument = HOME,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show what to mark and write in each item of the petition (FL-100)."""
    deliver("items", as_json, lambda terminal: _items(case, on, Passphrases(terminal, passphrase_from)))


def _items(path: Path, on: str | None, passphrases: Passphrases) -> Result:
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.forms.fl100.form import form
    from firstpaper.intake import standing

    day = filing_day(on)
    case = standing(case_at(path, passphrases))
    with law_as_of(day):
        answers = form(case, day)[0].items
    return Result(data={"on": day, "items": [_data(one) for one in answers]}, text=_text(answers))


def _data(one: "ItemAnswer") -> dict[str, object]:
    return {
        "form": one.form,
        "edition": one.edition,
        "page": one.page,
        "part": one.part,
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
    parts = groupby(answers, key=lambda one: (one.page, one.part))
    return "\n\n".join([head, *("\n".join(_part(page, part, group)) for (page, part), group in parts)])


def _part(page: int, part: str, answers: Iterable["ItemAnswer"]) -> Iterator[str]:
    """One part of the form: what to do with each of its items, and why."""
    yield _("Page {page}. {part}").format(page=page, part=part)
    for one in answers:
        number = f"{one.item} " if one.item[0].isdigit() else ""
        yield f"  - {number}{one.label}"
        because = [words for words in (one.because, one.note) if words]
        if one.action == "write":
            yield f"    {_to_do(one)}"
            yield from (f"    {words}" for words in because)
        else:
            yield "    " + " ".join([_to_do(one), *because])


def _to_do(one: "ItemAnswer") -> str:
    words = {
        "mark": _("MARK this box."),
        "write": _("WRITE: {value}").format(value=one.value),
        "blank": _("Leave EMPTY."),
        "sign": _("SIGN or date by hand, on the day you sign."),
        "fill": _("Fill in YOURSELF."),
    }[one.action]
    return words + (" " + _("Goes on in {sheet}.").format(sheet=one.continues) if one.continues else "")
