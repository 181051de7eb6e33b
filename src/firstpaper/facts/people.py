"""The two people in the case, and how to reach them."""

from firstpaper.facts.choices import Danger, SafeHere, Special, Typist
from firstpaper.facts.model import Facts
from firstpaper.facts.text import AddressLine, AddressPart, Line, Name, Number
from firstpaper.facts.told import Told, ToldInWords


class Safety(Facts):
    """Asked before anything else, so that help is shown before an address is asked."""

    understood: Told[bool] = None
    here: Told[SafeHere] = None
    dangers: Told[tuple[Danger, ...]] = None
    safe_at_home: Told[bool] = None
    typist: Told[Typist] = None


class Address(Facts):
    """A mailing address in the United States, or abroad with the country in `state`."""

    street: AddressPart
    city: AddressPart
    state: AddressLine = "CA"
    zip: AddressLine = ""


class Petitioner(Facts):
    """The person who files."""

    name: ToldInWords[Name] = None
    other_names: Told[tuple[Name, ...]] = None
    mailing: Told[Address] = None
    phone: ToldInWords[Number] = None
    email: ToldInWords[Number] = None


class Respondent(Facts):
    """The other side. `ever_here` says whether they ever lived in California."""

    name: ToldInWords[Name] = None
    other_names: Told[tuple[Name, ...]] = None
    mailing: Told[Address] = None
    ever_here: Told[bool] = None


class People(Facts):
    """What the court needs to know about both."""

    special: Told[tuple[Special, ...]] = None
    language: ToldInWords[Line] = None
