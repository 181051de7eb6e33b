"""A mailing address on one line or several: street, city, state and ZIP code; or a country abroad.

The pieces are told apart by commas and line breaks, never by guessing. A missing piece is asked for.
"""

import re
from functools import cache
from pathlib import Path

from firstpaper.facts.people import Address
from firstpaper.intake.refusals import AnswerRefused
from firstpaper.intake.typed import fold, tidy
from firstpaper.locale import _

_STATES = {
    "AL": "Alabama",
    "AK": "Alaska",
    "AZ": "Arizona",
    "AR": "Arkansas",
    "CA": "California",
    "CO": "Colorado",
    "CT": "Connecticut",
    "DE": "Delaware",
    "DC": "District of Columbia",
    "FL": "Florida",
    "GA": "Georgia",
    "HI": "Hawaii",
    "ID": "Idaho",
    "IL": "Illinois",
    "IN": "Indiana",
    "IA": "Iowa",
    "KS": "Kansas",
    "KY": "Kentucky",
    "LA": "Louisiana",
    "ME": "Maine",
    "MD": "Maryland",
    "MA": "Massachusetts",
    "MI": "Michigan",
    "MN": "Minnesota",
    "MS": "Mississippi",
    "MO": "Missouri",
    "MT": "Montana",
    "NE": "Nebraska",
    "NV": "Nevada",
    "NH": "New Hampshire",
    "NJ": "New Jersey",
    "NM": "New Mexico",
    "NY": "New York",
    "NC": "North Carolina",
    "ND": "North Dakota",
    "OH": "Ohio",
    "OK": "Oklahoma",
    "OR": "Oregon",
    "PA": "Pennsylvania",
    "RI": "Rhode Island",
    "SC": "South Carolina",
    "SD": "South Dakota",
    "TN": "Tennessee",
    "TX": "Texas",
    "UT": "Utah",
    "VT": "Vermont",
    "VA": "Virginia",
    "WA": "Washington",
    "WV": "West Virginia",
    "WI": "Wisconsin",
    "WY": "Wyoming",
    "AS": "American Samoa",
    "GU": "Guam",
    "MP": "Northern Mariana Islands",
    "PR": "Puerto Rico",
    "VI": "U.S. Virgin Islands",
    "AA": "Armed Forces Americas",
    "AE": "Armed Forces Europe",
    "AP": "Armed Forces Pacific",
}
_HOME = {"usa", "us", "u.s.a", "u.s", "united states", "united states of america", "estados unidos"}
_ZIP = re.compile(r"(?:^|\s)(\d{5}(?:-\d{4})?|no zip(?: code)?)$", re.IGNORECASE)
_LIKE_A_ZIP = re.compile(r"\d{3,}(?:-\d*)?$")
_WITHIN_A_BUILDING = re.compile(
    r"(?:apt|apartment|unit|suite|ste|room|rm|floor|fl|space|spc|#|no)\b|.*\d", re.IGNORECASE
)


def read_address(text: str) -> Address:
    """The address typed. Raises AnswerRefused that names the piece that is missing."""
    parts = [" ".join(part.split()) for part in re.split(r"[,\n]", tidy(text))]
    parts = [part for part in parts if part.strip(" .")]
    if parts and fold(parts[-1]).rstrip(".") in _HOME:
        parts.pop()
    if not parts:
        raise AnswerRefused(_missing(_("the street")))
    if _country(parts[-1]) and not _ZIP.search(parts[-1]) and not _state_at_end(parts[-1])[1]:
        return _abroad(parts)
    return _at_home(parts)


def _at_home(parts: list[str]) -> Address:
    last = parts.pop()
    zip_code = _ZIP.search(last)
    if zip_code is None:
        raise AnswerRefused(_no_zip(last))
    before = last[: zip_code.start()].strip() or (parts.pop() if parts else "")
    city, state = _state_at_end(before)
    if not state:
        raise AnswerRefused(_missing(_("the state")))
    if not city and parts:
        city = parts.pop()
    _check_pieces(parts, city)
    digits = zip_code[1] if zip_code[1][0].isdigit() else ""
    return Address(street=", ".join(parts), city=city, state=state, zip=digits)


def _abroad(parts: list[str]) -> Address:
    country = parts.pop()
    city = parts.pop() if parts else ""
    if not parts or not city:
        raise AnswerRefused(
            _(
                "For an address abroad, please type the street, the city and the country, "
                "with commas between them."
            )
        )
    return Address(street=", ".join(parts), city=city, state=country, zip="")


def _check_pieces(parts: list[str], city: str) -> None:
    if not city and not parts:
        raise AnswerRefused(_missing(_("the street and the city")))
    if not parts and any(letter.isdigit() for letter in city):
        raise AnswerRefused(
            _("Please put a comma between the street and the city, like: 123 Main St, Fresno, CA 93701.")
        )
    if not city or not parts:
        raise AnswerRefused(_missing(_("the street or the city")))
    if _WITHIN_A_BUILDING.match(city):
        raise AnswerRefused(
            _(
                "The city is missing, or it is not just before the state. Please type the apartment with the "
                "street, like: 123 Main St, Apt 4, Fresno, CA 93701."
            )
        )


def _state_at_end(text: str) -> tuple[str, str]:
    """The words before a state at the end of `text`, and the state's code; no code where there is none."""
    words = text.split()
    for count in (4, 3, 2, 1):
        if count <= len(words):
            code = _codes().get(fold(" ".join(words[-count:])).replace(".", ""))
            if code:
                return " ".join(words[:-count]), code
    return text, ""


@cache
def _codes() -> dict[str, str]:
    names = {fold(name).replace(".", ""): code for code, name in _STATES.items()}
    return names | {fold(code): code for code in _STATES}


@cache
def _countries() -> frozenset[str]:
    lines = Path(__file__).with_name("countries.txt").read_text("utf-8").splitlines()
    return frozenset(fold(name) for line in lines if not line.startswith("#") for name in line.split(";"))


def _country(text: str) -> bool:
    return fold(text).rstrip(".") in _countries()


def _no_zip(last: str) -> str:
    if _LIKE_A_ZIP.search(last):
        return _("The ZIP code does not look right. It has five digits, like 93701. Please check it.")
    if _state_at_end(last)[1]:
        return _(
            "The ZIP code is missing. Please type it after the state, like: 123 Main St, Fresno, CA 93701. "
            "If you do not know it, type: no ZIP"
        )
    return _(
        "The state and the ZIP code are missing. Please type the address like: 123 Main St, Fresno, "
        "CA 93701. For an address abroad, end with the name of the country, like: Mexico."
    )


def _missing(piece: str) -> str:
    return _(
        "{piece}: this is missing, or could not be found. Please type the address like: "
        "123 Main St, Fresno, CA 93701."
    ).format(piece=piece[:1].upper() + piece[1:])
