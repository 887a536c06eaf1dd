"""What lies where on the routing board: bodies and labels of parts, routes and texts of wires."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from typing import NamedTuple

from app.canvas.cells import Cells, touching
from app.canvas.pairs import AMPLITUDE, tracks_of_pair
from app.canvas.routing import CLEAR, Point, Rect, Route, Surroundings, Track, crosses, grown, tracks_of

_MARGIN = 2.0
_SAME = 0.01  # closer than this two terminals are one


class Kept(NamedTuple):
    """Where a wire lies and what it looked at when it was laid."""

    line: Route
    trunk: Route | None
    zone: tuple[Rect, ...]


class Occupancy:
    """Bodies and labels of parts by part id, routes and texts by wire id.

    ``ranks`` says for each wire in which place it is laid; without a rank it comes last.
    """

    def __init__(self) -> None:
        self.routes: dict[str, Route] = {}
        self.trunks: dict[str, Route] = {}
        self.ranks: Mapping[str, float] = {}
        self.part_ranks: Mapping[str, int] = {}
        self.zones = Cells()
        self._tracks: dict[str, list[Track]] = {}
        self._bodies = Cells()
        self._labels = Cells()
        self._volts = Cells()
        self._wide_volts = Cells()
        self._wires = Cells()
        self._texts = Cells()

    def place(
        self,
        part_id: str,
        body: Rect,
        label: Rect,
        volts: tuple[Rect, ...] = (),
        wide_volts: tuple[Rect, ...] = (),
    ) -> None:
        """Put a part with its label and the volts at its pins, or move it; twisted pairs keep off ``wide_volts``."""
        self._bodies.put(part_id, (body,))
        self._labels.put(part_id, (label,))
        self._volts.put(part_id, volts)
        self._wide_volts.put(part_id, wide_volts)

    def is_label_free(self, part_id: str, rect: Rect) -> bool:
        """Whether a label may stand there: off all bodies and volts, and off the labels of parts of lower rank."""
        rank = self.part_ranks.get(part_id, 0)
        return (
            all(name == part_id for name in self._bodies.near(rect))
            and all(self.part_ranks.get(name, 0) >= rank for name in self._labels.near(rect))
            and not self._volts.near(rect)
        )

    def place_words(self, part_id: str, rect: Rect) -> None:
        """Put a note: words that wires go round as they do round labels."""
        self._bodies.drop(part_id)
        self._labels.put(part_id, (rect,))

    def remove_part(self, part_id: str) -> None:
        """Take a part away."""
        self._bodies.drop(part_id)
        self._labels.drop(part_id)
        self._volts.drop(part_id)
        self._wide_volts.drop(part_id)

    def taken_by(self, part_id: str) -> set[Rect]:
        """What body and labels of a part take; empty for a part that is not on the board."""
        return {
            *self._bodies.rects(part_id),
            *self._labels.rects(part_id),
            *self._volts.rects(part_id),
            *self._wide_volts.rects(part_id),
        }

    def parts_near(self, rect: Rect) -> list[str]:
        """Parts whose body or label shares area with a rectangle."""
        return sorted({*self._bodies.near(rect), *self._labels.near(rect)})

    def lift(self, wire_id: str) -> None:
        """Take a wire off the board; unknown wires are ignored."""
        self.routes.pop(wire_id, None)
        self.trunks.pop(wire_id, None)
        self._tracks.pop(wire_id, None)
        self._wires.drop(wire_id)
        self.zones.drop(wire_id)

    def around(
        self,
        region: Rect,
        clear: float = CLEAR,
        ends: tuple[Point, ...] = (),
        before: float = math.inf,
        wide: bool = False,
    ) -> Surroundings:
        """What lies in a region; wires that end on one of the points ``ends`` are kin."""
        near = grown(region, clear)
        half = AMPLITUDE if wide else 0.0
        strangers: list[Track] = []
        kin: list[Track] = []
        for name in self._wires.near(region):
            if self._rank(name) >= before < math.inf:
                continue
            line = self.routes[name]
            is_kin = any(_same(end, own) for end in ends for own in (line[0], line[-1]))
            for track in self._tracks[name]:
                if touching(_box_of(track), region):
                    # twisted with another, not even a wire on the same terminal may be lain on
                    (kin if is_kin and not track.half else strangers).append(track)
        return Surroundings(
            bodies=[rect for name in self._bodies.near(near) for rect in self._bodies.rects(name)],
            labels=[
                grown(rect, more)
                for words, more in ((self._labels, half), (self._wide_volts if wide else self._volts, 0.0))
                for name in words.near(region)
                for rect in words.rects(name)
            ],
            tracks=strangers,
            kin=kin,
            clear=clear,
            half=half,
        )

    def through(self, rect: Rect) -> set[str]:
        """Wires that run through a rectangle."""
        return {
            name
            for name in self._wires.near(rect)
            if any(crosses(track, rect) for track in self._tracks[name])
        }

    def text_spot(self, wire_id: str, width: float, height: float) -> Point | None:
        """A free place (its top left corner) for a wire's text, beside its longest piece if it can be, or None.

        Texts of wires of higher rank make room.
        """
        self._texts.drop(wire_id)
        lines = self.trunks.get(wire_id, ()), self.routes[wire_id]
        gap = 3.0 + (AMPLITUDE if wire_id in self.trunks else 0.0)
        rank = self._rank(wire_id)
        pieces = (
            piece for line in lines for piece in sorted(tracks_of(line), key=lambda track: -track.length)
        )
        for piece in pieces:
            for rect in _text_places(piece, width, height, gap):
                if self._is_free(rect, rank):
                    self._texts.put(wire_id, (rect,))
                    return rect[0], rect[1]
        return None

    def drop_text(self, wire_id: str) -> None:
        """Free the place that a wire's text takes."""
        self._texts.drop(wire_id)

    def text_rect(self, wire_id: str) -> Rect | None:
        """Where the text of a wire stands, if it has one."""
        return next(iter(self._texts.rects(wire_id)), None)

    def text_rects(self) -> list[Rect]:
        """Where texts of wires stand."""
        return self._texts.all()

    def wires_near(self, rect: Rect) -> list[str]:
        """Wires with a piece near a rectangle."""
        return self._wires.near(rect)

    def boxes(self, wire_id: str) -> list[Rect]:
        """The places that the pieces of a wire take; empty for a wire that is not on the board."""
        return [_box_of(track) for track in self._tracks.get(wire_id, ())]

    def kept(self, wire_id: str) -> Kept:
        """Where a wire lies, so that it can be put back."""
        return Kept(self.routes[wire_id], self.trunks.get(wire_id), self.zones.rects(wire_id))

    def keep_shifted(self, wire_id: str, kept: Kept, dx: float, dy: float) -> None:
        """Put a wire where it lay, or shifted from there."""

        def moved(line: Route) -> Route:
            return tuple((x + dx, y + dy) for x, y in line) if dx or dy else line

        self.keep(wire_id, moved(kept.line), None if kept.trunk is None else moved(kept.trunk))
        self.zones.put(wire_id, kept.zone)

    def keep(self, wire_id: str, line: Route, trunk: Route | None = None) -> Route:
        """Put a wire on a route that is known already."""
        self.routes[wire_id] = line
        self.trunks.pop(wire_id, None)
        if trunk is not None:
            self.trunks[wire_id] = trunk
        self._tracks[wire_id] = tracks_of_pair(line, trunk)
        self._wires.put(wire_id, (_box_of(track) for track in self._tracks[wire_id]))
        return line

    def _is_free(self, rect: Rect, rank: float) -> bool:
        return not (
            self._bodies.near(rect)
            or self._labels.near(rect)
            or self._volts.near(rect)
            or self._wires.near(rect)
            or any(self._rank(name) < rank for name in self._texts.near(rect))
        )

    def _rank(self, wire_id: str) -> float:
        return self.ranks.get(wire_id, math.inf)


def _same(a: Point, b: Point) -> bool:
    return abs(a[0] - b[0]) < _SAME and abs(a[1] - b[1]) < _SAME


def _box_of(track: Track) -> Rect:
    low, high, at, side = track.low, track.high, track.at, _MARGIN + track.half
    if track.level:
        return low - _MARGIN, at - side, high + _MARGIN, at + side
    return at - side, low - _MARGIN, at + side, high + _MARGIN


def _text_places(piece: Track, width: float, height: float, gap: float) -> Iterator[Rect]:
    """Rectangles beside a straight piece: its middle first, then its quarters; above and right first."""
    for share in (0.5, 0.3, 0.7):
        centre = piece.low + (piece.high - piece.low) * share
        if piece.level:
            left = centre - width / 2
            if left < piece.low + 2 or left + width > piece.high - 2:
                continue
            for top in (piece.at - gap - height, piece.at + gap):
                yield left, top, left + width, top + height
        elif piece.high - piece.low >= height + 8:
            top = centre - height / 2
            for left in (piece.at + gap + 2, piece.at - gap - 2 - width):
                yield left, top, left + width, top + height
