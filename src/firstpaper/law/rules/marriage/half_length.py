"""Half the length of a shorter marriage."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import YearsMonths
from firstpaper.facts import Case
from firstpaper.facts.choices import Kind, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import length
from firstpaper.law.register import rule
from firstpaper.law.rules.marriage._unions import length_keys, length_name, unions_to_count
from firstpaper.locale import _, _n


@rule(
    "Half the length of a shorter marriage",
    cite=("Fam. Code 4320(l)", "Fam. Code 4336", "Fam. Code 299(d)"),
    since=date(2019, 1, 1),
    not_modelled="How much support, and every other reason a judge weighs. No formula gives the time.",
)
def half_length(case: Case, on: date) -> tuple[Found, ...]:
    """For a marriage that is not long, about half its length is generally a reasonable time for support.

    What the law says. One aim of support is that the person can live without it after a reasonable time.
    Unless the marriage was long, that time "generally shall be" half the length of the marriage. But the
    judge may order more or less, for many reasons: age, health, work, children, violence, money.

    What it does not say. It is a yardstick and no more. It is not a promise, and not a limit. It says
    nothing about how much. Nothing is ordered unless somebody asks.

    How we count. The whole months from the wedding to the separation, by two. From ten years on, the
    yardstick does not speak: see the page marriage.ten_years. A judge can also find a shorter marriage
    long.

    An example. A marriage of 4 years and 7 months has 55 months. Half of that is 27 and a half months, or
    about 2 years and 3 months.

    What to do. Keep it in mind when you choose what to ask for, and ask a lawyer if support matters to you.
    """
    if kind_of(case) not in (Kind.DISSOLUTION, Kind.LEGAL_SEPARATION):
        return ()
    return tuple(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    long_from = 12 * figure("marriage.long_years", on).value
    percent: int = figure("marriage.support_share_percent", on).value
    for union in unions_to_count(case):
        span = length(case, union)
        if span and 0 < span.total_months < long_from:
            yield _found(union, span, percent)


def _found(union: Union, span: YearsMonths, percent: int) -> Found:
    months, rest = divmod(span.total_months * percent, 100)
    share = YearsMonths(*divmod(months, 12), by_convention=span.by_convention, steps=())
    about = _("about {span}") if rest else _("{span}")
    whole = _n("{count} month in all", "{count} months in all", span.total_months)
    part = _("{percent} percent of that: {months} months")
    exact = f"{months}.5" if 2 * rest == 100 else str(months)
    half = {"years": share.years, "months": share.months, "rest": bool(rest)}
    return Found(
        Outcome.MET,
        Weight.GOOD_TO_KNOW,
        _("Half of the time it lasted is {span}. For support, that is a yardstick and no more.").format(
            span=about.format(span=share)
        ),
        _("A judge can order support for longer, for less time, or not at all."),
        facts=("matter.kind", *length_keys(union)),
        values={f"{length_name(union)}.half_length": half},
        steps=(
            *span.steps,
            whole.format(count=span.total_months),
            part.format(percent=percent, months=exact),
        ),
    )
