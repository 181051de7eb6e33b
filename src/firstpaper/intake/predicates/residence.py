"""When a question about where the two live, and since when, is asked."""

from firstpaper.facts import Case, Day, known
from firstpaper.facts.choices import AWAY, HERE, IN_CALIFORNIA, Kind, Lives, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.matter import Residence
from firstpaper.intake.predicates.matter import is_married, wants_nullity
from firstpaper.intake.predicates.parts import may_be_earlier


def petitioner_lives_in_california(case: Case) -> bool:
    """The filer lives in California, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.petitioner.lives) in IN_CALIFORNIA


def petitioner_lives_in_this_county(case: Case) -> bool:
    """The filer lives in the county of filing, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.petitioner.lives) in HERE


def petitioner_moved_county_lately(case: Case) -> bool:
    """The filer came to the county of filing later than to California, and not long before the break."""
    stay = case.residence.petitioner
    return petitioner_lives_in_this_county(case) and _moved_county_lately(case, stay)


def petitioner_left_a_county(case: Case) -> bool:
    """The filer came from another county of California, or has not said from where."""
    return petitioner_moved_county_lately(case) and known(case.residence.petitioner.previous_county) != ""


def petitioners_own_county_may_do(case: Case) -> bool:
    """The filer lives in another county than that of filing, where the other side may be too new."""
    elsewhere = known(case.residence.petitioner.lives) is Lives.CALIFORNIA
    return elsewhere and _divorce_needs_time(case) and not _surely_long_here(case, case.residence.respondent)


def respondents_own_county_may_do(case: Case) -> bool:
    """The other side lives in another county than that of filing, where the filer may be too new."""
    elsewhere = known(case.residence.respondent.lives) is Lives.CALIFORNIA
    return elsewhere and _divorce_needs_time(case) and not filers_time_is_enough(case)


def filers_time_is_enough(case: Case) -> bool:
    """The filer came to this state and county a year or more before the break, stayed, and means to stay."""
    filer = case.residence.petitioner
    return (
        _surely_long_here(case, filer) and not known(filer.absences) and known(filer.intends_to_stay) is True
    )


def respondent_lives_in_california(case: Case) -> bool:
    """The other side lives in California, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.respondent.lives) in IN_CALIFORNIA


def respondent_lives_in_this_county(case: Case) -> bool:
    """The other side lives in the county of filing, and time spent here may count for the case."""
    return _time_here_counts(case) and known(case.residence.respondent.lives) in HERE


def case_may_rest_on_respondents_stay(case: Case) -> bool:
    """The other side lives in the county of filing and may have been here long enough when the filer has not.

    That can be so only where the filer lives elsewhere, has been away or may not stay; or where the
    filer came not long before the break, and the other side came earlier or may have.
    """
    filer = case.residence.petitioner
    return respondent_lives_in_this_county(case) and (
        known(filer.lives) not in HERE
        or bool(known(filer.absences))
        or known(filer.intends_to_stay) is False
        or _respondent_may_have_come_first(case)
    )


def only_respondents_stay_can_count(case: Case) -> bool:
    """The other side lives in the county of filing and the filer does not."""
    return respondent_lives_in_this_county(case) and known(case.residence.petitioner.lives) not in HERE


def respondent_moved_county_lately(case: Case) -> bool:
    """The case may rest on the other side's stay, and they changed county not long before the break."""
    stay = case.residence.respondent
    return case_may_rest_on_respondents_stay(case) and _moved_county_lately(case, stay)


def respondent_left_a_county(case: Case) -> bool:
    """The other side came from another county of California, or the filer has not said from where."""
    return respondent_moved_county_lately(case) and known(case.residence.respondent.previous_county) != ""


def married_and_both_live_elsewhere(case: Case) -> bool:
    """The two are married, and neither lives in California."""
    both = (known(case.residence.petitioner.lives), known(case.residence.respondent.lives))
    return is_married(case) and all(lives in AWAY for lives in both)


def same_sex_and_both_live_elsewhere(case: Case) -> bool:
    """The two are a married same-sex couple, and neither lives in California."""
    return married_and_both_live_elsewhere(case) and known(case.residence.exception.same_sex) is True


def same_sex_wedding_was_in_california(case: Case) -> bool:
    """A same-sex couple who both live elsewhere married in a California county."""
    return same_sex_and_both_live_elsewhere(case) and bool(known(case.residence.exception.wedding_county))


def cannot_divorce_at_home(case: Case) -> bool:
    """A same-sex couple married in California, and no place where either lives would end the marriage."""
    told = known(case.residence.exception.not_dissolvable_at_home)
    return same_sex_wedding_was_in_california(case) and told is True


def county_of_filing_is_enough(case: Case) -> bool:
    """The county of filing is chosen, and the filer did not say that they live in another one."""
    elsewhere = known(case.residence.petitioner.lives) is Lives.CALIFORNIA
    return known(case.court.county) is not None and not elsewhere


def lives_in_a_county_of_its_own(case: Case) -> bool:
    """The filer named the county where they live, and files in another one."""
    home, filing = known(case.residence.petitioner.own_county), known(case.court.county)
    return bool(home and filing) and home != filing


def home_of_the_respondent_serves_nobody(case: Case) -> bool:
    """The filer's own time is enough for a divorce, and papers can be handed over in California."""
    mailing = known(case.respondent.mailing)
    here = mailing is not None and mailing.state == "CA"
    return here and _divorce_needs_time(case) and filers_time_is_enough(case)


def petitioner_came_from_outside(case: Case) -> bool:
    """Before this county, the filer lived in no other county of California."""
    return known(case.residence.petitioner.previous_county) == ""


def respondent_came_from_outside(case: Case) -> bool:
    """Before this county, the other side lived in no other county of California."""
    return known(case.residence.respondent.previous_county) == ""


def lives_with_the_respondent(case: Case) -> bool:
    """The filer told that the two live in one home."""
    return known(case.residence.petitioner.lives) is Lives.SAME_HOME


def _time_here_counts(case: Case) -> bool:
    """The case is of a kind in which the time spent here may matter.

    It does not for a nullity, nor for a partnership that was registered in California and no marriage.
    """
    return not wants_nullity(case) and known(case.matter.unions) != (Union.PARTNERS_CALIFORNIA,)


def _divorce_needs_time(case: Case) -> bool:
    return kind_of(case) is Kind.DISSOLUTION and _time_here_counts(case)


def _surely_long_here(case: Case, stay: Residence) -> bool:
    days = (known(stay.state_since), known(stay.county_since))
    return known(stay.lives) in HERE and all(_long_before_the_break(case, day) for day in days)


def _moved_county_lately(case: Case, stay: Residence) -> bool:
    state, county = known(stay.state_since), known(stay.county_since)
    later = state is not None and county is not None and state != county and state.earliest < county.latest
    return later and not _long_before_the_break(case, county)


def _respondent_may_have_come_first(case: Case) -> bool:
    filer, other = case.residence.petitioner, case.residence.respondent
    pairs = (
        (known(other.state_since), known(filer.state_since)),
        (known(other.county_since), known(filer.county_since)),
    )
    days_told = all(came is not None for came, _filer_came in pairs)
    return days_told and any(
        may_be_earlier(came, filer_came) and not _long_before_the_break(case, filer_came)
        for came, filer_came in pairs
    )


def _long_before_the_break(case: Case, since: Day | None) -> bool:
    """Whether a stay surely began a year or more before the break, and so before any filing."""
    breaks = (known(case.dates.separation_told_on), known(case.dates.separation_acted_on))
    if since is None or since.unsure:
        return False
    year_later = (since.latest.year + 1, since.latest.month, since.latest.day)
    firsts = [day.earliest for day in breaks if day is not None and not day.unsure]
    return any(year_later <= (first.year, first.month, first.day) for first in firsts)
