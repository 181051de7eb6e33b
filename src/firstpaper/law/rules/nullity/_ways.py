"""What is left to somebody whose own answers shut a ground."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import NullityGround
from firstpaper.law.measures.nullity import defeated, grounds
from firstpaper.law.words import ground_words
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


def stays_open(case: Case, shut: NullityGround, on: date) -> str:
    """One sentence: the other grounds chosen that nothing told shuts, a divorce and a legal separation."""
    others = [ground for ground in grounds(case) if ground is not shut and not defeated(case, ground, on)]
    named = [_('the ground "{ground}"').format(ground=ground_words(ground)) for ground in others]
    ways = in_a_row([*named, _("a divorce"), _("a legal separation")])
    return _("What stays open to you: {ways}.").format(ways=ways)
