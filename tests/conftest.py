"""What every test stands on."""

import signal

# A shell starts a background job with Ctrl-C ignored, and its children inherit that. The tests of
# Ctrl-C need a process that hears it, however they were started themselves.
signal.signal(signal.SIGINT, signal.default_int_handler)
