"""Sums that only a court can settle, worked out as one published opinion did: an estimate, never a ruling.

Each refuses where the opinion's facts are not those of the case. They are for a private page that says
so, and never for papers that are filed.
"""

from firstpaper.locale import _


def caution() -> str:
    """What stands above every estimate."""
    return _(
        "This is an estimate for you alone. It follows one published court opinion. Your judge may do it "
        "another way, and small facts change it much. Do not file it. Show it to a lawyer."
    )
