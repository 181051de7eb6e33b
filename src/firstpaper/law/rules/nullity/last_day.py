"""The last day to file for a nullity."""

from datetime import date

from firstpaper.counting import day_after, spell_date
from firstpaper.facts import Case, known
from firstpaper.facts.choices import NullityGround
from firstpaper.law.finding import FILE_BY, Found, Outcome, Weight
from firstpaper.law.measures.due import Due
from firstpaper.law.measures.nullity import (
    Limit,
    Runs,
    files_for_a_minor,
    grounds,
    late_allowed_from,
    own_limit,
    time_limit,
)
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open, without
from firstpaper.law.words import ground_words, help_first, leap_birthday, spaced, target_day
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

SOON_DAYS, URGENT_DAYS = 60, 7
"""How long before a last day we call it soon, and urgent. Ours, not the law's."""


@rule(
    "Last day to file for a nullity",
    cite=("Fam. Code 2211(a)-(f)", "Code Civ. Proc. 12a", "Fam. Code 2200", "Fam. Code 2201"),
    since=date(2026, 1, 1),
    not_modelled="Whether a court would hold that the time stood still, or that the filer waited too long.",
)
def last_day(case: Case, on: date) -> list[Found]:
    """Most grounds of a nullity can be used only until a last day, or only while both spouses are alive.

    Under age: four years after turning 18, if the one who was under age files; before the 18th
    birthday, if a parent or another person in charge files. Fraud: four years after the facts were
    found out. Force and physical incapacity: four years after the wedding. An earlier spouse thought
    dead, and unsound mind: while both spouses are alive. The two void grounds (incest and bigamy) have
    no last day.

    How we count: the day it starts from is not counted, and the last day has the same date, four years
    later. Example: a wedding on November 26, 2022 gives November 26, 2026 for force. That day is
    Thanksgiving and the court is closed, so the law moves the last day to the next day the court is
    open, Monday, November 30, 2026. We name the last open day before, Wednesday, November 25, and the
    later one in brackets. Do not count on the later one: file on Wednesday or sooner. Online systems fail,
    clerks send papers back, and a judge might count in another way.

    For a parent or guardian the law says "before" the 18th birthday. A closed court does not make that time
    longer. Born on February 16, 2009, the last day is Monday, February 15, 2027. That is a court holiday, and
    so is Friday, the 12th. So the last day to file is Thursday, February 11.

    February 29: four years after it is again February 29. A person born on February 29 turns 18 on
    February 28 by our count; the law does not say.

    If you are not sure of a date, we count from the first day it can have been.
    """
    return [_about(case, time_limit(case, ground, on), on) for ground in grounds(case)]


def _about(case: Case, limit: Limit, on: date) -> Found:
    match limit.runs:
        case Runs.WITHOUT_LIMIT:
            return _found(limit, Outcome.MET, Weight.GOOD_TO_KNOW, _("The law sets no last day for it."))
        case Runs.WHILE_BOTH_LIVE:
            return _while_both_live(case, limit, on)
        case _:
            return _by_day(case, limit, on)


def _while_both_live(case: Case, limit: Limit, on: date) -> Found:
    if limit.may_file is None:
        says = _("It can be filed only while both spouses are alive, and we do not know that.")
        return _found(limit, Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, says, _("Tell us if both are alive."))
    if limit.may_file:
        says = _("There is no last day, but it can be filed only while both spouses are alive.")
        return _found(limit, Outcome.MET, Weight.GOOD_TO_KNOW, says)
    says = _("It can be filed only while both spouses are alive. By what you told us, one has died.")
    do = _("A death ends a marriage by itself, so a divorce is not open either. {help}")
    return _too_late(limit, says, do.format(help=help_first()), without(case, limit.ground, on))


def _by_day(case: Case, limit: Limit, on: date) -> Found:
    due, target = limit.due, limit.last_day
    if due is None or target is None:
        says = _("We cannot count the last day to file. We need {what}.").format(what=_needed(limit.unsure))
        return _found(limit, Outcome.NEED_TO_KNOW, Weight.LOOK_AGAIN, says, _count_from_papers())
    day = _day(due, target)
    if limit.may_file is False:
        return _passed(case, limit, on, day)
    if limit.may_file is None:
        says = _("The last day to file may have passed: counted from the first day it can be, it was {day}.")
        do = _("Find out the exact date. {help}").format(help=help_first())
        return _found(limit, Outcome.FOR_A_LAWYER, Weight.GET_ADVICE, says.format(day=day), do)
    return _in_time(case, limit, on, target, day)


def _passed(case: Case, limit: Limit, on: date, day: str) -> Found:
    says = _("The last day to file was {day}. It has passed.").format(day=day)
    if limit.needs_permission:  # nullity.force_from_2027 says what that means
        do = _("A court may still allow it for a good reason. {help}").format(help=help_first())
        return _found(limit, Outcome.NOT_MET, Weight.LOOK_AGAIN, says, do)
    not_given_up = late_allowed_from(limit.ground, on) is not None
    mended_by = () if not_given_up else without(case, limit.ground, on)
    return _too_late(limit, says, spaced((_instead(case, limit, on), help_first())), mended_by)


def _too_late(limit: Limit, says: str, do: str, mended_by: tuple[str, ...]) -> Found:
    return _found(limit, Outcome.NOT_MET, Weight.STOP, says, do)._replace(mended_by=mended_by)


def _instead(case: Case, limit: Limit, on: date) -> str:
    """What is left to this filer once the last day has passed."""
    if files_for_a_minor(case, limit.ground):
        return spaced((_("Leave this ground out."), _alone(case, limit, on)))
    if begins := late_allowed_from(limit.ground, on):
        leave = _(
            "Do not file on this ground now, but do not give it up yet. From {begins} a judge may allow a "
            "late one. Nobody knows yet if that helps you: ask a lawyer before that day."
        ).format(begins=spell_date(begins))
    else:
        leave = _("Leave this ground out.")
    return spaced((leave, stays_open(case, limit.ground, on)))


def _alone(case: Case, limit: Limit, on: date) -> str:
    """Until when the one who was too young can file alone, where somebody else files now; empty elsewhere."""
    own = own_limit(case, on) if limit.ground is NullityGround.UNDER_AGE else None
    if own is None or own.due is None:
        return ""
    name = known(case.grounds.filed_for) or _("the one who was under age")
    says = _("From the 18th birthday on, only {name} can file, up to {day}.")
    return says.format(name=name, day=target_day(own.due))


def _in_time(case: Case, limit: Limit, on: date, target: date, day: str) -> Found:
    if on > target or _closed_on(limit, on):
        says = _("Only a closed court still keeps the time open. The last day: {day}.")
        do = _("File on the first day the court is open. Ask the clerk before the doors close.")
        return _found(limit, Outcome.CLOSE, Weight.GET_ADVICE, says.format(day=day), do)
    if on in (target, limit.open_before):
        says = _("Your filing day is the last day on which you can file: {day}.")
        do = _("Do not wait. Go to the clerk early that day, or file sooner.")
        return _found(limit, Outcome.CLOSE, Weight.GET_ADVICE, says.format(day=day), do)
    says = spaced(
        (
            _("The last day to file is {day}.").format(day=day),
            _aim(limit),
            _alone(case, limit, on),
            _leap(case, limit),
        )
    )
    if target <= day_after(on, URGENT_DAYS):
        do = _("Only a few days are left. File now: a paper that is sent back cannot be mended in that time.")
        return _found(limit, Outcome.CLOSE, Weight.GET_ADVICE, says, do)
    if target <= day_after(on, SOON_DAYS):
        do = _("Your last day is soon. File before it, with some days to spare.")
        return _found(limit, Outcome.CLOSE, Weight.LOOK_AGAIN, says, do)
    weight = Weight.LOOK_AGAIN if limit.unsure else Weight.GOOD_TO_KNOW
    return _found(limit, Outcome.MET, weight, says, _("Write this day on your calendar."))


def _leap(case: Case, limit: Limit) -> str:
    if limit.ground is not NullityGround.UNDER_AGE:
        return ""
    return leap_birthday(known(case.grounds.minor_born_on))


def _closed_on(limit: Limit, on: date) -> bool:
    """Whether the day is the last one and the clerk is not there."""
    return on == limit.last_day != limit.open_before


def _found(limit: Limit, outcome: Outcome, weight: Weight, says: str, do: str = "") -> Found:
    about = _('Ground "{ground}": {says}').format(ground=ground_words(limit.ground), says=says)
    if limit.unsure and limit.last_day:
        about = _("{says} You were not sure of the date we count from.").format(says=about)
    near = outcome is Outcome.CLOSE
    days = {
        "last_day": limit.last_day,
        "last_day_moved_to": limit.rolled,
        "last_court_day": limit.open_before,
        FILE_BY: min(filter(None, (limit.open_before, limit.rolled)), default=None) if near else None,
    }
    return Found(
        outcome,
        weight,
        about,
        do,
        facts=("grounds.nullity", *limit.facts),
        dates={name: day for name, day in days.items() if day},
        values={"nullity.ground": str(limit.ground), "nullity.may_file": limit.may_file},
        steps=limit.steps,
    )


def _day(due: Due, target: date) -> str:
    """The day to aim for; where the court is closed on the last one, also what the law makes of it."""
    if due.rolled >= target:
        return target_day(due)
    kept = _(
        "{aim} (the time ends on {target}. The court is closed then, and the law does not move that day)"
    )
    return kept.format(target=spell_date(target), aim=spell_date(due.target))


def _aim(limit: Limit) -> str:
    """A warning where the last day is a closed day that the law moves on; empty elsewhere."""
    return _("Do not count on the later day.") if limit.due and limit.due.closed else ""


def _needed(keys: tuple[str, ...]) -> str:
    words = {
        "grounds.filer": _("to know who starts the case"),
        "grounds.minor_born_on": _("the birth date of the one who was under age"),
        "grounds.discovered_on": _("the day the facts were found out"),
        "dates.married_on": _("the wedding day"),
        "dates.registered_on": _("the day the partnership was registered"),
    }
    return in_a_row([words[key] for key in keys])


def _count_from_papers() -> str:
    return _("Look it up in your papers. A year or a month helps, if that is all you know.")
