"""What stands in for a field that is left empty: the catalogue's value, or the default, said to be one."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QCoreApplication

from app.panes.figures import exact_text
from core.catalogue import Catalogue
from core.sheet import AnyPart, Fuse, Lamp, RectifiedSupply, Relay, Sheet, Thermistor, Tube, Winding
from core.units import FIELD_DIMENSIONS, Dimension

_COLD_RATIO = 7.0


def stand_in(sheet: Sheet, catalogue: Catalogue, part: AnyPart, name: str, default: Any) -> str:
    """The greyed text of an empty field: ``10 % (default)``, ``6.3 V (catalogue)`` or ``not given``."""
    if default is not None:
        shown = _shown(name, default)
        return QCoreApplication.translate("fields", "{value} (default)").format(value=shown)
    value, why = _implied(sheet, catalogue, part, name)
    if value is None:
        return QCoreApplication.translate("fields", "not given")
    return f"{_shown(name, value)} ({why})"


def _shown(name: str, value: Any) -> str:
    if isinstance(value, str):
        return value
    return exact_text(float(value), FIELD_DIMENSIONS.get(name, Dimension.NUMBER))


def _implied(sheet: Sheet, catalogue: Catalogue, part: AnyPart, name: str) -> tuple[float | None, str]:
    if isinstance(part, Tube):
        return _implied_by_type(catalogue, part, name)
    if isinstance(part, Relay):
        return _implied_by_coil(part, name)
    if isinstance(part, Winding | RectifiedSupply) and name == "rated_mains_v":
        return sheet.mains.nominal_v, QCoreApplication.translate("fields", "nominal mains")
    found: object = None
    if isinstance(part, Lamp) and part.type:
        found = catalogue.lamp(part.type)
    elif isinstance(part, Thermistor) and part.type:
        found = catalogue.thermistor(part.type)
    elif isinstance(part, Fuse):
        found = catalogue.fuse(part.rated_a, part.speed)
    return getattr(found, name, None), QCoreApplication.translate("fields", "catalogue")


def _implied_by_coil(relay: Relay, name: str) -> tuple[float | None, str]:
    if name == "pull_in_v":
        return _rounded(0.75 * relay.coil_v), QCoreApplication.translate("fields", "75 % of coil volts")
    if name == "drop_out_v":
        return _rounded(0.1 * relay.coil_v), QCoreApplication.translate("fields", "10 % of coil volts")
    return None, ""


def _rounded(value: float) -> float:
    """A share of a figure without what rounding leaves in its last digits."""
    return float(f"{value:.9g}")


def _implied_by_type(catalogue: Catalogue, tube: Tube, name: str) -> tuple[float | None, str]:
    from_catalogue = QCoreApplication.translate("fields", "catalogue")
    found = catalogue.tube(tube.type)
    if found is None:
        return None, ""
    if name in ("rated_v", "rated_a") and len(found.sections) == 1:
        return getattr(found.sections[0], name), from_catalogue
    if name == "cold_ratio":
        if found.cold_ratio is None:
            return _COLD_RATIO, QCoreApplication.translate("fields", "default")
        return found.cold_ratio, from_catalogue
    if name == "warmup_s":
        return found.warmup_s, from_catalogue
    return None, ""
