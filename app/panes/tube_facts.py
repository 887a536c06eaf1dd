"""What the catalogue knows of a tube type, each fact with how sure it is and where it comes from."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from app.panes.figures import exact_text
from app.panes.words import certainty_words
from app.speech import spoken
from core.catalogue.types import Status, TubeType
from core.units import THIN_SPACE, Dimension

_V, _A, _OHM = Dimension.VOLTS, Dimension.AMPS, Dimension.OHMS
_RANK: tuple[Status, ...] = ("seen", "second-hand", "disputed", "memory")


@dataclass(frozen=True)
class Fact:
    """One fact: label, value, certainty, its words, and its source."""

    label: str
    value: str
    status: Status
    source: str

    @property
    def certainty(self) -> str:
        """How sure the value is, in plain words."""
        return certainty_words(self.status)


def facts_of(found: TubeType) -> tuple[Fact, ...]:
    """The heater facts of a type, sections first; what nobody published is left out."""
    return (*_section_facts(found), *_tolerance_facts(found), *_insulation_facts(found), *_other_facts(found))


def _fact(found: TubeType, label: str, value: str, *fields: str) -> Fact:
    """A fact as sure as the least sure of the fields it is made of."""
    statuses = [found.status_of(field) for field in fields]
    worst = max(statuses, key=_RANK.index)
    sources = dict.fromkeys(source for field in fields if (source := found.source_of(field)))
    return Fact(label, value, worst, "; ".join(map(spoken, sources)))


def _section_facts(found: TubeType) -> list[Fact]:
    label = QCoreApplication.translate("facts", "section {pins}")
    return [
        _fact(
            found,
            label.format(pins=section.name),
            f"{exact_text(section.rated_v, _V)} {exact_text(section.rated_a, _A)}",
            f"{section.name} volts",
            f"{section.name} amps",
        )
        for section in found.sections
    ]


def _tolerance_facts(found: TubeType) -> list[Fact]:
    facts = []
    if found.low_v_pct is not None and found.high_v_pct is not None:
        low = exact_text(-abs(found.low_v_pct), Dimension.PERCENT)
        high = f"+{exact_text(found.high_v_pct, Dimension.PERCENT)}"
        label = QCoreApplication.translate("facts", "volts may be off by")
        facts.append(_fact(found, label, f"{low} / {high}", "low_v_pct", "high_v_pct"))
    if found.tolerance_a_pct is not None:
        label = QCoreApplication.translate("facts", "current may be off by")
        value = f"±{exact_text(found.tolerance_a_pct, Dimension.PERCENT)}"
        facts.append(_fact(found, label, value, "tolerance_a_pct"))
    if found.spread_low_a is not None and found.spread_high_a is not None:
        label = QCoreApplication.translate("facts", "made between")
        value = f"{exact_text(found.spread_low_a, _A)} – {exact_text(found.spread_high_a, _A)}"
        facts.append(_fact(found, label, value, "spread_low_a", "spread_high_a"))
    return facts


def _insulation_facts(found: TubeType) -> list[Fact]:
    names = (
        ("hk_positive_peak_v", QCoreApplication.translate("facts", "heater above cathode, peak")),
        ("hk_positive_dc_v", QCoreApplication.translate("facts", "heater above cathode, DC")),
        ("hk_negative_peak_v", QCoreApplication.translate("facts", "heater below cathode, peak")),
        ("hk_negative_dc_v", QCoreApplication.translate("facts", "heater below cathode, DC")),
    )
    facts = [
        _fact(found, label, exact_text(value, _V), name)
        for name, label in names
        if (value := getattr(found, name)) is not None
    ]
    if found.hk_max_ohm is not None:
        label = QCoreApplication.translate("facts", "heater to cathode, at most")
        facts.append(_fact(found, label, exact_text(found.hk_max_ohm, _OHM), "hk_max_ohm"))
    return facts


def _other_facts(found: TubeType) -> list[Fact]:
    facts = []
    if found.warmup_s is not None:
        label = QCoreApplication.translate("facts", "warm-up time")
        facts.append(_fact(found, label, exact_text(found.warmup_s, Dimension.SECONDS), "warmup_s"))
    if found.cold_ratio is not None:
        label = QCoreApplication.translate("facts", "hot to cold")
        value = f"{exact_text(found.cold_ratio, Dimension.NUMBER)}{THIN_SPACE}: 1"
        facts.append(_fact(found, label, value, "cold_ratio"))
    return facts
