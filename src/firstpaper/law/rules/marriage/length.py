"""How long the union lasted."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import Union
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.marriage import length as length_of
from firstpaper.law.measures.marriage import separation, union_began
from firstpaper.law.register import rule
from firstpaper.law.rules.marriage._unions import length_keys, length_name, unions_to_count
from firstpaper.locale import _


@rule(
    "Length of the marriage or partnership",
    cite=("Fam. Code 2330(b)(1)-(3)", "Fam. Code 70", "Fam. Code 299(d)"),
    since=date(2017, 1, 1),
    not_modelled="A marriage that followed a partnership is not joined to it. A court may do so.",
)
def length(case: Case, on: date) -> tuple[Found, ...]:
    """The petition states the time from the wedding, or the registration, to the date of separation.

    What the law asks. The petition gives the date of marriage, the date of separation and the number
    of years between them (Fam. Code 2330(b)). The form wants years and months. A partnership counts
    from the day it was registered.

    How we count. Whole months, and days that are left over are dropped. If a month has no such day,
    we take its last day: a wedding on February 29 has its yearly day on February 28 in most years.
    That is our way of counting. No statute or case we found says so, and where it changes the
    answer we tell you.

    An example. From June 1, 2016 to May 31, 2026 it is 9 years and 11 months. One day more makes it
    10 years.

    What to do. Check the wedding date on your certificate. If you are not sure of the date of
    separation, see the page dates.separation.
    """
    return tuple(_each(case))


def _each(case: Case) -> Iterator[Found]:
    unions, apart = unions_to_count(case), separation(case).day
    if unions and apart is None:
        yield _not_known(unions[0], _("We need a date of separation that you are sure of."))
    elif apart:
        for union in unions:
            began = union_began(case, union)
            if began is None:
                yield _not_known(union, _give_beginning(union))
            elif began <= apart:
                yield _counted(case, union, began, apart)


def _counted(case: Case, union: Union, began: date, apart: date) -> Found:
    span = length_of(case, union)
    assert span is not None
    married = union is Union.MARRIAGE
    says = (
        _("From the wedding to the separation it is {span}.")
        if married
        else _("From the registration to the separation it is {span}.")
    )
    return Found(
        outcome=Outcome.MET,
        weight=Weight.LOOK_AGAIN if span.by_convention else Weight.GOOD_TO_KNOW,
        says=says.format(span=span),
        do=_("The count hangs on how a short month is read. A court may count one month less.")
        if span.by_convention
        else "",
        facts=length_keys(union),
        dates={"began_on": began, "separated_on": apart},
        values={f"{length_name(union)}.length": {"years": span.years, "months": span.months}},
        steps=span.steps,
    )


def _not_known(union: Union, do: str) -> Found:
    return Found(
        outcome=Outcome.NEED_TO_KNOW,
        weight=Weight.LOOK_AGAIN,
        says=_("We cannot count yet how long it lasted."),
        do=do,
        facts=length_keys(union),
    )


def _give_beginning(union: Union) -> str:
    if union is Union.MARRIAGE:
        return _("Give the whole date of the wedding.")
    return _("Give the whole date of the registration.")
