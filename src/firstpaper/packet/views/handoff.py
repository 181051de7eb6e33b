"""The hand-off sheet: one page for the lawyer or volunteer who looks at the case next."""

from collections.abc import Iterator
from dataclasses import dataclass

from firstpaper.counting import short_date
from firstpaper.facts import known
from firstpaper.facts.choices import Union, Who
from firstpaper.intake import echo
from firstpaper.law.finding import Finding, Weight
from firstpaper.law.measures.children import listed_children, unborn
from firstpaper.law.measures.marriage import length, separation
from firstpaper.law.measures.residence import who_qualifies
from firstpaper.locale import _, _n
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

MOST_FINDINGS = 5
MOST_STEPS = 9


@dataclass(frozen=True, slots=True)
class Line:
    """A label and what was told or worked out."""

    label: str
    words: str


def sheets(brief: Brief) -> Iterator[Sheet]:
    """One page: facts, dates with their counting, findings, and the choices the filer made."""
    weighty = [one for one in brief.findings if one.weight is not Weight.GOOD_TO_KNOW]
    yield Sheet(
        template="hand-off.html",
        title=_("For the lawyer or volunteer"),
        running=_("Hand-off sheet"),
        purpose=_("Take this page to the self-help center or a lawyer."),
        values={
            "brief": brief,
            "facts": tuple(_facts(brief)),
            "counts": tuple(_counts(brief.findings)),
            "findings": weighty[:MOST_FINDINGS],
            "more": max(0, len(weighty) - MOST_FINDINGS),
            "choices": tuple(_choices(brief)),
            "open": len(brief.open_questions),
        },
    )


def _facts(brief: Brief) -> Iterator[Line]:
    case = brief.case
    county = known(case.court.county) or _("county not chosen yet")
    yield Line(
        _("Case"),
        _("{kind}, {county}, to file {day}").format(kind=brief.kind, county=county, day=short_date(brief.on)),
    )
    yield from _unions(brief)
    parted = separation(case)
    yield Line(_("Separated"), short_date(parted.day) if parted.day else parted.why)
    yield Line(_("Residence met by"), _residents(brief))
    yield Line(_("Children"), _children(brief))
    if brief.in_danger:
        yield Line(_("Danger"), echo("safety.dangers", case.safety.dangers))
    if brief.open_questions:
        count = len(brief.open_questions)
        yield Line(_("Still open"), _n("{count} question", "{count} questions", count).format(count=count))


def _unions(brief: Brief) -> Iterator[Line]:
    for union in known(brief.case.matter.unions) or ():
        married = union is Union.MARRIAGE
        label = _("Married") if married else _("Registered partners")
        dates = brief.case.dates
        key = "dates.married_on" if married else "dates.registered_on"
        began = echo(key, dates.married_on if married else dates.registered_on)
        span = length(brief.case, union)
        yield Line(label, f"{began} ({span})" if span else began)


def _residents(brief: Brief) -> str:
    who = who_qualifies(brief.case, brief.on)
    words = {Who.PETITIONER: _("petitioner"), Who.RESPONDENT: _("respondent")}
    return _(" and ").join(words[one] for one in who) if who else _("neither on that day")


def _children(brief: Brief) -> str:
    listed = listed_children(brief.case, brief.on)
    words = "; ".join(_child(child.name, child.age) for child in listed)
    if unborn(brief.case):
        words = "; ".join(filter(None, (words, _("one not yet born"))))
    return words or _("none of both under 18")


def _child(name: str | None, age: int | None) -> str:
    name = name or _("(name still open)")
    return name if age is None else _("{name}, {age}").format(name=name, age=age)


def _counts(findings: tuple[Finding, ...]) -> Iterator[Line]:
    """The counting behind the dates that matter most, as far as one page has room for it."""
    room = MOST_STEPS
    for one in findings:
        if 0 < len(one.steps) <= room:
            room -= len(one.steps)
            yield Line(one.title, "; ".join(step.rstrip(".") for step in one.steps))


def _choices(brief: Brief) -> Iterator[Line]:
    labels = {
        "custody.legal": _("Legal custody"),
        "custody.physical": _("Physical custody"),
        "custody.visits": _("Visits"),
        "support.petitioner": _("Support for petitioner"),
        "support.respondent": _("Support for respondent"),
        "property.separate_how": _("Separate property"),
        "property.community_how": _("Community property"),
        "requests.fees": _("Lawyer's fees"),
    }
    for key, label in labels.items():
        told = brief.case.fact(key)
        if told is not None:
            yield Line(label, echo(key, told))
