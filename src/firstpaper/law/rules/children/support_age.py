"""How long child support lasts."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import anniversary, short_date, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import Family
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import comes_of_age, listed_children
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, spaced
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

FAMILY, GROWN, WHO = "children.family", "support.grown", "support.grown_who"


@rule(
    "How long child support lasts",
    cite=("Fam. Code 3901(a)", "Fam. Code 58", "Fam. Code 3587"),
    since=date(2019, 1, 1),
    not_modelled="How much. Children who marry, earn their own living or leave home early.",
)
def support_age(case: Case, on: date) -> list[Found]:
    """Child support lasts to 18, or for a child still in high school to the end of 12th grade or to 19.

    What the law says. The duty goes on for a child of 18 who is not married, goes to high school full time
    and does not earn enough to live on. It ends with 12th grade or at 19, whichever comes first. A child
    who cannot go full time because of an illness that a doctor has put on paper counts as going.

    A child of any age who cannot earn a living and has too little money can have support for longer. A
    court can order it paid to a special needs trust. Parents can also agree on more.

    A grown child is not listed in the petition, and no custody order can be made. But the petition can ask
    for support, in item 7d. If it does not, and the other person never answers, the judge may not order it.

    An example. A child born on June 10, 2009 turns 18 on June 10, 2027 and ends 12th grade on June 4,
    2028. Support can last until June 4, 2028. The 19th birthday, June 10, comes later.

    What to do. You need not ask for child support in the petition. If a child is near 18, ask the child
    support agency or the self-help center early.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    end_age: int = figure("children.support_end_age", on).value
    born = {
        child: child.born_on for child in listed_children(case, on) if child.born_on and child.age is not None
    }
    if born:
        youngest = max(born, key=lambda child: born[child])
        grown_on = spell_date(comes_of_age(born[youngest], on))
        dates = {}
        for child, day in born.items():
            dates[f"{child.key}.turns_18_on"] = comes_of_age(day, on)
            dates[f"{child.key}.turns_19_on"] = anniversary(day, end_age)
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("Child support can be ordered for each child until 18. {name} turns 18 on {day}.").format(
                name=child_words(youngest.number, youngest.name), day=grown_on
            ),
            _(
                "A child still in high school full time, unmarried and not self-supporting can have it "
                "to the end of 12th grade or to {age}, whichever is first."
            ).format(age=end_age),
            facts=(FAMILY, *(f"{child.key}.born_on" for child in born)),
            dates=dates,
            steps=tuple(
                _("{name}: 18 on {first}, {age} on {last}").format(
                    name=child_words(child.number, child.name),
                    first=short_date(comes_of_age(day, on)),
                    age=end_age,
                    last=short_date(anniversary(day, end_age)),
                )
                for child, day in born.items()
            ),
        )
    if Family.GROWN in (known(case.children.family) or ()) and known(case.support.grown) != ():
        yield _grown(case)


def _grown(case: Case) -> Found:
    if known(case.support.grown):
        return Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            spaced([_asked_for(case), _("Item 7d of the petition says so. Item 4 does not list the child.")]),
            _("Bring what shows it: from the school, or from the doctor. Ask the child support agency too."),
            facts=(FAMILY, GROWN, WHO),
            cite=("Fam. Code 3910",),
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.LOOK_AGAIN,
        _(
            "A child of 18 may have support while in high school full time, "
            "if unmarried and not self-supporting. "
            "So may a child of any age who cannot earn a living and has too little money."
        ),
        _(
            "If that fits a child of yours, answer the question on grown children. "
            "Then the petition asks for it."
        ),
        facts=(FAMILY, GROWN),
        cite=("Fam. Code 3910",),
    )


def _asked_for(case: Case) -> str:
    names = known(case.support.grown_who)
    if not names:
        return _("You ask for support for a grown child.")
    return _("You ask for support for a grown child: {names}.").format(names=in_a_row(names))
