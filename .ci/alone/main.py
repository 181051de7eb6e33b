"""Where the self-contained program begins."""

from multiprocessing import freeze_support

from firstpaper.cli import main

freeze_support()  # a second process, for many case files, starts here too
main()
