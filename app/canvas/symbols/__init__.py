"""The symbols of all parts, found by kind. A kind without a symbol still draws as an honest labelled box.

Coordinates are relative to the part's place, its turn applied, y down; text is never turned.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from PySide6.QtCore import Qt
from PySide6.QtGui import QBrush, QPainter, QPainterPath, QPen

from app.canvas.look import PartLook
from app.canvas.symbols import passives, remarks, supplies
from app.canvas.symbols.drawing import Drawing, paint_drawing, paint_shape
from app.canvas.symbols.geometry import (
    Box,
    Terminal,
    flip_box,
    flip_terminal,
    stray_terminal,
    turn_box,
    turn_terminal,
)
from app.canvas.symbols.glow import glow
from app.canvas.symbols.labels import SHOW_FROM, SIDES, Label, label_of, paint_label, paint_mark, place_label
from app.canvas.symbols.rating import TypeSource, rating_text
from app.canvas.symbols.socket import (
    outline,
    paint_socket,
    pin_volts_boxes,
    socket_body,
    socket_of,
    tube_terminals,
)
from app.theme import Theme
from core.sheet import REMARK_KINDS, AnyPart, Frame, Lamp, Note, Tube
from core.terminals import terminal_names

__all__ = [
    "DETAIL_FROM",
    "SIDES",
    "Box",
    "Terminal",
    "body",
    "glow",
    "label_box",
    "paint_mark",
    "paint_part",
    "rating_text",
    "terminal",
    "terminals",
    "volts_boxes",
]

DETAIL_FROM = 0.35  # screen pixels per unit below which only a filled outline is painted
_LETTERS_FROM = 0.6

# symbols that look the same for every part of their kind, and those that depend on the part
_PLAIN: dict[str, Callable[[], Drawing]] = {
    "lamp": passives.lamp,
    "dc_supply": supplies.dc_supply,
    "battery": supplies.battery,
    "mains_feed": supplies.mains_feed,
    "rectified_supply": supplies.rectified_supply,
    "resistor": passives.resistor,
    "thermistor": passives.thermistor,
    "fuse": passives.fuse,
    "capacitor": passives.capacitor,
    "diode": passives.diode,
    "elevation": supplies.elevation,
    "chassis": passives.chassis,
    "joint": passives.joint,
}
_VARIED: dict[str, Callable[[AnyPart], Drawing]] = {
    "winding": supplies.winding,
    "relay": passives.relay,
    "switch": passives.switch,
    "balance": passives.balance,
}


def _drawing(part: AnyPart, look: PartLook | None = None) -> Drawing:
    if part.kind == "relay" and look is not None:
        return passives.relay(part, look.pulled_in)
    if part.kind in _PLAIN:
        return _PLAIN[part.kind]()
    if part.kind in _VARIED:
        return _VARIED[part.kind](part)
    return passives.labelled_box(part.kind, terminal_names(part) or ())


def terminals(part: AnyPart, catalogue: TypeSource) -> tuple[Terminal, ...]:
    """Every point of a part where a wire may end. A tube gives all pins of its base, clockwise.

    A tube of a type that is not known gives nine pins in no true place, none of them a heater pin.
    """
    if isinstance(part, Tube):
        return tube_terminals(part, catalogue.tube(part.type))
    if part.kind in REMARK_KINDS:
        return ()
    ends = _drawing(part).terminals
    return tuple(turn_terminal(flip_terminal(end) if part.mirror else end, part.turn) for end in ends)


def terminal(part: AnyPart, catalogue: TypeSource, name: str) -> Terminal:
    """The terminal of a name, also where the base has no such pin: then a place on the outline.

    So a wire to a wrong pin can still be seen and mended.
    """
    for end in terminals(part, catalogue):
        if end.name == name:
            return end
    return stray_terminal(name, body(part, catalogue))


def body(part: AnyPart, catalogue: TypeSource) -> Box:
    """The box around the symbol, pin numbers and leads included, without its label."""
    if isinstance(part, Tube):
        return turn_box(socket_body(socket_of(catalogue.tube(part.type))), part.turn)
    if isinstance(part, Note):
        return remarks.note_body(part)
    if isinstance(part, Frame):
        return remarks.frame_body(part)
    box = _drawing(part).body
    return turn_box(flip_box(box) if part.mirror else box, part.turn)


def label_box(part: AnyPart, catalogue: TypeSource, look: PartLook, theme: Theme, side: int = 0) -> Box:
    """The box of the label lines, on the best side or the next best; empty for a note or frame, which need none.

    Needs a QGuiApplication, as it measures text.
    """
    if part.kind in REMARK_KINDS:
        return Box(0.0, 0.0, 0.0, 0.0)
    return _label(part, catalogue, look, theme, side)[1]


def _label(
    part: AnyPart, catalogue: TypeSource, look: PartLook, theme: Theme, side: int
) -> tuple[Label, Box, float]:
    label = label_of(part.id, rating_text(part, catalogue), look)
    box, align = place_label(label, body(part, catalogue), terminals(part, catalogue), theme, side)
    return label, box, align


def volts_boxes(part: AnyPart, catalogue: TypeSource, theme: Theme, beyond: float = 0.0) -> tuple[Box, ...]:
    """Where the volts of a tube's heater pins stand, outside its body, and ``beyond``; nothing for other parts."""
    return pin_volts_boxes(part, catalogue.tube(part.type), theme, beyond) if isinstance(part, Tube) else ()


def paint_part(
    painter: QPainter,
    part: AnyPart,
    catalogue: TypeSource,
    look: PartLook,
    theme: Theme,
    scale: float,
    ghost: PartLook | None = None,
    side: int = 0,
) -> None:
    """Paint a part's symbol, label and figures about the origin.

    ``scale`` is in screen pixels per unit; the less there are, the less detail is painted. With a ``ghost`` the
    part looks as it would, its figures marked as such, and nothing of it stands elsewhere than without. ``side`` is
    that of the label, see :func:`label_box`.
    """
    painter.save()
    label_look, look = look, look if ghost is None else ghost
    if isinstance(part, Note):
        remarks.paint_note(painter, part, theme, scale)
    elif isinstance(part, Frame):
        remarks.paint_frame(painter, part, theme, scale)
    elif isinstance(part, Tube):
        _paint_tube(painter, part, catalogue, look, theme, scale)
    else:
        _paint_other(painter, part, look, theme, scale)
    if scale >= SHOW_FROM and part.kind not in REMARK_KINDS:
        label, box, align = _label(part, catalogue, label_look, theme, side)
        would = None if ghost is None else label_of(part.id, "", ghost)
        upwards = would is not None and box.bottom <= body(part, catalogue).top
        paint_label(painter, label, box, align, theme, would, upwards)
    painter.restore()


def _paint_tube(
    painter: QPainter, part: Tube, catalogue: TypeSource, look: PartLook, theme: Theme, scale: float
) -> None:
    kind = catalogue.tube(part.type)
    if scale >= DETAIL_FROM:
        paint_socket(painter, part, kind, look, theme, scale)
        return
    paint_far(painter, far_tube(part, catalogue, look, theme))


class FarTube(NamedTuple):
    """A tube as it is seen from afar: the outline of its socket in the colour of its heater."""

    pen: QPen
    brush: QBrush
    outline: QPainterPath


def far_tube(part: Tube, catalogue: TypeSource, look: PartLook, theme: Theme) -> FarTube:
    """What is painted of a tube below ``DETAIL_FROM``; worth keeping where there are hundreds."""
    pen = QPen(theme.pen("ink", theme.halo_width))
    pen.setColor(glow(max(look.kelvin.values(), default=0.0), theme))
    return FarTube(pen, theme.brush("surface"), outline(socket_of(catalogue.tube(part.type))))


def paint_far(painter: QPainter, far: FarTube) -> None:
    """Paint a tube as it is seen from afar."""
    painter.setPen(far.pen)
    painter.setBrush(far.brush)
    painter.drawPath(far.outline)


def _paint_other(painter: QPainter, part: AnyPart, look: PartLook, theme: Theme, scale: float) -> None:
    drawing = _drawing(part, look)
    if scale < DETAIL_FROM:
        paint_shape(painter, drawing, part.turn, theme, part.mirror)
        return
    paint_drawing(painter, drawing, part.turn, theme, letters=scale >= _LETTERS_FROM, mirror=part.mirror)
    if isinstance(part, Lamp):
        pen = QPen(theme.pen("ink", theme.heavy_width))
        pen.setColor(glow(max(look.kelvin.values(), default=0.0), theme))
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(passives.lamp_cross())
