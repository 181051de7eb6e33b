"""Each catalog holds what the English holds, and a finished one has every message."""

import subprocess
import sys
from pathlib import Path

import pytest

from firstpaper.locale.catalogs import FOLDER, catalog_parts

MESSAGES = Path(__file__).parents[2] / ".ci/messages"
LANGUAGES = sorted(path.name for path in FOLDER.iterdir() if catalog_parts(path.name))


def _runs(*words: str) -> None:
    done = subprocess.run([sys.executable, MESSAGES, *words], check=False, capture_output=True, text=True)
    assert (done.returncode, done.stderr) == (0, ""), done.stdout


def test_a_finished_catalog_has_every_message() -> None:
    _runs("--stale")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("check", ["--faults", "--left"])
def test_translations_hold_what_is_filled_in_numbers_forms_and_commands(check: str, language: str) -> None:
    _runs(check, language)
