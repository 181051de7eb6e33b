"""A child born in the marriage, said to be of one spouse alone."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.intake.fact_names import named
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import PresumedChild, presumed_children
from firstpaper.law.measures.parentage import challenge_by
from firstpaper.law.register import rule
from firstpaper.law.words import spaced, target_day
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


@rule(
    "A child born in the marriage",
    cite=(
        "Fam. Code 7540(a)",
        "Fam. Code 7541(b)",
        "Fam. Code 7611(a)",
        "Fam. Code 7612(a)",
        "Fam. Code 297.5(d), (k)(1)",
        "Fam. Code 299.2",
    ),
    since=date(2020, 1, 1),
    not_modelled="Who the parents are. More than two people can be parents, and only a judge can decide it.",
)
def marital_presumption(case: Case, on: date) -> list[Found]:
    """A child born to one of you in the marriage is taken to be of both, until a judge says otherwise.

    How the law reads. A child that one spouse gives birth to while you are married is presumed to be
    the child of the other spouse too (Fam. Code 7611(a)). So is a child born within 300 days after
    the marriage ends. If the two of you lived together when the child was conceived and born, the law
    does not even let that be argued, save in the cases it names (Fam. Code 7540, 7541). Partners who
    registered are treated alike (Fam. Code 297.5(d)).

    Why it matters. The petition states, under oath, which children the marriage has. If such a child
    is left off, no order is made on custody or support, and the judgment may later be opened again.
    If you say that your spouse is not the parent, the case is the place to raise it.

    The time. A challenge to a spouse's parentage must be filed, and also served, no later than two
    years from the birth (Fam. Code 7541(b)). After that the presumption most often stands.

    When a day is missing. If you do not know the day of the wedding or of the birth, nobody can say yet
    that the birth was in the marriage. We ask for that day first, and treat the child as one who may be.

    Partners who registered in another state or country. Their union counts here (Fam. Code 299.2), but we
    found no section that says from which day. For what is owned the law names a registration with this
    state (Fam. Code 297.5(k)(1)). For children it names no day (Fam. Code 297.5(d)). So a birth after that
    registration may have been in the union or before it. We leave it open, as we do for what is owned,
    unless you two married before the birth.

    What we do. We do not decide who is a parent. We leave the two lines "no minor children" and "the
    minor children are" open until you have had advice, and we name the two years. If others are on
    the list, we mark it for them and say that it may not be whole.

    An example. You married in 2019 and parted in 2021, and have lived apart since. In 2025 you have a
    child with somebody new. You are still married, so in law your spouse is presumed to be a parent.
    Ask before you file: who is told, and what the petition should say.

    Other ways to be a parent. A person who takes a child home and treats it as their own can be a
    parent too, with no marriage at all (Fam. Code 7611(d)). A lawyer should look at that.
    """
    return [_about(case, child, on) for child in presumed_children(case, on)]


def _about(case: Case, child: PresumedChild, on: date) -> Found:
    if case.fact(child.key) is None and not child.name:
        return _not_asked_yet(child)
    due = challenge_by(case, child.born, on) if child.born else None
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _says(child),
        spaced([_find_out(case, child), _registered_elsewhere(child), _do(), _until(case, child, on)]),
        facts=tuple(dict.fromkeys((child.key, child.born_key, *child.unclear_days, *_told_of_unions(child)))),
        dates={"challenge_by": due.target} if due else {},
        steps=due.steps if due else (),
    )


def _not_asked_yet(child: PresumedChild) -> Found:
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _says(child),
        _("Answer the question about the children of one of you. We leave the lines on children open."),
        facts=(child.key,),
    )


def _says(child: PresumedChild) -> str:
    if not child.name:
        return (
            _(
                "You told us of a child born to one of you in the marriage or partnership, and said to be "
                "of one of you alone. In law such a child is most often a child of both."
            )
            if child.born_to_one
            else _("We need to know whether one of you gave birth to one of those children in the marriage.")
        )
    if not child.born_to_one:
        says = _(
            "You said that {name} is a child of just one of you. If one of you gave birth to {name} in the "
            "marriage or partnership, in law {name} is most often a child of both."
        )
    elif child.in_union:
        says = _(
            "You said that {name} is a child of just one of you. But {name} was born to one of you in the "
            "marriage or partnership. So in law {name} is most often a child of both."
        )
    else:
        says = _(
            "You said that {name} is a child of just one of you, and that one of you gave birth to {name}. "
            "If that was in the marriage or partnership, in law {name} is most often a child of both."
        )
    return says.format(name=child.name)


def _find_out(case: Case, child: PresumedChild) -> str:
    """The days on which it hangs whether the birth was in the union."""
    if not child.unclear_days:
        return ""
    days = in_a_row([named(key, case) for key in child.unclear_days])
    return _("Find out {days}: it hangs on that.").format(days=days)


def _told_of_unions(child: PresumedChild) -> tuple[str, ...]:
    return ("matter.unions",) if child.open_in_law else ()


def _registered_elsewhere(child: PresumedChild) -> str:
    if not child.open_in_law:
        return ""
    return _(
        "You registered in another state or country. We found no law that says from which day such a "
        "partnership counts here."
    )


def _do() -> str:
    return _(
        "Do not leave the child off without advice: ask a lawyer or the self-help center first. "
        "We leave the lines on children open. A child who belongs on the petition needs form FL-105 too."
    )


def _until(case: Case, child: PresumedChild, on: date) -> str:
    years = figure("children.presumption_challenge_years", on).value
    if child.born is None:
        return _(
            "A spouse who says that the other is no parent must file and serve that within {years} years of "
            "the birth. A child born within {days} days after the end counts too."
        ).format(years=years, days=figure("children.after_marriage_days", on).value)
    due = challenge_by(case, child.born, on)
    if due.missed(on):
        return _("The {years} years in which a spouse could fight it ended on {day}.").format(
            years=years, day=target_day(due)
        )
    return _(
        "To say that the other is no parent, a spouse has {years} years from the birth. "
        "File that, and serve it, by {day}."
    ).format(years=years, day=target_day(due))
