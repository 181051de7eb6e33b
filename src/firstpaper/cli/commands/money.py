"""`firstpaper money`: the private money pages, in a file of their own and never in the packet."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.files.pdf import Files, files_for, refuse_locked_screen
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import (
    HOME,
    HomeArgument,
    HtmlOption,
    JsonOption,
    OnOption,
    SealPdfOption,
    filing_day,
    pdf_option,
)
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from collections.abc import Iterator

    from firstpaper.facts import Case
    from firstpaper.packet.money import MoneyPages

PdfOption = Annotated[
    Path | None,
    pdf_option(_("Where to put the PDF. Without it: beside the case file, such as home-private.pdf.")),
]


class NoMoneyTold(UserError):
    """Nothing about money has been told in this case yet, so there are no money pages.

    List what you two own and owe first, with the command schedule. Nothing on these pages is needed to file
    a petition.
    """

    code = "no_money_told"


def money(
    case: HomeArgument = HOME,
    output: PdfOption = None,
    html: HtmlOption = None,
    seal: SealPdfOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft private pages on what you own and owe, and on support. They are not for the court."""

    def work(terminal: Terminal) -> Result:
        from firstpaper.cli.files.output import PRIVATE, beside

        refuse_locked_screen(seal, html)
        passphrases = Passphrases(terminal, passphrase_from)
        facts = case_at(case, passphrases)
        day = filing_day(on)
        pages = _pages(facts, day)
        files = files_for(output or beside(case, f"{PRIVATE}.pdf"), html, seal, passphrases, facts)
        return _drafted(pages, files, next_line(facts, case, day))

    deliver("money", as_json, work)


def _pages(case: "Case", day: date) -> "MoneyPages":
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.packet.money import money_pages

    with law_as_of(day):
        pages = money_pages(case, day)
    if pages.reckoning.empty:
        raise NoMoneyTold
    return pages


def _drafted(pages: "MoneyPages", files: Files, following: str) -> Result:
    from firstpaper.cli.words.money import figures

    files.write(pages.pdf(), pages.html)
    return Result(
        data={
            "on": pages.reckoning.on,
            "pdf": str(files.pdf),
            "html": str(files.html) if files.html else None,
            "warnings": list(pages.warnings),
            **figures(pages.reckoning),
        },
        text="\n\n".join([*_lines(pages, files), following]),
    )


def _lines(pages: "MoneyPages", files: Files) -> "Iterator[str]":
    where = (
        _("The money pages are in {path}, locked with their passphrase. Do not send the two together.")
        if files.lock
        else _("The money pages are in {path}. Only your account on this computer can open it.")
    )
    yield where.format(path=files.pdf)
    if files.html:
        yield _("The version for the screen is in {path}.").format(path=files.html)
    yield from pages.warnings
    yield _("They are private. Do not file them, and do not give them to the other side.")
    yield from _pictures(pages)


def _pictures(pages: "MoneyPages") -> "Iterator[str]":
    """The pictures in words, for whoever reads no PDF."""
    from firstpaper.packet.pictures.words import text_of

    for sheet in pages.sheets:
        for chart in sheet.pictures.values():
            yield f"{sheet.title}\n{text_of(chart)}"
