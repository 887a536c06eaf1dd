"""Every kind of part has a name of its own."""

from __future__ import annotations

from app.kinds import kind_title, kind_word
from core.terminals import TERMINALS


def test_every_kind_has_a_name_of_its_own(qapp) -> None:
    names = [kind_word(kind) for kind in TERMINALS]
    assert len(set(names)) == len(names)
    assert not any("_" in name for name in names)
    assert kind_title("dc_supply") == "DC supply"
    assert kind_title("hum") == "Hum"
