"""The children whom the petition lists: minor children of both, on the filing day.

A child is listed while under the age of majority (Fam. Code 6500; Fam. Code 2330(b)). A birth date
told in part is never completed: the child is listed where the told parts leave room for a minor.
"""

from datetime import date
from typing import NamedTuple

from firstpaper.counting import age_on, anniversary
from firstpaper.facts import Case, Day, known
from firstpaper.facts.children import Child
from firstpaper.facts.choices import CustodySheet, CustodyTo, Declaration, Family, Parentage, Union, VisitsTo
from firstpaper.law.figure import figure
from firstpaper.law.measures.marriage import begins_on_an_open_day, first_union
from firstpaper.law.measures.once import once_a_case
from firstpaper.law.words import child_words

CUSTODY_FORMS = {
    CustodySheet.FL_311: "FL-311",
    CustodySheet.FL_312: "FL-312",
    CustodySheet.FL_341_C: "FL-341(C)",
    CustodySheet.FL_341_D: "FL-341(D)",
    CustodySheet.FL_341_E: "FL-341(E)",
}
"""The official forms that can go behind item 6, by their choice."""

NEVER_LISTED = {Family.FROM_OTHERS, Family.GROWN}


class ListedChild(NamedTuple):
    """One row of the petition's list.

    `number` counts from 1 in `case.child`. `born_on` is the whole day told, sure or not; `born` is
    what was told, which may be a month or a year. `age` is None where what was told leaves two
    ages open. `under_age` is None where it leaves open whether the child is still a minor.
    """

    number: int
    name: str | None
    born: Day | None
    born_on: date | None
    age: int | None
    under_age: bool | None
    birthplace: str | None
    parentage: Parentage | None
    declaration: Declaration | None
    legal: CustodyTo | None
    physical: CustodyTo | None
    visits: VisitsTo | None

    @property
    def key(self) -> str:
        """The path of this child's facts, as in "child.2"."""
        return f"child.{self.number}"


@once_a_case
def listed_children(case: Case, on: date) -> tuple[ListedChild, ...]:
    """The minor children of both on the day `on`, oldest first; a child without a birth date is last."""
    listed = [_listed(number, child, on) for number, child in described(case) if _belongs(child, on)]
    return tuple(sorted(listed, key=lambda child: child.born.earliest if child.born else date.max))


@once_a_case
def described(case: Case) -> tuple[tuple[int, Child], ...]:
    """The children about whom anything was told, with their numbers."""
    return tuple((number, child) for number, child in enumerate(case.child, 1) if child != Child())


def grown_up_on(child: Child, on: date) -> bool:
    """Whether the child is surely of age on that day, whatever the parts not told may be."""
    born = known(child.born_on)
    return born is not None and comes_of_age(born.latest, on) <= on


def comes_of_age(born: date, on: date) -> date:
    """The birthday on which a child born that day is no longer a minor, by the law of the day `on`."""
    return anniversary(born, figure("children.majority", on).value)


def has_minor_children(case: Case, on: date) -> bool:
    """Whether there is a minor child of both, listed already or told of but not yet described."""
    if listed_children(case, on):
        return True
    together = Family.MINOR_TOGETHER in (known(case.children.family) or ())
    return together and len(described(case)) < (known(case.children.how_many) or 1)


def unborn(case: Case) -> bool:
    """Whether the filer told of a child of both who is not yet born."""
    return Family.UNBORN_TOGETHER in (known(case.children.family) or ())


def concerns_children(case: Case, on: date) -> bool | None:
    """Whether there is a child, born or not, to decide about; None while that is not known."""
    if listed_children(case, on) or not_described(case) or unborn(case):
        return True
    if presumed_children(case, on):
        return None
    return False if _names_no_minor(case) else None


def may_list_a_child(case: Case, on: date) -> bool:
    """Whether no child is on the petition, but one said to be of one spouse alone may belong there."""
    return concerns_children(case, on) is None and bool(presumed_children(case, on))


def open_on_children(case: Case, on: date) -> str:
    """The fact that leaves open whether there is a child to decide about."""
    presumed = presumed_children(case, on)
    return presumed[0].key if presumed else "children.family"


def not_described(case: Case) -> int:
    """How many minor children of both were told of, but not described."""
    if Family.MINOR_TOGETHER not in (known(case.children.family) or ()):
        return 0
    return max(0, (known(case.children.how_many) or 1) - len(described(case)))


def _names_no_minor(case: Case) -> bool:
    """Whether the answer on the children leaves no minor child of both but those described."""
    family = known(case.children.family)
    return family is not None and (Family.MINOR_TOGETHER in family or set(family) <= NEVER_LISTED)


class PresumedChild(NamedTuple):
    """A child said to be of one spouse alone, whom the law may take for a child of both.

    `key` is the fact that says so, `born` what was told of the birth. `born_to_one` is False where it was
    not told whether one of the two gave birth. `unclear_days` are the keys of the days that leave open
    whether that was in the union; `open_in_law` says that no law tells, because they registered elsewhere.
    """

    key: str
    name: str
    born: Day | None
    born_key: str
    born_to_one: bool
    unclear_days: tuple[str, ...] = ()
    open_in_law: bool = False

    @property
    def in_union(self) -> bool:
        """Whether the birth, if one of the two gave it, surely lies in the union."""
        return not self.unclear_days and not self.open_in_law


def presumed_children(case: Case, on: date) -> tuple[PresumedChild, ...]:
    """Minors born to a spouse in the union, or who may have been, and said to be of one alone.

    The child of a spouse born in the marriage is presumed to be of both (Fam. Code 7611(a)), and conclusively
    so where the two lived together then (Fam. Code 7540(a)); for partners alike (Fam. Code 297.5(d)).
    """
    rows = [_presumed(case, number, child, on) for number, child in described(case)]
    in_union = case.children.others_in_union
    if Family.FROM_OTHERS in (known(case.children.family) or ()) and in_union is not False:
        born = known(case.children.others_born_on)
        others = PresumedChild(
            "children.others_in_union",
            "",
            born,
            "children.others_born_on",
            in_union is True,
            open_in_law=_open_in_law(case, born),
        )
        rows.append(others)
    return tuple(row for row in rows if row)


def _belongs(child: Child, on: date) -> bool:
    born = known(child.born_on)
    not_yet_born = born is not None and born.earliest > on
    of_both = known(child.parentage) is not Parentage.ONE_PARENT_ONLY
    return of_both and not not_yet_born and not grown_up_on(child, on)


def _listed(number: int, child: Child, on: date) -> ListedChild:
    born = known(child.born_on)
    return ListedChild(
        number=number,
        name=known(child.name),
        born=born,
        born_on=born.whole if born else None,
        age=_age(born, on) if born else None,
        under_age=_under_age(born, on) if born else None,
        birthplace=known(child.birthplace),
        parentage=known(child.parentage),
        declaration=known(child.declaration),
        legal=known(child.legal),
        physical=known(child.physical),
        visits=known(child.visits),
    )


def _age(born: Day, on: date) -> int | None:
    ages = {age_on(born.earliest, on), age_on(min(born.latest, on), on)}
    return ages.pop() if len(ages) == 1 else None


def _under_age(born: Day, on: date) -> bool | None:
    return True if comes_of_age(born.earliest, on) > on else None


def _presumed(case: Case, number: int, child: Child, on: date) -> PresumedChild | None:
    of_both = known(child.parentage) is not Parentage.ONE_PARENT_ONLY
    if of_both or child.born_to_one_of_you is False or grown_up_on(child, on):
        return None
    key = f"child.{number}"
    born, (began_key, began) = known(child.born_on), first_union(case)
    if born and began and born.latest < began.earliest:
        return None
    after = born and began and born.earliest >= began.latest
    days = {f"{key}.born_on": born, began_key: began}
    return PresumedChild(
        f"{key}.born_to_one_of_you",
        child_words(number, known(child.name)),
        born,
        f"{key}.born_on",
        child.born_to_one_of_you is True,
        () if after else tuple(name for name, told in days.items() if told is None or told.whole is None),
        _open_in_law(case, born),
    )


def _open_in_law(case: Case, born: Day | None) -> bool:
    """Whether no law tells if that birth was in the union; a later wedding of the same two settles it."""
    married = Union.MARRIAGE in (known(case.matter.unions) or ())
    wed = known(case.dates.married_on) if married else None
    in_the_marriage = born is not None and wed is not None and born.earliest >= wed.latest
    return begins_on_an_open_day(case) and not in_the_marriage
