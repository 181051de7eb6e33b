"""Words that several rules share, so that one thing has one name."""

from collections.abc import Sequence

from firstpaper.facts.choices import NullityGround
from firstpaper.locale import _


def in_a_row(parts: Sequence[str]) -> str:
    """The parts in a row, as in "a", "a and b" or "a, b and c"."""
    if len(parts) < 2:
        return "".join(parts)
    return _("{first} and {last}").format(first=_(", ").join(parts[:-1]), last=parts[-1])


def help_first() -> str:
    """The usual advice where a mistake is costly."""
    return _("Talk to the court's self-help center or a lawyer before you file.")


def ground_words(ground: NullityGround) -> str:
    """A ground of a nullity in plain words, to stand after "the ground"."""
    return {
        NullityGround.INCEST: _("close family (incest)"),
        NullityGround.BIGAMY: _("another marriage that had not ended (bigamy)"),
        NullityGround.UNDER_AGE: _("under age"),
        NullityGround.PRIOR_SPOUSE: _("an earlier spouse thought dead or long gone"),
        NullityGround.UNSOUND_MIND: _("unsound mind"),
        NullityGround.FRAUD: _("fraud"),
        NullityGround.FORCE: _("force"),
        NullityGround.PHYSICAL_INCAPACITY: _("physical incapacity"),
    }[ground]


def child_words(number: int, name: str | None) -> str:
    """A child by name, or by number where no name was told."""
    return name or _("child number {number}").format(number=number)
