"""What is still wrong with the explanations of the forms: all of it at once, for whoever writes them.

    PYTHONPATH=. python tests/forms/explained.py [FORM ...]

Loading stops at the first thing it refuses; this goes on, file by file, and measures how the words read.
"""

import re
import sys
from collections import Counter
from collections.abc import Iterator

from firstpaper.data_files import DataFileError
from firstpaper.facts import Case
from firstpaper.forms.edition import ItemKind, all_editions
from firstpaper.forms.explanation import FIGURE, Explanation, load_explanation
from firstpaper.forms.explanations import concepts_of, paths, speaks_of, unknown_names
from firstpaper.intake import asking
from firstpaper.intake.loading import bank
from firstpaper.law.citation import CitationError
from firstpaper.law.source import cited
from tests.words.reading import barred_words, grade, longest_sentence, words

HARDEST = 8.0
LONGEST_SENTENCE = 25
FORMS = tuple(dict.fromkeys(edition.form for edition in all_editions()))
OTHER_SIDE = ("P4", "P22", "P23")
"""Rows of common practice beside which the law says something else."""
WISHES = (
    "matter.kind",
    "custody.legal",
    "custody.physical",
    "custody.visits",
    "custody.sheets",
    "support.petitioner",
    "support.respondent",
    "property.separate_how",
    "property.community_how",
    "requests.fees",
)
"""Questions of what the filer asks the court for, not of what is so: a box that one feeds is a choice."""
ON_THE_SHEET = {"petitioner", "respondent", "party", "parties", "terminate", "jurisdiction", "cohabit"}
"""Barred words that the forms themselves print, so that they must be named."""


TYPED = re.compile(
    r"\b(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|eighteen|twenty|thirty|sixty|ninety)"
    r"[ -](?:court |business |calendar )?(?:days?|weeks?|months?|years?|percent|dollars)\b|\$\d",
    re.IGNORECASE,
)
"""A number that the law may have set, typed into the words; a figure keeps it dated."""
HEDGES = ("as far as", "from memory", "not sure", "we have not read")
"""Words that say how sure we are, for law that nobody here has read itself."""


def problems(form: str) -> Iterator[str]:
    """Everything wrong with the explanations of a form, its holes last."""
    told = []
    for path in paths(form):
        try:
            one = load_explanation(path, form)
        except DataFileError as wrong:
            yield str(wrong)
            continue
        told.append(one)
        yield from (f"{path.name}: {problem}" for problem in (*unknown_names(one), *of_one(one)))
    spoken_of = Counter(concept for one in told for concept in concepts_of(one))
    yield from (f"explained twice: {concept}" for concept, times in spoken_of.items() if times > 1)
    missing = [item.concept for item in items(form) if item.concept not in spoken_of]
    if missing:
        yield f"explained nowhere: {', '.join(missing)}"
    named = {key for one in told for key in one.questions}
    yield from (f"no page names the question {key}, which feeds it" for key in asked_for(form) - named)


def asked_for(form: str) -> set[str]:
    """The questions of the interview that feed the form as a whole, by their keys."""
    every = (question for topic in bank().topics for question in topic.questions)
    return {question.key for question in every if form in question.feeds.sheets}


def of_one(one: Explanation) -> Iterator[str]:
    """What is wrong with one explanation by itself, beyond what loading refuses."""
    if not one.cites and not any(trap.practice for trap in one.traps):
        yield "no source: name a section in cites, or a row of common practice"
    yield from _missing_words(one)
    yield from _missing_sides(one)
    yield from _how_it_reads(one)
    yield from _unread_law(one)
    yield from (f"{trap.practice} needs its other side, in but" for trap in one.traps if _one_sided(trap))


def _one_sided(trap: object) -> bool:
    return trap.practice in OTHER_SIDE and not trap.but  # type: ignore[attr-defined]


def _unread_law(one: Explanation) -> Iterator[str]:
    """Law known only from what others write of it, told as if it were certain."""
    for told in (*one.traps, *one.changes):
        hedged = any(words in told.says.casefold() for words in HEDGES)
        if told.cite not in ("", "common practice") and not hedged and _unread(told.cite):
            yield f"{told.cite} was not read itself: say how sure we are: {told.says!r}"


def _unread(citation: str) -> bool:
    try:
        return not all(each.source.certainty.confirmed for each in cited(citation))
    except CitationError:
        return False


def _missing_words(one: Explanation) -> Iterator[str]:
    kinds = {item.kind for item in items(one.form) if speaks_of(one, item)}
    if kinds & {ItemKind.BOX} and not (one.marked and one.left):
        yield "a box needs both: what a mark does (marked), and what leaving it empty does (left)"
    if kinds & {ItemKind.TEXT, ItemKind.DATE, ItemKind.NUMBER} and not one.marked:
        yield "say what to write here (marked)"


def _missing_sides(one: Explanation) -> Iterator[str]:
    boxes = {item.concept for item in items(one.form) if speaks_of(one, item) and item.kind is ItemKind.BOX}
    wishes = [key for key in WISHES if boxes & set(_fed_by(key))] if one.form == "FL-100" else []
    if wishes and not one.sides:
        yield f"the filer chooses here ({', '.join(wishes)}): show both sides, in sides"


def _fed_by(key: str) -> tuple[str, ...]:
    asked = asking(key, Case.nothing())
    assert asked, key
    return asked.question.feeds.items


def _how_it_reads(one: Explanation) -> Iterator[str]:
    for text in one.words:
        plain = FIGURE.sub("6", text)
        if len(words(plain)) > 4 and (hard := grade([plain])) > HARDEST:
            yield f"grade {hard:.1f}, more than {HARDEST:.0f}: {plain!r}"
        if len(words(longest := longest_sentence(plain))) > LONGEST_SENTENCE:
            yield f"a sentence of more than {LONGEST_SENTENCE} words: {longest!r}"
        if typed := TYPED.search(FIGURE.sub("", text)):
            yield f"a number is typed, {typed[0]!r}; name its figure: {text!r}"
        for word in set(barred_words(plain)) - ON_THE_SHEET:
            yield f"a word that needs a plainer one, {word!r}: {plain!r}"
    if re.search(r"\b(P\d{1,2}|practice\.yaml)\b", " ".join(one.words)):
        yield "the id of a row of common practice says nothing to a reader"


def items(form: str) -> list:  # type: ignore[type-arg]
    """The items of every edition of a form."""
    return [item for edition in all_editions() if edition.form == form for item in edition.items]


def main(forms: list[str]) -> int:
    found = {form: list(problems(form)) for form in forms}
    for form, wrong in found.items():
        print(f"{form}: {len(paths(form))} files, {len(wrong)} things to mend")
        print("".join(f"    {each}\n" for each in wrong), end="")
    return 1 if any(found.values()) else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:] or list(FORMS)))
