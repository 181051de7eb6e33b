"""What is chosen about ways to save time or money."""

from enum import StrEnum


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
