"""The stack for the clerk: which papers, in which order, and which item of which form names each.

The order is common practice; the court's own list wins. What is kept private is a stack of its own.
"""

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from firstpaper.forms.attachments import LedgerLine
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.fl105 import FORM as DECLARATION
from firstpaper.forms.needed import FormNeeded, Stack


class Paper(NamedTuple):
    """One paper of a stack.

    `name` is what it is called, with its `title` where that says more. `behind` is the form it lies behind,
    and `items` are the items of that form which name it, as far as their numbers are known. `ours` says that
    the page is in the packet, ready to be filed. `only_if` is the case in which the paper is needed.
    """

    name: str
    title: str = ""
    behind: str = ""
    items: tuple[str, ...] = ()
    ours: bool = False
    only_if: str = ""


def stack(needed: Sequence[FormNeeded], ledger: Sequence[LedgerLine]) -> tuple[Paper, ...]:
    """The papers that the court files and the other side gets a copy of, in order."""
    papers = (
        *_forms(needed, Stack.SUMMONS),
        *_forms(needed, Stack.PETITION),
        *_behind(needed, (line for line in ledger if line.form != DECLARATION)),
        *_forms(needed, Stack.DECLARATION),
        *(_page(line) for line in ledger if line.form == DECLARATION and line.attachment),
        *_forms(needed, Stack.LOCAL),
    )
    first_of: dict[str, Paper] = {}
    for paper in papers:
        first_of.setdefault(paper.name, paper)
    return tuple(first_of.values())


def apart(needed: Sequence[FormNeeded]) -> tuple[Paper, ...]:
    """The papers that are handed in apart from the stack, because nobody else may see them."""
    return tuple(_forms(needed, Stack.APART))


def _forms(needed: Iterable[FormNeeded], place: Stack) -> Iterator[Paper]:
    for form in needed:
        if form.stack is place:
            behind = DECLARATION if place is Stack.DECLARATION and not form.form else ""
            yield Paper(form.label, _title(form), behind, only_if=form.only_if)


def _behind(needed: Sequence[FormNeeded], ledger: Iterable[LedgerLine]) -> Iterator[Paper]:
    """What lies behind the petition: in the order of the items that name it, then what none names."""
    titles = {form.label: _title(form) for form in needed}
    named: set[str] = set()
    for line in ledger:
        named.add(line.label)
        yield _page(line, titles.get(line.label, ""))
    for form in needed:
        if form.stack is Stack.BEHIND and form.label not in named:
            yield Paper(form.label, _title(form), PETITION, only_if=form.only_if)


def _page(line: LedgerLine, title: str = "") -> Paper:
    return Paper(line.label, title, line.form, line.items, ours=line.attachment is not None)


def _title(form: FormNeeded) -> str:
    """Its title, where its name is only a number."""
    return form.title if form.label == form.form else ""
