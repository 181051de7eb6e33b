"""The law behind an answer, as a worksheet shows it: the section, and whether we have read it."""

from functools import cache

from firstpaper.forms.answer import ItemAnswer
from firstpaper.law.source import cited
from firstpaper.locale import _

SAYS_ITSELF = "common practice"
"""The one source whose name says that no law stands behind it."""


def law_behind(answer: ItemAnswer) -> str:
    """The citation of an answer; common practice is said once, in the key of the sheet."""
    authority = answer.authority
    if not authority or authority == _("common practice"):
        return ""
    spoken = in_words(authority)
    return spoken if _was_read(authority) else _("{title} (law not confirmed)").format(title=spoken)


def in_words(citation: str) -> str:
    """A citation for the reader: sections as they are, and common practice in their language."""
    return "; ".join(_(part) if part == SAYS_ITSELF else part for part in citation.split("; "))


@cache
def _was_read(citation: str) -> bool:
    """Whether every source named was read in the law itself."""
    sources = [one.source for one in cited(citation)]
    return all(source.certainty.confirmed or source.cite == SAYS_ITSELF for source in sources)
