"""A shared computer."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Danger, SafeHere
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

HERE = "safety.here"


@rule(
    "A shared computer",
    cite="common practice",
    since=date(2015, 1, 1),
    not_modelled="Spying programs, shared clouds and backups. No program can find or stop them all.",
)
def computer(case: Case, on: date) -> Found | None:
    """On a computer that somebody else can use, your answers and papers can be found.

    What stays behind: the case file with your answers, the packet you made, anything printed, lists of
    recent files, the command line's memory, backups, and copies in a shared cloud. Somebody who has put a
    spying program on the computer can see what you type.

    Safer places: a public library, a friend's computer, a legal aid office, or the court's self-help
    center.

    What you can do here. Keep the case file on a memory stick that you carry with you. Lock it with a
    passphrase: "firstpaper seal". Remove it when you are done: "firstpaper erase". Then empty the trash
    and clear the list of recent files. None of this is certain. Files that were backed up or copied
    to a cloud stay there.

    Both sides of it. Wiping everything may itself be noticed by somebody who watches you. If you are
    afraid of that, an advocate at the hotline can help you to plan.
    """
    told = known(case.safety.here)
    dangers = known(case.safety.dangers)
    if told is SafeHere.SHARED_COMPUTER:
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _("Others can use this computer. They could find your answers and papers."),
            _do(dangers),
            facts=(HERE,),
        )
    if told is None and case.safety.here is DONT_KNOW:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE,
            _("You are not sure whether this is a safe place. Then treat this computer as shared."),
            _do(dangers),
            facts=(HERE,),
        )
    return None


def _do(dangers: tuple[Danger, ...] | None) -> str:
    keep = _(
        "Keep papers where only you go, and think of who can see the screen and the printer. Nothing is "
        "certain to leave no trace. A library or the self-help center is safer."
    )
    if dangers:
        return _("{keep} If wiping things could be noticed, ask the hotline first.").format(keep=keep)
    return keep
