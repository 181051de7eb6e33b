"""A hidden address."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Danger
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.register import rule
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

DANGERS, PROGRAM, MAILING = "safety.dangers", "safety.safe_at_home", "petitioner.mailing"


@rule(
    "A hidden address",
    cite="Code Civ. Proc. 1013(a)",
    since=date(2024, 7, 1),
    not_modelled="Who can join Safe at Home, and asking a judge to seal a paper.",
)
def address(case: Case, on: date) -> list[Found]:
    """Court papers are public and go to the other side, so an address that must stay hidden never goes
    on them.

    What the papers show even without your home address: your name, the court and its county, which tells
    that one of you lives there; any mailing address, phone number and e-mail you give; and the
    children's names and birth dates. With minor children, form FL-105 asks where they have lived for
    five years and with whom.

    Ways to stay hidden. Any safe address where mail reaches you will do: a post office box, a relative,
    a lawyer. Phone and e-mail can be left out or be new ones. California's Safe at Home program gives
    people who fled violence, stalking, trafficking or a child's abduction an address to use in place of
    their own. Courts and agencies must accept it. Ask the hotline or an advocate how to join before you
    file.

    For form FL-105 there is a protection of its own: see the page children.confidential_address.

    One more thing. Papers mailed to a Safe at Home address take longer, so the law adds days when a
    later paper is served there by mail.

    An example. A mother moved to another county and must not be found. If she files there, the county
    itself gives away where she is. She asks an advocate whether another county is open to her.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    told, mailing = known(case.safety.dangers) or (), known(case.petitioner.mailing)
    if Danger.HIDE_ADDRESS in told:
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _("The other side must not learn where you live. The papers still show {what}.").format(
                what=_what_shows(case, on)
            ),
            _use_the_programs(case),
            facts=(DANGERS, PROGRAM),
            cite=("Gov. Code 6205", "Gov. Code 6207"),
        )
        if mailing:
            yield _look_at_mailing(
                _(
                    "You gave a mailing address. It will stand on the first page, and the other side gets a "
                    "copy."
                ),
                in_program=known(case.safety.safe_at_home) is True,
            )
    elif told and mailing:
        yield _look_at_mailing(
            _("Your mailing address will stand on the first page, and the other side gets a copy."),
            in_program=False,
        )


def _use_the_programs(case: Case) -> str:
    if known(case.safety.safe_at_home):
        return _(
            "You are in Safe at Home: use the program's address on every form, and never your own. Show the "
            "clerk your card. Ask the program how papers for you reach you, and whether your name can be "
            "kept off public lists. If the county gives you away, talk to a lawyer first."
        )
    return _(
        "Ask about California's Safe at Home program before you file. Use only an address that is "
        "safe for mail. If the county gives you away, talk to a lawyer first."
    )


def _what_shows(case: Case, on: date) -> str:
    shown = [_("your name"), _("the county of the court")]
    if known(case.petitioner.phone):
        shown.append(_("your phone number"))
    if known(case.petitioner.email):
        shown.append(_("your e-mail"))
    if known(case.residence.petitioner.lives_in):
        shown.append(_("the state or country you live in"))
    if has_minor_children(case, on):
        shown.append(_("the children's names and birth dates"))
    return in_a_row(shown)


def _look_at_mailing(says: str, *, in_program: bool) -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        says,
        _("Make sure that it is the address that Safe at Home gave you, and no other.")
        if in_program
        else _(
            "Make sure that it does not give away where you live. A post office box or a lawyer's address "
            "will do."
        ),
        facts=(DANGERS, MAILING, PROGRAM) if in_program else (DANGERS, MAILING),
    )
