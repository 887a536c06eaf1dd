"""Offers below a line that is typed into: the arrows choose one, Return takes it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QStringListModel, Qt
from PySide6.QtWidgets import QCompleter, QLineEdit


class Completer(QCompleter):
    """Shows what ``offering`` has for the text so far; the text itself is never offered."""

    def __init__(self, offering: Callable[[str], list[str]], editor: QLineEdit) -> None:
        self._names = QStringListModel()
        super().__init__(self._names, editor)
        self._offering = offering
        self.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)
        self.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.setMaxVisibleItems(8)
        editor.textEdited.connect(self.offer)
        editor.setCompleter(self)

    def offer(self, text: str) -> None:
        """Look up what fits the text."""
        names = self._offering(text)
        self._names.setStringList([] if names == [text] else names)

    def offered(self) -> list[str]:
        """The names on offer now."""
        return self._names.stringList()
