"""Finding text that does not fit where it stands, widgets that lie on each other, and words left in English."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from PySide6.QtCore import QModelIndex, QRect, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenu,
    QStyle,
    QStyleOptionGroupBox,
    QTabBar,
    QTableView,
    QToolButton,
    QTreeView,
    QWidget,
)

SLACK = 1
_HEIGHT = " (height)"
WORD = re.compile(r"[A-Za-z]{3,}")


def texts_of(widget: QWidget) -> Iterator[tuple[str, int, int]]:
    """Every text that a widget shows, with the width it has and the width it needs, pixels."""
    metrics = QFontMetrics(widget.font())
    if isinstance(widget, QLabel):
        yield from _label(widget, metrics)
    elif isinstance(widget, QComboBox):
        yield widget.currentText(), widget.width(), widget.minimumSizeHint().width() if widget.count() else 0
    elif isinstance(widget, QAbstractButton):
        if widget.text() and not (isinstance(widget, QToolButton) and widget.icon()):
            yield widget.text(), widget.width(), widget.sizeHint().width()
    elif isinstance(widget, QTabBar):
        yield from ((widget.tabText(at), *_tab(widget, at)) for at in range(widget.count()))
    elif isinstance(widget, QGroupBox) and widget.title():
        option = QStyleOptionGroupBox()
        widget.initStyleOption(option)
        room = widget.style().subControlRect(
            QStyle.ComplexControl.CC_GroupBox, option, QStyle.SubControl.SC_GroupBoxLabel, widget
        )
        yield widget.title(), room.width(), metrics.horizontalAdvance(widget.title().replace("&", ""))
    elif isinstance(widget, QLineEdit) and widget.placeholderText() and not widget.text():
        room = widget.style().subElementRect(QStyle.SubElement.SE_LineEditContents, _option(widget), widget)
        yield widget.placeholderText(), room.width(), metrics.horizontalAdvance(widget.placeholderText())
    elif isinstance(widget, QHeaderView) and widget.orientation() == Qt.Orientation.Horizontal:
        yield from _header(widget)
    elif isinstance(widget, QTreeView):
        yield from _tree(widget)


def _option(widget: QLineEdit):
    from PySide6.QtWidgets import QStyleOptionFrame

    option = QStyleOptionFrame()
    widget.initStyleOption(option)
    return option


def _label(label: QLabel, metrics: QFontMetrics) -> Iterator[tuple[str, int, int]]:
    text = label.text()
    if not text:
        return
    if label.wordWrap():
        room = label.contentsRect().width()
        widest = max((metrics.horizontalAdvance(word) for word in text.split()), default=0)
        yield text, room, widest
        needed = label.heightForWidth(label.width())
        yield f"{text}{_HEIGHT}", label.height(), needed
    else:
        yield text, label.width(), label.sizeHint().width()


def _tab(bar: QTabBar, at: int) -> tuple[int, int]:
    needed = QFontMetrics(bar.font()).horizontalAdvance(bar.tabText(at))
    shown = bar.tabRect(at).intersected(bar.rect())
    return shown.width(), needed


def _header(header: QHeaderView) -> Iterator[tuple[str, int, int]]:
    model = header.model()
    metrics = QFontMetrics(header.font())
    for at in range(header.count()):
        if not header.isSectionHidden(at):
            text = str(model.headerData(at, Qt.Orientation.Horizontal) or "")
            yield text, header.sectionSize(at), metrics.horizontalAdvance(text)


def _tree(view: QTreeView) -> Iterator[tuple[str, int, int]]:
    """The first column of every row that is seen: names; the second one may be cut, as it goes on in figures."""
    metrics = QFontMetrics(view.font())
    index = view.indexAt(view.viewport().rect().topLeft())
    while index.isValid() and view.visualRect(index).intersects(view.viewport().rect()):
        name = index.siblingAtColumn(0)
        spans = view.isFirstColumnSpanned(name.row(), name.parent())
        room = view.viewport().width() if spans else view.visualRect(name).width()
        yield str(name.data()), room, metrics.horizontalAdvance(str(name.data()))
        index = view.indexBelow(index)


def shown_under(root: QWidget) -> list[QWidget]:
    """A widget and everything in it that is shown."""
    found = [one for one in (root, *root.findChildren(QWidget)) if one.isVisibleTo(root) or one is root]
    # what the toolkit calls the arrows of a row of tabs is its own affair
    return [one for one in found if not isinstance(one.parentWidget(), QTabBar)]


def is_reached_by_scrolling(widget: QWidget, root: QWidget) -> bool:
    """Whether a widget lies, all or in part, outside what is seen of the area that scrolls it."""
    return widget.visibleRegion().isEmpty() and widget is not root


def clipped(root: QWidget) -> list[str]:
    """Texts under a widget that need more room than they have."""
    found = []
    for widget in shown_under(root):
        if isinstance(widget, QMenu) or is_reached_by_scrolling(widget, root):
            continue
        for text, room, needed in texts_of(widget):
            if needed > room + SLACK:
                found.append(f"{type(widget).__name__} '{text}': {room} of {needed}")
    return found


def overlapping(root: QWidget) -> list[str]:
    """Pairs of widgets in one layout that lie on each other."""
    found = []
    for parent in shown_under(root):
        layout = parent.layout()
        if layout is None:
            continue
        inside = parent.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
        kept = [one for one in inside if not one.visibleRegion().isEmpty() and _is_laid_out(layout, one)]
        for at, one in enumerate(kept):
            for other in kept[at + 1 :]:
                both = _room_of(one).intersected(_room_of(other))
                if both.width() > SLACK and both.height() > SLACK:
                    found.append(f"{named(one)} on {named(other)} in {named(parent)}")
    return found


def _room_of(widget: QWidget) -> QRect:
    """Where a widget is; a label may leave room at its edge for something else."""
    if isinstance(widget, QLabel):
        return widget.contentsRect().translated(widget.pos())
    return widget.geometry()


def _is_laid_out(layout, widget: QWidget) -> bool:
    if layout.indexOf(widget) >= 0:
        return True
    inner = (layout.itemAt(at).layout() for at in range(layout.count()))
    return any(_is_laid_out(one, widget) for one in inner if one is not None)


def named(widget: QWidget) -> str:
    text = getattr(widget, "text", None)
    return f"{type(widget).__name__} {widget.objectName() or (text() if callable(text) else '')}".strip()


def words_of(root: QWidget) -> Iterator[str]:
    """Every text on show under a widget: of labels, buttons, tabs, headings, entries, tips and spoken names."""
    for widget in shown_under(root):
        if isinstance(widget, QMenu):
            continue
        yield from (text.removesuffix(_HEIGHT) for text, _, _ in texts_of(widget))
        yield from (widget.toolTip(), widget.accessibleName(), widget.statusTip(), widget.windowTitle())
        if isinstance(widget, QComboBox):
            yield from (widget.itemText(at) for at in range(widget.count()))
        if isinstance(widget, QTableView | QTreeView):
            yield from _cells(widget)


def _cells(view: QAbstractItemView) -> Iterator[str]:
    model = view.model()
    waiting = [QModelIndex()]
    while waiting:
        parent = waiting.pop()
        for row in range(min(model.rowCount(parent), 200)):
            for column in range(model.columnCount(parent)):
                index = model.index(row, column, parent)
                yield str(index.data() or "")
            waiting.append(model.index(row, 0, parent))


def untranslated(texts: Iterable[str], known: Iterable[str]) -> list[str]:
    """Texts with words outside the brackets of the stretched language that are no names or types."""
    names = set(known)
    found = []
    for text in texts:
        plain = re.sub(r"<[^>]*>", " ", text)
        while True:
            less = re.sub(r"\[[^\[\]]*\]", " ", plain)
            if less == plain:
                break
            plain = less
        left = [word for word in WORD.findall(plain) if word not in names]
        if left:
            found.append(f"{text!r}: {', '.join(left)}")
    return sorted(set(found))
