"""Five years of homes for each child."""

from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.counting import short_date, spell_date
from firstpaper.facts import Case
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.child_homes import Stretch, history, history_since, homes
from firstpaper.law.measures.children import ListedChild, listed_children
from firstpaper.law.register import rule
from firstpaper.law.words import child_words
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


@rule(
    "Five years of homes for each child",
    cite=("Fam. Code 3429(a)", "Cal. Rules of Court, rule 5.52"),
    since=date(2000, 1, 1),
    not_modelled="The present addresses of the people the child lived with, and other cases about the child.",
)
def address_history(case: Case, on: date) -> list[Found]:
    """With the petition goes a paper that tells where each child has lived for five years, and with whom.

    What the law asks. Under oath, and as far as you can find out: where the child is now, the places where
    the child has lived in the last five years, and the names and present addresses of the people the child
    lived with. The form is FL-105. Each parent files one. It must be kept up to date: if you hear of
    another case about the child, tell the court.

    How to fill it. Newest home first. No gaps: the day one home ends, the next begins. A younger child's
    list begins with the birth. A child who goes back and forth between two homes needs both. A trip is not
    a home.

    How we check. For a filing on November 25, 2026, the list begins on November 25, 2021, or at the birth.
    Where you gave only a month or a year, we see no gap if the months can meet.

    If there has been violence or abuse, see the page children.confidential_address before you write down
    where you or the children live.

    What to do. Collect the months and cities now. Old leases, school papers and tax returns help.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    children = listed_children(case, on)
    told = [child for child in children if homes(case, child)]
    if children and not told:
        yield _to_collect(children, on)
    for child in told:
        yield from _about(case, child, on)


def _to_collect(children: Sequence[ListedChild], on: date) -> Found:
    years: int = figure("children.address_history_years", on).value
    since = {f"{child.key}.history_since": history_since(child.born, on) for child in children}
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GOOD_TO_KNOW,
        _(
            "Form FL-105 asks where each child has lived since {day}, or since birth, and with whom. That is "
            "{years} years, as far as you can find out."
        ).format(day=spell_date(history_since(None, on)), years=years),
        _("Collect the months and cities before you fill it in."),
        facts=tuple(f"{child.key}.born_on" for child in children),
        dates=since,
    )


def _about(case: Case, child: ListedChild, on: date) -> Iterator[Found]:
    name, lived = child_words(child.number, child.name), homes(case, child)
    told = history(lived, child.born, on)
    facts = (f"{child.key}.homes", f"{child.key}.born_on")
    if told.gaps:
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("The homes of {name} leave a gap: {gaps}.").format(name=name, gaps=_stretches(told.gaps)),
            _(
                "Form FL-105 wants every day since {day}. Add the home that is missing. If you cannot find "
                "it out, say so: the law asks for what you can reasonably find out."
            ).format(day=spell_date(told.since)),
            facts=facts,
            dates={"history_since": told.since},
        )
    if told.overlaps:
        yield Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _("{name} has two homes at once in your answers: {days}.").format(
                name=name, days=_stretches(told.overlaps)
            ),
            _("That is right if {name} lived in both. If not, check the days.").format(name=name),
            facts=facts,
            dates={"history_since": told.since},
        )
    if told.complete and not told.overlaps:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("The homes of {name} cover every day since {day}.").format(
                name=name, day=spell_date(told.since)
            ),
            _("Copy them to form FL-105, the newest first."),
            facts=facts,
            dates={"history_since": told.since},
        )


def _stretches(stretches: Sequence[Stretch]) -> str:
    words = _("{first} to {last}")
    return in_a_row(
        [words.format(first=short_date(one.first), last=short_date(one.last)) for one in stretches]
    )
