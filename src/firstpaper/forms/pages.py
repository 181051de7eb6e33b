"""A page of our own that is filed behind a form, and the title of the case on it.

What is filed is written in English whatever the reader's language, because papers in a California
court are in English (Code Civ. Proc. 185(a)). So nothing here passes through gettext.
"""

from dataclasses import dataclass

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Union

UNNAMED = "______________________"


@dataclass(frozen=True, slots=True)
class Attachment:
    """An attachment page: its paragraphs, then its table, both exactly as they are to be filed.

    `item` is the item of the form it continues. An empty cell is left for the filer to complete.
    """

    label: str
    item: str
    title: str
    short_title: str
    paragraphs: tuple[str, ...] = ()
    columns: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()


def attachment(
    case: Case,
    item: str,
    title: str,
    paragraphs: tuple[str, ...] = (),
    *,
    columns: tuple[str, ...] = (),
    rows: tuple[tuple[str, ...], ...] = (),
) -> Attachment:
    """The page for one item, under the short title of the case."""
    return Attachment(f"Attachment {item}", item, title, short_title(case), paragraphs, columns, rows)


def short_title(case: Case) -> str:
    """The case by its short title, as in "Marriage of Ana Soto and Luis Soto" (Fam. Code 2330(a))."""
    unions = known(case.matter.unions) or (Union.MARRIAGE,)
    union = "Marriage" if Union.MARRIAGE in unions else "Domestic partnership"
    petitioner = known(case.petitioner.name) or UNNAMED
    respondent = known(case.respondent.name) or UNNAMED
    return f"{union} of {petitioner} and {respondent}"


def see(page: Attachment) -> str:
    """What to write on the form's own line when the words are on a page behind it."""
    return f"See {page.label}."
