"""What every test stands on."""

import gc
import os
import signal

import pytest
from hypothesis import HealthCheck, settings

# A new case is begun in English, without asking for the language first.
os.environ.setdefault("FIRSTPAPER_LANG", "en")

# A shell starts a background job with Ctrl-C ignored, and its children inherit that. The tests of
# Ctrl-C need a process that hears it, however they were started themselves.
signal.signal(signal.SIGINT, signal.default_int_handler)

# No test asserts a time, so a busy computer fails none.
settings.register_profile("untimed", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("untimed")


def pytest_xdist_auto_num_workers() -> int:
    """One process more than cores: some tests wait, for a terminal, a lock or a process that is killed."""
    return (os.cpu_count() or 1) + 1


def pytest_collection_finish(session: pytest.Session) -> None:
    """Thousands of tests stay to the end, so the search for garbage leaves them out.

    It also comes less often: what was drawn and read back stays too, and going through all of it again and
    again takes longer than the tests of it.
    """
    if session.items:
        gc.freeze()
        gc.set_threshold(5_000)
