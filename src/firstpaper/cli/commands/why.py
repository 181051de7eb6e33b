"""`firstpaper why`: what a rule says and where it comes from, or why a question is asked."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli.options import JsonOption, OnOption, filing_day
from firstpaper.cli.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.result import Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case

IdArgument = Annotated[
    str,
    typer.Argument(
        metavar="ID",
        help=_("The name of a rule, such as residence.state, or of an answer, such as petitioner.name."),
        show_default=False,
    ),
]

CaseToExplain = Annotated[
    Path | None,
    typer.Argument(
        metavar="CASE",
        help=_("A case file, such as home.case. With it you also read what the rule says of that case."),
        show_default=False,
    ),
]


class NoSuchPage(UserError):
    """There is no rule and no question called {id}.

    Close to it: {close}. The command check shows the name of each rule beside what it says.
    """

    code = "no_such_page"


def why(
    name: IdArgument,
    path: CaseToExplain = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Explain a rule, or why a question is asked."""
    deliver(
        "why",
        as_json,
        lambda terminal: _why(name.strip(), path, filing_day(on), Passphrases(terminal, passphrase_from)),
    )


def _why(name: str, path: Path | None, day: date, passphrases: Passphrases) -> Result:
    from firstpaper.cli.explaining import question_data, question_page, rule_data, rule_page
    from firstpaper.cli.opening import case_at
    from firstpaper.facts import Case
    from firstpaper.intake import asking
    from firstpaper.law.register import all_rules

    rule = all_rules().get(name)
    if rule is None and asking(name, Case.nothing()) is None:
        raise NoSuchPage(id=name, close=_close(name))
    case = case_at(path, passphrases) if path else None
    if rule:
        data, text = rule_data(rule), rule_page(rule)
        return _with_findings(data, text, name, case, day) if case else Result(data=data, text=text)
    asked = asking(name, case or Case.nothing())
    assert asked
    data, page = question_data(asked, day), question_page(asked, day)
    return Result(data=data, text="\n\n".join([asked.ask, *_answer(name, case), page]))


def _with_findings(data: dict[str, object], page: str, name: str, case: "Case", day: date) -> Result:
    from firstpaper.cli.explaining import in_this_case
    from firstpaper.cli.findings import finding_data
    from firstpaper.intake import standing
    from firstpaper.law.register import findings

    stands = standing(case)
    found = findings(stands, day, [name])
    return Result(
        data={**data, "on": day, "findings": [finding_data(one) for one in found]},
        text=f"{page}\n\n{in_this_case(stands, found, day)}",
    )


def _answer(name: str, case: "Case | None") -> list[str]:
    from firstpaper.intake import echo

    if case is None:
        return []
    return [_("Your answer: {answer}").format(answer=echo(name, case.fact(name)))]


def _close(name: str) -> str:
    from firstpaper.cli.suggesting import closest
    from firstpaper.intake import bank
    from firstpaper.law.register import all_rules

    keys = [question.key for topic in bank().topics for question in topic.questions]
    return closest(name, [*all_rules(), *keys])
