"""A sealed household with one byte changed, at every place, as chance does it and as a forger does it."""

from collections import Counter
from collections.abc import Iterator
from hashlib import sha256
from pathlib import Path

from firstpaper.casefile import CaseFile
from firstpaper.casefile.sealing import Cost, Seal, unseal
from firstpaper.errors import UserError
from firstpaper.intake import facts_from
from tests.hostile.targets import HOUSEHOLDS, TODAY

PASSPHRASE = "marble otter seven violins"
QUICK = Cost(memory_kib=8 * 1024, passes=1, lanes=1)
PATH = Path("home.case")
CHECKSUM = 32


def sealed_household(cost: Cost | None = None) -> bytes:
    """The case file of a whole household, sealed."""
    text = (HOUSEHOLDS / "plain-childless-divorce.yaml").read_text("utf-8")
    case, _problems = facts_from(text, TODAY)
    return Seal.new(PASSPHRASE, cost).close(CaseFile(case).to_json().encode())


def flipped_everywhere(data: bytes) -> dict[str, int]:
    """Flip every byte once. Each is told as damage, before a passphrase is asked."""
    told = Counter(_told(changed) for changed in _flipped(data))
    assert set(told) == {"case_file_damaged"}
    return {"bytes flipped": len(data), "opened": 0, **told}


def forged_everywhere(data: bytes) -> dict[str, int]:
    """Flip every byte before the checksum once, and put the checksum right. None opens."""
    content = data[:-CHECKSUM]
    told = Counter(_told(changed + sha256(changed).digest()) for changed in _flipped(content))
    assert set(told) <= {"seal_broken", "wrong_passphrase", "case_file_damaged", "seal_too_new"}
    assert told["seal_broken"] >= len(content) - data.index(b"\n") - 1
    return {"bytes forged": len(content), "opened": 0, **told}


def _flipped(data: bytes) -> Iterator[bytes]:
    for place in range(len(data)):
        changed = bytearray(data)
        changed[place] ^= 1 << place % 8
        yield bytes(changed)


def _told(data: bytes) -> str:
    if not data.startswith(b'{"sealed":'):
        return "case_file_damaged"  # such a file is not taken for a sealed one at all
    try:
        unseal(PATH, data, [PASSPHRASE])
    except UserError as error:
        return error.code
    raise AssertionError("a changed file was opened")
