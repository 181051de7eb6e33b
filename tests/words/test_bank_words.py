"""The words of the interview, of what is listed, and of the events recorded after the filing.

About a seventh-grade level, short sentences, terms explained.
"""

import re
from functools import reduce
from itertools import product

from firstpaper.intake.events import events
from firstpaper.intake.loading import bank, listing
from firstpaper.intake.question import Question, Topic, all_words
from tests.each import for_each
from tests.words.reading import barred_words, grade, longest_sentence, words

HARDEST_QUESTION = 8.0
HARDEST_ON_AVERAGE = 7.0
LONGEST_SENTENCE = 25

MEANINGS: dict[str, tuple[str, ...]] = {
    "petitioner": ("the person who files",),
    "respondent": ("the other side",),
    "response": ("their own answer to the petition",),
    "dissolution": ("divorce",),
    "legal separation": ("stay married",),
    "nullity": ("not valid",),
    "restraining order": ("a judge's order to stay away",),
    "domestic partners": ("list of partners",),
    "summons": ("the court's notice that a case has begun",),
    "legal custody": ("big choices",),
    "physical custody": ("live",),
    "parenting time": ("visits",),
    "community property": ("what you gained or owe from the wedding (or registration) until you parted",),
    "separate property": ("belongs to one of you alone",),
    "spousal support": ("support for a spouse or a partner",),
    "reserve": ("keep it open",),
    "declaration of parentage": ("a paper in which both parents state",),
    "safe at home": ("free state program",),
    "irreconcilable": ("cannot get along",),
    "incapacity": ("cannot make decisions",),
    "unsound mind": ("could not understand",),
    "fraud": ("tricked",),
    "guardian": ("someone a court put in charge",),
    "conservator": ("someone a court put in charge",),
    "good faith": ("believed",),
    "fl-105": ("where the children have lived",),
    "fl-110": ("summons",),
    "fl-160": ("property list",),
    "dv-100": ("stay away", "asks for protection"),
    "living trust": ("pass money at death",),
}
"""For each term, words that explain it, one of which stands in the question (or the topic's opening)
where the topic first uses the term."""

TOPICS = (*bank().topics, *listing().topics, *events().topics)
QUESTIONS = [(topic, question) for topic in TOPICS for question in topic.questions]


NAMES = {"{respondent}": "Daniel", "{petitioner}": "Maria", "{child}": "Lucia", "{county}": "Fresno"}


def scored(question: Question) -> list[str]:
    """What a person must read to answer, with the names filled in."""
    return [named(text) for text in (question.ask, question.why, *(c.words for c in question.choices))]


def shown(question: Question, *, without_why: bool = False) -> list[str]:
    """All that a person may read at one question, with the names filled in."""
    why = "" if without_why else question.why
    choices = [choice.words for choice in question.choices]
    texts = [*question.notice, question.ask, why, *choices, question.none or "", question.hint or ""]
    return [named(text) for text in texts]


def named(text: str) -> str:
    """The text with names where the interview puts them."""
    return reduce(lambda words, name: words.replace(*name), NAMES.items(), text)


@for_each(QUESTIONS, lambda asked: asked[1].key)
def test_a_question_reads_easily(topic: Topic, question: Question) -> None:
    assert grade(scored(question)) <= HARDEST_QUESTION
    assert grade(map(named, question.notice)) <= HARDEST_QUESTION
    assert grade(shown(question)) <= HARDEST_QUESTION


def test_the_bank_reads_easily_on_average() -> None:
    grades = [grade(scored(question)) for _topic, question in QUESTIONS]
    assert sum(grades) / len(grades) <= HARDEST_ON_AVERAGE


@for_each(TOPICS, lambda topic: topic.name)
def test_an_opening_reads_easily(topic: Topic) -> None:
    assert grade([topic.title, topic.opening or ""]) <= HARDEST_QUESTION


@for_each(TOPICS, lambda topic: topic.name)
def test_sentences_are_short(topic: Topic) -> None:
    long = [longest_sentence(named(text)) for text in all_words(topic)]
    assert [sentence for sentence in long if len(words(sentence)) > LONGEST_SENTENCE] == []


@for_each(TOPICS, lambda topic: topic.name)
def test_no_barred_words(topic: Topic) -> None:
    found = {word: text for text in all_words(topic) for word in barred_words(text)}
    assert found == {}


@for_each(product(TOPICS, MEANINGS), lambda one: f"{one[1]} in {one[0].name}")
def test_a_term_is_explained_where_a_topic_first_uses_it(topic: Topic, term: str) -> None:
    """The reason for a question is shown only to those who ask for it, so it explains nothing to others."""
    opening = (topic.opening or "").lower()
    for question in topic.questions:
        visible = " ".join([opening, *shown(question, without_why=True)]).lower()
        everything = " ".join([opening, *shown(question)]).lower()
        explained = any(meaning in visible for meaning in MEANINGS[term])
        if re.search(rf"\b{term}\b", visible):
            assert explained, visible
            return
        if re.search(rf"\b{term}\b", everything):
            assert any(meaning in everything for meaning in MEANINGS[term]), everything


def test_the_petition_is_explained_before_anything_else_is_asked() -> None:
    first = bank().topics[0].questions[0]
    assert "petition, the court paper that opens a case" in " ".join(shown(first))


@for_each(MEANINGS)
def test_every_term_is_used_somewhere(term: str) -> None:
    everything = " ".join(named(text).lower() for topic in bank().topics for text in all_words(topic))
    assert re.search(rf"\b{term}\b", everything)


@for_each(QUESTIONS, lambda asked: asked[1].key)
def test_a_question_asks_and_a_reason_does_not(topic: Topic, question: Question) -> None:
    assert "?" in question.ask
    assert question.why.rstrip().endswith((".", "?"))
    assert 1 <= len(re.findall(r"[.!?](?:\s|$)", question.why)) <= 3
    assert question.ask.count("?") <= 2


@for_each(QUESTIONS, lambda asked: asked[1].key)
def test_choices_are_short_enough_to_take_in(topic: Topic, question: Question) -> None:
    assert [choice.words for choice in question.choices if len(words(choice.words)) > 20] == []
    assert len({choice.words for choice in question.choices}) == len(question.choices)
