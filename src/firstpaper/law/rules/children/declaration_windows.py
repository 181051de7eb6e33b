"""Taking back or fighting a declaration of parentage."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import spell_date
from firstpaper.facts import Case, known
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.law.measures.parentage import SIGNED, windows_of
from firstpaper.law.register import rule
from firstpaper.law.words import child_words, help_first
from firstpaper.locale import _


@rule(
    "Taking back a declaration of parentage",
    cite=(
        "Fam. Code 7573(c)-(d)",
        "Fam. Code 7575(a)",
        "Fam. Code 7576(a)",
        "Fam. Code 7577",
        "Fam. Code 7580",
    ),
    since=date(2020, 1, 1),
    not_modelled=(
        "Declarations that were void from the start (7573.5), challenges by others (7577), and those signed "
        "before 2020."
    ),
)
def declaration_windows(case: Case, on: date) -> list[Found]:
    """A parent can take back a declaration of parentage for 60 days, and fight it for two years for a cause.

    What the law says. Either parent can take it back by filing the state's form within 60 days of the later
    signature. That ends sooner if an order on custody, visits or child support was made in a case that this
    parent was part of. After that, a parent who signed can go to court only for fraud, duress, or a mistake
    about an important fact, and only within two years of the day the state took it on file.

    If one of you was under 18 at the signing, it does not count as a judgment until 60 days after both are
    18 or emancipated. And the one who was under 18 can take it back until 60 days after that.

    How we count. From the first day that the signature can be, so that no day is lost. The two years run
    from the filing with the state, which we do not know. It may be later than the signature, so the true
    last day may be later too. Some declarations are void from the start. For those, no time runs.

    An example. Both signed on October 5, 2026. Either can take it back until December 4, 2026. It can be
    fought for fraud until October 5, 2028 at least.

    What to do. If there is any doubt who a parent is, see a lawyer before these days, and before you sign
    the petition.
    """
    return [found for child in listed_children(case, on) for found in _about(case, child, on)]


def _about(case: Case, child: ListedChild, on: date) -> Iterator[Found]:
    if child.declaration not in SIGNED:
        return
    name = child_words(child.number, child.name)
    facts = (f"{child.key}.declaration", f"{child.key}.declared_on", f"{child.key}.declared_under_age")
    if known(case.fact(facts[2])):
        yield _under_age(name, facts, on)
    elif (windows := windows_of(case, child, on)) and on <= windows.challenge_by.rolled:
        can_take_back = on <= windows.rescind_by.rolled
        last = windows.rescind_by if can_take_back else windows.challenge_by
        says = (
            _("Each of you can still take back the declaration of parentage for {name}, until {day}.")
            if can_take_back
            else _(
                "The declaration of parentage for {name} can be fought for fraud, duress or a mistake, "
                "until {day} at least."
            )
        )
        yield Found(
            Outcome.MET,
            Weight.LOOK_AGAIN if can_take_back else Weight.GOOD_TO_KNOW,
            says.format(name=name, day=spell_date(last.target)),
            _("If there is any doubt who a parent is, see a lawyer before that day."),
            facts=facts,
            dates={"rescind_by": windows.rescind_by.target, "challenge_by": windows.challenge_by.target},
            steps=last.steps,
        )


def _under_age(name: str, facts: tuple[str, ...], on: date) -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "One of you was under 18 when you signed the declaration for {name}. It counts only {days} days "
            "after both of you are 18. Until {days} days after that birthday, that one can take it back."
        ).format(name=name, days=figure("children.minor_declaration_days", on).value),
        _("Mark it in the petition, and ask whether it counts by now. {help}").format(help=help_first()),
        facts=facts,
    )
