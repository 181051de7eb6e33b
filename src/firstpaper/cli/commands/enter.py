"""`firstpaper enter`: take a file of facts into one or many case files, all of it or nothing."""

from collections.abc import Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, NamedTuple

import typer

from firstpaper.cli.batch import for_each
from firstpaper.cli.files.facts import FactsFile
from firstpaper.cli.files.left_open import not_locked, offer_to_erase
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases, SealOption, lock_if_wanted
from firstpaper.cli.hints import command, next_line
from firstpaper.cli.options import CASE_ENDING, HOME, DefaultsOption, JsonOption, OnOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.casefile import OpenCase
    from firstpaper.facts import Case
    from firstpaper.intake.differing import Difference

FilesArgument = Annotated[
    list[Path],
    typer.Argument(
        metavar="[CASE]... FACTS",
        help=_(
            "The case files, and last the file of facts, such as facts.yaml. It may be a table: "
            "things.csv or things.xlsx. Or - for what is piped in. Without a case file: home.case in "
            "this folder."
        ),
        show_default=False,
    ),
]
DryRunOption = Annotated[
    bool, typer.Option("--dry-run", help=_("Show what would change, old and new, and save nothing."))
]
ReplaceOption = Annotated[
    bool,
    typer.Option("--replace", help=_("Take a name or a birth date also where the case has another one.")),
]


EachIntoOption = Annotated[
    Path | None,
    typer.Option(
        "--each-into",
        metavar="FOLDER",
        help=_(
            "Begin a case file in that folder for each file of facts named, under the same name: "
            "26-001.yaml becomes 26-001.case."
        ),
    ),
]


class CaseThere(UserError):
    """There is a case file at {path} already, so nothing was put into it.

    A new case begins in a file of its own. To put facts into the one that is there, name it before the facts.
    """

    code = "case_there"


class NothingTold(UserError):
    """The file {path} tells nothing yet, so no case was begun with it.

    Take away the # in front of each name whose answer you write, and try again.
    """

    code = "nothing_told"


class NoFacts(UserError):
    """There is no file of facts in this command, so nothing was changed.

    Name it last, after the case files, like this:

    firstpaper enter {path} facts.yaml
    """

    code = "no_facts"


class OtherPeople(UserError):
    """{what} would put other people into {path}, so nothing was saved. It would replace: {close}

    A file that was meant for another household does this. To look at what would change, add --dry-run. If it
    is right, add --replace.
    """

    code = "other_people"


class Wanted(NamedTuple):
    """How the facts are to be taken."""

    seal: bool
    dry_run: bool
    replace: bool
    defaults: Path | None


def enter(
    files: FilesArgument,
    seal: SealOption = False,
    dry_run: DryRunOption = False,
    replace: ReplaceOption = False,
    defaults: DefaultsOption = None,
    each_into: EachIntoOption = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Take in answers from a YAML file of facts, or from a table of things or debts."""

    def work(terminal: Terminal) -> Result:
        cases, facts = files[:-1] or [HOME], files[-1]
        if len(files) == 1 and facts.suffix == CASE_ENDING and not each_into:
            raise NoFacts(path=facts)
        passphrases = Passphrases(terminal, passphrase_from)
        if len(cases) > 1 or each_into:
            passphrases.shared()
        day, wanted = filing_day(on), Wanted(seal, dry_run, replace, defaults)

        def begin(path: Path) -> Result:
            begun = each_into / f"{path.stem}{CASE_ENDING}" if each_into else HOME
            if begun.exists():
                raise CaseThere(path=begun)
            return Entry(terminal, FactsFile(path), day, wanted, passphrases, begins=True, alone=False).into(
                begun
            )

        if each_into:
            done = for_each(files, begin)
            return done._replace(text=f"{done.text}\n{_left_open()}") if seal else done
        entry = Entry(terminal, FactsFile(facts), day, wanted, passphrases, len(cases) == 1, len(cases) == 1)
        return for_each(cases, entry.into)

    deliver("enter", as_json, work)


class Entry(NamedTuple):
    """One file of facts, and how it goes into a case. `begins` says that a case may be begun with it.

    `alone` says that it is the only case at hand, so that a person can be asked about it.
    """

    terminal: Terminal
    facts: FactsFile
    day: date
    wanted: Wanted
    passphrases: Passphrases
    begins: bool
    alone: bool = True

    def into(self, path: Path) -> Result:
        """Take the facts into the case at `path`, or show what that would change."""
        if self.wanted.dry_run:
            return self._shown(path)

        from firstpaper.cli.words.entered import entered_data
        from firstpaper.intake.differing import differences

        with self.passphrases.opening(path, begin=self.begins) as opened:
            read, case = self._after(opened.case, new=opened.new)
            found = differences(opened.case, case)
            if opened.new and not found:
                raise NothingTold(path=self.facts.path)
            if not self._may_replace(path, found):
                return Result(data=entered_data(case, read, found), text=_("Nothing was saved."))
            lock_if_wanted(opened, self.passphrases, self.wanted.seal)
            if found or opened.new:
                step = _("entered from {name}").format(name=self.facts.name)
                opened.keep(opened.file.with_case(case).after(step))
            return self._saved(opened, read, found)

    def _after(self, before: "Case", *, new: bool) -> "tuple[Case, Case]":
        """The case as it was read, and as it is kept."""
        from firstpaper.intake.listing import settled

        defaults = self.wanted.defaults
        begun = FactsFile(defaults).onto(before, self.day) if defaults and new else before
        read = self.facts.onto(begun, self.day)
        return read, settled(read)

    def _may_replace(self, path: Path, found: "Sequence[Difference]") -> bool:
        """Whether other people may take the place of those in the case: told by an option, or asked."""
        others = [one for one in found if one.other_person]
        if not others or self.wanted.replace:
            return True
        if not self.terminal.interactive:
            keys = ", ".join(one.key for one in others)
            raise OtherPeople(what=self.facts.path, path=path, close=keys)
        from firstpaper.cli.words.differences import difference_lines

        head = _("{path} has other people. This would be replaced:").format(path=path)
        self.terminal.say("\n".join([head, *difference_lines(others)]))
        typed = self.terminal.read(_("Type replace to save it, or just Enter to save nothing: "))
        self.terminal.line()
        return typed.strip().casefold() in ("replace", _("replace"))

    def _shown(self, path: Path) -> Result:
        """What would change, with nothing saved, and no file begun."""
        from firstpaper.casefile import load
        from firstpaper.cli.words.differences import difference_lines
        from firstpaper.cli.words.entered import entered_data, would_change
        from firstpaper.facts import Case
        from firstpaper.intake.differing import differences

        there = path.exists()
        before = load(path, self.passphrases.tries(path)).case if there else Case.nothing()
        read, case = self._after(before, new=not there)
        found = differences(before, case)
        head = would_change(len(found))
        return Result(
            data=entered_data(case, read, found), text="\n".join([head, *difference_lines(found)]), line=head
        )

    def _saved(self, opened: "OpenCase", read: "Case", found: "Sequence[Difference]") -> Result:
        from firstpaper.cli.words.entered import entered_changes, entered_data, entered_head, entered_line
        from firstpaper.cli.words.listed import left_out, left_out_text

        case, path = opened.case, opened.path
        parts = (
            " ".join(entered_head(case, path)),
            "\n".join(entered_changes(found)),
            " ".join(self._more(opened)),
            left_out_text(left_out(read, case), read),
            next_line(case, path, self.day),
        )
        return Result(
            data=entered_data(case, read, found),
            text="\n\n".join(part for part in parts if part),
            line=entered_line(found),
        )

    def _more(self, opened: "OpenCase") -> Iterator[str]:
        from firstpaper.cli.talk.lock_offer import risky
        from firstpaper.cli.words.entered import set_aside_words
        from firstpaper.intake import set_aside
        from firstpaper.intake.listing import listed

        case = opened.case
        if risky(case) and not opened.sealed:
            words = _("Somebody else may find this file. To lock it with a passphrase, type: {command}")
            yield words.format(command=command("seal", opened.path))
        if opened.sealed and self.alone and (stays := offer_to_erase(self.terminal, self._on_disk())):
            yield not_locked(stays)
        if aside := set_aside(case):
            yield set_aside_words(case, aside)
        if things := len(listed(case)):
            yield _n(
                "{count} fact is listed about what you own, owe and earn.",
                "{count} facts are listed about what you own, owe and earn.",
                things,
            ).format(count=things)

    def _on_disk(self) -> list[Path]:
        return [self.facts.path] if self.facts.path.is_file() else []


def _left_open() -> str:
    return _("The files of facts are not locked. Remove them when nobody needs them any more.")
