"""The hand-off sheet: one page for the lawyer or volunteer who looks at the case next."""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import islice

from firstpaper.counting import short_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Typist, Union, Who
from firstpaper.intake import echo
from firstpaper.law.agenda import agenda
from firstpaper.law.finding import Finding, Outcome, Weight
from firstpaper.law.measures.character import Character, Code, asset_characters, debt_characters
from firstpaper.law.measures.children import listed_children, unborn
from firstpaper.law.measures.marriage import length, separation
from firstpaper.law.measures.other_cases import other_cases
from firstpaper.law.measures.record import case_number, filed_on, is_filed
from firstpaper.law.measures.residence import Route, residence_route, who_qualifies
from firstpaper.law.source import cited
from firstpaper.law.words import in_a_row
from firstpaper.locale import _, _n
from firstpaper.packet.brief import Brief
from firstpaper.packet.piles import Pile
from firstpaper.packet.views.law_behind import in_words
from firstpaper.packet.views.sheet import Sheet

ALWAYS_COUNTED = ("marriage.length", "nullity.last_day")
MOST_COUNTED = 3
LONGEST_COUNT = 400  # characters; a lawyer asks for more
MOST_NAMES = 3


@dataclass(frozen=True, slots=True)
class Line:
    """A label and what was told or worked out."""

    label: str
    words: str


def before_the_filing(brief: Brief) -> Iterator[Sheet]:
    """The sheet of a case that is not filed yet."""
    if not is_filed(brief.case):
        yield sheet(brief)


def since_the_filing(brief: Brief) -> Iterator[Sheet]:
    """The sheet of a case that the court has."""
    if is_filed(brief.case):
        yield sheet(brief)


def sheet(brief: Brief) -> Sheet:
    """Facts, every finding that needs a second look, how dates were counted, and what the filer chose."""
    return Sheet(
        template="hand-off.html",
        title=_("For the lawyer or volunteer"),
        running=_("Private: for your lawyer only. Not to be filed."),
        pile=Pile.HAND_OFF,
        purpose=_("Take it to the self-help center or a lawyer. Keep it apart from the papers you file."),
        values={
            "brief": brief,
            "facts": tuple(_facts(brief)),
            "findings": tuple(Line(_standing(one), in_words(_cite(one))) for one in _weighty(brief.findings)),
            "counts": tuple(_counts(brief.findings)),
            "choices": tuple(_choices(brief)),
        },
    )


def _weighty(findings: tuple[Finding, ...]) -> list[Finding]:
    """The findings that need a second look, one for each rule, heaviest first."""
    first_of: dict[str, Finding] = {}
    leads = {one.id for one in findings if one.weight is not Weight.GOOD_TO_KNOW}
    for one in findings:
        if one.weight is not Weight.GOOD_TO_KNOW and one.part_of not in leads:
            first_of.setdefault(one.id, one)
    return list(first_of.values())


def _title(one: Finding) -> str:
    """What a finding is about, and whether its law was read."""
    return one.title if one.certainty.confirmed else _("{title} (law not confirmed)").format(title=one.title)


def _standing(one: Finding) -> str:
    """The title of a finding with what it comes to: a rule's name alone reads as if it were met."""
    outcomes = {
        Outcome.NOT_MET: _("not met"),
        Outcome.CLOSE: _("close to the line"),
        Outcome.NEED_TO_KNOW: _("not known yet"),
        Outcome.NOT_CHECKED: _("could not be checked"),
    }
    words = [_("STOP")] if one.weight is Weight.STOP else []
    words += [outcomes[one.outcome]] if one.outcome in outcomes else []
    return (
        _("{standing}: {title}").format(standing=", ".join(words), title=_title(one))
        if words
        else _title(one)
    )


def _cite(one: Finding) -> str:
    """Where to look it up: the first source, or the one that was not read in the law itself."""
    if one.certainty.confirmed:
        return one.authority[0]
    doubtful = (each for each in one.authority if not all(a.source.certainty.confirmed for a in cited(each)))
    return next(doubtful, one.authority[0])


def _facts(brief: Brief) -> Iterator[Line]:
    case = brief.case
    county = known(case.court.county) or _("county not chosen yet")
    yield Line(_("Case"), f"{brief.kind}, {county}, {_stage(brief)}")
    if number := case_number(case):
        yield Line(_("Case number"), number)
    yield from _next_date(brief)
    yield from _unions(brief)
    yield Line(_("Separated"), _separated(case))
    yield Line(_("Residence met by"), _residents(brief))
    yield Line(_("Children"), _children(brief))
    yield from _other_cases(case)
    yield from _estate(brief)
    yield from _people(brief)
    if brief.in_danger:
        yield Line(_("Danger"), echo("safety.dangers", case.safety.dangers))
    if brief.open_questions:
        count = len(brief.open_questions)
        yield Line(_("Still open"), _n("{count} question", "{count} questions", count).format(count=count))
    if brief.open_numbers:
        yield Line(_("Items of FL-100 not finished"), brief.open_numbers)


def _other_cases(case: Case) -> Iterator[Line]:
    """Court, kind and number of the other cases, as told."""
    told = [known(case.matter.other_case_words) or "", *(known(case.uccjea.case_words) or ())]
    words = list(dict.fromkeys(one for one in told if one))
    if words:
        yield Line(_("Other cases"), "; ".join(words))
    elif other_cases(case):
        yield Line(_("Other cases"), _("there is one; ask for its court and number"))


def _stage(brief: Brief) -> str:
    filed = filed_on(brief.case, brief.on)
    if filed:
        return _("filed {day}").format(day=short_date(filed))
    if is_filed(brief.case):
        return _("filed on a day not told")
    return _("to file {day}").format(day=short_date(brief.on))


def _next_date(brief: Brief) -> Iterator[Line]:
    """After the filing, the next day to keep."""
    if is_filed(brief.case):
        ahead = [
            one.deadline for one in agenda(brief.case, brief.on).ahead if one.deadline.target >= brief.on
        ]
        for one in ahead[:1]:
            yield Line(_("Next date"), f"{short_date(one.target)}: {one.title}")


def _separated(case: Case) -> str:
    parted, told = separation(case), case.dates
    if parted.day:
        return short_date(parted.day)
    return _("{why} Said: {told}. Acted on: {acted}.").format(
        why=parted.why,
        told=echo("dates.separation_told_on", told.separation_told_on),
        acted=echo("dates.separation_acted_on", told.separation_acted_on),
    )


def _people(brief: Brief) -> Iterator[Line]:
    case = brief.case
    if phone := known(case.petitioner.phone):
        yield Line(_("Filer's phone"), phone)
    for label, names in (
        (_("Petitioner's other names"), case.petitioner.other_names),
        (_("Respondent's other names"), case.respondent.other_names),
    ):
        if told := known(names):
            more = _("; and more") if len(told) > MOST_NAMES else ""
            yield Line(label, "; ".join(told[:MOST_NAMES]) + more)
    if language := known(case.people.language):
        yield Line(_("Interpreter"), language)
    helpers = {Typist.PARALEGAL: _("a paralegal"), Typist.VOLUNTEER: _("a volunteer or a friend")}
    if helper := helpers.get(known(case.safety.typist) or Typist.FILER):
        yield Line(_("Answers typed by"), helper)
    if known(case.safety.understood) is not True:
        yield Line(_("Not yet confirmed"), _("that this program gives information and no legal advice"))


def _unions(brief: Brief) -> Iterator[Line]:
    for union in known(brief.case.matter.unions) or ():
        married = union is Union.MARRIAGE
        label = _("Married") if married else _("Registered partners")
        dates = brief.case.dates
        key = "dates.married_on" if married else "dates.registered_on"
        began = echo(key, dates.married_on if married else dates.registered_on)
        place = known(dates.married_place) if married else _registered_at(brief.case, union)
        began = _("{day}, {place}").format(day=began, place=place) if place else began
        span = length(brief.case, union)
        yield Line(label, f"{began} ({span})" if span else began)


def _registered_at(case: Case, union: Union) -> str | None:
    return known(case.matter.registration) if union is Union.PARTNERS_ELSEWHERE else None


def _residents(brief: Brief) -> str:
    not_needed = {
        Route.CALIFORNIA_PARTNERSHIP: _("not needed (California partnership, item 2b)"),
        Route.SAME_SEX: _("not needed (item 2c, Fam. Code 2320(b))"),
        Route.NOT_NEEDED: _("not needed (no divorce)"),
    }
    route = residence_route(brief.case, brief.on)
    if route in not_needed:
        return not_needed[route]
    who = who_qualifies(brief.case, brief.on)
    words = {Who.PETITIONER: _("petitioner"), Who.RESPONDENT: _("respondent")}
    return in_a_row([words[one] for one in who]) if who else _("neither on that day")


def _children(brief: Brief) -> str:
    listed = listed_children(brief.case, brief.on)
    words = "; ".join(_child(child.name, child.age) for child in listed)
    if unborn(brief.case):
        words = "; ".join(filter(None, (words, _("one not yet born"))))
    return words or _("none of both under 18")


def _child(name: str | None, age: int | None) -> str:
    name = name or _("(name still open)")
    return name if age is None else _("{name}, {age}").format(name=name, age=age)


def _estate(brief: Brief) -> Iterator[Line]:
    """How much is listed, and how much of it nobody can place yet; no thing by name and no amount."""
    things, debts = asset_characters(brief.case, brief.on), debt_characters(brief.case, brief.on)
    if not things and not debts:
        return
    listed = ", ".join(
        words
        for count, words in (
            (len(things), _n("{count} thing", "{count} things", len(things)).format(count=len(things))),
            (len(debts), _n("{count} debt", "{count} debts", len(debts)).format(count=len(debts))),
        )
        if count
    )
    found = Counter(_place(one) for one in (*things, *debts))
    places = ", ".join(f"{found[place]} {place}" for place in _places() if found[place])
    yield Line(_("Listed"), _("{listed}: {places}").format(listed=listed, places=places))


def _place(one: Character) -> str:
    shared, separate, mixed, unknown, undivided = _places()
    if one.code.shared:
        return shared
    if one.code.separate:
        return separate
    return {Code.MIXED: mixed, Code.NOT_DIVIDED: undivided}.get(one.code, unknown)


def _places() -> tuple[str, ...]:
    return (
        _("presumed community"),
        _("presumed separate"),
        _("mixed"),
        _("not known yet"),
        _("not divided"),
    )


def _counts(findings: tuple[Finding, ...]) -> Iterator[Line]:
    """The counting behind the dates that matter most."""
    weighty = (one for one in findings if one.weight is not Weight.GOOD_TO_KNOW or one.id in ALWAYS_COUNTED)
    counted = (Line(_title(one), "; ".join(step.rstrip(".") for step in one.steps)) for one in weighty)
    yield from islice((line for line in counted if 0 < len(line.words) <= LONGEST_COUNT), MOST_COUNTED)


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
