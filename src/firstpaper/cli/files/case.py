"""A case file opened to be read, with the passphrase asked where it is sealed."""

from pathlib import Path
from typing import TYPE_CHECKING

from firstpaper.cli.files.passphrases import Passphrases
from firstpaper.cli.language import speak_for

if TYPE_CHECKING:
    from firstpaper.facts import Case


def case_at(path: Path, passphrases: Passphrases) -> "Case":
    """The facts in the case file at `path`."""
    from firstpaper.casefile import load

    return speak_for(load(path, passphrases.tries(path))).case
