"""Item 1: what joins the two people. Mark all that are true."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import Union
from firstpaper.forms.answer import Answer
from firstpaper.forms.saying import chosen, married_words, unions_of
from firstpaper.locale import _


def answers(case: Case, on: date) -> Iterator[Answer]:
    """The three boxes of item 1."""
    del on
    reasons = {
        "relationship.married": (
            Union.MARRIAGE,
            married_words(case),
            _("You did not say that you are married."),
            "Fam. Code 2330(a)",
        ),
        "relationship.partners_california": (
            Union.PARTNERS_CALIFORNIA,
            _("Your partnership is registered with the California Secretary of State."),
            _("You did not say that you are registered in California. A city list does not count."),
            "Fam. Code 299(d)",
        ),
        "relationship.partners_elsewhere": (
            Union.PARTNERS_ELSEWHERE,
            _("Your partnership or civil union was made in another place."),
            _("You did not say that you have a partnership from another place."),
            "Fam. Code 299.2",
        ),
    }
    for concept, (union, because, otherwise, authority) in reasons.items():
        holds = union in unions_of(case)
        yield chosen(
            case, concept, "matter.unions", holds, because=because, otherwise=otherwise, authority=authority
        )
