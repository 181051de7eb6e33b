"""The check sheet of a form that was filled in on the court's own blank: what is on it, and what is left."""

from collections.abc import Iterable
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.filled import FilledForm
from firstpaper.locale import _
from firstpaper.packet.views.sheet import Sheet

if TYPE_CHECKING:
    from firstpaper.blanks.filling import Filling


class Line(NamedTuple):
    """One item: where it stands, what it is, what is on it, or what is left to do."""

    place: str
    label: str
    says: tuple[str, ...]
    why: str = ""


def of_form(form: FilledForm, what: "Filling", stops: tuple[str, ...] = ()) -> Sheet:
    """One sheet to hold against the filled copy. `stops` says why it is not to be filed yet."""
    named = _("{form} ({use})").format(form=form.form, use=form.use) if form.use else form.form
    title = _("Check sheet for {form}").format(form=named)
    return Sheet(
        template="check-sheet.html",
        title=title,
        running=title,
        purpose=_("Hold it against the filled form. Then do what is left."),
        group=_("Worksheets for {form}").format(form=form.form),
        values={
            "title": title,
            "stops": stops,
            "form": named,
            "private": form.private,
            "left": tuple(_line(one.item, one.why) for one in what.left),
            "filled": tuple(_line(item) for item in _once(one.item for one in what.entries)),
        },
    )


def _once(items: Iterable[ItemAnswer]) -> tuple[ItemAnswer, ...]:
    return tuple({item.concept: item for item in items}.values())


def _line(item: ItemAnswer, why: str = "") -> Line:
    says = (_("marked"),) if item.action is Action.MARK else tuple(item.value.splitlines())
    return Line(item.place or item.hint, item.label, says, why)
