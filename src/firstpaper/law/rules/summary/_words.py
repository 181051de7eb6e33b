"""The shared conditions in words: what stands in the way, what is still open, and how amounts compare."""

from collections.abc import Iterable, Sequence
from decimal import Decimal

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Danger, Shortcut
from firstpaper.facts.money import in_dollars
from firstpaper.law.measures.short_way import Condition, Subject
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row


def wants_to_look(case: Case) -> bool:
    """Whether the filer asked about the short way. Where danger was told, it is not for them."""
    dangers: tuple[Danger, ...] = known(case.safety.dangers) or ()
    return Shortcut.SMALL in (known(case.shortcuts.look_at) or ()) and not dangers


MOST_NAMED = 3


def in_the_way(found: Iterable[Condition]) -> list[str]:
    """What is not met."""
    return [_reason(one) for one in found if one.met is False]


def still_open(found: Iterable[Condition]) -> list[str]:
    """What is not told or not sure yet; the amounts that nobody knows are left to the rule."""
    return [_open(one.subject) for one in found if one.met is None and not one.limit_unknown]


def the_first_few(parts: Sequence[str]) -> str:
    """The first parts in a row, and "more" where there are many."""
    return in_a_row(parts if len(parts) <= MOST_NAMED else [*parts[:MOST_NAMED], _("more")])


def _reason(one: Condition) -> str:
    amount = in_dollars(Decimal(one.limit)) if one.limit is not None else ""
    words = {
        Subject.CHILDREN: _("you have a child together, or one on the way"),
        Subject.PREGNANCY: _("one of you is pregnant"),
        Subject.REAL_ESTATE: _("one of you owns a home or land"),
        Subject.LEASE: _("a lease runs too long or lets you buy"),
        Subject.DEBTS: _("the debts are more than {amount}"),
        Subject.COMMUNITY: _("what you own together is worth {amount} or more"),
        Subject.SEPARATE: _("what one of you owns alone is worth more than {amount}"),
        Subject.AGREEMENT: _("there is no signed agreement on property and debts"),
        Subject.SUPPORT: _("you do not both give up support"),
        Subject.BOTH_WANT: _("you do not both want it on these terms"),
    }
    return words[one.subject].format(amount=amount)


def _open(subject: Subject) -> str:
    return {
        Subject.CHILDREN: _("which children there are"),
        Subject.PREGNANCY: _("whether one of you is pregnant"),
        Subject.REAL_ESTATE: _("whether one of you owns a home or land"),
        Subject.LEASE: _("when the lease of a home ends"),
        Subject.DEBTS: _("what you two owe"),
        Subject.COMMUNITY: _("what your shared property is worth"),
        Subject.SEPARATE: _("what each of you owns alone"),
        Subject.AGREEMENT: _("whether you both sign an agreement"),
        Subject.SUPPORT: _("whether you both give up support"),
        Subject.BOTH_WANT: _("whether you both want it on these terms"),
    }[subject]


def money_steps(case: Case, found: Iterable[Condition]) -> tuple[str, ...]:
    """The amounts told, one a line, against the limits where those are known."""
    told = {one.subject: one for one in found}
    money = case.summary
    up_to, less_than = _("{what}, may be up to {limit}"), _("{what}, must be less than {limit}")
    lines = (
        (Subject.DEBTS, money.debts, _("Debts: {amount}"), up_to),
        (Subject.COMMUNITY, money.community, _("Shared property: {amount}"), less_than),
        (Subject.SEPARATE, money.separate_petitioner, _("Your own: {amount}"), up_to),
        (Subject.SEPARATE, money.separate_respondent, _("Theirs: {amount}"), up_to),
    )
    return tuple(
        _against(words.format(amount=in_dollars(amount)), bound, told[subject].limit)
        for subject, fact, words, bound in lines
        if (amount := known(fact)) is not None
    )


def _against(what: str, bound: str, limit: int | None) -> str:
    return what if limit is None else bound.format(what=what, limit=in_dollars(Decimal(limit)))
