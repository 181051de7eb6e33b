"""To whom a listed thing belongs and a debt falls, by date and manner: a presumption, never a ruling.

`assets.py` and `debts.py` hold the tables, `looks.py` what they look at, `times.py` the ends of the
marriage, `supposing.py` how a table is read where facts are missing, `flags.py` what else is to be known,
`outcome.py` what comes out, `plea.py` what a petition asks for it.
"""

from firstpaper.law.measures.character.outcome import (
    Alternative,
    Character,
    Code,
    Confidence,
    Flag,
    Point,
    Reason,
)
from firstpaper.law.measures.character.plea import Plea, is_training_loan, plea
from firstpaper.law.measures.character.reading import (
    asset_character,
    asset_characters,
    debt_character,
    debt_characters,
)

__all__ = [
    "Alternative",
    "Character",
    "Code",
    "Confidence",
    "Flag",
    "Plea",
    "Point",
    "Reason",
    "asset_character",
    "asset_characters",
    "debt_character",
    "debt_characters",
    "is_training_loan",
    "plea",
]
