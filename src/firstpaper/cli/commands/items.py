"""`firstpaper items`: what goes in each item of a form."""

from collections.abc import Iterable, Iterator
from datetime import date
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.words.items import form_words, item_data, item_lines
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.forms import FilledForm, ItemAnswer

FormOption = Annotated[
    str | None,
    typer.Option("--form", metavar="FORM", help=_("Another form, as FL-105. Without it: FL-100.")),
]
AllOption = Annotated[bool, typer.Option("--all", help=_("Every form that this case uses."))]


class NoSuchForm(UserError):
    """We do not fill in a form called {name}. Those that we know are {known}.

    Type its number as it stands on the form, like this: --form FL-105
    """

    code = "no_such_form"


class FormNotUsed(UserError):
    """This case does not use form {form}, as far as it has been told. So there is nothing to show.

    See which forms it uses with: firstpaper items --all. To use this one, change the answers about it.
    """

    code = "form_not_used"


def items(
    case: HomeArgument = HOME,
    form: FormOption = None,
    every: AllOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show what to mark and write in each item of a form: the petition (FL-100), or another."""
    wanted = None if every else form or "FL-100"
    deliver(
        "items", as_json, lambda terminal: _items(case, wanted, on, Passphrases(terminal, passphrase_from))
    )


def _items(path: Path, wanted: str | None, on: str | None, passphrases: Passphrases) -> Result:
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.intake import standing

    day = filing_day(on)
    number = None if wanted is None else _number(wanted)
    told = case_at(path, passphrases)
    case = standing(told)
    with law_as_of(day):
        forms = filled_in(case, day, number)
    if number and not forms:
        raise FormNotUsed(form=number)
    return Result(
        data={"on": day, "items": [item_data(form, one) for form in forms for one in form.items]},
        text="\n\n\n".join([*(_text(form) for form in forms), next_line(told, path, day)]),
    )


def _number(wanted: str) -> str:
    """The number of a form as we write it, from however it was typed."""
    from firstpaper.forms.edition import slug
    from firstpaper.forms.filing import every_form

    found = next((name for name in every_form() if slug(name) == slug(wanted)), None)
    if found is None:
        raise NoSuchForm(name=wanted, known=", ".join(every_form()))
    return found


def filled_in(case: "Case", day: date, number: str | None) -> tuple["FilledForm", ...]:
    """The copies of one form that a case uses; without a number those of every form."""
    from firstpaper.forms.filing import maker
    from firstpaper.law.measures.record import judged_on
    from firstpaper.packet.brief import brief, forms_of

    if number is None:
        return forms_of(brief(case, day))
    return maker(number)(case, judged_on(case, day))


def _text(form: "FilledForm") -> str:
    parts = groupby(form.items, key=lambda one: (one.page, one.part))
    lines = ("\n".join(_part(*key, group)) for key, group in parts)
    return "\n\n".join([_head(form, form_words(form)), *lines])


def _head(form: "FilledForm", named: str) -> str:
    if not form.edition.printed:
        return _("Form {form}. We do not know its edition: go by the words.").format(form=named)
    words = _("Form {form}, edition {edition}. Check that your blank form shows this edition.")
    return words.format(form=named, edition=form.edition.printed)


def _part(page: int | None, part: str, answers: Iterable["ItemAnswer"]) -> Iterator[str]:
    """One part of the form: what to do with each of its items, and why."""
    yield _("Page {page}. {part}").format(page=page, part=part) if page else part
    for one in answers:
        yield from item_lines(one)
