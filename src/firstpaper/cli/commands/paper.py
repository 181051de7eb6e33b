"""`firstpaper paper`: the questions without a case, to print and answer by hand, or as a file to fill in."""

from pathlib import Path
from shlex import quote
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.clock import today
from firstpaper.cli.options import JsonOption
from firstpaper.cli.result import Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from collections.abc import Sequence

    from firstpaper.intake import Topic

SHEETS = Path("question-sheets.pdf")

OutputOption = Annotated[
    Path | None,
    typer.Option(
        "--output",
        "-o",
        metavar="FILE.pdf",
        help=_("Where to put the sheets. Without it: question-sheets.pdf in this folder."),
    ),
]
TopicOption = Annotated[
    list[str] | None,
    typer.Option("--topic", metavar="NAME", help=_("Only this topic, such as court. May be given again.")),
]
ChildrenOption = Annotated[
    int, typer.Option("--children", metavar="NUMBER", help=_("For how many children to leave room."))
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


class FactsThere(UserError):
    """The file {path} is already there, and somebody may have written answers in it.

    It was left alone. Choose another name. Or remove that file first, if nobody needs it.
    """

    code = "facts_there"


def paper(
    output: OutputOption = None,
    topic: TopicOption = None,
    children: ChildrenOption = 2,
    facts: FactsOption = None,
    as_json: JsonOption = False,
) -> None:
    """Print the questions on blank sheets, or as a file of facts to fill in."""
    deliver("paper", as_json, lambda _terminal: _paper(output, topic or [], children, facts))


def _paper(output: Path | None, names: list[str], children: int, facts: Path | None) -> Result:
    from firstpaper.facts.children import MOST_CHILDREN

    if not 0 <= children <= MOST_CHILDREN:
        raise TooManyChildren(count=MOST_CHILDREN)
    topics = _topics(names)
    sheets = output or (None if facts else SHEETS)
    said = [
        *([_put_facts(facts, topics, children)] if facts else []),
        *([_put_sheets(sheets, topics, children)] if sheets else []),
    ]
    return Result(
        data={
            "pdf": str(sheets) if sheets else None,
            "facts": str(facts) if facts else None,
            "topics": [topic.name for topic in topics],
            "children": children,
        },
        text="\n\n".join(said),
    )


def _topics(names: list[str]) -> "Sequence[Topic]":
    from firstpaper.intake import bank

    known = {topic.name: topic for topic in bank().topics}
    wanted = [name.strip().lower() for name in names]
    for name in wanted:
        if name not in known:
            raise NoSuchTopic(what=name, close=", ".join(known))
    return [topic for name, topic in known.items() if name in wanted or not wanted]


def _put_sheets(path: Path, topics: "Sequence[Topic]", children: int) -> str:
    from firstpaper.cli.output import PDF, write_output
    from firstpaper.packet.blank import blank_sheets

    write_output(path, blank_sheets(topics, {"child": children}, today()), PDF)
    words = _(
        "The question sheets are in {path}. Once printed, keep them where the other person cannot find them."
    )
    return words.format(path=path)


def _put_facts(path: Path, topics: "Sequence[Topic]", children: int) -> str:
    from firstpaper.casefile import save
    from firstpaper.packet.blank import blank_facts

    if path.exists() and (not path.is_file() or path.stat().st_size):
        raise FactsThere(path=path)
    save(path, blank_facts(topics, {"child": children}, today()).encode())
    words = _("The file of facts is {path}. Fill it in with a text editor. Then type:").format(path=path)
    return f"{words}\n  firstpaper enter home.case {quote(str(path))}"
