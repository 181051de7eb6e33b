"""One sheet of the packet, ready to be filled and drawn."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from firstpaper.locale import ENGLISH, _, language, speaking
from firstpaper.packet.pictures.chart import Chart
from firstpaper.packet.pictures.shares import Shares
from firstpaper.packet.piles import Pile
from firstpaper.packet.templates import render

Style = Literal["worksheet", "attachment", "reading"]


@dataclass(frozen=True, slots=True)
class Sheet:
    """A template with the values it needs.

    `title` is its entry in the outline and on the cover checklist, `running` its footer. A sheet of the style
    "attachment" is filed with the court; all others stay with the filer, and one of the style "reading" is
    set closely, with nothing to fill in. Neighbours of one `group` stand on one line of the checklist, under
    that name; `purpose_of_all` is then what it says of them. `pictures` are what a `<figure>` of the template
    can name. One that `follows` may start on the page where the one before ends, but for one `given_away` to
    somebody else. `short` is what it is called where the group is named already; `way` is the way it serves,
    where that is not the ordinary petition. `language` is the one in which it was made and is filled in; what
    is filed with the court is English.
    """

    template: str
    title: str
    values: Mapping[str, object]
    running: str = ""
    style: Style = "worksheet"
    purpose: str = field(default="")
    purpose_of_all: str = field(default="")
    group: str = field(default="")
    pictures: Mapping[str, Chart | Shares] = field(default_factory=dict)
    follows: bool = False
    given_away: bool = False
    pile: Pile = Pile.READ
    short: str = ""
    way: str = ""
    language: str = field(default_factory=language)

    def __post_init__(self) -> None:
        if self.style == "attachment":
            object.__setattr__(self, "language", ENGLISH)

    @property
    def foot(self) -> str:
        """What stands at the foot of its pages; in another language than English also what it is worth."""
        running = f"{self.running.removesuffix('.')}. " if self.running and self.worth else self.running
        return running + self.worth

    @property
    def worth(self) -> str:
        """That a translated sheet is an aid to reading; nothing on one in English."""
        if self.language == ENGLISH:
            return ""
        with speaking(self.language):
            return _(
                "An aid to reading: the form in English counts. Translated by this project, not certified."
            )

    @property
    def markup(self) -> str:
        """The sheet filled in, in the sheet markup."""
        with speaking(self.language):
            return render(self.template, self.values)
