"""An earlier marriage: bigamy, or an earlier spouse thought dead."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import NullityGround
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import grounds
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open
from firstpaper.law.words import ground_words, help_first
from firstpaper.locale import _

KEY = "grounds.prior_spouse_missing"
GROUNDS = "grounds.nullity"


@rule(
    "An earlier marriage",
    cite=("Fam. Code 2201(a)", "Fam. Code 2201(b)", "Fam. Code 2210(b)"),
    since=date(2019, 1, 1),
    not_modelled="Whether the earlier marriage was itself valid, and whether a divorce elsewhere counts.",
)
def prior_spouse(case: Case, on: date) -> Found | None:
    """An earlier marriage that had not ended makes the later one void, or in one case voidable.

    Plain bigamy: somebody married again while the earlier spouse was alive and that marriage had not
    been ended by a divorce or a nullity. The later marriage is void. This ground is in the void list,
    and there is no last day.

    The exception: the earlier spouse had been away for five years in a row just before the wedding,
    and was not known to be alive, or was thought to be dead. Then the later marriage is valid until a
    court says otherwise. This ground is in the voidable list. The spouses can use it while both are
    alive.

    So for one earlier marriage only one of the two grounds is right. Example: a man had not heard from
    his wife since 2010, did not know whether she lived, and married again in 2018. She is alive. That is
    the voidable ground. Had he known that she lived, it is bigamy.

    If the earlier marriage ended before the wedding, neither ground fits. If you only think that a
    divorce was finished, get the court's papers: many people find that theirs never was.
    """
    chosen = set(grounds(case)) & {NullityGround.BIGAMY, NullityGround.PRIOR_SPOUSE}
    if not chosen:
        return None
    if len(chosen) == 2:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _(
                "You marked both grounds about an earlier marriage. For one earlier marriage, only one is "
                "right."
            ),
            help_first(),
            facts=(GROUNDS, KEY),
        )
    missing = known(case.grounds.prior_spouse_missing)
    if missing is None:
        return _not_told(case, on)
    bigamy = NullityGround.BIGAMY in chosen
    if missing is bigamy:
        return _other_list(case, missing, on)
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("What you told us about the earlier spouse fits the ground you chose."),
        _("Bring the papers of the earlier marriage, and of its end if there was one."),
        facts=(GROUNDS, KEY),
    )


def _other_list(case: Case, missing: bool, on: date) -> Found:
    chosen, right = (NullityGround.BIGAMY, NullityGround.PRIOR_SPOUSE)[:: 1 if missing else -1]
    thought_dead = _(
        "You told us that the earlier spouse was thought dead or long gone. That ground is voidable, not "
        "bigamy."
    )
    bigamy = _(
        "You told us that the earlier spouse was not gone or thought dead. That is bigamy, a void ground."
    )
    return Found(
        Outcome.NOT_MET,
        Weight.STOP,
        thought_dead if missing else bigamy,
        _('Choose the ground "{ground}" instead, if the answer is right. {open} {help}').format(
            ground=ground_words(right), open=stays_open(case, chosen, on), help=help_first()
        ),
        facts=(GROUNDS, KEY),
        mended_by=(GROUNDS,),
    )


def _not_told(case: Case, on: date) -> Found:
    unknown = case.grounds.prior_spouse_missing is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        _(
            "It matters whether the earlier spouse was thought dead, or had been gone for {years} years and "
            "was not known to be alive."
        ).format(years=figure("nullity.absent_years", on).value),
        help_first() if unknown else _("Answer the question about the earlier spouse."),
        facts=(GROUNDS, KEY),
    )
