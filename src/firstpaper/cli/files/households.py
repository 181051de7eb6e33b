"""The invented households that come with the program."""

from pathlib import Path

from firstpaper.errors import UserError
from firstpaper.locale import _

PACKAGE = Path(__file__).parents[2]


class NoSuchHousehold(UserError):
    """There is no invented household called {name}.

    To see their names, type: firstpaper demo --list
    """

    code = "no_such_household"


class HouseholdsMissing(UserError):
    """The invented households are missing from this copy of Firstpaper.

    Your own cases work as before. To get the demo back, install Firstpaper again.
    """

    code = "households_missing"


def households() -> dict[str, Path]:
    """The files of facts by household name: inside the installed package, or beside it in a checkout."""
    for folder in (PACKAGE / "households", PACKAGE.parents[1] / "demo" / "households"):
        found = {path.stem: path for path in sorted(folder.glob("*.yaml"))}
        if found:
            return found
    raise HouseholdsMissing


def about(path: Path) -> str:
    """What a household is there to show: the remark in the first line of its file."""
    with path.open(encoding="utf-8") as file:
        return _(file.readline().removeprefix("#").strip())
