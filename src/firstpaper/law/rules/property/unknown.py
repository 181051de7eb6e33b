"""Listed things of which too little is known."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.intake.fact_names import named
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.property_words import thing_words
from firstpaper.law.register import rule
from firstpaper.law.rules.property._listed import listed, names
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

MOST_ASKED = 3
"""How many missing facts of a thing are named at once, so that nobody is buried in them."""


@rule(
    "Listed things of which too little is known",
    cite=("Fam. Code 70", "Fam. Code 760", "Fam. Code 770", "Fam. Code 771"),
    since=date(2020, 1, 1),
    certainty=Certainty.COURT,
    not_modelled="What papers a court takes as proof.",
)
def unknown(case: Case, on: date) -> Found | None:
    """Where a fact is missing that decides whose a thing is, we do not guess.

    Why not. A thing in the wrong list can cost you its worth. Calling it separate when it is community, or
    the other way round, is hard to take back once you have signed.

    How we look at it. For a fact that we do not have, we try every answer it could have. If all of them
    come to the same end, the fact does not matter and we do not ask. If they differ, we ask.

    Where the law starts. If a thing came in the marriage and nobody shows otherwise, the law takes it to
    be community. So in doubt, name it with the community things, and say that you are not sure.

    An example. A car came in 2018, in the marriage. Nobody told us whose money paid. If it was pay, the car
    is community. If it was money that your mother left you, and you can show that, the car is yours. So we
    ask about the money and about the papers.

    What to do. Look for old statements, deeds, letters and tax papers. If you cannot find out, say that you
    do not know. That is an honest answer.
    """
    things = tuple(one for one in listed(case, on) if one.missing)
    if not things:
        return None
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We know too little to say what this is in law: {things}.").format(
            things=in_a_row(names(case, things))
        ),
        _("For each, tell us what is missing. If nobody knows, leave it so; we do not guess."),
        facts=tuple(dict.fromkeys(key for one in things for key in one.missing)),
        values={"property.missing": {one.key: list(one.missing) for one in things}},
        steps=tuple(
            _("{thing}: we need to know {facts}.").format(
                thing=thing_words(case, one.key),
                facts=in_a_row([named(key, case) for key in one.missing[:MOST_ASKED]]),
            )
            for one in things
        ),
    )
