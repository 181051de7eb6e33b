"""Answers that look like a slip of the hand. They are asked about once, and kept where they are meant so."""

import re
from typing import Any

from firstpaper.facts import DONT_KNOW, Day, known
from firstpaper.facts.choices import AWAY, Danger
from firstpaper.facts.people import Address
from firstpaper.facts.text import in_latin_letters, in_one_case
from firstpaper.intake.engine import Asked
from firstpaper.intake.habits import written_in_it
from firstpaper.intake.kinds import AnswerKind, general
from firstpaper.intake.reading.dates import begins_like_a_day
from firstpaper.intake.typed import fold
from firstpaper.locale import _

NAMES = frozenset({"petitioner.name", "respondent.name", "requests.former_name", "child.*.name"})
OTHER_NAMES = frozenset({"petitioner.other_names", "respondent.other_names"})
WHERE_SOMEBODY_SLEEPS = frozenset({"petitioner.mailing", "child.*.address"})
SWORN_DAYS = frozenset({"dates.married_on", "dates.registered_on", "child.*.born_on"})
HOMES = frozenset({"child.*.address"})
PLACES = frozenset({"dates.married_place", "child.*.birthplace"})
WORDS_OF_THE_PETITION = frozenset({AnswerKind.PARAGRAPH, AnswerKind.LINES, "custody.other_words"})
"""Kinds of answer, and one key, whose words go on the forms as they are typed."""
NAMES_AND_NOTES = frozenset({"support.grown_who", "asset.*.documents", "debt.*.documents", *OTHER_NAMES})
"""Answers of these kinds that are names, or that no court reads."""
A_SCRAP = 3  # letters, as in "1", "y" and "yes"
"""What is no longer than this says nothing to a judge, and names no place."""

_RELATION = (
    r"(?:my|the|our|mi) .*"
    r"|wife|husband|spouse|partner|ex|him|her|them|me|myself|self|same|unknown|baby"
)


def in_own_words(one: Asked) -> bool:
    """Whether the court reads the answer as it is typed, in words and not only as a name."""
    return bool({one.kind, one.key} & WORDS_OF_THE_PETITION) and general(one.key) not in NAMES_AND_NOTES


def doubt(one: Asked, typed: str, value: Any) -> str | None:
    """What is odd about an answer, in words that ask about it; None where nothing is."""
    if value in (DONT_KNOW, "", ()) or isinstance(value, bool):
        return None
    if fold(typed).startswith("firstpaper "):
        return _("That looks like a command to type after you leave, and not like an answer.")
    if {one.kind, one.key} & WORDS_OF_THE_PETITION and len(fold(typed).strip(" .")) <= A_SCRAP:
        return _("The petition would say just this: {words}. It is a question to answer in words.").format(
            words=typed.strip()
        )
    if in_own_words(one) and written_in_it(typed):
        return _(
            "That does not look like English, and the court reads English. It goes on the form as you type "
            "it. Ask the self-help center for help with the words."
        )
    look = _LOOKS.get(general(one.key))
    return look(one, value) if look else None


def _name(_one: Asked, value: Any) -> str | None:
    name = str(value)
    if odd := _no_name(name):
        return odd
    if " " not in name.strip():
        return _("That is one word only. The forms need the full name: first and last.")
    if in_one_case(name):
        return _(
            "It is printed just as you typed it: {name}. Most names begin with a capital letter and go on "
            "in small ones."
        ).format(name=name)
    return None


def _other_names(_one: Asked, value: Any) -> str | None:
    """The first of several names that is none. A former name may well be one word."""
    return next(filter(None, map(_no_name, value)), None)


def _no_name(name: str) -> str | None:
    """What stands there instead of a name that the court can read."""
    if re.fullmatch(_RELATION, fold(name)):
        return _("The court needs the name itself, as it stands on an ID: {name}.").format(name=name)
    if any(character.isdigit() for character in name):
        return _("There is a number in that name: {name}.").format(name=name)
    if not in_latin_letters(name):
        return _(
            "The court reads names in Latin letters. Type it as in a passport or on an ID card: {name}."
        ).format(name=name)
    return None


def _part_of_a_day(_one: Asked, value: Any) -> str | None:
    """A day of which a part is missing, where the petition is sworn to the whole."""
    if not isinstance(value, Day) or value.whole:
        return None
    return _(
        "The petition asks for the whole date. A certificate, a photo or somebody in the family may know it. "
        "If nobody does, keep it as it is."
    )


def _phone(_one: Asked, value: Any) -> str | None:
    if sum(character.isdigit() for character in str(value)) >= 7:
        return None
    return _("That does not look like a phone number: {value}.").format(value=value)


def _email(_one: Asked, value: Any) -> str | None:
    before, at, after = str(value).partition("@")
    if before.strip() and at and "." in after.strip("."):
        return None
    return _("That does not look like a whole e-mail address: {value}.").format(value=value)


def _place(_one: Asked, value: Any) -> str | None:
    if len(fold(str(value)).strip(" .")) <= A_SCRAP:
        return _("That is short for a place: {place}. Type the city, and the state or country.").format(
            place=value
        )
    if not begins_like_a_day(fold(str(value)).removeprefix("the ")):
        return None
    return _("That looks like a date. The question is about a place.")


def _address(one: Asked, value: Any) -> str | None:
    """A street address, given by somebody whose home must stay secret."""
    if isinstance(value, Address) and general(one.key) in HOMES and _is_box(value.street):
        return _("That is a box for mail. The form asks for the street and number of the home.")
    hides = {Danger.HIDE_ADDRESS, Danger.FLED} & set(known(one.case.safety.dangers) or ())
    if not hides or not isinstance(value, Address) or _is_box(value.street):
        return None
    return _(
        "Is this where you sleep? Papers in court are public, and the other person gets a copy. If it is, do "
        "not give it here: press Enter, and type an address where mail reaches you and nobody looks for you."
    )


def _lives(one: Asked, value: Any) -> str | None:
    """A home that is not where the county said before puts it."""
    county = known(one.case.residence.petitioner.own_county)
    if county is None or bool(county) == (value not in AWAY):
        return None
    if county:
        return _("You said before that you live in {county} County.").format(county=county)
    return _("You said before that you do not live in California.")


def _is_box(street: str) -> bool:
    return re.match(r"p\.? ?o\.? ?box|box|pmb|general delivery|apartado", fold(street)) is not None


_LOOKS = {
    **dict.fromkeys(NAMES, _name),
    **dict.fromkeys(OTHER_NAMES, _other_names),
    **dict.fromkeys(PLACES, _place),
    **dict.fromkeys(SWORN_DAYS, _part_of_a_day),
    **dict.fromkeys(WHERE_SOMEBODY_SLEEPS, _address),
    "residence.petitioner.lives": _lives,
    "petitioner.phone": _phone,
    "petitioner.email": _email,
}
