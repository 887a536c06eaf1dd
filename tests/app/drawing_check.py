"""What is wrong with a drawing as geometry: wires through bodies and texts, wires on each other, texts that meet.

``faults_of`` answers sentences, none for a drawing that is fit to print.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator, Mapping

from app.canvas import symbols
from app.canvas.cells import touching
from app.canvas.items import text_size
from app.canvas.pairs import AMPLITUDE
from app.canvas.routing import Rect, Route, Track, crosses, grown, tracks_of
from app.canvas.scene import SheetScene
from app.canvas.symbols.socket import pin_volts_boxes
from core.sheet import REMARK_KINDS, Sheet, Tube, split_terminal

TOUCH = 0.6  # texts may come so near each other
APART = 4.0  # two wires side by side are told apart from here on
CLEAR_OF_PAIR = 8.0  # what stays free between the waves of a pair and any other wire or pair beside it
SHORT = 12.0  # a shared stretch up to here is no more than a corner

Named = tuple[str, Rect]


def faults_of(scene: SheetScene) -> list[str]:
    """Everything wrong with a drawing that has been laid out."""
    return [
        *wires_through_bodies(scene),
        *wires_through_texts(scene),
        *wires_on_each_other(scene),
        *wires_close_to_pairs(scene),
        *texts_that_meet(scene),
        *what_is_cut(scene),
    ]


def nets_of(sheet: Sheet) -> dict[str, str]:
    """A name of the net of every wire: wires on the same terminal, and all on a chassis, are one."""
    net: dict[str, str] = {}

    def root(name: str) -> str:
        while net.setdefault(name, name) != name:
            name = net[name]
        return name

    for wire in sheet.wires:
        for end in (wire.start, wire.end):
            net[root(end)] = root(wire.id)
    return {wire.id: root(wire.id) for wire in sheet.wires}


def inner_pieces(line: Route) -> list[Track]:
    """The pieces between the two that lead out of the parts at the ends."""
    return tracks_of(line)[1:-1]


def wires_through_bodies(scene: SheetScene) -> Iterator[str]:
    """No piece may run through a part that the wire does not end on, no inner one through its own."""
    sheet, layout = scene.document.sheet, scene.layout_
    for wire in sheet.wires:
        own = {split_terminal(wire.start)[0], split_terminal(wire.end)[0]}
        line = layout.board.routes[wire.id]
        for part_id, place in layout.places.items():
            if place.part.kind in REMARK_KINDS:
                continue
            pieces = inner_pieces(line) if part_id in own else tracks_of(line)
            if any(crosses(piece, grown(place.body, -1.0)) for piece in pieces):
                yield f"{wire.id} runs through {part_id}"


def texts_of(scene: SheetScene) -> list[Named]:
    """Every text as it is shown: labels, volts at pins, texts of wires, notes."""
    found: list[Named] = []
    for part_id, item in scene.part_items.items():
        place = scene.layout_.places[part_id]
        x, y = place.part.at
        if place.part.kind == "note":
            found.append((part_id, place.body))
        if place.part.kind in REMARK_KINDS:
            continue
        box = symbols.label_box(place.part, scene.document.catalogue, item.look, scene.theme, place.side)
        found.append((part_id, (box.left + x, box.top + y, box.right + x, box.bottom + y)))
        if item.look.pin_values and isinstance(place.part, Tube):
            kind = scene.document.catalogue.tube(getattr(place.part, "type", ""))
            for volts in pin_volts_boxes(place.part, kind, scene.theme, beyond=0.0):
                box = volts.moved(x, y)
                found.append((f"volts of {part_id}", (box.left, box.top, box.right, box.bottom)))
    for wire_id, wire_item in scene.wire_items.items():
        at = scene.wire_text_at(wire_id)
        if at is not None:
            width, height = text_size(wire_item.text, scene.theme)
            found.append((f"text of {wire_id}", (at[0], at[1], at[0] + width, at[1] + height)))
    return found


def texts_that_meet(scene: SheetScene) -> Iterator[str]:
    """No two texts, and no text and the body of another part, may share any area."""
    texts = texts_of(scene)
    for (first, one), (second, other) in itertools.combinations(texts, 2):
        if first != second and touching(grown(one, -TOUCH), grown(other, -TOUCH)):
            yield f"{first} meets {second}"
    for name, rect in texts:
        for part_id, place in scene.layout_.places.items():
            if place.part.kind in REMARK_KINDS or name in (part_id, f"volts of {part_id}"):
                continue
            if touching(grown(rect, -TOUCH), grown(place.body, -TOUCH)):
                yield f"{name} meets the body of {part_id}"


def wires_through_texts(scene: SheetScene) -> Iterator[str]:
    """No wire may run through a text."""
    texts, board = texts_of(scene), scene.layout_.board
    for wire_id, line in board.routes.items():
        waves = tracks_of(board.trunks.get(wire_id, ()))
        for name, rect in texts:
            if any(crosses(piece, rect) for piece in tracks_of(line)):
                yield f"{wire_id} runs through {name}"
            elif any(crosses(piece, grown(rect, AMPLITUDE)) for piece in waves):
                yield f"{wire_id} waves through {name}"


def wires_on_each_other(scene: SheetScene) -> Iterator[str]:
    """Wires of different nets may cross, but not run on top of each other; a pair shares its trunk."""
    sheet, board = scene.document.sheet, scene.layout_.board
    nets = nets_of(sheet)
    for first, second in itertools.combinations(board.routes, 2):
        if nets[first] == nets[second] or _are_pair(scene, first, second):
            continue
        length = shared_length(board.routes[first], board.routes[second])
        if length > SHORT:
            yield f"{first} lies on {second} for {length:.0f}"


def wires_close_to_pairs(scene: SheetScene) -> Iterator[str]:
    """No wire runs close beside the waves of a pair that it does not belong to; to cross them is another matter."""
    board, followers = scene.layout_.board, scene.layout_.followers
    for pair in board.trunks.keys() - followers.keys():
        trunk = tracks_of(board.trunks[pair])
        for other in board.routes:
            if other == pair or _are_pair(scene, pair, other):
                continue
            waves = tracks_of(board.trunks.get(other, ()))
            closest = dict.fromkeys(tracks_of(board.routes[other]), CLEAR_OF_PAIR + AMPLITUDE)
            closest |= dict.fromkeys(waves, CLEAR_OF_PAIR + 2 * AMPLITUDE)
            length = sum(
                max(min(a.high, b.high) - max(a.low, b.low), 0.0)
                for a, (b, least) in itertools.product(trunk, closest.items())
                if a.level == b.level and abs(a.at - b.at) < least
            )
            if length > SHORT:
                yield f"{other} runs close beside the pair of {pair} for {length:.0f}"


def _are_pair(scene: SheetScene, first: str, second: str) -> bool:
    followers: Mapping[str, str] = scene.layout_.followers
    return followers.get(first) == second or followers.get(second) == first


def shared_length(one: Route, other: Route) -> float:
    """Over which length two lines run on top of each other."""
    total = 0.0
    for a, b in itertools.product(tracks_of(one), tracks_of(other)):
        if a.level == b.level and abs(a.at - b.at) < APART:
            total += max(min(a.high, b.high) - max(a.low, b.low), 0.0)
    return total


def what_is_cut(scene: SheetScene) -> Iterator[str]:
    """Everything lies inside the bounds that pictures and prints are made from."""
    bounds = scene.layout_.bounds()
    if bounds is None:
        return
    left, top, right, bottom = grown(bounds, 0.5)
    for name, rect in texts_of(scene):
        if rect[0] < left or rect[1] < top or rect[2] > right or rect[3] > bottom:
            yield f"{name} lies outside the picture"
