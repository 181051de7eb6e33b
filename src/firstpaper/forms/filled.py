"""A copy of an official form with every item of it answered."""

from dataclasses import dataclass

from firstpaper.forms.answer import Answer, ItemAnswer
from firstpaper.forms.edition import Edition
from firstpaper.forms.placing import placed


@dataclass(frozen=True, slots=True)
class FilledForm:
    """One copy of a form to fill in.

    `use` tells copies of one form apart, as in "separate property"; empty where there is but one. A
    `private` form is kept apart from the papers that the other side gets.
    """

    edition: Edition
    items: tuple[ItemAnswer, ...]
    use: str = ""
    private: bool = False

    @property
    def form(self) -> str:
        """Its number."""
        return self.edition.form


def filled(
    edition: Edition, answers: tuple[Answer, ...], *, use: str = "", private: bool = False
) -> FilledForm:
    """The form with these answers placed on it; MisplacedError where they do not fit the edition."""
    return FilledForm(edition, placed(edition, answers), use, private)
