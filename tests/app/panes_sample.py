"""A small sheet with made-up answers, so that the panes can be tried without solving anything."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QWidget

from app.document import Document
from app.selection import Selection
from app.theme import load_fonts
from app.viewpoint import Viewpoint
from core.assess import Assessment
from core.catalogue import load_builtin
from core.results import (
    BranchPoint,
    Condition,
    Finding,
    HeaterPoint,
    OperatingPoint,
    SupplyPoint,
    sentence,
)
from core.sheet import Chassis, Resistor, Sheet, Tube, Winding, Wire

SHEET = Sheet(
    title="Rehearsal amplifier",
    parts=(
        Winding(id="T1", rated_v=6.3, rated_a=3.0),
        Tube(id="V1", type="EL84", at=(200, 0)),
        Tube(id="V2", type="EL84", at=(400, 0)),
        Tube(id="V10", type="ECC83", at=(600, 0)),
        Resistor(id="R1", ohm=0.082, rated_w=2.0),
        Chassis(id="E1", at=(0, 200)),
    ),
    wires=(
        Wire(id="w1", start="T1.a", end="V1.4", awg=18, length_m=0.3),
        Wire(id="w2", start="T1.b", end="V1.5", awg=18, length_m=0.3),
        Wire(id="w3", start="V10.4", end="V10.5"),
    ),
)


def _heater(owner: str, pins: str, volts: float, amps: float, rated_a: float) -> HeaterPoint:
    return HeaterPoint(owner, pins, volts, amps, volts * amps, 6.3, rated_a, 1438.4, 1049.6)


def point(name: str, mains_v: float, factor: float, cold: bool = False) -> OperatingPoint:
    """An operating point whose volts are ``factor`` times the rating, more or less."""
    return OperatingPoint(
        Condition(name, mains_v, cold),
        heaters={
            "V1": (_heater("V1", "4-5", 6.3 * factor, 0.76, 0.76),),
            "V2": (_heater("V2", "4-5", 6.29 * factor, 0.759, 0.76),),
            "V10": (
                _heater("V10", "4-9", 6.2 * factor, 0.149, 0.15),
                _heater("V10", "9-5", 0.0, 0.0, 0.15),
            ),
        },
        supplies={"T1": SupplyPoint(6.45 * factor, 2.706, 17.5 * factor, 3.0)},
        branches={"w1": BranchPoint(-0.0171, 2.706, 0.0463), "w2": BranchPoint(0.0171, 2.706, 0.0463)},
    )


def finding(
    rule: str,
    severity: str,
    where: tuple[str, ...],
    condition: str | None = None,
    value: float | None = None,
    limit: float | None = None,
) -> Finding:
    """A finding whose title names its rule and value."""
    return Finding(
        rule,
        severity,  # type: ignore[arg-type]
        where,
        sentence("{rule} {value}", rule=rule, value=value),
        sentence("It is so at {where}.", where=", ".join(where)),
        sentence("Mend {where}.", where=where[0]),
        condition,
        value,
        limit,
        "V",
        "a book",
    )


FINDINGS = (
    finding("rating-unverified", "note", ("V10",)),
    finding("supply-margin", "caution", ("T1",), "nominal", 90.0, 80.0),
    finding("heater-voltage", "fault", ("V1", "V2"), "high mains", 6.96, 6.93),
    finding("heater-voltage", "fault", ("V1", "V2"), "nominal", 7.10, 6.93),
    finding("half-heated", "fault", ("V10",), "low mains"),
)


def assessment(sheet: Sheet, findings: tuple[Finding, ...] = FINDINGS) -> Assessment:
    """Made-up answers for a sheet."""
    mains = sheet.mains
    points = {
        "nominal": point("nominal", mains.nominal_v, 1.0),
        "low mains": point("low mains", mains.low_v, 0.85),
        "high mains": point("high mains", mains.high_v, 1.12),
        "cold": point("cold", mains.nominal_v, 0.7, cold=True),
    }
    return Assessment(sheet, points, (), findings)


@dataclass
class Desk:
    """A document with what the panes share, and the widgets that must stay alive."""

    document: Document
    selection: Selection
    viewpoint: Viewpoint

    def solve(self, findings: tuple[Finding, ...] = FINDINGS) -> None:
        """Let the made-up answers arrive for the sheet as it is."""
        self.document.take_assessment(assessment(self.document.sheet, findings))

    @property
    def undo_text(self) -> str:
        """What the menu would show after the word Undo."""
        return self.document.undo_stack.undoText()


def desk(parent: QWidget | None = None) -> Desk:
    """A fresh document on the sample sheet, not solved yet."""
    load_fonts()
    document = Document(SHEET, load_builtin(), parent)
    return Desk(document, Selection(parent), Viewpoint(SHEET.mains.nominal_v, parent))
