"""Reaching the tool that gathers translations, and speaking a language for the length of a test."""

from __future__ import annotations

import importlib.util
from pathlib import Path
from types import ModuleType

ROOT = Path(__file__).resolve().parents[2]


def translation_tool() -> ModuleType:
    """The module ``.ci/translations.py``."""
    spec = importlib.util.spec_from_file_location("translations", ROOT / ".ci" / "translations.py")
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module
