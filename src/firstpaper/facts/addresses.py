"""Which address may leave the case file. Decided here, once, for every form, sheet and file.

Where violence or child abuse is alleged, an address of the alleging person and of the child that the other
side does not know is confidential and may not be disclosed (Fam. Code 3429(a)). So there are three kinds:

- the address for mail, which stands in the box at the top of the forms and nowhere else;
- where somebody lives today, which is sworn to: never a post box, and never while addresses are kept off;
- homes of a child: while addresses are kept off, only those that the other side lived in too.
"""

import re

from firstpaper.facts.case import Case
from firstpaper.facts.children import Child, Home
from firstpaper.facts.choices import Danger
from firstpaper.facts.people import Address
from firstpaper.facts.told import known
from firstpaper.facts.uccjea import Person

BOTH = r"(?i)(?:both(?: of us| parents)?|us both|us|the two of us|mom and dad|mother and father)\b"
"""Ways to begin saying that a child lived with both spouses."""
FILER = r"(?i)(?:me|myself)\b"
"""Ways to begin saying that a child lived with the filer."""
_SURELY_BOTH = r"(?i)(?:both(?: of us| parents)?|us both|mom and dad|mother and father)\b"
"""Those of them that cannot mean the filer and the child."""
_POST_BOX = (
    r"(?i)\b(?:p\.?\s*o\.?\s*box|post(?:al)?(?:\s+office)?\s+box|p\.?\s*m\.?\s*b\b|mail\s*box\s+\d|"
    r"apartado)|^\s*box\s+\d"
)


def keeps_addresses_off(case: Case) -> bool:
    """Whether no address of the filer or a child may be shown, because of danger told or not yet known."""
    dangers = known(case.safety.dangers)
    if dangers == ():
        return False
    return Danger.HIDE_ADDRESS in (dangers or ()) or known(case.uccjea.kept_private) is not False


def for_the_court(case: Case) -> Address | None:
    """Where the court reaches the filer by mail. It stands at the top of the forms."""
    return known(case.petitioner.mailing)


def of_the_other_side(case: Case) -> Address | None:
    """Where the other side gets mail, as far as the filer knows."""
    return known(case.respondent.mailing)


def to_serve_at(case: Case) -> Address | None:
    """Where the papers may be brought to the other side, on a page that is given away.

    Never the filer's own address while addresses are kept off.
    """
    address = of_the_other_side(case)
    return None if keeps_addresses_off(case) and address == for_the_court(case) else address


def home_of_the_filer(case: Case) -> Address | None:
    """Where the filer lives today, as far as it may be sworn to."""
    return None if keeps_addresses_off(case) else _home(for_the_court(case))


def home_of_the_other_side(case: Case) -> Address | None:
    """Where the other side lives today, as far as it may be sworn to. They know it themselves."""
    return _home(of_the_other_side(case))


def home_of_the_child(case: Case, child: Child) -> Address | None:
    """Where a child lives today."""
    return None if keeps_addresses_off(case) else _home(known(child.address))


def home_of_a_person(case: Case, person: Person) -> str:
    """Where somebody lives today with whom a child lived, on one line; empty where it may not be shown."""
    return "" if keeps_addresses_off(case) or is_post_box(person.address) else person.address


def must_stay_private(case: Case, home: Home) -> bool:
    """Whether the other side may not know this home: they did not live there, by the filer's answer."""
    return keeps_addresses_off(case) and not _other_side_lived_there(case, home)


def is_post_box(line: str) -> bool:
    """Whether the line is a box for mail, in which nobody lives."""
    return re.search(_POST_BOX, line) is not None


def _home(address: Address | None) -> Address | None:
    return None if address is None or is_post_box(address.street) else address


def _other_side_lived_there(case: Case, home: Home) -> bool:
    said, name = home.with_whom.strip(), known(case.respondent.name)
    return bool(re.match(_SURELY_BOTH, said)) or (name is not None and name.casefold() in said.casefold())
