"""How easy the Spanish words are to read: the measure, worked out by hand, then the words themselves.

"Fairly easy" is 65 or more on the INFLESZ scale; see `reading_es`.
"""

from collections.abc import Iterator
from inspect import cleandoc

import pytest

from firstpaper.forms.explained_names import entries, forms_explained
from firstpaper.intake import bank
from firstpaper.intake.events import events
from firstpaper.intake.loading import listing
from firstpaper.law.register import all_rules
from firstpaper.locale import _, by_paragraph, speaking
from tests.words.reading_es import FAIRLY_EASY, ease, sentences, syllables, words

Texts = tuple[str, ...]


@pytest.mark.parametrize(
    ("word", "count"),
    [
        ("casa", 2),
        ("ciudad", 2),
        ("país", 2),
        ("día", 2),
        ("agua", 2),
        ("guerra", 2),
        ("pingüino", 3),
        ("oír", 2),
        ("teoría", 4),
        ("respuesta", 3),
        ("petición", 3),
        ("muy", 1),
        ("yo", 1),
        ("quien", 1),
        ("averigüe", 4),
        ("2026", 1),
    ],
)
def test_syllables(word: str, count: int) -> None:
    assert syllables(word) == count


def test_a_text_worked_out_by_hand() -> None:
    # 6 words, 1 sentence. El ga-to ve la ca-sa a-zul: 1+2+1+1+2+2 = 9 syllables: 206.835 - 62.3 * 9/6 - 6
    assert ease(["El gato ve la casa azul."]) == pytest.approx(206.835 - 62.3 * 9 / 6 - 6)
    assert (len(words("El gato ve.")), len(sentences("Uno. ¿Dos? Tres: cuatro."))) == (3, 4)


def _questions() -> Iterator[tuple[str, Texts]]:
    for topics in (bank(), listing(), events()):
        for topic in topics.topics:
            for asked in topic.questions:
                yield asked.key, tuple(_(text) for text in (asked.ask, asked.why, asked.hint) if text)


def _pages() -> Iterator[tuple[str, Texts]]:
    for rule in all_rules().values():
        yield rule.id, (by_paragraph(cleandoc(rule.check.__doc__ or "")),)


def _explained() -> Iterator[tuple[str, Texts]]:
    for form in forms_explained():
        for entry in entries(form):
            yield entry.place, tuple(_(text) for text in entry.read().words)


@pytest.mark.parametrize("texts", [_questions, _pages, _explained])
def test_each_is_fairly_easy_in_spanish(texts: object) -> None:
    with speaking("es"):
        hard = [(name, round(ease(said))) for name, said in texts() if ease(said) < FAIRLY_EASY]  # type: ignore[operator]
    assert hard == []
