"""`firstpaper why`: what a rule says and where it comes from, or why a question is asked."""

from datetime import date
from typing import Annotated

import typer

from firstpaper.cli.options import JsonOption, OnOption, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _

IdArgument = Annotated[
    str,
    typer.Argument(
        metavar="ID",
        help=_("The name of a rule, such as residence.state, or of an answer, such as petitioner.name."),
        show_default=False,
    ),
]


class NoSuchPage(UserError):
    """There is no rule and no question called {id}.

    Close to it: {close}. The names stand beside each point that "firstpaper check" shows.
    """

    code = "no_such_page"


def why(name: IdArgument, on: OnOption = None, as_json: JsonOption = False) -> None:
    """Explain a rule, or why a question is asked."""
    deliver("why", as_json, lambda _terminal: _why(name.strip(), filing_day(on)))


def _why(name: str, day: date) -> Result:
    from firstpaper.cli.explaining import question_data, question_page, rule_data, rule_page
    from firstpaper.facts import Case
    from firstpaper.intake import asking
    from firstpaper.law.register import all_rules

    if rule := all_rules().get(name):
        return Result(data=rule_data(rule), text=rule_page(rule))
    if question := asking(name, Case.nothing()):
        return Result(
            data=question_data(question, day), text=f"{question.ask}\n\n{question_page(question, day)}"
        )
    raise NoSuchPage(id=name, close=_close(name))


def _close(name: str) -> str:
    from firstpaper.cli.suggesting import closest
    from firstpaper.intake import bank
    from firstpaper.law.register import all_rules

    keys = [question.key for topic in bank().topics for question in topic.questions]
    return closest(name, [*all_rules(), *keys])
