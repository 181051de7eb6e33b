"""A case file locked with a passphrase.

A sealed file is one line of JSON that says how it was made, and after it only bytes::

    {"sealed": 1, "cipher": "AES-256-GCM", "kdf": "Argon2id", "memory_kib": ..., "salt": ...}
    nonce (12 bytes) | content and its proof (AES-GCM) | SHA-256 of everything before

Nothing in it names this program or says what the file is about. The first line is proved together with
the content. The last 32 bytes need no passphrase: they tell a damaged file before anybody is asked for one,
so that damage is not taken for a wrong passphrase.

The key is made from the passphrase by Argon2id with the cost that RFC 9106, section 4, recommends second,
and lives only in the memory of the process. Every save takes a fresh nonce (NIST SP 800-38D, 8.2.2).
"""

import hmac
import json
import os
from collections.abc import Iterable
from dataclasses import dataclass, fields
from hashlib import sha256
from pathlib import Path
from typing import Any, Self

from firstpaper.casefile.errors import (
    CaseFileDamaged,
    CaseFileSealed,
    SealBroken,
    SealingUnavailable,
    SealTooNew,
    WrongPassphrase,
)
from firstpaper.casefile.passphrase import prepared
from firstpaper.locale import _

MARK = "sealed"
FORMAT = 1
CIPHER = "AES-256-GCM"
KDF = "Argon2id"

_LONGEST_HEAD = 1000
_SALT, _NONCE, _KEY, _CHECK, _SUM = 16, 12, 32, 16, 32
_PROOF = 16


@dataclass(frozen=True, slots=True)
class Cost:
    """What one guess at a passphrase costs: memory in KiB, passes over it, lanes side by side.

    A file from a stranger may ask for no more than a second or so of work and 256 MiB.
    """

    memory_kib: int = 64 * 1024
    passes: int = 3
    lanes: int = 4

    @property
    def bearable(self) -> bool:
        """Whether the cost lies inside what this program ever asks for or accepts."""
        return 8 * 1024 <= self.memory_kib <= 256 * 1024 and 1 <= self.passes <= 10 and 1 <= self.lanes <= 16


class Seal:
    """The key to one sealed file and the first line that goes with it. Never written, printed or copied."""

    __slots__ = ("_head", "_key")

    def __init__(self, head: bytes, key: bytes) -> None:
        self._head = head
        self._key = key

    @classmethod
    def new(cls, passphrase: str, cost: Cost | None = None) -> Self:
        """A seal for a file that gets this passphrase from now on."""
        cost = cost or Cost()
        salt = os.urandom(_SALT)
        key, check = _derived(passphrase, salt, cost)
        return cls(_head(cost, salt, check), key)

    def close(self, content: bytes) -> bytes:
        """The sealed bytes of `content`, different at every call."""
        from cryptography.hazmat.primitives.ciphers.aead import AESGCM  # noqa: PLC0415  (only where needed)

        nonce = os.urandom(_NONCE)
        sealed = self._head + nonce + AESGCM(self._key).encrypt(nonce, content, self._head)
        return sealed + sha256(sealed).digest()

    def opens(self, data: bytes) -> bool:
        """Whether a sealed file was made with this very seal, so that no passphrase is needed again."""
        return data.startswith(self._head)

    def open(self, path: Path, data: bytes) -> bytes:
        """The content of a sealed file made with this seal."""
        from cryptography.exceptions import InvalidTag  # noqa: PLC0415
        from cryptography.hazmat.primitives.ciphers.aead import AESGCM  # noqa: PLC0415

        parts = _Parts.of(path, data)
        try:
            return AESGCM(self._key).decrypt(parts.nonce, parts.body, parts.head)
        except InvalidTag as error:
            raise SealBroken(path=path) from error


def check_whole(path: Path, data: bytes) -> None:
    """Raise CaseFileDamaged or SealTooNew where a sealed file cannot be opened with any passphrase."""
    _Parts.of(path, data)


def unseal(path: Path, data: bytes, passphrases: Iterable[str]) -> tuple[bytes, Seal]:
    """The content of a sealed file, and its seal for later saves. Passphrases are tried in turn.

    Raises CaseFileSealed where none was given, WrongPassphrase after the last, CaseFileDamaged for a
    file that is not whole, SealBroken for one that was changed by somebody who made it look whole.
    """
    parts = _Parts.of(path, data)
    tried = False
    for passphrase in passphrases:
        tried = True
        key, check = _derived(passphrase, parts.salt, parts.cost)
        if hmac.compare_digest(check, parts.check):
            seal = Seal(parts.head, key)
            return seal.open(path, data), seal
    raise WrongPassphrase(path=path) if tried else CaseFileSealed(path=path)


@dataclass(frozen=True, slots=True, repr=False)
class _Parts:
    """A sealed file taken apart; every field is checked, nothing is trusted yet."""

    head: bytes
    cost: Cost
    salt: bytes
    check: bytes
    nonce: bytes
    body: bytes

    @classmethod
    def of(cls, path: Path, data: bytes) -> Self:
        content, told = data[:-_SUM], data[-_SUM:]
        end = data.find(b"\n", 0, _LONGEST_HEAD) + 1
        if not end or len(content) < end + _NONCE + _PROOF or sha256(content).digest() != told:
            raise CaseFileDamaged(path=path, reason=_("it is not whole any more"))
        head = _read_head(path, content[:end])
        try:
            cost = Cost(**{field.name: _whole_number(head[field.name]) for field in fields(Cost)})
            salt, check = bytes.fromhex(head["salt"]), bytes.fromhex(head["check"])
        except (KeyError, TypeError, ValueError) as error:
            raise _strange(path) from error
        if not cost.bearable or (len(salt), len(check)) != (_SALT, _CHECK):
            raise _strange(path)
        body = end + _NONCE
        return cls(content[:end], cost, salt, check, content[end:body], content[body:])


def _read_head(path: Path, line: bytes) -> dict[str, Any]:
    try:
        head = json.loads(line)
    except (ValueError, RecursionError) as error:
        raise _strange(path) from error
    if not isinstance(head, dict) or not isinstance(head.get(MARK), int):
        raise _strange(path)
    if (head[MARK], head.get("cipher"), head.get("kdf")) != (FORMAT, CIPHER, KDF):
        raise SealTooNew(path=path)
    return head


def _strange(path: Path) -> CaseFileDamaged:
    return CaseFileDamaged(path=path, reason=_("its first line is not one that Firstpaper writes"))


def _whole_number(value: object) -> int:
    if not isinstance(value, int) or isinstance(value, bool):
        raise TypeError
    return value


def _head(cost: Cost, salt: bytes, check: bytes) -> bytes:
    head = {MARK: FORMAT, "cipher": CIPHER, "kdf": KDF}
    costs = {field.name: getattr(cost, field.name) for field in fields(Cost)}
    return json.dumps({**head, **costs, "salt": salt.hex(), "check": check.hex()}).encode() + b"\n"


def _derived(passphrase: str, salt: bytes, cost: Cost) -> tuple[bytes, bytes]:
    """The key, and the value in the first line that tells the right passphrase without the key."""
    from cryptography.exceptions import UnsupportedAlgorithm  # noqa: PLC0415
    from cryptography.hazmat.primitives.kdf.argon2 import Argon2id  # noqa: PLC0415

    try:
        both = Argon2id(
            salt=salt,
            length=_KEY + _CHECK,
            iterations=cost.passes,
            lanes=cost.lanes,
            memory_cost=cost.memory_kib,
        ).derive(prepared(passphrase).encode("utf-8", "surrogatepass"))
    except (UnsupportedAlgorithm, MemoryError) as error:
        raise SealingUnavailable from error
    return both[:_KEY], both[_KEY:]
