"""No community property at all."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.agreements import signed_an_agreement
from firstpaper.facts.choices import CommunityHow
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import longest
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

HOW, KINDS = "property.community_how", "property.community_kinds"


@rule(
    "No community property at all",
    cite=("Fam. Code 760", "Fam. Code 2556", "Fam. Code 2251(a)"),
    since=date(1994, 1, 1),
    not_modelled=(
        "What a thing is in law, agreements before or during the marriage, and life in other states."
    ),
)
def community_none(case: Case, on: date) -> Found | None:
    """What either of you gained or came to owe during the marriage is community, whoever's name is on it.

    What the law says. Property that a married person gets during the marriage, while living in
    California, is community property, unless a law says otherwise. Pay is the plainest case, and what
    pay buys: furniture, a car in one name, money in the bank, a pension earned at work. Debts count
    too. After the separation each earns for themselves.

    Why "none" is risky. What a judgment does not deal with stays owned by you both. The court can still
    divide it, even years later, and then it has to be asked again. You sign the petition under
    penalty of perjury.

    Both sides of it. A couple who married last month and kept all apart may truly have nothing. But
    "none" marked to keep things simple is often wrong. Saying that the full list is not yet known
    commits you to less.

    An example. Married five years, both worked, nothing left but an old car in his name and a credit
    card. The car and the card are community. "None" is not true.

    In a nullity there was no valid marriage, so what the two got is shared only under the rules for a
    spouse who believed in good faith that the marriage was good. See the page nullity.putative.

    What to do. Go through the list of kinds once more before you mark "none".
    """
    how = known(case.property.community_how)
    if how is None:
        return _not_told(case.property.community_how is DONT_KNOW)
    return _none(case) if how is CommunityHow.NONE else None


def _none(case: Case) -> Found:
    kinds = known(case.property.community_kinds)
    if signed_an_agreement(case):
        return _by_agreement()
    if is_nullity(case):
        return _in_a_nullity()
    if kinds:
        return Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("You say that there is no community property, but you told us of some. Both cannot be true."),
            _(
                "Look at both answers again. Until then item 10a stays open, and 10b shows what you named. "
                "If you are not sure of the full list, you can say so instead."
            ),
            facts=(HOW, KINDS),
            values={"property.kinds": [str(kind) for kind in kinds]},
        )
    if kinds is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("You want to say that there is no community property, but the list of kinds is not answered."),
            _("Go through the list first. Furniture, a car and a pension from any job count."),
            facts=(HOW, KINDS),
        )
    return _nothing_told(case)


def _not_told(unknown: bool) -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We need to know what the petition should say about community property."),
        _("If you do not know all that there is, you can say that the full list is not known yet.")
        if unknown
        else _("Answer that question. Each way has two sides."),
        facts=(HOW,),
    )


def _by_agreement() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "Your petition says that you two share no property. Whether that is right depends on the "
            "paper that you two signed, and on whether a judge holds it good."
        ),
        _("If you are not sure, you can say that the full list is not known yet. {help}").format(
            help=help_first()
        ),
        facts=(HOW, KINDS, "people.special"),
    )


def _in_a_nullity() -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "Your petition says that there is no property to share. In a nullity it is shared only for a "
            "spouse who believed that the marriage was good, and who asks."
        ),
        help_first(),
        facts=(HOW, KINDS, "matter.kind"),
    )


def _nothing_told(case: Case) -> Found:
    span = longest(case)
    if span is not None and span.total_months == 0:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Your petition says that you two share no property. You were together less than a month."),
            _("Pay and debts from that time count, even so."),
            facts=(HOW, KINDS),
        )
    says = _("Your petition says that you two share no property. That is rare.")
    if span is not None:
        says = _(
            "Your petition says that there is no community property after {span} together. That is rare: "
            "pay earned in that time, and what it bought, belongs to you both."
        ).format(span=span)
    return Found(
        Outcome.MET,
        Weight.LOOK_AGAIN,
        says,
        _(
            "Think again of furniture, cars, tax refunds, pensions and debts. What is left out stays owned "
            "by both."
        ),
        facts=(HOW, KINDS),
    )
