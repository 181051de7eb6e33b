"""A child born before the marriage."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Declaration, Parentage, Union
from firstpaper.facts.kinds import is_nullity
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.law.measures.marriage import begins_on_an_open_day, first_union
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, help_first
from firstpaper.locale import _


@rule(
    "A child born before the marriage",
    cite=("Fam. Code 2330.1", "Fam. Code 7571(d)", "Fam. Code 7573(c)", "Fam. Code 7573(d)"),
    since=date(2020, 1, 1),
    not_modelled="Whether a declaration is valid, and whether it can still be taken back or challenged.",
)
def before_marriage(case: Case, on: date) -> list[Found]:
    """A child of both who was born before the marriage can be listed, and the court can name the parents.

    A child born to a married couple is taken to be the child of both. For a child born to the same two
    people before they married, that has to be shown. The petition in a divorce or a legal separation may
    list such a child, and the court can decide in the same case that both are parents.

    A voluntary declaration of parentage (or paternity) is a state form that parents often sign at the
    hospital. Once the state has it on file, it counts like a court judgment. If you both signed one,
    mark it on the petition and attach a copy if you have one. If you signed one but cannot find it,
    mark it all the same, and ask the state's child support department for a copy. A birth certificate
    is not a declaration.

    Example: a child born in 2014, a wedding in 2016, a declaration signed at the hospital. The child is
    on the list, and the box for the declaration is marked.

    If none was signed, or somebody else might be a parent, get advice before you file. The law speaks
    of divorce and legal separation here; in a nullity ask how to have parentage decided. For registered
    partners the day of registration counts as the wedding day. If you registered in another state or
    country and married later, no law that we found says from which day the partnership counts here.
    """
    return [found for child in listed_children(case, on) if (found := _about(case, child))]


def _about(case: Case, child: ListedChild) -> Found | None:
    union_key, began = first_union(case)
    if in_partnership := _in_the_partnership(case, child):
        return in_partnership
    if child.born is None or began is None or child.parentage is Parentage.ADOPTED_BY_BOTH:
        return None
    if child.born.earliest >= began.latest:
        return None
    name = child_words(child.number, child.name)
    facts = (f"{child.key}.born_on", f"{child.key}.declaration", union_key)
    if child.born.latest >= began.earliest:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("We cannot tell whether {name} was born before the marriage.").format(name=name),
            _("Look up the whole birth date and the whole wedding date."),
            facts=facts,
        )
    if is_nullity(case) and child.declaration is Declaration.NOT_SIGNED:
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _("{name} was born before the marriage, and no declaration of parentage was signed.").format(
                name=name
            ),
            _("Ask how parentage is decided in a nullity. {help}").format(help=help_first()),
            facts=facts,
        )
    return _by_declaration(case, child, name, facts)


def _in_the_partnership(case: Case, child: ListedChild) -> Found | None:
    """That a child came before the wedding, but after the two had registered as partners."""
    wed, registered = known(case.dates.married_on), known(case.dates.registered_on)
    born, unions = child.born, set(known(case.matter.unions) or ())
    both = Union.MARRIAGE in unions and len(unions) > 1
    if not (both and born and wed and registered and child.parentage is Parentage.BORN_TO_BOTH):
        return None
    if not registered.latest <= born.earliest <= born.latest < wed.earliest:
        return None
    says = _("{name} was born before the wedding, but after you two registered as partners.")
    if begins_on_an_open_day(case):
        return Found(
            Outcome.CLOSE,
            Weight.LOOK_AGAIN,
            says.format(name=child_words(child.number, child.name)),
            _(
                "You registered in another state or country. We found no law that says from which day such a "
                "partnership counts here. Ask the self-help center if the petition should say more about "
                "this child, such as a signed declaration of parentage."
            ),
            facts=(f"{child.key}.born_on", "dates.married_on", "dates.registered_on", "matter.unions"),
            cite=("Fam. Code 299.2",),
        )
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        says.format(name=child_words(child.number, child.name)),
        _("The law treats such a child like one born in a marriage. No declaration of parentage is needed."),
        facts=(f"{child.key}.born_on", "dates.married_on", "dates.registered_on"),
    )


def _by_declaration(case: Case, child: ListedChild, name: str, facts: tuple[str, ...]) -> Found:
    says = _("{name} was born before the marriage and can be listed.").format(name=name)
    match child.declaration:
        case Declaration.SIGNED_WITH_COPY:
            do = _("Mark the box for the declaration of parentage, and attach a copy.")
            return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, do, facts=facts)
        case Declaration.SIGNED_NO_COPY:
            do = _(
                "Mark the box for the declaration of parentage. You can ask the state's child support "
                "department for a copy."
            )
            return Found(Outcome.MET, Weight.GOOD_TO_KNOW, says, do, facts=facts)
        case Declaration.COURT_DECIDED:
            do = _(
                "A judge's order on who the parents are, or on custody, stays in force. Bring a copy, "
                "and tell the court about that case. "
                "A child of your earlier marriage to each other is a child of both."
            )
            return Found(Outcome.MET, Weight.LOOK_AGAIN, says, do, facts=facts)
        case Declaration.NOT_SIGNED:
            do = _(
                "The court can decide in this case that you are both parents. Ask the self-help center what "
                "to "
                "bring."
            )
            return Found(Outcome.MET, Weight.LOOK_AGAIN, says, do, facts=facts)
    unknown = case.fact(f"{child.key}.declaration") is DONT_KNOW
    find_out = _("Ask the other parent, or the state's child support department, whether one is on file.")
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("{says} It matters whether you both signed a declaration of parentage.").format(says=says),
        find_out if unknown else _("Answer the question about a declaration of parentage."),
        facts=facts,
    )
