"""A mailing address on one line or several: street, city, state and ZIP code; or a country abroad.

The pieces are told apart by commas and line breaks, never by guessing. A missing piece is asked for.
"""

import re
from functools import cache
from pathlib import Path

from firstpaper.facts.people import Address
from firstpaper.intake.habits import country
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
_HOME = {"usa", "us", "united states", "united states of america", "estados unidos"}
_ZIP = r"(?i)(?:^|\s)(\d{5}(?:-\d{4})?|no zip(?: code)?)$"
_LIKE_A_ZIP = r"\d{3,}(?:-\d*)?$"
_NOT_A_CITY = (
    r"(?i)(?:(?:apt|apartment|unit|suite|ste|room|rm|floor|space|spc|lot|trailer|no)\b|#).*"
    r"|\d+[a-z]?|[a-z]?\d+"
    r"|\d+ .*\b(?:st|street|ave?|avenue|rd|road|blvd|boulevard|dr|drive|ln|lane|way|ct|court|pl|place)\.?"
)


def read_address(text: str) -> Address:
    """The address typed. Raises AnswerRefused that names the piece that is missing."""
    parts = [" ".join(part.split()) for part in re.split(r"[,\n]", tidy(text))]
    parts = [part for part in parts if part.strip(" .")]
    if parts and _plain(parts[-1]) in _HOME:
        parts.pop()
    if not parts:
        raise AnswerRefused(_street_missing())
    last, zip_code = _without_zip(parts[-1])
    last = country(last)
    if _plain(last) in _countries() and _plain(last) not in _codes():
        return _abroad(parts[:-1], last, zip_code or "")
    return _at_home(parts)


def is_state(code: str) -> bool:
    """Whether an address with this state is in the United States, and so has a ZIP code."""
    return code in _STATES


def state_or_country(text: str) -> tuple[str, str]:
    """The words before a state, with the state's code; or a country as typed; an empty state for neither."""
    text = country(text)
    before, code = _state_at_end(text)
    if not code and _plain(text) in _countries():
        return "", text
    return before, code


def _at_home(parts: list[str]) -> Address:
    before, zip_code = _without_zip(parts.pop())
    if zip_code is None:
        raise AnswerRefused(_no_zip(before))
    city, state = _state_at_end(before or (parts.pop() if parts else ""))
    if not state:
        raise AnswerRefused(_with_example(_("The state is missing, or could not be read.")))
    if not city and (len(parts) > 1 or not _has_digit("".join(parts))):
        city = parts.pop() if parts else ""
    _check_pieces(parts, city)
    return Address(street=", ".join(parts), city=city, state=state, zip=zip_code)


def _abroad(parts: list[str], country: str, zip_code: str) -> Address:
    if len(parts) < 2:
        raise AnswerRefused(
            _(
                "For an address abroad, please type the street, the city and the country, "
                "with commas between them."
            )
        )
    return Address(street=", ".join(parts[:-1]), city=parts[-1], state=country, zip=zip_code)


def _check_pieces(street: list[str], city: str) -> None:
    if not city or re.fullmatch(_NOT_A_CITY, city):
        raise AnswerRefused(
            _with_example(
                _("The city is missing, or it is not just before the state. An apartment comes first.")
            )
        )
    if not street and _has_digit(city):
        raise AnswerRefused(_with_example(_("A comma is missing between the street and the city.")))
    if not street:
        raise AnswerRefused(_street_missing())


def _without_zip(text: str) -> tuple[str, str | None]:
    """The text before a ZIP code, and the code: empty for "no ZIP", None where it is missing."""
    match = re.search(_ZIP, text)
    if match is None:
        return text, None
    return text[: match.start()].strip(), match[1] if match[1][0].isdigit() else ""


def _state_at_end(text: str) -> tuple[str, str]:
    """The words before a state at the end of `text`, and the state's code; no code where there is none."""
    words = text.split()
    for count in (4, 3, 2, 1):
        if count <= len(words):
            code = _codes().get(_plain(" ".join(words[-count:])))
            if code:
                return " ".join(words[:-count]), code
    return text, ""


def _has_digit(text: str) -> bool:
    return any(letter.isdigit() for letter in text)


def _plain(text: str) -> str:
    return fold(text).replace(".", "")


@cache
def _codes() -> dict[str, str]:
    return {_plain(name): code for code, name in _STATES.items()} | {fold(code): code for code in _STATES}


@cache
def _countries() -> frozenset[str]:
    lines = Path(__file__).with_name("countries.txt").read_text("utf-8").splitlines()
    return frozenset(_plain(name) for line in lines if not line.startswith("#") for name in line.split(";"))


def _no_zip(last: str) -> str:
    if re.search(_LIKE_A_ZIP, last):
        return _("The ZIP code does not look right. It has five digits, like 93701. Please check it.")
    if _state_at_end(last)[1]:
        missing = _("The ZIP code is missing. If you do not know it, type after the state: no ZIP.")
        return _with_example(missing)
    return _with_example(
        _(
            "The state and the ZIP code are missing. An address abroad ends with the name of the country, "
            "like Mexico."
        )
    )


def _street_missing() -> str:
    return _with_example(_("The street is missing."))


def _with_example(message: str) -> str:
    return _("{message} Please type the address like: 123 Main St, Fresno, CA 93701").format(message=message)
