"""Words in a picture: how far lines are apart, and how a text is cut to the room it has."""

from collections.abc import Callable

Measure = Callable[[str, bool], float]
"""The width of words in points at `FONT_SIZE`, plain or bold."""

LEADING = 15.5
RISE = 4.0  # how far a baseline stands above the foot of its line
MOST_LINES = 2  # of a title or a note; the rest is said in words


def lines_of(text: str, width: float, measure: Measure, *, bold: bool) -> list[str]:
    """The words in lines no wider than `width`, the last one cut where there are too many."""
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}".strip()
        if not lines[-1] or measure(longer, bold) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    more = len(lines) > MOST_LINES
    shown = (
        cut(line, width, measure, bold, over=more and number == MOST_LINES)
        for number, line in enumerate(lines[:MOST_LINES], start=1)
    )
    return [line for line in shown if line]


def cut(line: str, width: float, measure: Measure, bold: bool, *, over: bool) -> str:
    """The line with an ellipsis where it is too wide, or where more follows that is not shown."""
    if not over and measure(line, bold) <= width:
        return line
    while line and measure(f"{line}…", bold) > width:
        line = line[:-1]
    return f"{line.rstrip()}…"
