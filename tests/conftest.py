"""What every test stands on."""

import os
import signal

from hypothesis import HealthCheck, settings

# A new case is begun in English, without asking for the language first.
os.environ.setdefault("FIRSTPAPER_LANG", "en")

# A shell starts a background job with Ctrl-C ignored, and its children inherit that. The tests of
# Ctrl-C need a process that hears it, however they were started themselves.
signal.signal(signal.SIGINT, signal.default_int_handler)

# No test asserts a time, so a busy computer fails none.
settings.register_profile("untimed", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("untimed")
