"""Which kind of case is asked for: one place that answers it."""

from firstpaper.facts.case import Case
from firstpaper.facts.choices import Kind
from firstpaper.facts.told import known


def kind_of(case: Case) -> Kind | None:
    """The kind of case, where it is known."""
    return known(case.matter.kind)


def is_nullity(case: Case) -> bool:
    """Whether the case is known to ask for a nullity."""
    return kind_of(case) is Kind.NULLITY
