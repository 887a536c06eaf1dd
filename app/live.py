"""Keeping the answers in step with the drawing.

Answers to an older drawing are dropped by the document. A sheet that was considered before it was made has its
answers already.
"""

from __future__ import annotations

from msgspec.structs import replace
from PySide6.QtCore import QObject

from app.document import Document
from app.solver import Solver, Work
from app.viewpoint import Viewpoint
from core.results import Assessment

ASKER = "document"


class Live(QObject):
    """Assesses the document after every change of it or of the condition on show."""

    def __init__(
        self, document: Document, viewpoint: Viewpoint, solver: Solver, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document = document
        self._viewpoint = viewpoint
        self._solver = solver
        document.changed.connect(self.refresh)
        document.replaced.connect(self.refresh)
        viewpoint.condition_changed.connect(self.refresh)

    def refresh(self) -> None:
        """Bring the answers up to date."""
        document = self._document
        tried = self._tried()
        if tried is not None:
            self._solver.forget(ASKER)
            document.take_assessment(tried)
            return
        size = len(document.sheet.parts) + len(document.sheet.wires)
        self._solver.ask(ASKER, size, self._work(), document.take_assessment)

    def _tried(self) -> Assessment | None:
        """The answers found while this very sheet was only considered, if they are for the condition on view."""
        tried, sheet = self._solver.tried, self._document.sheet
        if tried is None or self._document.assessment is not None or tried.sheet != sheet:
            return None
        return replace(tried, sheet=sheet) if self._viewpoint.point(tried) is not None else None

    def _work(self) -> Work:
        # numerics are loaded with the first question, not with the window
        from core.assess import assess, look_at  # noqa: PLC0415

        document, chosen = self._document, self._viewpoint.condition
        present, sheet, catalogue = document.assessment, document.sheet, document.catalogue
        if present is not None:
            return lambda memory: look_at(present, catalogue, chosen, memory)
        return lambda memory: assess(sheet, catalogue, chosen, memory)
