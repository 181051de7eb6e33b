"""One sheet of the packet, ready to be filled and drawn."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

Style = Literal["worksheet", "attachment"]


@dataclass(frozen=True, slots=True)
class Sheet:
    """A template with the values it needs.

    `title` is its entry in the outline and on the cover checklist, `running` its footer. A sheet
    of the style "attachment" is filed with the court; all others stay with the filer.
    """

    template: str
    title: str
    values: Mapping[str, object]
    running: str = ""
    style: Style = "worksheet"
    purpose: str = field(default="")
