"""What the declaration on custody jurisdiction (UCCJEA, form FL-105) asks beside each child's homes."""

from firstpaper.facts.choices import CustodyCase, OrderedBy
from firstpaper.facts.model import Facts
from firstpaper.facts.text import AddressLine, CaseLine, Line, Name
from firstpaper.facts.told import Told


class Person(Facts):
    """Somebody the children lived with: the name, what they are to the child, and where they live today.

    The address is one line, as written on an envelope. Empty means that it was not told.
    """

    name: Name
    relation: Line = ""
    address: AddressLine = ""


class CustodyDeclaration(Facts):
    """The declaration under Fam. Code 3429, as far as it is not about one child.

    `now` says that the filer wants to fill it in here. `kept_private` says that the filer alleges violence
    or abuse, and wants the addresses that the other side does not know kept off the form. `people` leaves
    out the two spouses. The words about cases, orders and claims are one line each, as typed.
    """

    now: Told[bool] = None
    kept_private: Told[bool] = None
    people: Told[tuple[Person, ...]] = None
    cases: Told[tuple[CustodyCase, ...]] = None
    case_words: Told[tuple[CaseLine, ...]] = None
    orders: Told[tuple[OrderedBy, ...]] = None
    order_words: Told[tuple[CaseLine, ...]] = None
    claims: Told[tuple[Line, ...]] = None
