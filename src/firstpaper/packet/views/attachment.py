"""Attachments: the only sheets of the packet that are filed with the court."""

from collections.abc import Iterator

from firstpaper.facts import known
from firstpaper.locale import _, english
from firstpaper.packet.brief import Brief
from firstpaper.packet.piles import Pile
from firstpaper.packet.views.sheet import Sheet


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One filing-ready sheet for each attachment that a form names."""
    for one in brief.attachments:
        yield Sheet(
            template="attachment.html",
            title=one.label,
            running=f"{one.label} to {one.behind}",
            style="attachment",
            pile=Pile.FILE,
            purpose=_("File this page behind {form}. It continues {part}.").format(
                form=one.form, part=english(one.continues)
            ),
            values={"attachment": one, "case_number": known(brief.case.matter.case_number)},
        )
