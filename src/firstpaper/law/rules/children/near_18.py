"""A child about to turn 18."""

from datetime import date

from firstpaper.counting import anniversary, day_after, spell_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.children import Child
from firstpaper.facts.choices import Parentage
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import comes_of_age, described
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, leap_birthday, spaced
from firstpaper.locale import _

SOON_DAYS = 60
"""How long before a birthday we point it out. Ours, not the law's."""


@rule(
    "A child about to turn 18",
    cite=("Fam. Code 3402(b)", "Fam. Code 3901(a)", "Fam. Code 3910(a)"),
    since=date(2019, 1, 1),
    not_modelled="Emancipated minors, and whether a grown child still has a right to support.",
)
def near_18(case: Case, on: date) -> list[Found]:
    """A child who turns 18 by the filing day comes off the list of children.

    The list of children depends on the day the court takes your petition. If a birthday lies between
    now and then, the list changes, and so do the boxes on custody. So pick your day with care, and look
    at the list again if your filing slips.

    Example: a child born on January 10, 2009 turns 18 on January 10, 2027. Filed on January 9, the
    petition lists the child as 17. Filed on January 10, it does not list the child.

    Child support can go on after 18. It lasts until the child ends 12th grade or turns 19, whichever
    comes first, if the child is unmarried, goes to high school full time and does not earn enough to
    live on. A child of any age who cannot earn a living and has too little money can have support for
    longer.
    """
    return [found for number, child in described(case) if (found := _about(number, child, on))]


def _about(number: int, child: Child, on: date) -> Found | None:
    born = known(child.born_on)
    if born is None or born.latest > on or known(child.parentage) is Parentage.ONE_PARENT_ONLY:
        return None
    name, key = child_words(number, known(child.name)), f"child.{number}.born_on"
    first, last = comes_of_age(born.earliest, on), comes_of_age(born.latest, on)
    if last <= on:
        return _turned(name, key, born, on)
    if first <= on:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("{name} may have turned 18 by {day}. The part of the birth date you gave does not say.").format(
                name=name, day=spell_date(on)
            ),
            _("Look up the whole birth date. Until then we keep {name} on the list.").format(name=name),
            facts=(key,),
        )
    if first <= day_after(on, SOON_DAYS):
        return Found(
            Outcome.CLOSE,
            Weight.GET_ADVICE,
            spaced((_soon(name, first), leap_birthday(born))),
            _(
                "If your filing slips to the birthday or later, change your answers and print the papers "
                "again."
            ),
            facts=(key,),
            dates={"turns_18_on": first},
        )
    return None


def _soon(name: str, birthday: date) -> str:
    return _(
        "{name} turns 18 soon, on {day}. From then on no judge decides on custody of {name}. A petition "
        "filed on that day or later does not list {name}."
    ).format(name=name, day=spell_date(birthday))


def _turned(name: str, key: str, born: Day, on: date) -> Found | None:
    end_age = figure("children.support_end_age", on).value
    if anniversary(born.latest, end_age) <= on:
        return None
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("{name} is 18 or older on {day}, so no custody order can be made for {name}.").format(
            name=name, day=spell_date(on)
        ),
        _(
            "If {name} still goes to high school full time, is unmarried and cannot live on their own money, "
            "ask for child support. It can last to age {age}."
        ).format(name=name, age=end_age),
        facts=(key,),
        dates={"turned_18_on": comes_of_age(born.latest, on)},
    )
