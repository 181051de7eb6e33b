"""When a question applies, in plain words: for paper and for files, where nothing can be worked out.

The bank says it for each question, to stand after "Only if". Where the kind of case is known, what it decides
is no condition, and the words leave it out.
"""

from collections.abc import Mapping

from firstpaper.facts.choices import Kind
from firstpaper.intake.question import Question
from firstpaper.locale import _, noted

_OF_KINDS: Mapping[str, frozenset[Kind]] = {
    "wants_divorce_or_separation": frozenset({Kind.DISSOLUTION, Kind.LEGAL_SEPARATION}),
    "wants_divorce_or_nullity": frozenset({Kind.DISSOLUTION, Kind.NULLITY}),
    "wants_legal_separation": frozenset({Kind.LEGAL_SEPARATION}),
    "wants_nullity": frozenset({Kind.NULLITY}),
}
"""Conditions that the kind of case alone decides."""

_ONCE_THE_KIND_IS_KNOWN: Mapping[str, str] = {
    "petitioner_lives_in_california": noted("you live in California"),
    "petitioner_lives_in_this_county": noted("you live in the county where you file"),
    "respondent_lives_in_california": noted("your spouse or partner lives in California"),
    "respondent_lives_in_this_county": noted("your spouse or partner lives in the county where you file"),
    "may_take_a_shorter_way": noted("you told of no danger, and this is your first petition"),
}


def only_if(question: Question, kind: Kind | None = None) -> str | None:
    """Its condition in words, for any case or for one of a known kind; None where each such case meets it."""
    if question.when is None or question.only_if is None or kind in _OF_KINDS.get(question.when, ()):
        return None
    shorter = _ONCE_THE_KIND_IS_KNOWN.get(question.when) if kind else None
    return _(shorter or question.only_if)
