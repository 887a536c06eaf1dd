"""One law per kind of element, and how each kind of part becomes branches of the circuit.

A new kind of part is added here and nowhere else in the solver: a function from the part to its branches.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from core.elements import loads, passive, supplies
from core.elements.branch import Branch, Context
from core.sheet import AnyPart

_BRANCHES: dict[str, Callable[[Any, Context], tuple[Branch, ...]]] = {
    "tube": loads.tube_branches,
    "lamp": loads.lamp_branches,
    "winding": supplies.winding_branches,
    "dc_supply": supplies.dc_supply_branches,
    "battery": supplies.battery_branches,
    "mains_feed": supplies.mains_feed_branches,
    "rectified_supply": supplies.rectified_supply_branches,
    "elevation": supplies.elevation_branches,
    "resistor": passive.resistor_branches,
    "thermistor": passive.thermistor_branches,
    "relay": passive.relay_branches,
    "fuse": passive.fuse_branches,
    "capacitor": passive.capacitor_branches,
    "diode": passive.diode_branches,
    "switch": passive.switch_branches,
    "balance": passive.balance_branches,
}


def branches_of(part: AnyPart, context: Context) -> tuple[Branch, ...]:
    """The branches of one part; joints and chassis symbols are only nodes and have none."""
    build = _BRANCHES.get(part.kind)
    return build(part, context) if build else ()
