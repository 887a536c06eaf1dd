"""A pane that can be moved, closed and brought back, and its title line."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QDockWidget, QHBoxLayout, QMenu, QTabBar, QVBoxLayout, QWidget

from app.actions import SEPARATOR, Entry, fill
from app.guard import guarded
from app.panes.controls import FlatTabs, SignButton
from app.panes.ground import Area, Ground
from app.theme import Theme

LEAST_WIDTH = 348


@guarded
class TitleTabs(FlatTabs):
    """The names of the panes that share a place. Pressing the current one takes hold of the pane.

    ``wanted`` carries the number of a pane that is to come forward.
    """

    wanted = Signal(int)

    def __init__(self, name: str, theme: Theme, parent: QWidget) -> None:
        super().__init__((), name, theme, parent)
        self._passes = False
        self.currentChanged.connect(self.wanted)

    def show_words(self, words: list[str], current: int) -> None:
        """Show other names without announcing it."""
        self.blockSignals(True)
        while self.count() > len(words):
            self.removeTab(self.count() - 1)
        for number, word in enumerate(words):
            if number == self.count():
                self.addTab(word)
            elif self.tabText(number) != word:
                self.setTabText(number, word)
        self.setCurrentIndex(current)
        self.blockSignals(False)
        self.updateGeometry()
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Leave a press on the current name to the pane, which can be dragged by it."""
        self._passes = self.tabAt(event.position().toPoint()) in (self.currentIndex(), -1)
        if self._passes:
            event.ignore()
        else:
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Leave the dragging to the pane."""
        event.ignore()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Leave the end of the dragging to the pane."""
        if self._passes:
            event.ignore()
        else:
            super().mouseReleaseEvent(event)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Leave it to the pane, which goes into a window of its own, or back."""
        event.ignore()


class TitleLine(QWidget):
    """Names, or what a pane that stands alone has in their place; a menu and a cross."""

    def __init__(self, pane: Pane, theme: Theme) -> None:
        super().__init__(pane)
        self.setObjectName("Pane")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.tabs = TitleTabs(self.tr("Panes"), theme, self)
        self.menu_button = SignButton("dots", theme, self)
        self.close_button = SignButton("cross", theme, self)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(4, 4, 4, 2)
        self._row.setSpacing(0)
        self._row.addWidget(self.tabs)
        self._row.addStretch(1)
        self._row.addWidget(self.menu_button)
        self._row.addWidget(self.close_button)

    def name_buttons(self, word: str) -> None:
        """Say whose buttons they are."""
        for button, text in (
            (self.menu_button, self.tr("Move the pane {name}")),
            (self.close_button, self.tr("Close the pane {name}")),
        ):
            button.setAccessibleName(text.format(name=word))
            button.setToolTip(text.format(name=word))

    def show_heading(self, heading: QTabBar | None) -> None:
        """Show tabs of the pane's own in place of its name, or the name."""
        if heading is not None:
            self._row.insertWidget(1, heading)
            heading.show()
        self.tabs.setVisible(heading is None)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self.tabs.set_theme(theme)
        self.menu_button.set_theme(theme)
        self.close_button.set_theme(theme)


@guarded
class Pane(QDockWidget):
    """One pane around the drawing. ``picked`` carries the pane whose name was chosen in this one's title.

    ``heading`` are tabs of the pane's own, the first thing in its layout; they move into the title line while the
    pane shares its place with no other.
    """

    picked = Signal(object)

    def __init__(
        self,
        key: str,
        word: str,
        content: QWidget,
        theme: Theme,
        ground: Ground,
        heading: QTabBar | None = None,
    ) -> None:
        super().__init__(ground)
        self.setObjectName(key)
        self.word = word
        self.ground = ground
        ground.docks.append(self)
        self.content = content
        self._heading = heading
        self._group: list[Pane] = [self]
        body = QWidget(self)
        body.setObjectName("Pane")
        body.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        layout = QVBoxLayout(body)
        layout.setContentsMargins(4, 2, 8, 8)
        layout.addWidget(content)
        body.setMinimumWidth(LEAST_WIDTH)
        self.setWidget(body)
        self.title = TitleLine(self, theme)
        self.title.name_buttons(word)
        self.setTitleBarWidget(self.title)
        self.setWindowTitle(word)
        self.title.close_button.clicked.connect(self.close)
        self.title.menu_button.clicked.connect(self.show_menu)
        self.title.tabs.wanted.connect(self._on_wanted)
        for signal in (self.topLevelChanged, self.dockLocationChanged, self.visibilityChanged):
            signal.connect(ground.announce)

    def set_count(self, count: int) -> None:
        """Show a number beside the pane's name."""
        self.setWindowTitle(f"{self.word} {count}" if count else self.word)
        self.ground.announce()

    def bring_forward(self) -> None:
        """Open the pane and bring it before those that share its place."""
        self.show()
        self.raise_()
        if self.isFloating():
            self.activateWindow()

    @property
    def is_in_front(self) -> bool:
        """Whether the pane is open and not behind another."""
        return self.ground.is_in_front(self)

    def show_group(self) -> None:
        """Show in the title line which panes share this place."""
        self._group = [dock for dock in self.ground.group_of(self) if isinstance(dock, Pane)]
        words = [pane.windowTitle() for pane in self._group]
        self.title.tabs.show_words(words, self._group.index(self))
        if self._heading is not None:
            alone = len(self._group) == 1
            self.title.show_heading(self._heading if alone else None)
            layout = self.content.layout()
            if not alone and self._heading.parentWidget() is self.title and isinstance(layout, QVBoxLayout):
                layout.insertWidget(0, self._heading)
                self._heading.show()

    def _on_wanted(self, number: int) -> None:
        if not 0 <= number < len(self._group):
            return
        other, by_key = self._group[number], self.title.tabs.hasFocus()
        other.bring_forward()
        self.picked.emit(other)
        if by_key and other is not self:
            other.title.tabs.setFocus(Qt.FocusReason.TabFocusReason)

    # moving

    def entries(self) -> list[Entry | None]:
        """Where the pane can go."""
        others = [
            each
            for each in self.ground.docks
            if isinstance(each, Pane)
            and each not in self._group
            and not each.isHidden()
            and not each.isFloating()
        ]
        return [
            Entry(self.tr("To the &left"), partial(self.move_to, Area.LeftDockWidgetArea)),
            Entry(self.tr("To the &right"), partial(self.move_to, Area.RightDockWidgetArea)),
            Entry(self.tr("&Below the drawing"), partial(self.move_to, Area.BottomDockWidgetArea)),
            *(Entry(self._beside(other), partial(self.join, other)) for other in others),
            Entry(
                self.tr("In a &window of its own"),
                lambda: self.setFloating(not self.isFloating()),
                checked=self.isFloating,
            ),
            SEPARATOR,
            Entry(self.tr("&Close"), self.close),
        ]

    def _beside(self, other: Pane) -> str:
        return self.tr("Share the place of {name}").format(name=other.word)

    def move_to(self, area: Area) -> None:
        """Dock the pane at a side of the drawing, by itself."""
        self.setFloating(False)
        self.ground.removeDockWidget(self)
        self.ground.addDockWidget(area, self)
        self.bring_forward()

    def join(self, other: Pane) -> None:
        """Share another pane's place, in front of it."""
        self.setFloating(False)
        self.ground.tabifyDockWidget(other, self)
        self.bring_forward()

    def show_menu(self) -> None:
        """Offer the places below the button."""
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        fill(menu, self.entries())
        button = self.title.menu_button
        menu.popup(button.mapToGlobal(QPoint(0, button.height())))
