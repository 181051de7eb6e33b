"""What a petition asks for a listed thing: to confirm it to its owner, or to determine the rights of both.

Only what surely belongs to one of the two is asked to be confirmed. What is mixed, or what nobody can place
yet, is left to be determined: the law starts with community property (Fam. Code 760).
"""

from enum import StrEnum

from firstpaper.law.measures.character.outcome import Character, Code


class Plea(StrEnum):
    """What is asked for a thing."""

    CONFIRM = "confirm"
    DETERMINE = "determine"


def plea(one: Character) -> Plea | None:
    """What is asked for it; None for what no court divides.

    A loan for training from the marriage is a debt to be assigned with the others, though it usually goes to
    the one who was trained (Fam. Code 2627, 2641(b)(2)).
    """
    if one.code is Code.NOT_DIVIDED:
        return None
    return Plea.CONFIRM if one.code.separate and not is_training_loan(one) else Plea.DETERMINE


def is_training_loan(one: Character) -> bool:
    """Whether it is a loan for training, taken in the marriage."""
    return one.reasons[0].row == "education_loan"
