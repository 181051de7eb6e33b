"""The piles a packet makes on a table once it is printed."""

from enum import StrEnum


class Pile(StrEnum):
    """What a sheet is for once it is printed, and so with which others it lies."""

    READ = "read"
    COPY = "copy"
    FILE = "file"
    PRIVATE = "private"
    HAND_OFF = "hand-off"
