"""What the parts list offers: every kind with ready figures, and every type of the catalogue."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide6.QtCore import QCoreApplication

from app.speech import spoken
from core.catalogue import Catalogue
from core.catalogue.summary import rating_text
from core.units import THIN_SPACE

translate = QCoreApplication.translate


@dataclass(frozen=True)
class Offer:
    """One line of the list: its name, a few words about it, more words it is found by, and the part it adds.

    ``part`` is a part of the sheet file without ``id`` and ``at``.
    """

    name: str
    about: str
    found_by: str
    part: dict[str, Any]
    is_other_name: bool = False


@dataclass(frozen=True)
class Shelf:
    """Offers under one heading."""

    name: str
    offers: tuple[Offer, ...]


def shelves(catalogue: Catalogue) -> tuple[Shelf, ...]:
    """Everything that can be added: supplies and small parts first, as they are few."""
    return (
        Shelf(translate("stock", "Supplies"), _supplies()),
        Shelf(translate("stock", "Droppers and control"), _passives()),
        Shelf(translate("stock", "Reference and joints"), _references()),
        Shelf(translate("stock", "Tubes"), _tubes(catalogue)),
        Shelf(translate("stock", "Panel lamps"), _lamps(catalogue)),
        Shelf(translate("stock", "Thermistors"), _thermistors(catalogue)),
        Shelf(translate("stock", "Relays"), _relays(catalogue)),
    )


def _offer(name: str, about: str, kind: str, **fields: Any) -> Offer:
    return Offer(name, about, f"{name} {about} {kind}".casefold(), {"kind": kind, **fields})


def _volts_amps(volts: float, amps: float) -> str:
    return f"{volts:g}{THIN_SPACE}V {amps:g}{THIN_SPACE}A"


def _supplies() -> tuple[Offer, ...]:
    winding, tapped = translate("stock", "Winding"), translate("stock", "Winding, centre tap")
    windings = [
        _offer(winding, _volts_amps(volts, amps), "winding", rated_v=volts, rated_a=amps)
        for volts, amps in ((6.3, 2.0), (6.3, 4.0), (12.6, 1.0), (5.0, 3.0))
    ]
    return (
        *windings,
        _offer(tapped, _volts_amps(6.3, 3), "winding", rated_v=6.3, rated_a=3.0, centre_tap=True),
        _offer(translate("stock", "DC supply"), _volts_amps(12.6, 2), "dc_supply", set_v=12.6, limit_a=2.0),
        _offer(
            translate("stock", "Rectified supply"),
            translate("stock", "bridge") + f", {_volts_amps(9, 2)}",
            "rectified_supply",
            rated_v=9.0,
            rated_a=2.0,
        ),
        _offer(translate("stock", "Battery"), f"6{THIN_SPACE}V", "battery", emf_v=6.0, internal_ohm=0.02),
        _offer(translate("stock", "Mains feed"), translate("stock", "string across the mains"), "mains_feed"),
    )


def _passives() -> tuple[Offer, ...]:
    ohm = f"{THIN_SPACE}Ω"
    return (
        _offer(translate("stock", "Resistor"), f"1{ohm} 5{THIN_SPACE}W", "resistor", ohm=1.0, rated_w=5.0),
        _offer(translate("stock", "Resistor"), f"100{ohm}", "resistor", ohm=100.0),
        _offer(translate("stock", "Capacitor"), f"4.7{THIN_SPACE}µF", "capacitor", farad=4.7e-6),
        _offer(translate("stock", "Diode"), translate("stock", "silicon"), "diode"),
        _offer(translate("stock", "Fuse"), f"2{THIN_SPACE}A", "fuse", rated_a=2.0),
        _offer(translate("stock", "Switch"), translate("stock", "closed"), "switch"),
    )


def _references() -> tuple[Offer, ...]:
    return (
        _offer(translate("stock", "Chassis"), translate("stock", "the reference"), "chassis"),
        _offer(translate("stock", "Joint"), translate("stock", "tag or splice"), "joint"),
        _offer(translate("stock", "Hum balance"), f"100{THIN_SPACE}Ω", "balance", ohm=100.0),
        _offer(translate("stock", "Elevation"), f"+40{THIN_SPACE}V", "elevation", volts=40.0),
    )


def _tubes(catalogue: Catalogue) -> tuple[Offer, ...]:
    """Every tube type by its designation, and by its other names for those who look for them."""
    offers: list[Offer] = []
    for found in catalogue.tubes.values():
        rating, name = spoken(rating_text(found)), found.designation
        for each in dict.fromkeys((name, *found.equivalents)):
            about = rating if each == name else f"= {name} · {rating}"
            found_by = f"{each} {found.description} tube".casefold() if each == name else each.casefold()
            offers.append(Offer(each, about, found_by, {"kind": "tube", "type": each}, each != name))
    return tuple(offers)


def _lamps(catalogue: Catalogue) -> tuple[Offer, ...]:
    return tuple(
        _offer(name, _volts_amps(found.rated_v, found.rated_a), "lamp", type=found.designation)
        for name, found in catalogue.lamps.items()
    )


def _thermistors(catalogue: Catalogue) -> tuple[Offer, ...]:
    cold = translate("stock", "cold")
    return tuple(
        _offer(name, f"{found.r25_ohm:g}{THIN_SPACE}Ω {cold}", "thermistor", type=found.designation)
        for name, found in catalogue.thermistors.items()
    )


def _relays(catalogue: Catalogue) -> tuple[Offer, ...]:
    return tuple(
        _offer(
            name,
            f"{found.coil_v:g}{THIN_SPACE}V {found.coil_ohm:g}{THIN_SPACE}Ω",
            "relay",
            coil_v=found.coil_v,
            coil_ohm=found.coil_ohm,
            pull_in_v=found.pull_in_v,
            drop_out_v=found.drop_out_v,
        )
        for name, found in catalogue.relays.items()
    )
