"""The two people: who files, how to reach them, what stands in the way of the other side, and danger."""

from collections.abc import Iterator

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Danger, Lives, NullityFiler, Special, Typist
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.handoff.line import Line, a_few, short_day


def of_the_people(brief: Brief) -> Iterator[Line]:
    """One line each; nothing of what goes without saying."""
    case = brief.case
    if known(case.grounds.filer) not in (None, NullityFiler.SPOUSE):
        yield Line(_("Filed for"), _filed_for(case))
    if words := ", ".join(_other_side(case)):
        yield Line(_("The other side"), words)
    yield from _names(case)
    if words := "; ".join(_filer(case)):
        yield Line(_("Filer"), words)
    if language := known(case.people.language):
        yield Line(_("Interpreter"), language)
    if known(case.safety.understood) is not True:
        yield Line(_("Not yet confirmed"), _("that this program gives information and no legal advice"))
    if dangers := "; ".join(_dangers(case)):
        yield Line(_("Danger"), dangers)


def _filer(case: Case) -> Iterator[str]:
    """How to reach them, whether they serve, and who helped."""
    if phone := known(case.petitioner.phone):
        yield phone
    if Special.FILER_IN_MILITARY in (known(case.people.special) or ()):
        yield _("in the military")
    helpers = {
        Typist.PARALEGAL: _("a paralegal typed the answers"),
        Typist.VOLUNTEER: _("a volunteer or a friend typed the answers"),
    }
    if helper := helpers.get(known(case.safety.typist) or Typist.FILER):
        yield helper


def _names(case: Case) -> Iterator[Line]:
    for label, names in (
        (_("Petitioner's other names"), case.petitioner.other_names),
        (_("Respondent's other names"), case.respondent.other_names),
    ):
        if told := known(names):
            yield Line(label, a_few(told))


def _filed_for(case: Case) -> str:
    """For whom the one who files acts, born when, and as what."""
    acts = {
        NullityFiler.PARENT_OR_GUARDIAN: _("by a parent or guardian"),
        NullityFiler.RELATIVE_OR_CONSERVATOR: _("by a relative or conservator"),
        NullityFiler.FORMER_SPOUSE: _("by a spouse of an earlier marriage"),
    }
    born = known(case.grounds.minor_born_on)
    parts = [
        known(case.grounds.filed_for) or "",
        _("born {day}").format(day=short_day(born)) if born else "",
        acts.get(known(case.grounds.filer) or NullityFiler.SPOUSE, ""),
    ]
    return ", ".join(filter(None, parts))


def _other_side(case: Case) -> Iterator[str]:
    """Where they are, where that is not around the corner, and what makes them harder to reach."""
    lives = known(case.residence.respondent.lives)
    where = {
        Lives.OTHER_STATE: _("lives in another state"),
        Lives.ABROAD: _("lives in another country"),
    }
    if lives in where:
        mail, place = known(case.respondent.mailing), known(case.residence.respondent.lives_in)
        place = place or (mail.state if mail and mail.state != "CA" else None)
        yield _("{where} ({place})").format(where=where[lives], place=place) if place else where[lives]
    if lives in where and (here := known(case.respondent.ever_here)) is not None:
        yield _("lived here before") if here else _("never lived here")
    words = {
        Special.OTHER_SIDE_IN_MILITARY: _("in the military"),
        Special.OTHER_SIDE_MISSING: _("cannot be found"),
        Special.OTHER_SIDE_LOCKED_UP: _("in prison or jail"),
        Special.OTHER_SIDE_CONSERVED: _("under a conservator"),
    }
    yield from (words[one] for one in known(case.people.special) or () if one in words)


def _dangers(case: Case) -> Iterator[str]:
    words = {
        Danger.AFRAID: _("the filer is afraid"),
        Danger.VIOLENCE: _("violence or threats"),
        Danger.RESTRAINING_ORDER: _("a restraining order, or one is wanted"),
        Danger.FLED: _("the filer fled"),
        Danger.HIDE_ADDRESS: _("the address must stay hidden"),
    }
    yield from (words[one] for one in known(case.safety.dangers) or ())
    if known(case.safety.safe_at_home):
        yield _("Safe at Home address")
