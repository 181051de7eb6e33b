"""``python -m firstpaper``: the same as the command ``firstpaper``."""

from firstpaper.cli import main

main()
