"""The 58 counties of California, each with one superior court (Cal. Const., art. VI, sec. 4)."""

import re
import unicodedata
from typing import Annotated

from pydantic import AfterValidator, BeforeValidator

from firstpaper.facts.text import clean

COUNTIES = (
    "Alameda",
    "Alpine",
    "Amador",
    "Butte",
    "Calaveras",
    "Colusa",
    "Contra Costa",
    "Del Norte",
    "El Dorado",
    "Fresno",
    "Glenn",
    "Humboldt",
    "Imperial",
    "Inyo",
    "Kern",
    "Kings",
    "Lake",
    "Lassen",
    "Los Angeles",
    "Madera",
    "Marin",
    "Mariposa",
    "Mendocino",
    "Merced",
    "Modoc",
    "Mono",
    "Monterey",
    "Napa",
    "Nevada",
    "Orange",
    "Placer",
    "Plumas",
    "Riverside",
    "Sacramento",
    "San Benito",
    "San Bernardino",
    "San Diego",
    "San Francisco",
    "San Joaquin",
    "San Luis Obispo",
    "San Mateo",
    "Santa Barbara",
    "Santa Clara",
    "Santa Cruz",
    "Shasta",
    "Sierra",
    "Siskiyou",
    "Solano",
    "Sonoma",
    "Stanislaus",
    "Sutter",
    "Tehama",
    "Trinity",
    "Tulare",
    "Tuolumne",
    "Ventura",
    "Yolo",
    "Yuba",
)
"""Their names as a form writes them after "County of"; San Francisco is a city and a county."""

_AROUND = (
    r"^(?:the |el )?(?:city and |ciudad y )?(?:county of|condado de) | county$|,? (?:ca|calif|california)$"
)
_BY_NAME = {name.casefold(): name for name in COUNTIES}
_IN_SHORT = {"la": "Los Angeles", "sf": "San Francisco", "oc": "Orange", "slo": "San Luis Obispo"}
"""Short names that are asked about and never taken: a spouse's Oregon town may share them."""


def county_named(text: str) -> str:
    """The county that `text` names, as forms write it: "Fresno" for "fresno county".

    Raises ValueError ``unknown_county:`` with the nearest name, if one is near, after the colon.
    """
    name = " ".join(_plain(text).replace(".", "").split())
    while (shorter := re.sub(_AROUND, "", name)) != name:
        name = shorter
    if name not in _BY_NAME:
        raise ValueError(f"unknown_county:{_nearest(name)}")
    return _BY_NAME[name]


def _plain(text: str) -> str:
    """Small letters without accents: the names came from Spanish, and are written so by many."""
    apart = unicodedata.normalize("NFD", text.casefold())
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


def _nearest(name: str) -> str:
    from difflib import get_close_matches  # noqa: PLC0415  (only for a mistake, and slow to load)

    if name in _IN_SHORT:
        return _IN_SHORT[name]
    near = get_close_matches(name[:40], _BY_NAME, n=1, cutoff=0.75)
    return _BY_NAME[near[0]] if near else ""


def _county_or_empty(text: str) -> str:
    return county_named(text) if text.strip() else ""


County = Annotated[str, BeforeValidator(clean), AfterValidator(county_named)]
"""One of the 58 counties."""

CountyOrNone = Annotated[str, BeforeValidator(clean), AfterValidator(_county_or_empty)]
"""One of the 58 counties; empty means that the person answered "none of them"."""
