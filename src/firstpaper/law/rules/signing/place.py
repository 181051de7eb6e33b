"""Signing outside California."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AWAY
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

LIVES = "residence.petitioner.lives"


@rule(
    "Signing outside California",
    cite=("Code Civ. Proc. 2015.5", "Fam. Code 212"),
    since=date(2012, 1, 1),
    not_modelled="Papers that another country wants for its own courts or offices.",
)
def place(case: Case, on: date) -> Found | None:
    """A petition signed outside California counts if it says that you swear under the laws of California.

    What the law says. Whoever signs outside the state must state the day, and that it is sworn "under the
    laws of the State of California". Signed inside the state without those words, it needs the day and the
    place. No notary is needed either way.

    What to do. The court's forms have those words printed. On a page of your own they must not be left out.

    An example. He lives in Portugal. He signs form FL-100 at his kitchen table, writes the day, and mails it.
    """
    if known(case.residence.petitioner.lives) not in AWAY:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _(
            "You can sign outside California, and you need no notary. The form says that you swear under the "
            "laws of the State of California, and that makes it count from anywhere."
        ),
        _("Write the day on which you really sign. Mail the paper with your own signature in ink."),
        facts=(LIVES,),
    )
