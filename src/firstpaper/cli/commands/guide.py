"""`firstpaper guide`: a form explained item by item, or the road after the filing, as pages to read."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.files.pdf import Files, files_for, refuse_locked_screen
from firstpaper.cli.options import (
    HtmlOption,
    JsonOption,
    OnOption,
    SealPdfOption,
    case_to_read,
    filing_day,
    pdf_option,
)
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.packet.guide import Guide

AFTER = "after"
"""What stands in place of a form for the road from the filing to the judgment."""

FormArgument = Annotated[
    str,
    typer.Argument(
        metavar="FORM",
        help=_("The number of a form, such as FL-105. Or the word after: the road from the filing on."),
        autocompletion=tab_key.guides,
    ),
]
CaseToRead = Annotated[
    Path | None,
    case_to_read(
        _("A case file, such as home.case. With it you also read what that case does at each item.")
    ),
]
PdfOption = Annotated[
    Path | None, pdf_option(_("Where to put the PDF. Without it: in this folder, or beside the case file."))
]


class NoSuchGuide(UserError):
    """There is no read-along called {name}. There is one of each of these forms: {known}.

    Type the number of one of them, like this: firstpaper guide FL-100. For what comes after the filing, type:
    firstpaper guide after. A case file stands after the form.
    """

    code = "no_such_guide"


class CaseToSeal(UserError):
    """Only the read-along of a case can be locked, and no case was named.

    A read-along without a case says nothing of anybody. Leave out --seal, or name a case file.
    """

    code = "case_to_seal"


def guide(
    form: FormArgument = "FL-100",
    case: CaseToRead = None,
    output: PdfOption = None,
    html: HtmlOption = None,
    seal: SealPdfOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft a form explained item by item, to read beside it. With nothing to fill in."""

    def work(terminal: Terminal) -> Result:
        refuse_locked_screen(seal, html)
        name, day = _name(form), filing_day(on)
        if case is None:
            if seal:
                raise CaseToSeal
            return _drafted(name, day, Files(output or Path(f"guide-{name}.pdf"), html), None, [])
        return _of_case(name, day, case, output, html, seal, Passphrases(terminal, passphrase_from), terminal)

    deliver("guide", as_json, work)


def _of_case(
    name: str,
    day: date,
    path: Path,
    output: Path | None,
    html: Path | None,
    seal: bool,
    passphrases: Passphrases,
    terminal: Terminal,
) -> Result:
    """The read-along of a case, locked as its packet is, and with how to get rid of it."""
    from firstpaper.cli.files.output import GUIDE, beside
    from firstpaper.cli.talk.lock_offer import after_printing, offer_to_lock_draft

    facts = case_at(path, passphrases)
    locked = seal or (html is None and offer_to_lock_draft(terminal, facts))
    files = files_for(output or beside(path, f"{GUIDE}{name}.pdf"), html, locked, passphrases, facts)
    return _drafted(name, day, files, facts, after_printing(facts, path, files.pdf))


def _drafted(name: str, day: date, files: Files, case: "Case | None", after: list[str]) -> Result:
    from firstpaper.cli.law_day import law_as_of

    with law_as_of(day):
        made = _made(name, day, case)
        files.write(made.pdf(), made.html)
    said = [
        _("The pages to read are in {path}.").format(path=files.pdf),
        *([_("The version for the screen is in {path}.").format(path=files.html)] if files.html else []),
        *after,
    ]
    data = {"on": day, "form": name, "pdf": str(files.pdf), "html": str(files.html) if files.html else None}
    return Result(data=data, text="\n\n".join(said))


def _made(name: str, day: date, case: "Case | None") -> "Guide":
    from firstpaper.packet.guide import read_along, road

    return road(day, case) if name == AFTER else read_along(name, day, case)


def _name(typed: str) -> str:
    """What is to be read: the number of a form as we write it, or the word for the road."""
    from firstpaper.forms.edition import slug
    from firstpaper.forms.explained_names import forms_explained

    names = {slug(name): name for name in (*forms_explained(), AFTER)}
    if slug(typed) not in names:
        raise NoSuchGuide(name=typed, known=", ".join(forms_explained()))
    return names[slug(typed)]
