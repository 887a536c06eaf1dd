"""Damaged files: whatever the damage, the answer is a sheet or a SheetError, never another exception.

``HEATERLOOM_FUZZ`` sets the number of damaged files; the default keeps the suite quick.
"""

from __future__ import annotations

import os
import random
from collections.abc import Callable
from pathlib import Path

import pytest

from core.errors import SheetError
from core.samples import sample_bytes, sample_names
from core.storage import dump, load

DATA = Path(__file__).parents[1] / "data"
ROUNDS = int(os.environ.get("HEATERLOOM_FUZZ", "20000"))

SAMPLES = (
    (DATA / "sheet_v1.heaterloom").read_bytes(),
    *(sample_bytes(name) for name in sample_names()),
    b'{"format":"heaterloom-sheet","version":1,"title":"\xc3\xa4\\u00e4","types":[{"designation":"X","sections":'
    b'[{"pins":["4","5"],"rated_v":6.3,"rated_a":0.3}]}],"parts":[{"id":"K1","kind":"relay","coil_v":12,'
    b'"coil_ohm":400,"turn":90},{"id":"U1","kind":"dc_supply","set_v":6.3,"limit_a":1,"overload":"hiccup"},'
    b'{"id":"B1","kind":"balance","ohm":100,"wiper":0.5}],"wires":[{"id":"w1","from":"U1.+","to":"K1.c1"}]}',
)
TOKENS = (
    *(
        b"NaN",
        b"-Infinity",
        b"1e999",
        b"-",
        b"null",
        b"true",
        b"[",
        b"]",
        b"{",
        b"}",
        b'"',
        b"\\",
        b"\\ud800",
    ),
    *(b",", b":", b"\xff", b"\x00", b"\xef\xbb\xbf", b"9" * 400, b'"kind"', b'"id":"V1",', b"[" * 3000),
)


def flip(data: bytes, rng: random.Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + bytes((data[at] ^ (1 << rng.randrange(8)),)) + data[at + 1 :]


def overwrite(data: bytes, rng: random.Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + rng.randbytes(1) + data[at + 1 :]


def truncate(data: bytes, rng: random.Random) -> bytes:
    return data[: rng.randrange(len(data))]


def cut(data: bytes, rng: random.Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + data[at + rng.randrange(1, 40) :]


def repeat(data: bytes, rng: random.Random) -> bytes:
    at = rng.randrange(len(data))
    return data[: at + rng.randrange(1, 80)] + data[at:]


def insert(data: bytes, rng: random.Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + rng.choice(TOKENS) + data[at:]


def change_digit(data: bytes, rng: random.Random) -> bytes:
    digits = [at for at, byte in enumerate(data) if 48 <= byte <= 57]
    at = rng.choice(digits)
    return data[:at] + rng.choice((b"0", b"9", b"-1", b"1e9", b"1.5", b"99999")) + data[at + 1 :]


DAMAGES = (flip, overwrite, truncate, cut, repeat, insert, change_digit)


@pytest.mark.parametrize("damage", DAMAGES)
def test_a_damaged_file_is_read_or_refused(damage: Callable[[bytes, random.Random], bytes]) -> None:
    rng = random.Random(f"heaterloom {damage.__name__}")
    refused = 0
    for _ in range(ROUNDS // len(DAMAGES)):
        data = damage(rng.choice(SAMPLES), rng)
        if rng.random() < 0.3 and data:
            data = rng.choice((flip, insert, cut))(data, rng)
        try:
            sheet = load(data)
        except SheetError as error:
            refused += 1
            assert error.problems
            str(error).encode()
        else:
            assert load(dump(sheet)) == sheet
    assert refused
