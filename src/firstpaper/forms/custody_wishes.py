"""What the filer asks for about custody and visits, worked out once for every form that says it."""

from collections.abc import Mapping
from datetime import date
from enum import StrEnum
from typing import NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import CustodyTo, OtherCase, VisitsTo
from firstpaper.law.measures.children import ListedChild, concerns_children, listed_children, unborn
from firstpaper.law.measures.other_cases import decides_on_custody_instead
from firstpaper.locale import _

LINES: dict[str, tuple[StrEnum, ...]] = {
    "legal": (CustodyTo.PETITIONER, CustodyTo.RESPONDENT, CustodyTo.JOINT, CustodyTo.OTHER),
    "physical": (CustodyTo.PETITIONER, CustodyTo.RESPONDENT, CustodyTo.JOINT, CustodyTo.OTHER),
    "visits": (VisitsTo.PETITIONER, VisitsTo.RESPONDENT, VisitsTo.OTHER),
}
FILED_WORDS = {
    "petitioner": "Petitioner",
    "respondent": "Respondent",
    "joint": "Petitioner and Respondent jointly",
    "other": "Other, as stated on this page",
    "not_asked": "No request",
}


class Wish(NamedTuple):
    """What the filer asks for on one line of item 6.

    `choice` is None where an answer is missing; then `missing` is its key. `differs` says that it is
    not the same for every child, which the sheet calls "Other".
    """

    choice: StrEnum | None = None
    differs: bool = False
    missing: str = ""


class Wishes(NamedTuple):
    """Everything asked for in item 6, worked out once.

    `concerned` is whether there is a child to decide about, None while that is not known.
    """

    concerned: bool | None
    children: tuple[ListedChild, ...]
    lines: Mapping[str, Wish]

    @property
    def differ(self) -> bool:
        """Whether some line is not the same for every child."""
        return any(wish.differs for wish in self.lines.values())

    def other_asked(self) -> bool:
        """Whether something else than the printed choices is asked for, for one child or for all."""
        by_child = (told_for(child, line) for child in self.children for line in LINES if self.differ)
        together = (wish.choice for wish in self.lines.values() if not wish.differs)
        return "other" in (*by_child, *together)


def wishes_of(case: Case, on: date) -> Wishes:
    """What is asked for, for all children together or child by child where they differ."""
    children = listed_children(case, on)
    by_child = known(case.custody.alike) is False
    return Wishes(
        concerns_children(case, on),
        children,
        {line: _by_child(case, line, children) if by_child else _together(case, line) for line in LINES},
    )


def ask_before_custody(case: Case) -> str:
    """Why nothing on custody is marked before advice: another court may decide; empty where none may."""
    kind = decides_on_custody_instead(case)
    if kind is None:
        return ""
    why = {
        OtherCase.JUVENILE: _("You told us of a juvenile court case. That court may have to decide."),
        OtherCase.GUARDIANSHIP: _("You told us of a guardian. The case here does not end that by itself."),
        OtherCase.ELSEWHERE: _("You told us of a case elsewhere. That court may have to decide."),
    }[kind]
    ask = _("Ask first: see “{title}” under “{advice}”.").format(
        title=_("Another court case"), advice=_("Get advice on this first")
    )
    return f"{why} {ask} " + _("You had chosen this.")


CASES_TOLD = "matter.other_case_kinds"


def asked_for(child: ListedChild, wishes: Wishes, line: str) -> str:
    """Who is to have what that line is about, for one child, as it is filed; empty where that is not told."""
    wish = wishes.lines[line]
    choice = told_for(child, line) if wish.differs else wish.choice
    return FILED_WORDS[choice] if choice else ""


def told_for(child: ListedChild, line: str) -> StrEnum | None:
    """What is asked for one child on one line; sharing the time evenly needs no visits."""
    choice: StrEnum | None = getattr(child, line)
    if line == "visits" and choice is None and child.physical is CustodyTo.JOINT:
        return VisitsTo.NOT_ASKED
    return choice


def _together(case: Case, line: str) -> Wish:
    choice = getattr(case.custody, line)
    if line == "visits" and choice is None and known(case.custody.physical) is CustodyTo.JOINT:
        return Wish(VisitsTo.NOT_ASKED)
    return Wish(known(choice), missing="" if known(choice) else f"custody.{line}")


def _by_child(case: Case, line: str, children: tuple[ListedChild, ...]) -> Wish:
    told = {child.key: told_for(child, line) for child in children}
    missing = next((f"{key}.{line}" for key, choice in told.items() if choice is None), "")
    if missing or not told:
        return Wish(missing=missing or "child.1.name")
    if len(set(told.values())) == 1 and not unborn(case):
        return Wish(next(iter(told.values())))
    return Wish(VisitsTo.OTHER if line == "visits" else CustodyTo.OTHER, differs=True)
