"""What is said of a line in a file of facts that could not be used."""

from collections.abc import Iterator

from firstpaper.intake.kinds import ROWS, general, told_places
from firstpaper.locale import _


def what_to_write(some_put_the_day_first: bool) -> Iterator[str]:
    """How to write a day so that it cannot be mistaken."""
    if some_put_the_day_first:
        yield _("Another line of this file puts the day first.")
    yield _(
        "Write the year first, like 2026-03-14. Or say once, on a line of its own: "
        "day_order: month_first (or day_first)."
    )


def one_plain_value() -> str:
    """That a list holds plain values."""
    return _("A list holds one plain value on each line.")


def unknown(key: str) -> str:
    """That no fact has this name, and which one is close to it."""
    from difflib import get_close_matches  # noqa: PLC0415  (only for a mistake, and slow to load)

    close = get_close_matches(general(key), list(told_places()), n=1, cutoff=0.6)
    if not close:
        return _("There is no fact with this name. Please check the spelling.")
    number = next((part for part in key.split(".") if part.isdecimal()), "1")
    return _("There is no fact with this name. Did you mean {name}?").format(
        name=close[0].replace("*", number)
    )


def gap() -> str:
    """That a row is empty."""
    return _("Nothing is told about this one. Please number them 1, 2, 3 and so on, with no number left out.")


def nothing_stands() -> str:
    """That all that is told about a thing or debt hangs on what is not told."""
    return _("Nothing that is told about this one can stand alone. Say what it is too.")


def given_twice(line: int | None) -> str:
    """That a fact stands twice, and where the first is."""
    if line is None:
        return _("This fact is given twice. Please keep one of them.")
    return _("This fact is given twice: the first time in line {line}. Please keep one of them.").format(
        line=line
    )


def yaml_message(code: str) -> str:
    """What is wrong with a file that could not be read at all."""
    messages = {
        "too_deep": _("The facts are nested too deep. Two or three levels are enough."),
        "too_much": _("There is too much in this file to be the facts of one case."),
        "shortcut": _("Shortcuts with & and * are not read here. Please write the value out."),
        "tag": _("Words that begin with ! are not read here. Take it out, or put the value in quotes."),
        "two_documents": _("A second document begins here. Please keep one case in one file."),
        "name": _("A name must be plain text, like: petitioner.name"),
    }
    unreadable = _(
        "The file could not be read near here. Look for a missing colon or quote. Or a line has a tab in "
        "place of spaces, or does not line up with the ones above it."
    )
    return messages.get(code, unreadable)


def no_room(group: str) -> str:
    """How many rows of the group there can be."""
    return _("There is room for {most} here.").format(most=ROWS[group])
