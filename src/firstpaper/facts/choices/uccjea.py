"""What is chosen for form FL-105."""

from enum import StrEnum


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
