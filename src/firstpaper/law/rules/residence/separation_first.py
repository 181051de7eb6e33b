"""A legal separation now, a divorce later."""

from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import AWAY, Danger, Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import SPOUSES, SpouseResidence, same_sex_route_told, spouse_residence
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import first_court_day, short_wait
from firstpaper.law.words import spaced
from firstpaper.locale import _

FACTS = ("matter.kind", "requests.intends_to_amend")


@rule(
    "Legal separation first, divorce later",
    cite=("Fam. Code 2321", "Fam. Code 2320(a)"),
    since=date(2012, 1, 1),
    not_modelled=(
        "The six-month wait for a divorce judgment after the change. Practice books say it does not start "
        "again; the section speaks only of residence."
    ),
)
def separation_first(case: Case, on: date) -> Found | None:
    """If neither of you has lived here long enough, you can ask for a legal separation first.

    What the law says. A legal separation needs no set time here. If neither of you met the residence
    rule when the separation was filed, either of you can amend (change) the petition or the response
    once somebody meets it, and ask for a divorce. For the residence rule, the case then counts as
    begun on the day of the amended paper (Fam. Code 2321(a)).

    Say it in the first petition. If the first petition says that you mean to change it, and the
    other side has not taken part, you can give notice of the change by mail (Fam. Code 2321(b)). If
    it does not say so, plan for a new summons, handed over like the first one.

    Who it is for. Only for couples in which neither has the time. If one of you has it, a divorce
    can be filed now. If one of you has it within a month, waiting is simpler, and we do not offer it.

    Both sides of it. It starts the case, the automatic orders and the way to support orders at once.
    But it means two sets of papers, and if the other side takes part, no judge can grant the
    separation unless both agree.

    An example. You came to California and to this county on July 1, 2026, and the other side lives
    elsewhere. You can file for legal separation today. You have lived here long enough on January 2, 2027.
    That is a Saturday, so you can amend it from Monday, January 4.

    What to do. Get advice first, above all if you fled here from violence. Then say in item 11 of
    the petition that you mean to ask for a divorce later.
    """
    kind = kind_of(case)
    if kind not in (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION) or known(case.matter.amended):
        return None
    if known(case.matter.unions) == (Union.PARTNERS_CALIFORNIA,) or same_sex_route_told(case):
        return None
    spouses = [spouse_residence(case, who, on) for who in SPOUSES]
    if all(spouse.lives in AWAY for spouse in spouses):
        return None
    neither = all(spouse.fails for spouse in spouses)
    if kind is Kind.DISSOLUTION:
        return _offered(case, spouses) if neither and not _short(spouses, on) else None
    if any(spouse.qualifies for spouse in spouses):
        return _divorce_is_open(case, on)
    return _later(case, spouses) if neither else _not_known(case)


def _short(spouses: list[SpouseResidence], on: date) -> bool:
    """Whether somebody is ready so soon that nobody should begin two cases for it."""
    return any(short_wait(spouse.safe_day, on) for spouse in spouses if spouse.safe_day)


def _offered(case: Case, spouses: list[SpouseResidence]) -> Found:
    fled = Danger.FLED in (known(case.safety.dangers) or ())
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=_(
            "Neither of you has lived here long enough for a divorce. You can wait. "
            "Or ask for a legal separation now, and later for the divorce in an amended petition."
        ),
        do=spaced(
            [
                _("You fled here. Speak to a lawyer before you choose.") if fled else "",
                _("A separation starts the case now, but means two sets of papers."),
                _("If you choose it, say in the first petition that you mean to ask for a divorce later."),
                _("Ask the self-help center which way fits you."),
            ]
        ),
        facts=FACTS,
        dates=_safe_day(case, spouses),
    )


def _divorce_is_open(case: Case, on: date) -> Found | None:
    """Somebody qualifies: a separation is still a free choice, but not a way round the wait."""
    wants_divorce = known(case.requests.intends_to_amend) is True
    day = spell_date(on)
    says = _("One of you has lived here long enough for a divorce on {day}. You could file for it now.")
    return Found(
        outcome=Outcome.NOT_MET if wants_divorce else Outcome.MET,
        weight=Weight.LOOK_AGAIN if wants_divorce else Weight.GOOD_TO_KNOW,
        says=says.format(day=day),
        do=_(
            "You said that you want a divorce later. Ask the self-help center if you should file for it now. "
            "The petition does not say it: that sentence is only for couples in which neither has the time."
        )
        if wants_divorce
        else _("If a legal separation is what you want, you need not change anything."),
        facts=FACTS,
    )


def _later(case: Case, spouses: list[SpouseResidence]) -> Found:
    intends = known(case.requests.intends_to_amend)
    dates = _safe_day(case, spouses)
    when = (
        _("If nobody moves, an amended petition can ask for the divorce from {date} on.").format(
            date=spell_date(dates["first_court_day"])
        )
        if dates
        else _("Once one of you has lived here long enough, an amended petition can ask for the divorce.")
    )
    if intends is None:
        return Found(
            outcome=Outcome.NEED_TO_KNOW,
            weight=Weight.LOOK_AGAIN,
            says=spaced([_("You can file for legal separation now."), when]),
            do=_("Tell us if you mean to ask for a divorce later. The first petition should say so."),
            facts=FACTS,
            dates=dates,
        )
    return Found(
        outcome=Outcome.MET,
        weight=Weight.GOOD_TO_KNOW,
        says=spaced(
            [
                _("Your petition says that you mean to ask for a divorce later.")
                if intends
                else _("Your petition does not say that you want a divorce later."),
                when,
            ]
        ),
        do=_("If the other side takes no part, notice of the change can go by mail.")
        if intends
        else _("If you change your mind, plan to hand over the new papers like the first ones."),
        facts=FACTS,
        dates=dates,
    )


def _not_known(case: Case) -> Found | None:
    if known(case.requests.intends_to_amend) is not True:
        return None
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=_("You want to change to a divorce later. We cannot tell yet if you have to wait for that."),
        do=_("Tell us where each of you lives, and since when."),
        facts=FACTS,
    )


def _safe_day(case: Case, spouses: list[SpouseResidence]) -> dict[str, date]:
    days = [spouse.safe_day for spouse in spouses if spouse.safe_day]
    if not days:
        return {}
    return {"safe_day": min(days), "first_court_day": first_court_day(case, min(days)).day}
