"""An answer that was not taken, in words for the person who typed it.

Each message says what happened, why it matters and what to do. It never repeats the answer where
the answer may be a secret number.
"""

from typing import TYPE_CHECKING

from firstpaper.locale import _

if TYPE_CHECKING:
    from pydantic import ValidationError


class AnswerRefused(Exception):
    """An answer that does not fit its question; `message` is for the person who typed it."""

    def __init__(self, message: str) -> None:
        super().__init__(message)
        self.message = message


class Unreadable(AnswerRefused):
    """An answer whose shape could not be read: an example of the question it was typed at helps."""


def refusal(error: "ValidationError") -> AnswerRefused:
    """The refusal for what a fact model found wrong."""
    for found in error.errors(include_url=False, include_input=False):
        if found["type"] == "value_error":
            code, _colon, detail = str(found["ctx"]["error"]).partition(":")
            message = _message(code, detail)
            if message:
                return AnswerRefused(message)
    return AnswerRefused(
        _("That answer does not fit this question. Please look at the examples and try again.")
    )


def _message(code: str, detail: str) -> str | None:
    if code == "unknown_county":
        return _unknown_county(detail)
    found = {
        "social_security_number": _(
            "That looks like a whole Social Security number. Court papers are open to the public, so we "
            "do not keep it. Leave it out, or type only the last 4 digits."
        ),
        "long_number": _(
            "There is a long number in that, like an account or card number. Court papers are open to "
            "the public, so we do not keep it. Type it again with only the last 4 digits."
        ),
        "not_last_four": _(
            "Type the last 4 digits of the account number, like 4821. Leave it out if there is none."
        ),
        "too_long": _(
            "That is more than {limit} letters, which is too long here. Please say it in fewer words."
        ),
        "not_an_amount": _("Please type an amount in dollars, like 2450 or 2,450.75. If none, type 0."),
        "amount_below_zero": _("An amount here cannot be less than zero. Type it without a minus sign."),
        "not_a_count": _("Type a number from 1 to {limit}."),
        "not_an_age": _("Type an age in whole years, from 1 to {limit}."),
        "empty": _("There is nothing in that answer. Type the answer, or type skip to come back later."),
    }.get(code)
    return found.format(limit=detail) if found else None


def _unknown_county(nearest: str) -> str:
    if nearest:
        return _("There is no county with that name in California. Did you mean {name}?").format(name=nearest)
    return _(
        "There is no county with that name in California. Type the county, not the city: Oakland is in "
        "Alameda County. If you are not sure, look up the city and the word county."
    )
