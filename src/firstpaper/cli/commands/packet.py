"""`firstpaper packet`: the sheets, as a PDF and for the screen."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.options import CaseArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.facts import Case

PdfOption = Annotated[
    Path | None,
    typer.Option(
        "--output",
        "-o",
        metavar="FILE.pdf",
        help=_("Where to put the PDF. Without it: beside the case file, under the same name."),
    ),
]
HtmlOption = Annotated[
    Path | None, typer.Option("--html", metavar="FILE.html", help=_("Also make a version for the screen."))
]


def packet(
    case: CaseArgument,
    output: PdfOption = None,
    html: HtmlOption = None,
    on: OnOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft the packet: what to mark and write on each form, and what to do next."""
    deliver("packet", as_json, lambda _terminal: _packet(case, output, html, on))


def _packet(path: Path, output: Path | None, html: Path | None, on: str | None) -> Result:
    from firstpaper.casefile import CaseFile

    case = CaseFile.load(path).case
    return draft(case, filing_day(on), output or path.with_suffix(".pdf"), html)


def draft(case: "Case", day: date, pdf: Path, html: Path | None = None) -> Result:
    """Draft the packet of a case into files. Findings that stop a filing do not stop the drafting."""
    from firstpaper.cli.findings import stops
    from firstpaper.cli.output import HTML, PDF, write_output
    from firstpaper.intake import standing
    from firstpaper.law.register import findings
    from firstpaper.packet import build

    drafted = build(case, day)
    write_output(pdf, drafted.pdf(), PDF)
    if html:
        write_output(html, drafted.html().encode(), HTML)
    stopping = stops(findings(standing(case), day))
    lines = [
        _("The packet is in {path}. Only your account on this computer can open it.").format(path=pdf),
        *([_("The version for the screen is in {path}.").format(path=html)] if html else []),
        *drafted.warnings,
        *_stop_lines([one.title for one in stopping]),
    ]
    return Result(
        data={
            "on": day,
            "pdf": str(pdf),
            "html": str(html) if html else None,
            "warnings": list(drafted.warnings),
            "stops": [one.id for one in stopping],
        },
        text="\n\n".join(lines),
        exit=Exit.STOPS if stopping else Exit.FINE,
    )


def _stop_lines(titles: list[str]) -> list[str]:
    if not titles:
        return []
    head = _n(
        "Do not file it yet. {count} thing stops a filing, and the cover page says so too:",
        "Do not file it yet. {count} things stop a filing, and the cover page says so too:",
        len(titles),
    ).format(count=len(titles))
    return ["\n".join([head, *(f"  - {title}" for title in titles)])]
