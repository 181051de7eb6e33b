"""The answers that a person chooses from. The values are what case files and fact files hold."""

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


class Special(StrEnum):
    """Things the court needs to know about early. Several may be true."""

    INTERPRETER = "interpreter"
    FILER_IN_MILITARY = "filer_in_military"
    OTHER_SIDE_IN_MILITARY = "other_side_in_military"
    OTHER_SIDE_MISSING = "other_side_missing"
    OTHER_SIDE_LOCKED_UP = "other_side_locked_up"
    OTHER_SIDE_CONSERVED = "other_side_conserved"
    AGREEMENT = "agreement"


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


class OtherCase(StrEnum):
    """What another case about the two or their children is, by what it changes here. Several may be true."""

    UNION = "union"
    CHILDREN = "children"
    ELSEWHERE = "elsewhere"
    JUVENILE = "juvenile"
    GUARDIANSHIP = "guardianship"
    BANKRUPTCY = "bankruptcy"
    OTHER = "other"


class CustodyCase(StrEnum):
    """What another case about the children is about, by the rows of form FL-105. Several may be true."""

    FAMILY = "family"
    GUARDIANSHIP = "guardianship"
    OTHER = "other"
    JUVENILE = "juvenile"
    ADOPTION = "adoption"


class OrderedBy(StrEnum):
    """Which kind of court made a protective order that holds now, by the rows of form FL-105."""

    CRIMINAL = "criminal"
    FAMILY = "family"
    JUVENILE = "juvenile"
    OTHER = "other"


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


class Who(StrEnum):
    """One or both of the two people in the case."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    BOTH = "both"


class GoodFaith(StrEnum):
    """Who believed that the marriage was valid when it was made."""

    PETITIONER = "petitioner"
    RESPONDENT = "respondent"
    BOTH = "both"
    NEITHER = "neither"


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


class FeeState(StrEnum):
    """How the filing fee stands."""

    PAID = "paid"
    WAIVER_ASKED = "waiver_asked"
    WAIVER_GRANTED = "waiver_granted"
    WAIVER_DENIED = "waiver_denied"


class WaiverDenial(StrEnum):
    """Why the court denied a fee waiver: it says so on form FW-003."""

    INCOMPLETE = "incomplete"
    NOT_ELIGIBLE = "not_eligible"


class ServedBy(StrEnum):
    """Who handed over or mailed the papers."""

    SOMEBODY_ELSE = "somebody_else"
    OFFICIAL = "official"
    FILER = "filer"


class ServiceMethod(StrEnum):
    """How the summons and petition are served (Cal. Rules of Court, rule 5.68(a))."""

    PERSONAL = "personal"
    SUBSTITUTED = "substituted"
    ACKNOWLEDGMENT = "acknowledgment"
    OUT_OF_STATE_MAIL = "out_of_state_mail"
    PUBLICATION = "publication"
    POSTING = "posting"
    COURT_DIRECTED = "court_directed"
    ABROAD = "abroad"


class FinalDisclosure(StrEnum):
    """How the final declarations of disclosure stand (Fam. Code 2105)."""

    BOTH_SERVED = "both_served"
    MINE_SERVED = "mine_served"
    THEIRS_SERVED = "theirs_served"
    BOTH_WAIVED = "both_waived"


class LaterService(StrEnum):
    """How a later paper in the case is served (Code Civ. Proc. 1013)."""

    PERSONAL = "personal"
    MAIL = "mail"
    OVERNIGHT = "overnight"


class MailGoes(StrEnum):
    """Where the mail goes that a later paper is served by (Code Civ. Proc. 1013(a))."""

    IN_STATE = "in_state"
    OUT_OF_STATE = "out_of_state"
    SAFE_AT_HOME = "safe_at_home"
    ABROAD = "abroad"


class Shortcut(StrEnum):
    """Ways to save time or money that the filer may look at. Several may be chosen."""

    TOGETHER = "together"
    SMALL = "small"
    FEE_WAIVER = "fee_waiver"


class Lease(StrEnum):
    """How the home of either spouse is rented (Fam. Code 2400(a)(5))."""

    NONE = "none"
    FIXED_END = "fixed_end"
    NO_FIXED_END = "no_fixed_end"
    MAY_BUY = "may_buy"


class Benefit(StrEnum):
    """Public benefits that qualify for a fee waiver (Gov. Code 68632(a)). Several may be true."""

    MEDI_CAL = "medi_cal"
    CALFRESH = "calfresh"
    CALWORKS = "calworks"
    SSI = "ssi"
    SSP = "ssp"
    COUNTY_RELIEF = "county_relief"
    IHSS = "ihss"
    CAPI = "capi"
    WIC = "wic"
    UNEMPLOYMENT = "unemployment"


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
