"""What is chosen about the case, the union and where the two live."""

from enum import StrEnum


class Union(StrEnum):
    """What joins the two people. A couple may be married and also registered partners."""

    MARRIAGE = "marriage"
    PARTNERS_CALIFORNIA = "partners_california"
    PARTNERS_ELSEWHERE = "partners_elsewhere"


class ToldTo(StrEnum):
    """To whom it was said that the union is over."""

    SPOUSE = "spouse"
    SOMEBODY_ELSE = "somebody_else"
    NOBODY = "nobody"


class Kind(StrEnum):
    """The kind of case."""

    DISSOLUTION = "dissolution"
    LEGAL_SEPARATION = "legal_separation"
    NULLITY = "nullity"


class Lives(StrEnum):
    """Where a spouse lives, seen from the county of filing."""

    SAME_HOME = "same_home"
    THIS_COUNTY = "this_county"
    CALIFORNIA = "california"
    OTHER_STATE = "other_state"
    ABROAD = "abroad"


HERE = frozenset({Lives.SAME_HOME, Lives.THIS_COUNTY})
IN_CALIFORNIA = HERE | {Lives.CALIFORNIA}
AWAY = frozenset(Lives) - IN_CALIFORNIA


class OtherCase(StrEnum):
    """What another case about the two or their children is, by what it changes here. Several may be true."""

    UNION = "union"
    CHILDREN = "children"
    ELSEWHERE = "elsewhere"
    JUVENILE = "juvenile"
    GUARDIANSHIP = "guardianship"
    BANKRUPTCY = "bankruptcy"
    OTHER = "other"
