"""How the program came onto this computer, and what of it lies where."""

import os
import sys
from enum import StrEnum
from pathlib import Path
from typing import NamedTuple

PROGRAM = "firstpaper"
PACKAGE = Path(__file__).resolve().parents[1]
TAB_KEY_FILES = (
    f".bash_completions/{PROGRAM}.sh",
    f".zfunc/_{PROGRAM}",
    f".config/fish/completions/{PROGRAM}.fish",
)
"""Where a shell keeps what Tab completes, below the home folder. They are there only if somebody asked."""
_STARTS = (".bashrc",)
"""Files of a shell in which a line with the name of such a file may stand."""


class How(StrEnum):
    """The ways in which the program is put on a computer."""

    FOLDER = "folder"
    """As a folder that needs no Python."""
    PIPX = "pipx"
    UV = "uv"
    PIP = "pip"


class Installed(NamedTuple):
    """The program on this computer."""

    how: How
    place: Path
    """The folder that holds it."""
    command: tuple[str, ...]
    """What removes it; empty where the folder is removed by hand."""


def installed() -> Installed:
    """How this program was installed, told by what the installers leave beside it."""
    environment = Path(sys.prefix)
    if getattr(sys, "frozen", False):
        return Installed(How.FOLDER, Path(sys.executable).resolve().parent, ())
    if (environment / "pipx_metadata.json").is_file():
        return Installed(How.PIPX, environment, ("pipx", "uninstall", PROGRAM))
    if (environment / "uv-receipt.toml").is_file():
        return Installed(How.UV, environment, ("uv", "tool", "uninstall", PROGRAM))
    return Installed(How.PIP, PACKAGE, (sys.executable, "-m", "pip", "uninstall", PROGRAM))


def own_environment() -> Path | None:
    """The environment of Python that the program is in; None where it is the Python of the whole computer."""
    return Path(sys.prefix) if sys.prefix != sys.base_prefix else None


def tab_key_files() -> list[Path]:
    """The files that make Tab complete words, and those of a shell that name one of them."""
    home = Path(os.path.expanduser("~"))  # noqa: PTH111  (does not fail where there is no home)
    found = [home / name for name in TAB_KEY_FILES if (home / name).is_file()]
    return [*found, *(home / name for name in _STARTS if _names(home / name, home / TAB_KEY_FILES[0]))]


def _names(start: Path, file: Path) -> bool:
    try:
        return str(file) in start.read_text("utf-8", "replace")
    except OSError:
        return False
