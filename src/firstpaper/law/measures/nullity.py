"""The grounds of a nullity: which are void and which voidable, who may file, until when, what bars it.

Fam. Code 2200, 2201, 2210, 2211. Nothing here decides whether a ground can be proved.
"""

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.counting import Counted, anniversary, count_back, day_after, short_date
from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import NullityFiler, NullityGround, Who
from firstpaper.law.figure import figure
from firstpaper.law.measures.court import calendar_of
from firstpaper.law.measures.due import Due, aimed
from firstpaper.law.measures.marriage import first_union
from firstpaper.locale import _, _n

VOID = frozenset({NullityGround.INCEST, NullityGround.BIGAMY})


class Runs(StrEnum):
    """What ends the time in which a ground may be filed."""

    WITHOUT_LIMIT = "without_limit"
    WHILE_BOTH_LIVE = "while_both_live"
    TO_A_DAY = "to_a_day"


class Limit(NamedTuple):
    """The time limit of one ground, for a filing on one day.

    `last_day` is the day counted, not moved off a closed court day; `rolled` is the court day that Code
    Civ. Proc. 12a moves it to, or the last one before where the law says "before" and moves nothing;
    `open_before` is the last court day up to `last_day`, on which a clerk is there.
    Where the starting date was told in part, both count from its
    earliest possible day. `may_file` says whether the filing is in time: None where the facts leave
    it open. `needs_permission` is true for a late filing that the court may still allow
    (Fam. Code 2211(g)). `unsure` are the keys that are missing, told in part or marked not sure.
    """

    ground: NullityGround
    runs: Runs
    last_day: date | None
    rolled: date | None
    open_before: date | None
    may_file: bool | None
    needs_permission: bool
    unsure: tuple[str, ...]
    facts: tuple[str, ...]
    steps: tuple[str, ...]

    @property
    def due(self) -> Due | None:
        """The last day with the open day to aim for; None where none can be counted."""
        if self.last_day is None or self.rolled is None or self.open_before is None:
            return None
        if self.rolled < self.last_day:
            return Due(self.rolled, self.rolled, self.steps)
        return aimed(Due(self.last_day, self.rolled, self.steps), self.open_before)


def grounds(case: Case) -> tuple[NullityGround, ...]:
    """The grounds the filer chose, in the order of the form."""
    chosen = known(case.grounds.nullity) or ()
    return tuple(ground for ground in NullityGround if ground in chosen)


def void(case: Case) -> tuple[NullityGround, ...]:
    """The chosen grounds on which a marriage is void from the beginning (Fam. Code 2200, 2201)."""
    return tuple(ground for ground in grounds(case) if ground in VOID)


def voidable(case: Case) -> tuple[NullityGround, ...]:
    """The chosen grounds on which a marriage is valid until a court says otherwise (Fam. Code 2210)."""
    return tuple(ground for ground in grounds(case) if ground not in VOID)


def filer_may(case: Case, ground: NullityGround) -> bool | None:
    """Whether Fam. Code 2211 names this filer for this ground; None where the facts or the law leave it open.

    2211 does not cover the void grounds: a spouse may file on them; for others the law is silent.
    """
    filer = known(case.grounds.filer)
    if filer is None:
        return None
    if filer is NullityFiler.SPOUSE:
        return _spouse_may(case, ground)
    return {
        (NullityGround.UNDER_AGE, NullityFiler.PARENT_OR_GUARDIAN): True,
        (NullityGround.UNDER_AGE, NullityFiler.RELATIVE_OR_CONSERVATOR): None,
        (NullityGround.PRIOR_SPOUSE, NullityFiler.FORMER_SPOUSE): True,
        (NullityGround.UNSOUND_MIND, NullityFiler.RELATIVE_OR_CONSERVATOR): True,
        (NullityGround.INCEST, filer): None,
        (NullityGround.BIGAMY, filer): None,
    }.get((ground, filer), False)


def barred(case: Case, ground: NullityGround) -> bool | None:
    """Whether what happened since bars the ground (Fam. Code 2210(a), (c), (d), (e)); None where not told.

    Living together after turning 18 has not barred the age ground since January 1, 2019.
    """
    bar = bar_key(ground)
    return known(case.fact(bar)) if bar else False


def bar_key(ground: NullityGround) -> str | None:
    """The fact that bars a ground; None for a ground that nothing afterwards bars."""
    return {
        NullityGround.UNDER_AGE: "grounds.court_allowed_minor",
        NullityGround.UNSOUND_MIND: "grounds.came_to_reason_and_stayed",
        NullityGround.FRAUD: "grounds.stayed_after_discovery",
        NullityGround.FORCE: "grounds.stayed_after_force",
    }.get(ground)


def defeated(case: Case, ground: NullityGround, on: date) -> str | None:
    """The fact by which the filer's own answers shut the ground; None where nothing told shuts it.

    Fam. Code 2201, 2210, 2211. A time that has run out shuts it unless a court may still allow it.
    """
    by = (_barred_by(case, ground), _never_fitted(case, ground, on), _shut_by_law(case, ground, on))
    return next((key for key in by if key), None)


def over_age(case: Case, on: date) -> bool | None:
    """Whether the one in question was of age at the wedding; None where the dates leave it open."""
    wedding, born = first_union(case)[1], known(case.grounds.minor_born_on)
    if born is None or wedding is None:
        return None
    of_age = figure("nullity.age_of_consent", on).value
    if anniversary(born.latest, of_age) <= wedding.earliest:
        return True
    return False if wedding.latest < anniversary(born.earliest, of_age) else None


def _barred_by(case: Case, ground: NullityGround) -> str | None:
    return bar_key(ground) if barred(case, ground) else None


def _never_fitted(case: Case, ground: NullityGround, on: date) -> str | None:
    """The fact that shows that the ground was not there on the wedding day, or is there no more."""
    gone = known(case.grounds.prior_spouse_missing)
    match ground:
        case NullityGround.UNDER_AGE if over_age(case, on) and _sure_of_the_age(case):
            return "grounds.minor_born_on"
        case NullityGround.BIGAMY if gone is True:
            return "grounds.prior_spouse_missing"
        case NullityGround.PRIOR_SPOUSE if gone is False:
            return "grounds.prior_spouse_missing"
        case NullityGround.PHYSICAL_INCAPACITY if known(case.grounds.incapacity_continues) is False:
            return "grounds.incapacity_continues"
    return None


def _sure_of_the_age(case: Case) -> bool:
    days = (first_union(case)[1], known(case.grounds.minor_born_on))
    return not any(day is None or day.unsure for day in days)


def _shut_by_law(case: Case, ground: NullityGround, on: date) -> str | None:
    """The fact by which the law does not let this filer use the ground, or not any more."""
    if filer_may(case, ground) is False:
        return "grounds.filer"
    limit = time_limit(case, ground, on)
    return limit.facts[0] if limit.may_file is False and not limit.needs_permission else None


def concerned_key(ground: NullityGround) -> str | None:
    """The fact that says which spouse a ground is about; None for a ground about both."""
    return {
        NullityGround.UNDER_AGE: "grounds.under_age",
        NullityGround.UNSOUND_MIND: "grounds.unsound",
        NullityGround.FRAUD: "grounds.deceived",
        NullityGround.FORCE: "grounds.forced",
        NullityGround.PHYSICAL_INCAPACITY: "grounds.incapable",
    }.get(ground)


def time_limit(case: Case, ground: NullityGround, on: date) -> Limit:
    """The time limit of the ground, for a filing on the day `on`."""
    if ground in VOID or _former_spouse_files(case, ground):
        step = _("The law sets no last day for this ground.")
        return Limit(ground, Runs.WITHOUT_LIMIT, None, None, None, True, False, (), (), (step,))
    if ground in (NullityGround.PRIOR_SPOUSE, NullityGround.UNSOUND_MIND):
        return _lifetime(case, ground)
    key, start = _start(case, ground)
    filer_missing = ground is NullityGround.UNDER_AGE and known(case.grounds.filer) is None
    if start is None or filer_missing:
        missing = (("grounds.filer",) if filer_missing else ()) + ((key,) if start is None else ())
        return Limit(ground, Runs.TO_A_DAY, None, None, None, None, False, missing, missing, ())
    return _counted(case, ground, on, key, start)


def files_for_a_minor(case: Case, ground: NullityGround) -> bool:
    """Whether somebody files instead of the spouse who was too young: a parent, guardian or the like."""
    return ground is NullityGround.UNDER_AGE and known(case.grounds.filer) is not NullityFiler.SPOUSE


def own_limit(case: Case, on: date) -> Limit | None:
    """The limit of the one who was under age, where somebody else is known to file for them; else None."""
    ground = NullityGround.UNDER_AGE
    by_another = known(case.grounds.filer) is not None and files_for_a_minor(case, ground)
    if not by_another or ground not in grounds(case):
        return None
    return time_limit(case.supposing("grounds.filer", NullityFiler.SPOUSE), ground, on)


def _spouse_may(case: Case, ground: NullityGround) -> bool | None:
    key = concerned_key(ground)
    if key is None:
        return True
    who = known(case.fact(key))
    filer_concerned = who in (Who.PETITIONER, Who.BOTH)
    if who is None:
        return None
    if ground is NullityGround.UNSOUND_MIND:  # "the party injured" is not defined
        return True if filer_concerned else None
    if ground is NullityGround.PHYSICAL_INCAPACITY:
        return None if filer_concerned else True
    return filer_concerned


def _former_spouse_files(case: Case, ground: NullityGround) -> bool:
    return ground is NullityGround.PRIOR_SPOUSE and known(case.grounds.filer) is NullityFiler.FORMER_SPOUSE


def _lifetime(case: Case, ground: NullityGround) -> Limit:
    alive = known(case.grounds.both_alive)
    key = "grounds.both_alive"
    step = _("This ground has no last day on the calendar. It can be filed while both spouses are alive.")
    unsure = (key,) if alive is None else ()
    return Limit(ground, Runs.WHILE_BOTH_LIVE, None, None, None, alive, False, unsure, (key,), (step,))


def _counted(case: Case, ground: NullityGround, on: date, key: str, start: Day) -> Limit:
    target = _target(case, ground, on, start.earliest)
    rolled = _rolled(case, ground, target.day)
    at_the_latest = _rolled(case, ground, _target(case, ground, on, start.latest).day)
    in_time, too_late = on <= rolled.day, on > at_the_latest.day and not start.unsure
    return Limit(
        ground=ground,
        runs=Runs.TO_A_DAY,
        last_day=target.day,
        rolled=rolled.day,
        open_before=calendar_of(case).roll_back(target.day).day,
        may_file=True if in_time else False if too_late else None,
        needs_permission=not in_time and _late_may_be_allowed(ground, on),
        unsure=(key,) if start.sure is None else (),
        facts=(key,),
        steps=target.steps + rolled.steps,
    )


def _target(case: Case, ground: NullityGround, on: date, start: date) -> Counted:
    """The last day of a ground whose time began on the day `start`, not moved off a closed court day."""
    if ground is not NullityGround.UNDER_AGE:
        return _years_after(start, _years(ground, on), _started(ground))
    of_age = _years_after(start, figure("nullity.age_of_consent", on).value, _("born"))
    if files_for_a_minor(case, ground):
        return of_age.then(lambda birthday: count_back(birthday, 1))
    return of_age.then(lambda day: _years_after(day, _years(ground, on)))


def _rolled(case: Case, ground: NullityGround, day: date) -> Counted:
    """The court day that keeps the time: the next one (Code Civ. Proc. 12a), or the one before."""
    if not files_for_a_minor(case, ground):
        return calendar_of(case).roll_forward(day)
    step = _('The law says "before" that birthday, so a closed court does not make the time longer.')
    back = calendar_of(case).roll_back(day)
    return Counted(back.day, (step, *back.steps))


def _years(ground: NullityGround, on: date) -> int:
    years: int = figure("nullity.limit_years", on).value[ground]
    return years


def _years_after(start: date, years: int, began: str = "") -> Counted:
    reached = anniversary(start, years)
    first = (_("{date}: {what}").format(date=short_date(start), what=began),) if began else ()
    later = _n("{date}: {count} year later", "{date}: {count} years later", years)
    return Counted(reached, (*first, later.format(date=short_date(reached), count=years)))


def _started(ground: NullityGround) -> str:
    return _("the facts were found out") if ground is NullityGround.FRAUD else _("the marriage began")


def _late_may_be_allowed(ground: NullityGround, on: date) -> bool:
    return ground is NullityGround.FORCE and bool(figure("nullity.force_late_permission", on).value)


def late_allowed_from(ground: NullityGround, on: date) -> date | None:
    """The first day on which a judge may allow a late petition on this ground, where that is to come."""
    if ground is not NullityGround.FORCE:
        return None
    now = figure("nullity.force_late_permission", on)
    return None if now.value or now.until is None else day_after(now.until)


def _start(case: Case, ground: NullityGround) -> tuple[str, Day | None]:
    """The key and the day from which the ground's time runs."""
    if ground is NullityGround.UNDER_AGE:
        return "grounds.minor_born_on", known(case.grounds.minor_born_on)
    if ground is NullityGround.FRAUD:
        return "grounds.discovered_on", known(case.grounds.discovered_on)
    return first_union(case)
