"""What is chosen about things and debts."""

from enum import StrEnum


class AssetKind(StrEnum):
    """What a thing owned is, by the lines of the property and disclosure forms.

    The forms have one line for "other assets"; digital money and pets stand there.
    """

    REAL_ESTATE = "real_estate"
    HOUSEHOLD = "household"
    VALUABLES = "valuables"
    VEHICLE = "vehicle"
    SAVINGS = "savings"
    CHECKING = "checking"
    OTHER_DEPOSIT = "other_deposit"
    CASH = "cash"
    TAX_REFUND = "tax_refund"
    LIFE_INSURANCE = "life_insurance"
    INVESTMENTS = "investments"
    PENSION = "pension"
    RETIREMENT_ACCOUNT = "retirement_account"
    MONEY_OWED_TO_US = "money_owed_to_us"
    BUSINESS = "business"
    DIGITAL = "digital"
    PET = "pet"
    OTHER = "other"


class DebtKind(StrEnum):
    """What a debt is, by the lines of the property and disclosure forms."""

    STUDENT_LOAN = "student_loan"
    TAX = "tax"
    SUPPORT_OWED = "support_owed"
    UNSECURED_LOAN = "unsecured_loan"
    CREDIT_CARD = "credit_card"
    OTHER = "other"


class Acquired(StrEnum):
    """How a thing came to be owned.

    `STOCK_OPTION` is any right to shares that work earns over time. `IN_PLACE_OF_PAY` is severance, a
    late bonus, leave, disability pay or workers' compensation. `GROWTH` is what separate property earned.
    """

    OWNED_BEFORE = "owned_before"
    EARNED = "earned"
    BOUGHT = "bought"
    GIFT = "gift"
    INHERITED = "inherited"
    FROM_SPOUSE = "from_spouse"
    GROWTH = "growth"
    INJURY = "injury"
    STOCK_OPTION = "stock_option"
    IN_PLACE_OF_PAY = "in_place_of_pay"
    TRAINING = "training"
    OTHER = "other"


class TitleForm(StrEnum):
    """Whose name the paper of ownership carries. `JOINT` is any form that names both spouses."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    JOINT = "joint"
    NO_PAPER = "no_paper"
    OWN_TRUST = "own_trust"
    SOMEBODY_ELSE = "somebody_else"


class MoneySource(StrEnum):
    """Whose money paid for a thing. Community money is what either earned in the marriage, wherever."""

    COMMUNITY = "community"
    PETITIONER_SEPARATE = "petitioner_separate"
    RESPONDENT_SEPARATE = "respondent_separate"
    PART_SEPARATE = "part_separate"


class LivedIn(StrEnum):
    """Where a spouse had their lasting home at a time."""

    CALIFORNIA = "california"
    ELSEWHERE = "elsewhere"


class ContributionFor(StrEnum):
    """What a payment was for, of the kinds that count under Fam. Code 2640(a)."""

    DOWN_PAYMENT = "down_payment"
    PRINCIPAL = "principal"
    IMPROVEMENT = "improvement"


class DebtPurpose(StrEnum):
    """What a debt was for. `HOUSEHOLD` is what either spouse or the children needed to live."""

    HOUSEHOLD = "household"
    OWN = "own"
    EDUCATION = "education"
    HARM = "harm"
    BUSINESS = "business"
    OTHER = "other"


class Proposal(StrEnum):
    """Who should get a thing or pay a debt, as the filer proposes."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    HALF_EACH = "half_each"
