"""The ten-year line."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import MissingDay, YearsMonths, add_months, spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import Union
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import length, separation, union_began
from firstpaper.law.register import rule
from firstpaper.law.rules.marriage._unions import length_keys, length_name, unions_to_count
from firstpaper.locale import _

NEAR_MONTHS = 6
"""How near the line a person should look at the dates. Not a figure of the law: the day of separation
is what spouses most often argue about, and half a year is a usual gap between words, acts and moving out."""


@rule(
    "The ten-year line",
    cite=("Fam. Code 4336", "Fam. Code 299(d)"),
    since=date(2017, 1, 1),
    not_modelled="Times apart during the marriage, and every reason a court has to see it differently.",
)
def ten_years(case: Case, on: date) -> tuple[Found, ...]:
    """A marriage of ten years or more is presumed to be long, and that keeps support orders open.

    What the law says (Fam. Code 4336). In a long marriage the court keeps the power to decide about
    spousal support with no end date, unless you both agree in writing or a judge orders otherwise.
    Ten years or more from the wedding to the separation is presumed to be long. The court may look
    at times apart during the marriage. It may also find a shorter marriage long.

    What it does not say. Ten years is not "support for life". Less than ten years is not "no
    support". It is about how long the court may go on deciding.

    How we count. As on the page marriage.length. If the result lies within six months of the line,
    or your two dates of separation lie on both sides of it, we say "close": a few weeks one way or
    the other would change it, and people often disagree about the day.

    An example. Married June 1, 2016, separated May 31, 2026: one day short of ten years. Separated
    on June 1, 2026: ten years.

    What to do. If it is close, have a lawyer look at your dates before you sign them.
    """
    return tuple(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    years = figure("marriage.long_years", on).value
    for union in unions_to_count(case):
        span, began = length(case, union), union_began(case, union)
        if span and began:
            line = add_months(began, years * 12, missing_day=MissingDay.LAST_DAY_OF_MONTH)
            yield _found(case, union, span, line, years)
        elif began is None or separation(case).day is None:
            yield _not_known(years, union)
            return  # said once, also for a couple with two unions


def _found(case: Case, union: Union, span: YearsMonths, line: date, years: int) -> Found:
    is_long = span.total_months >= years * 12
    near = _near(case, span, line, years)
    outcome = Outcome.CLOSE if near else Outcome.MET if is_long else Outcome.NOT_MET
    says = _long(union) if is_long else _short(union)
    if is_long and span.by_convention and span.total_months == years * 12:
        says, meaning = _by_our_count(union), _("From that line on the law presumes that it is long.")
    elif is_long:
        meaning = _("The law presumes that it is long, so support orders can stay open.")
    else:
        meaning = _("A judge can still order support, but often not for as long.")
    return Found(
        outcome=outcome,
        weight=Weight.GET_ADVICE if near else Weight.GOOD_TO_KNOW,
        says=says.format(span=span, years=years) + " " + meaning,
        do=_(
            "You are close to the line of {years} years. Have a lawyer look at your dates before you sign."
        ).format(years=years)
        if near
        else "",
        facts=length_keys(union),
        dates={"line_on": line},
        values={f"{length_name(union)}.long": is_long},
        steps=(
            *span.steps,
            _("{years} years would be reached on {date}.").format(years=years, date=spell_date(line)),
        ),
    )


def _long(union: Union) -> str:
    if union is Union.MARRIAGE:
        return _("Your marriage lasted {span} up to the separation. That is {years} years or more.")
    return _("Your partnership lasted {span} up to the separation. That is {years} years or more.")


def _by_our_count(union: Union) -> str:
    if union is Union.MARRIAGE:
        return _(
            "By our count your marriage lasted {span} up to the separation. A court may count one month "
            "less: then it is less than {years} years."
        )
    return _(
        "By our count your partnership lasted {span} up to the separation. A court may count one month "
        "less: then it is less than {years} years."
    )


def _short(union: Union) -> str:
    if union is Union.MARRIAGE:
        return _("Your marriage lasted {span} up to the separation. That is less than {years} years.")
    return _("Your partnership lasted {span} up to the separation. That is less than {years} years.")


def _near(case: Case, span: YearsMonths, line: date, years: int) -> bool:
    apart = separation(case)
    days = [day.sure for day in (apart.told, apart.acted) if day and day.sure]
    on_both_sides = min(days) < line <= max(days)
    within = abs(span.total_months - years * 12) < NEAR_MONTHS
    return on_both_sides or within


def _not_known(years: int, union: Union) -> Found:
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.GOOD_TO_KNOW,
        says=_("We cannot tell yet if it lasted {years} years or more.").format(years=years),
        do=_("We need the whole date when it began, and a date of separation that you are sure of."),
        facts=length_keys(union),
    )
