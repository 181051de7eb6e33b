"""Where the sheet templates are, and how they are filled.

Autoescape is on and an undefined name is an error: a sheet either says what it means or does not
exist. Words go through gettext; values are data.
"""

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.counting import short_date, spell_date
from firstpaper.errors import UserError
from firstpaper.locale import _, _c, _n, english
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.runs import with_runs

if TYPE_CHECKING:
    from jinja2 import Environment

PACKAGE = Path(__file__).resolve().parents[1]


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
    from jinja2 import Environment, FileSystemLoader, StrictUndefined  # noqa: PLC0415  (slow to import)

    filled = Environment(
        loader=FileSystemLoader(templates_folder()),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        extensions=["jinja2.ext.i18n"],
    )
    filled.install_gettext_callables(_, _n, newstyle=True, pgettext=_c)  # type: ignore[attr-defined]
    filled.filters["day"] = spell_date
    filled.filters["short_day"] = short_date
    filled.filters["in_a_row"] = in_a_row
    filled.filters["english"] = english
    return filled


def render(template: str, values: Mapping[str, object]) -> str:
    """One sheet in the subset of HTML that `packet.paper` draws, with what is English in it told."""
    return with_runs(environment().get_template(template).render(values))
