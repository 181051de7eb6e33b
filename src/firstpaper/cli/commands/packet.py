"""`firstpaper packet`: the sheets, as a PDF and for the screen."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.packet import LATER_ENDING, Only, Wanted, draft, fill_in, wanted_now
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.files.pdf import files_for, refuse_locked_screen
from firstpaper.cli.hints import next_line, to_type
from firstpaper.cli.language import is_offered
from firstpaper.cli.options import (
    HOME,
    CasesArgument,
    HtmlOption,
    JsonOption,
    OnOption,
    RequireCompleteOption,
    SealPdfOption,
    filing_day,
    pdf_option,
)
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import ENGLISH, _, _n

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from firstpaper.facts import Case

TOLD_EVERY = 10
"""After how many packets it is said how many are done."""

PdfOption = Annotated[
    Path | None, pdf_option(_("Where to put the PDF. Without it: beside the case file, under the same name."))
]


PartOption = Annotated[
    Wanted | None,
    typer.Option(
        "--part",
        help=_(
            "first: all that you need to file. later: what comes after it. Without it: first, and later once "
            "the filing is recorded."
        ),
        show_choices=True,
    ),
]
AmendsOption = Annotated[
    Path | None,
    typer.Option(
        "--amends",
        metavar="EARLIER.case",
        help=_("The case file of the earlier petition. A sheet then shows what changes."),
    ),
]


OnlyOption = Annotated[
    Only | None,
    typer.Option(
        "--only",
        help=_(
            "Draft one kind of sheet alone: read, copy (the worksheets), file (what goes to the court), "
            "private, or hand-off (for the lawyer)."
        ),
        show_choices=True,
    ),
]
SplitOption = Annotated[
    Path | None,
    typer.Option(
        "--split",
        metavar="FOLDER",
        help=_("Also put each kind of sheet into a PDF of its own in this folder, to print them apart."),
    ),
]
OwnSheetOption = Annotated[
    list[Path] | None,
    typer.Option(
        "--sheet",
        metavar="FILE.html",
        help=_("Add a sheet of your own, such as a letter of your clinic. May be given again."),
    ),
]


BlanksOption = Annotated[
    Path | None,
    typer.Option(
        "--blanks", metavar="FOLDER", help=_("Fill in the court's own forms whose proof was confirmed there.")
    ),
]
FlatOption = Annotated[
    bool, typer.Option("--flat", help=_("Fill them in so that nobody can change the fields any more."))
]


AllOption = Annotated[
    Path | None,
    typer.Option(
        "--all",
        metavar="FOLDER",
        help=_("Draft the packets of all case files there, each beside its case file, on every core."),
    ),
]
AgainOption = Annotated[
    bool, typer.Option("--again", help=_("With --all: also those that were drafted since their last change."))
]


HandOffLanguageOption = Annotated[
    str,
    typer.Option(
        "--hand-off-language",
        metavar="LANGUAGE",
        help=_("The language of the sheet for a lawyer or helper, such as en. Without it: English."),
        callback=is_offered,
        show_default=False,
    ),
]


class OwnSheetUnreadable(UserError):
    """The sheet {path} could not be opened: {reason}.

    Nothing was drafted. Check the name and the folder, and try again.
    """

    code = "own_sheet_unreadable"


class AmendsNothing(UserError):
    """This case is not marked as an amended petition, so nothing was drafted.

    Only an amended petition has an earlier one to be held against. To begin one, use the command amend. Or
    leave out --amends.
    """

    code = "amends_nothing"


class OneCaseOnly(UserError):
    """The option {what} is for one case file, so nothing was drafted.

    The packets of many are put beside their case files, each under its name. Leave the option out, or name
    one case file.
    """

    code = "one_case_only"


class NoCasesThere(UserError):
    """There is no case file in {folder}, so nothing was drafted.

    Check the name of the folder. To look into it, type:

    firstpaper shelf {folder}
    """

    code = "no_cases_there"


class OtherDraft(UserError):
    """The file {path} is the draft of another case, so nothing was drafted over it.

    Give this packet another name, or leave out --output: then it goes beside its own case file.
    """

    code = "other_draft"


def packet(
    cases: CasesArgument = None,
    every: AllOption = None,
    again: AgainOption = False,
    output: PdfOption = None,
    html: HtmlOption = None,
    part: PartOption = None,
    seal: SealPdfOption = False,
    amends: AmendsOption = None,
    sheet: OwnSheetOption = None,
    blanks: BlanksOption = None,
    flat: FlatOption = False,
    only: OnlyOption = None,
    split: SplitOption = None,
    hand_off_language: HandOffLanguageOption = ENGLISH,
    require_complete: RequireCompleteOption = False,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Draft the packet: what to mark and write on each form, and what to do next."""

    def one(terminal: Terminal) -> Result:
        from firstpaper.cli.files.blanks import all_learned, as_measured
        from firstpaper.cli.talk.lock_offer import after_printing, offer_to_lock_draft

        case = cases[0] if cases else HOME
        refuse_locked_screen(seal, html)
        passphrases = Passphrases(terminal, passphrase_from)
        facts = case_at(case, passphrases)
        earlier = _earlier(amends, facts, passphrases) if amends else None
        wanted = part or wanted_now(facts)
        if output:
            _ask_before_replacing(terminal, case, output)
        locked = seal or (html is None and offer_to_lock_draft(terminal, facts))
        files = files_for(output or _beside(case, wanted), html, locked, passphrases, facts)
        day = filing_day(on)
        learned = all_learned(blanks) if blanks else ()
        with as_measured(learned):
            done = fill_in(facts, day, wanted, learned, case, flat=flat) if learned else ()
            result = draft(
                facts,
                day,
                files,
                wanted,
                earlier,
                _own_sheets(sheet or []),
                done,
                only,
                split,
                hand_off_language,
                require_complete=require_complete,
            )
        after = [
            *_to_confirm(blanks),
            *after_printing(facts, case, files.pdf),
            *_rest(facts, case, wanted, day),
        ]
        return result._replace(text="\n\n".join([result.text, *after]))

    def many(terminal: Terminal) -> Result:
        given = {
            "--output": output,
            "--html": html,
            "--part": part,
            "--amends": amends,
            "--sheet": sheet,
            "--blanks": blanks,
            "--only": only,
            "--split": split,
        }
        if wrong := next((name for name, value in given.items() if value), None):
            raise OneCaseOnly(what=wrong)
        files = [*(cases or []), *(_cases_in(every) if every else [])]
        return _draft_many(
            terminal,
            files,
            filing_day(on),
            Passphrases(terminal, passphrase_from),
            seal,
            again,
            require_complete,
        )

    deliver("packet", as_json, many if every or len(cases or []) > 1 else one)


def _cases_in(folder: Path) -> list[Path]:
    from firstpaper.cli.files.shelf import ENDING, files_in

    try:
        found = [path for path in files_in(folder) if path.suffix == ENDING]
    except OSError:
        found = []
    if not found:
        raise NoCasesThere(folder=folder)
    return found


def _draft_many(
    terminal: Terminal,
    files: "Sequence[Path]",
    day: date,
    passphrases: Passphrases,
    seal: bool,
    again: bool,
    require_complete: bool,
) -> Result:
    from firstpaper.cli.files.left_open import is_locked
    from firstpaper.cli.files.packets import Drafting, draft_all
    from firstpaper.facts import Case

    lock = passphrases.choose_one(Case.nothing()) if seal and not passphrases.from_a_file else None
    known = list(passphrases.given())
    if seal and lock is None:
        lock = passphrases.choose_one(Case.nothing())
    if sealed := sum(map(is_locked, files)):
        known += passphrases.ask_for_many(sealed)
    done = draft_all(files, Drafting(day, tuple(known), lock, again, require_complete), _telling(terminal))
    if sealed and lock is None:
        return done._replace(text=f"{done.text}\n\n{_unlocked(sealed)}")
    return done


def _unlocked(sealed: int) -> str:
    return _n(
        "{count} of these cases is locked, but its packet is not. With --seal the packets are locked too.",
        "{count} of these cases are locked, but their packets are not. With --seal the packets are "
        "locked too.",
        sealed,
    ).format(count=sealed)


def _telling(terminal: Terminal) -> "Callable[[int, int], None]":
    """Says on the way how many packets are done."""

    def told(done: int, count: int) -> None:
        if count > TOLD_EVERY and done % TOLD_EVERY == 0:
            terminal.line(_("{done} of {count} are done.").format(done=done, count=count))

    return told


def _ask_before_replacing(terminal: Terminal, case: Path, output: Path) -> None:
    """Raise OtherDraft where a draft of another case lies there, unless the person says to replace it."""
    from firstpaper.cli.files.output import LATER, PRIVATE, is_pdf
    from firstpaper.cli.files.shelf import ENDING

    stem = output.stem.removesuffix(LATER).removesuffix(PRIVATE)
    other = output.with_name(stem + ENDING)
    if not is_pdf(output) or not other.exists() or (case.exists() and other.samefile(case)):
        return
    if terminal.interactive:
        words = _(
            "{path} is the draft of another case. Type replace to write over it, or just Enter to stop: "
        )
        typed = terminal.read(words.format(path=output))
        terminal.line()
        if typed.strip().casefold() in ("replace", _("replace")):
            return
    raise OtherDraft(path=output)


def _own_sheets(paths: "Sequence[Path]") -> dict[str, str]:
    """The text of the sheets that somebody brings, by name."""
    from firstpaper.cli.files.plain_text import plain_text
    from firstpaper.packet.own_sheets import LONGEST

    return {str(path): plain_text(path, LONGEST + 1, OwnSheetUnreadable) for path in paths}


def _beside(case: Path, wanted: Wanted) -> Path:
    from firstpaper.cli.files.output import beside

    return beside(case, LATER_ENDING if wanted is Wanted.LATER else ".pdf")


def _rest(case: "Case", path: Path, wanted: Wanted, day: date) -> list[str]:
    """The next step from here: to file, where what comes before that is drafted and nothing is left of it."""
    from firstpaper.packet.next_step import next_step

    step = next_step(case, day)
    if wanted is Wanted.LATER or step.command != "packet" or step.more:
        return [next_line(case, path, day)]
    words = _(
        "Next: copy it onto the court's forms, and file them with the clerk. When the court has them, record "
        "that, and make the packet again:"
    )
    return [to_type(words, "record", path, _filing(case))]


def _to_confirm(folder: Path | None) -> list[str]:
    """What keeps a blank of the folder from being filled in: nobody has looked at its proof here."""
    from firstpaper.cli.files.blanks import to_confirm

    words = _("Not filled in, since nobody has confirmed here what its fields take. Look at the proof, then:")
    return [to_type(words, "blank", path, "--confirm") for path in (to_confirm(folder) if folder else ())]


def _filing(case: "Case") -> str:
    """What `record` calls the filing of this petition."""
    from firstpaper.facts import known

    return "amended" if known(case.matter.amended) else "filed"


def _earlier(path: Path, case: "Case", passphrases: Passphrases) -> "Case":
    """The case of the petition that this one replaces."""
    from firstpaper.facts import known

    if known(case.matter.amended) is not True:
        raise AmendsNothing
    return case_at(path, passphrases)
