"""Danger."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Danger, NullityGround, SafeHere
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.emergency import emergency_number
from firstpaper.law.measures.nullity import grounds
from firstpaper.law.register import rule
from firstpaper.locale import _

DANGERS, HERE = "safety.dangers", "safety.here"


@rule(
    "Danger",
    cite=("Fam. Code 246", "Gov. Code 70677(b)(5)", "National Domestic Violence Hotline, own number"),
    since=date(2015, 1, 1),
    not_modelled="Whether an order would be granted. Nothing here measures how great a danger is.",
)
def danger(case: Case, on: date) -> list[Found]:
    """If you are in danger, your safety comes before any court paper.

    In an emergency call 911. The National Domestic Violence Hotline is free and open day and night:
    1-800-799-7233. Use a phone that the other person cannot check.

    Abuse is more than blows. It can be threats, stalking, watching your phone, keeping you from money or
    from family, or making you afraid to say no.

    What a court can do. You can ask for a domestic violence restraining order on form DV-100. It costs
    nothing to ask. A judge looks at it the same day, or the next court day if it comes in late. It can
    order a person to stay away, to move out, and can deal with children and money for a while. You can
    ask for it without a divorce case, and besides one.

    When papers are served, danger can grow. Think about where you will be on that day, and tell somebody
    you trust. If you fled to California, or if your children are with you and the other side does not
    know where, see a lawyer before you choose a kind of case or write down an address. Many will help
    for free in such a case.

    Being afraid is enough to ask for help. You need no proof to call.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    hotline = _hotline(case, on)
    if known(case.safety.here) is SafeHere.NOT_SAFE:
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _("You told us that this is not a safe time or place."),
            _("Stop here if you need to. Your answers can wait. {help}").format(help=hotline),
            facts=(HERE,),
        )
    if known(case.safety.dangers) is None:
        if case.safety.dangers is DONT_KNOW:
            yield Found(
                Outcome.FOR_A_LAWYER,
                Weight.GET_ADVICE,
                _("You are not sure whether you are in danger. You do not have to be sure to ask for help."),
                hotline,
                facts=(DANGERS,),
            )
        else:
            yield Found(
                Outcome.NEED_TO_KNOW,
                Weight.LOOK_AGAIN,
                _("We have not asked you about your safety yet."),
                _("Please answer that question before you give an address. {help}").format(help=hotline),
                facts=(DANGERS,),
            )
    elif told := known(case.safety.dangers):
        yield from _signs(told, hotline)
    if NullityGround.FORCE in grounds(case) and not known(case.safety.dangers):
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _("You told us that somebody was forced into this marriage. That can go on to be a danger."),
            _("You can ask for help at any time. {help}").format(help=hotline),
            facts=("grounds.nullity",),
        )


def _signs(told: tuple[Danger, ...], hotline: str) -> Iterator[Found]:
    yield Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("What you told us can mean danger. Your safety comes before any court paper."),
        _("{help} You can ask the court for protection on form DV-100. Asking is free.").format(help=hotline),
        facts=(DANGERS,),
    )
    if Danger.FLED in told:
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "You left another place to be safe. Which kind of case to choose, and where, matters more "
                "for you."
            ),
            _("Talk to a lawyer or the hotline before you choose and before you file."),
            facts=(DANGERS,),
        )
    if Danger.RESTRAINING_ORDER in told:
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "If there is a restraining order, it stays in force next to this case. If you want one, ask "
                "for it now."
            ),
            _(
                "Keep a copy with you. Bring the case number, and tell whoever serves your papers about the "
                "order."
            ),
            facts=(DANGERS,),
        )


def _hotline(case: Case, on: date) -> str:
    return _(
        "In an emergency call {emergency}. The National Domestic Violence Hotline is free, day and night: "
        "{hotline}."
    ).format(
        emergency=emergency_number(known(case.residence.petitioner.lives), on),
        hotline=figure("help.domestic_violence_hotline", on).value,
    )
