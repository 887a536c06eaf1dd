"""Findings as cards: the same thing under several conditions is one card that shows the worst of them."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from app.speech import listed, spoken
from core.results import SEVERITIES, Finding, Severity, alike, worst_of

if TYPE_CHECKING:
    from app.mends import MendOffer

_BAND = ("low mains", "nominal", "high mains")
_ORDER = (*_BAND, "cold", "chosen")


@dataclass(frozen=True)
class Card:
    """What one card of the findings pane shows, as plain text."""

    rule: str
    severity: Severity
    where: tuple[str, ...]
    conditions: tuple[str, ...]
    title: str
    says: str
    mend: str
    footer: str
    mends: tuple[MendOffer, ...] = ()

    @property
    def text(self) -> Card:
        """The card without its mends, which may come later."""
        return replace(self, mends=())


def severity_word(severity: Severity) -> str:
    """The word for a severity."""
    return {
        "fault": QCoreApplication.translate("findings", "Fault"),
        "caution": QCoreApplication.translate("findings", "Caution"),
        "note": QCoreApplication.translate("findings", "Note"),
    }[severity]


def spoken_card(card: Card) -> str:
    """Everything on a card for a screen reader, with the mends that can be chosen."""
    text = f"{severity_word(card.severity)}: {card.title}. {card.says} {card.mend}"
    if not card.mends:
        return text
    names = "; ".join(offer.label for offer in card.mends)
    return QCoreApplication.translate("findings", "{card} To choose from: {mends}.").format(
        card=text, mends=names
    )


def conditions_in(findings: Iterable[Finding]) -> tuple[str, ...]:
    """The names of the conditions that the findings speak of, nominal first."""
    named = {finding.condition for finding in findings if finding.condition is not None}
    order = ("nominal", "low mains", "high mains", "after a dip", "cold", "chosen")
    return (*(name for name in order if name in named), *sorted(named.difference(order)))


def condition_word(name: str) -> str:
    """A condition by itself."""
    translate = QCoreApplication.translate
    return {
        "nominal": translate("findings", "nominal"),
        "low mains": translate("findings", "low mains"),
        "high mains": translate("findings", "high mains"),
        "after a dip": translate("findings", "after a dip"),
        "cold": translate("findings", "cold"),
        "chosen": translate("findings", "chosen"),
    }.get(name, name)


def conditions_text(names: Iterable[str]) -> str:
    """Several conditions in words: ``at nominal and high mains``; empty where it holds always."""
    given = set(names)
    if not given:
        return ""
    translate = QCoreApplication.translate
    spelled = {
        "cold": translate("findings", "switch-on"),
        "chosen": translate("findings", "the mains chosen above"),
    }
    others = sorted(
        given.difference(_BAND), key=lambda name: (_ORDER.index(name) if name in _ORDER else 9, name)
    )
    groups = [_band_text(tuple(name for name in _BAND if name in given))] if given.intersection(_BAND) else []
    shown = listed([*groups, *(spelled.get(name, name) for name in others)])
    return translate("findings", "at {conditions}").format(conditions=shown)


def _band_text(names: tuple[str, ...]) -> str:
    translate = QCoreApplication.translate
    low, nominal, high = _BAND
    return {
        (low,): translate("findings", "low mains"),
        (nominal,): translate("findings", "nominal mains"),
        (high,): translate("findings", "high mains"),
        (low, nominal): translate("findings", "low and nominal mains"),
        (low, high): translate("findings", "low and high mains"),
        (nominal, high): translate("findings", "nominal and high mains"),
        (low, nominal, high): translate("findings", "low, nominal and high mains"),
    }[names]


MendsOf = Callable[[Finding], tuple["MendOffer", ...]]


def _no_mends(_finding: Finding) -> tuple[MendOffer, ...]:
    return ()


def cards(
    findings: Iterable[Finding], condition: str | None = None, mends_of: MendsOf = _no_mends
) -> tuple[Card, ...]:
    """Cards in order of severity, then condition; with ``condition`` only what holds under it.

    Findings of one rule at one place on the same side of the limit are one card. One that is bound to no
    condition holds under every one. ``mends_of`` says what is known to mend a finding.
    """
    shown = (f for f in findings if condition is None or f.condition in {None, condition})
    made = [_card(group, mends_of) for group in alike(shown)]
    return tuple(sorted(made, key=_card_order))


def _card(group: list[Finding], mends_of: MendsOf) -> Card:
    worst = worst_of(group)
    named = [finding.condition for finding in group if finding.condition is not None]
    names = tuple(sorted(dict.fromkeys(named), key=_condition_order))
    at = conditions_text(names)
    return Card(
        rule=worst.rule,
        severity=worst.severity,
        where=worst.where,
        conditions=names,
        title=spoken(worst.title),
        says=spoken(worst.says),
        mend=spoken(worst.mend),
        mends=mends_of(worst),
        footer=" · ".join(text for text in (at, spoken(worst.source)) if text),
    )


def _condition_order(name: str) -> tuple[int, str]:
    return (_ORDER.index(name) if name in _ORDER else len(_ORDER), name)


def _card_order(card: Card) -> tuple[int, tuple[int, str]]:
    first = _condition_order(card.conditions[0]) if card.conditions else (-1, "")
    return SEVERITIES.index(card.severity), first


def counts_text(findings: Iterable[Finding]) -> str:
    """How many cards of each severity: ``2 faults · 1 caution``; ``no findings`` where there are none."""
    made = cards(findings)
    number = {severity: sum(card.severity == severity for card in made) for severity in SEVERITIES}
    words = [_count_text(severity, count) for severity, count in number.items() if count]
    return " · ".join(words) if words else QCoreApplication.translate("findings", "no findings")


def _count_text(severity: Severity, count: int) -> str:
    translate = QCoreApplication.translate
    one, many = {
        "fault": (translate("findings", "1 fault"), translate("findings", "{count} faults")),
        "caution": (translate("findings", "1 caution"), translate("findings", "{count} cautions")),
        "note": (translate("findings", "1 note"), translate("findings", "{count} notes")),
    }[severity]
    return one if count == 1 else many.format(count=count)
