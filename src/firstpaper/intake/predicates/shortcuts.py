"""When a question about a way to save time or money is asked."""

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Family, Kind, Lease, Shortcut
from firstpaper.facts.kinds import kind_of
from firstpaper.intake.predicates.matter import union_began, wants_divorce_or_separation
from firstpaper.intake.predicates.parts import several


def may_take_a_shorter_way(case: Case) -> bool:
    """A first petition for a divorce or separation, and no sign of danger was told."""
    safe = known(case.safety.dangers) == ()
    return safe and wants_divorce_or_separation(case) and known(case.matter.amended) is False


def looks_at_filing_together(case: Case) -> bool:
    """The filer wants to know about one petition for both."""
    return _looks_at(case, Shortcut.TOGETHER)


def is_free_to_file_together(case: Case) -> bool:
    """Nobody pushes the filer to file together."""
    return looks_at_filing_together(case) and known(case.joint.pressed) is False


def both_would_sign_together(case: Case) -> bool:
    """The other side would sign one petition too."""
    return is_free_to_file_together(case) and known(case.joint.willing) is True


def both_mean_to_agree(case: Case) -> bool:
    """Both would sign one petition, and mean to settle everything by agreement."""
    return both_would_sign_together(case) and known(case.joint.agree) is True


def looks_at_the_small_way(case: Case) -> bool:
    """The filer wants to know about the short kind of divorce, has no child with the other side, and has
    not surely been married or registered for many years.
    """
    together = (Family.MINOR_TOGETHER, Family.UNBORN_TOGETHER, Family.GROWN)
    divorce = kind_of(case) is Kind.DISSOLUTION
    family = several(case.children.family)
    closed = any(one in family for one in together) or _surely_a_long_union(case)
    return divorce and _looks_at(case, Shortcut.SMALL) and not closed


def has_a_lease_with_an_end(case: Case) -> bool:
    """One of the two rents a home, and the lease ends on a set day."""
    return looks_at_the_small_way(case) and known(case.summary.lease) is Lease.FIXED_END


def may_ask_about_fees_alone(case: Case) -> bool:
    """A first petition of somebody for whom the other ways are not open, or not safe."""
    first = kind_of(case) is not None and known(case.matter.amended) is False
    return first and not may_take_a_shorter_way(case)


def looks_at_a_fee_waiver(case: Case) -> bool:
    """The filer wants to know about not paying the court's fees."""
    alone = may_ask_about_fees_alone(case) and known(case.waiver.wanted) is True
    return alone or _looks_at(case, Shortcut.FEE_WAIVER)


def gets_none_of_the_benefits(case: Case) -> bool:
    """The filer looks at a fee waiver, and has not named a benefit that is enough by itself."""
    benefits = case.waiver.benefits
    return looks_at_a_fee_waiver(case) and benefits is not None and not known(benefits)


_FAR_TOO_LONG = 10
"""Years: no law, only so many that nobody needs to be asked on."""


def _looks_at(case: Case, way: Shortcut) -> bool:
    return may_take_a_shorter_way(case) and way in several(case.shortcuts.look_at)


def _surely_a_long_union(case: Case) -> bool:
    """Whether the union had lasted ten years or more, far beyond what any short way allows."""
    began, broke = union_began(case), known(case.dates.separation_told_on)
    if began is None or broke is None or began.unsure or broke.unsure:
        return False
    return broke.earliest.year - began.latest.year > _FAR_TOO_LONG
