"""How many questions are still to come: as few as in a plain case, as many as with children and wishes.

What is not answered yet may open more questions. So the number is a range, from how the case would go on
with the plainest answers to how it would go on with fuller ones. Both are counted with the questions
themselves.
"""

from collections.abc import Mapping
from typing import Any, NamedTuple

from firstpaper.facts import Case, Day
from firstpaper.facts.choices import (
    CommunityHow,
    Family,
    Kind,
    Lives,
    SeparateHow,
    SupportChoice,
    Union,
)
from firstpaper.intake.engine import asked
from firstpaper.intake.kinds import general

LONG_AGO = Day(2000, 1, 1)

_PLAIN: Mapping[str, Any] = {
    "safety.dangers": (),
    "matter.unions": (Union.MARRIAGE,),
    "matter.kind": Kind.DISSOLUTION,
    "matter.other_case": False,
    "petitioner.other_names": (),
    "people.special": (),
    "residence.petitioner.lives": Lives.THIS_COUNTY,
    "residence.petitioner.state_since": LONG_AGO,
    "residence.petitioner.county_since": LONG_AGO,
    "residence.petitioner.absences": (),
    "residence.petitioner.intends_to_stay": True,
    "residence.respondent.lives": Lives.THIS_COUNTY,
    "children.family": (),
    "support.petitioner": SupportChoice.RESERVE,
    "support.respondent": SupportChoice.RESERVE,
    "property.separate_how": SeparateHow.CLASSES,
    "property.community_how": CommunityHow.NOT_YET_KNOWN,
    "requests.former_name": "",
    "waiver.wanted": False,
}
_FULL: Mapping[str, Any] = {
    **_PLAIN,
    "petitioner.other_names": ("One name",),
    "children.family": (Family.MINOR_TOGETHER,),
    "children.how_many": 2,
    "support.petitioner": SupportChoice.ASK,
    "property.separate_how": SeparateHow.LIST,
    "property.community_how": CommunityHow.LIST,
    "requests.former_name": "One name",
    "waiver.wanted": True,
    "waiver.benefits": (),
    "uccjea.now": True,
}


class Usual(NamedTuple):
    """What the usual case of a kind is asked, from the plainest to a fuller one.

    In `keys` a star stands in place of the number of a row.
    """

    kind: Kind
    keys: frozenset[str]


def usual(kind: Kind, *, children: bool) -> Usual:
    """The questions of the usual case of a kind, with children together or without."""
    told = {"matter.kind": kind, **(_WITH if children else _WITHOUT)}
    cases = (Case.nothing().supposing_all({**answers, **told}) for answers in (_PLAIN, _FULL))
    keys = frozenset(general(one.key) for case in cases for one in asked(case))
    return Usual(kind, keys)


_WITH: Mapping[str, Any] = {"children.family": (Family.MINOR_TOGETHER,), "children.how_many": 2}
_WITHOUT: Mapping[str, Any] = {"children.family": (), "children.how_many": None, "uccjea.now": None}


class Ahead(NamedTuple):
    """The fewest and the most questions that are likely still to come."""

    fewest: int
    most: int


def ahead(case: Case) -> Ahead:
    """How many questions are still to come, counting those that were skipped."""
    fewest, most = (_left(case, answers) for answers in (_PLAIN, _FULL))
    return Ahead(min(fewest, most), max(fewest, most))


def _left(case: Case, answers: Mapping[str, Any]) -> int:
    """How many have no answer, where those in `answers` are answered like that once they are reached."""
    open_ = {key: answer for key, answer in answers.items() if case.fact(key) is None}
    return sum(case.fact(one.key) is None for one in asked(case.supposing_all(open_)))
