"""What needs a second look, each in a sentence with the facts told, and the counting behind it."""

import re
from collections.abc import Iterator

from firstpaper.law.finding import Finding, Outcome, Weight
from firstpaper.law.source import cited
from firstpaper.law.words import spaced
from firstpaper.locale import _
from firstpaper.packet.views.handoff.line import Line
from firstpaper.packet.views.law_behind import in_words

MOST_SAID = 2  # findings of one rule
SHORT = 64  # letters of a sentence that seldom stands alone
SAID_ALREADY = frozenset({"support.asking", "property.not_yet_known", "marriage.length"})
"""Rules that tell a filer what stands among the facts, or what anybody who helps knows."""
ALWAYS_COUNTED = "nullity.last_day"
IN_DOUBT = frozenset({Outcome.NOT_MET, Outcome.CLOSE, Outcome.NEED_TO_KNOW})
MOST_COUNTED = 3
LONGEST_COUNT = 400  # characters; a lawyer asks for more

_ABBREVIATIONS = ("Fam", "Civ", "Proc", "Gov", "Cal", "Pen", "Prob", "Welf", "Inst", "Mrs")
_SENTENCE_ENDS = re.compile(
    "".join(rf"(?<!\b{short}\.)" for short in _ABBREVIATIONS) + r"(?<=[a-zà-ÿ0-9)]{2}[.?!])\s+(?=[^a-zà-ÿ])"
)
"""Behind a full word or number: an initial in a name, or the abbreviation of a code, ends no sentence."""


def flags(findings: tuple[Finding, ...]) -> Iterator[Line]:
    """The findings that need a second look, one line for each rule, heaviest first."""
    weighty = _weighty(findings)
    for identity in dict.fromkeys(one.id for one in weighty):
        of_rule = [one for one in weighty if one.id == identity]
        said = dict.fromkeys(_in_short(one, short=SHORT if len(of_rule) == 1 else 0) for one in of_rule)
        yield Line(_labelled(of_rule[0]), spaced(list(said)[:MOST_SAID]), _cite(of_rule[0]))


def _weighty(findings: tuple[Finding, ...]) -> list[Finding]:
    """What rests on facts of this case and is more than good to know; a part of a test goes with its sum."""
    weighty = [one for one in findings if one.facts and not _goes_without_saying(one)]
    leads = {one.id for one in weighty}
    return [one for one in weighty if one.part_of not in leads]


def _goes_without_saying(one: Finding) -> bool:
    if one.weight is Weight.LOOK_AGAIN:
        return one.id in SAID_ALREADY
    return one.weight is Weight.GOOD_TO_KNOW


def _labelled(one: Finding) -> str:
    """The title of a finding, with a word on how it stands where it is not simply so."""
    outcomes = {
        Outcome.NOT_MET: _("a problem"),
        Outcome.CLOSE: _("close: look twice"),
        Outcome.NEED_TO_KNOW: _("open"),
        Outcome.NOT_CHECKED: _("not checked"),
    }
    standing = _("STOP") if one.weight is Weight.STOP else outcomes.get(one.outcome)
    return _("{title} ({standing})").format(title=one.title, standing=standing) if standing else one.title


def _in_short(one: Finding, short: int) -> str:
    """The first sentence of what the filer reads, with the next below a length; not the title again."""
    first, *more = _SENTENCE_ENDS.split(one.says)
    if more and first.rstrip(".") == one.title:
        first, *more = more
    return spaced([first, *more[:1]]) if len(first) < short else first


def _cite(one: Finding) -> str:
    """Where to look it up: the first source, and whether all were read in the law itself."""
    first, *more = one.own or one.authority
    if one.certainty.confirmed:
        return in_words(first)
    doubtful = (each for each in (first, *more, *one.authority) if not _confirmed(each))
    return _("{source}, not confirmed").format(source=in_words(next(doubtful, first)))


def _confirmed(cite: str) -> bool:
    return all(one.source.certainty.confirmed for one in cited(cite))


def counts(findings: tuple[Finding, ...]) -> Iterator[Line]:
    """The counting behind what is near a line or over it, and behind the last day of a nullity; each once."""
    asked = (
        one
        for one in findings
        if one.id == ALWAYS_COUNTED or (one.weight is not Weight.GOOD_TO_KNOW and one.outcome in IN_DOUBT)
    )
    counted: list[Line] = []
    for one in asked:
        words = " ".join(map(_as_sentence, one.steps))
        if 0 < len(words) <= LONGEST_COUNT and not any(words in line.words for line in counted):
            counted.append(Line(one.title, words))
    yield from counted[:MOST_COUNTED]


def _as_sentence(step: str) -> str:
    return f"{step[:1].upper()}{step[1:].rstrip('.')}."
