"""Item 8: support for a spouse or domestic partner. Ask, end, keep open, or say nothing, for each person."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import SupportChoice, Who
from firstpaper.facts.kinds import is_nullity
from firstpaper.forms.answer import Action, Answer, blank, mark
from firstpaper.forms.fl100.places import space
from firstpaper.forms.fl100.words import line_of_words, page_of_words
from firstpaper.forms.open_answers import still_open
from firstpaper.forms.pages import Attachment
from firstpaper.forms.saying import not_asked, see_the_paper_first
from firstpaper.law.words import spaced
from firstpaper.locale import _

BOX, WORDS = "support.other", "support.other.words"
PEOPLE = (Who.PETITIONER, Who.RESPONDENT)
LINES = {
    "support.ask": SupportChoice.ASK,
    "support.end": SupportChoice.END,
    "support.reserve": SupportChoice.RESERVE,
}


def answers(case: Case, on: date) -> Iterator[Answer]:
    """Items 8a to 8d."""
    for line, choice in LINES.items():
        people = [_person(case, line, choice, who) for who in PEOPLE]
        yield _line(case, line, choice, people)
        yield from people
    yield from _other(case, on)


def attachment_page(case: Case, on: date) -> Attachment | None:
    """The other words, where they are longer than the line."""
    if not any(_chosen_for_anybody(case, one) for one in (SupportChoice.ASK, SupportChoice.RESERVE)):
        return None
    title = "Spousal or domestic partner support"
    return page_of_words(case, "8d", title, known(case.support.other), space(WORDS, on))


def choice_for(case: Case, who: Who) -> SupportChoice | None:
    """What the filer asks about support for this person."""
    return known(case.support.petitioner if who is Who.PETITIONER else case.support.respondent)


def _person(case: Case, line: str, choice: SupportChoice, who: Who) -> Answer:
    concept, told = f"{line}.{who}", choice_for(case, who)
    if told is None:
        return still_open(case, concept, f"support.{who}")
    if told is SupportChoice.SAY_NOTHING:
        silent = _("You chose to say nothing. If nobody responds, the judge can decide only what is asked.")
        return blank(concept, silent)
    if told is not choice:
        return blank(concept, _("You chose another line for this person."))
    if (
        choice is SupportChoice.END
        and who is Who.PETITIONER
        and known(case.support.own_right_ends) is not True
    ):
        return _not_confirmed(case, concept)
    return mark(concept, _because(choice, who), _authority(case, choice))


def _not_confirmed(case: Case, concept: str) -> Answer:
    """Nobody ends their own right to support by accident."""
    if known(case.support.own_right_ends) is False:
        because = _("You said that you do not want to end your own right. Choose again what to ask for.")
        return replace(blank(concept, because), open_key="support.petitioner")
    return still_open(case, concept, "support.own_right_ends")


def _line(case: Case, line: str, choice: SupportChoice, people: list[Answer]) -> Answer:
    if any(person.action is Action.MARK for person in people):
        because = {
            SupportChoice.ASK: _("You ask the judge to order support."),
            SupportChoice.END: _(
                "You ask to end it for good. A judge often says no, most of all after a long marriage."
            ),
            SupportChoice.RESERVE: _("You keep the question open, so that it can be asked later."),
        }[choice]
        because = spaced((because, _silent_for_you(case), see_the_paper_first(case)))
        return mark(line, because, _authority(case, choice))
    still = next((person for person in people if person.open_key), None)
    if still:
        return replace(still, concept=line)
    return blank(line, not_asked())


def _silent_for_you(case: Case) -> str:
    """What silence about the filer's own support can cost, where the other side's is asked about."""
    if choice_for(case, Who.PETITIONER) is not SupportChoice.SAY_NOTHING:
        return ""
    return _(
        "You say nothing about support for you. If nobody responds, the judge can decide only what is asked."
    )


def _because(choice: SupportChoice, who: Who) -> str:
    return {
        (SupportChoice.ASK, Who.PETITIONER): _("You ask that the other side pays support to you."),
        (SupportChoice.ASK, Who.RESPONDENT): _("You ask that you pay support to the other side."),
        (SupportChoice.END, Who.PETITIONER): _(
            "You confirmed that you give up your own right to support. You can hardly ever get it back."
        ),
        (SupportChoice.END, Who.RESPONDENT): _("You ask that the other side can never get support from you."),
        (SupportChoice.RESERVE, Who.PETITIONER): _("You keep your own right to ask for support later."),
        (SupportChoice.RESERVE, Who.RESPONDENT): _(
            "The other side keeps the right to ask for support later."
        ),
    }[choice, who]


def _authority(case: Case, choice: SupportChoice) -> str:
    if is_nullity(case):
        return "Fam. Code 2254"
    return "Fam. Code 4330" if choice is SupportChoice.ASK else "Fam. Code 4335, 4336"


def _chosen_for_anybody(case: Case, choice: SupportChoice) -> bool:
    return any(choice_for(case, who) is choice for who in PEOPLE)


def _other(case: Case, on: date) -> Iterator[Answer]:
    words = known(case.support.other)
    asks, keeps = (_chosen_for_anybody(case, one) for one in (SupportChoice.ASK, SupportChoice.RESERVE))
    if words and (asks or keeps):
        yield from line_of_words(BOX, WORDS, words, attachment_page(case, on))
    elif words is None and asks:
        yield from (still_open(case, concept, "support.other") for concept in (BOX, WORDS))
    else:
        yield from (blank(concept, not_asked()) for concept in (BOX, WORDS))
