"""Ways in legs through corners that are set, and the plainest way of all."""

from __future__ import annotations

from app.canvas.routing import Port, Route, simplified


def turns_back(line: Route, following: Route) -> bool:
    """Whether a line goes straight back where the one before it ended."""
    if len(line) < 2 or len(following) < 2:
        return False
    (ax, ay), (bx, by), (cx, cy) = line[-2], line[-1], following[1]
    return (bx - ax) * (cx - bx) + (by - ay) * (cy - by) < 0


def across(port: Port, line: Route) -> Port:
    """A free port that is to be passed across the way in which a line leaves it."""
    is_level = abs(line[1][0] - line[0][0]) > abs(line[1][1] - line[0][1])
    return Port(port.x, port.y, 0.0 if is_level else 1.0, 1.0 if is_level else 0.0, 0.0)


def plain_route(start: Port, end: Port) -> Route:
    """The simplest route, minding nothing in its way; the last resort for parts on top of each other."""
    (sx, sy), (ex, ey) = start.exit, end.exit
    corner = (ex, sy) if start.is_level else (sx, ey)
    return simplified((start.point, (sx, sy), corner, (ex, ey), end.point))
