"""Choices about support that do not fit together."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SupportChoice
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

MINE, THEIRS = "support.petitioner", "support.respondent"
OWN_RIGHT, OTHER = "support.own_right_ends", "support.other"


@rule(
    "Choices about support that do not fit together",
    cite=("Fam. Code 4330(a)", "Fam. Code 4336(a)"),
    since=date(2020, 1, 1),
    not_modelled="What the free line about support says. Read it against your marks.",
)
def contradiction(case: Case, on: date) -> list[Found]:
    """For each of you the petition makes one choice about support: ask, keep open, end, or say nothing.

    What we check. Asking for support for both of you at once: then each would pay the other. Ending your
    own right in one answer and keeping it in another. Choosing to end or to say nothing, and then
    writing a request on the free line.

    The choices for the two of you need not be the same. Asking for yourself and ending it for the other
    side fit together. So do keeping it open for both.

    An example. Somebody marks "ask" for themselves and "ask" for the other side, meaning "let the judge
    decide". The petition then says that both should pay. "Keep it open" for both says what was meant.

    What to do. Read the answers for both of you once more, side by side.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    mine, theirs = known(case.support.petitioner), known(case.support.respondent)
    if mine is theirs is SupportChoice.ASK:
        yield _look(
            _("You ask for support for both of you. Then each would pay the other."),
            _("Ask for the one who needs it. To leave it to later, choose to keep it open."),
            MINE,
            THEIRS,
        )
    if known(case.support.own_right_ends) and mine not in (SupportChoice.END, None):
        yield _look(
            _("In one answer you give up your own support, and in another you keep it."),
            _("Look at both answers again. Nothing is given up unless you choose to end it."),
            MINE,
            OWN_RIGHT,
        )
    if known(case.support.other) and not {mine, theirs} & {SupportChoice.ASK, SupportChoice.RESERVE}:
        yield _look(
            _(
                "You wrote something about support on the free line, but you neither ask for it nor keep it "
                "open."
            ),
            _("Make sure that the line and the marks say the same."),
            MINE,
            THEIRS,
            OTHER,
        )


def _look(says: str, do: str, *facts: str) -> Found:
    return Found(Outcome.NOT_MET, Weight.LOOK_AGAIN, says, do, facts=facts)
