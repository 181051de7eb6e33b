"""The other side is in prison or jail."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Special
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import took_part
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "The other side is in prison or jail",
    cite=("Pen. Code 4013(a)-(b)", "Code Civ. Proc. 415.10"),
    since=date(2023, 1, 1),
    not_modelled=(
        "What each prison or jail asks of somebody who comes to serve papers. Their rules were not read."
    ),
)
def locked_up(case: Case, on: date) -> Found | None:
    """Somebody in prison or jail is served there, by anybody who may serve papers.

    What the law says. Anyone who may serve can serve a person who is locked up in California. A warden,
    sheriff or jailer who is given the papers must hand them on at once, with a note of the time.

    Which day counts. The law does not say if service is complete when the jailer gets the papers, or when
    the prisoner does. So we go by the later day.

    What to do before you pay the fee. Find out where the person is, and the prison number: California's
    prisons and each county's jail have a search on their own site. Call and ask how papers are served
    there. In a state prison the prison's own staff do it: ask for the Litigation Coordinator. For a county
    jail, ask the sheriff of that county. Mail with FL-117 works too, if the person signs.

    Outside California, or in a federal prison, ask there. Being locked up does not stop the case. The
    other side can still respond, and can ask to take part.

    An example. He is in a state prison. Its staff get the papers on December 4 and hand them to him on
    December 8. The time to respond runs from December 8.
    """
    special = known(case.people.special) or ()
    if Special.OTHER_SIDE_LOCKED_UP not in special or took_part(case, on):
        return None
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE,
        _("The other side is in prison or jail. The papers are served there, and that takes some planning."),
        _(
            "Before you pay the fee, find out where they are and their prison number. Call and ask how "
            "papers are served there: in a state prison its own staff do it, for a jail ask the sheriff. If "
            "a jailer takes the papers, count from the later day, when the prisoner gets them."
        ),
        facts=("people.special",),
    )
