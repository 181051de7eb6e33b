"""`firstpaper why`: an item of a form explained, what a rule says, or why a question is asked."""

from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from firstpaper.cli import tab_key
from firstpaper.cli.files.passphrases import PassphraseOption, Passphrases
from firstpaper.cli.options import JsonOption, OnOption, case_to_read, filing_day
from firstpaper.cli.result import Result, deliver
from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.facts import Case
    from firstpaper.forms.explained_names import Entry

IdArgument = Annotated[
    str,
    typer.Argument(
        metavar="ID",
        help=_(
            'An item of a form, such as 2a or "FL-105 homes". Or the name of a rule, such as '
            "residence.state, of an answer, such as petitioner.name, or of a topic, such as residence."
        ),
        show_default=False,
        autocompletion=tab_key.pages,
    ),
]

CaseToExplain = Annotated[
    Path | None,
    case_to_read(_("A case file, such as home.case. With it you also read how that case stands.")),
]


class NoSuchPage(UserError):
    """There is no item, no rule and no question called {id}.

    Close to it: {close}. An item goes by its number, such as 2a. The command check shows the name of each
    rule beside what it says.
    """

    code = "no_such_page"


def why(
    name: IdArgument,
    path: CaseToExplain = None,
    on: OnOption = None,
    passphrase_from: PassphraseOption = None,
    as_json: JsonOption = False,
) -> None:
    """Explain an item of a form, a rule, or why a question is asked."""
    deliver(
        "why",
        as_json,
        lambda terminal: _why(name.strip(), path, filing_day(on), Passphrases(terminal, passphrase_from)),
    )


def _why(name: str, path: Path | None, day: date, passphrases: Passphrases) -> Result:
    from firstpaper.forms.explained_names import entries_called

    entries = () if _has_a_page_of_its_own(name) else entries_called(name)
    if entries:
        return _of_items(entries, path, day, passphrases)
    return _of_rule_or_question(name, path, day, passphrases)


def _of_items(entries: "tuple[Entry, ...]", path: Path | None, day: date, passphrases: Passphrases) -> Result:
    """The page of an item, or the list of several."""
    from firstpaper.cli.law_day import law_as_of
    from firstpaper.cli.words.why_item import item_list, item_list_data, item_page, item_page_data

    if len(entries) > 1:
        return Result(data=item_list_data(entries), text=item_list(entries))
    (entry,) = entries
    with law_as_of(day):
        stands = _item_in_case(entry, path, day, passphrases) if path else Result()
        data = {**item_page_data(entry, day), **stands.data}
        return Result(data=data, text=item_page(entry, day, stands.text))


def _item_in_case(entry: "Entry", path: Path, day: date, passphrases: Passphrases) -> Result:
    """How an item stands in a case, as a part of its page."""
    from firstpaper.cli.files.case import case_at
    from firstpaper.cli.words.why_item import in_this_case, in_this_case_data
    from firstpaper.forms.explained_case import in_case
    from firstpaper.intake import standing

    case = standing(case_at(path, passphrases))
    stands = in_case(entry.read(), case, day)
    data = in_this_case_data(stands, case, day)
    return Result(data=data, text=in_this_case(stands, case, day, path))


def _has_a_page_of_its_own(name: str) -> bool:
    """Whether a rule or a question has the name. Only one with a dot can be meant; the rest is not loaded."""
    if "." not in name:
        return False
    from firstpaper.facts import Case
    from firstpaper.intake import asking
    from firstpaper.law.register import named_rule

    return named_rule(name) is not None or asking(name, Case.nothing()) is not None


def _of_rule_or_question(name: str, path: Path | None, day: date, passphrases: Passphrases) -> Result:
    from firstpaper.cli.files.case import case_at
    from firstpaper.cli.words.why import question_data, question_page, rule_data, rule_page
    from firstpaper.facts import Case
    from firstpaper.intake import asking
    from firstpaper.law.register import named_rule

    rule = named_rule(name)
    if rule is None and asking(name, Case.nothing()) is None:
        raise NoSuchPage(id=name, close=_close(name))
    case = case_at(path, passphrases) if path else None
    if rule:
        data, text = rule_data(rule), rule_page(rule)
        return _with_findings(data, text, rule.id, case, day) if case else Result(data=data, text=text)
    asked = asking(name, case or Case.nothing())
    assert asked
    data, page = question_data(asked, day), question_page(asked, day)
    return Result(data=data, text="\n\n".join([asked.ask, *_answer(asked.key, case), page]))


def _with_findings(data: dict[str, object], page: str, name: str, case: "Case", day: date) -> Result:
    from firstpaper.cli.words.findings import finding_data
    from firstpaper.cli.words.why import in_this_case
    from firstpaper.intake import standing
    from firstpaper.law.register import findings

    stands = standing(case)
    found = findings(stands, day, [name])
    return Result(
        data={**data, "on": day, "findings": [finding_data(one) for one in found]},
        text=f"{page}\n\n{in_this_case(stands, found, day)}",
    )


def _answer(key: str, case: "Case | None") -> list[str]:
    from firstpaper.intake import echo

    if case is None:
        return []
    return [_("Your answer: {answer}").format(answer=echo(key, case.fact(key)))]


def _close(name: str) -> str:
    from firstpaper.cli.close_names import closest
    from firstpaper.forms.explained_names import names
    from firstpaper.intake import bank
    from firstpaper.law.register import all_rules

    keys = [question.key for topic in bank().topics for question in topic.questions]
    return closest(name, [*all_rules(), *keys, *names()])
