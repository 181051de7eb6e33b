"""The short kind of divorce."""

from datetime import date
from typing import NamedTuple

from firstpaper.counting import MissingDay, add_months, short_date, spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import separation, union_began
from firstpaper.law.measures.residence import SPOUSES, Route, residence_route, spouse_residence
from firstpaper.law.measures.short_way import LIMITS_ONLY, Condition, conditions, limits_known
from firstpaper.law.register import rule
from firstpaper.law.rules.marriage._unions import length_keys, unions_to_count
from firstpaper.law.rules.summary._words import (
    in_the_way,
    money_steps,
    still_open,
    the_first_few,
    wants_to_look,
)
from firstpaper.locale import _

ASKED_FOR = (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION)
"""The kinds of case in which a filer is asked about shorter ways."""

KIND, LOOK = "matter.kind", "shortcuts.look_at"


@rule(
    "The short kind of divorce",
    cite=(
        "Fam. Code 2400(a)-(b)",
        "Fam. Code 2401",
        "Fam. Code 2402",
        "Fam. Code 2403",
        "Fam. Code 299(d)",
        "Cal. Rules of Court, rule 5.77",
    ),
    since=date(2015, 1, 1),
    not_modelled="Whether the agreement is fair or complete, and values that are in doubt.",
)
def dissolution(case: Case, on: date) -> Found | None:
    """A couple with a short marriage, no children and little property can end it with one simple paper.

    What the law asks, on the day you file together. One of you has lived here long enough for a divorce.
    You have no child together, grown or small, and neither of you is pregnant. From the wedding to the
    separation it is five years or less. The law says "not more than five years"; court pages say "less
    than". So at five years to the day, ask the clerk. Neither owns a home or land anywhere. A lease of your
    home is fine if it ends within a year and gives no right to buy.

    The money. Debts from the marriage may be up to a limit, car loans left out. What you own together must
    be worth less than another limit, cars left out and loans on it taken off. What each owns alone may be
    up to that same limit. The limits are set anew on January 1 of each odd year. We know them only at
    second hand, so go by the numbers printed on your form.

    What you give up. You both sign an agreement on property and debts. You both give up support for good,
    and the right to appeal. You both read the court's booklet (form FL-810).

    How it ends. Six months after filing, the court must enter the judgment unless one of you has filed a
    notice to stop it. Until then either of you can stop it, for any reason. There is one filing fee, unless
    both of you can have a fee waiver. Registered partners can use the same way.

    An example. Married on November 25, 2021 and separated on November 25, 2026: five years to the day. One
    day later would be too late.

    What to do. If all fits and nobody is pushed, ask the self-help center for forms FL-800 and FL-810. If
    not, go on with this petition. It asks for the same divorce.
    """
    if not wants_to_look(case) or kind_of(case) not in ASKED_FOR:
        return None
    if kind_of(case) is Kind.LEGAL_SEPARATION:
        return _ends_no_separation()
    looked = _look(case, on)
    if False in looked.answers:
        return _does_not_fit(looked)
    if looked.open_parts:
        return _open(looked)
    return _fits(looked) if limits_known(on) else _limits_not_known(looked, on)


class _Looked(NamedTuple):
    """Every condition on one case, with the facts and the counting behind them."""

    years: int
    in_time: bool | None
    on_the_line: bool
    lived_here: bool | None
    shared: tuple[Condition, ...]
    keys: tuple[str, ...]
    steps: tuple[str, ...]

    @property
    def answers(self) -> tuple[bool | None, ...]:
        return (self.in_time, self.lived_here, *(one.met for one in self.shared))

    @property
    def open_parts(self) -> list[str]:
        """What is not known yet, other than the limits of the law."""
        parts = still_open(self.shared)
        if self.in_time is None:
            parts.append(_("how long it lasted"))
        if self.lived_here is None:
            parts.append(_("how long one of you has lived here"))
        return parts

    @property
    def reasons(self) -> list[str]:
        """What stands in the way."""
        reasons = in_the_way(self.shared)
        if self.in_time is False:
            reasons.append(
                _("you were married or partners for more than {years} years").format(years=self.years)
            )
        if self.lived_here is False:
            reasons.append(_("neither of you has lived here long enough yet"))
        return reasons

    @property
    def hangs_on_limits(self) -> bool:
        """Whether nothing stands in the way but amounts that we know only at second hand."""
        failed = [one for one in self.shared if one.met is False]
        return self.in_time is not False and self.lived_here is not False and all(one.limit for one in failed)

    def found(
        self, outcome: Outcome, weight: Weight, says: str, do: str, certainty: Certainty | None = None
    ) -> Found:
        return Found(outcome, weight, says, do, facts=self.keys, steps=self.steps, certainty=certainty)

    def but_for_the_limits(self, says: str, do: str) -> Found:
        """All fits but the amounts, which nobody has published yet."""
        unsure = self.found(Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, says, do, Certainty.UNCONFIRMED)
        return unsure._replace(values={LIMITS_ONLY: True})


def _look(case: Case, on: date) -> _Looked:
    years: int = figure("summary_dissolution.marriage_years", on).value
    unions, apart = unions_to_count(case), separation(case).day
    began = [day for union in unions if (day := union_began(case, union))]
    shared = conditions(case, on)
    counted = apart is not None and bool(began) and len(began) == len(unions)
    lines = sorted({_line(day, years, MissingDay.LAST_DAY_OF_MONTH) for day in began})
    loosest = [_line(day, years, MissingDay.FIRST_OF_NEXT_MONTH) for day in began]
    in_time = apart <= min(loosest) if counted and apart else None
    keys = dict.fromkeys(key for union in unions for key in length_keys(union))
    return _Looked(
        years=years,
        in_time=in_time,
        on_the_line=bool(in_time and apart and apart >= lines[0]),
        lived_here=_lived_here(case, on),
        shared=shared,
        keys=(KIND, LOOK, *keys, *(key for one in shared for key in one.keys)),
        steps=(*(_step(line, years, apart) for line in lines if apart), *money_steps(case, shared)),
    )


def _line(began: date, years: int, missing_day: MissingDay) -> date:
    return add_months(began, 12 * years, missing_day=missing_day)


def _step(line: date, years: int, apart: date) -> str:
    within = _("{apart}: you separated, within the {years} years that end on {day}")
    words = (
        within if apart <= line else _("{apart}: you separated, after the {years} years that end on {day}")
    )
    return words.format(day=short_date(line), years=years, apart=short_date(apart))


def _lived_here(case: Case, on: date) -> bool | None:
    if residence_route(case, on) is not Route.NONE:
        return True
    return False if all(spouse_residence(case, who, on).fails for who in SPOUSES) else None


def _ends_no_separation() -> Found:
    return Found(
        Outcome.NOT_MET,
        Weight.GOOD_TO_KNOW,
        _("The short kind of divorce is not for a legal separation: it ends the marriage or partnership."),
        _("Go on with this petition, or change the kind of case to a divorce."),
        facts=(KIND, LOOK),
    )


def _does_not_fit(looked: _Looked) -> Found:
    says = _("The short kind of divorce is not open to you: {reasons}.")
    if looked.hangs_on_limits:
        return looked.found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            says.format(reasons=the_first_few(looked.reasons)),
            _("We know these amounts only at second hand. Look at the numbers printed on form FL-800."),
            Certainty.SECONDARY,
        )
    return looked.found(
        Outcome.NOT_MET,
        Weight.GOOD_TO_KNOW,
        says.format(reasons=the_first_few(looked.reasons)),
        _("Go on with this petition. It asks for the same divorce."),
    )


def _open(looked: _Looked) -> Found:
    says = _("The short kind of divorce may be open to you. Not known yet: {parts}.")
    return looked.found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        says.format(parts=the_first_few(looked.open_parts)),
        _("Find that out, or ask the court's self-help center."),
    )


def _limits_not_known(looked: _Looked, on: date) -> Found:
    return looked.but_for_the_limits(
        _(
            "What you told us fits the short kind of divorce. Its money limits are open: those for a filing "
            "on {day} were not published when we last looked."
        ).format(day=spell_date(on)),
        _("Look at the limits printed on form FL-800, or ask the court's self-help center."),
    )


def _fits(looked: _Looked) -> Found:
    if looked.on_the_line:
        return looked.found(
            Outcome.CLOSE,
            Weight.LOOK_AGAIN,
            _("It lasted {years} years to the day. The law allows that, but court pages say less.").format(
                years=looked.years
            ),
            _("Ask the clerk whether you may still use the short kind of divorce."),
            Certainty.SECONDARY,
        )
    return looked.found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        _("By what you told us, the short kind of divorce may be open to the two of you."),
        _(
            "Check the money limits on form FL-800 and read the booklet, FL-810. If you choose it, do not "
            "file this petition."
        ),
        Certainty.SECONDARY,
    )
