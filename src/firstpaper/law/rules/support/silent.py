"""Saying nothing about support."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import GoodFaith, SupportChoice
from firstpaper.facts.kinds import is_nullity
from firstpaper.intake.predicates.grounds import files_for_one_of_the_two
from firstpaper.law.authority import Certainty
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import longest
from firstpaper.law.register import rule
from firstpaper.locale import _

MINE, THEIRS = "support.petitioner", "support.respondent"
LENGTH = ("dates.married_on", "dates.registered_on", "dates.separation_told_on", "dates.separation_acted_on")


@rule(
    "Saying nothing about support",
    cite=("Code Civ. Proc. 580(a)", "Fam. Code 4336(b)", "a superior court's instructions for default cases"),
    since=date(2007, 1, 1),
    certainty=Certainty.SECONDARY,
    not_modelled="What a court does with a silent petition once both have taken part.",
)
def silent(case: Case, on: date) -> list[Found]:
    """If the other side never answers, the judge can decide only what the petition asks.

    What the law says. Where there is no answer, a judgment cannot give more than the petition asks for.
    So a petition that says nothing about support for you can leave you without it, and without the way
    to ask later.

    Both sides of it. Asking now lets the judge order support, and it may make the other side more likely
    to fight. Keeping it open ("reserve") asks for no money now, but lets you ask later. Saying nothing is
    the calmest on paper, and the riskiest. It is your choice; we only want it to be a choice and not an
    oversight.

    In a nullity only a spouse who believed in good faith that the marriage was good can get support. If
    that is not you, we do not ask you to look again.

    After a long marriage the right to support weighs most: the law presumes that it stays open (Fam. Code
    4336). So from ten years on we ask you to get advice first.

    If you say nothing about support for the other side, they can ask for it in their response.

    An example. A petition leaves the whole item empty, the other side never answers, and the judgment
    says nothing about support. To ask later, the filer may have to go back and amend, and serve again.

    What to do. Look at the item once more before you sign.
    """
    return [*_about_the_filer(case, on), *_about_the_other_side(case)]


def _about_the_filer(case: Case, on: date) -> Iterator[Found]:
    choice = known(case.support.petitioner)
    if _no_support_in_a_nullity(case):
        return
    if choice is None:
        yield _not_told(case.support.petitioner is DONT_KNOW)
    elif choice is SupportChoice.SAY_NOTHING:
        long = _is_long(case, on)
        yield Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE if long else Weight.LOOK_AGAIN,
            _says_nothing(case),
            _("Think about asking for it, or keeping it open. The self-help center can tell you about both."),
            facts=(MINE, *(LENGTH if long else ())),
        )


def _says_nothing(case: Case) -> str:
    """That it is silent, by the name of the one for whom somebody else files."""
    if not files_for_one_of_the_two(case):
        return _(
            "Your petition says nothing about support for you. If the other side never answers, the "
            "judge can decide only what you ask for."
        )
    return _(
        "Your petition says nothing about support for {name}. If the other side never answers, the judge can "
        "decide only what it asks for."
    ).format(name=known(case.grounds.filed_for) or _("the one you file for"))


def _is_long(case: Case, on: date) -> bool:
    """Whether the law presumes that the marriage was long (Fam. Code 4336(b)); no nullity has that."""
    span = None if is_nullity(case) else longest(case)
    return span is not None and span.total_months >= figure("marriage.long_years", on).value * 12


def _no_support_in_a_nullity(case: Case) -> bool:
    """Whether the filer cannot get support anyway: only a putative spouse can (Fam. Code 2254)."""
    belief = known(case.grounds.good_faith)
    return is_nullity(case) and belief in (GoodFaith.NEITHER, GoodFaith.RESPONDENT)


def _about_the_other_side(case: Case) -> Iterator[Found]:
    choice = known(case.support.respondent)
    if choice is SupportChoice.SAY_NOTHING:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Your petition says nothing about support for the other side. They can ask in their response."),
            facts=(THEIRS,),
        )
    elif choice is None:
        yield Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("You have not chosen yet what the petition says about support for the other side."),
            _("Answer that question, or choose to say nothing about it."),
            facts=(THEIRS,),
        )


def _not_told(unknown: bool) -> Found:
    if unknown:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.GET_ADVICE,
            _(
                "You do not know yet what to say about support for you. Until you choose, the item stays "
                "empty."
            ),
            _("The self-help center can tell you what each choice does. An empty item can cost you."),
            facts=(MINE,),
        )
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("You have not chosen yet what the petition says about support for you."),
        _("Answer that question. An empty item can cost you."),
        facts=(MINE,),
    )
