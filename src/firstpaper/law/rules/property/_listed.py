"""What the rules about listed things share."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.measures.character import Character, asset_characters, debt_characters
from firstpaper.law.property_words import code_words, thing_words
from firstpaper.locale import _


def listed(case: Case, on: date) -> tuple[Character, ...]:
    """Every listed thing and debt; none in a nullity, where the page nullity.putative speaks instead."""
    if is_nullity(case):
        return ()
    return (*asset_characters(case, on), *debt_characters(case, on))


def names(case: Case, characters: tuple[Character, ...]) -> list[str]:
    """The things by name."""
    return [thing_words(case, one.key) for one in characters]


def working(case: Case, characters: tuple[Character, ...]) -> tuple[str, ...]:
    """One step a thing: what it is taken to be and why, what else to know, and what a court may decide."""
    return tuple(_step(case, one) for one in characters)


def _step(case: Case, one: Character) -> str:
    says = _("{thing}: {code}. {why}").format(
        thing=thing_words(case, one.key),
        code=code_words(one.code, debt=one.key.startswith("debt")),
        why=one.reasons[0].says,
    )
    return " ".join((says, *(flag.says for flag in one.flags), one.court))
