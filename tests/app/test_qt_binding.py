"""The binding itself: some releases of it drop a reference to None in every call that returns nothing."""

from __future__ import annotations

import os
import subprocess
import sys

PROBE = """
import sys
from PySide6.QtWidgets import QApplication, QGraphicsRectItem, QGraphicsScene, QLabel
application = QApplication([])
label, item, scene = QLabel(), QGraphicsRectItem(), QGraphicsScene()
scene.addItem(item)
before = sys.getrefcount(None)
for number in range(20_000):
    label.setText("x")
    item.setPos(number, 0)
print(sys.getrefcount(None) - before)
"""


def test_twenty_thousand_calls_neither_end_the_process_nor_eat_references() -> None:
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, "-c", PROBE], env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    # a handful either way is the interpreter's own business; a faulty binding loses 40,000
    assert int(done.stdout) > -1000
