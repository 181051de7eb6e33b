"""What the listed things are taken to be."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.law.authority import Certainty, weakest
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.character import Character, Code
from firstpaper.law.register import rule
from firstpaper.law.rules.property._listed import listed, names, working
from firstpaper.law.source import cited
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row


@rule(
    "What your things are taken to be",
    cite=(
        "Fam. Code 125",
        "Fam. Code 760",
        "Fam. Code 770",
        "Fam. Code 771",
        "Fam. Code 2581",
        "Fam. Code 2620-2627",
    ),
    since=date(2020, 1, 1),
    certainty=Certainty.COURT,
    not_modelled=(
        "Money followed from one thing into another, whose credit a loan was, how a business is shared, and "
        "what a judge believes."
    ),
)
def character(case: Case, on: date) -> Found | None:
    """When a thing came, how it came and whose money paid decide whether it is community or separate.

    What the law says. What you get in the marriage, while you live in California, is community property:
    it belongs to you both. What one of you had before, was given or was left is separate, and so is what
    that earns by itself. Pay from work after the date of separation is separate too. A debt of the marriage
    is a debt of you both, unless it was not for the family.

    How we look at it. By date first: before the wedding, in the marriage, or after the separation. The day
    of separation itself still counts as in the marriage. Then by how it came, whose name is on it, and
    whose money paid. What we say is where the law starts. It is not a ruling.

    Part and part. A house that one of you bought before the wedding, and that pay from the marriage helped
    to pay, is mixed. So is a pension with years of work on both sides of the wedding or the separation.
    These are the hard ones. A lawyer is worth the money there.

    Partners who registered in another state or country. Their union counts here (Fam. Code 299.2), but we
    found no section that says from which day. So what came after that registration may have come
    before the union or in it. We leave it open and send you to a lawyer.

    Names on paper. A car in one name, bought with pay from the marriage, is still community. A house in
    both names is taken to be community, even if one of you paid. That one can ask for the money back.

    An example. Married in June 2010, separated in June 2024. A car bought in 2018 from pay, in his name:
    community. Her aunt left her $40,000 in 2015, and it stayed in her own account: separate. If she adds
    her pay to it each month and keeps no records, all of it is taken to be community.

    What to do. Keep the papers that show where separate money came from. Ask a lawyer about what is mixed.
    """
    things = listed(case, on)
    known_things = tuple(one for one in things if not one.missing)
    if not known_things:
        return None
    hard = tuple(one for one in known_things if one.code in (Code.MIXED, Code.UNKNOWN))
    values = {"property.character": {one.key: str(one.code) for one in things}}
    facts = tuple(f"{one.key}.kind" for one in known_things)
    if not hard:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _n(
                "We looked at {count} thing that you listed, and can say where the law starts.",
                "We looked at {count} things that you listed, and can say where the law starts.",
                len(known_things),
            ).format(count=len(known_things)),
            _("Read what we say of each. A judge may see it in another way."),
            facts=facts,
            values=values,
            steps=working(case, known_things),
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _("Of what you listed, these are hard to place: {things}.").format(
            things=in_a_row(names(case, hard))
        ),
        _("Ask a lawyer or the self-help center about each of them before you agree to any of it."),
        facts=facts,
        values=values,
        steps=working(case, (*hard, *(one for one in known_things if one not in hard))),
        certainty=_least_certain(hard),
    )


def _least_certain(things: tuple[Character, ...]) -> Certainty:
    cites = (cite for one in things for reason in one.reasons for cite in reason.cite)
    return weakest((Certainty.STATUTE, *(each.source.certainty for cite in cites for each in cited(cite))))
