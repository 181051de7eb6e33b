"""Where the sheet templates are, and how they are filled.

A sheet either says what it means or does not exist. Words go through gettext; values are data.
"""

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.counting import short_date, spell_date
from firstpaper.errors import UserError
from firstpaper.locale import english
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.runs import with_runs

if TYPE_CHECKING:
    from jinja2 import Environment

PACKAGE = Path(__file__).resolve().parents[1]
FILTERS = {"day": spell_date, "short_day": short_date, "in_a_row": in_a_row, "english": english}


class TemplatesMissing(UserError):
    """The sheet templates are not where they should be.

    Your answers are safe. Install Firstpaper again.
    """

    code = "templates_missing"


def templates_folder() -> Path:
    """The folder of sheet templates: inside the wheel, or beside `src/` in a checkout.

    Raises TemplatesMissing where neither exists.
    """
    for folder in (PACKAGE / "templates", PACKAGE.parents[1] / "templates"):
        if folder.is_dir():
            return folder
    raise TemplatesMissing


@cache
def environment() -> "Environment":
    """The one Jinja environment of the project."""
    from firstpaper.sheet_code import environment_of  # noqa: PLC0415  (slow to import)

    filled = environment_of(templates_folder())
    filled.filters.update(FILTERS)
    return filled


def render(template: str, values: Mapping[str, object]) -> str:
    """One sheet in the subset of HTML that `packet.paper` draws, with what is English in it told."""
    return with_runs(environment().get_template(template).render(values))
