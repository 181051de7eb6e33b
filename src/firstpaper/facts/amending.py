"""Starting an amended petition: all that was told before, and what it says about the first petition."""

from firstpaper.facts.case import Case
from firstpaper.facts.choices import Kind
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.told import known

LONGEST_NAME = 100
"""Letters of a file name that are kept; a longer one ties no two files together."""


def begun_from(earlier: Case, name: str = "") -> Case:
    """The case from which to amend the petition of `earlier`.

    An amended petition says everything again (Cal. Rules of Court, rule 5.74(a)(2)), so all answers stay. The
    signature is given anew. What the earlier case and its record tell of the first petition is filled in;
    the rest is asked. `name` is the name of the case file of `earlier`.
    """
    case = earlier
    for key, value in _about_the_first(earlier).items():
        if value is not None:
            case = case.with_fact(key, value)
    case = case.with_fact("matter.amended", True).with_fact("signing.orders_read", None)
    if case.record.amended_in is not None:
        case = case.with_fact("record.amended_in", None)
    return _told(case, "record.amends", name)


def replaced_by(earlier: Case, name: str) -> Case:
    """The earlier case, with the name of the case file in which its petition is amended."""
    return _told(earlier, "record.amended_in", name)


def _told(case: Case, key: str, name: str) -> Case:
    return case.with_fact(key, name) if 0 < len(name) <= LONGEST_NAME else case


def _about_the_first(earlier: Case) -> dict[str, object]:
    """The facts on the first petition; one that was amended itself keeps what it says of the first."""
    if known(earlier.matter.amended):
        return {}
    kind = kind_of(earlier)
    return {
        "matter.first_kind": kind,
        "matter.first_filed_on": known(earlier.record.filed_on),
        "matter.case_number": known(earlier.record.case_number),
        "matter.first_stated_intent": known(earlier.requests.intends_to_amend)
        if kind is Kind.LEGAL_SEPARATION
        else None,
        "matter.other_side_answered": True if known(earlier.record.response_filed_on) else None,
    }
