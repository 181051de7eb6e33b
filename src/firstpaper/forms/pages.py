"""A page of our own that is filed behind a form, and the title of the case on it.

What is filed is written in English whatever the reader's language, because papers in a California
court are in English (Code Civ. Proc. 185(a)). So nothing here passes through gettext.
"""

from dataclasses import dataclass

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Union
from firstpaper.forms.filed_words import filed
from firstpaper.forms.saying import petitioner_of_the_case

UNNAMED = "______________________"
TITLES = {"FL-100": "Petition", "FL-105": "Declaration Under UCCJEA"}


@dataclass(frozen=True, slots=True)
class Attachment:
    """An attachment page: its paragraphs, then its table, both exactly as they are to be filed.

    `form` is the form it goes behind, and `continues` what of that form it continues. An empty cell is left
    for the filer to complete.
    """

    label: str
    form: str
    continues: str
    title: str
    short_title: str
    paragraphs: tuple[str, ...] = ()
    columns: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()

    @property
    def behind(self) -> str:
        """The form it goes behind, as the page itself names it."""
        return f"{TITLES[self.form]} ({self.form})"


def attachment(
    case: Case,
    item: str,
    title: str,
    paragraphs: tuple[str, ...] = (),
    *,
    columns: tuple[str, ...] = (),
    rows: tuple[tuple[str, ...], ...] = (),
) -> Attachment:
    """The page for one item of the petition, under the short title of the case."""
    return Attachment(
        f"Attachment {item}",
        "FL-100",
        f"item {item}",
        title,
        short_title(case),
        paragraphs,
        columns,
        rows,
    )


def unnumbered(
    case: Case,
    form: str,
    title: str,
    paragraphs: tuple[str, ...] = (),
    *,
    columns: tuple[str, ...] = (),
    rows: tuple[tuple[str, ...], ...] = (),
) -> Attachment:
    """The page for a part of a form whose item numbers are not known: it goes by its words."""
    part = title[0].lower() + title[1:]
    label = f"Attachment ({part})"
    return Attachment(label, form, f"the part on {part}", title, short_title(case), paragraphs, columns, rows)


def short_title(case: Case) -> str:
    """The case by its short title, as in "Marriage of Ana Soto and Luis Soto" (Fam. Code 2330(a))."""
    unions = known(case.matter.unions) or (Union.MARRIAGE,)
    union = "Marriage" if Union.MARRIAGE in unions else "Domestic partnership"
    petitioner = petitioner_of_the_case(case) or UNNAMED
    respondent = known(case.respondent.name) or UNNAMED
    return f"{union} of {petitioner} and {respondent}"


def see(page: Attachment) -> str:
    """What to write on the form's own line when the words are on a page behind it."""
    return filed("See {label}.").format(label=page.label)
