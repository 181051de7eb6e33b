"""The command line: the only part that has a clock, a terminal and files to write.

Nothing heavy is imported here, in `app` or at the top of a command's file, so that ``--help`` and the
next question come at once.
"""

import gc
import os
import sys

_WITHOUT_WORDS = (
    "Firstpaper cannot speak when Python is started with -OO or with PYTHONOPTIMIZE=2, because its messages "
    "are left out then. Nothing was changed. Start it without that."
)


def main() -> None:
    """Run the command line."""
    if not __doc__:  # the words for people are docstrings, and -OO leaves them out
        raise SystemExit(_WITHOUT_WORDS)
    from firstpaper.cli.early import hide_what_is_typed

    hide_what_is_typed(sys.argv[1:])
    if any(word.startswith("--language") for word in sys.argv):
        from firstpaper.cli.language import speak_as_chosen

        speak_as_chosen(sys.argv[1:])
    gc.disable()  # a command is over before collecting garbage would pay
    os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")  # none is to see facts, nor be looked for
    from firstpaper.cli.app import COMPLETE, app
    from firstpaper.cli.long_help import in_front

    if COMPLETE in os.environ:
        from typer._completion_classes import completion_init

        completion_init()

    try:
        app(in_front(sys.argv[1:]), prog_name="firstpaper")
    finally:
        gc.freeze()  # nor does it pay at the very end
