"""What is chosen about the two people and their safety."""

from enum import StrEnum


class Typist(StrEnum):
    """Who is typing the answers."""

    FILER = "filer"
    PARALEGAL = "paralegal"
    VOLUNTEER = "volunteer"


class SafeHere(StrEnum):
    """Whether this is a safe time and place to go on."""

    SAFE = "safe"
    SHARED_COMPUTER = "shared_computer"
    NOT_SAFE = "not_safe"


class Danger(StrEnum):
    """Signs of danger from the other side. Several may be true."""

    AFRAID = "afraid"
    VIOLENCE = "violence"
    RESTRAINING_ORDER = "restraining_order"
    FLED = "fled"
    HIDE_ADDRESS = "hide_address"


class Special(StrEnum):
    """Things the court needs to know about early. Several may be true."""

    INTERPRETER = "interpreter"
    FILER_IN_MILITARY = "filer_in_military"
    OTHER_SIDE_IN_MILITARY = "other_side_in_military"
    OTHER_SIDE_MISSING = "other_side_missing"
    OTHER_SIDE_LOCKED_UP = "other_side_locked_up"
    OTHER_SIDE_CONSERVED = "other_side_conserved"
    AGREEMENT = "agreement"


class Who(StrEnum):
    """One or both of the two people in the case."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    BOTH = "both"
