"""A partnership registered in California can be ended here from anywhere."""

from collections.abc import Sequence
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "Whether registered partners need time here",
    cite=("Fam. Code 299(d)", "Fam. Code 299.2"),
    since=date(2011, 1, 1),
    not_modelled="Ending a partnership by a notice to the Secretary of State, without a court.",
)
def partnership_consent(case: Case, on: date) -> Sequence[Found]:
    """A domestic partnership registered in California can be ended here wherever you live.

    What the law says. Whoever registers a partnership with California's Secretary of State agrees,
    in the same form, that California courts may end it. That stays true after both partners have
    moved away. It holds for a dissolution, a legal separation and a nullity. No six months and no
    three months are asked for.

    A union registered in another state or country is different. California treats it as a
    partnership when it is nearly the same thing (Fam. Code 299.2). But nobody agreed to California
    courts, so one of the partners must have lived here long enough, as in a marriage.

    An example. Two partners registered in Sacramento in 2012. One now lives in Oregon, the other in
    Spain. Either may file in California today.

    What to do. Have the declaration of partnership at hand. It shows that California registered it.
    """
    unions = known(case.matter.unions) or ()
    found = []
    if Union.PARTNERS_CALIFORNIA in unions:
        says = _("California registered your partnership. You can end it here wherever each of you lives.")
        found.append(Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, facts=("matter.unions",)))
    if Union.PARTNERS_ELSEWHERE in unions and kind_of(case) is Kind.DISSOLUTION:
        found.append(
            Found(
                outcome=Outcome.NOT_MET,
                weight=Weight.GET_ADVICE,
                says=_outside(known(case.matter.registration)),
                do=_(
                    "Show the certificate to a lawyer or the self-help center: not each kind of partnership "
                    "counts here. A city's or county's own list of partners does not."
                ),
                facts=("matter.unions", "matter.kind", "matter.registration"),
            )
        )
    if Union.PARTNERS_ELSEWHERE in unions and _names_california(known(case.matter.registration)):
        found.append(_clash())
    return found


def _outside(where: str | None) -> str:
    if not where:
        return _(
            "You two registered outside California. "
            "So one of you must have lived here long enough, as in a marriage."
        )
    return _(
        "You two registered outside California ({where}). "
        "So one of you must have lived here long enough, as in a marriage."
    ).format(where=where)


def _names_california(where: str | None) -> bool:
    """Whether the place named is in this state; Baja California is a state of Mexico."""
    return "california" in (where or "").casefold().replace("baja california", "")


def _clash() -> Found:
    return Found(
        Outcome.NOT_MET,
        Weight.LOOK_AGAIN,
        _("You said that you registered elsewhere, and where you told us the place, you named California."),
        _(
            "Look at the paper: if California's Secretary of State sent it, change the first answer. Item 2b "
            "hangs on it."
        ),
        facts=("matter.unions", "matter.registration"),
    )
