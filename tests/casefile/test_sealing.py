"""Sealed files: only the passphrase opens them, and every other reason not to open is told by its name."""

import json
import subprocess
import sys
import time
from hashlib import sha256
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.ciphers.aead import AESGCM
from cryptography.hazmat.primitives.kdf.argon2 import Argon2id

from firstpaper.casefile import CaseFile, OpenCase, load
from firstpaper.casefile.errors import (
    CaseFileDamaged,
    CaseFileSealed,
    SealBroken,
    SealingUnavailable,
    SealTooNew,
    WrongPassphrase,
)
from firstpaper.casefile.reading import read_case_file
from firstpaper.casefile.sealing import Cost, Seal, unseal
from firstpaper.errors import UserError
from firstpaper.facts import Case

SECRET = "Zebulon Quartermain"
PASSPHRASE = "marble otter seven violins"
QUICK = Cost(memory_kib=8 * 1024, passes=1, lanes=1)
FILE = CaseFile(Case().with_fact("petitioner.name", SECRET))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "home.case"


@pytest.fixture(scope="module")
def seal() -> Seal:
    return Seal.new(PASSPHRASE, QUICK)


@pytest.fixture
def sealed(path: Path, seal: Seal) -> bytes:
    path.write_bytes(seal.close(FILE.to_json().encode()))
    return path.read_bytes()


def told(path: Path, data: bytes, *passphrases: str) -> type[UserError]:
    """Which error opening `data` ends with."""
    with pytest.raises(UserError) as caught:
        unseal(path, data, passphrases or (PASSPHRASE,))
    return caught.type


def summed(data: bytes) -> bytes:
    """The same sealed file with its last 32 bytes made right again, as a careful forger would."""
    return data[:-32] + sha256(data[:-32]).digest()


def with_head(data: bytes, **changed: object) -> bytes:
    line, _newline, rest = data.partition(b"\n")
    return summed(json.dumps({**json.loads(line), **changed}).encode() + b"\n" + rest)


def test_a_sealed_file_opens_with_its_passphrase_and_shows_nothing_without(path: Path, sealed: bytes) -> None:
    assert CaseFile.load(path, [PASSPHRASE]) == FILE
    for word in (SECRET, "Quartermain", "petitioner", "firstpaper", "facts"):
        assert word.encode() not in sealed


def test_the_format_is_what_the_published_functions_give(sealed: bytes) -> None:
    """RFC 9106 (Argon2id) and NIST SP 800-38D (GCM), put together by hand from the first line."""
    line, _newline, rest = sealed.partition(b"\n")
    head = json.loads(line)
    both = Argon2id(
        salt=bytes.fromhex(head["salt"]),
        length=48,
        iterations=head["passes"],
        lanes=head["lanes"],
        memory_cost=head["memory_kib"],
    ).derive(PASSPHRASE.encode())
    assert both[32:].hex() == head["check"]
    content = AESGCM(both[:32]).decrypt(rest[:12], rest[12:-32], line + b"\n")
    assert json.loads(content)["facts"] == {"petitioner": {"name": SECRET}}


def test_the_usual_cost_is_the_one_recommended_for_small_memory() -> None:
    """RFC 9106, section 4, second recommended option: t=3, p=4, m=2^16 KiB, 128-bit salt."""
    assert Cost() == Cost(memory_kib=2**16, passes=3, lanes=4)
    assert Cost().bearable


def test_every_save_has_another_nonce_and_other_bytes(seal: Seal) -> None:
    saves = [seal.close(b"same") for _ in range(200)]
    starts = {save.partition(b"\n")[2][:12] for save in saves}
    assert len(starts) == len(set(saves)) == 200


def test_two_seals_of_one_passphrase_share_nothing() -> None:
    one, two = (json.loads(Seal.new(PASSPHRASE, QUICK).close(b"").partition(b"\n")[0]) for _ in range(2))
    assert one["salt"] != two["salt"]
    assert one["check"] != two["check"]


def test_the_key_shows_in_no_text(seal: Seal) -> None:
    assert PASSPHRASE not in repr(seal) + str(seal)
    assert not hasattr(seal, "__dict__")
    assert repr(seal).startswith("<firstpaper")


def test_passphrases_are_tried_in_turn_and_none_after_the_right_one(path: Path, sealed: bytes) -> None:
    def typed():
        yield "wrong"
        yield PASSPHRASE
        raise AssertionError("asked again")

    assert unseal(path, sealed, typed())[0] == FILE.to_json().encode()


@pytest.mark.parametrize("typed", ["Zoë's  café", "Zoe\u0308's  cafe\u0301", "Zoë's\u00a0 café"])
def test_a_passphrase_is_the_same_however_the_keyboard_writes_it(path: Path, typed: str) -> None:
    """RFC 8265, OpaqueString: NFC, and every space is the plain space."""
    data = Seal.new("Zoë's  café", QUICK).close(b"content")
    assert unseal(path, data, [typed])[0] == b"content"


@pytest.mark.parametrize(
    "wrong", ["", "marble otter seven violin", PASSPHRASE.upper(), PASSPHRASE + " ", "\ud800"]
)
def test_another_passphrase_is_a_wrong_one(path: Path, sealed: bytes, wrong: str) -> None:
    assert told(path, sealed, wrong) is WrongPassphrase


def test_without_anybody_to_ask_it_says_so(path: Path, sealed: bytes) -> None:
    with pytest.raises(CaseFileSealed, match="--passphrase-from"):
        CaseFile.load(path)


def test_every_flipped_byte_is_damage_and_no_passphrase_is_asked_for_it(path: Path, sealed: bytes) -> None:
    def never():
        raise AssertionError("asked for a passphrase")
        yield ""

    for place in range(len(sealed)):
        flipped = bytearray(sealed)
        flipped[place] ^= 0x41
        with pytest.raises(CaseFileDamaged):
            unseal(path, bytes(flipped), never())


def test_every_byte_changed_by_a_forger_is_told_and_never_opens(path: Path, sealed: bytes) -> None:
    """The last bytes are made right, so that only the passphrase and the proof stand in the way."""
    end = sealed.index(b"\n") + 1
    check = range(sealed.index(b'"check"') + 10, end - 3)
    seen: dict[str, int] = {}
    for place in [*range(0, end, 3), *range(end, len(sealed) - 32)]:
        flipped = bytearray(sealed)
        flipped[place] ^= 0x01
        found = told(path, summed(bytes(flipped)))
        seen[found.code] = seen.get(found.code, 0) + 1
        if place >= end:
            assert found is SealBroken
        elif place in check:
            assert found in (WrongPassphrase, CaseFileDamaged)
    assert set(seen) <= {"seal_broken", "wrong_passphrase", "case_file_damaged", "seal_too_new"}
    assert seen["seal_broken"] == len(sealed) - 32 - end


@pytest.mark.parametrize("kept", [0, 1, 9, 10, 60, 150, 230, 300, -33, -32, -1])
def test_a_file_that_breaks_off_is_damage(path: Path, sealed: bytes, kept: int) -> None:
    assert told(path, sealed[:kept]) is CaseFileDamaged


def test_a_file_with_something_after_it_is_damage(path: Path, sealed: bytes) -> None:
    assert told(path, sealed + b"\0") is CaseFileDamaged


def test_content_of_another_file_with_the_same_passphrase_does_not_fit(path: Path, sealed: bytes) -> None:
    other = Seal.new(PASSPHRASE, QUICK).close(b"other")
    mixed = sealed.partition(b"\n")[0] + b"\n" + other.partition(b"\n")[2]
    assert told(path, summed(mixed)) is SealBroken


@pytest.mark.parametrize(
    "changed",
    [
        {"memory_kib": 100 * 1024 * 1024},
        {"memory_kib": 2**63},
        {"memory_kib": 1},
        {"memory_kib": "65536"},
        {"memory_kib": True},
        {"passes": 10**9},
        {"passes": 0},
        {"passes": -1},
        {"lanes": 10**6},
        {"lanes": 1.5},
        {"salt": ""},
        {"salt": "zz" * 16},
        {"salt": "00" * 400},
        {"salt": 5},
        {"check": "00"},
        {"check": None},
    ],
)
def test_a_first_line_that_asks_for_too_much_or_makes_no_sense_is_refused_at_once(
    path: Path, sealed: bytes, changed: dict[str, object]
) -> None:
    before = time.monotonic()
    assert told(path, with_head(sealed, **changed)) is CaseFileDamaged
    assert time.monotonic() - before < 0.05


@pytest.mark.parametrize("changed", [{"sealed": 2}, {"cipher": "AES-512"}, {"kdf": "Argon3"}])
def test_a_newer_kind_of_seal_is_refused_politely(
    path: Path, sealed: bytes, changed: dict[str, object]
) -> None:
    assert told(path, with_head(sealed, **changed)) is SealTooNew


@pytest.mark.parametrize(
    "line", [b'{"sealed":', b'{"sealed": 1}', b'{"sealed": []}', b'{"sealed":' + b"[" * 900]
)
def test_a_first_line_of_another_hand_is_damage(path: Path, sealed: bytes, line: bytes) -> None:
    assert told(path, summed(line + b"\n" + bytes(200))) in (CaseFileDamaged, SealTooNew)


def test_sealed_content_that_is_no_case_is_damage(path: Path, seal: Seal) -> None:
    for content in (b"", b"[]", b"{}", b'{"firstpaper": 1}', b"\xff"):
        path.write_bytes(seal.close(content))
        with pytest.raises(CaseFileDamaged):
            CaseFile.load(path, [PASSPHRASE])


def test_a_computer_that_cannot_do_it_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    def too_little(*_args: object, **_kwargs: object) -> None:
        raise MemoryError

    monkeypatch.setattr("cryptography.hazmat.primitives.kdf.argon2.Argon2id", too_little)
    with pytest.raises(SealingUnavailable):
        Seal.new(PASSPHRASE)


# --- an open case -----------------------------------------------------------------------------------


def test_a_case_sealed_before_its_first_save_is_never_on_disk_in_the_open(path: Path, seal: Seal) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.seal_with(seal)
        assert not path.exists()
        opened.keep(FILE)
    for one in path.parent.rglob("*"):
        assert not one.is_file() or SECRET.encode() not in one.read_bytes()
    assert load(path, [PASSPHRASE]) == FILE


def test_sealing_leaves_nothing_in_the_open(path: Path, seal: Seal) -> None:
    with OpenCase(path, begin=True) as opened:
        opened.keep(FILE)
        opened.keep(FILE.with_case(FILE.case.with_fact("petitioner.phone", "5")))
        inode = path.open("rb")
        opened.seal_with(seal)
    assert SECRET.encode() not in inode.read()
    inode.close()
    for one in path.parent.rglob("*"):
        assert not one.is_file() or SECRET.encode() not in one.read_bytes()


def test_later_saves_need_no_passphrase_again_and_stay_sealed(path: Path, sealed: bytes) -> None:
    with OpenCase(path, passphrases=[PASSPHRASE]) as opened:
        assert opened.sealed
        opened.keep(FILE.with_case(FILE.case.with_fact("petitioner.phone", "5")))
    data = read_case_file(path)
    assert data.partition(b"\n")[0] == sealed.partition(b"\n")[0]
    assert load(path, [PASSPHRASE]).case.petitioner.phone == "5"


def test_unsealing_opens_the_file_and_its_copies(path: Path, sealed: bytes) -> None:
    with OpenCase(path, passphrases=[PASSPHRASE]) as opened:
        opened.keep(FILE)
        opened.seal_with(None)
    assert CaseFile.load(path) == FILE
    assert [CaseFile.load(copy) for copy in (path.with_name("home.case.copies")).iterdir()] == [FILE]


def test_another_passphrase_shuts_out_the_one_before(path: Path, sealed: bytes) -> None:
    with OpenCase(path, passphrases=[PASSPHRASE]) as opened:
        opened.keep(FILE)
        opened.seal_with(Seal.new("another", QUICK))
    for one in (path, *path.with_name("home.case.copies").iterdir()):
        assert told(one, one.read_bytes()) is WrongPassphrase
        assert CaseFile.load(one, ["another"]) == FILE


def test_a_failed_sealing_leaves_the_file_and_the_copies_as_they_were(
    path: Path, seal: Seal, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_args: object) -> None:
        raise OSError(28, "no room")

    with OpenCase(path, begin=True) as opened:
        opened.keep(FILE)
        before = path.read_bytes()
        with monkeypatch.context() as patched:
            patched.setattr("os.fsync", full)
            with pytest.raises(UserError):
                opened.seal_with(seal)
        assert not opened.sealed
        assert path.read_bytes() == before
        opened.keep(FILE)
    assert CaseFile.load(path) == FILE


def test_the_lock_library_is_not_loaded_for_a_plain_file(path: Path) -> None:
    FILE.save(path)
    ask = (
        "import sys; from pathlib import Path; from firstpaper.casefile import load; "
        "load(Path(sys.argv[1])); print('cryptography' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", ask, path], capture_output=True, text=True, check=True)
    assert done.stdout == "False\n"
