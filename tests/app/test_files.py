"""Atomic writing: the old file or the new one, never another."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest

from app.files import WriteError, write_atomically


def test_new_and_existing_files_get_exactly_the_bytes(tmp_path: Path) -> None:
    target = tmp_path / "a"
    write_atomically(target, b"one")
    write_atomically(target, b"two")
    assert target.read_bytes() == b"two"
    assert os.listdir(tmp_path) == ["a"]


def test_mode_and_symbolic_link_stay(tmp_path: Path) -> None:
    real = tmp_path / "real"
    real.write_bytes(b"old")
    real.chmod(0o640)
    link = tmp_path / "link"
    link.symlink_to(real)
    write_atomically(link, b"new")
    assert link.is_symlink()
    assert real.read_bytes() == b"new"
    assert real.stat().st_mode & 0o777 == 0o640


@pytest.mark.parametrize("call", ["fsync", "fdopen"])
def test_a_full_disk_leaves_the_old_file_and_no_stray(tmp_path: Path, monkeypatch, call: str) -> None:
    target = tmp_path / "a"
    target.write_bytes(b"old")

    def fail(*_args: object, **_kinds: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(os, call, fail)
    with pytest.raises(WriteError, match="No space left"):
        write_atomically(target, b"new")
    assert target.read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["a"]


def test_a_failed_replacement_leaves_the_old_file_and_no_stray(tmp_path: Path, monkeypatch) -> None:
    target = tmp_path / "a"
    target.write_bytes(b"old")

    def fail(*_args: object) -> None:
        raise PermissionError(errno.EACCES, "no")

    monkeypatch.setattr(Path, "replace", fail)
    with pytest.raises(WriteError, match="does not allow writing"):
        write_atomically(target, b"new")
    assert target.read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["a"]


def test_a_missing_folder_is_named(tmp_path: Path) -> None:
    with pytest.raises(WriteError, match="does not exist"):
        write_atomically(tmp_path / "none" / "a", b"x")
