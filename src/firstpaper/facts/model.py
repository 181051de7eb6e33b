"""The base of every fact model: frozen, and closed to keys nobody knows."""

from typing import Self, cast

from pydantic import BaseModel, ConfigDict


class Facts(BaseModel):
    """A group of facts. Unknown keys are an error, so that a misspelt key is never lost."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, validate_default=False)

    @classmethod
    def nothing(cls) -> Self:
        """The group with nothing told. It needs no validator: a group nobody asks about costs nothing."""
        return cast(Self, cls.model_construct())
