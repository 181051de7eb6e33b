"""What every form says alike: facts that several of them read, and how an answer to one item is put."""

from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, Day, known
from firstpaper.facts.agreements import signed_an_agreement
from firstpaper.facts.choices import Kind, NullityFiler, Union
from firstpaper.facts.text import in_latin_letters
from firstpaper.forms.answer import Answer, blank, mark_if, write
from firstpaper.forms.filed_words import filed, meaning
from firstpaper.forms.open_answers import still_open
from firstpaper.locale import _, english

MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
"""In English, the language of the court, whatever the reader's is."""

PARTNERSHIPS = (Union.PARTNERS_CALIFORNIA, Union.PARTNERS_ELSEWHERE)


def unions_of(case: Case) -> tuple[Union, ...]:
    """What joins the two people; empty where it is not known."""
    return known(case.matter.unions) or ()


def married(case: Case) -> bool:
    """Whether the two are known to be married."""
    return Union.MARRIAGE in unions_of(case)


def partners(case: Case) -> bool:
    """Whether the two are known to be registered partners, here or elsewhere."""
    return any(union in PARTNERSHIPS for union in unions_of(case))


def somebody_else_files(case: Case) -> bool:
    """Whether a nullity is started by somebody other than a spouse, as Fam. Code 2211 allows."""
    return known(case.grounds.filer) not in (None, NullityFiler.SPOUSE)


def petitioner_of_the_case(case: Case) -> str | None:
    """The petitioner's name on every paper; None where it is missing or not for us to write."""
    return None if somebody_else_files(case) else known(case.petitioner.name)


def written_petitioner(case: Case, concept: str, because: str, authority: str = "") -> Answer:
    """The petitioner's name; left open where somebody files for another: the names then change."""
    if not somebody_else_files(case):
        return written(case, concept, "petitioner.name", because, authority)
    return replace(blank(concept, who_stands_here(case), FOR_ANOTHER), open_key="grounds.filer")


FOR_ANOTHER = "Cal. Rules of Court, rule 5.16(b)(3); Code Civ. Proc. 372(a)(1)"


def who_stands_here(case: Case) -> str:
    """Why we do not write the petitioner's name where somebody files for one of the two."""
    name = known(case.grounds.filed_for)
    leave = _("Get help first. Your own name alone would be wrong here.")
    if name is None:
        return leave
    through = _(
        "The case is that of {name}. Ask who must stand here. The judge may have to name somebody for that "
        "(a guardian ad litem)."
    )
    return f"{through.format(name=name)} {leave}"


def married_words(case: Case) -> str:
    """That the two are married; in the name of the one for whom somebody else files."""
    name = known(case.grounds.filed_for) if somebody_else_files(case) else None
    if name is None:
        return _("You are married to each other.")
    respondent = known(case.respondent.name) or _("the other side")
    return _("{name} and {respondent} are married to each other.").format(name=name, respondent=respondent)


def see_the_paper_first(case: Case) -> str:
    """What a paper on property that the two signed does to items 9 and 10; empty where none was told."""
    if signed_an_agreement(case) is not True:
        return ""
    return _("You told us of a paper that you both signed. Show it to a lawyer before you mark this.")


def get_help_with_this_box() -> str:
    """Why a box may have to be filled in another way than we say."""
    return _("Get help before you fill in this box. It may have to change: it is not a spouse who files.")


def kind_words(kind: Kind) -> str:
    """The kind of case in the reader's words."""
    return {
        Kind.DISSOLUTION: _("a divorce"),
        Kind.LEGAL_SEPARATION: _("a legal separation"),
        Kind.NULLITY: _("a nullity"),
    }[kind]


def on_the_sheet(day: date) -> str:
    """A date as it is written on a form, as in "06/14/2016"."""
    return f"{day:%m/%d}/{day.year:04d}"


def written(
    case: Case, concept: str, key: str, because: str, authority: str = "", *, nothing: str = ""
) -> Answer:
    """The text told at `key`; blank with the words `nothing` where that is an answer and was given."""
    text = known(case.fact(key))
    if text is None or not (text or nothing):
        return still_open(case, concept, key)
    answer = write(concept, text, because, authority) if text else blank(concept, nothing)
    return answer if in_latin_letters(text) else replace(answer, open_key=key)


def written_day(case: Case, concept: str, key: str, because: str, authority: str = "") -> Answer:
    """The day told at `key`, where it was told whole and without doubt."""
    day: Day | None = known(case.fact(key))
    if day is None or day.sure is None:
        return still_open(case, concept, key)
    return write(concept, on_the_sheet(day.sure), because, authority)


def nearly_written(case: Case, concept: str, key: str, because: str, authority: str = "") -> Answer:
    """The day told at `key`; where it is known in part, what is known, to be written if no more is found.

    The petition states its dates "as nearly as can be ascertained" (Fam. Code 2330(b)).
    """
    day: Day | None = known(case.fact(key))
    if day is None or day.sure is not None:
        return written_day(case, concept, key, because, authority)
    near = _(
        "Find the whole day if you can, and write that. If nobody can find it, write “{words}”. "
        "The law takes the date as nearly as it can be found."
    ).format(words=english(about(day)))
    answer = write(concept, about(day), near, authority, meaning=meaning(lambda: about(day)))
    return replace(answer, open_key=key)


def about(day: Day) -> str:
    """A day known in part, as it is written on a form: "about June 2016"."""
    if day.whole:
        return filed("about {day}").format(day=on_the_sheet(day.whole))
    if day.month:
        return filed("about {month} {year}").format(month=filed(MONTHS[day.month - 1]), year=day.year)
    return filed("about {day}").format(day=day.year)


def chosen(
    case: Case,
    concept: str,
    key: str,
    condition: bool,
    *,
    because: str,
    otherwise: str,
    authority: str = "",
) -> Answer:
    """A box that depends on the answer at `key`; open while that answer is missing."""
    if known(case.fact(key)) is None:
        return still_open(case, concept, key)
    return mark_if(concept, condition, because, otherwise, authority)


def not_asked() -> str:
    """Why a box stays empty that the filer could have marked."""
    return _("You are not asking for this.")


def nothing_to_mark() -> str:
    """What is said of printed text without a box."""
    return _("This is printed text. There is nothing to mark.")


def case_number(case: Case, concept: str) -> Answer:
    """The number the court gave the case; empty on a first filing."""
    amended = known(case.matter.amended)
    if amended is None:
        return still_open(case, concept, "matter.amended")
    if not amended:
        return blank(concept, _("The court gives the number when you file."), _("common practice"))
    return written(case, concept, "matter.case_number", _("The number the court gave this case."))
