"""The base of every fact model: frozen, and closed to keys nobody knows."""

from typing import Any, Self, cast

from pydantic import BaseModel, ConfigDict


class Facts(BaseModel):
    """A group of facts. Unknown keys are an error, so that a misspelt key is never lost."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, validate_default=False)

    @classmethod
    def nothing(cls) -> Self:
        """The group with nothing told. It needs no validator: a group nobody asks about costs nothing."""
        return cast(Self, cls.model_construct())

    def __deepcopy__(self, memo: dict[int, Any] | None = None) -> Self:
        """Itself: facts never change, so that the groups not told may be the same ones in every case."""
        return self
