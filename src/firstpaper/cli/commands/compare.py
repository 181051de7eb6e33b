"""`firstpaper compare`: hold a form that somebody filled in elsewhere against the case."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.files import blanks as files
from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.options import CaseArgument, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Exit, Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.blanks.comparing import Difference

PaperArgument = Annotated[
    Path,
    typer.Argument(metavar="FILLED.pdf", help=_("The form as somebody filled it in."), show_default=False),
]
BlanksOption = Annotated[
    Path, typer.Option("--blanks", metavar="FOLDER", help=_("The folder with the blank form and its map."))
]


class NoMapFits(UserError):
    """No blank form in {folder} has the fields of {name}, so the two could not be held side by side.

    The file may be another edition, a scan, or printed to a new PDF. Compare it by hand with the words of:
    firstpaper items
    """

    code = "no_map_fits"


def compare(
    case: CaseArgument,
    paper: PaperArgument,
    blanks: BlanksOption = Path(),
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Proof-read a form that somebody filled in elsewhere: what differs, what is missing, what is extra."""
    deliver(
        "compare",
        as_json,
        lambda terminal: _compare(case, paper, blanks, on, Passphrases(terminal, passphrase_from)),
    )


def _compare(path: Path, paper: Path, folder: Path, on: str | None, passphrases: Passphrases) -> Result:
    from firstpaper.blanks.checking import values
    from firstpaper.blanks.comparing import compared, fits
    from firstpaper.blanks.reading import read_blank
    from firstpaper.cli.commands.items import FormNotUsed, filled_in
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.intake import standing

    data, day = files.read_bytes(paper), filing_day(on)
    read, held = read_blank(data, paper.name), values(data, paper.name)
    ready = [one for one in files.all_learned(folder) if one.confirmed and fits(one.map, read)]
    if not ready:
        raise NoMapFits(folder=folder, name=paper.name)
    one, case = ready[0], standing(case_at(path, passphrases))
    with law_as_of(day), files.as_measured(ready[:1]):
        forms = filled_in(case, day, one.map.form)
    if not forms:
        raise FormNotUsed(form=one.map.form)
    found = min((compared(form, one.map, one.blank, held) for form in forms), key=len)
    return Result(
        data={"form": one.map.form, "on": day, "differences": [_data(each) for each in found]},
        text=_text(one.map.form, found),
        exit=Exit.STOPS if found else Exit.FINE,
    )


def _data(each: "Difference") -> dict[str, object]:
    return {
        "how": each.how,
        "item": each.what.item,
        "takes": each.what.key,
        "label": each.what.named,
        "on_paper": each.on_paper,
        "should_be": each.should_be,
    }


def _text(form: str, found: tuple["Difference", ...]) -> str:
    if not found:
        return _(
            "Every field of this {form} is as the case has it. Look at the signature and the date yourself."
        ).format(form=form)
    head = _n(
        "Form {form}: {count} field is not as the case has it.",
        "Form {form}: {count} fields are not as the case has them.",
        len(found),
    ).format(form=form, count=len(found))
    return "\n\n".join([head, *(_told(each) for each in found)])


def _told(each: "Difference") -> str:
    how = {
        "different": _("DIFFERENT. On the paper: {paper}. In the case: {case}."),
        "missing": _("MISSING on the paper. In the case: {case}."),
        "extra": _("EXTRA on the paper: {paper}. The case leaves it empty."),
    }[each.how]
    words = how.format(paper=_shown(each.on_paper), case=_shown(each.should_be))
    return f"{each.what.item} {each.what.named}".strip() + f"\n  {words}"


def _shown(text: str) -> str:
    return _("marked") if text == "marked" else " ".join(text.split())
