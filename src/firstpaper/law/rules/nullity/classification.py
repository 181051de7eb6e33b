"""Void or voidable."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import NullityGround
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import grounds, void, voidable
from firstpaper.law.register import rule
from firstpaper.law.words import ground_words, help_first
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

KEY = "grounds.nullity"


@rule(
    "Void or voidable",
    cite=("Fam. Code 2200", "Fam. Code 2201", "Fam. Code 2210", "Fam. Code 2336(a)"),
    since=date(2019, 1, 1),
    not_modelled="Whether a ground can be proved, and marriages made in another state or country.",
)
def classification(case: Case, on: date) -> Found | None:
    """A nullity rests on a ground the law names, and the ground makes the marriage either void or voidable.

    A divorce ends a marriage that was good. A nullity says that it was never good in law. The court
    cannot grant one because the marriage was short, or because both spouses agree. It needs one of
    eight grounds, and the filer must prove it.

    Two grounds make a marriage void. The law never saw it as a marriage: close family (incest), and
    another marriage that had not ended (bigamy). Six grounds make it voidable. It counts as a
    marriage until a court says otherwise: under age, an earlier spouse thought dead or long gone,
    unsound mind, fraud, force, and physical incapacity. The voidable grounds must have been there on
    the wedding day. Most of them have a last day to file, and some are lost by staying on.

    The petition has one list for void grounds and one for voidable grounds. Marking a ground in the
    wrong list is a common mistake. Two grounds, one from each list, can stand side by side: if the first
    is not proved, the second may be. Example: a husband had a wife whom he knew to be
    alive. That is bigamy, in the void list. If his wife had been gone for years and he thought that
    she was dead, it is the voidable ground of an earlier spouse.

    You may ask for a divorce in the same petition, in case the nullity is refused, if the petition shows
    it (rule 5.60(b)). This program does not write that. Ask the self-help center how it is shown.

    A nullity changes property, support and inheritance. It may need a court hearing even if the other
    side never answers: the law lets a court decide on papers alone only in a divorce or a legal
    separation. Some people who look for a nullity are better served by a divorce, some are not. The
    self-help center or a lawyer can say which. The same rules hold for a registered partnership.
    """
    told = case.grounds.nullity
    if not is_nullity(case):
        return None
    if not isinstance(told, tuple):
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE,
            _("A nullity needs a ground, and we do not know yours yet."),
            _("Read the list of grounds. If you are not sure which one fits, {advice}").format(
                advice=_("talk to the court's self-help center or a lawyer first.")
            ),
            facts=(KEY,),
        )
    if not told:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _("You marked no ground. Without one of the eight grounds, a court cannot grant a nullity."),
            _("Ask the court's self-help center or a lawyer whether a divorce or a legal separation fits."),
            facts=(KEY,),
            mended_by=("matter.kind", KEY),
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _says(case),
        _("{help} Anyone who asks for a nullity should have the facts looked at first.").format(
            help=help_first()
        ),
        facts=(KEY,),
        values={
            "nullity.grounds": [str(ground) for ground in grounds(case)],
            "nullity.void": [str(ground) for ground in void(case)],
            "nullity.voidable": [str(ground) for ground in voidable(case)],
        },
    )


def _says(case: Case) -> str:
    says = []
    if void(case):
        says.append(
            _(
                "In the list of grounds that make a marriage void (never good in law), you chose: {grounds}."
            ).format(grounds=in_a_row([ground_words(ground) for ground in void(case)]))
        )
    if voidable(case):
        says.append(
            _(
                "In the list of grounds that make a marriage voidable (good until a judge says it is not), "
                "you chose: {grounds}."
            ).format(grounds=in_a_row([ground_words(ground) for ground in voidable(case)]))
        )
    if NullityGround.FRAUD in voidable(case):
        says.append(
            _(
                "Fraud must go to the heart of the marriage, such as never meaning to live together. A lie "
                "about money or character is most often not enough."
            )
        )
    if void(case) and voidable(case):
        says.append(_("You chose from both lists. You can: the court then looks at one after the other."))
    return " ".join(says)
