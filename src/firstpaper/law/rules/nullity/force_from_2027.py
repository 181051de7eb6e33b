"""A late nullity for force, from 2027."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import NullityGround
from firstpaper.law.figure import figure
from firstpaper.law.finding import NEEDS_PERMISSION, Found, Outcome, Weight
from firstpaper.law.measures.nullity import Limit, grounds, late_allowed_from, time_limit
from firstpaper.law.register import rule
from firstpaper.law.words import help_first, spaced
from firstpaper.locale import _


@rule(
    "A late nullity for force, from 2027",
    cite=("Fam. Code 2211(g) (Stats. 2025, ch. 633)", "Fam. Code 2211(e)"),
    since=date(2026, 1, 1),
    not_modelled="What a court takes as good cause, and the form on which to ask.",
)
def force_from_2027(case: Case, on: date) -> Found | None:
    """From January 1, 2027, a court may allow a nullity for force that is filed after its four years.

    Until December 31, 2026, a petition on the ground of force must be filed within four years after
    the wedding, and the court cannot make an exception. From January 1, 2027, a court may let a late
    petition go on if it is shown good cause. "May" means that the judge decides. It is not a right.

    Example: a wedding on November 26, 2022. Filed on November 30, 2026, the petition is in time,
    because the court was closed on the days before. Filed on December 31, 2026, it is late, and nobody
    can allow it. Filed on January 1, 2027 or later, it is late, but the court may allow it.

    The law does not say whether this also helps somebody whose four years had ended before 2027. It can
    be read both ways: it speaks of any petition that is filed late, but a right that has ended is not
    always brought back. A lawyer should look at it. The court's forms for asking are still to come.

    If you can still file within the four years, do. Do not count on permission. If you were forced
    into a marriage you may be in danger: see the pages on safety.
    """
    if NullityGround.FORCE not in grounds(case):
        return None
    limit = time_limit(case, NullityGround.FORCE, on)
    if limit.last_day is None or limit.rolled is None:
        return None
    if limit.needs_permission:
        since = figure("nullity.force_late_permission", on).since
        return _ask_permission(limit, limit.last_day, limit.rolled, since)
    begins = late_allowed_from(NullityGround.FORCE, on)
    if begins is None:  # in force already, and the petition is in time
        return None
    return _beforehand(limit, limit.rolled, begins) if limit.may_file else _wait(limit, begins)


def _ask_permission(limit: Limit, last_day: date, rolled: date, begins: date) -> Found:
    doubt = _("It is not settled whether that law helps where the four years ended before it began.")
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "Four years after the wedding was {day}. Since {begins}, such a petition can still go on "
            "after that. But it can go on only if the court gives permission for a good reason."
        ).format(day=spell_date(last_day), begins=spell_date(begins)),
        spaced(
            (
                doubt if rolled < begins else "",
                _("Ask how to ask for permission, and on which form. {help}").format(help=help_first()),
            )
        ),
        facts=limit.facts,
        dates={"last_day": last_day},
        values={NEEDS_PERMISSION: True},
    )


def _wait(limit: Limit, begins: date) -> Found:
    return Found(
        Outcome.CLOSE,
        Weight.GET_ADVICE,
        _(
            "Your filing day is late for force, and no court can allow that yet. From {begins}, a court may "
            "let a late petition go on for a good reason."
        ).format(begins=spell_date(begins)),
        _(
            "Do not file on this ground before that day without advice. It is not settled whether the new "
            "law helps where the four years ended before it began. {help}"
        ).format(help=help_first()),
        facts=limit.facts,
        dates={"permission_possible_from": begins},
    )


def _beforehand(limit: Limit, rolled: date, begins: date) -> Found:
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _(
            "If your filing slips past {rolled}, it is late. Filed before {begins}, nobody can allow it. "
            "Filed on that day or later, it needs the court's permission, for a good reason."
        ).format(rolled=spell_date(rolled), begins=spell_date(begins)),
        _("File in time, and do not count on permission."),
        facts=limit.facts,
        dates={"last_day_moved_to": rolled, "permission_possible_from": begins},
    )
