"""The answers of a form for what one explanation speaks of, copy by copy."""

from collections.abc import Iterable

from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.explained_names import entry_of
from firstpaper.forms.explanation import Explanation
from firstpaper.forms.filled import FilledForm

Copy = tuple[FilledForm, tuple[ItemAnswer, ...]]


def copies_of(one: Explanation, filled: Iterable[FilledForm]) -> tuple[Copy, ...]:
    """Each copy of its form, with the answers for what the explanation speaks of."""
    same = (form for form in filled if form.form == one.form)
    return tuple((form, tuple(each for each in form.items if _speaks_of(one, each))) for form in same)


def _speaks_of(one: Explanation, each: ItemAnswer) -> bool:
    entry = entry_of(one.form, each.concept)
    return entry is not None and entry.item == one.item
