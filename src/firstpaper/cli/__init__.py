"""The command line: the only part that has a clock, a terminal and files to write.

Nothing heavy is imported here, in `app` or at the top of a command's file, so that ``--help`` and the
next question come at once.
"""

import gc
import sys


def main() -> None:
    """Run the command line."""
    gc.disable()  # a command is over before collecting garbage would pay
    from firstpaper.cli.app import app
    from firstpaper.cli.pausing import in_front

    try:
        app(in_front(sys.argv[1:]), prog_name="firstpaper")
    finally:
        gc.freeze()  # nor does it pay at the very end
