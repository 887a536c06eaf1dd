"""What the add field makes of a text."""

from __future__ import annotations

import pytest

from app.canvas.adding import offers
from app.canvas.operations import part_from
from core.catalogue import load_builtin


def first(text: str):
    found = offers(text, load_builtin())
    return found[0].part_template if found else None


@pytest.mark.parametrize(
    ("text", "template"),
    [
        ("EL84", {"kind": "tube", "type": "EL84"}),
        ("ecc83", {"kind": "tube", "type": "ECC83"}),
        ("6V6", {"kind": "tube", "type": "6V6"}),
        ("10R", {"kind": "resistor", "ohm": 10.0}),
        ("4k7", {"kind": "resistor", "ohm": 4700.0}),
        ("10 ohm", {"kind": "resistor", "ohm": 10.0}),
        ("0R22 5W", {"kind": "resistor", "ohm": 0.22, "rated_w": 5.0}),
        ("6.3 V 3 A", {"kind": "winding", "rated_v": 6.3, "rated_a": 3.0}),
        ("6,3V 3A", {"kind": "winding", "rated_v": 6.3, "rated_a": 3.0}),
        ("6.3V 5A ct", {"kind": "winding", "rated_v": 6.3, "rated_a": 5.0, "centre_tap": True}),
        ("winding", {"kind": "winding", "rated_v": 6.3, "rated_a": 3.0}),
        ("12 V 5 A dc", {"kind": "dc_supply", "set_v": 12.0, "limit_a": 5.0}),
        ("fuse 1A", {"kind": "fuse", "rated_a": 1.0}),
        ("500 mA fuse", {"kind": "fuse", "rated_a": 0.5}),
        ("lamp #47", {"kind": "lamp", "type": "#47"}),
        ("chassis", {"kind": "chassis"}),
        ("switch", {"kind": "switch"}),
        ("joint", {"kind": "joint"}),
        ("47 µF", {"kind": "capacitor", "farad": 47e-6}),
        ("battery 6 V", {"kind": "battery", "emf_v": 6.0, "internal_ohm": 0.0}),
        ("hum", {"kind": "balance", "ohm": 100.0}),
        ("mains", {"kind": "mains_feed"}),
        ("", None),
        ("   ", None),
        ("zzzz", None),
    ],
)
def test_first_offer(text, template):
    assert first(text) == template


def test_relay_is_offered_with_figures_that_a_relay_needs():
    template = first("relay")
    assert template["kind"] == "relay"
    assert template["coil_v"] > 0
    assert template["coil_ohm"] > 0


def test_volts_and_amps_offer_every_supply_that_has_both():
    kinds = [offer.part_template["kind"] for offer in offers("12.6 V 2 A", load_builtin())]
    assert kinds[:2] == ["winding", "dc_supply"]
    assert "lamp" in kinds


@pytest.mark.parametrize(
    "text",
    [
        "e",
        "6",
        "relay",
        "dc",
        "lamp",
        "10",
        "thermistor",
        "ntc 10R",
        "0 V",
        "-5 V",
        "9" * 80,
        "1e400 V",
        "µ",
        "V",
    ],
)
def test_every_offer_makes_a_part(text):
    for offer in offers(text, load_builtin()):
        part = part_from(offer.part_template, "X1", (20.0, 40.0))
        assert part.kind == offer.part_template["kind"]
        assert part.at == (20.0, 40.0)
        assert offer.label


def test_offers_are_few_and_different():
    found = offers("6", load_builtin())
    assert 0 < len(found) <= 12
    assert len({(offer.label, offer.detail) for offer in found}) == len(found)
