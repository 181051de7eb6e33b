"""`firstpaper blank`: learn the court's own blank form, and confirm which field takes which answer."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.clock import today
from firstpaper.cli.files import blanks as files
from firstpaper.cli.hints import to_type
from firstpaper.cli.options import JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.blanks.mapping import Line, Map

BlankArgument = Annotated[
    Path, typer.Argument(metavar="FILE", help=_("The blank form (a PDF), or its map."), show_default=False)
]
FormOption = Annotated[
    str | None,
    typer.Option(
        "--form", metavar="FORM", help=_("Which form it is, where the file does not say, as FL-100.")
    ),
]
ConfirmOption = Annotated[
    bool, typer.Option("--confirm", help=_("Look at the doubtful fields one by one, and confirm the proof."))
]
WhoOption = Annotated[
    str | None, typer.Option("--who", metavar="NAME", help=_("Who confirms it. Without it: you are asked."))
]


class NotConfirmed(UserError):
    """The proof was not confirmed, so nothing will be filled in. What you said was not kept.

    Look at {path} on every page. Correct the map by hand where it is wrong. Then try again.
    """

    code = "proof_not_confirmed"


def blank(
    file: BlankArgument,
    form: FormOption = None,
    confirm: ConfirmOption = False,
    who: WhoOption = None,
    as_json: JsonOption = False,
) -> None:
    """Learn a blank form of the court's, so that it can be filled in."""

    def work(terminal: Terminal) -> Result:
        path = files.map_beside(file) if confirm and not file.name.endswith(files.MAP) else file
        return _confirm(terminal, path, who) if confirm else _learn(file, form)

    deliver("blank", as_json, work)


def _learn(pdf: Path, form: str | None) -> Result:
    from firstpaper.blanks.errors import FormNotRecognised
    from firstpaper.blanks.mapping import map_of, recognised
    from firstpaper.blanks.reading import read_blank

    data = files.read_bytes(pdf)
    found = read_blank(data, pdf.name)
    says, edition = recognised(found)
    number = _number(form) if form else says
    if not number:
        raise FormNotRecognised(name=pdf.name)
    path, before = files.map_beside(pdf), _before(pdf)
    if before and before.sha256 == found.digest:
        one = before
    else:
        one = map_of(found, number, edition if number == says else "", before)
        files.write_map(path, one)
    proof = files.write_proof(pdf, data, one)
    return _result(pdf, path, proof, one, found.oddities)


def _number(wanted: str) -> str:
    from firstpaper.forms.edition import all_editions, slug

    return next((one.form for one in all_editions() if slug(one.form) == slug(wanted)), "")


def _before(pdf: Path) -> "Map | None":
    """The map that is there already: of this file, or of the one that lay here before."""
    from firstpaper.blanks.mapping import read_map

    path = files.map_beside(pdf)
    return read_map(files.read_text(path), path.name) if path.exists() else None


def _result(pdf: Path, path: Path, proof: Path, one: "Map", oddities: tuple[str, ...]) -> Result:
    from firstpaper.blanks.mapping import edition_of, unpaired

    _edition, known = edition_of(one.form, one.edition)
    ours, theirs = unpaired(one)
    sure = [line for line in one.lines if line.takes and line not in one.doubtful]
    unknown = _("We do not know this edition, so each field has to be confirmed by hand.")
    lines = [
        _("This is form {form}, edition {edition}.").format(
            form=one.form, edition=one.edition or _("unknown")
        ),
        *([] if known else [unknown]),
        _("{sure} fields are sure, {doubtful} doubtful, {empty} take nothing.").format(
            sure=len(sure), doubtful=len(one.doubtful), empty=len(theirs)
        ),
        *oddities,
        *_listed(_("No field was found for:"), ours),
        *_listed(_("These fields take nothing:"), theirs),
        to_type(
            _(
                "The proof is in {proof}. Look at every page. Nothing is filled in before you confirm it:"
            ).format(proof=proof),
            "blank",
            path,
            "--confirm",
        ),
    ]
    data = {
        "form": one.form,
        "edition": one.edition,
        "edition_known": known,
        "map": str(path),
        "proof": str(proof),
        "sure": [line.takes for line in sure],
        "doubtful": [line.takes for line in one.doubtful],
        "without_field": list(ours),
        "fields_without_use": list(theirs),
        "oddities": list(oddities),
    }
    return Result(data=data, text="\n\n".join(lines))


def _listed(head: str, names: object) -> list[str]:
    told = [str(name) for name in names]  # type: ignore[attr-defined]
    return ["\n".join([head, *(f"  - {name}" for name in told)])] if told else []


def _confirm(terminal: Terminal, path: Path, who: str | None) -> Result:
    from firstpaper.blanks.here import confirm_here
    from firstpaper.blanks.mapping import confirmed

    known = files.learned(path)
    proof = files.write_proof(known.path, known.data, known.map)
    terminal.say(_("Open {proof} and keep it beside you.").format(proof=proof))
    refused = [line.key for line in known.map.doubtful if not _right(terminal, line, known.map)]
    named = who or terminal.read(_("Who confirms this? Your name or initials: ")).strip()
    words = _("Have you looked at every page of the proof, and is each field right? Type yes: ")
    if not named or not _yes(terminal.read(words)):
        raise NotConfirmed(path=proof)
    one = confirmed(known.map, refused, named[:100], today())
    files.write_map(path, one)
    files.write_proof(known.path, known.data, one)
    confirm_here(path, named[:100], today().isoformat())
    done = _("Confirmed. From now on the packet can fill in this form. Type the name of your case for CASE:")
    return Result(
        data={"form": one.form, "confirmed": True, "refused": [list(key) for key in refused]},
        text=to_type(done, "packet", "CASE", "--blanks", path.parent),
    )


def _right(terminal: Terminal, line: "Line", one: "Map") -> bool:
    number = one.lines.index(line) + 1
    words = _("Field {number} on page {page}. Would it take this? {what}").format(
        number=number, page=line.page, what=_words(line, one)
    )
    terminal.say(words)
    while True:
        typed = terminal.read(_("yes or no: "))
        if _yes(typed):
            return True
        if typed.strip().casefold() in ("no", "n", _("no")):
            return False


def _words(line: "Line", one: "Map") -> str:
    from firstpaper.blanks.mapping import edition_of
    from firstpaper.blanks.wanted import wanted

    edition, _known = edition_of(one.form, one.edition)
    each = next((each for each in wanted(edition) if each.key == line.takes), None) if edition else None
    return f"{each.item} {each.named}".strip() if each else line.takes


def _yes(typed: str) -> bool:
    return typed.strip().casefold() in ("yes", "y", _("yes"))
