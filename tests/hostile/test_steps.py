"""A share of the kills at system calls that the hardening run makes: those in which most is at stake."""

import os
import shutil
import sys

import pytest

from tests.hostile import steps


@pytest.mark.skipif(sys.platform != "linux", reason="the watcher needs Linux")
@pytest.mark.parametrize("name", ["seal", "seal, another passphrase", "unseal", "undo"])
def test_a_command_killed_at_its_steps_loses_nothing_and_leaves_nothing_open(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(steps, "SAVES", (2,))
    if os.geteuid() and shutil.which("strace"):  # watching another process may need the right to
        monkeypatch.setattr(steps, "strace", lambda: None)
    figures = steps.killed_at_every_step(only=(name,))
    assert figures.kills > 10
    assert figures.lost == figures.open_beside_locked == 0
