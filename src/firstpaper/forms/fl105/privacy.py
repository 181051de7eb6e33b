"""Which addresses may stand on the declaration, and which never leave the case file.

Where violence or child abuse is alleged, an address of the alleging person and of the child that the other
side does not know is confidential and may not be disclosed (Fam. Code 3429(a)). We show no such address
while there is any sign of danger, unless the filer said that they need not be kept off.
"""

import re

from firstpaper.facts import Case, known
from firstpaper.facts.children import Home

BOTH = re.compile(
    r"(?:both(?: of us| parents)?|us both|us|the two of us|mom and dad|mother and father)\b", re.IGNORECASE
)
"""Ways to begin saying that a child lived with both spouses."""


def keeps_addresses_off(case: Case) -> bool:
    """Whether no address of the filer or a child may be shown, because of danger told or not yet known."""
    if known(case.safety.dangers) == ():
        return False
    return known(case.uccjea.kept_private) is not False


def marks_the_box(case: Case) -> bool | None:
    """Whether the filer alleges violence or abuse and marks the box; None while that is not known."""
    return False if known(case.safety.dangers) == () else known(case.uccjea.kept_private)


def must_stay_private(case: Case, home: Home) -> bool:
    """Whether the other side may not know this home: they did not live there, by the filer's answer."""
    return keeps_addresses_off(case) and not _other_side_lived_there(case, home)


def _other_side_lived_there(case: Case, home: Home) -> bool:
    said, name = home.with_whom.strip(), known(case.respondent.name)
    return bool(BOTH.match(said)) or (name is not None and name.casefold() in said.casefold())
