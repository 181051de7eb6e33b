"""Children on the petition."""

from calendar import isleap
from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.children import Child
from firstpaper.facts.choices import Family, Parentage
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import (
    ListedChild,
    described,
    grown_up_on,
    listed_children,
    presumed_children,
    unborn,
)
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, leap_birthday, spaced
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row

FAMILY = "children.family"
HOW_MANY = "children.how_many"


@rule(
    "Children on the petition",
    cite=("Fam. Code 2330(b)(4)", "Fam. Code 2330(b)(5)", "Fam. Code 3402(b)"),
    since=date(2000, 1, 1),
    not_modelled="Who a child's parents are in law, guardianships, and children with more than two parents.",
)
def listed(case: Case, on: date) -> list[Found]:
    """The petition lists every child of both spouses who is under 18 on the filing day.

    On the list: children born to both, before or during the marriage, and children adopted by both.
    Each has a name, a birth date and an age. We put the oldest first. The age is the number of whole
    years on the day you file, not on the day you sign.

    Not on the list: a stepchild whom the other spouse did not adopt, a child of only one of you, and a
    child who is 18 or older. If you have four children from an earlier marriage and none together, you
    mark that there are no minor children.

    Example: filing on November 25, 2026. A child born on November 25, 2016 is 10 that day. A child
    born on November 26, 2016 is still 9. A child born on November 25, 2008 turns 18 that day and is
    not listed.

    The law asks for ages and birth dates "as nearly as can be ascertained". If you know only the year,
    say so, and look for the whole date before you file: the form has room for one. A child born on
    February 29 has a birthday on February 28 in other years by our count; the law does not say.

    Leaving out a child of both is a serious mistake. The court cannot make orders about a child it
    does not know of. And a child born in the marriage is taken to be of both: see
    children.marital_presumption.
    """
    if not isinstance(case.children.family, tuple):
        return [_family_not_told(case)]
    return [*_on_the_list(case, on), *_not_on_the_list(case, on), *_still_to_tell(case, on)]


def _family_not_told(case: Case) -> Found:
    unknown = case.children.family is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        _("We need to know whether you two have children together. The petition must say so."),
        _("If you are not sure who a child's parents are, ask the court's self-help center.")
        if unknown
        else _("Answer the question about children."),
        facts=(FAMILY,),
    )


def _on_the_list(case: Case, on: date) -> Iterator[Found]:
    children = listed_children(case, on)
    if children:
        says = _n(
            "One child goes on the petition, with the age on {day}: {children}.",
            "{count} children go on the petition, with their ages on {day}: {children}.",
            len(children),
        )
        names = in_a_row([_with_age(child) for child in children])
        says = says.format(count=len(children), day=spell_date(on), children=names)
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            spaced((says, _leap(children, on))),
            _("Check every name and birth date against the birth certificates."),
            facts=(FAMILY, *(f"{child.key}.born_on" for child in children)),
            values={"children.listed": [_row(child) for child in children]},
        )
    elif not unborn(case) and not _undescribed(case) and not presumed_children(case, on):
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("By what you told us, you two have no children under 18 together. The petition says so."),
            facts=(FAMILY,),
            values={"children.listed": []},
        )


def _leap(children: Sequence[ListedChild], on: date) -> str:
    """How a birthday on February 29 counts, in a year that has none."""
    return "" if isleap(on.year) else leap_birthday(*(child.born_on for child in children))


def _with_age(child: ListedChild) -> str:
    name = child_words(child.number, child.name)
    if child.age is None:
        return _("{name} (age not known)").format(name=name)
    return _("{name} ({age})").format(name=name, age=child.age)


def _row(child: ListedChild) -> dict[str, object]:
    return {
        "number": child.number,
        "born_on": child.born_on.isoformat() if child.born_on else None,
        "age": child.age,
    }


def _not_on_the_list(case: Case, on: date) -> Iterator[Found]:
    presumed = {child.born_key for child in presumed_children(case, on)}
    for number, child in described(case):
        if f"child.{number}.born_on" in presumed:
            continue  # children.marital_presumption speaks of it
        if why := _why_not(number, child, on):
            yield Found(
                Outcome.MET, Weight.GOOD_TO_KNOW, why, facts=tuple(f"child.{number}.{key}" for key in _KEYS)
            )
    family = known(case.children.family) or ()
    if Family.FROM_OTHERS in family and "children.others_born_on" not in presumed:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Stepchildren, and other children of only one of you, do not go on the petition."),
            facts=(FAMILY,),
        )
    if Family.GROWN in family:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Children who are 18 or older do not go on the petition."),
            _("If a grown child cannot earn a living, or is still in high school, ask about child support."),
            facts=(FAMILY,),
        )


_KEYS = ("parentage", "born_on")


def _why_not(number: int, child: Child, on: date) -> str:
    name, born = child_words(number, known(child.name)), known(child.born_on)
    if known(child.parentage) is Parentage.ONE_PARENT_ONLY:
        return _("{name} is not listed: only one of you is a parent.").format(name=name)
    if grown_up_on(child, on):
        return _("{name} is not listed: {age} or older on {day}.").format(
            name=name, age=figure("children.majority", on).value, day=spell_date(on)
        )
    if born and born.earliest > on:
        return _("{name} is not listed: the birth date lies after {day}.").format(
            name=name, day=spell_date(on)
        )
    return ""


def _still_to_tell(case: Case, on: date) -> Iterator[Found]:
    if _undescribed(case):
        yield _need(
            _("You have more children together than you have told us about one by one."),
            _("Tell us about each child, or change the number of children."),
            HOW_MANY,
        )
    for child in listed_children(case, on):
        name = child_words(child.number, child.name)
        if child.name is None:
            says = _("We need the full legal name of {name}.").format(name=name)
            yield _need(says, _("Use the name on the birth certificate."), f"{child.key}.name")
        if child.born_on is None:
            says = _("We need the whole birth date of {name}.").format(name=name)
            yield _need(says, _("The birth certificate or a health card has it."), f"{child.key}.born_on")
        elif child.born and child.born.unsure:
            says = _("You were not sure of the birth date of {name}.").format(name=name)
            yield _need(says, _("Check it before you sign."), f"{child.key}.born_on")
        if child.parentage is None:
            says = _("We need to know how {name} came to be a child of both of you.").format(name=name)
            yield _need(says, _("If you are not sure, ask the self-help center."), f"{child.key}.parentage")


def _undescribed(case: Case) -> bool:
    together = Family.MINOR_TOGETHER in (known(case.children.family) or ())
    return together and len(described(case)) < (known(case.children.how_many) or 1)


def _need(says: str, do: str, key: str) -> Found:
    return Found(Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, says, do, facts=(key,))
