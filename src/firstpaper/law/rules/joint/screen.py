"""One petition for both."""

from collections.abc import Iterator
from datetime import date
from typing import TypedDict

from firstpaper.counting import spell_date
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Kind, Shortcut
from firstpaper.facts.kinds import is_nullity, kind_of
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import filed_on, joint
from firstpaper.law.measures.waiting import EarliestEnd, earliest_end
from firstpaper.law.register import rule
from firstpaper.locale import _

LOOK, KIND, DANGERS = "shortcuts.look_at", "matter.kind", "safety.dangers"
PRESSED, WILLING, AGREE = "joint.pressed", "joint.willing", "joint.agree"
BOTH_WAIVE = "joint.both_waive"
FILED, REVOKED = "record.filed_on", "record.revoked_on"


@rule(
    "One petition for both",
    cite=(
        "Fam. Code 2330(c)",
        "Fam. Code 2331(b)",
        "Fam. Code 2342.5",
        "Cal. Rules of Court, rule 5.68(d)",
    ),
    since=date(2026, 1, 1),
    not_modelled="What goes in each item of the joint petition (form FL-700), and taking one back.",
)
def screen(case: Case, on: date) -> Found | None:
    """Since 2026 two spouses who agree can open a divorce or a legal separation with one joint petition.

    Safety first. It works only where each of you is free to say no. If you are afraid, or somebody pushes
    you, file on your own. A joint petition leaves less room to be heard.

    Who may. Any couple, married or partners, however long it lasted, with or without children or property.
    Both sign. You need not have settled anything yet. But you must mean to settle all of it by agreement:
    if one issue is to go to a judge, the law wants the ordinary petition. It is never open for a nullity.

    What it changes. Nobody has to be served, and nobody files a response: filing counts as service on both,
    and both count as having taken part. The orders in the summons bind both from the filing. In a divorce,
    the six months run from the filing. Both of you owe the other the papers about money within the same
    time.

    What it costs. Two fees, the one for a petition and the one for a response. They fall away only if the
    court has let *both* of you off. One fee waiver does not help.

    How it ends. You agree on everything and ask for a judgment. Or, any time before the judgment, one of
    you changes course by filing an ordinary paper, without asking anybody. Then it goes on as an ordinary
    case, with the same filing day, and the other has 30 days to answer. Nobody can ask
    the judge for an order while the petition is a joint one: that ordinary paper has to be filed first, or
    together with the request (Fam. Code 2342.5(e)). Without it the request is refused.

    An example. You two have agreed on the children and the house, and want to talk about the pension. You
    may file together. If you want a judge to decide about the pension, you may not.

    What to do. If it fits, ask the self-help center for forms FL-700 and FL-710, and do not file this
    petition.
    """
    if known(case.fact(FILED)) is not None:
        return _filed(case, filed_on(case, on))
    if Shortcut.TOGETHER not in (known(case.shortcuts.look_at) or ()):
        return None
    return next(_first(case, on))


def _filed(case: Case, filed: date | None) -> Found | None:
    """What is left to say of a joint petition that was filed; nothing of one that was filed alone."""
    if filed is None or not joint(case) or known(case.fact(REVOKED)) is not None:
        return None
    says = _("You two filed one petition together on {on}. Nobody has to be served.")
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says.format(on=spell_date(filed)),
        facts=(FILED, "record.joint", KIND),
        **_ending(_ends(case, filed)),
    )


def _first(case: Case, on: date) -> Iterator[Found]:
    """The findings in the order of asking; the first one counts."""
    told = case.joint
    if case.safety.dangers is DONT_KNOW or case.safety.dangers:
        yield _not_safe()
    if is_nullity(case):
        yield _closed(_("A nullity cannot be asked for together."), KIND)
    if told.pressed is DONT_KNOW or told.pressed is True:
        yield _not_safe()
    if told.pressed is None:
        yield _open(_("whether you are free to say no"), PRESSED)
    for answer, key, missing in (
        (known(told.willing), WILLING, _("whether the other side would sign")),
        (known(told.agree), AGREE, _("whether you both mean to settle everything by agreement")),
    ):
        if answer is None:
            yield _open(missing, key)
        if answer is False:
            yield _closed(_not_together(key), key)
    if kind_of(case) is None:
        yield _open(_("which kind of case you want"), KIND)
    yield _may(case, on)


def _not_safe() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("Filing together is only for two people who are each free to say no."),
        _("File on your own, as this packet does. Talk to a lawyer or the hotline before you sign anything."),
        facts=(LOOK, DANGERS, PRESSED),
    )


def _not_together(key: str) -> str:
    if key == WILLING:
        return _("A joint petition needs both signatures.")
    return _("A joint petition is only for couples who mean to settle everything by agreement.")


def _closed(says: str, key: str) -> Found:
    return Found(
        Outcome.NOT_MET,
        Weight.GOOD_TO_KNOW,
        says,
        _("Go on with this petition. You can still agree on things later."),
        facts=(LOOK, key),
    )


def _open(missing: str, key: str) -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("Filing together may be open to you. Not known yet: {missing}.").format(missing=missing),
        _("Find that out only if it is safe to ask. You can always file on your own."),
        facts=(LOOK, key),
    )


def _may(case: Case, on: date) -> Found:
    fee = figure("fees.first_paper", on).value
    both = {"low": 2 * fee["low"], "high": 2 * fee["high"]}
    end = _ends(case, on)
    says = _("By what you told us, you two may file one petition together. Nobody would have to be served.")
    if end:
        clock = _("Filed on {on}, the marriage or partnership could end on {end} at the earliest.")
        says = f"{says} " + clock.format(on=spell_date(on), end=spell_date(end.day))
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        f"{says} " + _fees(case, both),
        _("Ask the self-help center for forms FL-700 and FL-710. If you choose that, do not file FL-100."),
        facts=(LOOK, KIND, DANGERS, PRESSED, WILLING, AGREE, BOTH_WAIVE),
        values={"joint.fees": both},
        **_ending(end),
    )


def _ends(case: Case, filed: date) -> EarliestEnd | None:
    """When a divorce asked for together can end: its six months run from the filing."""
    return earliest_end(filed) if kind_of(case) is Kind.DISSOLUTION else None


class _Ending(TypedDict):
    dates: dict[str, date]
    steps: tuple[str, ...]


def _ending(end: EarliestEnd | None) -> _Ending:
    return {"dates": {"earliest_end": end.day} if end else {}, "steps": end.steps if end else ()}


def _fees(case: Case, both: dict[str, int]) -> str:
    if known(case.joint.both_waive):
        return _("There is no fee if the court lets both of you off. Each of you asks on a form FW-001.")
    fees = _("It costs two fees, {low} to {high} dollars in all, unless the court lets both of you off.")
    return fees.format(**both)
