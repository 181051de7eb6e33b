"""What the rules say and how their pages read: about a seventh-grade level, in short sentences.

The grade is Flesch-Kincaid over everything a rule says in its own cases. Sentences may run longer
than in the interview where they name dates, a county and the names of children.
"""

from firstpaper.law.register import Rule, all_rules
from tests.each import for_each
from tests.law.rule_cases import RULE_CASES
from tests.words.reading import grade, longest_sentence, words

HARDEST_RULE = 7.0
HARDEST_TEXT = 14.0
LONGEST_SENTENCE = 36
RULES = tuple(all_rules().values())


def said(rule: Rule) -> list[str]:
    """Everything the rule says and asks to do in its cases."""
    found = (finding for one in RULE_CASES if one.rule == rule.id for finding in rule.apply(one.case, one.on))
    return [text for finding in found for text in (finding.says, finding.do) if text]


@for_each(RULES, lambda rule: rule.id)
def test_what_a_rule_says_is_easy_to_read(rule: Rule) -> None:
    texts = said(rule)

    assert texts
    assert grade(texts) <= HARDEST_RULE
    for text in texts:
        assert grade([text]) <= HARDEST_TEXT, text
        assert len(words(longest_sentence(text))) <= LONGEST_SENTENCE, text


@for_each(RULES, lambda rule: rule.id)
def test_the_page_of_a_rule_is_easy_to_read(rule: Rule) -> None:
    assert grade([rule.page]) <= HARDEST_RULE
