"""Ending your own right to support."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import SupportChoice
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

MINE, CONFIRMED = "support.petitioner", "support.own_right_ends"


@rule(
    "Ending your own right to support",
    cite=("Fam. Code 4335", "Fam. Code 4336(a)"),
    since=date(2020, 1, 1),
    not_modelled="Whether a court would agree, and written agreements between the two of you.",
)
def own_right(case: Case, on: date) -> Found | None:
    """If the court ends its power to order support for you, you most likely can never ask again.

    What the law says. A court can order spousal support as long as it keeps the power to do so. An order
    that ends support ends that power, also in a long marriage. After that it does not matter that you
    fell ill, lost your job, or look after a child.

    Because this mark is often made by mistake, we ask you twice. Without a clear yes we tell you not to
    file like this.

    Both sides of it. Some people want a clean end: no support either way, nothing to argue about later.
    It may help to settle a case. Against it: nobody knows what the next years bring. Keeping it open
    costs nothing now. Asking now means that a judge may order it.

    An example. A man of 50 with a good job ends his own right to support. Two years later he has a
    stroke. He cannot come back to ask.

    What to do. If anybody told you to choose this, talk to a lawyer first. You can go back and choose to
    keep it open.
    """
    if known(case.support.petitioner) is not SupportChoice.END:
        return None
    confirmed = known(case.support.own_right_ends)
    if confirmed:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _("Your petition ends your own right to support. You most likely cannot undo that."),
            _("{help} Keeping it open costs nothing now.").format(help=help_first()),
            facts=(MINE, CONFIRMED),
        )
    asked = case.support.own_right_ends is DONT_KNOW
    return Found(
        Outcome.NOT_MET if confirmed is False else Outcome.NEED_TO_KNOW,
        Weight.STOP,
        _contradicts() if confirmed is False else _not_confirmed(),
        _("Go back to support for you. If you are not sure, ask the self-help center what fits.")
        if confirmed is False or asked
        else _("Answer the question that asks you once more, or go back and choose to keep it open."),
        facts=(MINE, CONFIRMED),
        mended_by=(MINE, CONFIRMED),
    )


def _contradicts() -> str:
    return _("You chose to end your own right to support, and then said that you do not want that.")


def _not_confirmed() -> str:
    return _("You chose to end your own right to support for good, and you have not said yes to that yet.")
