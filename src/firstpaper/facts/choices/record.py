"""What is chosen about what happened after the filing."""

from enum import StrEnum


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


BY_ORDER = frozenset(
    {
        ServiceMethod.PUBLICATION,
        ServiceMethod.POSTING,
        ServiceMethod.COURT_DIRECTED,
        ServiceMethod.ABROAD,
    }
)
"""Methods whose end a court's order, or a treaty, can set."""


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
