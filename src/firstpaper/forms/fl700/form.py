"""FL-700, one petition for both (Fam. Code 2330, 2342.5).

Nobody here has seen the numbers of the sheet. What stands on it is what the statute asks for: who the two
are, the marriage, the children, and the list of issues that both mean to settle by agreement.
"""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import of_the_other_side
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.answer import Answer, blank, fill, mark, mark_if, sign, write
from firstpaper.forms.caption_box import both_petitioners, court, filer, one_line, which_court
from firstpaper.forms.edition import edition_for
from firstpaper.forms.filled import FilledForm, filled
from firstpaper.forms.open_answers import flagged, still_open
from firstpaper.forms.saying import (
    chosen,
    married,
    nothing_to_mark,
    on_the_sheet,
    partners,
    unions_of,
    written_day,
)
from firstpaper.law.measures.children import concerns_children, listed_children, open_on_children, unborn
from firstpaper.law.measures.residence import Route, residence_route, who_qualifies
from firstpaper.locale import _

FORM = "FL-700"
CONTENTS, ISSUES = "Fam. Code 2330(c)", "Fam. Code 2330(c)(3)"
ALWAYS = ("grounds", "separated_on", "support", "separate", "community")
WITH_CHILDREN = ("custody", "child_support")


def form(case: Case, on: date) -> tuple[FilledForm, ...]:
    """The joint petition for a filing on the day `on`. Whether it is open to the two is for the rules."""
    return (filled(edition_for(FORM, on), tuple(_answers(case, on))),)


def _answers(case: Case, on: date) -> Iterator[Answer]:
    mail = _("Court mail for you comes here. Anyone can see it.")
    yield filer(case, "caption.first", because=mail)
    yield _second(case)
    yield court(case, "caption.court", because=which_court())
    yield both_petitioners(case)
    yield blank("caption.case_number", _("The court gives the number when you file."), _("common practice"))
    yield from _kind(case)
    yield from _union(case)
    yield from _residence(case, on)
    yield from _children(case, on)
    yield from _issues(case, on)
    yield from _signing()


def _second(case: Case) -> Answer:
    """The other petitioner, as the filer told of them; they give their own address and phone."""
    concept, name, mailing = "caption.second", known(case.respondent.name), of_the_other_side(case)
    if not name:
        return still_open(case, concept, "respondent.name")
    lines = "\n".join((name, *((one_line(mailing),) if mailing else ()), "Self-represented"))
    own = _("The second of you checks this, and adds a phone number. Court mail must be safe there.")
    address = (mailing.street, mailing.city, mailing.state, mailing.zip) if mailing else ("",) * 4
    cells = ((name, *address, "Self-represented"),)
    answer = write(concept, lines, own, "Fam. Code 2342.5(a)(1)", cells=cells)
    return answer if mailing else flagged(case, answer, "respondent.mailing")


def _kind(case: Case) -> Iterator[Answer]:
    kind = kind_of(case)
    for box, of in (("kind.dissolution", Kind.DISSOLUTION), ("kind.separation", Kind.LEGAL_SEPARATION)):
        if kind is None:
            yield still_open(case, box, "matter.kind")
        else:
            yield mark_if(box, kind is of, _("You both ask for it."), _("You do not ask for this."), CONTENTS)
    for box, holds, because in (
        ("union.marriage", married(case), _("You are married to each other.")),
        ("union.partnership", partners(case), _("You are registered partners.")),
    ):
        words = {
            "because": because,
            "otherwise": _("This does not join the two of you."),
        }
        yield chosen(case, box, "matter.unions", holds, **words)


def _union(case: Case) -> Iterator[Answer]:
    if not unions_of(case):
        yield from (still_open(case, line, "matter.unions") for line in ("married_on", "registered_on"))
        return
    for line, union, fact in (
        ("married_on", married(case), "dates.married_on"),
        ("registered_on", partners(case), "dates.registered_on"),
    ):
        if union:
            yield written_day(case, line, fact, _("The day on the certificate."), CONTENTS)
        else:
            yield blank(line, _("This does not join the two of you."))


def _residence(case: Case, on: date) -> Iterator[Answer]:
    who = {str(each) for each in who_qualifies(case, on)}
    for box, spouse in (("residence.first", "petitioner"), ("residence.second", "respondent")):
        if spouse in who:
            yield mark(box, _("By your answers this one has lived here long enough."), "Fam. Code 2320(a)")
        else:
            yield blank(box, _("By your answers this one has not lived here long enough, or we do not know."))
    here = Union.PARTNERS_CALIFORNIA in unions_of(case)
    other = residence_route(case, on) in (Route.CALIFORNIA_PARTNERSHIP, Route.SAME_SEX)
    yield mark_if(
        "residence.other",
        here or other,
        _("A way that needs no time here: go by the words of the line."),
        _("You need no other way."),
        "Fam. Code 299(d), 2320(b)",
    )


def _children(case: Case, on: date) -> Iterator[Answer]:
    listed, concerned = listed_children(case, on), concerns_children(case, on)
    if concerned is None:
        key = open_on_children(case, on)
        yield from (still_open(case, box, key) for box in ("children.none", "children.rows"))
    else:
        yield mark_if(
            "children.none",
            not concerned,
            _("You named none of both of you."),
            _("You have a child."),
            CONTENTS,
        )
        yield _rows(case, on) if listed else blank("children.rows", _("There is no child to list yet."))
    expecting = _("You told us of a child on the way.")
    yield mark_if("children.unborn", unborn(case), expecting, _("You told us of none."))


def _rows(case: Case, on: date) -> Answer:
    cells = tuple(
        (
            child.name or "",
            on_the_sheet(child.born.sure) if child.born and child.born.sure else "",
            "" if child.age is None else str(child.age),
        )
        for child in listed_children(case, on)
    )
    told, why = "\n".join("; ".join(row) for row in cells), _("Name, birth date and age of each child.")
    answer = write("children.rows", told, why, CONTENTS, cells=cells)
    missing = next(
        (child for child in listed_children(case, on) if not child.name or child.age is None), None
    )
    if missing is None:
        return answer
    return flagged(case, answer, f"{missing.key}.{'born_on' if missing.name else 'name'}")


def _issues(case: Case, on: date) -> Iterator[Answer]:
    settle = _("You both mean to agree on it. If one of these is to go to a judge, do not use FL-700.")
    for issue in ALWAYS:
        yield mark(f"issue.{issue}", settle, ISSUES)
    concerned = concerns_children(case, on)
    for issue in WITH_CHILDREN:
        if concerned is None:
            yield still_open(case, f"issue.{issue}", open_on_children(case, on))
        else:
            yield mark_if(f"issue.{issue}", concerned, settle, _("You have no child together."), ISSUES)
    wanted = _("Mark it only if one of you wants it.")
    if kind_of(case) is Kind.LEGAL_SEPARATION:
        yield blank("issue.former_name", _("A legal separation gives no former name back."), "Fam. Code 2080")
    else:
        yield fill("issue.former_name", wanted, ISSUES)
    yield fill("issue.fees", wanted, ISSUES)


def _signing() -> Iterator[Answer]:
    swears = _("By signing each of you swears that it is true.")
    yield blank("signing.perjury", f"{nothing_to_mark()} {swears}", "Fam. Code 212")
    yield sign("signing.first", _("You sign and write the date, by your own hand."), "Fam. Code 2342.5(a)(1)")
    yield sign(
        "signing.second", _("The second of you signs, freely and by hand. Nobody signs for the other.")
    )
