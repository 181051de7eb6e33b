"""Ending a partnership by notice."""

from collections.abc import Sequence
from datetime import date

from firstpaper.counting import MissingDay, add_months, short_date, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.due import months_after
from firstpaper.law.measures.marriage import union_began
from firstpaper.law.measures.short_way import LIMITS_ONLY, Condition, conditions, limits_known
from firstpaper.law.register import rule
from firstpaper.law.rules.summary._words import (
    in_the_way,
    money_steps,
    still_open,
    the_first_few,
    wants_to_look,
)
from firstpaper.law.words import spaced
from firstpaper.locale import _

REGISTERED, UNIONS, LOOK = "dates.registered_on", "matter.unions", "shortcuts.look_at"


@rule(
    "Ending a partnership by notice",
    cite=("Fam. Code 299(a)", "Fam. Code 299(b)", "Fam. Code 299(c)", "Fam. Code 298(a)(1)"),
    since=date(2011, 1, 1),
    not_modelled="Partnerships registered elsewhere, and whether a court would set a notice aside.",
)
def partnership_notice(case: Case, on: date) -> Found | None:
    """California partners with a short partnership, no children and little property can end it by a notice
    to the state, without a court.

    What the law asks, on the day you file the notice. You both sign it before a notary. You have no child
    together, and neither of you is pregnant. Neither owns a home or land. A lease of your home is fine if
    it ends within a year and gives no right to buy. Debts since you registered are within a limit, car
    loans left out. What you own together is worth less than another limit, and what each owns alone is not
    more than that. You have signed an agreement on property and debts. You both give up support. You have
    both read the state's brochure, and you both want it.

    The time. The partnership is not more than five years old on the day you file. Here the clock runs to
    the filing and not to the day you parted, as it does in the short kind of divorce.

    How it ends. Six months after the filing, the partnership is over. Until then either of you can stop it:
    file a notice with the Secretary of State and mail a copy to the other. Later a court can still set it
    aside, for fraud or force, or because a condition was not met.

    An example. You registered on January 10, 2022. A notice filed on January 10, 2027 is in time. One filed
    on January 11 is too late.

    If you are also married to each other, this ends only the partnership. One court case can end both.

    What to do. If all fits and nobody is pushed, ask the Secretary of State for the notice and the
    brochure. If not, go on with this petition.
    """
    unions = known(case.matter.unions) or ()
    divorce = kind_of(case) is Kind.DISSOLUTION
    if not wants_to_look(case) or not divorce or Union.PARTNERS_CALIFORNIA not in unions:
        return None
    if Union.MARRIAGE in unions:
        return Found(
            Outcome.NOT_MET,
            Weight.GOOD_TO_KNOW,
            _("A notice to the state would end only your partnership, not your marriage."),
            _("Go on with this petition. One court case can end both."),
            facts=(UNIONS, LOOK),
        )
    return _partners_only(case, on)


def _partners_only(case: Case, on: date) -> Found:
    years: int = figure("summary_dissolution.partnership_years", on).value
    began = union_began(case, Union.PARTNERS_CALIFORNIA)
    line = add_months(began, 12 * years, missing_day=MissingDay.LAST_DAY_OF_MONTH) if began else None
    shared = conditions(case, on)
    keys = (UNIONS, LOOK, REGISTERED, *(key for one in shared for key in one.keys))
    steps = money_steps(case, shared)
    if line:
        steps = (_last_day(line, years, on), *steps)
    reasons, parts = in_the_way(shared), still_open(shared)
    if line is None:
        parts.append(_("the day you registered"))
    elif line < on:
        reasons.append(_("the partnership is more than {years} years old").format(years=years))
    if reasons:
        return Found(
            Outcome.NOT_MET,
            Weight.GOOD_TO_KNOW,
            _("A notice to the state cannot end your partnership: {reasons}.").format(
                reasons=the_first_few(reasons)
            ),
            _do_instead(shared),
            facts=keys,
            steps=steps,
        )
    if parts:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("A notice to the state may be enough to end your partnership. Not known yet: {parts}.").format(
                parts=the_first_few(parts)
            ),
            _("Find that out, or ask the court's self-help center."),
            facts=keys,
            steps=steps,
        )
    assert line is not None
    return _may_fit(on, line, keys, steps)


def _last_day(line: date, years: int, on: date) -> str:
    last = _("{day}: the last day to file the notice, {years} years after you registered")
    past = _("{day}: the last day to file the notice has passed, {years} years after you registered")
    return (last if on <= line else past).format(day=short_date(line), years=years)


def _do_instead(shared: Sequence[Condition]) -> str:
    go_on = _("Go on with this petition. It ends the partnership too.")
    if not any(one.met is False and one.limit for one in shared):
        return go_on
    return spaced((go_on, _("Limits on money are known to us only at second hand.")))


def _may_fit(on: date, line: date, keys: tuple[str, ...], steps: tuple[str, ...]) -> Found:
    if not limits_known(on):
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _(
                "What you told us fits a notice to the state. Its money limits are open: those for a notice "
                "on {day} were not published when we last looked."
            ).format(day=spell_date(on)),
            _("Look at the limits in the state's brochure, or ask the court's self-help center."),
            facts=keys,
            values={LIMITS_ONLY: True},
            steps=steps,
            certainty=Certainty.UNCONFIRMED,
        )
    months: int = figure("summary_dissolution.notice_months", on).value
    ends = months_after(on, months)
    last, *money = steps
    over = _("{day}: it would end, {months} months after you file the notice on {on}")
    return Found(
        Outcome.CLOSE if line == on else Outcome.MET,
        Weight.LOOK_AGAIN,
        _(
            "By what you told us, a notice to the state may be enough to end your partnership. Filed on "
            "{on}, it would end on {ends}. The last day to file it is {line}."
        ).format(on=spell_date(on), ends=spell_date(ends.day), line=spell_date(line)),
        _(
            "Check the money limits in the brochure of the Secretary of State. If you choose this way, do "
            "not file this petition."
        ),
        facts=keys,
        dates={"last_day_to_file": line, "ends_on": ends.day},
        steps=(last, over.format(day=short_date(ends.day), months=months, on=short_date(on)), *money),
        certainty=Certainty.SECONDARY,
    )
