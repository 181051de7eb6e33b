"""A paper about property or support that the two signed."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.agreements import signed_an_agreement
from firstpaper.facts.choices import AgreementSigned
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

SPECIAL, LISTED = "people.special", "schedule.agreement"
SIGNED, ON_SUPPORT = "property.agreement_signed", "property.agreement_on_support"


@rule(
    "A paper on property or support",
    cite=("Fam. Code 1500", "Fam. Code 1501", "Fam. Code 1620"),
    since=date(2020, 1, 1),
    not_modelled=(
        "Whether the paper is good and what it means, and the older law for papers of earlier years."
    ),
)
def agreement(case: Case, on: date) -> list[Found]:
    """What two people signed about property can come before the law's own rules, if a judge holds it good.

    Before the wedding. Such a paper is called a premarital agreement. The one who is held to it can fight it.
    It does not count as signed freely unless the judge finds a row of things. Among them: that person had a
    lawyer of their own, or gave that up in a separate paper. There were at least seven days between the final
    paper and the signing. A person without a lawyer was told in writing what they give up.

    After the wedding. A paper that changes whose a thing is needs a clear statement in writing, agreed to by
    the one who loses by it.

    Support. A promise about support for a spouse, such as giving it up, does not hold against somebody
    who had no lawyer of their own when they signed. Nor does it if it is grossly unfair when it is used.
    A lawyer alone does not save it. Support for a child can never be cut down by such a paper.

    Older papers. We use the words of 2020. For papers from 2002 to 2019, and from before 2002 or 1986,
    parts of the law were other.

    What it means for the petition. Items 8, 9 and 10 depend on it. Item 9 can claim a thing as separate
    because of the paper. The paper itself is commonly not filed with the petition (common practice, no
    source).

    What to gather. The paper. The day each of you got the final version, and the day of signing. Who had a
    lawyer. Any separate paper that gave up having one. Any written explanation of rights.

    An example. Signed a week before the wedding; she had no lawyer. It says that each keeps their own pay. A
    judge has to look before anybody can say that her share of his pay is gone.
    """
    return list(_each(case)) if signed_an_agreement(case) else []


def _each(case: Case) -> Iterator[Found]:
    facts = (SPECIAL, LISTED, SIGNED, ON_SUPPORT)
    yield Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "{signed} If a judge holds it good, it comes before the usual rules. Items 8, 9 and 10 of the "
            "petition depend on it."
        ).format(signed=_signed(case)),
        _(
            "Show it to a lawyer before you sign. Bring the paper, the day each of you got the final "
            "version, and who had a lawyer. {help}"
        ).format(help=help_first()),
        facts=facts,
        cite=_cites(case),
    )
    if known(case.property.agreement_on_support) is not False:
        yield from _support(case, facts)


def _signed(case: Case) -> str:
    """What was told of the paper: when it was signed, and whether it speaks of support."""
    speaks_of_support = known(case.property.agreement_on_support)
    if speaks_of_support is None:
        paper = _("a paper about property or support")
    else:
        paper = _("a paper that speaks of support") if speaks_of_support else _("a paper about property")
    words = {
        AgreementSigned.BEFORE: _("You two signed {paper} before you married or registered."),
        AgreementSigned.DURING: _("You two signed {paper} while married or registered."),
        AgreementSigned.BOTH: _("You two signed {paper} before you married or registered, and one since."),
    }
    signed = known(case.property.agreement_signed)
    return (words[signed] if signed else _("You two signed {paper}.")).format(paper=paper)


def _cites(case: Case) -> tuple[str, ...]:
    """The law of papers signed before, of those signed since, or of both where that was not told."""
    before, since = ("Fam. Code 1610-1617", "Fam. Code 1612(b)-(c)"), ("Fam. Code 850-852",)
    signed = known(case.property.agreement_signed)
    if signed is AgreementSigned.BEFORE:
        return before
    return since if signed is AgreementSigned.DURING else before + since


def _support(case: Case, facts: tuple[str, ...]) -> Iterator[Found]:
    if known(case.property.agreement_signed) is AgreementSigned.DURING:
        return
    yield Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if known(case.property.agreement_on_support) else Weight.LOOK_AGAIN,
        _(
            "A promise about support made before the wedding may not hold. Nobody who had no lawyer of their "
            "own when signing is held to it. Nor does it hold if it is grossly unfair when it is used."
        ),
        _(
            "So do not give up support in item 8 only because the paper says so. Child support stays as it "
            "is."
        ),
        facts=facts,
        cite=("Fam. Code 1610-1617", "Fam. Code 1612(b)-(c)"),
    )
