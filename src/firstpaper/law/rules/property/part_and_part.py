"""A thing that may be part separate and part community."""

from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CommunityKind, SeparateHow
from firstpaper.facts.shared_things import kinds_to_share
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.named_things import kinds_named
from firstpaper.law.property_words import large_kinds
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

LISTS = ("property.separate_petitioner", "property.separate_respondent")
KINDS = ("property.community_kinds", "property.elsewhere_kinds")
ITEMS = "property.community_items"


@rule(
    "Part separate, part community",
    cite=("Fam. Code 760", "Fam. Code 770(a)", "Fam. Code 2640(b)"),
    since=date(2005, 1, 1),
    not_modelled="Which part is whose. That takes papers and sums.",
)
def part_and_part(case: Case, on: date) -> Found | None:
    """A home, a pension, stock or a business from before the wedding can be separate in one part only.

    What the law says. What you owned before is yours. But what pay from the marriage paid for, or work in the
    marriage earned, belongs to you both. One thing can hold both: a condo bought before the wedding whose
    loan was paid from pay, a retirement account that grew with each paycheck, stock that was earned in part
    in the marriage, a business that one of you went on building.

    Tracing. Whoever says that a part is separate has to show it, with papers, from the first day to today
    (tracing). Where the papers are missing, the court takes the part to be community.

    Two ways to look at it. On the list of separate things it tells the court what you ask for. But swear only
    to the part that is yours: you can write "the separate part of", and name the thing in item 10 too.

    An example. She bought a condo in 2009 and married in 2012. The loan was paid from both paychecks for ten
    years. Part of it is hers, and part belongs to both.

    What to do. Gather the statements from the wedding day, and from the day you parted.
    """
    if known(case.property.separate_how) is not SeparateHow.LIST:
        return None
    mixed = kinds_named(_lines(case, LISTS))
    if not mixed:
        return None
    both = set(mixed) & _named_as_community(case)
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE if both else Weight.LOOK_AGAIN,
        _says(mixed, bool(both)),
        _(
            "Find the papers from the wedding day and from the day you parted: who claims a separate part "
            "must show it. {help}"
        ).format(help=help_first()),
        facts=(*LISTS, *KINDS, ITEMS),
    )


def _says(mixed: tuple[CommunityKind, ...], both: bool) -> str:
    things = in_a_row([words for kind, words in large_kinds().items() if kind in mixed])
    if both:
        return _(
            "You named {things} as separate, and the same kind of thing as owned together. If it is one "
            "thing, it may be part separate and part community."
        ).format(things=things)
    return _(
        "You named {things} as separate. If pay or work from the marriage went into it, it may be part "
        "community."
    ).format(things=things)


def _lines(case: Case, keys: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(line for key in keys for line in known(case.fact(key)) or ())


def _named_as_community(case: Case) -> set[CommunityKind]:
    return {*kinds_to_share(case), *kinds_named(_lines(case, (ITEMS,)))}
