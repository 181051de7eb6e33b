"""A paper about property or support that the two signed: told in the interview or with the list."""

from firstpaper.facts.case import Case
from firstpaper.facts.choices import Special
from firstpaper.facts.told import known


def told_of_an_agreement(case: Case) -> bool:
    """Whether the interview was told of such a paper."""
    return Special.AGREEMENT in (known(case.people.special) or ())


def signed_an_agreement(case: Case) -> bool | None:
    """Whether there is such a paper; None where nobody said so or denied it."""
    return True if told_of_an_agreement(case) else known(case.schedule.agreement)
