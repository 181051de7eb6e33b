"""A former name."""

from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _

NAME, USED, KIND = "requests.former_name", "requests.former_name_used", "matter.kind"


@rule(
    "A former name",
    cite=("Fam. Code 2080", "Fam. Code 2081"),
    since=date(2025, 1, 1),
    not_modelled="Changing a name in another way, and a child's name.",
)
def former_name(case: Case, on: date) -> Found | None:
    """In a divorce or a nullity the court gives you back your birth name or a former name if you ask.

    What the law says. In a dissolution or a nullity, "but not in a proceeding for legal separation", the
    court shall restore the birth name or former name of a party who asks. It can refuse only for fraud. It
    does not matter that a child has another name. You can ask for yourself only.

    It must be a name that was really yours. For a new name there is another kind of case.

    It can wait. The court must grant it whether or not the petition asked for it, and even after the judgment
    there is a short form for it. So leaving it out loses nothing.

    An example. Born Rosa Vale, married as Rosa Lind. She can have Vale back. She cannot become Rosa Valley.

    What to do. Write the whole name just as you want it. Think of passport, license, bank and work, which
    you will have to change after the judgment.
    """
    name = known(case.requests.former_name)
    if not name:
        return None
    if kind_of(case) is Kind.LEGAL_SEPARATION:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "A former name cannot be given back in a legal separation. The law allows it only in a "
                "divorce or a nullity."
            ),
            _("Take the request out. You can ask for it in a later divorce."),
            facts=(KIND, NAME),
            mended_by=(NAME,),
        )
    if name.casefold() == (known(case.petitioner.name) or "").casefold():
        return Found(
            Outcome.NOT_MET,
            Weight.GET_ADVICE,
            _("The former name you want back is the name you have now."),
            _("Check the spelling, or leave this out."),
            facts=(NAME, "petitioner.name"),
        )
    return _by_use(case)


def _by_use(case: Case) -> Found:
    used = known(case.requests.former_name_used)
    if used:
        return Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You ask for a former name back. The court shall grant it, and can refuse only for fraud."),
            _("Check the spelling against an old document."),
            facts=(NAME, USED),
        )
    if used is False:
        return Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "You told us that this was never your name. In this case the court can only give back an "
                "old name."
            ),
            _("Take the request out. For a new name, ask the self-help center about a change-of-name case."),
            facts=(NAME, USED),
            mended_by=(NAME,),
        )
    unknown = case.requests.former_name_used is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.LOOK_AGAIN,
        _("We need to know whether this was truly your name before."),
        _("A birth certificate or an old license shows it. You can also ask later: waiting loses nothing.")
        if unknown
        else _("Answer that question. You can also ask later: waiting loses nothing."),
        facts=(NAME, USED),
    )
