"""What is drawn is fit to print: every sample in both themes, and a few hundred sheets arranged at random."""

from __future__ import annotations

import random

import pytest

from app.canvas.scene import SheetScene
from app.document import Document
from app.selection import Selection
from app.theme import DARK, LIGHT, Theme, load_fonts
from app.viewpoint import Viewpoint
from core.assess import assess
from core.catalogue import Catalogue, load_builtin
from core.edits import in_turn, move_parts, set_wire, turn_parts
from core.samples import sample_bytes, sample_names
from core.sheet import Chassis, Lamp, Resistor, Sheet, Tube, Winding
from core.storage import load
from tests.app.canvas_rig import CATALOGUE, wire
from tests.app.drawing_check import (
    faults_of,
    shared_length,
    texts_that_meet,
    wires_close_to_pairs,
    wires_on_each_other,
    wires_through_bodies,
    wires_through_texts,
)

ARRANGEMENTS = 300
ARRANGED_PAIRS = 100


def drawn(sheet: Sheet, catalogue: Catalogue, theme: Theme, solved: bool = True) -> SheetScene:
    load_fonts()
    document = Document(sheet, catalogue)
    viewpoint = Viewpoint(sheet.mains.nominal_v, document)
    scene = SheetScene(document, Selection(document), viewpoint, theme)
    scene.document_owner = document
    if solved:
        document.take_assessment(assess(sheet, document.catalogue, viewpoint.condition))
    return scene


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=lambda theme: theme.name)
@pytest.mark.parametrize("name", sample_names())
def test_nothing_is_wrong_with_any_sample(qapp, name, theme):
    scene = drawn(load(sample_bytes(name), name), load_builtin(), theme)
    assert faults_of(scene) == []
    assert scene.layout_.board.routes.keys() == scene.document.sheet.wire_by_id.keys()


def arranged(seed: int) -> Sheet:
    """Parts on a loose grid with a few of them shifted and turned, and wires between any of them."""
    chance = random.Random(seed)
    cells = [(x, y) for x in range(4) for y in range(3)]
    chance.shuffle(cells)
    kinds = [
        lambda i, at: Tube(id=f"V{i}", type="EL84", at=at),
        lambda i, at: Tube(id=f"V{i}", type="ECC83", at=at),
        lambda i, at: Winding(id=f"T{i}", rated_v=6.3, rated_a=3.0, at=at),
        lambda i, at: Resistor(id=f"R{i}", ohm=10.0, at=at),
        lambda i, at: Lamp(id=f"H{i}", type="#47", at=at),
        lambda i, at: Chassis(id=f"E{i}", at=at),
    ]
    parts = []
    for number, (x, y) in enumerate(cells[: chance.randint(3, 8)], 1):
        at = 240.0 * x + 20 * chance.randint(-1, 1), 220.0 * y + 20 * chance.randint(-1, 1)
        parts.append(chance.choice(kinds)(number, at))
    ends = {"V": ("4", "5"), "T": ("a", "b"), "R": ("1", "2"), "H": ("1", "2"), "E": ("e",)}
    terminals = [f"{part.id}.{name}" for part in parts for name in ends[part.id[0]]]
    pairs = [(a, b) for a in terminals for b in terminals if a < b and a.split(".")[0] != b.split(".")[0]]
    wires = tuple(
        wire(f"w{number}", *ends) for number, ends in enumerate(chance.sample(pairs, min(len(pairs), 5)), 1)
    )
    sheet = Sheet(parts=tuple(parts), wires=wires)
    turned = [part.id for part in parts if chance.random() < 0.2 and part.kind != "tube"]
    return turn_parts(turned, 90)(sheet)


def test_sheets_arranged_at_random_have_no_wire_through_a_part_or_a_text(qapp):
    through, texts, shared = [], [], []
    for seed in range(ARRANGEMENTS):
        scene = drawn(arranged(seed), CATALOGUE, LIGHT, solved=False)
        through += [(seed, fault) for fault in wires_through_bodies(scene)]
        texts += [(seed, fault) for fault in (*wires_through_texts(scene), *texts_that_meet(scene))]
        shared += [(seed, fault) for fault in wires_on_each_other(scene)]
    assert through == []
    assert texts == []
    # where the way out of a terminal that is wired later has been taken already, there is no room left
    assert len(shared) <= ARRANGEMENTS // 100


def arranged_pairs(seed: int) -> Sheet:
    """Tubes and supplies on a loose grid, each fed by a twisted pair from one before it, and a few single wires."""
    chance = random.Random(seed)
    cells = [(x, y) for x in range(4) for y in range(3)]
    chance.shuffle(cells)
    parts: list[Tube | Winding] = [Winding(id="T1", rated_v=6.3, rated_a=5.0, at=(-260.0, 220.0))]
    wires = []
    for number, (x, y) in enumerate(cells[: chance.randint(3, 7)], 1):
        at = 260.0 * x + 20 * chance.randint(-1, 1), 240.0 * y + 20 * chance.randint(-1, 1)
        before = chance.choice(parts).id
        parts.append(Tube(id=f"V{number}", type="EL84", at=at))
        for one, (mine, theirs) in enumerate((("4", "a"), ("5", "b"))):
            start = f"{before}.{theirs if before == 'T1' else mine}"
            wires.append(wire(f"w{number}{one}", start, f"V{number}.{mine}", twist=f"p{number}"))
    return Sheet(parts=tuple(parts), wires=tuple(wires))


def test_pairs_arranged_at_random_keep_clear_of_each_other(qapp):
    close, texts, through, shared, twisted = [], [], [], [], 0
    for seed in range(ARRANGED_PAIRS):
        scene = drawn(arranged_pairs(seed), CATALOGUE, LIGHT, solved=False)
        close += [(seed, fault) for fault in wires_close_to_pairs(scene)]
        texts += [(seed, fault) for fault in wires_through_texts(scene)]
        through += [(seed, fault) for fault in wires_through_bodies(scene)]
        shared += [(seed, fault) for fault in wires_on_each_other(scene)]
        twisted += len(scene.layout_.followers)
    assert twisted > 4 * ARRANGED_PAIRS
    assert (through, texts) == ([], [])
    # several pairs on one pair of pins: not all find a way out of their own
    assert len(close) <= ARRANGED_PAIRS // 5
    assert len(shared) <= ARRANGED_PAIRS // 5


def test_labels_of_crowded_parts_take_the_first_free_side(qapp):
    close = (
        Resistor(id="R1", ohm=10.0, at=(0, 0)),
        Resistor(id="R2", ohm=10.0, at=(0, 50)),
        Resistor(id="R3", ohm=10.0, at=(0, 100), turn=90),
    )
    scene = drawn(Sheet(parts=close), CATALOGUE, LIGHT, solved=False)
    assert list(texts_that_meet(scene)) == []
    assert [scene.layout_.places[one].side for one in ("R1", "R2")] != [0, 0]
    scene.document.apply("Move", move_parts(("R2", "R3"), 400.0, 0.0))
    assert scene.layout_.places["R1"].side == 0
    assert scene.part_items["R1"].place == scene.layout_.places["R1"]


def test_the_check_sees_what_is_wrong(qapp):
    sheet = Sheet(
        parts=(
            Tube(id="V1", type="EL84", at=(0, 0)),
            Tube(id="V2", type="EL84", at=(300, 0)),
            Tube(id="V3", type="EL84", at=(150, 0)),
        ),
        wires=(wire("w1", "V1.4", "V2.4"), wire("w2", "V1.5", "V2.5")),
    )
    through = ((60.0, 30.0), (240.0, 30.0))
    spoilt = in_turn(set_wire("w1", via=through), set_wire("w2", via=through))(sheet)
    scene = drawn(spoilt, CATALOGUE, LIGHT, solved=False)
    scene.layout_.board.keep("w1", ((0.0, 0.0), (0.0, 60.0), (300.0, 60.0), (300.0, 0.0)))
    scene.layout_.board.keep("w2", ((0.0, 0.0), (0.0, 10.0), (300.0, 10.0), (300.0, 60.0), (0.0, 60.0)))
    assert "w2 runs through V3" in faults_of(scene)
    assert "w1 runs through V3" in faults_of(scene)
    assert any(fault.startswith("w1 lies on w2") for fault in faults_of(scene))
    pair = Sheet(
        parts=sheet.parts[:2],
        wires=tuple(
            wire(f"w{one}", f"V1.{one}", f"V2.{one}", **({"twist": "p"} if one in (4, 5) else {}))
            for one in (4, 5, 9)
        ),
    )
    scene = drawn(pair, CATALOGUE, LIGHT, solved=False)
    assert faults_of(scene) == []
    (ax, ay), *_, (bx, by) = scene.layout_.board.trunks["w4"]
    scene.layout_.board.keep("w9", ((ax, ay - 30), (ax, ay - 11), (bx, by - 11), (bx, by - 30)))
    assert [fault for fault in faults_of(scene) if fault.startswith("w9 runs close beside the pair of w4")]
    assert shared_length(((0, 0), (50, 0)), ((20, 2), (90, 2))) == 30
