"""`firstpaper paper`: the questions without a case, to print and answer by hand, or as a file to fill in."""

from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import to_type
from firstpaper.cli.options import HOME, JsonOption, TopicOption, case_to_read, filing_day, pdf_option
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from collections.abc import Sequence

    from firstpaper.facts import Case
    from firstpaper.intake import Topic


class For(StrEnum):
    """The kinds of case for which sheets can be printed, as they are typed."""

    DIVORCE = "divorce"
    SEPARATION = "separation"
    NULLITY = "nullity"


_KINDS = {For.DIVORCE: "DISSOLUTION", For.SEPARATION: "LEGAL_SEPARATION", For.NULLITY: "NULLITY"}

SHEETS = Path("question-sheets.pdf")

CaseArgument = Annotated[
    Path | None,
    case_to_read(_("A case file: then only what it leaves open is printed. Without one: every question.")),
]
OutputOption = Annotated[
    Path | None, pdf_option(_("Where to put the sheets. Without it: question-sheets.pdf in this folder."))
]
ChildrenOption = Annotated[
    int, typer.Option("--children", metavar="NUMBER", help=_("For how many children to leave room."))
]
ThingsOption = Annotated[
    int, typer.Option("--things", metavar="NUMBER", help=_("For how many things you own to leave room."))
]
DebtsOption = Annotated[
    int, typer.Option("--debts", metavar="NUMBER", help=_("For how many debts to leave room."))
]
ForOption = Annotated[
    For | None,
    typer.Option(
        "--for", help=_("Only what the usual case of this kind is asked. The rest is asked on the computer.")
    ),
]
NoChildrenOption = Annotated[
    bool, typer.Option("--no-children", help=_("Leave out what is asked about children you have together."))
]
FactsOption = Annotated[
    Path | None,
    typer.Option(
        "--facts",
        metavar="FILE.yaml",
        help=_("Make a file of facts to fill in and enter."),
    ),
]


class NoSuchTopic(UserError):
    """There is no topic called {what}.

    These are the topics: {close}.
    """

    code = "no_such_topic"


class TooManyChildren(UserError):
    """There can be room for 0 to {count} children, and not for more or less.

    Please give a number in between, like this: --children 3
    """

    code = "too_many_children"


class TooManyListed(UserError):
    """There can be room for 0 to {count} things and as many debts, and not for more or less.

    Please give a number in between, like this: --things 5 --debts 3
    """

    code = "too_many_listed"


def paper(
    case: CaseArgument = None,
    output: OutputOption = None,
    topic: TopicOption = None,
    children: ChildrenOption = 2,
    things: ThingsOption = 0,
    debts: DebtsOption = 0,
    facts: FactsOption = None,
    kind: ForOption = None,
    no_children: NoChildrenOption = False,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Print the questions on blank sheets, or as a file of facts to fill in."""
    room = {"child": 0 if no_children else children, "asset": things, "debt": debts}

    def work(terminal: Terminal) -> Result:
        told = case_at(case, Passphrases(terminal, passphrase_from)) if case else None
        return _paper(case, told, output, topic or [], room, facts, kind)

    deliver("paper", as_json, work)


def _paper(
    path: Path | None,
    case: "Case | None",
    output: Path | None,
    names: list[str],
    room: dict[str, int],
    facts: Path | None,
    kind: For | None,
) -> Result:
    from firstpaper.cli.files.output import one_pipe
    from firstpaper.intake.kinds import ROWS

    if not 0 <= room["child"] <= ROWS["child"]:
        raise TooManyChildren(count=ROWS["child"])
    if not all(0 <= room[group] <= ROWS[group] for group in ("asset", "debt")):
        raise TooManyListed(count=ROWS["asset"])
    topics = _topics(names, room)
    if case:
        topics = _left(case, topics)
        if not topics:
            return Result(
                data=_data(None, None, [], room), text=_("Nothing is open in {path}.").format(path=path)
            )
    named = {topic.questions[0].each for topic in topics if names} - {None, "child"}
    room |= {each: max(1, room[each]) for each in named if each}
    sheets = output or (None if facts else SHEETS)
    one_pipe(sheets, facts)
    said = [
        *([_put_facts(path, case, facts, topics, room)] if facts else []),
        *([_put_sheets(case, sheets, topics, room, kind)] if sheets else []),
    ]
    return Result(data=_data(sheets, facts, topics, room), text="\n\n".join(said))


def _data(
    sheets: Path | None, facts: Path | None, topics: "Sequence[Topic]", room: dict[str, int]
) -> dict[str, object]:
    return {
        "pdf": str(sheets) if sheets else None,
        "facts": str(facts) if facts else None,
        "topics": [topic.name for topic in topics],
        "children": room["child"],
        "things": room["asset"],
        "debts": room["debt"],
    }


def _topics(names: list[str], room: dict[str, int]) -> "Sequence[Topic]":
    """The topics named. Without names those of the interview, and those for which there is room."""
    from firstpaper.intake import bank
    from firstpaper.intake.loading import listing

    listed = listing().topics
    known = {topic.name: topic for topic in (*bank().topics, *listed)}
    wanted = [name.strip().lower() for name in names]
    for name in wanted:
        if name not in known:
            raise NoSuchTopic(what=name, close=", ".join(known))
    if wanted:
        return [topic for name, topic in known.items() if name in wanted]
    return [*bank().topics, *(topic for topic in listed if _has_room(topic, room))]


def _left(case: "Case", topics: "Sequence[Topic]") -> "list[Topic]":
    """The topics in which the case leaves something open."""
    from firstpaper.intake.blank import open_groups

    return [topic for topic in topics if any(open_groups(topic, case))]


def _has_room(topic: "Topic", room: dict[str, int]) -> bool:
    """Whether there is room for the rows it is about; for what is asked once, whether there is for any."""
    each = topic.questions[0].each
    return bool(room[each] if each else room["asset"] or room["debt"])


def _put_sheets(
    case: "Case | None", path: Path, topics: "Sequence[Topic]", room: dict[str, int], kind: For | None
) -> str:
    from firstpaper.cli.files.output import PDF, write_output
    from firstpaper.facts.choices import Kind
    from firstpaper.intake.to_come import usual
    from firstpaper.packet.blank import blank_sheets, open_question_sheets

    day = filing_day(None)
    asked = usual(Kind[_KINDS[kind]], children=room["child"] > 0) if kind else None
    drawn = open_question_sheets(topics, case, day) if case else blank_sheets(topics, room, day, asked)
    write_output(path, drawn, PDF)
    words = _(
        "The question sheets are in {path}. Once printed, keep them where the other person cannot find them."
    )
    return words.format(path=path)


def _put_facts(
    of: Path | None, case: "Case | None", path: Path, topics: "Sequence[Topic]", room: dict[str, int]
) -> str:
    from firstpaper.cli.files.output import write_facts
    from firstpaper.packet.blank import blank_facts, open_facts

    day = filing_day(None)
    write_facts(path, open_facts(topics, case, day) if case else blank_facts(topics, room, day))
    words = _("The file of facts is {path}. Fill it in with a text editor. Then type:").format(path=path)
    return to_type(words, "enter", of or HOME, path)
