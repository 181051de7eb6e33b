"""Married in California, and no court at home that would end the marriage."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AWAY, Union
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.residence import (
    SPOUSES,
    residence_key,
    residence_of,
    same_sex_route_open,
    same_sex_route_told,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.residence._words import named_county
from firstpaper.locale import _

FACTS = (
    "residence.exception.same_sex",
    "residence.exception.wedding_county",
    "residence.exception.not_dissolvable_at_home",
    *(residence_key(who, "lives") for who in SPOUSES),
)


@rule(
    "Same-sex couples who cannot divorce where they live",
    cite="Fam. Code 2320(b)",
    since=date(2012, 1, 1),
    not_modelled="Which states and countries would end the marriage. That is for a lawyer there to say.",
)
def same_sex(case: Case, on: date) -> Found | None:
    """A same-sex couple who married in California can end the marriage here if no court at home would.

    What the law asks. Three things. The marriage is between two persons of the same sex. The
    wedding was in California. Neither of you lives in a place that will end the marriage. If all
    three are true, no time in California is needed. It holds for a divorce, a legal separation and a
    nullity. You file in the county of the wedding, and California law applies.

    If the place where one of you lives does not recognize the marriage, the law takes it that this
    place will not end it. The other side can try to show the opposite.

    A spouse who lives in California lives in a place that will end the marriage. As far as we know, so
    does one who lives in any other state of the United States: since Obergefell v. Hodges (2015) 576 U.S.
    644, of June 26, 2015, every state knows such a marriage and ends it. Some ask for a time of living there
    first. We have not read that opinion. So if one of you lives in another state we leave item 2c open,
    whatever you answered. Today this way is in truth for couples who both live in other countries.

    An example. Two women married in Alameda County. Both now live in a country whose courts do not
    know their marriage. They can file in Alameda County today.

    What to do. Ask a lawyer, or a family court where you live, if that court would end your
    marriage. Keep the marriage certificate at hand: it shows the county.
    """
    told = case.residence.exception
    if Union.MARRIAGE not in (known(case.matter.unions) or ()) or known(told.same_sex) is False:
        return None
    if not all(known(residence_of(case, who).lives) in AWAY for who in SPOUSES):
        return None
    wedding_county = known(told.wedding_county)
    if wedding_county and same_sex_route_open(case, on):
        return _open(wedding_county)
    if same_sex_route_told(case):
        return _in_another_state()
    if wedding_county == "" or known(told.not_dissolvable_at_home) is False:
        return _closed()
    return _not_known(case)


def _open(wedding_county: str) -> Found:
    return Found(
        outcome=Outcome.MET,
        weight=Weight.GET_ADVICE,
        says=_(
            "You can file here although neither of you lives in California. "
            "All of it rests on this: that no court where you live would end the marriage."
        ),
        do=_(
            "File in {county}, where you married. Before that, let a lawyer look at the law of both places."
        ).format(county=named_county(wedding_county)),
        facts=FACTS,
    )


def _in_another_state() -> Found:
    return Found(
        outcome=Outcome.FOR_A_LAWYER,
        weight=Weight.GET_ADVICE,
        says=_(
            "You told us that no court at home would end your marriage. But one of you lives in another "
            "state. As far as we know, every state now ends such a marriage. So it may be that you cannot "
            "file here."
        ),
        do=_(
            "Ask a lawyer before you pay a fee. In that state you may only have to live there for a while "
            "first. We leave item 2c open."
        ),
        facts=FACTS,
        cite=("Obergefell v. Hodges (2015) 576 U.S. 644",),
    )


def _closed() -> Found:
    return Found(
        outcome=Outcome.NOT_MET,
        weight=Weight.GET_ADVICE,
        says=_(
            "Neither of you lives in California. "
            "The rule for same-sex couples who married here does not fit your answers."
        ),
        do=_("Ask a lawyer, or a family court where one of you lives, where you can file."),
        facts=FACTS,
    )


def _not_known(case: Case) -> Found:
    told = case.residence.exception
    questions = [
        (told.same_sex, _("Are the two of you of the same sex?")),
        (told.wedding_county, _("In which California county did you marry?")),
        (
            told.not_dissolvable_at_home,
            _("Is there no court where one of you lives that would end the marriage?"),
        ),
    ]
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=_(
            "Neither of you lives in California. "
            "There is one way for same-sex couples who married here, but we know too little."
        ),
        do=" ".join(question for fact, question in questions if known(fact) is None),
        facts=FACTS,
    )
