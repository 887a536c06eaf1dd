"""Exceptions inside event methods reach the hook, not Qt."""

from __future__ import annotations

from PySide6.QtCore import QAbstractListModel, QEvent, QModelIndex, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from app.guard import guarded


@guarded
class Faulty(QWidget):
    """Looks up what is not there whenever it is clicked."""

    def mousePressEvent(self, _event: object) -> None:
        {}["nothing here"]

    def event(self, event: QEvent) -> bool:
        if event.type() == QEvent.Type.User:
            {}["nor here"]
        return super().event(event)


@guarded
class FaultyModel(QAbstractListModel):
    """Has a row without data."""

    def rowCount(self, _parent: QModelIndex | None = None) -> int:
        return 1

    def data(self, index: QModelIndex, role: int = 0) -> object:
        return {}[role]


def test_a_key_error_inside_a_nested_event_is_told_and_the_program_goes_on(qtbot) -> None:
    widget = Faulty()
    qtbot.addWidget(widget)
    with qtbot.captureExceptions() as caught:
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton)
        assert widget.event(QEvent(QEvent.Type.User)) is False
    assert [kind for kind, _, _ in caught] == [KeyError, KeyError]


def test_a_model_without_an_answer_gives_none(qtbot) -> None:
    model = FaultyModel()
    with qtbot.captureExceptions() as caught:
        assert model.data(model.index(0)) is None
    assert len(caught) == 1
