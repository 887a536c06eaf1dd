"""The two looks of the program: every colour, pen and font has its only home here.

Colours are kept as ``#rrggbb`` text, so that one value serves painters (:meth:`Theme.colour`), pens and style
sheets alike. Text colours keep a contrast of at least 4.5 to 1 on every ground they are used on (WCAG 2.1,
success criterion 1.4.3), marks, halo, rings, edges of controls and wires 3 to 1 (1.4.11); text that is disabled
is exempt from both. State colours are a vermilion and a blue, which all common kinds of colour vision tell
apart, and are always backed by a shape.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontDatabase,
    QIcon,
    QPainter,
    QPalette,
    QPen,
    QPixmap,
)
from PySide6.QtSvg import QSvgRenderer

from resources import path, read_bytes

FAMILY = "Inter"
_EQUAL_FIGURES = QFont.Tag("tnum")
_ALTERNATES = QFont.Tag("calt")
_ICON_SIZES = (16, 20, 24, 32, 40, 48, 64, 128)
_FONT_FILES = ("Inter-Regular.otf", "Inter-Bold.otf")


@dataclass(frozen=True, eq=False)
class Theme:
    """One look. Each colour says what it is for, not what hue it has.

    ``paper`` is the sheet, ``chrome`` the window around it, ``surface`` cards, tables, fields and sockets.
    ``ink`` is the main text and line colour, ``soft`` the second text colour, ``faint`` for lines that are no
    text. ``accent`` is the ochre of mends and links, ``halo`` that of a selection around a part,
    ``selection`` the ground of selected rows. ``curves`` are for plots, in order. A theme equals only itself,
    so that it is a cheap key for what is cached by theme.
    """

    name: str
    is_dark: bool
    paper: str
    chrome: str
    surface: str
    grid_dot: str
    line: str
    faint: str
    ink: str
    soft: str
    accent: str
    accent_text: str
    halo: str
    selection: str
    over: str
    under: str
    ok: str
    caution: str
    edge: str
    curves: tuple[str, ...]
    line_width: float = 1.5
    heavy_width: float = 2.0
    heater_width: float = 2.6
    halo_width: float = 3.0
    grid: float = 20.0

    def colour(self, role: str) -> QColor:
        """The colour of a role, by its field name; raises AttributeError for a name that is no field."""
        return QColor(str(getattr(self, role)))

    def pen(self, role: str, width: float | None = None, dash: tuple[float, ...] = ()) -> QPen:
        """A pen with round joins and ends in the colour of a role; ``dash`` in units of the width."""
        return QPen(_pen(str(getattr(self, role)), self.line_width if width is None else width, dash))

    def brush(self, role: str) -> QBrush:
        """A plain brush in the colour of a role."""
        return QBrush(_brush(str(getattr(self, role))))

    def font(self, px: float, bold: bool = False) -> QFont:
        """The bundled font, ``px`` pixels high, with figures of equal width."""
        return QFont(_font(px, bold))

    def state_role(self, state: str) -> str:
        """The colour role that supports a state's shape."""
        return {"over": "over", "under": "under", "cold": "under", "ok": "ok"}.get(state, "soft")

    def insulation(self, name: str) -> QColor | None:
        """The colour of a wire's insulation by its plain name; None where the name is not known."""
        value = _INSULATION.get(name.strip().lower().replace("gray", "grey"))
        return None if value is None else QColor(value[self.is_dark])


LIGHT = Theme(
    name="light",
    is_dark=False,
    paper="#fbfaf6",
    chrome="#f2f0ea",
    surface="#ffffff",
    grid_dot="#dcd8cc",
    line="#d8d4c8",
    faint="#a9b0b7",
    ink="#1f2a37",
    soft="#57626f",
    accent="#8a6400",
    accent_text="#7d5a00",
    halo="#a67f22",
    selection="#efe2bf",
    over="#a83a06",
    under="#0a5da8",
    ok="#41505f",
    caution="#7d5a00",
    edge="#7f868d",
    curves=("#1f2a37", "#a83a06", "#0a5da8", "#00795c", "#8a6400", "#8f3d78", "#3d7fa8", "#6b5b95"),
)

DARK = Theme(
    name="dark",
    is_dark=True,
    paper="#10141c",
    chrome="#171c26",
    surface="#1e2532",
    grid_dot="#262e3b",
    line="#2d3644",
    faint="#566273",
    ink="#e6eaf0",
    soft="#a3aebb",
    accent="#e8c468",
    accent_text="#e8c468",
    halo="#b08f3c",
    selection="#413c2a",
    over="#ff9457",
    under="#6db3ff",
    ok="#b4c0cc",
    caution="#e8c468",
    edge="#768396",
    curves=("#e6eaf0", "#ff9457", "#6db3ff", "#4fd1a5", "#e8c468", "#e08cc6", "#8fd0e8", "#b5a6e6"),
)

PRINT = replace(LIGHT, name="print", paper="#ffffff")
"""The light look on paper, which is white itself: what covers a line there leaves no tint."""

THEMES: dict[str, Theme] = {theme.name: theme for theme in (LIGHT, DARK)}

# light and dark value of each insulation colour, moved away from the paper where it would vanish on it
_INSULATION: dict[str, tuple[str, str]] = {
    "black": ("#16181c", "#8b929c"),
    "brown": ("#6f4022", "#b07a52"),
    "red": ("#b3261e", "#ff6f61"),
    "orange": ("#c25e00", "#ff9a3d"),
    "yellow": ("#9c8200", "#f0d54a"),
    "green": ("#1c7a3d", "#58c47e"),
    "blue": ("#1f5fa8", "#6aa8ff"),
    "violet": ("#6a3f9c", "#b48ae8"),
    "grey": ("#747b83", "#a2abb6"),
    "white": ("#8a9097", "#f4f6f8"),
    "pink": ("#b04a78", "#f29bc0"),
    "green-yellow": ("#5c7d1f", "#bcd44a"),
}


INSULATIONS: tuple[str, ...] = tuple(_INSULATION)
"""The plain names of the colours that wires come in."""


@lru_cache(maxsize=256)
def _pen(colour: str, width: float, dash: tuple[float, ...]) -> QPen:
    pen = QPen(QColor(colour), width)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    if dash:
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setDashPattern(list(dash))
    return pen


@lru_cache(maxsize=64)
def _brush(colour: str) -> QBrush:
    return QBrush(QColor(colour))


@lru_cache(maxsize=64)
def _font(px: float, bold: bool) -> QFont:
    font = QFont(FAMILY)
    font.setPixelSize(max(1, round(px)))
    font.setBold(bold)
    font.setFeature(_EQUAL_FIGURES, 1)
    return font


def searchable(font: QFont) -> QFont:
    """The font with plain figures and signs.

    Figures of equal width, and signs that suit their neighbours, are glyphs without a character of their own:
    in a PDF file they look right but can neither be searched nor copied.
    """
    plain = QFont(font)
    plain.unsetFeature(_EQUAL_FIGURES)
    plain.setFeature(_ALTERNATES, 0)
    return plain


@lru_cache(maxsize=1)
def load_fonts() -> tuple[str, ...]:
    """Load the bundled font into the running application; answers the families that came with it.

    Needs a QGuiApplication. A second call does nothing. Raises RuntimeError where a font file is damaged.
    """
    families: list[str] = []
    for name in _FONT_FILES:
        data = read_bytes("fonts", name)
        number = QFontDatabase.addApplicationFontFromData(QByteArray(data))
        if number < 0:
            raise RuntimeError(f"The bundled font {name} cannot be read.")
        families += QFontDatabase.applicationFontFamilies(number)
    return tuple(dict.fromkeys(families))


def icon(name: str, theme: Theme) -> QIcon:
    """A bundled icon in the ink of a theme, ``heaterloom`` in its own colours.

    Needs a QGuiApplication. Raises FileNotFoundError for a name that is not bundled.
    """
    source = read_bytes("icons", f"{name}.svg").decode()
    result = QIcon()
    for mode, role in ((QIcon.Mode.Normal, "ink"), (QIcon.Mode.Disabled, "edge")):
        coloured = source.replace("currentColor", str(getattr(theme, role)))
        renderer = QSvgRenderer(QByteArray(coloured.encode()))
        for size in _ICON_SIZES:
            pixmap = QPixmap(size, size)
            pixmap.fill(Qt.GlobalColor.transparent)
            painter = QPainter(pixmap)
            renderer.render(painter, QRectF(0, 0, size, size))
            painter.end()
            result.addPixmap(pixmap, mode)
    return result


def contrast(first: str, second: str) -> float:
    """Contrast ratio of two ``#rrggbb`` colours, 1 to 21, after WCAG 2.1 (relative luminance)."""
    high, low = sorted((_luminance(first), _luminance(second)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def _luminance(colour: str) -> float:
    channels = (int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5))
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def palette(theme: Theme) -> QPalette:
    """The palette for the Fusion style, with every role set and a group for what is disabled."""
    role = QPalette.ColorRole
    colours = {
        role.Window: theme.chrome,
        role.WindowText: theme.ink,
        role.Base: theme.surface,
        role.AlternateBase: theme.paper,
        role.Text: theme.ink,
        role.Button: theme.line if theme.is_dark else theme.chrome,
        role.ButtonText: theme.ink,
        role.BrightText: theme.over,
        role.Highlight: theme.selection,
        role.HighlightedText: theme.ink,
        role.ToolTipBase: theme.surface,
        role.ToolTipText: theme.ink,
        role.PlaceholderText: theme.soft,
        role.Link: theme.accent_text,
        role.LinkVisited: theme.soft,
        role.Accent: theme.accent,
        role.Light: theme.surface,
        role.Midlight: theme.line,
        role.Mid: theme.faint,
        role.Dark: theme.edge,
        role.Shadow: theme.paper if theme.is_dark else theme.faint,
    }
    result = QPalette()
    for each, value in colours.items():
        result.setColor(each, QColor(value))
    for each in (role.WindowText, role.Text, role.ButtonText, role.HighlightedText, role.ToolTipText):
        result.setColor(QPalette.ColorGroup.Disabled, each, QColor(theme.edge))
    result.setColor(QPalette.ColorGroup.Disabled, role.Highlight, QColor(theme.line))
    return result


_TICKED = ("QCheckBox", "QRadioButton", "QGroupBox", "QAbstractItemView")


def _states(selector: str, state: str) -> str:
    """Every part of a comma-separated selector in a state."""
    return ", ".join(f"{part}:{state}" for part in selector.split(", "))


def _tick(theme: Theme) -> str:
    """The file of the tick that stands out on the theme's accent."""
    return path("icons", f"tick-{theme.name}.svg")


def stylesheet(theme: Theme) -> str:
    """The style sheet that the palette cannot give: cards, strips, fields, and the marks of tick boxes.

    Object names: ``Card``, ``Strip``, ``Pane``; dynamic property ``role`` = ``title``, ``heading``, ``soft``,
    ``mend`` on labels.
    """
    indicator = ", ".join(f"{widget}::indicator" for widget in _TICKED)
    return f"""
    QWidget#Strip, QWidget#Pane {{ background: {theme.chrome}; }}
    QMainWindow#Ground::separator {{ background: {theme.chrome}; width: 7px; height: 7px; }}
    QMainWindow#Ground::separator:hover {{ background: {theme.line}; }}
    QMainWindow#Ground > QTabBar, QMainWindow#Ground > QTabBar::tab {{ height: 0; max-height: 0; min-height: 0;
        margin: 0; padding: 0; border: none; }}
    QFrame#Card {{ background: {theme.surface}; border: 1px solid {theme.line}; border-radius: 6px; }}
    QLabel {{ background: transparent; }}
    QLabel[role="title"] {{ color: {theme.ink}; font-size: 14px; font-weight: bold; }}
    QLabel[role="heading"] {{ color: {theme.ink}; font-weight: bold; }}
    QLabel[role="soft"] {{ color: {theme.soft}; }}
    QLabel[role="mend"] {{ color: {theme.accent_text}; font-weight: bold; }}
    QLineEdit {{ background: {theme.surface}; border: 1px solid {theme.edge}; border-radius: 4px;
        padding: 3px 6px; }}
    QLineEdit:focus {{ border-color: {theme.accent}; }}
    QAbstractSpinBox QLineEdit, QComboBox QLineEdit, QAbstractItemView QLineEdit {{
        border: none; border-radius: 0; padding: 0; }}
    QAbstractSpinBox, QComboBox {{ min-height: 22px; }}
    QPushButton {{ background: {theme.surface}; border: 1px solid {theme.edge}; border-radius: 4px;
        padding: 4px 12px; }}
    QPushButton:hover, QPushButton:focus {{ border-color: {theme.accent}; }}
    QPushButton:pressed, QPushButton:checked {{ background: {theme.selection}; }}
    QPushButton:disabled {{ color: {theme.edge}; background: transparent; border-color: {theme.line}; }}
    {indicator} {{ width: 13px; height: 13px; border: 1px solid {theme.edge}; border-radius: 3px;
        background: {theme.surface}; }}
    QRadioButton::indicator {{ border-radius: 7px; }}
    {_states(indicator, "checked")} {{ background: {theme.accent}; border-color: {theme.accent};
        image: url("{_tick(theme)}"); }}
    {_states(indicator, "checked:disabled")} {{ background: {theme.edge}; border-color: {theme.edge}; }}
    {_states(indicator, "indeterminate")} {{ background: {theme.faint}; border-color: {theme.edge}; }}
    {_states(indicator, "focus")} {{ border-color: {theme.accent}; }}
    QToolTip {{ color: {theme.ink}; background: {theme.surface}; border: 1px solid {theme.line};
        padding: 3px; }}
    """
