"""A small catalogue, and one part of each kind, for the tests of the symbols."""

from __future__ import annotations

from typing import ClassVar, get_args

from core import sheet
from core.catalogue.types import Section, TubeType


def tube_type(name: str, base: str, *pins: tuple[str, str], **more) -> TubeType:
    return TubeType(designation=name, base=base, sections=tuple(Section(p, 6.3, 0.15) for p in pins), **more)


class Shelf:
    """A small catalogue."""

    types: ClassVar = {
        kind.designation: kind
        for kind in (
            tube_type("ECC83", "B9A", ("4", "9"), ("9", "5")),
            tube_type("EL84", "B9A", ("4", "5")),
            tube_type("6SN7", "octal", ("7", "8")),
            tube_type("300B", "UX4", ("1", "4"), heating="direct"),
            tube_type("6021", "leads8", ("3", "6")),
            tube_type("UBL1", "P8A", ("2", "3")),
            tube_type("odd", "nobody knows", ("3", "8")),
            tube_type("lost pin", "B7G", ("3", "9")),
        )
    }

    def tube(self, name: str) -> TubeType | None:
        return self.types.get(name)


SHELF = Shelf()


REQUIRED = {
    "note": {"text": "Heaters first, then the high tension."},
    "tube": {"type": "ECC83"},
    "winding": {"rated_v": 6.3, "rated_a": 3.0, "centre_tap": True},
    "dc_supply": {"set_v": 12.6, "limit_a": 2.0},
    "battery": {"emf_v": 6.0},
    "rectified_supply": {"rated_v": 6.3, "rated_a": 2.0},
    "resistor": {"ohm": 0.22, "rated_w": 2.0},
    "relay": {"coil_v": 12.0, "coil_ohm": 270.0},
    "fuse": {"rated_a": 3.15},
    "capacitor": {"farad": 3.3e-6},
    "balance": {"ohm": 100.0},
    "elevation": {"volts": 40.0},
}


KINDS = {kind.__struct_config__.tag: kind for kind in get_args(sheet.AnyPart)}


def part_of(kind: str, **more):
    return KINDS[kind](id="X1", **REQUIRED.get(kind, {}), **more)
