"""What is said of the petition's edition where the figures know less, or more, than they do today."""

from collections.abc import Callable
from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.finding import Outcome, Weight
from firstpaper.law.register import findings
from firstpaper.law.rules.forms import edition as rule_of_the_edition

ON = date(2027, 1, 4)


def told_as(
    edition: date | None, certainty: Certainty, *, verified: bool
) -> Callable[[str, date], FigureValue]:
    value = {"edition": edition, "verified_against_pdf": verified}
    return lambda name, on: figure(name, on)._replace(value=value, certainty=certainty, note="")


@pytest.mark.parametrize(
    ("known", "says", "outcome"),
    [
        (
            told_as(None, Certainty.UNCONFIRMED, verified=False),
            "We do not know the edition of form FL-100 for your filing day.",
            Outcome.NEED_TO_KNOW,
        ),
        (
            told_as(date(2027, 1, 1), Certainty.SECONDARY, verified=True),
            "As far as we know, form FL-100 is the edition of January 1, 2027.",
            Outcome.NEED_TO_KNOW,
        ),
        (
            told_as(date(2027, 1, 1), Certainty.COURT, verified=True),
            "As far as we know, form FL-100 is the edition of January 1, 2027.",
            Outcome.MET,
        ),
    ],
    ids=["not known", "read elsewhere", "laid beside the form"],
)
def test_only_an_edition_laid_beside_the_courts_form_is_sure(
    known: Callable[[str, date], FigureValue], says: str, outcome: Outcome, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(rule_of_the_edition, "figure", known)
    (found,) = findings(Case(), ON, ["forms.edition"])
    assert (found.says, found.outcome) == (says, outcome)
    assert (found.weight is Weight.GOOD_TO_KNOW) is (outcome is Outcome.MET)
