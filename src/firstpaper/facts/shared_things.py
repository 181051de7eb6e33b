"""The kinds of things there are to share: told of as such, or gained while one lived elsewhere."""

from firstpaper.facts.case import Case
from firstpaper.facts.choices import CommunityKind
from firstpaper.facts.told import known


def kinds_to_share(case: Case) -> set[CommunityKind]:
    """The kinds in either list: what came from elsewhere is shared like the rest (Fam. Code 63)."""
    told = case.property
    return {*(known(told.community_kinds) or ()), *(known(told.elsewhere_kinds) or ())}
