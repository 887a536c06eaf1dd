"""What would mend the findings of the open sheet: remedies that have been tried and found to do so.

They are tried while nothing else is to be done, one after the other. A menu that opens tries those it needs at once.
"""

from __future__ import annotations

import time
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QObject, QTimer, Signal

from app.actions import Entry
from app.document import Document
from app.speech import spoken
from core.edits import Edit
from core.mending import edit_of
from core.remedy import Remedy
from core.results import Assessment, Finding, alike, side_of, worst_of

if TYPE_CHECKING:
    from core.proof import Proof

_SLICE_S = 0.006


@dataclass(frozen=True)
class MendOffer:
    """A remedy that was found to mend its finding, or, where ``is_step``, to help."""

    remedy: Remedy
    is_step: bool = False

    @property
    def title(self) -> str:
        """Its name in the language of the screen, as the menu shows it after the word Undo."""
        return spoken(self.remedy.title)

    @property
    def label(self) -> str:
        """Its name on a button."""
        if not self.is_step:
            return self.title
        return QCoreApplication.translate("findings", "{mend} (helps)").format(mend=self.title)

    @property
    def edit(self) -> Edit:
        """What it does to the sheet."""
        return edit_of(self.remedy)


class Mends(QObject):
    """Tries the remedies of a document's findings. ``changed`` comes when more is known of them."""

    changed = Signal()

    def __init__(self, document: Document, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._proof: Proof | None = None
        self._known: dict[tuple[object, ...], tuple[MendOffer, ...]] = {}
        self._work: Iterator[Finding] = iter(())
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._go_on)
        document.assessed.connect(self._begin)
        assessment = document.assessment
        if assessment is not None:
            self._begin(assessment)

    def of(self, finding: Finding) -> tuple[MendOffer, ...]:
        """What is known so far to mend a finding."""
        return self._known.get(_place(finding), ())

    def offer(self, finding: Finding, remedies: Iterable[Remedy]) -> None:
        """Take up remedies of a finding that have been tried elsewhere and do mend it."""
        self._known[_place(finding)] = tuple(map(MendOffer, remedies))
        self.changed.emit()

    def settle(self) -> None:
        """Try everything that is left now."""
        self._timer.stop()
        for finding in self._work:
            self._learn(finding)
        self.changed.emit()

    @property
    def is_settled(self) -> bool:
        """Whether every remedy has been tried."""
        return not self._timer.isActive()

    def _begin(self, assessment: Assessment) -> None:
        """Try anew; another look at the same sheet leaves its findings as they are."""
        proof = self._proof
        if proof is not None and proof.assessment.findings is assessment.findings:
            return
        self._timer.stop()
        self._proof, self._known, self._work = None, {}, iter(())
        found = [worst for group in alike(assessment.findings) if (worst := worst_of(group)).remedies]
        if found:
            # numerics are loaded with the first question
            from core.proof import Proof  # noqa: PLC0415

            self._proof = Proof(assessment, self._document.catalogue)
            self._work = iter(found)
            self._timer.start()

    def _go_on(self) -> None:
        """Try the remedies of the next findings, for a moment."""
        if self._document.assessment is None:
            self._timer.stop()  # the sheet is another one by now, whose answers are on their way
            return
        end = time.monotonic() + _SLICE_S
        while time.monotonic() < end:
            finding = next(self._work, None)
            if finding is None:
                self._timer.stop()
                self.changed.emit()
                return
            self._learn(finding)

    def _learn(self, finding: Finding) -> None:
        if self._proof is not None:
            self._known[_place(finding)] = offers_of(self._proof, finding)


def _place(finding: Finding) -> tuple[object, ...]:
    """What findings have in common that differ by condition only: they have the same remedies."""
    return finding.rule, finding.where, side_of(finding)


def offers_of(proof: Proof, finding: Finding) -> tuple[MendOffer, ...]:
    """Those remedies of a finding that mend it or help; no two that do the same."""
    effects = [(remedy, proof.effect(finding, remedy)) for remedy in dict.fromkeys(finding.remedies)]
    return tuple(MendOffer(remedy, effect == "helps") for remedy, effect in effects if effect != "none")


def mend_entries(document: Document, item_id: str) -> tuple[Entry, ...]:
    """What would mend the findings at a part or wire, for its menu; none while the sheet is not solved."""
    assessment = document.assessment
    if assessment is None:
        return ()
    from core.proof import Proof  # noqa: PLC0415 - numerics are loaded with the first question

    proof = Proof(assessment, document.catalogue)
    at = [worst_of(group) for group in alike(assessment.findings) if item_id in group[0].where]
    offers = dict.fromkeys(offer for finding in at for offer in offers_of(proof, finding))
    return tuple(_entry(document, offer) for offer in offers)


def _entry(document: Document, offer: MendOffer) -> Entry:
    shown = offer.label.replace("&", "&&")  # an ampersand would be taken for the mark of a letter to press
    return Entry(
        QCoreApplication.translate("findings", "Mend: {mend}").format(mend=shown),
        lambda: document.apply(offer.title, offer.edit),
    )
