"""How hard a text is to read, by the Flesch-Kincaid grade.

Grade = 0.39 * words per sentence + 11.8 * syllables per word - 15.59 (Kincaid, Fishburne, Rogers and
Chissom, 1975). A syllable is a group of vowels, less a silent final e; the count is rough for one
word and fair for a paragraph. It also finds long sentences and words nobody needs.
"""

import re
from collections.abc import Iterable
from functools import cache

BARRED = (
    "pursuant",
    "heretofore",
    "hereinafter",
    "herein",
    "hereby",
    "thereof",
    "therein",
    "aforementioned",
    "aforesaid",
    "commence",
    "terminate",
    "ascertain",
    "notwithstanding",
    "forthwith",
    "whereas",
    "shall",
    "utilize",
    "prior to",
    "subsequent",
    "in the event that",
    "with respect to",
    "set forth",
    "party",
    "parties",
    "plaintiff",
    "defendant",
    "affiant",
    "dissolve",
    "execute",
    "in lieu",
    "inter alia",
    "said spouse",
    "marital status",
    "cohabit",
    "jurisdiction",
    "domicile",
)
"""Words and turns of phrase that have a plainer twin, or that need a lawyer to explain them."""

_WORD = re.compile(r"[A-Za-z0-9]+(?:['’-][A-Za-z0-9]+)*")
_SENTENCE_END = re.compile(r"[.!?:;]+[\"'”’)\]]*(?:\s+|$)|\n+")
_VOWEL_GROUP = re.compile(r"[aeiouy]+")
_SOUNDED_END = re.compile(r"[^aeiouy]le$")
_SILENT_END = re.compile(r"(?:[^aeiouy]e|[^aeiouydt]ed|[^aeiouylscxz]es)$")


def words(text: str) -> list[str]:
    """The words of a text; a number is one word."""
    return _WORD.findall(text)


def sentences(text: str) -> list[str]:
    """The sentences of a text; a colon, a semicolon and a line break end one too."""
    return [part for part in _SENTENCE_END.split(text) if words(part)]


@cache
def syllables(word: str) -> int:
    """The syllables of one word, by its vowel groups."""
    letters = re.sub(r"[^a-z]", "", word.lower())
    groups = len(_VOWEL_GROUP.findall(letters))
    silent = len(letters) > 3 and _SILENT_END.search(letters) and not _SOUNDED_END.search(letters)
    return max(1, groups - bool(silent))


def grade(texts: Iterable[str]) -> float:
    """The Flesch-Kincaid grade of some texts read one after the other, each a sentence at least."""
    all_sentences = [sentence for text in texts for sentence in sentences(text)]
    all_words = [word for sentence in all_sentences for word in words(sentence)]
    if not all_words:
        return 0.0
    per_sentence = len(all_words) / len(all_sentences)
    per_word = sum(map(syllables, all_words)) / len(all_words)
    return 0.39 * per_sentence + 11.8 * per_word - 15.59


def longest_sentence(text: str) -> str:
    """The sentence with the most words; a colon or semicolon does not end it here."""
    parts = re.split(r"[.!?]+[\"'”’)\]]*(?:\s+|$)|\n+", text)
    return max(parts, key=lambda part: len(words(part)))


def barred_words(text: str) -> list[str]:
    """The barred words that a text uses."""
    lower = " ".join(text.lower().split())
    return [word for word in BARRED if re.search(rf"\b{re.escape(word)}", lower)]
