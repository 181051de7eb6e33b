"""Ways to save time or money: filing together, the short kinds of ending, and a fee waiver."""

from firstpaper.facts.choices import Benefit, Lease, Shortcut
from firstpaper.facts.count import Count
from firstpaper.facts.day import Day
from firstpaper.facts.model import Facts
from firstpaper.facts.money import Amount
from firstpaper.facts.told import Told


class Shortcuts(Facts):
    """Which of these ways the filer wants to look at."""

    look_at: Told[tuple[Shortcut, ...]] = None


class Joint(Facts):
    """Filing one petition together (Fam. Code 2330(c), 2342.5).

    `pressed` is asked first: whether anybody pushes the filer, or the filer is afraid to say no. `agree`
    says that both mean to settle every issue by agreement, `both_waive` that each could have a fee waiver.
    """

    pressed: Told[bool] = None
    willing: Told[bool] = None
    agree: Told[bool] = None
    both_waive: Told[bool] = None


class Summary(Facts):
    """What a summary dissolution (Fam. Code 2400) and a notice of termination (299) ask about.

    Debts leave cars out; so does property, which also leaves out what is owed on it. `real_estate` is any
    interest of either, anywhere, but a lease of a home.
    """

    pregnant: Told[bool] = None
    real_estate: Told[bool] = None
    lease: Told[Lease] = None
    lease_ends_on: Told[Day] = None
    debts: Told[Amount] = None
    community: Told[Amount] = None
    separate_petitioner: Told[Amount] = None
    separate_respondent: Told[Amount] = None
    agreement: Told[bool] = None
    waive_support: Told[bool] = None
    both_want: Told[bool] = None


class FeeWaiver(Facts):
    """What a request to waive court fees asks about (Gov. Code 68632).

    `household` counts the filer in. `income` is that of the household in a month, before anything is
    taken out.
    """

    wanted: Told[bool] = None
    benefits: Told[tuple[Benefit, ...]] = None
    household: Told[Count] = None
    income: Told[Amount] = None
    short_of_needs: Told[bool] = None
