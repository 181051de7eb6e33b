"""What somebody's own words on a list speak of, by kinds that are often part separate."""

import re
from collections.abc import Iterable

from firstpaper.facts.choices import CommunityKind

_WORDS = {
    CommunityKind.HOME: (
        r"house|home(?! ?goods)|condo\w*|town ?house|duplex|cabin|land|real estate|casa|terreno"
    ),
    CommunityKind.RETIREMENT: (
        r"pension|retire\w*|401 ?\(?k\)?|403 ?\(?b\)?|457|ira|roth|tsp|thrift|calpers|calstrs"
    ),
    CommunityKind.ACCOUNTS: r"stocks?|shares?|options?|rsus?|brokerage|mutual funds?|crypto\w*|bitcoin",
    CommunityKind.BUSINESS: r"business|company|llc|partnership|negocio",
}
_SPEAKS_OF = {kind: re.compile(rf"\b(?:{words})(?!\w)", re.IGNORECASE) for kind, words in _WORDS.items()}


def kinds_named(lines: Iterable[str]) -> tuple[CommunityKind, ...]:
    """The kinds that the lines speak of, in the order of the prompting list. Stock counts as an account."""
    told = tuple(lines)
    found = {kind for kind, words in _SPEAKS_OF.items() if any(words.search(line) for line in told)}
    return tuple(kind for kind in CommunityKind if kind in found)
