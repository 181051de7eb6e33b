"""What is chosen about the grounds, support, property and the other requests."""

from enum import StrEnum


class Reason(StrEnum):
    """Ground of a dissolution or legal separation (Fam. Code 2310)."""

    IRRECONCILABLE = "irreconcilable"
    INCAPACITY = "incapacity"


class NullityGround(StrEnum):
    """Ground of a nullity (Fam. Code 2200, 2201, 2210)."""

    INCEST = "incest"
    BIGAMY = "bigamy"
    UNDER_AGE = "under_age"
    PRIOR_SPOUSE = "prior_spouse"
    UNSOUND_MIND = "unsound_mind"
    FRAUD = "fraud"
    FORCE = "force"
    PHYSICAL_INCAPACITY = "physical_incapacity"


class NullityFiler(StrEnum):
    """Who starts the nullity (Fam. Code 2211)."""

    SPOUSE = "spouse"
    PARENT_OR_GUARDIAN = "parent_or_guardian"
    RELATIVE_OR_CONSERVATOR = "relative_or_conservator"
    FORMER_SPOUSE = "former_spouse"


class GoodFaith(StrEnum):
    """Who believed that the marriage was valid when it was made."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    BOTH = "both"
    NEITHER = "neither"


class GrownNeed(StrEnum):
    """Why a child of 18 or older may still have support (Fam. Code 3901, 3910). Several may be true."""

    IN_SCHOOL = "in_school"
    CANNOT_EARN = "cannot_earn"


class SupportChoice(StrEnum):
    """What the filer asks the court to do about support for one of the two."""

    ASK = "ask"
    RESERVE = "reserve"
    END = "end"
    SAY_NOTHING = "say_nothing"


class AgreementSigned(StrEnum):
    """When the two signed a paper about property or support, seen from the wedding or registration."""

    BEFORE = "before"
    DURING = "during"
    BOTH = "both"


class SeparateHow(StrEnum):
    """How the petition speaks of separate property."""

    NONE = "none"
    CLASSES = "classes"
    LIST = "list"
    FL_160 = "fl_160"


class CommunityKind(StrEnum):
    """The prompting list of what a couple may own or owe together."""

    HOME = "home"
    VEHICLES = "vehicles"
    ACCOUNTS = "accounts"
    RETIREMENT = "retirement"
    HOUSEHOLD = "household"
    BUSINESS = "business"
    DEBTS = "debts"
    TAX_REFUNDS = "tax_refunds"
    DIGITAL = "digital"
    PETS = "pets"


class CommunityHow(StrEnum):
    """How the petition speaks of community property."""

    NONE = "none"
    NOT_YET_KNOWN = "not_yet_known"
    LIST = "list"
    FL_160 = "fl_160"


class Fees(StrEnum):
    """Who the petition asks to pay attorney's fees and costs."""

    NOT_ASKED = "not_asked"
    PAID_BY_RESPONDENT = "paid_by_respondent"
    PAID_BY_PETITIONER = "paid_by_petitioner"
