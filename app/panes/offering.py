"""What is offered while a cell or a field is typed into: types, terminals, sizes and colours."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from PySide6.QtCore import QCoreApplication

from app.canvas.adding import offers
from app.panes.rows import natural
from app.panes.words import gauge_text
from app.theme import INSULATIONS
from core.catalogue import Catalogue
from core.catalogue.wire import table_sizes
from core.sheet import AnyPart, Sheet, Switch, Tube, Wire
from core.terminals import terminal_names

Offering = Callable[[str], list[str]]
_MOST = 24
_LARGEST_AREA = 2.5  # mm²; thicker wire is not found at a socket
_CATALOGUE_KINDS = ("tube", "lamp", "thermistor")


def fitting(names: Iterable[str], text: str) -> list[str]:
    """Names that begin with a text, then those that hold it somewhere; all of them for an empty text."""
    begun = text.strip().casefold()
    known = list(dict.fromkeys(names))
    first = [name for name in known if name.casefold().startswith(begun)]
    return [*first, *(name for name in known if name not in first and begun in name.casefold())][:_MOST]


def types_of(catalogue: Catalogue, kind: str, text: str) -> list[str]:
    """The catalogue's types of a kind that a text may mean."""
    return list(dict.fromkeys(hit.name for hit in catalogue.search(text, _MOST) if hit.kind == kind))


def ratings_of(catalogue: Catalogue, part: AnyPart, text: str) -> list[str]:
    """What may stand in the type or rating of a part."""
    if isinstance(part, Switch):
        return [QCoreApplication.translate("parts", word) for word in ("closed", "open")]
    return types_of(catalogue, part.kind, text) if part.kind in _CATALOGUE_KINDS else []


def terminals_of(sheet: Sheet, catalogue: Catalogue, text: str) -> list[str]:
    """Terminals of the sheet that a text may be the beginning of: those of supplies, heater pins, then the rest."""
    part_text = text.partition(".")[0].strip().casefold()
    found: list[str] = []
    for part in sheet.parts:
        if part.id.casefold().startswith(part_text):
            found += [f"{part.id}.{name}" for name in _names(part, catalogue)]
    return fitting(found, text)


def _names(part: AnyPart, catalogue: Catalogue) -> Iterable[str]:
    if not isinstance(part, Tube):
        return terminal_names(part) or ()
    known = catalogue.tube(part.type)
    sections = () if known is None else known.sections
    return sorted({pin for section in sections for pin in section.pins}, key=natural)


def gauges(text: str) -> list[str]:
    """Sizes of wire as they are typed."""
    awgs, areas = table_sizes()
    sizes = [Wire(id="w", start="", end="", awg=awg) for awg in awgs if awg % 2 == 0]
    sizes += [Wire(id="w", start="", end="", area_mm2=area) for area in areas if area <= _LARGEST_AREA]
    return fitting([gauge_text(wire).replace("\u2009", " ") for wire in sizes], text)


def colours(text: str) -> list[str]:
    """Names of insulation colours."""
    return fitting(INSULATIONS, text)


def pairs(sheet: Sheet, text: str) -> list[str]:
    """Names of the twisted pairs on the sheet."""
    return fitting((wire.twist for wire in sheet.wires if wire.twist), text)


def things_to_add(catalogue: Catalogue, text: str) -> list[str]:
    """Catalogue types that a text may mean, as they are typed to add one."""
    return [offer.label for offer in offers(text, catalogue) if "type" in offer.part_template]


def wires_to_add(sheet: Sheet, catalogue: Catalogue, text: str) -> list[str]:
    """Ways to go on with a text of two terminals: the one that is being typed completed."""
    done, space, begun = text.rpartition(" ")
    return [f"{done}{space}{name}" for name in terminals_of(sheet, catalogue, begun)]
