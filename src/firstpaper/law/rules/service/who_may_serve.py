"""Who may hand over the papers."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.service import service_open
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "Who may serve the papers",
    cite=("Code Civ. Proc. 414.10", "Cal. Rules of Court, rule 5.68(a)"),
    since=date(1970, 7, 1),
    not_modelled=(
        "Whether the sheriff's fee is waived for you, and what a paid server must be registered for."
    ),
)
def who_may_serve(case: Case, on: date) -> Found | None:
    """Somebody else must hand over the papers: at least 18 years old, and not one of the two of you.

    What the law asks. You may not serve your own papers. You may not even mail them yourself. Ask a
    friend, a relative, the sheriff, or a registered process server. The sheriff charges a fee, which a
    fee waiver covers. The person who serves fills in and signs the proof of service.

    Good sense, not law: do not ask a grown child of yours or a new partner. It can hurt them, and it can
    start a fight.

    An example. Your sister is 30 and is not part of the case. She may do it. Your son is 17. He may not.

    If you two filed one petition together, nothing has to be served.
    """
    if not service_open(case, on):
        return None
    age = figure("service.server_age", on).value
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _(
            "You may not serve the papers yourself. It must be somebody else, at least {age} years old."
        ).format(age=age),
        _("Ask a friend, a relative, the sheriff or a registered process server."),
        facts=("record.filed_on", "record.service.method"),
        values={"service.server_age": age},
    )
