"""How easy a Spanish text is to read, by the perspicuity of Szigriszt Pazos.

Ease = 206.835 - 62.3 * syllables per word - words per sentence (F. Szigriszt Pazos, "Sistemas predictivos de
legibilidad del mensaje escrito: fórmula de perspicuidad", 1993; from memory). On the INFLESZ scale of I. M.
Barrio Cantalejo (2007; from memory) more than 80 is very easy, 65 to 80 fairly easy, 55 to 65 normal, less is
hard.
"""

import re
from collections.abc import Iterable

FAIRLY_EASY = 65
"""From here on a text is fairly easy."""

_WORD = re.compile(r"[^\W_]+(?:['’-][^\W_]+)*")
_SENTENCE_END = re.compile(r"[.!?:;]+[\"'”’)\]]*(?:\s+|$)|\n+")
_SILENT_U = re.compile(r"([qg])u(?=[eéií])")
_LAST_Y = re.compile(r"y\b")
_STRONG = "aeoáéóíú"
_SYLLABLE = re.compile(rf"[iuü]*[{_STRONG}][iuü]*|[iuü]+")
"""A strong vowel, or a weak one with an accent, takes the weak ones around it; weak ones alone are one."""


def words(text: str) -> list[str]:
    """The words of a text; a number is one word."""
    return _WORD.findall(text)


def sentences(text: str) -> list[str]:
    """The sentences of a text; a colon, a semicolon and a line break end one too."""
    return [part for part in _SENTENCE_END.split(text) if words(part)]


def syllables(word: str) -> int:
    """The syllables of one word, by its vowels; a word without any, such as a number, has one."""
    plain = _LAST_Y.sub("i", _SILENT_U.sub(r"\1", word.lower()))
    return max(1, len(_SYLLABLE.findall(plain)))


def ease(texts: Iterable[str]) -> float:
    """The ease of some texts read one after the other, each a sentence at least; 100 without a word."""
    all_sentences = [sentence for text in texts for sentence in sentences(text)]
    all_words = [word for sentence in all_sentences for word in words(sentence)]
    if not all_words:
        return 100.0
    long = sum(map(syllables, all_words)) / len(all_words)
    return 206.835 - 62.3 * long - len(all_words) / len(all_sentences)
