"""Which unions to count, and from which facts."""

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Union


def unions_to_count(case: Case) -> tuple[Union, ...]:
    """Marriage and partnership, one of each at most: the petition has one date for partnerships."""
    told = known(case.matter.unions) or ()
    marriage = [union for union in told if union is Union.MARRIAGE]
    partnerships = [union for union in told if union is not Union.MARRIAGE]
    return (*marriage[:1], *partnerships[:1])


def length_keys(union: Union) -> tuple[str, ...]:
    """The keys of the facts that the length of a union is counted from."""
    began = "dates.married_on" if union is Union.MARRIAGE else "dates.registered_on"
    return began, "dates.separation_told_on", "dates.separation_acted_on", "dates.back_together"


def length_name(union: Union) -> str:
    """The first part of the names of values about a union: "marriage" or "partnership"."""
    return "marriage" if union is Union.MARRIAGE else "partnership"
