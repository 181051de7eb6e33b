"""What is chosen about the children and their custody."""

from enum import StrEnum


class Family(StrEnum):
    """Which children there are. Several may be true.

    `NOT_ALWAYS_HERE` is a minor child of both who has not lived in California for the time that makes it
    the home state (Fam. Code 3402(g)).
    """

    MINOR_TOGETHER = "minor_together"
    NOT_ALWAYS_HERE = "not_always_here"
    UNBORN_TOGETHER = "unborn_together"
    FROM_OTHERS = "from_others"
    GROWN = "grown"


class Parentage(StrEnum):
    """How a child came to be the child of both."""

    BORN_TO_BOTH = "born_to_both"
    ADOPTED_BY_BOTH = "adopted_by_both"
    ONE_PARENT_ONLY = "one_parent_only"


class Declaration(StrEnum):
    """Whether both parents signed a voluntary declaration of parentage or paternity."""

    SIGNED_WITH_COPY = "signed_with_copy"
    SIGNED_NO_COPY = "signed_no_copy"
    NOT_SIGNED = "not_signed"
    COURT_DECIDED = "court_decided"


class CustodyTo(StrEnum):
    """Who is to have custody."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    JOINT = "joint"
    OTHER = "other"


class VisitsTo(StrEnum):
    """Who is to have visitation (parenting time)."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    OTHER = "other"
    NOT_ASKED = "not_asked"


class FoundViolent(StrEnum):
    """Whom a court has found to be violent lately, or convicted of it."""

    RESPONDENT = "respondent"
    PETITIONER = "petitioner"
    BOTH = "both"
    NOBODY = "nobody"


class CustodySheet(StrEnum):
    """Detailed custody sheets that may go behind item 6. Several may be chosen."""

    FL_311 = "fl_311"
    FL_312 = "fl_312"
    FL_341_C = "fl_341_c"
    FL_341_D = "fl_341_d"
    FL_341_E = "fl_341_e"
    OWN_PAGE = "own_page"
