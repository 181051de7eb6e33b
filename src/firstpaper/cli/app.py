"""The commands and their one-line helps, in the order a person needs them."""

from collections.abc import Iterator, Mapping
from functools import cache
from importlib import import_module
from typing import Annotated, Any

import typer
from typer.main import get_command

from firstpaper import __version__
from firstpaper.cli.language import is_offered
from firstpaper.cli.long_help import LANGUAGE, NO_PAUSE, Command, Commands
from firstpaper.cli.tab_key import Shell
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _

PROGRAM = "firstpaper"
COMPLETE = "_FIRSTPAPER_COMPLETE"
"""The environment variable by which a shell asks what Tab may complete."""

HELPS = {
    "ask": _("Answer the questions, one at a time. Every answer is saved at once."),
    "change": _("Change one answer, or go through a topic again."),
    "enter": _("Take in answers from a file of facts."),
    "show": _("Read the answers back, in words, on pages or as a file."),
    "check": _("See what stands in the way of a filing, and what to do."),
    "items": _("See what to mark and write in each item of a form."),
    "packet": _("Draft the packet of papers as a PDF."),
    "blank": _("Learn the court's own blank form to fill it in."),
    "compare": _("Check a filled form against a case."),
    "schedule": _("List what you own and owe, one thing at a time."),
    "money": _("Draft private pages on what you own and owe and on support."),
    "record": _("Record what has happened since the filing, or correct it."),
    "dates": _("See every date of the case, its count, and who has to act."),
    "amend": _("Begin an amended petition from the earlier case file."),
    "undo": _("Take back the last answer, or mend a damaged case file."),
    "seal": _("Lock the case file with a passphrase."),
    "unseal": _("Take the passphrase off the case file."),
    "erase": _("Remove the case file, its copies and its drafts."),
    "shelf": _("See how the case files in a folder stand, most urgent first."),
    "paper": _("Print the questions on blank sheets, to answer them by hand."),
    "why": _("Read about an item of a form, a rule or a question."),
    "guide": _("Draft a form explained item by item, to read beside it."),
    "law": _("List every number and rule of law, the oldest check first."),
    "demo": _("Draft the packet of an invented household."),
    "uninstall": _("Learn how to remove the program, and what stays without it."),
}
"""The commands, in the order a person needs them, each with its help in one line."""


class OneByOne(Mapping[str, Any]):
    """The commands by name. The module of one is loaded when it is asked for, and no other."""

    def __getitem__(self, name: str) -> Any:
        if name not in HELPS:
            raise KeyError(name)
        return _command(name)

    def __iter__(self) -> Iterator[str]:
        return iter(HELPS)

    def __len__(self) -> int:
        return len(HELPS)


@cache
def _command(name: str) -> Any:
    function = getattr(import_module(f"firstpaper.cli.commands.{name}"), name)
    alone = typer.Typer(rich_markup_mode=None, add_completion=False, pretty_exceptions_enable=False)
    alone.command(name, cls=Command, help=HELPS[name])(function)
    return get_command(alone)


class Program(Commands):
    """The command line as a whole, with its commands."""

    def __init__(self, **settings: Any) -> None:
        super().__init__(**settings | {"commands": OneByOne()})


app = typer.Typer(
    name="firstpaper",
    cls=Program,
    help=_(
        "Firstpaper drafts the papers that open a divorce, a legal separation or a nullity in California. It "
        "is not a lawyer. It gives information, not advice. The court's self-help center is free."
    ),
    epilog=_("To begin, type: firstpaper ask home.case"),
    rich_markup_mode=None,
    add_completion=False,
    pretty_exceptions_enable=False,
    no_args_is_help=True,
    context_settings={"help_option_names": ["--help", "-h"]},
)


def _show_version(asked: bool) -> None:
    if asked:
        typer.echo(f"firstpaper {__version__}")
        raise typer.Exit


VersionOption = Annotated[
    bool, typer.Option("--version", help=_("Show the version."), callback=_show_version, is_eager=True)
]


NoPauseOption = Annotated[
    bool,
    typer.Option(
        NO_PAUSE, help=_("Show everything at once, without waiting for Enter when the screen is full.")
    ),
]


def _install(shell: Shell | None) -> None:
    """Make Tab complete words in this shell, in its own settings of this account."""
    if shell is None:
        return
    from typer._completion_shared import install

    name, path = install(shell=shell.value, prog_name=PROGRAM, complete_var=COMPLETE)
    typer.echo(
        _("Tab completes words in {shell} from the next window on. It is set in {path}.").format(
            shell=name, path=path
        )
    )
    raise typer.Exit


def _show_completion(shell: Shell | None) -> None:
    if shell is None:
        return
    from typer._completion_shared import get_completion_script

    typer.echo(get_completion_script(prog_name=PROGRAM, complete_var=COMPLETE, shell=shell.value))
    raise typer.Exit


InstallOption = Annotated[
    Shell | None,
    typer.Option(
        "--install-completion",
        help=_("Make the Tab key complete commands, options and names in that shell."),
        callback=_install,
        is_eager=True,
    ),
]
ShowOption = Annotated[
    Shell | None,
    typer.Option(
        "--show-completion",
        help=_("Show the lines for that shell, to put them in place yourself."),
        callback=_show_completion,
        is_eager=True,
    ),
]


LanguageOption = Annotated[
    str | None,
    typer.Option(
        LANGUAGE,
        metavar="LANGUAGE",
        help=_("The language to speak, such as en. A new case keeps it."),
        callback=is_offered,
        is_eager=True,
    ),
]


@app.callback()
def _options(
    version: VersionOption = False,
    no_pause: NoPauseOption = False,
    language: LanguageOption = None,
    install: InstallOption = None,
    show: ShowOption = None,
) -> None:
    """Options of the command line as a whole."""
    Terminal.pausing = not no_pause
