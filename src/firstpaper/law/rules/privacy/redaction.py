"""Numbers that do not belong in court papers."""

import re
from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow, SeparateHow
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

LINES = ("property.separate_petitioner", "property.separate_respondent", "property.community_items")
HOW = ("property.separate_how", "property.community_how")
DETAILED = frozenset({SeparateHow.LIST, SeparateHow.FL_160, CommunityHow.LIST, CommunityHow.FL_160})

_MONEY_OR_ZIP = re.compile(r"\$ ?\d[\d,.]*|\b[A-Z]{2},? \d{5}(?:-\d{4})?\b")
_LONGER_THAN_FOUR = re.compile(r"(?<![\d,.])\d{5,}(?![\d,])")


@rule(
    "Numbers that do not belong in court papers",
    cite=("Cal. Rules of Court, rule 1.201", "Fam. Code 2024.5", "Fam. Code 2024.6"),
    since=date(2015, 1, 1),
    not_modelled="Papers you write yourself. Forms on support collection, where the number may be needed.",
)
def redaction(case: Case, on: date) -> list[Found]:
    """Anybody can read the court file, so no social security number and no full account number goes in it.

    What the rules say. Leave social security numbers out. If an account has to be named, give only the last
    four digits. That is your duty: the clerk does not check. In a divorce, separation or nullity you may
    black out a social security number on any paper you file. The forms for collecting support are the
    exception.

    What the rule does not cover. Birth dates and the children's names. The petition has to state them.

    One more way. On request, the court must seal a paper that lists what you own and owe and tells where it
    is or how to find it. You can ask for that without a hearing.

    How we check. This program takes no social security number and no number of seven digits or more. Here
    we look at your lists of property for a number longer than four digits. A price or a ZIP code may be one
    too, and is fine.

    An example. Write "Savings, Example Bank, ending 4821", and not the whole number.

    What to do. Look through every paper before you hand it in, above all bank papers you add yourself.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    detailed = bool(DETAILED & {known(case.fact(key)) for key in HOW})
    with_numbers = tuple(key for key, lines in _written(case, detailed) if any(map(_long_number, lines)))
    if with_numbers:
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("A list of property has a number with more than four digits."),
            _("If it is an account number, leave only the last four digits. The clerk does not check."),
            facts=with_numbers,
        )
    yield Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("Anybody can read the court file. Leave out social security numbers and full account numbers."),
        _("Birth dates and the children's names have to stay in."),
    )
    if detailed:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                "You list what you own and owe. If a list tells where things are, the court must seal it on "
                "request."
            ),
            _("Ask the clerk or the self-help center how to ask for that."),
            facts=HOW,
        )


def _written(case: Case, detailed: bool) -> Iterator[tuple[str, Sequence[str]]]:
    """What the lists of property say, by the fact it comes from; things told one by one go on a list too."""
    yield from ((key, known(case.fact(key)) or ()) for key in LINES)
    if detailed:
        listed = [f"asset.{number}.words" for number in range(1, len(case.asset) + 1)]
        listed += [f"debt.{number}.words" for number in range(1, len(case.debt) + 1)]
        yield from ((key, (known(case.fact(key)) or "",)) for key in listed)


def _long_number(line: str) -> bool:
    return _LONGER_THAN_FOUR.search(_MONEY_OR_ZIP.sub("", line)) is not None
