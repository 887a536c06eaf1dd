"""The items of the drawing: one for a part, one for a wire. They show what the scene tells them, no more."""

from __future__ import annotations

import logging
import math
from collections.abc import Sequence

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPainterPath, QPainterPathStroker, QPolygonF
from PySide6.QtWidgets import QGraphicsEllipseItem, QGraphicsItem, QStyleOptionGraphicsItem, QWidget

from app.canvas import symbols
from app.canvas.look import PartLook
from app.canvas.meetings import Hop
from app.canvas.pairs import Sides, lead_to, waves
from app.canvas.places import Place
from app.canvas.routing import Point, Route
from app.canvas.symbols.drawing import keeps_words
from app.theme import Theme, searchable
from core.catalogue import Catalogue
from core.catalogue.wire import awg_area_mm2
from core.sheet import Tube, Wire

FRAME_LAYER = -1.0  # beneath everything
PART_LAYER, WIRE_LAYER, DOT_LAYER, PREVIEW_LAYER = 0.0, 1.0, 2.0, 10.0
TEXT_PX = 11.0
_TEXT_FROM = 0.6  # screen pixels per unit below which wires carry no text
_HALO = 46.0
_DOT = 3.6
_CORNER = 6.0
_PICK = 10.0
# up to so many square millimetres the line is so many times as heavy as usual
_WEIGHTS = ((0.3, 0.85), (0.7, 1.0), (1.3, 1.2), (math.inf, 1.4))
_SIDE = 130.0  # half the width that a line of figures may take
_MARGIN = 8.0
_log = logging.getLogger(__name__)


def _paint_failure(painter: QPainter, rect: QRectF, theme: Theme, item_id: str) -> None:
    """What stands in for an item that cannot be painted; an exception must not leave paint()."""
    _log.exception("painting %s failed", item_id)
    painter.setPen(theme.pen("over", 2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(rect.adjusted(2, 2, -2, -2))


class PartItem(QGraphicsItem):
    """A part with its label, and its halo when selected."""

    def __init__(self, place: Place, catalogue: Catalogue, theme: Theme) -> None:
        super().__init__()
        self.place = place
        self.catalogue = catalogue
        self.theme = theme
        self._look = PartLook()
        self._ghost: PartLook | None = None
        self.is_selected = False
        self._far: symbols.FarTube | None = None  # kept, as hundreds may be painted at once
        self._bounds = QRectF()
        self.setZValue(FRAME_LAYER if place.part.kind == "frame" else PART_LAYER)
        self.show_place(place, catalogue)

    @property
    def look(self) -> PartLook:
        """What the answers say about the part."""
        return self._look

    @look.setter
    def look(self, look: PartLook) -> None:
        self._look = look
        self._far = None

    @property
    def ghost(self) -> PartLook | None:
        """How the part would look if what is considered were done; None where that is as it is."""
        return self._ghost

    @ghost.setter
    def ghost(self, ghost: PartLook | None) -> None:
        self._ghost = ghost
        self._far = None

    def show_place(self, place: Place, catalogue: Catalogue) -> None:
        """Show a part at a place, which may be another part or place than before."""
        self._far = None
        if place.body != self.place.body or place.label != self.place.label or self._bounds.isNull():
            self.prepareGeometryChange()
            self._bounds = _bounds_of(place)
        self.place = place
        self.catalogue = catalogue
        self.setPos(*place.part.at)
        self.update()

    def boundingRect(self) -> QRectF:
        """Symbol, label and halo."""
        return self._bounds

    def shape(self) -> QPainterPath:
        """The body, for picking."""
        path = QPainterPath()
        path.addRect(_local(self.place, self.place.body))
        return path

    def paint(
        self, painter: QPainter, _option: QStyleOptionGraphicsItem, _widget: QWidget | None = None
    ) -> None:
        """Paint halo and symbol."""
        try:
            scale = painter.worldTransform().m11()
            if self.is_selected:
                self._paint_halo(painter, scale)
            elif scale < symbols.DETAIL_FROM and isinstance(self.place.part, Tube):
                if self._far is None:
                    look = self._ghost or self._look
                    self._far = symbols.far_tube(self.place.part, self.catalogue, look, self.theme)
                symbols.paint_far(painter, self._far)
                return
            part, ghost, side = self.place.part, self._ghost, self.place.side
            symbols.paint_part(painter, part, self.catalogue, self.look, self.theme, scale, ghost, side)
        except Exception:  # Qt aborts or repeats for ever on an exception from paint()
            _paint_failure(painter, self._bounds, self.theme, self.place.part.id)

    def _paint_halo(self, painter: QPainter, scale: float) -> None:
        width = self.theme.halo_width * max(1.0, min(1.0 / scale, 4.0))
        painter.setPen(self.theme.pen("halo", width))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        body = _local(self.place, self.place.body)
        if self.place.part.kind == "tube" and body.width() == body.height():
            painter.drawEllipse(QPointF(0, 0), _HALO - 3, _HALO - 3)
        else:
            painter.drawRoundedRect(body.adjusted(-4, -4, 4, 4), 6, 6)


class DotItem(QGraphicsEllipseItem):
    """The dot where conductors join: on a terminal of three or more wires, and where wires of one net part."""

    def __init__(self, at: Point, theme: Theme) -> None:
        super().__init__(-_DOT, -_DOT, 2 * _DOT, 2 * _DOT)
        self.setPen(Qt.PenStyle.NoPen)
        self.setBrush(theme.brush("ink"))
        self.setPos(*at)
        self.setZValue(DOT_LAYER)


def _local(place: Place, rect: tuple[float, float, float, float]) -> QRectF:
    x, y = place.part.at
    return QRectF(rect[0] - x, rect[1] - y, rect[2] - rect[0], rect[3] - rect[1])


def _bounds_of(place: Place) -> QRectF:
    """Room for symbol, halo and a label with the longest figures, so that new figures need no new room."""
    label = _local(place, place.label)
    side = max(_SIDE - label.width() / 2, 0.0)
    body = _local(place, place.body).adjusted(-_MARGIN, -_MARGIN - 8, _MARGIN, _MARGIN)
    return body.united(label.adjusted(-side, -_MARGIN, side, _MARGIN))


class WireItem(QGraphicsItem):
    """A wire along its route, twisted with its partner along the trunk they share."""

    def __init__(self, wire: Wire, theme: Theme) -> None:
        super().__init__()
        self.wire = wire
        self.theme = theme
        self.text = ""
        self.is_selected = False
        self._path = QPainterPath()
        self._corners = QPolygonF()
        self._far_pen = theme.pen("ink", theme.heavy_width)
        self._shape = QPainterPath()
        self._bounds = QRectF()
        self._text_at: Point | None = None
        self._tint: QColor | None = None
        self._width = theme.line_width
        self.setZValue(WIRE_LAYER)

    def show_route(
        self, wire: Wire, route: Route, trunk: Route | None, sides: Sides, hops: Sequence[Hop] = ()
    ) -> None:
        """Show the wire along a route, with a small bridge where it crosses others."""
        self.prepareGeometryChange()
        self.wire = wire
        self._tint = tint(wire.colour, self.theme)
        self._corners = QPolygonF([QPointF(x, y) for x, y in route])
        self._path = _rounded(route, hops) if trunk is None else _twisted(route, trunk, sides, hops)
        self._width = line_weight(wire, self.theme)
        stroker = QPainterPathStroker()
        stroker.setWidth(_PICK)
        self._shape = stroker.createStroke(_polyline(route))
        self._set_bounds()

    def show_text(self, text: str, at: Point | None) -> None:
        """Set the text and the place (top left corner) where it stands, None for nowhere."""
        if text == self.text and at == self._text_at:
            return
        self.prepareGeometryChange()
        self.text = text
        self._text_at = at
        self._set_bounds()
        self.update()

    def _set_bounds(self) -> None:
        bounds = self._path.controlPointRect().adjusted(-_MARGIN, -_MARGIN, _MARGIN, _MARGIN)
        if self._text_at is not None:
            bounds = bounds.united(QRectF(*self._text_at, *text_size(self.text, self.theme)))
        self._bounds = bounds

    def boundingRect(self) -> QRectF:
        """The path with its halo, and the text."""
        return self._bounds

    def shape(self) -> QPainterPath:
        """A band along the wire, for picking."""
        return self._shape

    def paint(
        self, painter: QPainter, _option: QStyleOptionGraphicsItem, _widget: QWidget | None = None
    ) -> None:
        """Paint halo, tint, line and text."""
        try:
            scale = painter.worldTransform().m11()
            if scale < symbols.DETAIL_FROM and not self.is_selected:
                painter.setPen(self._far_pen)
                painter.drawPolyline(self._corners)
            else:
                self._paint(painter, scale)
        except Exception:  # Qt aborts or repeats for ever on an exception from paint()
            _paint_failure(painter, self._bounds, self.theme, self.wire.id)

    def _paint(self, painter: QPainter, scale: float) -> None:
        theme = self.theme
        width = self._width
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if self.is_selected:
            painter.setPen(theme.pen("halo", width + 2 * theme.halo_width))
            painter.drawPath(self._path)
        if self._tint is not None:
            pen = theme.pen("ink", width + 2.0)
            pen.setColor(self._tint)
            painter.setPen(pen)
            painter.drawPath(self._path)
        painter.setPen(theme.pen("ink", width))
        painter.drawPath(self._path)
        if self._text_at is not None and scale >= _TEXT_FROM:
            font = theme.font(TEXT_PX)
            painter.setFont(searchable(font) if keeps_words(painter) else font)
            painter.setPen(theme.colour("soft"))
            area = QRectF(*self._text_at, *text_size(self.text, theme))
            painter.drawText(area, Qt.AlignmentFlag.AlignCenter, self.text)


def tint(name: str | None, theme: Theme) -> QColor | None:
    """The colour of a wire's insulation from its plain name or ``#rrggbb``; None for anything else."""
    if not name:
        return None
    colour = theme.insulation(name)
    if colour is None and QColor.isValidColorName(name):
        colour = QColor(name)
    return colour


def line_weight(wire: Wire, theme: Theme) -> float:
    """How heavy a wire is drawn: a strap as such, any other by its conductor in a few light steps."""
    if wire.is_strap:
        return theme.heavy_width
    area = wire.area_mm2 if wire.area_mm2 is not None else awg_area_mm2(wire.awg or 0)
    return theme.line_width * next(factor for most, factor in _WEIGHTS if area <= most)


def text_size(text: str, theme: Theme) -> Point:
    """Width and height of a wire's text."""
    metrics = QFontMetricsF(theme.font(TEXT_PX))
    return math.ceil(metrics.horizontalAdvance(text)) + 2.0, math.ceil(metrics.height())


def _polyline(points: Route | list[Point], gaps: Sequence[Hop] = ()) -> QPainterPath:
    path = QPainterPath(QPointF(*points[0]))
    for x, y in points[1:]:
        if any(max(abs(x - gap.at[0]), abs(y - gap.at[1])) < gap.radius for gap in gaps):
            path.moveTo(x, y)
        else:
            path.lineTo(x, y)
    return path


def _rounded(points: Route | list[Point], hops: Sequence[Hop] = ()) -> QPainterPath:
    """A polyline with rounded corners and hops."""
    path = QPainterPath(QPointF(*points[0]))
    for before, corner, after in zip(points, points[1:], points[2:], strict=False):
        into, out = math.dist(before, corner), math.dist(corner, after)
        radius = min(_CORNER, into / 2, out / 2)
        _line_over(path, before, corner, hops)
        if radius < 0.5:
            path.lineTo(*corner)
            continue
        path.lineTo(*_towards(corner, before, radius / into))
        path.quadTo(QPointF(*corner), QPointF(*_towards(corner, after, radius / out)))
    if len(points) > 1:
        _line_over(path, points[-2], points[-1], hops)
    path.lineTo(*points[-1])
    return path


def _line_over(path: QPainterPath, a: Point, b: Point, hops: Sequence[Hop]) -> None:
    """Draw the hops of one straight piece: half circles upwards, or to the right in an upright piece."""
    is_level = abs(b[0] - a[0]) >= abs(b[1] - a[1])
    along, across = (0, 1) if is_level else (1, 0)
    low, high = sorted((a[along], b[along]))
    own = [
        hop
        for hop in hops
        if hop.is_level == is_level
        and abs(hop.at[across] - a[across]) < 0.5
        and low + hop.radius < hop.at[along] < high - hop.radius
    ]
    forward = b[along] > a[along]
    for hop in sorted(own, key=lambda hop: hop.at[along], reverse=not forward):
        (x, y), radius = hop.at, hop.radius
        if hop.is_gap:
            step = radius if forward else -radius
            path.lineTo(*((x - step, y) if is_level else (x, y - step)))
            path.moveTo(*((x + step, y) if is_level else (x, y + step)))
            continue
        square = QRectF(x - radius, y - radius, 2 * radius, 2 * radius)
        if is_level:
            path.arcTo(square, 180.0 if forward else 0.0, -180.0 if forward else 180.0)
        else:
            path.arcTo(square, 90.0 if forward else 270.0, -180.0 if forward else 180.0)


def _towards(a: Point, b: Point, share: float) -> Point:
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


def _twisted(route: Route, trunk: Route, sides: Sides, hops: Sequence[Hop]) -> QPainterPath:
    """Straight leads at both ends and waves along the trunk, which begin and end beside it."""
    wave = waves(trunk, sides)
    path = _rounded([*lead_to(trunk[0], trunk[1], route), wave[0]], hops)
    path.connectPath(_polyline(wave, [hop for hop in hops if hop.is_gap]))
    end = reversed(lead_to(trunk[-1], trunk[-2], tuple(reversed(route))))
    path.connectPath(_rounded([wave[-1], *end], hops))
    return path
