"""Findings as cards: the same thing under several conditions is one card that shows the worst of them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from core.results import SEVERITIES, Finding, Sentence, Severity, alike, worst_of

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


def spoken(sentence: Sentence) -> str:
    """The sentence in the language of the screen."""
    template = QCoreApplication.translate("findings", sentence.template)
    try:
        return template.format(**dict(sentence.values))
    except (KeyError, IndexError, ValueError):
        return str(sentence)


def severity_word(severity: Severity) -> str:
    """The word for a severity."""
    return {
        "fault": QCoreApplication.translate("findings", "Fault"),
        "caution": QCoreApplication.translate("findings", "Caution"),
        "note": QCoreApplication.translate("findings", "Note"),
    }[severity]


def conditions_in(findings: Iterable[Finding]) -> tuple[str, ...]:
    """The names of the conditions that the findings speak of, nominal first."""
    named = {finding.condition for finding in findings if finding.condition is not None}
    order = ("nominal", "low mains", "high mains", "cold", "chosen")
    return (*(name for name in order if name in named), *sorted(named.difference(order)))


def conditions_text(names: Iterable[str]) -> str:
    """Several conditions in words: ``at nominal and high mains``; empty where it holds always."""
    given = set(names)
    if not given:
        return ""
    band = [name.removesuffix(" mains") for name in _BAND if name in given]
    others = sorted(
        given.difference(_BAND), key=lambda name: (_ORDER.index(name) if name in _ORDER else 9, name)
    )
    spelled = {"cold": "switch-on", "chosen": "the mains chosen above"}
    groups = [f"{_listed(band)} mains"] if band else []
    return "at " + _listed([*groups, *(spelled.get(name, name) for name in others)])


def _listed(words: list[str]) -> str:
    return words[0] if len(words) == 1 else ", ".join(words[:-1]) + " and " + words[-1]


def cards(findings: Iterable[Finding], condition: str | None = None) -> tuple[Card, ...]:
    """Cards in order of severity, then condition; with ``condition`` only what holds under it.

    Findings of one rule at one place on the same side of the limit are one card. One that is bound to no
    condition holds under every one.
    """
    shown = (f for f in findings if condition is None or f.condition in {None, condition})
    made = [_card(group) for group in alike(shown)]
    return tuple(sorted(made, key=_card_order))


def _card(group: list[Finding]) -> Card:
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
        footer=" · ".join(text for text in (at, worst.source) if text),
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
    words = [f"{count} {severity}{'' if count == 1 else 's'}" for severity, count in number.items() if count]
    return " · ".join(words) if words else QCoreApplication.translate("findings", "no findings")
