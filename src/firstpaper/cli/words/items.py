"""What to do with an item of a form: in words for a terminal, and as plain data for programs."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.forms import FilledForm, ItemAnswer


def form_words(form: "FilledForm") -> str:
    """A copy of a form by name: its number, and its use where there are several."""
    return _("{form} ({use})").format(form=form.form, use=form.use) if form.use else form.form


def item_lines(one: "ItemAnswer") -> Iterator[str]:
    """An item with its number and label, what to do there, and why."""
    number = f"{one.item} " if one.item[:1].isdigit() else ""
    yield f"  - {number}{one.label}"
    because = [words for words in (one.because, one.note) if words]
    if one.action == "write":
        yield f"    {to_do(one)}"
        yield from (f"    {words}" for words in because)
    else:
        yield "    " + " ".join([to_do(one), *because])


def to_do(one: "ItemAnswer") -> str:
    """What to do with it on the sheet."""
    words = {
        "mark": _("MARK this box."),
        "write": _("WRITE: {value}").format(value=one.value),
        "blank": _("Leave EMPTY."),
        "sign": _("SIGN or date by hand, on the day you sign."),
        "fill": _("Fill in YOURSELF."),
        "others": _("SOMEBODY ELSE fills this in."),
    }[one.action]
    return words + (" " + _("Goes on in {sheet}.").format(sheet=one.continues) if one.continues else "")


def item_data(form: "FilledForm", one: "ItemAnswer") -> dict[str, object]:
    """An item for programs."""
    return {
        "form": one.form,
        "use": form.use,
        "private": form.private,
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
        "cells": list(one.rows),
    }
