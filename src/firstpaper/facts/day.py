"""A day as a person remembers it: whole or in part, sure or unsure.

Kept in the notation of ISO 8601-2 (extended date-time format), level 1: ``2016-06-14``, ``2016-06``,
``2016``, and a trailing ``?`` for "I am not sure". A partial or unsure day is never completed by
guessing; rules ask for its earliest and latest possible day instead.
"""

import re
from calendar import monthrange
from dataclasses import dataclass
from datetime import date
from typing import Any, Self

from pydantic_core import core_schema

FIRST_YEAR, LAST_YEAR = 1800, 2199
"""No household tells of other years. Counting may go a long way from a day and still meet a calendar."""

_NOTATION = r"(?P<year>\d{4})(-(?P<month>\d{2})(-(?P<day>\d{2}))?)?(?P<unsure>\?)?"


@dataclass(frozen=True, slots=True)
class Day:
    """A day, a month or a year, with a mark for "not sure".

    Raises ValueError for a day that no calendar has, such as 31 February, or of a year nobody lives in.
    """

    year: int
    month: int | None = None
    day: int | None = None
    unsure: bool = False

    def __post_init__(self) -> None:
        if self.month is None and self.day is not None:
            raise ValueError("a day without its month")
        if not FIRST_YEAR <= self.year <= LAST_YEAR:
            raise ValueError("a year out of reach")
        date(self.year, 1 if self.month is None else self.month, 1 if self.day is None else self.day)

    @classmethod
    def parse(cls, text: str) -> Self:
        """Read the notation this class writes; ValueError for anything else."""
        match = re.fullmatch(_NOTATION, text.strip())
        if match is None:
            raise ValueError(f"not a day in the form 2016-06-14: {text[:40]!r}")
        month, day = match["month"], match["day"]
        return cls(
            int(match["year"]),
            int(month) if month else None,
            int(day) if day else None,
            bool(match["unsure"]),
        )

    @classmethod
    def of(cls, day: date, *, unsure: bool = False) -> Self:
        """The whole day `day`."""
        return cls(day.year, day.month, day.day, unsure)

    @property
    def whole(self) -> date | None:
        """The day itself where year, month and day were told, sure or not."""
        return date(self.year, self.month, self.day) if self.month and self.day else None

    @property
    def sure(self) -> date | None:
        """The day itself where it was told whole and without doubt."""
        return None if self.unsure else self.whole

    @property
    def earliest(self) -> date:
        """The first day it can be, from the parts that were told."""
        return date(self.year, self.month or 1, self.day or 1)

    @property
    def latest(self) -> date:
        """The last day it can be, from the parts that were told."""
        month = self.month or 12
        return date(self.year, month, self.day or monthrange(self.year, month)[1])

    def __str__(self) -> str:
        parts = [f"{self.year:04d}"] + [f"{part:02d}" for part in (self.month, self.day) if part]
        return "-".join(parts) + ("?" if self.unsure else "")

    @classmethod
    def __get_pydantic_core_schema__(cls, _source: Any, _handler: Any) -> core_schema.CoreSchema:
        return core_schema.no_info_plain_validator_function(
            cls._validate, serialization=core_schema.plain_serializer_function_ser_schema(str)
        )

    @classmethod
    def _validate(cls, value: object) -> Self:
        if isinstance(value, cls):
            return value
        if isinstance(value, date):
            return cls.of(value)
        if isinstance(value, str):
            return cls.parse(value)
        raise ValueError("a day is written as 2016-06-14")
