"""A small count of people, of whom there is one at least."""

from typing import Annotated

from pydantic import AfterValidator

MOST_COUNTED = 30
"""The most people that a case holds in one place. Ours, not the law's."""


def _counted(count: int) -> int:
    if not 1 <= count <= MOST_COUNTED:
        raise ValueError(f"not_a_count:{MOST_COUNTED}")
    return count


OLDEST = 120
"""The oldest that a person can be. Ours, not the law's."""


def _aged(age: int) -> int:
    if not 1 <= age <= OLDEST:
        raise ValueError(f"not_an_age:{OLDEST}")
    return age


Count = Annotated[int, AfterValidator(_counted)]
"""How many people, from 1 to MOST_COUNTED. Nobody at all is another answer to an earlier question."""

Age = Annotated[int, AfterValidator(_aged)]
"""How old somebody was on a day, in whole years, from 1 to OLDEST."""
