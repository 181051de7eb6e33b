"""The base of every fact model: frozen, and closed to keys nobody knows."""

from enum import Enum
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

    def plain(self) -> dict[str, Any]:
        """What was told, as JSON holds it, in the order of the fields; what was not told is left out.

        It is what `model_dump` gives, without the serializers of all models, which the first save waits for.
        """
        told = self.model_fields_set
        return {name: _plain(getattr(self, name)) for name in type(self).model_fields if name in told}


def _plain(value: Any) -> Any:
    """A fact as JSON holds it. Days and amounts are written as text, so that both stay exact."""
    if isinstance(value, Facts):
        return value.plain()
    if isinstance(value, tuple):
        return [_plain(one) for one in value]
    if isinstance(value, Enum):
        return value.value
    return value if value is None or isinstance(value, bool | int | str) else str(value)
