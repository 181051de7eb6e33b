"""The petition says "none", but the list holds some."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityHow, SeparateHow
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.character import Character, Code, is_training_loan
from firstpaper.law.register import rule
from firstpaper.law.rules.property._listed import listed, names
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

COMMUNITY, SEPARATE = "property.community_how", "property.separate_how"


@rule(
    'The petition says "none", but your list holds some',
    cite=("Fam. Code 760", "Fam. Code 770", "Fam. Code 2556"),
    since=date(2020, 1, 1),
    certainty=Certainty.COURT,
    not_modelled="Whether a judge would call a thing what we take it to be.",
)
def none_but_listed(case: Case, on: date) -> tuple[Found, ...]:
    """A petition that says "none" while your own list holds some is signed under penalty of perjury.

    Why it matters. The petition is sworn. The full list goes to the other side soon after. If the one says
    "none" and the other names a pension, you have to explain that. And what a judgment does not deal with
    stays owned by you both, for years after.

    The two lists. Item 9 of the petition is about separate property, item 10 about community property.
    Look at each on its own.

    An example. You marked that there is no community property. Your list has a car bought from pay in the
    marriage. The car is community property, so "none" is not true.

    What to do. Change the answer in the petition, or look again at the thing in your list.
    """
    return tuple(_community(case, on)) + tuple(_separate(case, on))


def _community(case: Case, on: date) -> Iterator[Found]:
    if known(case.property.community_how) is not CommunityHow.NONE:
        return
    things = listed(case, on)
    surely = tuple(one for one in things if one.holds_community)
    perhaps = tuple(one for one in things if one.starts_as is Code.COMMUNITY)
    if surely:
        yield Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "The petition would say that there is no community property, but your list has {things}."
            ).format(things=in_a_row(names(case, surely))),
            _("If you are not sure of the full list, the petition can say that it is not known yet."),
            facts=(COMMUNITY, *_keys(surely)),
            mended_by=(COMMUNITY,),
        )
    elif perhaps:
        yield Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _(
                "The petition would say that there is no community property. Your list has {things}, which "
                "the law takes to be community until somebody shows otherwise."
            ).format(things=in_a_row(names(case, perhaps))),
            _("Tell us more about it, or say in the petition that the full list is not known yet."),
            facts=(COMMUNITY, *_keys(perhaps)),
        )


def _separate(case: Case, on: date) -> Iterator[Found]:
    surely = tuple(one for one in listed(case, on) if _separate_for_sure(one))
    if known(case.property.separate_how) is SeparateHow.NONE and surely:
        yield Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "The petition would say that there is no separate property, but your list has {things}."
            ).format(things=in_a_row(names(case, surely))),
            _("Naming only the kinds of separate property is a short way that leaves little out."),
            facts=(SEPARATE, *_keys(surely)),
            mended_by=(SEPARATE,),
        )


def _separate_for_sure(one: Character) -> bool:
    """A loan for training is one person's by rule, but stands with the debts of both to be assigned."""
    return one.holds_separate and not is_training_loan(one)


def _keys(things: tuple[Character, ...]) -> tuple[str, ...]:
    return tuple(f"{one.key}.kind" for one in things)
