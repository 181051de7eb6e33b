"""`firstpaper show`: the answers of a case, to read back, as a file of facts, or to print and sign."""

from collections.abc import Iterator
from datetime import date
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.files.case import case_at
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.hints import next_line
from firstpaper.cli.options import HOME, HomeArgument, JsonOption, OnOption, TopicOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.cli.terminal import Terminal
from firstpaper.locale import _, _n

if TYPE_CHECKING:
    from firstpaper.facts import Case

YamlOption = Annotated[
    Path | None,
    typer.Option(
        "--yaml",
        metavar="FILE.yaml",
        help=_("Write the answers as a file of facts, which enter takes back. - is standard output."),
    ),
]
PdfOption = Annotated[
    Path | None,
    typer.Option("--pdf", metavar="FILE.pdf", help=_("Also make pages to read through and sign.")),
]


def show(
    case: HomeArgument = HOME,
    topic: TopicOption = None,
    yaml: YamlOption = None,
    pdf: PdfOption = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Show the answers in words, topic by topic."""

    def work(terminal: Terminal) -> Result:
        from firstpaper.cli.files.output import one_pipe

        one_pipe(yaml, pdf)
        facts = case_at(case, Passphrases(terminal, passphrase_from))
        day = filing_day(on)
        names = [name.strip().lower() for name in topic or []]
        said = [*([_put_facts(facts, yaml)] if yaml else []), *([_put_pages(facts, pdf, day)] if pdf else [])]
        text = "\n\n".join(said) or "\n\n".join([*_topics(facts, names), next_line(facts, case, day)])
        return Result(data=_data(facts, names, yaml, pdf), text=text)

    deliver("show", as_json, work)


def _topics(case: "Case", names: list[str]) -> Iterator[str]:
    """A paragraph a topic, then what is listed, what was recorded, and how much is open."""
    from firstpaper.cli.commands.paper import NoSuchTopic
    from firstpaper.cli.talk.review import answered, still_open
    from firstpaper.cli.words.agenda import event_lines
    from firstpaper.cli.words.listed import list_text
    from firstpaper.intake.listing import listed

    told = answered(case)
    known_names = list(dict.fromkeys(one.topic.name for one in told))
    for name in names:
        if name not in known_names:
            raise NoSuchTopic(what=name, close=", ".join(known_names) or _("none yet"))
    wanted = [one for one in told if not names or one.topic.name in names]
    for title, group in groupby(wanted, key=lambda one: _(one.topic.title)):
        yield "\n".join([title, *(f"  {line}" for one in group for line in _lines(case, one))])
    if not names and listed(case):
        yield list_text(case)
    if not names:
        yield from event_lines(case)
    if left := len(still_open(case)):
        yield _n("{count} question is still open.", "{count} questions are still open.", left).format(
            count=left
        )


def _lines(case: "Case", one: object) -> Iterator[str]:
    from firstpaper.intake import Asked, echo

    assert isinstance(one, Asked)
    yield one.head
    yield from (f"  {line}" for line in echo(one, case.fact(one.key)).splitlines())


def _put_facts(case: "Case", path: Path) -> str:
    from firstpaper.cli.files.output import write_facts
    from firstpaper.intake.writing import facts_text

    write_facts(path, facts_text(case))
    return _(
        "The answers are in {path}, as a file of facts. It is not locked: keep it safe, and remove it "
        "when you are done."
    ).format(path=path)


def _put_pages(case: "Case", path: Path, day: date) -> str:
    from firstpaper.cli.files.output import PDF, write_output
    from firstpaper.packet.read_back import read_back

    write_output(path, read_back(case, day), PDF)
    return _("The pages to read through and sign are in {path}. They are private.").format(path=path)


def _data(case: "Case", names: list[str], yaml: Path | None, pdf: Path | None) -> dict[str, object]:
    from firstpaper.cli.talk.review import answered, still_open
    from firstpaper.intake import echo
    from firstpaper.intake.events import asking_anything, recorded
    from firstpaper.intake.listing import listed

    told = {one.key: one for one in answered(case)}
    told |= {key: one for key in (*listed(case), *recorded(case)) if (one := asking_anything(key, case))}
    return {
        "answers": [
            {"key": key, "topic": one.topic.name, "short": one.head, "answer": echo(one, case.fact(key))}
            for key, one in told.items()
            if not names or one.topic.name in names
        ],
        "open_questions": [one.key for one in still_open(case)],
        "yaml": str(yaml) if yaml else None,
        "pdf": str(pdf) if pdf else None,
    }
