"""Inputs made from good ones by a seeded hand: cut, doubled, swapped, and spiked with what strangers send.

A fuzzer that follows branches begins with nothing; these begin deep inside a real file.
"""

import csv
import json
from collections.abc import Callable, Iterator
from copy import deepcopy
from functools import cache
from io import StringIO
from random import Random
from typing import Any

import yaml

SPIKES: tuple[str, ...] = (
    "", "\0", "\n\n", "\t", "\x1b[2J\x1b]0;x\x07", "\u202egnp.exe\u2066", "\u200b\u2060\ufeff", "<script>",
    "{{ 7*7 }}",
    "{name}", "%s%n", "=HYPERLINK(1)", "(\\)) Tj", "123-45-6789", "4111 1111 1111 1111", "9" * 30, "-1",
    "1e999", "NaN",
    "9999-12-31", "0001", "2/30/2020", "../../etc/passwd", "C:\\con", "!!python/object:os.system",
    "&a [*a]", "*a", "~",
    "null", "true", "[[[[[[[[[[[[[[[", "{a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: {a: b}}}}}}}}}}}}}",
    "- " * 50, "? ", "---\n", "%YAML 9\n", "\u0301" * 40, "👩‍👩‍👧", "﷽", "İıſ", "N" * 600,
)  # fmt: skip

VALUES: tuple[Any, ...] = (
    None, True, False, 0, -1, 2**63, 10**400, 1.5, float("inf"), "", [], {}, [[]], {"": {}}, ["x"] * 300,
    [[[[[[[[[[[[[]]]]]]]]]]]]], {"firstpaper": 1}, *SPIKES,
)  # fmt: skip


def mangled(seeds: list[bytes], random: Random) -> bytes:
    """One of the seeds with one to four faults in it."""
    data = bytearray(random.choice(seeds))
    for _fault in range(random.randint(1, 4)):
        random.choice(_FAULTS)(data, random)
    return bytes(data)


def few_facts(seed: bytes, random: Random) -> bytes:
    """A good file of a few facts out of a longer one: much faster to read than all of it."""
    told = _all_facts(seed)
    keys = random.sample(sorted(told), min(len(told), random.randint(1, 4)))
    few = {"day_order": "month_first"} | {key: told[key] for key in keys}
    return yaml.safe_dump(few, allow_unicode=True, sort_keys=False).encode()


@cache
def _all_facts(seed: bytes) -> dict[str, Any]:
    return dict(_flat(yaml.load(seed, yaml.BaseLoader)))


def _flat(facts: dict[str, Any], before: str = "") -> Iterator[tuple[str, Any]]:
    for name, value in facts.items():
        if isinstance(value, dict):
            yield from _flat(value, f"{before}{name}.")
        else:
            yield f"{before}{name}", value


def few_cells(seed: bytes, random: Random) -> bytes:
    """A good table of a row or two and a few columns out of a larger one."""
    names, *rows = _all_cells(seed)
    few = rows[: random.randint(1, 2)]
    filled = [at for at in range(1, len(names)) if any(row[at] for row in few)]
    columns = [0, *sorted(random.sample(filled, min(len(filled), random.randint(2, 6))))]
    text = StringIO(newline="")
    csv.writer(text).writerows([row[at] for at in columns] for row in (names, *few))
    return text.getvalue().encode()


@cache
def _all_cells(seed: bytes) -> list[list[str]]:
    return list(csv.reader(StringIO(seed.decode("utf-8-sig"), newline="")))


FEWER: dict[str, Callable[[bytes, Random], bytes]] = {"facts": few_facts, "tables": few_cells}
"""How the good inputs of a reader that takes long become smaller ones."""


def small(name: str, seeds: list[bytes], random: Random) -> bytes:
    """A small good input for a reader."""
    seed = random.choice(seeds)
    return FEWER[name](seed, random) if name in FEWER else seed


def mangled_document(seeds: list[bytes], random: Random) -> bytes:
    """One of the JSON seeds with one to four of its values replaced, removed or renamed."""
    document = json.loads(random.choice(seeds))
    for _fault in range(random.randint(1, 4)):
        holder, key = random.choice(list(_places(document)))
        fault = random.random()
        if fault < 0.7:
            holder[key] = deepcopy(random.choice(VALUES))
        elif fault < 0.85 and isinstance(holder, dict):
            holder[random.choice(SPIKES)] = holder.pop(key)
        else:
            del holder[key]
    return json.dumps(document, ensure_ascii=random.random() < 0.5).encode("utf-8", "replace")


def _places(value: Any) -> Iterator[tuple[Any, Any]]:
    inner = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, one in list(inner):
        yield value, key
        yield from _places(one)
    if not value:
        yield {"": None}, ""


def _cut(data: bytearray, random: Random) -> None:
    start = random.randint(0, len(data))
    del data[start : start + random.randint(0, 40)]


def _doubled(data: bytearray, random: Random) -> None:
    start = random.randint(0, len(data))
    data[start:start] = data[start : start + random.randint(0, 60)]


def _spiked(data: bytearray, random: Random) -> None:
    place = random.randint(0, len(data))
    data[place:place] = random.choice(SPIKES).encode()


def _flipped(data: bytearray, random: Random) -> None:
    if data:
        data[random.randrange(len(data))] ^= 1 << random.randrange(8)


def _line_moved(data: bytearray, random: Random) -> None:
    lines = data.split(b"\n")
    lines.insert(random.randrange(len(lines) + 1), lines.pop(random.randrange(len(lines))))
    data[:] = b"\n".join(lines)


_FAULTS: tuple[Callable[[bytearray, Random], None], ...] = (
    _cut,
    _doubled,
    _spiked,
    _spiked,
    _flipped,
    _line_moved,
)
