"""The page of keys and gestures: a window of its own, searchable and printable."""

from __future__ import annotations

import html
from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtGui import QKeyEvent, QTextDocument
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLineEdit, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from app.guard import guarded
from app.help.key_table import Line, Section, filtered
from app.panes.controls import ground_style, scroll_bar_style
from app.theme import FAMILY, LIGHT, Theme

_SIZE = (640, 640)
_MARGIN = 16.0


def page_html(sections: Iterable[Section], theme: Theme, size: float = 13, unit: str = "px") -> str:
    """The sections as a page: a heading and a table each, in the colours of a theme."""
    body = "".join(_section_html(section, theme, f"{size * 1.15:.4g}{unit}") for section in sections)
    nothing = QCoreApplication.translate("help", "Nothing here holds these words.")
    return (
        f"<html><body style=\"font-family:'{FAMILY}'; font-size:{size:g}{unit}; color:{theme.ink};\">"
        f"{body or f'<p>{html.escape(nothing)}</p>'}</body></html>"
    )


def _section_html(section: Section, theme: Theme, size: str) -> str:
    rows = "".join(_line_html(line, theme) for line in section.lines)
    return (
        f'<p style="margin-top:14px; margin-bottom:4px; font-size:{size};"><b>{html.escape(section.title)}</b></p>'
        f'<table width="100%" cellspacing="0" cellpadding="3">{rows}</table>'
    )


def _line_html(line: Line, theme: Theme) -> str:
    between = f'<span style="color:{theme.soft};"> \u00b7 </span>'
    keys = between.join(f"<b>{html.escape(key)}</b>" for key in line.pressed)
    about = f'<br><span style="color:{theme.soft};">{html.escape(line.about)}</span>' if line.about else ""
    return f'<tr><td width="38%" valign="top">{keys}</td><td valign="top">{html.escape(line.does)}{about}</td></tr>'


@guarded
class KeyPage(QWidget):
    """Shows the sections; what is typed into the line above leaves only what holds the words. Escape closes it."""

    def __init__(self, sections: tuple[Section, ...], theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(self.tr("Keys and gestures"))
        self.sections = sections
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(self.tr("search: wire, table, Ctrl\u2026"))
        self.search.setAccessibleName(self.tr("Search keys and gestures"))
        self.browser = QTextBrowser(self)
        self.browser.setAccessibleName(self.tr("Keys and gestures"))
        self.browser.setFrameShape(QFrame.Shape.NoFrame)
        self.browser.document().setDocumentMargin(_MARGIN)
        self.print_button = QPushButton(self.tr("&Print\u2026"), self)
        above = QHBoxLayout()
        above.setContentsMargins(int(_MARGIN), 12, int(_MARGIN), 0)
        above.addWidget(self.search, 1)
        above.addWidget(self.print_button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addLayout(above)
        layout.addWidget(self.browser, 1)
        self.search.textChanged.connect(self._show)
        self.print_button.clicked.connect(self.ask_print)
        self.resize(*_SIZE)
        self.set_theme(theme)

    def set_theme(self, theme: Theme) -> None:
        """Take another look."""
        self._theme = theme
        self.setFont(theme.font(12))
        self.browser.setStyleSheet(ground_style("QTextBrowser", theme) + scroll_bar_style(theme))
        self._show()

    def _show(self) -> None:
        self.browser.setHtml(page_html(filtered(self.sections, self.search.text()), self._theme))

    def ask_print(self) -> None:
        """Ask for a printer and print what is on show."""
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        dialog = QPrintDialog(printer, self)
        if dialog.exec():
            self.print_to(printer)

    def print_to(self, printer: QPrinter) -> None:
        """Print what is on show, in dark ink on light paper whatever the theme."""
        page = QTextDocument()
        page.setHtml(page_html(filtered(self.sections, self.search.text()), LIGHT, 9.5, "pt"))
        page.print_(printer)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape closes the page."""
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)
