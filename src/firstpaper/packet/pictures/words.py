"""A chart in words, for a terminal and for those who cannot see it: sentences, and no drawing of letters."""

from textwrap import wrap
from typing import Protocol

WIDTH = 78


class Told(Protocol):
    """A chart that can be told in sentences; the first of them comes before the others."""

    @property
    def sentences(self) -> tuple[str, ...]:
        """The whole chart in sentences."""
        ...


def text_of(chart: Told, width: int = WIDTH) -> str:
    """The chart as a list of sentences, no line longer than `width`."""
    first, *rest = chart.sentences
    lines = wrap(first, width)
    for sentence in rest:
        lines += wrap(sentence, width, initial_indent="- ", subsequent_indent="  ")
    return "\n".join(lines)


def alt_of(chart: Told) -> str:
    """The chart in one paragraph: what stands for the picture where it cannot be seen."""
    return " ".join(chart.sentences)
