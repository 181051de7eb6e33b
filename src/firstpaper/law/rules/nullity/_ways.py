"""What is left to somebody whose own answers shut a ground."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import NullityFiler, NullityGround
from firstpaper.law.measures.nullity import defeated, grounds
from firstpaper.law.words import ground_words
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


def stays_open(case: Case, shut: NullityGround, on: date) -> str:
    """One sentence: the other grounds chosen that nothing told shuts, a divorce and a legal separation."""
    others = _others(case, shut, on)
    named = [_('the ground "{ground}"').format(ground=ground_words(ground)) for ground in others]
    ways = in_a_row([*named, _("a divorce"), _("a legal separation")])
    return _("What stays open to you: {ways}.").format(ways=ways)


def without(case: Case, shut: NullityGround, on: date) -> tuple[str, ...]:
    """The answers to give again to leave a ground out: also the kind of case, where no other ground stands.

    None for somebody who has nothing else to file on: only a spouse can ask for a divorce, and a death has
    ended the marriage already.
    """
    if _others(case, shut, on):
        return ("grounds.nullity",)
    spouse, died = known(case.grounds.filer) is NullityFiler.SPOUSE, known(case.grounds.both_alive) is False
    return ("matter.kind", "grounds.nullity") if spouse and not died else ()


def _others(case: Case, shut: NullityGround, on: date) -> list[NullityGround]:
    """The other grounds chosen that nothing told shuts."""
    return [ground for ground in grounds(case) if ground is not shut and not defeated(case, ground, on)]
