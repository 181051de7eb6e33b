"""Item 4: the minor children of both, oldest first, and the child who is not yet born."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import Declaration, Parentage
from firstpaper.forms.answer import Answer, blank, mark, write
from firstpaper.forms.edition import edition_for
from firstpaper.forms.fl100 import FORM
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.pages import Attachment, attachment
from firstpaper.forms.saying import nearly_written, nothing_to_mark, on_the_sheet
from firstpaper.law.measures.children import (
    ListedChild,
    concerns_children,
    listed_children,
    not_described,
    open_on_children,
    presumed_children,
    unborn,
)
from firstpaper.law.measures.marriage import first_union
from firstpaper.locale import _, _n

SIGNED = (Declaration.SIGNED_WITH_COPY, Declaration.SIGNED_NO_COPY)


def copy_of_declaration() -> str:
    """What the copy behind item 4e is called."""
    return _("Copy of the declaration of parentage")


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 4a to 4e."""
    yield from _which(case, on)
    yield from _rows(case, on)
    yield from _after_the_rows(case, on)
    yield from _statements(case, on)
    yield _declaration(case, on)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The children for whom the form has no row left."""
    rest = listed_children(case, on)[printed_rows(on) :]
    if not rest:
        return None
    return attachment(
        case,
        "4b",
        "Minor children",
        ("The list of minor children in item 4b continues here:",),
        columns=("Child's name", "Birthdate", "Age"),
        rows=tuple((child.name or "", _birthdate(child), _age(child)) for child in rest),
    )


def printed_rows(on: date) -> int:
    """How many children the sheet has rows for."""
    return edition_for(FORM, on).rows["children"]


def _which(case: Case, on: date) -> Iterator[Answer]:
    to_list = len(listed_children(case, on)) + not_described(case)
    law = "Fam. Code 2330(b)"
    presumed = presumed_children(case, on)
    if presumed and (to_list or case.fact(presumed[0].key) is not None):
        yield from _presumed(case, presumed[0].key, bool(to_list))
        return
    if concerns_children(case, on) is None:
        key = open_on_children(case, on)
        yield from (still_open(case, f"children.{line}", key) for line in ("none", "listed"))
    elif to_list:
        yield blank("children.none", _children_together(to_list))
        yield mark("children.listed", _children_together(to_list), law)
    elif unborn(case):
        yield blank("children.none", _on_the_way())
        under_it = _("The line on the unborn child stands under this box. Its rows stay empty.")
        yield mark("children.listed", under_it, "Fam. Code 2010(c)")
    else:
        only_both = _(
            "Only children of both of you count here, and only while they are under 18. You named none."
        )
        yield mark("children.none", only_both, law)
        yield blank("children.listed", _("You named no child of both of you under 18."))


def _children_together(count: int) -> str:
    return _n(
        "You have a child under 18 together.",
        "You have {count} children under 18 together. List each one below.",
        count,
    ).format(count=count)


def _on_the_way() -> str:
    return _("A child is on the way, so this line would not be true.")


def _presumed(case: Case, key: str, others_listed: bool) -> Iterator[Answer]:
    """Both lines, while a child said to be of one alone may be a child of the marriage in law."""
    law = "Fam. Code 7611(a)"
    why = _(
        "A child born in the marriage is most often a child of both in law. Get advice before you mark this."
    )
    if others_listed:
        yield blank("children.none", _("You have a child under 18 together."))
        listed = _("You have a child under 18 together. List each one below. The list may not be whole.")
        yield replace(mark("children.listed", f"{listed} {why}", law), open_key=key)
        return
    open_line = replace(blank("children.none", why, law), open_key=key)
    yield blank("children.none", _on_the_way()) if unborn(case) else open_line
    yield replace(open_line, concept="children.listed")


def _rows(case: Case, on: date) -> Iterator[Answer]:
    listed = listed_children(case, on)
    for row in range(1, printed_rows(on) + 1):
        if row <= len(listed):
            yield from _child(case, row, listed[row - 1])
        elif row <= len(listed) + not_described(case):
            number = len(case.child) + row - len(listed)
            yield still_open(case, f"children.{row}.name", f"child.{number}.name")
            for column in ("born_on", "age"):
                yield still_open(case, f"children.{row}.{column}", f"child.{number}.born_on")
        else:
            for column in ("name", "born_on", "age"):
                yield blank(f"children.{row}.{column}", _("You need no more rows."))


def _child(case: Case, row: int, child: ListedChild) -> Iterator[Answer]:
    name, born, age = (f"children.{row}.{column}" for column in ("name", "born_on", "age"))
    law = "Fam. Code 2330(b)"
    if child.name:
        yield write(name, child.name, _("The child's full legal name. Oldest child first."), law)
    else:
        yield still_open(case, name, f"{child.key}.name")
    birth = _("The child's birth date, from the birth certificate.")
    yield nearly_written(case, born, f"{child.key}.born_on", birth, law)
    if child.age is None:
        yield still_open(case, age, f"{child.key}.born_on")
    else:
        yield write(age, _age(child), _("The child's age on the day you plan to file."), law)


def _birthdate(child: ListedChild) -> str:
    return on_the_sheet(child.born.sure) if child.born and child.born.sure else ""


def _age(child: ListedChild) -> str:
    return "" if child.age is None else str(child.age)


def _after_the_rows(case: Case, on: date) -> Iterator[Answer]:
    page = attachment_page(case, on)
    rows = printed_rows(on)
    if page:
        more = _("You have more children than the sheet has rows. The others go on {label}.")
        because = more.format(label=page.label)
        answer = mark("children.continued", because, _("common practice"), continues=page.label)
        missing = f"child.{len(case.child) + 1}.name"
        yield flagged(case, answer, missing) if not_described(case) else answer
    elif len(listed_children(case, on)) + not_described(case) > rows:
        yield still_open(case, "children.continued", f"child.{len(case.child) + 1}.name")
    else:
        yield blank("children.continued", _("Your list fits on the sheet."))
    if concerns_children(case, on) is None:
        yield still_open(case, "children.unborn", open_on_children(case, on))
    elif unborn(case):
        yield mark(
            "children.unborn", _("You told us of a child of both who is not yet born."), "Fam. Code 2010(c)"
        )
    else:
        yield blank("children.unborn", _("You did not tell us of a child on the way."))


def _statements(case: Case, on: date) -> Iterator[Answer]:
    yield blank("children.before", nothing_to_mark(), "Fam. Code 2330.1")
    if listed_children(case, on) or not_described(case):
        with_105 = _("Nothing to mark. It means that you must file form FL-105 with this petition.")
        yield blank("children.fl105", with_105, "Cal. Rules of Court, rule 5.52(a)")
    elif unborn(case):
        ask = _("Nothing to mark. FL-105 speaks of children already born: ask the clerk if you need it.")
        yield blank("children.fl105", ask, "Cal. Rules of Court, rule 5.52(a)")
    else:
        yield blank("children.fl105", nothing_to_mark(), "Cal. Rules of Court, rule 5.52(a)")


def _declaration(case: Case, on: date) -> Answer:
    concept = "children.declaration"
    listed = listed_children(case, on)
    signed = [child for child in listed if child.declaration in SIGNED]
    if signed:
        because = _("You said that both of you signed one, often at the hospital.")
        if any(child.declaration is Declaration.SIGNED_WITH_COPY for child in signed):
            attach = _("Put a copy behind the petition.")
            return mark(concept, f"{because} {attach}", "Fam. Code 7573", continues=copy_of_declaration())
        without = _("Mark it even if you cannot find the copy.")
        return mark(concept, f"{because} {without}", "Fam. Code 7573")
    unanswered = [child for child in listed if child.declaration is None and _may_have_one(case, child)]
    if unanswered:
        return still_open(case, concept, f"{unanswered[0].key}.declaration")
    if not listed and (concerns_children(case, on) is None or not_described(case)):
        return still_open(case, concept, open_on_children(case, on))
    return blank(concept, _("You did not say that such a declaration was signed."))


def _may_have_one(case: Case, child: ListedChild) -> bool:
    """Whether the child may have been born to both before the union, when such declarations are signed."""
    _key, began = first_union(case)
    if child.parentage is Parentage.ADOPTED_BY_BOTH:
        return False
    return child.born is None or began is None or child.born.earliest < began.latest
