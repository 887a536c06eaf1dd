"""The find line at the top of the drawing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.canvas import words
from app.canvas.finding import matches
from app.canvas.panel import Panel

if TYPE_CHECKING:
    from app.canvas.view import SheetView

_WIDTH = 330


class FindLine(Panel):
    """Shows what a text finds, one after the other: Enter for the next, Shift+Enter for the one before."""

    def __init__(self, view: SheetView) -> None:
        super().__init__(view, _WIDTH, below=False)
        self._found: list[str] = []
        self._at = 0
        self.question.setText(words.tr("Find"))
        self.field.setPlaceholderText(words.tr("id, type, rating, note"))
        self.field.setAccessibleName(words.tr("Find on the drawing"))
        self.field.textChanged.connect(self._on_text)
        view.document.changed.connect(self._look_again)
        view.document.replaced.connect(self._look_again)

    def enter(self) -> None:
        """Take the keyboard, the last text selected."""
        self._look_again()
        super().enter()

    def _on_text(self) -> None:
        self._at = 0
        self._look_again()
        self._show()

    def _look_again(self) -> None:
        document = self.view.document
        self._found = matches(document.sheet, document.catalogue, self.field.text())
        self._at = min(self._at, max(len(self._found) - 1, 0))
        self._count()

    def _count(self) -> None:
        if not self.field.text().strip():
            self.answer.setText("")
        elif not self._found:
            self.answer.setText(words.tr("nothing"))
        else:
            said = words.tr("{number} of {count}")
            self.answer.setText(said.format(number=self._at + 1, count=len(self._found)))
        self.field.setAccessibleDescription(self.answer.text())

    def _show(self) -> None:
        if self._found:
            self.view.selection.show((self._found[self._at],))
        self._count()

    def take(self, backwards: bool) -> None:
        """On to the next, or back to the one before."""
        self.step(-1 if backwards else 1)

    def step(self, by: int) -> None:
        """On or back, round the ends; the first time show what is counted already."""
        if self._found:
            shown = self.view.selection.ids == {self._found[self._at]}
            self._at = (self._at + by) % len(self._found) if shown else self._at
            self._show()
