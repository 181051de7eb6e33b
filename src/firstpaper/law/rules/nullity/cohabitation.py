"""Living together afterwards."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case
from firstpaper.facts.choices import NullityGround
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import bar_key, barred, grounds
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open, without
from firstpaper.law.words import ground_words, help_first
from firstpaper.locale import _

LOST_BY_STAYING = (NullityGround.UNSOUND_MIND, NullityGround.FRAUD, NullityGround.FORCE)


@rule(
    "Living together afterwards",
    cite=("Fam. Code 2210(c)", "Fam. Code 2210(d)", "Fam. Code 2210(e)"),
    since=date(2019, 1, 1),
    not_modelled="What a court takes as living together freely, or as full knowledge.",
)
def cohabitation(case: Case, on: date) -> list[Found]:
    """Three grounds of a nullity are lost by freely living together as spouses afterwards.

    Fraud: lost if the deceived spouse, knowing all the facts, freely went on living with the other.
    Force: lost if the forced spouse afterwards freely lived with the other. Unsound mind: lost if that
    spouse, after coming to reason, freely lived with the other.

    The word "freely" matters. Somebody who stayed out of fear, or who could not get away, may not have
    stayed freely. For fraud, "knowing all the facts" matters: the time before the truth came out does
    not count against you. A court looks at the whole story.

    Example: a wife learns on May 1 that her husband lied to make her marry him, and moves out that
    week. The ground stands. If she knows everything and lives with him as his wife for another year
    because she wants to, it is lost.

    The ground of under age is different. Until the end of 2018, living together after turning 18 took
    that ground away. That part of the law is gone since January 1, 2019. Old tables and books still
    show it. We do not apply it.
    """
    return [_about(case, ground, on) for ground in grounds(case) if ground in LOST_BY_STAYING]


def _about(case: Case, ground: NullityGround, on: date) -> Found:
    key = bar_key(ground) or ""
    stayed = barred(case, ground)
    name = ground_words(ground)
    if stayed:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                'By your own answers the ground "{ground}" is lost: '
                "you two freely lived as spouses afterwards."
            ).format(ground=name),
            _(
                "Leave this ground out. {open} If somebody stayed out of fear, it was not free: change that "
                "answer, and get help. {help}"
            ).format(open=stays_open(case, ground, on), help=help_first()),
            facts=(key,),
            mended_by=without(case, ground, on),
        )
    if stayed is False:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                'By what you told us, living together afterwards did not take away the ground "{ground}".'
            ).format(ground=name),
            facts=(key,),
        )
    asked = case.fact(key) is DONT_KNOW
    return Found(
        Outcome.FOR_A_LAWYER if asked else Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if asked else Weight.LOOK_AGAIN,
        _('For the ground "{ground}" it matters whether you two lived as spouses afterwards.').format(
            ground=name
        ),
        help_first() if asked else _("Answer the question about living together afterwards."),
        facts=(key,),
    )
