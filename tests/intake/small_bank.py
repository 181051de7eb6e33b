"""Questions made up for tests of the engine, the readers and the loader, one for each kind of answer."""

from datetime import date
from pathlib import Path
from textwrap import dedent

from firstpaper.facts import Case
from firstpaper.facts.children import Child
from firstpaper.intake.engine import Asked
from firstpaper.intake.events import events
from firstpaper.intake.kinds import row_of
from firstpaper.intake.loading import Bank, bank_for
from firstpaper.intake.question import Topic

TODAY = date(2026, 11, 25)


def question(key: str, case: Case | None = None) -> Asked:
    """The real question for a fact, asked or recorded, whether or not it applies."""
    found = bank_for(key).find(key) or events().find(key)
    assert found
    topic, asked = found
    row = row_of(key)
    return Asked(asked, key, topic, row.number if row else None, case or Case())


def has_children(case: Case) -> bool:
    """A predicate of the small bank."""
    return bool(case.children.family)


def two_or_more(case: Case) -> bool:
    """A predicate of the small bank."""
    return isinstance(case.children.how_many, int) and case.children.how_many > 1


def was_born(_case: Case, child: Child) -> bool:
    """A predicate of the small bank, about one child."""
    return child.born_on is not None


SMALL = {
    "01-people.yaml": """
        topic: people
        title: The people
        opening: Who is who.
        questions:
          - key: petitioner.name
            short: its name
            ask: What is your name?
            why: It goes on the form.
            examples: [Maria Soto]
            feeds: {items: [cap.name]}
          - key: respondent.name
            short: its name
            ask: What is the other name?
            why: It goes on the form.
            feeds: {items: [cap.respondent]}
        """,
    "02-children.yaml": """
        topic: children
        title: The children
        questions:
          - key: children.family
            short: its name
            ask: Which children are there?
            why: So we know.
            choices:
              minor_together: Under 18
              not_always_here: Not always here
              unborn_together: On the way
              from_others: Of one of us
              grown: Grown
            none: No children
            feeds: {rules: [children.listed]}
          - key: children.how_many
            when: has_children
            only_if: it is so
            short: its name
            ask: How many?
            why: So we know.
            feeds: {rules: [children.listed]}
          - key: child.*.name
            short: its name
            ask: What is the name of {child}?
            why: "{petitioner} and {respondent} in {county}."
            feeds: {items: [children.1.name]}
          - key: child.*.born_on
            short: its name
            ask: When was {child} born?
            why: The form asks.
            not_after_today: true
            feeds: {items: [children.1.born_on]}
          - key: child.*.birthplace
            when: was_born
            only_if: it is so
            short: its name
            ask: Where was {child} born?
            why: A form asks.
            feeds: {items: [children.fl105]}
          - key: custody.alike
            when: two_or_more
            only_if: it is so
            short: its name
            ask: The same for all?
            why: So we know.
            feeds: {items: [custody.legal.joint]}
        """,
}


def write_bank(folder: Path, files: dict[str, str]) -> Bank:
    """A bank in `folder` made of these files."""
    for name, text in files.items():
        (folder / name).write_text(dedent(text), "utf-8")
    return Bank(folder, predicates=(__name__,))


def topics(folder: Path, files: dict[str, str]) -> tuple[Topic, ...]:
    """The topics read from these files."""
    return write_bank(folder, files).topics
